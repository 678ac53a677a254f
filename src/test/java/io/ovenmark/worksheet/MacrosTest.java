package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MacrosTest {
  private static final Macros ONE_TO_TWELVE =
      Macros.of(figure -> Quantity.known(figure.ordinal() + 1));

  @Test
  void addsMultipliesAndDividesEachMacro() {
    Macros twice = ONE_TO_TWELVE.plus(ONE_TO_TWELVE);
    assertThat(twice).isEqualTo(ONE_TO_TWELVE.times(Quantity.known(2)));
    assertThat(twice).hasSameHashCodeAs(ONE_TO_TWELVE.times(Quantity.known(2)));
    assertThat(twice.dividedBy(Quantity.known(2))).isEqualTo(ONE_TO_TWELVE);
    assertThat(twice).isNotEqualTo(ONE_TO_TWELVE);
    assertThat(ONE_TO_TWELVE.plus(Macros.NONE)).isEqualTo(ONE_TO_TWELVE);
    assertThat(ONE_TO_TWELVE.times(Quantity.ZERO)).isEqualTo(Macros.NONE);
    assertThat(ONE_TO_TWELVE.dividedBy(Quantity.ZERO)).isEqualTo(Macros.UNKNOWN);
  }

  @Test
  void replacesOneMacroAndLeavesTheOthers() {
    Macros changed = ONE_TO_TWELVE.with(Figure.FAT, Quantity.UNKNOWN);
    for (Figure figure : Figure.macros()) {
      assertThat(changed.get(figure))
          .isEqualTo(figure == Figure.FAT ? Quantity.UNKNOWN : ONE_TO_TWELVE.get(figure));
    }
  }

  @Test
  void listsAllMacrosInTheirOrder() {
    assertThat(ONE_TO_TWELVE.toMap().keySet()).containsExactlyElementsOf(Figure.macros());
  }

  @Test
  void refusesAFigureThatIsNoMacro() {
    assertThatThrownBy(() -> ONE_TO_TWELVE.get(Figure.LIQUID_RATIO))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ONE_TO_TWELVE.with(Figure.LIQUID_RATIO, Quantity.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @EnumSource(Figure.class)
  void figuresAreFoundByTheirKeyWhichEndsInTheirUnit(Figure figure) {
    assertThat(Figure.withKey(figure.key())).contains(figure);
    assertThat(Figure.macros().contains(figure)).isEqualTo(figure.isMacro());
    if (figure.isMacro()) {
      assertThat(figure.key()).endsWith("_" + figure.unit());
      figure.nutrient().ifPresent(nutrient -> assertThat(nutrient.key()).isEqualTo(figure.key()));
    }
  }

  @ParameterizedTest
  @EnumSource(Basis.class)
  void basesAreFoundByTheirLabel(Basis basis) {
    assertThat(Basis.withLabel(basis.label())).contains(basis);
    assertThat(Basis.withLabel(basis.key())).isEmpty();
  }

  @Test
  void anotherKeyIsNoFigure() {
    assertThat(Figure.withKey("vitamin_c_mg")).isEmpty();
  }
}
