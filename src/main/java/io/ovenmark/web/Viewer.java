package io.ovenmark.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import io.javalin.util.JavalinBindException;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Refusal;
import java.net.URI;
import java.util.function.Consumer;

/**
 * The viewer of a notebook, running. It listens on 127.0.0.1 only, answers reading requests only,
 * and only those that were addressed to it by that name; see {@link Guard}.
 *
 * <pre>{@code
 * try (Viewer viewer = Viewer.start(desk, 0, fault -> log(fault))) {
 *   System.out.println(viewer.address());
 * }
 * }</pre>
 */
public final class Viewer implements AutoCloseable {
  private static final String HOST = "127.0.0.1";
  private static final int HIGHEST_PORT = 65_535;

  private final Javalin server;

  private Viewer(Javalin server) {
    this.server = server;
  }

  /**
   * Starts the viewer.
   *
   * @param desk the notebook to show; stays open when the viewer closes
   * @param port the port to listen on; 0 for any free one
   * @param faults told of what went wrong inside; called by the server's threads
   * @return the viewer, ready to answer
   * @throws Refusal when the port is in use or is none
   */
  public static Viewer start(Desk desk, int port, Consumer<Throwable> faults) {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "port",
          port + " is not a port.",
          "Choose one from 1024 to " + HIGHEST_PORT + ", or 0 for any free one.");
    }
    Javalin server = Javalin.create(config -> configure(config, desk, new Failures(faults)));
    try {
      return new Viewer(server.start(HOST, port));
    } catch (JavalinBindException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "port",
          "The port " + port + " is in use or may not be used.",
          "Choose another, or leave it out for any free one.");
    }
  }

  private static void configure(JavalinConfig config, Desk desk, Failures failures) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = new CompressionStrategy(null, new Gzip(), null);
    config.router.javaLangErrorHandler(failures::error);
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new MalformedRequests()));
    routes(config.routes, desk);
    config.routes.exception(Exception.class, failures::answer);
  }

  /** All that can be asked. Every route answers GET and HEAD. */
  private static void routes(RoutesConfig routes, Desk desk) {
    Api api = new Api(desk);
    Photos photos = new Photos(desk);
    Site site = new Site();
    routes.before(new Guard());
    read(routes, "/api/formulas", api::formulas);
    read(routes, "/api/timeline", api::timeline);
    read(routes, "/api/sheet", api::sheet);
    read(routes, "/api/compare", api::compare);
    read(routes, "/api/bake", api::bake);
    read(routes, "/api/<rest>", api::nothing);
    read(routes, "/photos/{formula}/{file}", photos::answer);
    read(routes, "/", site::shell);
    read(routes, "/formulas/{formula}", site::shell);
    read(routes, "/worksheet/{formula}", site::shell);
    read(routes, "/worksheet/{formula}/{variant}", site::shell);
    read(routes, "/bakes/{formula}/{bake}", site::shell);
    read(routes, "/<path>", site::file);
  }

  private static void read(RoutesConfig routes, String path, Handler handler) {
    routes.get(path, handler);
    routes.head(path, handler);
  }

  /**
   * Where it is to be found.
   *
   * @return such as {@code http://127.0.0.1:41234/}
   */
  public URI address() {
    return URI.create("http://" + HOST + ":" + server.port() + "/");
  }

  /** Stops answering and frees the port. */
  @Override
  public void close() {
    server.stop();
  }
}
