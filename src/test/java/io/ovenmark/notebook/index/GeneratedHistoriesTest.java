package io.ovenmark.notebook.index;

import static io.ovenmark.notebook.store.RepositoryFixture.AUTHOR;
import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.notebook.store.Write;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The index says what the plain walk says, whatever happens to the notebook and to the file. */
class GeneratedHistoriesTest {
  private static final int STEPS = 100;
  private static final List<String> SLUGS =
      List.of("bun", "roll", "ψωμί", "crisp", "a/b", "a", "muffin", "tart");

  @TempDir Path temporary;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void areReadAsByThePlainWalk(long seed) throws IOException {
    Random random = new Random(seed);
    try (RepositoryFixture fixture = new RepositoryFixture(temporary)) {
      GitStore store = fixture.create();
      IndexedHistory kept = new IndexedHistory(store);
      for (int step = 0; step < STEPS; step++) {
        happen(fixture, store, random, step);
        if (step % 3 == 0) {
          kept.newestFirst("main", 1);
        }
        if (step % 25 == 24) {
          IndexedHistory whole = new IndexedHistory(store);
          whole.newestFirst("main", 1);
          damage(kept.file(), random);
          assertEqual(store, List.of(kept, whole, new IndexedHistory(store)), random);
        }
      }
    }
  }

  private static void happen(
      RepositoryFixture fixture, GitStore store, Random random, int step) {
    List<String> branches = new ArrayList<>(store.branches("").keySet());
    String branch = branches.isEmpty() ? "main" : pick(branches, random);
    int kind = random.nextInt(20);
    if (branches.isEmpty() || kind < 9) {
      put(fixture, store, branch, random, step);
    } else if (kind < 11) {
      remove(fixture, store, branch, random);
    } else if (kind < 14) {
      rename(fixture, store, branch, random, step);
    } else if (kind < 16) {
      CommitId at = commit(store, branch, random);
      store.createBranch("variant/v/" + step, at, AUTHOR, fixture.tick());
    } else if (kind < 18) {
      merge(fixture, store, branch, pick(branches, random), random, step);
    } else if (kind == 18) {
      fixture.commit(
          store, fixture.change(store, branch, "Bake").put("bakes/" + step, bytes("" + step)));
    } else if (!store.checkedOutBranch().filter(branch::equals).isPresent()) {
      CommitId head = store.head(branch).orElseThrow();
      store.moveBranch(branch, head, commit(store, branch, random), AUTHOR, fixture.tick());
    }
  }

  private static String pick(List<String> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  /** A commit of a branch's line, mostly near its end. */
  private static CommitId commit(GitStore store, String branch, Random random) {
    CommitId commit = store.head(branch).orElseThrow();
    for (int back = random.nextInt(6); back > 0; back--) {
      List<CommitId> parents = store.facts(commit).parents();
      commit = parents.isEmpty() ? commit : parents.get(0);
    }
    return commit;
  }

  private static List<String> files(GitStore store, String branch) {
    return List.copyOf(store.list(store.head(branch).orElseThrow(), "formulas").keySet());
  }

  private static String path(Random random) {
    return "formulas/" + pick(SLUGS, random) + ".json";
  }

  private static String content(Random random) {
    StringBuilder text = new StringBuilder();
    int kind = random.nextInt(4);
    for (int i = 0; i < 25; i++) {
      text.append("line ").append(i).append(" of kind ").append(i < 18 ? kind : -1).append('\n');
    }
    return text + "noise " + random.nextInt(1000) + "\n";
  }

  private static void put(
      RepositoryFixture fixture, GitStore store, String branch, Random random, int step) {
    Write write = fixture.change(store, branch, "Put " + step + "\n\nΣώμα " + random.nextLong());
    for (int i = random.nextInt(3); i >= 0; i--) {
      write = write.put(path(random), bytes(content(random)));
    }
    fixture.commit(store, write.trailer("Step", "" + step));
  }

  private static void remove(
      RepositoryFixture fixture, GitStore store, String branch, Random random) {
    List<String> files = files(store, branch);
    if (!files.isEmpty()) {
      fixture.commit(
          store, fixture.change(store, branch, "Remove").delete(pick(files, random)));
    }
  }

  private static void rename(
      RepositoryFixture fixture, GitStore store, String branch, Random random, int step) {
    List<String> files = files(store, branch);
    if (files.isEmpty()) {
      return;
    }
    Write write = fixture.change(store, branch, "Rename " + step);
    for (int i = random.nextInt(2); i >= 0; i--) {
      String from = pick(files, random);
      CommitId head = store.head(branch).orElseThrow();
      byte[] content = store.read(store.blob(head, from).orElseThrow());
      if (random.nextBoolean()) {
        content = bytes(new String(content, StandardCharsets.UTF_8) + step);
      }
      write = write.delete(from).put("formulas/" + step + "-" + i + ".json", content);
    }
    fixture.commit(store, write);
  }

  private static void merge(
      RepositoryFixture fixture,
      GitStore store,
      String branch,
      String other,
      Random random,
      int step) {
    CommitId head = store.head(other).orElseThrow();
    Write write = fixture.change(store, branch, "Merge " + step).merging(head);
    if (random.nextBoolean()) {
      write = write.put(path(random), bytes(content(random)));
    }
    fixture.commit(store, write);
  }

  private static void assertEqual(GitStore store, List<History> indexes, Random random) {
    History plain = new PlainWalk(store);
    List<String> branches = new ArrayList<>(store.branches("").keySet());
    for (String branch : List.of("main", pick(branches, random))) {
      CommitId earlier = commit(store, branch, random);
      List<Entry> newest = plain.newestFirst(branch, 1000);
      List<Entry> three = newest.subList(0, Math.min(3, newest.size()));
      Optional<CommitId> fork = plain.fork(branch);
      for (History index : indexes) {
        assertThat(index.newestFirst(branch, 1000)).isEqualTo(newest);
        assertThat(index.newestFirst(branch, 3)).isEqualTo(three);
        assertThat(index.fork(branch)).isEqualTo(fork);
      }
      TreeSet<String> paths = new TreeSet<>();
      newest.forEach(entry -> paths.add(entry.path()));
      for (String path : paths) {
        List<Entry> entries = plain.formula(branch, path);
        for (History index : indexes) {
          assertThat(index.formula(branch, path)).isEqualTo(entries);
          assertThat(index.latest(branch, path)).contains(entries.get(entries.size() - 1));
          assertThat(index.latestAt(earlier, path)).isEqualTo(plain.latestAt(earlier, path));
        }
      }
    }
  }

  /** Deletes the file, cuts it, changes a byte of it, or leaves it. */
  private static void damage(Path file, Random random) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    switch (random.nextInt(4)) {
      case 0 -> Files.delete(file);
      case 1 -> Files.write(file, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
      case 2 -> {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
        Files.write(file, bytes);
      }
      default -> assertThat(file).exists();
    }
  }
}
