package io.ovenmark.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Extras;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTest {

  @ParameterizedTest
  @CsvSource({
    "NET_CARBOHYDRATE, PIECE, , 4, at most 4 g net carbohydrate a piece",
    "PROTEIN, PIECE, 8.50, , at least 8.5 g protein a piece",
    "ENERGY, BATCH, , 2000, at most 2000 kcal energy a batch",
    "SODIUM, BAKED_100_G, 0, 450, at least 0 mg and at most 450 mg sodium per 100 g baked",
    "FAT, DOUGH_100_G, 10, 20, at least 10 g and at most 20 g fat per 100 g dough",
    "LIQUID_RATIO, PIECE, 0.6, 0.8, liquid ratio at least 0.6 and at most 0.8",
    "DOUGH_MOISTURE, BATCH, , 45, dough moisture at most 45 %",
    "PIECES, BATCH, 12, , pieces at least 12",
  })
  void saysItselfInWords(Figure figure, Basis basis, Double atLeast, Double atMost, String words) {
    assertThat(limit(figure, basis, atLeast, atMost).inWords()).isEqualTo(words);
  }

  @Test
  void theBasisOfAFigureThatIsNoMacroHasNoMeaning() {
    assertThat(limit(Figure.LIQUID_RATIO, Basis.BATCH, 1.0, null))
        .isEqualTo(limit(Figure.LIQUID_RATIO, Basis.PIECE, 1.0, null));
  }

  @ParameterizedTest
  @CsvSource({
    ", , has no bound",
    "5, 4, contradict each other",
    "-1, , negative or no number",
    ", NaN, negative or no number",
    ", Infinity, negative or no number",
  })
  void boundsThatMakeNoSenseAreRefused(Double atLeast, Double atMost, String message) {
    assertThatThrownBy(() -> limit(Figure.FAT, Basis.PIECE, atLeast, atMost))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message)
        .hasMessageContaining("\n");
  }

  private static Limit limit(Figure figure, Basis basis, Double atLeast, Double atMost) {
    return new Limit(figure, basis, bound(atLeast), bound(atMost), Extras.NONE);
  }

  private static OptionalDouble bound(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
