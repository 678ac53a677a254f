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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;

/**
 * A command line for tests: its own folder and output, and a clock that moves on by a minute with
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
    /** The output with commit ids made alike, for comparing whole outputs. */
    String shown() {
      return out.replaceAll("commit [0-9a-f]{10}", "commit ··········");
    }

    /** What was said on the error stream, on one line. */
    String said() {
      return err.strip().replaceAll("\\s+", " ");
    }

    /** All of it, for messages. */
    @Override
    public String toString() {
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

  /** The same bench seen from another folder. */
  Bench from(Path other) {
    Bench bench = new Bench(other);
    bench.commands = commands;
    return bench;
  }

  /** Goes on with the clock after so many commands. */
  Bench after(int done) {
    commands = done;
    return this;
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

  /** Runs a command. */
  Result run(String... args) {
    Instant now = BEGINNING.plus(Duration.ofMinutes(commands++));
    return run(Clock.fixed(now, ZoneOffset.UTC), args);
  }

  /** Runs a command by another clock. */
  Result run(Clock clock, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Ovenmark.run(surroundings(clock, out, err), args);
    input = new byte[0];
    return new Result(code, out.toString(), err.toString());
  }

  /** The top-level command with all others, for looking at. */
  CommandLine commandLine() {
    Surroundings surroundings =
        surroundings(Clock.systemUTC(), new StringWriter(), new StringWriter());
    return Ovenmark.commandLine(new Ovenmark(surroundings, List.of()));
  }

  private Surroundings surroundings(Clock clock, StringWriter out, StringWriter err) {
    return new Surroundings(
        new PrintWriter(out),
        new PrintWriter(err),
        new ByteArrayInputStream(input),
        folder,
        folder,
        clock,
        "bench",
        name -> Optional.ofNullable(environment.get(name)),
        () -> {});
  }

  /** Runs a command that must be done. */
  Result must(String... args) {
    Result result = run(args);
    if (result.code() != 0) {
      throw new AssertionError(String.join(" ", args) + "\n" + result);
    }
    return result;
  }
}
