package io.ovenmark.notebook.store;

import static org.assertj.core.api.Assertions.assertThat;

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

class SeveralWritersTest {
  private static final int EACH = 200;

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private List<String> subjects() {
    List<String> subjects = new ArrayList<>();
    Optional<CommitId> commit = store.head("main");
    while (commit.isPresent()) {
      CommitFacts facts = store.facts(commit.get());
      assertThat(facts.parents()).hasSizeLessThan(2);
      subjects.add(facts.subject());
      commit = facts.parents().stream().findFirst();
    }
    return subjects;
  }

  private static List<String> expected(String... names) {
    return Stream.of(names)
        .flatMap(name -> IntStream.rangeClosed(1, EACH).mapToObj(i -> name + " " + i))
        .toList();
  }

  @Test
  void inOneProgramLoseNoCommit() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(2);
    List<Future<?>> running = new ArrayList<>();
    for (String name : List.of("ann", "bob")) {
      GitStore own = fixture.open();
      running.add(threads.submit(() -> WriterProgram.write(own, name, EACH)));
    }
    for (Future<?> one : running) {
      one.get();
    }
    threads.shutdown();

    assertThat(subjects()).containsExactlyInAnyOrderElementsOf(expected("ann", "bob"));
    fixture.assertClean(store);
  }

  @Test
  void inTwoProgramsLoseNoCommit() throws Exception {
    List<Process> programs = new ArrayList<>();
    for (String name : List.of("ann", "bob")) {
      programs.add(start(name, EACH));
    }
    while (programs.stream().anyMatch(Process::isAlive)) {
      assertThat(store.handEdits("formulas")).isEmpty();
    }
    for (Process program : programs) {
      assertThat(program.waitFor()).isZero();
    }

    assertThat(subjects()).containsExactlyInAnyOrderElementsOf(expected("ann", "bob"));
    fixture.assertClean(store);
  }

  private Process start(String name, int count) throws Exception {
    return RepositoryFixture.java(
        fixture.home(),
        WriterProgram.class,
        fixture.directory().toString(),
        name,
        Integer.toString(count));
  }

  /** Set {@code -Dovenmark.kills=100} for more deaths. */
  @Test
  void thatAreKilledAtAnyMomentLeaveAWholeNotebook() throws Exception {
    int kills = Integer.getInteger("ovenmark.kills", 20);
    Random random = new Random(20260301);
    for (int i = 0; i < kills; i++) {
      Process program = start("dead" + i, 1_000_000);
      assertThat(program.getInputStream().read()).isEqualTo('b');
      program.waitFor(200 + random.nextInt(600), TimeUnit.MILLISECONDS);
      program.destroyForcibly();
      program.waitFor();
      if (i % 4 == 3) {
        WriterProgram.write(store, "alive" + i, 1);
      }
      try (GitStore next = GitStore.open(fixture.directory())) {
        assertThat(next.handEdits("")).isEmpty();
        assertThat(fixture.directory().resolve(".git/index.lock")).doesNotExist();
        assertThat(fixture.directory().resolve(".git/refs/heads/main.lock")).doesNotExist();
        fixture.assertClean(next);
      }
    }
    WriterProgram.write(store, "last", 3);
    fixture.assertClean(store);
    assertThat(subjects()).startsWith("last 3", "last 2", "last 1");
    assertThat(fixture.directory().resolve(".git/objects"))
        .isDirectoryNotContaining("glob:**/noz*");
  }
}
