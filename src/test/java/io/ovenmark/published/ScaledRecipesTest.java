package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.lever.ScaleQuestion;
import io.ovenmark.lever.Scaling;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Scaling up and down leaves what is relative where the sources put it. The recipes in percent and
 * their composition are those of SR28 (U.S. Department of Agriculture, National Nutrient Database
 * for Standard Reference, Release 28, NDB No. 11657 and 11934, computed from the rounded shares of
 * the footnote file); the baker's percentages are worked in teaching material of the trade, see
 * {@link BakersPercentageTest}.
 */
class ScaledRecipesTest {
  private static final Yield ONE = Yield.ofPieces(1);

  private static Worksheet scaled(Worksheet sheet, double factor) {
    double dough = sheet.doughPerPieceGrams().low() * factor;
    return Scaling.of(
            sheet,
            ScaleQuestion.NOTHING.withDoughPerPiece(dough).withReading(0),
            ShownUnits.AS_WRITTEN)
        .exact();
  }

  /** Computed from the nominal shares, per 100 g: protein, fat, carbohydrate, fibre, water. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "11367:84 01077:15 02047:1 | 1.91 | 0.57 | 17.53 | 1.51 | 78.29",
        "11367:80 01077:14 01001:5 02047:1 | 1.85 | 4.59 | 16.68 | 1.44 | 75.10",
      })
  void aRecipeInPercentKeepsItsCompositionAtAnySize(
      String recipe, double protein, double fat, double carbohydrate, double fibre, double water) {
    List<String[]> lines = new ArrayList<>();
    for (String part : recipe.split(" ")) {
      String[] cells = part.split(":");
      lines.add(new String[] {cells[0], cells[1] + " g"});
    }
    Worksheet sheet =
        PublishedData.sheet(PublishedData.formula(ONE, lines), BakedYield.UNMEASURED);
    for (double factor : List.of(0.01, 0.3, 1.0, 12.5, 480.0)) {
      Worksheet other = scaled(sheet, factor);
      assertThat(other.batchGrams().low()).isCloseTo(100 * factor, within(1e-9 * factor * 100));
      is(other, Figure.PROTEIN, protein);
      is(other, Figure.FAT, fat);
      is(other, Figure.CARBOHYDRATE, carbohydrate);
      is(other, Figure.FIBRE, fibre);
      is(other, Figure.WATER, water);
      Worksheet back = scaled(other, 1 / factor);
      for (int i = 0; i < sheet.lines().size(); i++) {
        assertThat(back.lines().get(i).grams().low())
            .isCloseTo(sheet.lines().get(i).grams().low(), within(1e-9));
      }
    }
  }

  private static void is(Worksheet sheet, Figure figure, double value) {
    assertThat(sheet.figure(figure, Basis.DOUGH_100_G).low())
        .as(figure.label())
        .isCloseTo(value, within(0.0051));
  }

  @ParameterizedTest
  @CsvSource({
    "500 g | 325 g | 10 g | 5 g, 100 65 2 1",
    "40 lb | 11.2 oz | 0.8 lb | 0.15 lb | 23.2 lb, 100 1.75 2 0.375 58",
    "40 lb | 23 lb, 100 57.5",
    "84 oz | 56 oz, 100 66.6667",
    "48.27 g | 35.34 g | 13.19 g | 2.66 g | 0.54 g, 100 73.21 27.33 5.51 1.12",
  })
  void bakersPercentagesStayAtAnySize(String amounts, String percents) {
    List<Line> lines = new ArrayList<>();
    for (String amount : amounts.split(" \\| ")) {
      String id = "line-" + lines.size();
      lines.add(Line.of(id, id, Amount.parse(amount)).withFlour(lines.isEmpty()));
    }
    Worksheet sheet =
        Worksheet.of(
            Formula.named("worked").withLines(lines).withYield(ONE),
            slug -> Optional.empty(),
            Policy.USUAL,
            BakedYield.UNMEASURED);
    String[] wanted = percents.split(" ");
    for (double factor : List.of(0.05, 1.0, 7.0, 20.0)) {
      Worksheet other = scaled(sheet, factor);
      for (int i = 0; i < wanted.length; i++) {
        assertThat(other.lines().get(i).bakersPercent().low())
            .isCloseTo(Double.parseDouble(wanted[i]), within(0.006));
      }
    }
  }
}
