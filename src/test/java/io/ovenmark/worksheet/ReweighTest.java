package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReweighTest {
  private static Worksheet sheet(List<Line> lines) {
    return Worksheet.of(
        Formula.named("worked").withLines(lines),
        slug -> Optional.empty(),
        Policy.USUAL,
        BakedYield.UNMEASURED);
  }

  /** Amounts by line; those with a star are flour. */
  private static Worksheet sheet(String... amounts) {
    List<Line> lines = new ArrayList<>();
    for (String amount : amounts) {
      String id = "line-" + lines.size();
      Amount entered =
          amount.startsWith("?") ? Amount.unread(amount) : Amount.parse(amount.replace("*", ""));
      lines.add(Line.of(id, id, entered).withFlour(amount.endsWith("*")));
    }
    return sheet(lines);
  }

  private static Worksheet withGrams(Worksheet sheet, String id, double grams) {
    return sheet(
        sheet.formula().lines().stream()
            .map(
                line ->
                    line.id().equals(id)
                        ? line.withAmount(Amount.grams(BigDecimal.valueOf(grams)))
                        : line)
            .toList());
  }

  /**
   * The worked formulas of {@code BakersPercentageTest}, which name their sources, solved for one
   * line: the mass of the flour and the line's percentage give the line's mass.
   */
  @ParameterizedTest(name = "{1} % of {0} is {2} g")
  @CsvSource({
    "500 g, 65, 325",
    "500 g, 1, 5",
    "40 lb, 57.5, 10432.62451",
    "84 oz, 66.66666667, 1587.5732950",
    "48.27 g, 73.21317589, 35.34",
  })
  void publishedPercentagesGiveThePublishedMasses(String flour, double percent, double grams) {
    Worksheet sheet = sheet(flour + "*", "1 g");
    assertThat(Reweigh.toBakersPercent(sheet, "line-1", percent))
        .isCloseTo(grams, within(grams * 1e-6));
  }

  @Test
  void aShareOfTheBatchIsSolvedForTheLineAlone() {
    assertThat(Reweigh.toPercentOfBatch(sheet("60 g", "10 g", "30 g"), "line-1", 40))
        .isCloseTo(60, within(1e-12));
    assertThat(Reweigh.toPercentOfBatch(sheet("60 g", "10 g"), "line-1", 0)).isZero();
  }

  @Test
  void aFlourIsWeighedAgainstTheOtherFlours() {
    assertThat(Reweigh.toBakersPercent(sheet("90 g*", "10 g*", "50 g"), "line-1", 25))
        .isCloseTo(30, within(1e-12));
  }

  @RepeatedTest(200)
  void theWishComesTrueAndNothingElseMoves(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    int count = 2 + random.nextInt(12);
    String[] amounts = new String[count];
    for (int i = 0; i < count; i++) {
      amounts[i] = (1 + random.nextInt(5000)) / 10.0 + " g" + (i < 2 ? "*" : "");
    }
    Worksheet before = sheet(amounts);
    String id = "line-" + random.nextInt(count);
    double percent = random.nextInt(995) / 10.0;

    Worksheet shared = withGrams(before, id, Reweigh.toPercentOfBatch(before, id, percent));
    assertThat(shared.line(id).orElseThrow().percentOfBatch().value().orElseThrow())
        .isCloseTo(percent, within(1e-6));
    Worksheet baked = withGrams(before, id, Reweigh.toBakersPercent(before, id, percent));
    assertThat(baked.line(id).orElseThrow().bakersPercent().value().orElseThrow())
        .isCloseTo(percent, within(1e-6));
    assertThat(others(shared, id)).isEqualTo(others(before, id)).isEqualTo(others(baked, id));
  }

  private static List<Line> others(Worksheet sheet, String id) {
    return sheet.formula().lines().stream().filter(line -> !line.id().equals(id)).toList();
  }

  @RepeatedTest(50)
  void whatIsScaledWeighsWhatWasWished(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    double now = 1 + random.nextDouble() * 5000;
    double wished = 1 + random.nextDouble() * 5000;
    assertThat(now * Reweigh.factor("The batch mass", Quantity.known(now), wished))
        .isCloseTo(wished, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {100, 100.1, 1e9})
  void noMassOfOneLineIsAllOfTheBatch(double percent) {
    assertThatThrownBy(() -> Reweigh.toPercentOfBatch(sheet("60 g", "10 g"), "line-1", percent))
        .hasMessageContaining("% of the batch beside others.\nUse less than 100 %.");
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("60 g*", "9 g*"), "line-1", percent))
        .hasMessageContaining("of the flour beside others");
  }

  @Test
  void moreThanTheFlourIsPossibleForWhatIsNoFlour() {
    assertThat(Reweigh.toBakersPercent(sheet("100 g*", "9 g"), "line-1", 210)).isEqualTo(210);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void whatIsNoShareIsRefused(double percent) {
    assertThatThrownBy(() -> Reweigh.toPercentOfBatch(sheet("60 g", "9 g"), "line-1", percent))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("60 g*", "9 g"), "line-1", percent))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Reweigh.factor("The batch", Quantity.known(5), percent))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void withoutFlourThereIsNoBakersPercentage() {
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("60 g", "10 g"), "line-1", 50))
        .hasMessageContaining("No line is marked as flour");
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("60 g*", "10 g"), "line-0", 50))
        .hasMessageContaining("always 100 %");
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("0 g*", "10 g"), "line-1", 50))
        .hasMessageContaining("weighs nothing");
  }

  @Test
  void otherLinesOfUnknownMassAreNamed() {
    assertThatThrownBy(() -> Reweigh.toPercentOfBatch(sheet("? g", "10 g"), "line-1", 50))
        .hasMessageContaining("How much line-0 weighs is not known");
    assertThat(Reweigh.toPercentOfBatch(sheet("30 g", "? g"), "line-1", 50))
        .as("its own mass need not be known")
        .isEqualTo(30);
    assertThatThrownBy(() -> Reweigh.toBakersPercent(sheet("? g*", "10 g"), "line-1", 50))
        .hasMessageContaining("not known");
    assertThat(Reweigh.toBakersPercent(sheet("30 g*", "? g", "1 g"), "line-2", 50)).isEqualTo(15);
  }

  @Test
  void nothingIsScaledToWhatIsNotKnown() {
    assertThatThrownBy(() -> Reweigh.factor("The batch mass", Quantity.atLeast(5), 10))
        .hasMessageContaining("The batch mass is not known");
    assertThatThrownBy(() -> Reweigh.factor("The batch mass", Quantity.ZERO, 10))
        .hasMessageContaining("nothing yet");
  }
}
