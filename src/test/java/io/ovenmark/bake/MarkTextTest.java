package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkTextTest {
  private final List<Piece> pieces = List.of(Piece.named("a"), Piece.named("b2"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"a=0.3,0.4 | a | 0.3 | 0.4", " b2 = 1 , 0 | b2 | 1 | 0", "a=.5,.25 | a | 0.5 | 0.25"})
  void namesThePieceAndItsPlace(String text, String piece, double x, double y) {
    assertThat(MarkText.read(text, pieces)).isEqualTo(new Photo.Mark(piece, x, y));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a", "a=0.3", "a=0.3,", "a=,0.4", "a=1.2,0.4", "a=-0.1,0", "=0,0"})
  void aSlipIsToldInOneSentenceWithTheRemedy(String text) {
    assertThatThrownBy(() -> MarkText.read(text, pieces))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .matches("[^\n]+\\.\n[^\n]+");
  }

  @Test
  void aPieceThatIsNotThereIsToldWithThoseThatAre() {
    assertThatThrownBy(() -> MarkText.read("c=0.3,0.4", pieces))
        .hasMessage("The bake has no piece \"c\" to be marked.\nIt has a, b2.");
  }
}
