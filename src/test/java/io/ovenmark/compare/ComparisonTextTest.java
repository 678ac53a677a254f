package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.bake;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.goal;
import static io.ovenmark.compare.Bench.held;
import static io.ovenmark.compare.Bench.oven;
import static io.ovenmark.compare.Bench.piece;
import static io.ovenmark.compare.Bench.sheet;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Policy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ComparisonTextTest {
  private static final Path SHOWN_IN = Path.of("src/main/java/io/ovenmark/compare/Comparison.java");

  private static Comparison example() {
    Formula from =
        oven(
                formula(
                    "lupin-flour 105 g *",
                    "psyllium 24 g",
                    "egg-white 80 g",
                    "water 210 g",
                    "salt 4 g"),
                "190 °C",
                24)
            .withMethod(List.of("Mix the dry foods.", "Rest 20 min.", "Bake."));
    Formula to =
        oven(
                formula(
                    "lupin-flour 105 g *",
                    "psyllium 24 g",
                    "egg-white 40 g",
                    "whey-isolate 10 g",
                    "water 188 g",
                    "salt 4 g"),
                "205 °C",
                21)
            .withMethod(List.of("Mix the dry foods.", "Rest 30 min.", "Bake."))
            .withYield(Yield.ofPieces(7));
    Side before =
        dated("seeded-lupin-bun@5", "2026-08-28", "Psyllium up, for height", from)
            .withBakes(
                List.of(
                    bake(
                        "2026-08-28-1",
                        piece("a", "190 °C", 24, 31, List.of("gummy crumb"), List.of(5.0, 6.0)))));
    Side after =
        dated("seeded-lupin-bun@7", "2026-09-09", "Drier dough, hotter and shorter bake", to)
            .withBakes(
                List.of(
                    bake(
                        "2026-09-09-1",
                        piece("a", "205 °C", 18, 44),
                        piece("b", "205 °C", 21, 46, List.of("even crumb"), List.of(7.0)))));
    return Comparison.between(before, after);
  }

  private static Side dated(String address, String date, String note, Formula formula) {
    Side side = held(address, formula, goal(4, "eggs"));
    return new Side(
        address,
        Optional.of(OffsetDateTime.parse(date + "T18:00:00+02:00")),
        Optional.of(note),
        side.sheet(),
        side.goal(),
        List.of());
  }

  @Test
  void theExampleInTheDocumentationIsWhatIsPrinted() throws IOException {
    String documented =
        Files.readAllLines(SHOWN_IN).stream()
            .map(line -> line.replaceFirst("^ \\* ?", ""))
            .dropWhile(line -> !line.startsWith("○ "))
            .takeWhile(line -> !line.startsWith("}</pre>"))
            .map(line -> line + "\n")
            .collect(Collectors.joining());
    assertThat(ComparisonText.of(example())).isEqualTo(documented);
  }

  @Test
  void noLineIsLongerThanTheWidth() {
    String text = ComparisonText.of(example());
    assertThat(text.lines())
        .allMatch(line -> line.codePointCount(0, line.length()) <= TextLayout.WIDTH)
        .noneMatch(line -> line.endsWith(" "));
  }

  @Test
  void theDefaultLocaleHasNoSay() {
    String usual = ComparisonText.of(example());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(ComparisonText.of(example())).isEqualTo(usual);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void nothingThatDiffersIsSaidShortly() {
    Side side = Side.of("bun@5", sheet(formula("water 100 g", "lupin-flour 80 g")));
    assertThat(ComparisonText.of(Comparison.between(side, side)))
        .startsWith("○ bun@5\n● bun@5\n\nNothing that is weighed, done or baked differs.\n")
        .contains("  2 unchanged\n")
        .doesNotContain("What moved")
        .doesNotContain("Method")
        .contains("Neither side has a bake, so nothing can be said about outcomes.");
  }

  @Test
  void formulasWithoutLinesPrint() {
    assertThat(ComparisonText.of(Bench.compare(formula(), formula())))
        .contains("Nothing that is weighed, done or baked differs.");
  }

  @Test
  void charactersThatSteerATerminalArePrintedAsSpaces() {
    Food food = Bench.FOODS.get("lupin-flour");
    Food hostile =
        Bench.withFigure(food, food.slug(), "lupin\u001b[31m\nflour\u202e", Nutrient.ASH, 3.0);
    Formula from = formula("lupin-flour 80 g").withMethod(List.of("Mix\u001b[2J it."));
    Formula to = formula("lupin-flour 90 g").withMethod(List.of("Mix\u0007 it well."));
    String text =
        ComparisonText.of(
            Comparison.between(
                Side.of("a", sheet(from, Bench.with(hostile), Policy.USUAL)),
                Side.of("b", sheet(to, Bench.with(hostile), Policy.USUAL))));
    assertThat(text.chars().filter(c -> c != '\n').anyMatch(Character::isISOControl)).isFalse();
    assertThat(text).doesNotContain("\u202e");
  }

  @Test
  void aNumberIsNotPartedFromItsUnit() {
    assertThat(TextLayout.wrap("from 190 °C to 205 °C now", 16))
        .containsExactly("from 190 °C to", "205 °C now");
    assertThat(TextLayout.wrap("liking 5.5 (n 2), pale", 15))
        .containsExactly("liking 5.5", "(n 2), pale");
  }

  @Test
  void longWordsAndNamesAreCutOrBrokenAtTheWidth() {
    Food food = Bench.FOODS.get("lupin-flour");
    Food wordy = Bench.withFigure(food, food.slug(), "λ".repeat(300), Nutrient.ASH, 3.0);
    String text =
        ComparisonText.of(
            Comparison.between(
                Side.of("a", sheet(formula("lupin-flour 80 g"), Bench.with(wordy), Policy.USUAL)),
                Side.of("b", sheet(formula("water 90 g").withName("β".repeat(200))))));
    assertThat(text.lines())
        .allMatch(line -> line.codePointCount(0, line.length()) <= TextLayout.WIDTH);
  }
}
