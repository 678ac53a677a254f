package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindWindow;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.WindowOrder;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WindowCommandTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  private void bakeTray() {
    bench.must(
        "bake", "add", "seeded-lupin-bun",
        "--piece", "a 190C 20min core=90C finding='gummy crumb' log='5min 40C,20min 90C'",
        "--piece", "b 190C 25min core=95C finding='even crumb'",
        "--piece", "c 190C 30min core=98C finding=dry",
        "--piece", "d 205C 16min core=90C finding='gummy crumb'",
        "--piece", "e 205C 20min core=95C finding='even crumb'");
  }

  @Test
  void theMapItsLimitsAndWhatToBakeNextAreListed() {
    bakeTray();
    String out =
        bench
            .must(
                "window", "seeded-lupin-bun", "--pieces", "revision", "--limit",
                "no gummy crumb", "--limit", "not dry")
            .out();

    assertThat(out)
        .startsWith("Seeded lupin bun\nseeded-lupin-bun@3\n\nLimits: no gummy crumb, not dry\n")
        .contains("this revision only 5 (taken)")
        .contains("Pieces in 100 that keep all limits, by oven and minutes\n")
        .contains("no gummy crumb: kept by 3 of 5 pieces known. A fifth more time: ")
        .contains("\nTo bake next\n")
        .contains("never says that a piece is safe");
    assertThat(out.lines().filter(line -> !line.contains("gummy")))
        .allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(100));
  }

  @Test
  void withTooLittleItSaysWhatIsMissing() {
    String out = bench.must("window", "seeded-lupin-bun").out();

    assertThat(out).contains("No map yet: ").contains("a map needs at least 4.");
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    bakeTray();
    try (Desk desk = new Desk(Notebook.open(folder))) {
      Address bun = Address.parse("seeded-lupin-bun");
      String said =
          bench
              .must(
                  "window", "seeded-lupin-bun", "--pieces", "all", "--limit", "not dry", "--json")
              .out();
      assertThat(said)
          .isEqualTo(
              Json.readable(new FindWindow(desk).call(bun, WindowOrder.of("all", "not dry"))));
    }
  }

  @Test
  void aLimitThatIsNotUnderstoodIsRefused() {
    Bench.Result refused = bench.run("window", "seeded-lupin-bun", "--limit", "nice");

    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("The limit \"nice\" is not understood.");
  }

  @Test
  void aLogIsAddedToABakeAndShown() {
    bakeTray();
    bench.must(
        "bake", "set", "seeded-lupin-bun", "2026-03-02-2", "--piece", "b log='6min 42C,25min 95C'");
    String shown = bench.must("bake", "show", "seeded-lupin-bun", "2026-03-02-2").out();
    assertThat(shown)
        .contains("core 5 min 40 °C, 20 min 90 °C")
        .contains("core 6 min 42 °C, 25 min 95 °C");
  }
}
