package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Notebook;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/**
 * A viewer that answers on a network: another address of this machine's own range, so that no test
 * opens anything to a real one.
 */
final class LanBench implements AutoCloseable {
  /** What stands for the address in the kitchen's network. */
  static final String KITCHEN = "127.0.0.2";

  final MovingClock clock = new MovingClock();
  private final Desk desk;
  private final Viewer viewer;
  private final List<Throwable> faults = new CopyOnWriteArrayList<>();

  /** With a notebook that has nothing in it. */
  LanBench(Path folder) {
    this(folder, BenchNotebook::empty);
  }

  LanBench(Path folder, Consumer<Path> create) {
    create.accept(folder);
    desk = new Desk(Notebook.open(folder));
    viewer =
        Viewer.start(
            desk,
            new Opening(0, RunningBench::by, Optional.of(new Network(kitchen(), clock))),
            faults::add);
  }

  private static Inet4Address kitchen() {
    try {
      return (Inet4Address) InetAddress.getByName(KITCHEN);
    } catch (UnknownHostException e) {
      throw new IllegalStateException(e);
    }
  }

  Viewer viewer() {
    return viewer;
  }

  Desk desk() {
    return desk;
  }

  List<Throwable> faults() {
    return List.copyOf(faults);
  }

  /** A page as a phone addresses it. */
  String at(String path) {
    return "http://" + KITCHEN + ":" + viewer.address().getPort() + path;
  }

  /** A question from the network, with more lines of the head. */
  Asking.Raw get(String path, String... lines) {
    return ask("GET", path, "", lines);
  }

  /** An order from the network as the viewer's own page gives it. */
  Asking.Raw order(String path, String json, String... lines) {
    List<String> all = new ArrayList<>(List.of(lines));
    all.add("Origin: http://" + KITCHEN + ":PORT");
    all.add("Content-Type: application/json");
    all.add("Content-Length: " + json.length());
    return ask("POST", path, json, all.toArray(new String[0]));
  }

  private Asking.Raw ask(String method, String path, String body, String... lines) {
    String more = lines.length == 0 ? "" : String.join("\r\n", lines) + "\r\n";
    return Asking.raw(
        KITCHEN,
        viewer,
        method + " " + path + " HTTP/1.1\r\nHost: " + KITCHEN + ":PORT\r\n" + more
            + "Connection: close\r\n\r\n" + body);
  }

  /** Pairs a device and gives the line of the head that it shows from then on. */
  String paired(String name) {
    String code = viewer.invite().orElseThrow().code();
    Asking.Raw answer =
        order("/api/pair", "{\"code\": \"" + code + "\", \"name\": \"" + name + "\"}");
    if (answer.status() != 200) {
      throw new AssertionError(answer.toString());
    }
    return "Cookie: " + answer.header("Set-Cookie").replaceAll(";.*", "");
  }

  @Override
  public void close() {
    viewer.close();
    desk.close();
  }
}
