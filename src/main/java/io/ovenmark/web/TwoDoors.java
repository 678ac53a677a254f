package io.ovenmark.web;

import io.javalin.config.JavalinConfig;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/**
 * Listens on 127.0.0.1 and on one address of a network, at the same port: never on all addresses of
 * the machine.
 */
final class TwoDoors {
  private static final String HERE = "127.0.0.1";

  private final Network network;
  private int port;

  TwoDoors(int port, Network network) {
    this.port = port;
    this.network = network;
  }

  /** Opens both; the door of this machine first, which finds the port when any will do. */
  void open(JavalinConfig config) {
    config.jetty.addConnector((server, http) -> opened(server, http, HERE));
    config.jetty.addConnector((server, http) -> opened(server, http, network.host()));
  }

  private ServerConnector opened(Server server, HttpConfiguration http, String host) {
    ServerConnector door = new ServerConnector(server, new HttpConnectionFactory(http));
    server.addBean(door);
    door.setHost(host);
    door.setPort(port);
    try {
      door.open();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    port = door.getLocalPort();
    return door;
  }
}
