package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.store.Author;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Notebooks with viewers that all tests of a run share; nothing is written to them. */
enum RunningBench {
  /** {@link BenchNotebook} with everything in it. */
  FULL(BenchNotebook::create),
  /** A notebook without formulas. */
  EMPTY(BenchNotebook::empty);

  private final Path folder;
  private final Desk desk;
  private final Viewer viewer;
  private final List<Throwable> faults = new CopyOnWriteArrayList<>();

  RunningBench(Consumer<Path> create) {
    try {
      folder = Files.createTempDirectory("bench");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    create.accept(folder);
    desk = new Desk(Notebook.open(folder));
    viewer = Viewer.start(desk, Opening.onAnyPort(RunningBench::by), faults::add);
    Runtime.getRuntime().addShutdownHook(new Thread(this::close));
  }

  /** Ines, on one day of spring. */
  static By by() {
    return new By(
        new Author("Ines", "ines@saltmarsh.example"),
        OffsetDateTime.parse("2026-05-20T09:00:00+02:00"));
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

  private void close() {
    viewer.close();
    desk.close();
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(file -> file.delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
