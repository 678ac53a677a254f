package io.ovenmark.notebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * A notebook in a temporary folder with native Git beside it, cut off from the configuration of
 * the machine and of its user, and a clock that ticks one minute at each look.
 */
public final class RepositoryFixture implements AutoCloseable {
  /** The author of all that is written here. */
  public static final Author AUTHOR = new Author("Bench Hand", "bench@example.org");

  private static final boolean HAS_GIT = hasGit();

  private final Path base;
  private final Path directory;
  private final List<GitStore> stores = new ArrayList<>();
  private OffsetDateTime time = OffsetDateTime.parse("2026-03-01T08:00:00+01:00");

  /** A new notebook below a temporary folder. */
  public RepositoryFixture(Path temporary) {
    this(temporary, "notebook");
  }

  RepositoryFixture(Path temporary, String name) {
    try {
      base = temporary.toRealPath();
      directory = base.resolve(name);
      Files.createDirectories(home());
      Path config = home().resolve(".gitconfig");
      if (!Files.exists(config)) {
        Files.writeString(config, "[user]\n\tname = Bench Hand\n\temail = bench@example.org\n");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    isolate(home());
  }

  /** Makes JGit in this program look for the user's configuration in a folder. */
  public static void isolate(Path home) {
    SystemReader.setInstance(null);
    JGitEnvironment.install();
    FS.DETECTED.setUserHome(home.toFile());
  }

  /** The notebook's folder. */
  public Path directory() {
    return directory;
  }

  /** The folder that stands for the home of the user. */
  public Path home() {
    return base.resolve("home");
  }

  /** Makes the repository and opens it. */
  public GitStore create() {
    GitStore store = GitStore.create(directory);
    stores.add(store);
    return store;
  }

  /** Opens the repository once more. */
  public GitStore open() {
    GitStore store = GitStore.open(directory);
    stores.add(store);
    return store;
  }

  /** The next minute. */
  public OffsetDateTime tick() {
    time = time.plusMinutes(1);
    return time;
  }

  /** A write on the present head of a branch. */
  public Write change(GitStore store, String branch, String note) {
    return Write.to(branch, store.head(branch), AUTHOR, tick(), note);
  }

  /** Writes one file to a branch, which must succeed. */
  public CommitId put(GitStore store, String branch, String path, String content) {
    return commit(store, change(store, branch, "Put " + path).put(path, bytes(content)));
  }

  /** Writes, which must succeed and leave no file behind. */
  public CommitId commit(GitStore store, Write write) {
    WriteOutcome outcome = store.write(write);
    assertThat(outcome).isInstanceOf(WriteOutcome.Written.class);
    WriteOutcome.Written written = (WriteOutcome.Written) outcome;
    assertThat(written.leftAsEditedByHand()).isEmpty();
    return written.commit();
  }

  /** Text as UTF-8. */
  public static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Writes a file by hand. */
  public void edit(String path, String content) {
    try {
      Path file = directory.resolve(path);
      Files.createDirectories(file.getParent());
      Files.writeString(file, content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file of the work tree, empty if it is not there. */
  public Optional<String> onDisk(String path) {
    try {
      Path file = directory.resolve(path);
      return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Native Git in the notebook's folder; it must succeed. */
  public String git(String... arguments) {
    return gitIn(directory, arguments);
  }

  /** Native Git in another folder; it must succeed. */
  public String gitIn(Path folder, String... arguments) {
    Answer answer = tryGit(folder, arguments);
    assertThat(answer.exit()).as("git %s: %s", List.of(arguments), answer.text()).isZero();
    return answer.text();
  }

  /** How a program ended and what it printed, white space at the end cut. */
  public record Answer(int exit, String text) {}

  /** Native Git in a folder, however it ends. */
  public Answer tryGit(Path folder, String... arguments) {
    assumeTrue(HAS_GIT, "native git is not installed");
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(arguments));
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
      Map<String, String> environment = builder.environment();
      String path = environment.get("PATH");
      environment.clear();
      environment.put("PATH", path);
      environment.put("HOME", home().toString());
      environment.put("XDG_CONFIG_HOME", home().resolve("xdg").toString());
      environment.put("GIT_CONFIG_NOSYSTEM", "1");
      environment.put("GIT_CEILING_DIRECTORIES", base.toString());
      environment.put("GIT_EDITOR", "true");
      environment.put("LC_ALL", "C.UTF-8");
      String now = tick().toString();
      environment.put("GIT_AUTHOR_DATE", now);
      environment.put("GIT_COMMITTER_DATE", now);
      Process process = builder.redirectErrorStream(true).start();
      process.getOutputStream().close();
      String text;
      try (InputStream output = process.getInputStream()) {
        text = new String(output.readAllBytes(), StandardCharsets.UTF_8);
      }
      return new Answer(process.waitFor(), text.stripTrailing());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean hasGit() {
    try {
      Process process = new ProcessBuilder("git", "--version").start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Native Git finds nothing wrong and nothing uncommitted, and there is no hand edit. */
  public void assertClean(GitStore store) {
    assertThat(git("fsck", "--strict", "--no-dangling")).doesNotContain("error", "warning");
    assertThat(git("status", "--porcelain")).isEmpty();
    assertThat(store.handEdits("")).isEmpty();
    assertThat(directory.resolve(".git/index.lock")).doesNotExist();
    assertThat(directory.resolve(".git/ovenmark/pending")).doesNotExist();
  }

  /** Starts another Java with a main class of the tests. */
  public static Process java(Path home, Class<?> main, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    command.addAll(List.of("-Duser.home=" + home, "-cp", System.getProperty("java.class.path")));
    command.add(main.getName());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("HOME", home.toString());
    builder.environment().remove("XDG_CONFIG_HOME");
    return builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  /** Closes the stores. */
  @Override
  public void close() {
    stores.forEach(GitStore::close);
  }
}
