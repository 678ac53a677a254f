package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class ExitCodesTest {
  @TempDir Path folder;

  /** A clock that breaks, as a program may. */
  private static final class Broken extends Clock {
    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      throw new IllegalStateException("The clock stands still\u001B[31m");
    }
  }

  @Test
  void whatIsDoneIsZero() {
    assertThat(Saltmarsh.empty(folder).run("list").code()).isZero();
  }

  @Test
  void whatIsRefusedIsOne() {
    Bench.Result result = new Bench(folder).run("list");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.out()).isEmpty();
    assertThat(result.err())
        .isEqualTo(
            """
            ovenmark: There is no notebook in this folder.
              where: %1$s
              hint:  Make one with: ovenmark new --notebook %1$s
            """
                .formatted(folder));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lst",
        "",
        "show",
        "show a b",
        "list --colour",
        "timeline a --limit many",
        "new",
        "revise a --base 0 --set x=1g --note n",
        "timeline a --limit 0",
        "revise a --set"
      })
  void wrongUsageIsTwo(String line) {
    Bench bench = Saltmarsh.empty(folder);
    Bench.Result result = bench.run(line.isEmpty() ? new String[0] : line.split(" "));
    assertThat(result.code()).as(result.toString()).isEqualTo(2);
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).startsWith("ovenmark: ").contains("See: ovenmark").contains("--help");
  }

  @Test
  void aConflictIsThree() {
    Bench bench = Saltmarsh.bench(folder);
    Bench.Result result =
        bench.run(
            "revise", "seeded-lupin-bun", "--base", "2", "--set", "water=200g", "--note", "Wet");
    assertThat(result.code()).isEqualTo(3);
    assertThat(result.out()).isEmpty();
  }

  @Test
  void aFaultOfTheProgramIsFourAndOneSentence() {
    Saltmarsh.empty(folder);
    Bench.Result result = new Bench(folder).run(new Broken(), "new", "Lupin bun");
    assertThat(result.code()).isEqualTo(4);
    assertThat(result.err())
        .isEqualTo(
            """
            ovenmark: Something went wrong inside the program (IllegalStateException: The clock
            stands still␛[31m).
              hint:  For a report of the fault, repeat the command with --debug.
            """);
  }

  @Test
  void theStackTraceComesOnlyWhenAskedFor() {
    Saltmarsh.empty(folder);
    Bench bench = new Bench(folder);
    assertThat(bench.run(new Broken(), "new", "Lupin bun", "--debug").err())
        .contains("at io.ovenmark.cli.");
    assertThat(bench.with("OVENMARK_DEBUG", "1").run(new Broken(), "new", "Lupin bun").err())
        .contains("at io.ovenmark.cli.");
  }

  @Test
  void theMapperKnowsUsageToo() {
    CommandLine command = new CommandLine(CommandLine.Model.CommandSpec.create());
    assertThat(Complaints.code(new CommandLine.ParameterException(command, "x"))).isEqualTo(2);
    assertThat(Complaints.code(new Refusal(Refusal.Reason.CONFLICT, "", "x", ""))).isEqualTo(3);
    assertThat(Complaints.code(new Refusal(Refusal.Reason.EXISTS, "", "x", ""))).isEqualTo(1);
    assertThat(Complaints.code(new StackOverflowError())).isEqualTo(4);
  }
}
