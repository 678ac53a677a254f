package io.ovenmark.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Masses are invented, foods are SR28 figures of the built-in table. */
class RebuildTest {
  private static final Yield SIX =
      new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(2));
  private static final Yield BY_MASS =
      new Yield(Optional.empty(), OptionalDouble.of(90), OptionalDouble.of(4));

  private static Side side(String name, Yield yield, String... lines) {
    List<Line> made = new ArrayList<>();
    for (String line : lines) {
      String[] parts = line.split(": ");
      Line plain = Line.of(parts[0], parts[0], Amount.parse(parts[1]));
      made.add(plain.withFlour(parts[0].contains("flour") || parts[0].equals("flaxseed")));
    }
    Formula formula = Formula.named(name).withLines(made).withYield(yield);
    Worksheet sheet =
        Worksheet.of(formula, BuiltInPantry::find, Policy.USUAL, BakedYield.UNMEASURED);
    return Side.of(name, sheet);
  }

  private static final Side WHEAT =
      side(
          "wheat", SIX, "wheat-flour-bread: 300 g", "water: 170 g", "egg-whole: 1 large",
          "butter-unsalted: 20 g", "sugar-granulated: 8 g", "salt: 6 g", "yeast-active-dry: 7 g",
          "sesame-seeds: 18 g");
  private static final Side LUPIN =
      side(
          "lupin", BY_MASS, "lupin-seeds: 120 g", "flaxseed: 45 g", "psyllium-husk: 30 g",
          "whey-protein-isolate: 14 g", "baking-powder: 9 g", "water: 180 g",
          "egg-whole: 1 large", "vinegar-cider: 15 g", "oil-olive: 18 g", "salt: 4.5 g",
          "pumpkin-seeds: 40 g");

  private static Rebuild.Part part(Rebuild rebuild, DoughPart wanted) {
    return rebuild.parts().stream()
        .filter(each -> each.part() == wanted)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void linesStandInThePartThatTheyPlay() {
    Rebuild rebuild = Rebuild.of(Comparison.between(WHEAT, LUPIN));

    assertThat(rebuild.parts())
        .extracting(Rebuild.Part::part)
        .containsExactly(
            DoughPart.FLOUR,
            DoughPart.BINDERS,
            DoughPart.PROTEIN,
            DoughPart.LIQUID,
            DoughPart.EGG,
            DoughPart.FAT,
            DoughPart.SWEET,
            DoughPart.LEAVENING,
            DoughPart.SEASONING,
            DoughPart.REST);
    assertThat(part(rebuild, DoughPart.EGG).rows()).hasSize(1);
    assertThat(part(rebuild, DoughPart.BINDERS).rows().get(0).from()).isEmpty();
    assertThat(part(rebuild, DoughPart.SWEET).rows().get(0).to()).isEmpty();
  }

  /** Bread flour: 300 g × (72.53 − 2.4) % × 0.98 ÷ 6 = 34.36 g net carbohydrate. */
  @Test
  void aLineBringsItsShareToAPiece() {
    Rebuild.Part flour = part(Rebuild.of(Comparison.between(WHEAT, LUPIN)), DoughPart.FLOUR);

    assertThat(flour.from().perPiece().get(Figure.NET_CARBOHYDRATE).low())
        .isCloseTo(300 * 0.7013 * 0.98 / 6, within(1e-9));
    assertThat(flour.from().grams()).isEqualTo(Quantity.known(300));
  }

  @Test
  void allLinesOfASideAddUpToThePiece() {
    for (Comparison comparison :
        List.of(Comparison.between(WHEAT, LUPIN), Comparison.between(LUPIN, WHEAT))) {
      Rebuild rebuild = Rebuild.of(comparison);
      for (Figure figure : Rebuild.FIGURES) {
        double from =
            rebuild.parts().stream().mapToDouble(p -> p.from().perPiece().get(figure).low()).sum();
        double to =
            rebuild.parts().stream().mapToDouble(p -> p.to().perPiece().get(figure).low()).sum();
        Worksheet before = comparison.from().sheet();
        Worksheet after = comparison.to().sheet();
        assertThat(from)
            .isCloseTo(before.figure(figure, Basis.PIECE).low(), within(1e-9));
        assertThat(to).isCloseTo(after.figure(figure, Basis.PIECE).low(), within(1e-9));
      }
      assertThat(rebuild.parts().stream().mapToDouble(p -> p.from().percentOfBatch().low()).sum())
          .isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void linesThatPlayDifferentPartsStandApart() {
    Side white = side("white", SIX, "egg-white: 40 g", "water: 100 g");
    Side whey = side("whey", SIX, "whey-protein-isolate: 10 g", "water: 100 g");
    Comparison comparison = Comparison.between(white, whey);
    Rebuild rebuild = Rebuild.of(comparison);

    assertThat(comparison.lines().get(0).change()).isEqualTo(LineChange.REPLACED);
    assertThat(part(rebuild, DoughPart.EGG).rows().get(0).change()).isEqualTo(LineChange.REMOVED);
    assertThat(part(rebuild, DoughPart.PROTEIN).rows().get(0).change())
        .isEqualTo(LineChange.ADDED);
    assertThat(part(rebuild, DoughPart.LIQUID).rows().get(0).change()).isEqualTo(LineChange.SAME);
  }

  @Test
  void whatALineBringsIsUnknownWithoutPieces() {
    Side undivided = side("whole", Yield.UNSTATED, "wheat-flour-bread: 300 g", "water: 170 g");
    Rebuild rebuild = Rebuild.of(Comparison.between(undivided, LUPIN));

    assertThat(
            part(rebuild, DoughPart.FLOUR).from().perPiece().get(Figure.PROTEIN).isUnknown())
        .isTrue();
    assertThat(part(rebuild, DoughPart.LIQUID).from().perPiece().get(Figure.PROTEIN))
        .isEqualTo(Quantity.ZERO);
  }

  @Test
  void aFoodThatThePantryDoesNotHaveIsToldApart() {
    Side strange = side("strange", SIX, "moon-dust: 5 g", "water: 100 g");

    assertThat(part(Rebuild.of(Comparison.between(WHEAT, strange)), DoughPart.UNKNOWN).to().grams())
        .isEqualTo(Quantity.known(5));
  }
}
