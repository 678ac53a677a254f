package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ShowMattered;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MatteredCommandTest {
  private static final String BUN = "seeded-lupin-bun";

  @TempDir static Path temporary;
  private static Bench bench;

  @BeforeAll
  static void makeTheDemo() {
    Path folder = temporary.resolve("saltmarsh");
    DemoNotebook.create(folder, (done, total) -> {});
    bench = new Bench(folder);
  }

  @Test
  void whatStandsOutComesFirstInPlainWordsThenTheFigures() {
    String out = bench.must("mattered", BUN).out();

    assertThat(out)
        .startsWith(
            """
            Seeded lupin bun
            seeded-lupin-bun@13

            11 bakes · 38 pieces
            Something stands out for height,\
            """)
        .contains(
            """
            Height
              A hotter oven went with higher pieces: about 1.6 mm more for each 10 °C, between 1.1
              and 2.2; changed alone twice of seven times. Also more whey protein isolate\
            """)
        .contains("\nWhat it cannot tell\n  What went together is not proof of a cause;")
        .contains("18 changes were looked at; if none of them mattered");
    assertThat(out.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(89));
  }

  @Test
  void oneOutcomeIsListedWithEveryChangeThatWasLookedAt() {
    String out = bench.must("mattered", BUN, "--outcome", "wet line", "--all").out();
    assertThat(out)
        .contains("\nWet line\n")
        .contains("More egg white")
        .doesNotContain("less sure change")
        .doesNotContain("\nHeight\n");
  }

  @Test
  void tooFewBakesSayWhatIsMissing() {
    assertThat(bench.must("mattered", "sesame-crispbread").out())
        .contains("there are three bakes, and at least four are")
        .contains("Note the height of 1 more bake.");
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    try (Desk desk = new Desk(Notebook.open(temporary.resolve("saltmarsh")))) {
      assertThat(bench.must("mattered", BUN, "--variants", "--json").out())
          .isEqualTo(
              Json.readable(
                  new ShowMattered(desk).call(Address.parse(BUN), true, Optional.empty())));
    }
  }

  @Test
  void anUnknownOutcomeIsRefusedWithThoseThatThereAre() {
    Bench.Result result = bench.run("mattered", BUN, "--outcome", "colour");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err()).contains("no outcome \"colour\"", "height, width, spread factor");
  }
}
