package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeveralRevisersTest {
  private static final int EACH = 100;
  private static final String BUN = "seeded-lupin-bun";
  private static final Address LINE = Address.latest(BUN, Optional.empty());

  @TempDir Path temporary;
  private NotebookFixture fixture;

  @BeforeEach
  void beginABunWithALineForEachReviser() {
    fixture = new NotebookFixture(temporary);
    fixture.formula(BUN).line("water", "100 g").line("salt", "100 g").revise("Begin");
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private Process start(String own, int count) throws Exception {
    return RepositoryFixture.java(
        fixture.repository().home(),
        ReviserProgram.class,
        fixture.directory().toString(),
        BUN,
        own,
        Integer.toString(count));
  }

  private static void revise(Notebook notebook, String own, int count) {
    ReviserProgram.revise(notebook, LINE, own, count, () -> {});
  }

  private static int grams(Formula formula, String line) {
    return formula.line(line).orElseThrow().amount().number().intValueExact();
  }

  /** Every revision is there, and none takes back what another one did. */
  private void assertNothingIsLost() {
    Notebook notebook = fixture.notebook();
    List<Revision> revisions = notebook.revisions(LINE);
    List<String> expected =
        Stream.of("water", "salt")
            .flatMap(own -> IntStream.rangeClosed(1, EACH).mapToObj(i -> own + " " + i))
            .toList();
    assertThat(revisions.subList(1, revisions.size()))
        .extracting(Revision::note)
        .containsExactlyInAnyOrderElementsOf(expected);
    int water = 100;
    int salt = 100;
    for (Revision revision : revisions.subList(1, revisions.size())) {
      boolean wetter = revision.note().startsWith("water");
      water += wetter ? 1 : 0;
      salt += wetter ? 0 : 1;
      Formula formula = notebook.formula(revision);
      assertThat(grams(formula, "water")).isEqualTo(water);
      assertThat(grams(formula, "salt")).isEqualTo(salt);
    }
    fixture.assertClean();
  }

  @Test
  void inOneProgramLoseNoRevision() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(2);
    List<Future<?>> running = new ArrayList<>();
    for (String own : List.of("water", "salt")) {
      Notebook notebook = fixture.open();
      running.add(threads.submit(() -> revise(notebook, own, EACH)));
    }
    for (Future<?> one : running) {
      one.get();
    }
    threads.shutdown();

    assertNothingIsLost();
  }

  @Test
  void inTwoProgramsLoseNoRevision() throws Exception {
    List<Process> programs = List.of(start("water", EACH), start("salt", EACH));
    try {
      Notebook notebook = fixture.notebook();
      while (programs.stream().anyMatch(Process::isAlive)) {
        assertThat(notebook.handEdits()).isEmpty();
        assertThat(notebook.formula(notebook.newest(LINE)).lines()).hasSize(2);
      }
      for (Process program : programs) {
        assertThat(program.waitFor()).isZero();
      }
    } finally {
      programs.forEach(Process::destroyForcibly);
    }

    assertNothingIsLost();
  }

  /** Set {@code -Dovenmark.kills=100} for more deaths. */
  @Test
  void thatAreKilledAtAnyMomentLeaveAWholeNotebook() throws Exception {
    int kills = Integer.getInteger("ovenmark.kills", 20);
    Random random = new Random(20260302);
    int before = 1;
    for (int i = 0; i < kills; i++) {
      Process program = start("water", 1_000_000);
      for (int made = random.nextInt(4); made >= 0; made--) {
        assertThat(program.getInputStream().read()).isEqualTo('.');
      }
      program.waitFor(random.nextInt(50), TimeUnit.MILLISECONDS);
      program.destroyForcibly();
      program.waitFor();
      try (Notebook next = Notebook.open(fixture.directory())) {
        assertThat(next.handEdits()).isEmpty();
        fixture.assertClean();
        Revision newest = next.newest(LINE);
        assertThat(grams(next.formula(newest), "water")).isEqualTo(99 + newest.number());
        assertThat(newest.number()).isGreaterThan(before);
        before = newest.number();
      }
    }
    revise(fixture.notebook(), "salt", 3);
    fixture.assertClean();
  }
}
