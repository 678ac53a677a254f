package io.ovenmark.speed;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Runs native Git, cut off from the configuration of the machine and of its user. */
final class NativeGit {
  private final Path home;

  /** Writes to the standard input of Git. */
  @FunctionalInterface
  interface Input {
    void write(OutputStream out) throws IOException;
  }

  NativeGit(Path home) throws IOException {
    this.home = home;
    Files.createDirectories(home);
    Files.writeString(
        home.resolve(".gitconfig"),
        "[user]\n\tname = Bench Hand\n\temail = bench@example.org\n[gc]\n\tauto = 0\n"
            + "[maintenance]\n\tauto = false\n[advice]\n\tdetachedHead = false\n");
  }

  /** Runs it in a folder and throws its output away. */
  void run(Path folder, String... arguments) throws IOException {
    finish(start(builder(folder, arguments).redirectOutput(ProcessBuilder.Redirect.DISCARD)));
  }

  /** Runs it in a folder with an input. */
  void feed(Path folder, Input input, String... arguments) throws IOException {
    Process process =
        start(builder(folder, arguments).redirectOutput(ProcessBuilder.Redirect.DISCARD));
    try (OutputStream out = process.getOutputStream()) {
      input.write(out);
    }
    finish(process);
  }

  /** What it prints. */
  String ask(Path folder, String... arguments) throws IOException {
    Process process = start(builder(folder, arguments));
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    finish(process);
    return text.strip();
  }

  private ProcessBuilder builder(Path folder, String... arguments) {
    List<String> words = new ArrayList<>(List.of("git"));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
    Map<String, String> environment = builder.environment();
    environment.keySet().removeIf(name -> name.startsWith("GIT_"));
    environment.put("HOME", home.toString());
    environment.put("XDG_CONFIG_HOME", home.resolve("xdg").toString());
    environment.put("GIT_CONFIG_NOSYSTEM", "1");
    environment.put("GIT_TERMINAL_PROMPT", "0");
    return builder.redirectError(ProcessBuilder.Redirect.INHERIT);
  }

  private static Process start(ProcessBuilder builder) {
    try {
      return builder.start();
    } catch (IOException e) {
      throw new UncheckedIOException("native Git is needed for the comparison", e);
    }
  }

  private static void finish(Process process) {
    try {
      int code = process.waitFor();
      if (code != 0) {
        throw new IllegalStateException(process.info() + " ended with " + code);
      }
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
