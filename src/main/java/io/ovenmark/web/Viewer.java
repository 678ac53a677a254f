package io.ovenmark.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Refusal;
import java.io.UncheckedIOException;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The viewer of a notebook, running. It listens on 127.0.0.1 and, when that was asked for, on one
 * address of a network; it answers only what was addressed to it by these, from the network only
 * to devices that were paired; it takes orders only from its own pages; see {@link Guard}.
 *
 * <pre>{@code
 * try (Viewer viewer = Viewer.start(desk, Opening.onAnyPort(by), fault -> log(fault))) {
 *   System.out.println(viewer.address());
 * }
 * }</pre>
 */
public final class Viewer implements AutoCloseable {
  private static final String HOST = "127.0.0.1";
  private static final int HIGHEST_PORT = 65_535;

  /** What is chosen and written for a card stands in its address, in any script. */
  private static final int LARGEST_HEADERS = 64 * 1024;

  /** For a viewer that no device can be paired with. */
  private static final Clock NO_TIME = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);

  private final Javalin server;
  private final int port;
  private final Tasks tasks;
  private final Optional<Network> network;
  private final Pairings pairings;

  private Viewer(Javalin server, Tasks tasks, Optional<Network> network, Pairings pairings) {
    this.server = server;
    this.port = server.port();
    this.tasks = tasks;
    this.network = network;
    this.pairings = pairings;
  }

  /**
   * How a device of the network gets in.
   *
   * @param page where to type the code
   * @param address the same page with the code in its fragment, which no server sees
   * @param code the code
   * @param until when it ceases to work
   * @param drawing the address as a QR code, in lines for a terminal with dark ground
   */
  public record Invitation(
      URI page, URI address, String code, Instant until, List<String> drawing) {
    /** Copies the lines. */
    public Invitation {
      drawing = List.copyOf(drawing);
    }
  }

  /**
   * Starts the viewer.
   *
   * @param desk the notebook to show; stays open when the viewer closes
   * @param opening where to listen, and who writes
   * @param faults told of what went wrong inside; called by the server's threads
   * @return the viewer, ready to answer
   * @throws Refusal when the port is in use or is none
   */
  public static Viewer start(Desk desk, Opening opening, Consumer<Throwable> faults) {
    int port = opening.port();
    if (port < 0 || port > HIGHEST_PORT) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "port",
          port + " is not a port.",
          "Choose one from 1024 to " + HIGHEST_PORT + ", or 0 for any free one.");
    }
    Tasks tasks = new Tasks(faults);
    Pairings pairings = new Pairings(opening.network().map(Network::clock).orElse(NO_TIME));
    WhoWrites whoWrites = new WhoWrites();
    Opening inside = new Opening(port, whoWrites.instead(opening.by()), opening.network());
    List<Area> areas = new ArrayList<>(areas(desk, inside, tasks));
    areas.add(new PhoneArea(opening.network(), pairings));
    Guard guard = new Guard(opening.network(), pairings, whoWrites);
    Javalin server =
        Javalin.create(
            config -> {
              configure(config, areas, desk, new Failures(faults));
              config.routes.before(guard);
              opening.network().ifPresent(network -> new TwoDoors(port, network).open(config));
            });
    try {
      return new Viewer(server.start(HOST, port), tasks, opening.network(), pairings);
    } catch (JavalinBindException | UncheckedIOException e) {
      tasks.close();
      server.stop();
      throw new Refusal(
          Refusal.Reason.INVALID,
          "port",
          "The port " + port + " is in use or may not be used.",
          "Choose another, or leave it out for any free one.");
    }
  }

  /** All that can be asked, part by part; each names its routes itself. */
  private static List<Area> areas(Desk desk, Opening opening, Tasks tasks) {
    return List.of(
        tasks,
        new FormulaArea(desk),
        new EffectArea(desk),
        new SearchArea(desk, tasks),
        new LeverArea(desk, opening),
        new CardArea(desk),
        new StoryArea(desk, opening),
        new DraftArea(desk, opening.by()),
        new BakeArea(desk, opening),
        new WindowArea(desk),
        new PhotoArea(desk, opening),
        new BeginArea(desk),
        new ShareArea(desk, opening),
        new ActsArea(desk, opening),
        new PantryArea(desk, opening),
        new GoalArea(desk, opening),
        new ReplaceArea(desk, opening.by()),
        new CauseArea(desk, opening),
        new NotebookArea(desk, opening),
        new TastingArea(desk, opening),
        new LabelArea(desk));
  }

  private static void configure(
      JavalinConfig config, List<Area> areas, Desk desk, Failures failures) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.compressionStrategy = new CompressionStrategy(null, new Gzip(), null);
    config.http.maxRequestSize = Guard.LARGEST_PICTURE;
    config.router.javaLangErrorHandler(failures::error);
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(LARGEST_HEADERS);
        });
    config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new MalformedRequests()));
    routes(new Routes(config.routes), areas, new Photos(desk), new Site());
    config.routes.exception(Exception.class, failures::answer);
  }

  private static void routes(Routes routes, List<Area> areas, Photos photos, Site site) {
    areas.forEach(area -> area.addTo(routes));
    routes.nothingElse();
    routes.read("/photos/{formula}/{file}", photos::answer);
    Site.PAGES.forEach(page -> routes.read(page, site::shell));
    routes.read(Guard.PAIRING_PAGE, site::pairing);
    routes.read("/<path>", site::file);
  }

  /**
   * Where it is to be found.
   *
   * @return such as {@code http://127.0.0.1:41234/}
   */
  public URI address() {
    return URI.create("http://" + HOST + ":" + port + "/");
  }

  /**
   * Lets one more device in, within some minutes; an earlier code works no more.
   *
   * @return how; empty when the viewer answers on this machine alone
   */
  public Optional<Invitation> invite() {
    return network.map(
        door -> {
          Pairings.Code code = pairings.newCode();
          String page = "http://" + door.host() + ":" + port + Guard.PAIRING_PAGE;
          URI address = URI.create(page + "#" + code.text());
          return new Invitation(
              URI.create(page),
              address,
              code.text(),
              code.until(),
              Matrix.of(address.toString()).lines());
        });
  }

  /** Stops answering and frees the port. */
  @Override
  public void close() {
    tasks.close();
    server.stop();
  }
}
