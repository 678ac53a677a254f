package io.ovenmark.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.ovenmark.measure.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class FormulaTest {
  private static final Line WATER = Line.of("water", "water", Amount.parse("1 g"));

  private static void assertRefused(ThrowingCallable make, String message) {
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(make).withMessage(message);
  }

  @Test
  void whatCannotBeReadBackCannotBeMade() {
    Formula bun = Formula.named("Bun");
    assertRefused(() -> Formula.named(" "), "A formula needs a name.\nGive it one.");
    assertRefused(
        () -> bun.withLines(List.of(WATER, WATER)),
        "The line id \"water\" stands twice.\nGive one of them another id.");
    assertRefused(
        () -> bun.withBake(List.of(BakeSetting.named("a"), BakeSetting.named("a"))),
        "The bake setting id \"a\" stands twice.\nGive one of them another id.");
    assertRefused(
        () -> WATER.withAmount(Amount.parse("1000.5 kg")),
        "The amount \"1000.5 kg\" is more than a tonne.\nCheck the number and the unit.");
    assertRefused(
        () -> BakeSetting.named("a").withMinutes(OptionalDouble.of(-1)),
        "The baking time -1 is out of range.\nUse a number from 0 to 2880.");
    assertRefused(
        () -> BakeSetting.named("a").withMinutes(OptionalDouble.of(Double.NaN)),
        "The baking time that was given is out of range.\nUse a number from 0 to 2880.");
    assertRefused(
        () -> Yield.ofPieces(0),
        "A batch of fewer than 1 piece yields nothing.\nWrite 1 or more pieces.");
    assertRefused(
        () -> Yield.ofPieces(100_001),
        "A batch of more than 100000 pieces is absurd.\nCheck the number.");
    assertRefused(
        () -> new Yield(Optional.empty(), OptionalDouble.of(0), OptionalDouble.empty()),
        "The dough mass of a piece 0 is out of range.\nUse a number from 0.01 to 1000000.");
    assertRefused(
        () -> new Yield(Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(100)),
        "The handling loss 100 is out of range.\nUse a number from 0 to 99.9.");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> bun.withGoal(Optional.of("No Slug")));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> bun.withReference(Optional.of("../x")));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> BakeSetting.named("No Slug"));
    assertThatNullPointerException().isThrownBy(() -> WATER.withAmount(null));
    assertThatNullPointerException().isThrownBy(() -> bun.withYield(null));
  }

  @Test
  void aFormulaDoesNotChangeWithTheListsItWasMadeFrom() {
    List<Line> lines = new ArrayList<>(List.of(WATER));
    Formula formula = Formula.named("Bun").withLines(lines);
    lines.clear();
    assertThat(formula.lines()).containsExactly(WATER);
  }

  @Test
  void findsFreeLineIds() {
    Formula formula = Formula.named("Bun");
    assertThat(formula.freeLineId("water")).isEqualTo("water");
    formula = formula.withLines(List.of(WATER));
    assertThat(formula.freeLineId("water")).isEqualTo("water-2");
    formula = formula.withLines(List.of(WATER, Line.of("water-2", "water", Amount.parse("1 g"))));
    assertThat(formula.freeLineId("water")).isEqualTo("water-3");
    assertThat(formula.freeLineId("salt")).isEqualTo("salt");
  }
}
