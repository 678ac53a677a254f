package io.ovenmark.cli;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A command line for tests: its own folder, output, author and a clock that moves on by a minute with
 * each command.
 *
 * <pre>{@code
 * Bench bench = new Bench(folder);
 * Bench.Result result = bench.run("list");
 * }</pre>
 */
final class Bench {
  private static final Instant BEGINNING = Instant.parse("2026-03-02T09:00:00Z");

  private final Path folder;
  private final Map<String, String> environment = new HashMap<>();
  private byte[] input = new byte[0];
  private int commands;

  /** What a command gave. */
  record Result(int code, String out, String err) {
    /** All of it, for comparing whole outputs. */
    String all() {
      return out + (err.isEmpty() ? "" : "-- err --\n" + err) + "-- exit " + code + " --\n";
    }
  }

  /** A bench in a folder, which is the current folder of its commands. */
  Bench(Path folder) {
    this.folder = folder.toAbsolutePath();
  }

  Path folder() {
    return folder;
  }

  /** Sets an environment variable for the commands that follow. */
  Bench with(String name, String value) {
    environment.put(name, value);
    return this;
  }

  /** Sets what the next command reads from its input. */
  Bench input(String text) {
    input = text.getBytes(StandardCharsets.UTF_8);
    return this;
  }

  /** Runs a command as the author Mara Quell unless it states one. */
  Result run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Surroundings surroundings =
        new Surroundings(
            new PrintWriter(out),
            new PrintWriter(err),
            new ByteArrayInputStream(input),
            folder,
            Clock.fixed(BEGINNING.plus(Duration.ofMinutes(commands++)), ZoneOffset.UTC),
            "mara",
            name -> Optional.ofNullable(environment.get(name)));
    int code = Ovenmark.run(surroundings, args);
    input = new byte[0];
    return new Result(code, out.toString(), err.toString());
  }

  /** Runs a command that must be done. */
  Result must(String... args) {
    Result result = run(args);
    if (result.code() != 0) {
      throw new AssertionError(String.join(" ", args) + "\n" + result.all());
    }
    return result;
  }
}
