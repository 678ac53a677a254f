package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.bake;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.goal;
import static io.ovenmark.compare.Bench.held;
import static io.ovenmark.compare.Bench.oven;
import static io.ovenmark.compare.Bench.piece;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A comparison told to readers of other units: other words, the same facts. */
class ShownComparisonTest {
  private static final Formula BEFORE =
      oven(formula("lupin-flour 150 g *", "egg-white 80 g", "water 210 g"), "190 °C", 24)
          .withYield(ofDough(90));
  private static final Formula AFTER =
      oven(
              formula("lupin-flour 150 g *", "egg-white 40 g", "whey-isolate 10 g", "water 188 g"),
              "205 °C",
              21)
          .withYield(ofDough(95));

  private static Yield ofDough(double grams) {
    return new Yield(Optional.empty(), OptionalDouble.of(grams), OptionalDouble.empty());
  }

  private static Comparison told(String mass, String degrees) {
    Side before =
        held("bun@5", BEFORE, goal())
            .withBakes(List.of(bake("2026-08-28-1", piece("a", "190 °C", 24, 31))));
    Side after =
        held("bun@7", AFTER, goal())
            .withBakes(
                List.of(
                    bake(
                        "2026-09-09-1",
                        piece("a", "205 °C", 21, 44),
                        piece("b", "374 °F", 24, 40))));
    return Comparison.between(
        before, after, ShownUnits.of(Optional.of(mass), Optional.of(degrees)));
  }

  @Test
  void sentencesAreInTheUnitsOfTheReader() {
    Comparison ounces = told("oz", "F");
    assertThat(ounces.summary())
        .contains("water down 0.776 oz", "374 → 401 °F", "dough a piece 3.17 → 3.35 oz")
        .doesNotContain("°C", "22 g", "90 → 95 g")
        .contains(" g a piece");
    assertThat(ounces.process().get(0).from()).contains("374 °F");
    assertThat(ounces.yieldChanges().get(0).to()).contains("3.35 oz");
    assertThat(ounces.figures().stream().flatMap(each -> each.contributions().stream()))
        .extracting(Contribution::text)
        .contains("water −0.776 oz", "dough a piece 3.17 → 3.35 oz")
        .noneMatch(text -> text.endsWith(" g"));
    assertThat(ounces.confounding().influences())
        .extracting(Confounding.Influence::detail)
        .contains("−0.776 oz", "374 °F → 374 °F and 401 °F");
    assertThat(ounces.confounding().likeForLikeSentence().orElseThrow())
        .contains("374 °F for 24 min");
  }

  @Test
  void factsAreTheSame() {
    Comparison grams = told("g", "C");
    Comparison ounces = told("oz", "F");
    assertThat(ounces.changes()).isEqualTo(grams.changes());
    assertThat(ounces.lines()).isEqualTo(grams.lines());
    assertThat(ounces.outcomes()).isEqualTo(grams.outcomes());
    assertThat(ounces.goal()).isEqualTo(grams.goal());
    assertThat(ounces.confounding().verdict()).isEqualTo(grams.confounding().verdict());
    assertThat(ounces.confounding().likeForLike()).isEqualTo(grams.confounding().likeForLike());
    for (int i = 0; i < grams.figures().size(); i++) {
      FigureComparison one = grams.figures().get(i);
      FigureComparison other = ounces.figures().get(i);
      assertThat(other.from()).isEqualTo(one.from());
      assertThat(other.delta()).isEqualTo(one.delta());
      assertThat(other.contributions())
          .extracting(Contribution::delta)
          .isEqualTo(one.contributions().stream().map(Contribution::delta).toList());
    }
  }

  @Test
  void whoeverWantsNothingElseGetsWhatWasWritten() {
    Side before = held("bun@5", BEFORE, goal());
    Side after = held("bun@7", AFTER, goal());
    assertThat(Comparison.between(before, after, ShownUnits.AS_WRITTEN))
        .isEqualTo(Comparison.between(before, after));
    assertThat(ComparisonText.of(Comparison.between(before, after))).contains("190 → 205 °C");
  }

  @Test
  void aFigureThatIsWeighedFollowsAndANutrientStaysInGrams() {
    Comparison ounces = told("oz", "F");
    FigureComparison dough =
        ounces.figure(Figure.DOUGH_PER_PIECE, Basis.PIECE);
    assertThat(dough.text(dough.from(), ounces.units())).isEqualTo("3.17 oz");
    assertThat(dough.difference(ounces.units())).isEqualTo("+0.176");
    FigureComparison protein = ounces.figure(Figure.PROTEIN, Basis.PIECE);
    assertThat(protein.text(protein.from(), ounces.units())).endsWith(" g");
  }
}
