package io.ovenmark.notebook.store;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * Writes to {@code main} until it has made a number of commits: a program of its own for the tests
 * of several programs and of sudden death. It prints a line when it begins.
 */
final class WriterProgram {
  private static final String SHARED = "formulas/seeded-lupin-bun.json";

  private WriterProgram() {}

  /** Takes the notebook's folder, a name for the commits and how many to make. */
  public static void main(String[] arguments) {
    System.out.println("begins");
    try (GitStore store = GitStore.open(Path.of(arguments[0]))) {
      write(store, arguments[1], Integer.parseInt(arguments[2]));
    }
  }

  /** Makes commits that change a file of all writers and one of this writer. */
  static void write(GitStore store, String name, int count) {
    OffsetDateTime time = OffsetDateTime.parse("2026-03-01T08:00:00+01:00");
    for (int i = 1; i <= count; i++) {
      String own = "formulas/" + name + "-" + i % 7 + ".json";
      Write write =
          Write.to("main", store.head("main"), RepositoryFixture.AUTHOR, time, name + " " + i)
              .put(SHARED, RepositoryFixture.bytes(name + " " + i + "\n"));
      write =
          i % 5 == 0
              ? write.delete(own)
              : write.put(own, RepositoryFixture.bytes("x".repeat(i * 20) + "\n"));
      WriteOutcome outcome = store.write(write);
      while (outcome instanceof WriteOutcome.Moved moved) {
        Optional<CommitId> head = moved.actualHead();
        outcome = store.write(write.onto(head));
      }
      if (!(outcome instanceof WriteOutcome.Written)) {
        throw new IllegalStateException(name + " " + i + ": " + outcome);
      }
    }
  }
}
