package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A notebook with a viewer of one test's own, to which may be written. Its clock moves on a minute
 * with every write.
 *
 * <pre>{@code
 * try (OwnBench bench = OwnBench.with(BenchNotebook::create)) {
 *   Visit visit = Visit.of(bench.viewer(), browser, Visit.DESK);
 * }
 * }</pre>
 */
final class OwnBench implements AutoCloseable {
  private final Path folder;
  private final Desk desk;
  private final List<Throwable> faults = new CopyOnWriteArrayList<>();
  private final AtomicInteger writes = new AtomicInteger();
  private final int port;
  private Viewer viewer;

  private OwnBench(Path folder) {
    this.folder = folder;
    desk = new Desk(Notebook.open(folder));
    viewer = Viewer.start(desk, Opening.onAnyPort(this::by), faults::add);
    port = viewer.address().getPort();
  }

  /** A new notebook in a temporary folder. */
  static OwnBench with(Consumer<Path> create) {
    try {
      Path folder = Files.createTempDirectory("own-bench");
      create.accept(folder);
      return new OwnBench(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private By by() {
    By first = RunningBench.by();
    return new By(
        first.author(), first.time().plus(Duration.ofMinutes(writes.incrementAndGet())));
  }

  Path folder() {
    return folder;
  }

  Desk desk() {
    return desk;
  }

  Viewer viewer() {
    return viewer;
  }

  /** What the viewer reported as its own fault so far; empty when all is well. */
  List<Throwable> faults() {
    return List.copyOf(faults);
  }

  /** Ends the viewer, as when its window is closed. */
  void stop() {
    viewer.close();
  }

  /** Starts a viewer again on the port that the last one had. */
  void startAgain() {
    viewer.close();
    viewer = Viewer.start(desk, new Opening(port, this::by), faults::add);
  }

  @Override
  public void close() {
    viewer.close();
    desk.close();
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(file -> file.delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
