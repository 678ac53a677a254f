package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PastedYieldTest {
  @ParameterizedTest
  @CsvSource({
    "Makes 12, 12", "Makes 12 buns, 12", "MAKES 12 BUNS., 12", "Makes: 12, 12", "Makes about 12, 12",
    "Yield: 8 buns, 8", "Yields 8, 8", "Makes 2 dozen crackers, 24", "- Makes 6, 6", "Makes 1 loaf, 1"
  })
  void piecesAreCertain(String line, int pieces) {
    PastedYield yield = PastedYield.read(line).orElseThrow();
    assertThat(yield.pieces()).contains(pieces);
    assertThat(yield.remark()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "Serves 6, 6", "Servings: 6, 6", "6 servings, 6", "Serves 4-6, 4", "Makes 10 to 12, 10",
    "Makes 6 servings, 6", "Yield: 8 portions, 8"
  })
  void servingsAndRangesAreAQuestion(String line, int perhaps) {
    PastedYield yield = PastedYield.read(line).orElseThrow();
    assertThat(yield.pieces()).isEmpty();
    assertThat(yield.perhaps()).contains(perhaps);
    assertThat(yield.remark().orElseThrow()).contains("State the pieces yourself.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Makes 500 g", "Makes 0", "Makes 999999", "Makes a lot", "Makes 1 loaf, 12 slices",
        "Yield: 12 cups"
      })
  void whatIsNoNumberOfPiecesIsSaid(String line) {
    PastedYield yield = PastedYield.read(line).orElseThrow();
    assertThat(yield.pieces()).isEmpty();
    assertThat(yield.perhaps()).isEmpty();
    assertThat(yield.remark()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"12 buns", "120 g water", "For 6 hours", "", "12", "For the topping:", "Makesure 3"})
  void otherLinesAreNone(String line) {
    assertThat(PastedYield.read(line)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"12 buns, 12,", "12 pieces, 12,", "12,, 12", "6 servings,, 6", "Makes 9, 9,"})
  void aYieldOfItsOwnMayLackTheWordMakes(String text, Integer pieces, Integer perhaps) {
    PastedYield yield = PastedYield.of(text);
    assertThat(yield.pieces().orElse(null)).isEqualTo(pieces);
    assertThat(yield.perhaps().orElse(null)).isEqualTo(perhaps == null ? pieces : perhaps);
  }
}
