package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Baker's percentage: the flour is 100 %, each line its mass divided by the mass of the flour.
 * Common practice of the baking trade, no single source. The first row is computed by hand; the
 * next three are worked in teaching material of the trade; the last has the masses of the biscuits
 * of dishes.csv.
 */
class BakersPercentageTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "500 g | 325 g | 10 g | 5 g, 100 65 2 1, 168",
    "40 lb | 11.2 oz | 0.8 lb | 0.15 lb | 23.2 lb, 100 1.75 2 0.375 58, 162.125",
    "40 lb | 23 lb, 100 57.5, 157.5",
    "84 oz | 56 oz, 100 66.6667, 166.6667",
    "48.27 g | 35.34 g | 13.19 g | 2.66 g | 0.54 g, 100 73.21 27.33 5.51 1.12, 207.17",
  })
  void linesAreStatedInPercentOfTheFlour(String amounts, String percents, double sum) {
    List<Line> lines = new ArrayList<>();
    for (String amount : amounts.split(" \\| ")) {
      String id = "line-" + lines.size();
      lines.add(Line.of(id, id, Amount.parse(amount)).withFlour(lines.isEmpty()));
    }

    Worksheet sheet =
        Worksheet.of(
            Formula.named("worked").withLines(lines),
            slug -> Optional.empty(),
            Policy.USUAL,
            BakedYield.UNMEASURED);

    String[] wanted = percents.split(" ");
    double total = 0;
    for (int i = 0; i < wanted.length; i++) {
      WorksheetLine line = sheet.lines().get(i);
      double percent = line.bakersPercent().value().orElseThrow();
      assertThat(percent).isCloseTo(Double.parseDouble(wanted[i]), within(0.006));
      total += percent;
    }
    assertThat(total).isCloseTo(sum, within(0.01));
  }
}
