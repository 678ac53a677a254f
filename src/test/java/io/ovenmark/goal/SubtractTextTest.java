package io.ovenmark.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.worksheet.NetCarbohydrate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SubtractTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fibre,polyols,allulose | 1 | 1 | 1",
        "Fiber, polyols = 0.5 | 1 | 0.5 | 0",
        "allulose | 0 | 0 | 1",
        "fibre=0,polyols=.25 | 0 | 0.25 | 0",
        "none | 0 | 0 | 0"
      })
  void namesWhatIsLeftOut(String text, double fibre, double polyols, double allulose) {
    assertThat(SubtractText.read(text)).isEqualTo(new NetCarbohydrate(fibre, polyols, allulose));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "water", "fibre,", "polyols=2", "polyols=-1", "polyols=half"})
  void aSlipIsToldInOneSentenceWithTheRemedy(String text) {
    assertThatThrownBy(() -> SubtractText.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .matches("[^\n]+\\.\n[^\n]+\\.");
  }
}
