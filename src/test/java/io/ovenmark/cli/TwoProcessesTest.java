package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs revise one formula at once: 200 revisions, none lost, none overwritten unseen. */
class TwoProcessesTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");
  private static final int BEFORE = 3;

  @TempDir Path place;
  private Path folder;

  @BeforeEach
  void begin() throws IOException {
    folder = Files.createDirectory(place.resolve("notebook"));
    Saltmarsh.bench(folder);
  }

  @Test
  void changesOfDifferentLinesAreAllKept() throws Exception {
    run(start("different", "water", 60), start("different", "salt", 60));
    try (Notebook notebook = Notebook.open(folder)) {
      List<Revision> revisions = notebook.revisions(BUN);
      assertThat(revisions).hasSize(BEFORE + 120);
      List<String> notes = revisions.stream().map(Revision::note).toList();
      for (String line : List.of("water", "salt")) {
        List<String> own = notes.stream().filter(note -> note.startsWith(line + " ")).toList();
        assertThat(own).isEqualTo(expected(line, 60));
      }
      eachRevisionChangesItsOwnLineOnly(notebook, revisions);
      Formula last = notebook.formula(revisions.get(revisions.size() - 1));
      assertThat(amount(last, "water")).isEqualTo("160 g");
      assertThat(amount(last, "salt")).isEqualTo("160 g");
    }
  }

  /** So that nobody's change was undone by somebody else's revision. */
  private static void eachRevisionChangesItsOwnLineOnly(
      Notebook notebook, List<Revision> revisions) {
    for (int i = BEFORE; i < revisions.size(); i++) {
      Formula before = notebook.formula(revisions.get(i - 1));
      Formula after = notebook.formula(revisions.get(i));
      String own = revisions.get(i).note().split(" ")[0];
      for (Line line : after.lines()) {
        if (!line.id().equals(own)) {
          assertThat(line).isEqualTo(before.line(line.id()).orElseThrow());
        }
      }
      assertThat(revisions.get(i).number()).isEqualTo(i + 1);
    }
  }

  @Test
  void changesOfTheSameLineNeverOverwriteOneAnother() throws Exception {
    run(start("same", "a", 40), start("same", "b", 40));
    try (Notebook notebook = Notebook.open(folder)) {
      List<Revision> revisions = notebook.revisions(BUN);
      assertThat(revisions).hasSize(BEFORE + 80);
      Set<String> notes = new HashSet<>();
      for (Revision revision : revisions.subList(BEFORE, revisions.size())) {
        assertThat(notes.add(revision.note().split(" on ")[0])).isTrue();
        String seen = revision.note().split(" on ")[1];
        assertThat(seen).isEqualTo(String.valueOf(revision.number() - 1));
      }
      assertThat(notes).containsAll(expected("a", 40)).containsAll(expected("b", 40));
    }
  }

  private static List<String> expected(String name, int count) {
    List<String> notes = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      notes.add(name + " " + i);
    }
    return notes;
  }

  private static String amount(Formula formula, String line) {
    return formula.line(line).orElseThrow().amount().toString();
  }

  private Process start(String manner, String name, int count) throws IOException {
    Path log = place.resolve(name + ".log");
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            Reviser.class.getName(),
            folder.toString(),
            manner,
            name,
            String.valueOf(count))
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start();
  }

  private void run(Process... processes) throws Exception {
    for (Process process : processes) {
      boolean ended = process.waitFor(5, TimeUnit.MINUTES);
      if (!ended) {
        process.destroyForcibly();
      }
      assertThat(ended).isTrue();
    }
    for (Process process : processes) {
      assertThat(process.exitValue()).as(logs()).isZero();
    }
  }

  private String logs() throws IOException {
    StringBuilder all = new StringBuilder();
    try (var files = Files.newDirectoryStream(place, "*.log")) {
      for (Path file : files) {
        all.append(Files.readString(file));
      }
    }
    return all.toString();
  }
}
