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
import org.junit.jupiter.params.provider.ValueSource;

class LimitTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "net_carbohydrate_g <= 4 per piece | at most 4 g net carbohydrate a piece",
        "net carbohydrate <= 4 | at most 4 g net carbohydrate a piece",
        "net carbs <= 4 g | at most 4 g net carbohydrate a piece",
        "Net-Carbohydrate≤4g per piece | at most 4 g net carbohydrate a piece",
        "at most 4 g net carbohydrate a piece | at most 4 g net carbohydrate a piece",
        "protein >= 8 | at least 8 g protein a piece",
        "protein_g at least 8 g | at least 8 g protein a piece",
        "protein 8 to 12 per piece | at least 8 g and at most 12 g protein a piece",
        "8-12 g protein per piece | at least 8 g and at most 12 g protein a piece",
        "sodium <= 0.2 g | at most 200 mg sodium a piece",
        "sodium_mg <= 200 per 100 g baked | at most 200 mg sodium per 100 g baked",
        "fiber >= 6 per 100g baked | at least 6 g fibre per 100 g baked",
        "calories <= 150 kcal per piece | at most 150 kcal energy a piece",
        "carbohydrate <= 30 per batch | at most 30 g carbohydrate a batch",
        "liquid_ratio 0.85 to 0.95 | liquid ratio at least 0.85 and at most 0.95",
        "liquid ratio <= 0.9 | liquid ratio at most 0.9",
        "moisture <= 45 % | dough moisture at most 45 %",
        "pieces >= 6 | pieces at least 6",
        "dough >= 60 g per piece | dough a piece at least 60 g",
        "dough_per_piece_g <= 95 | dough a piece at most 95 g"
      })
  void isReadHoweverItIsWritten(String text, String words) {
    assertThat(LimitText.read(text).inWords()).isEqualTo(words);
  }

  /** What is shown can be typed. */
  @Test
  void whatALimitSaysInWordsIsReadAsTheSameLimit() {
    for (Figure figure : Figure.values()) {
      for (Basis basis : Basis.values()) {
        for (int bounds = 1; bounds <= 3; bounds++) {
          Limit limit =
              new Limit(
                  figure,
                  basis,
                  (bounds & 1) == 0 ? OptionalDouble.empty() : OptionalDouble.of(2.5),
                  (bounds & 2) == 0 ? OptionalDouble.empty() : OptionalDouble.of(40),
                  Extras.NONE);
          assertThat(LimitText.read(limit.inWords())).as(limit.inWords()).isEqualTo(limit);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | is not understood",
        "protein | is not understood",
        "protein <= | is not understood",
        "protein < 8 | is not understood",
        "<= 4 | is not understood",
        "protein <= eight | is not understood",
        "protein <= -8 | is not understood",
        "protein <= 8,5 | is not understood",
        "taste >= 8 | is not a figure",
        "protein <= 8 kcal | is not measured in kcal",
        "liquid_ratio <= 1 g | is not measured in g",
        "liquid_ratio <= 1 per batch | is not stated per batch",
        "protein 12 to 8 | contradict each other"
      })
  void aSlipIsToldInOneSentenceWithTheRemedy(String text, String says) {
    assertThatThrownBy(() -> LimitText.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .contains(says)
        .matches("[^\n]+\\.\n[^\n]+\\.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"protein_g >= 8 per slice", "protein >= 8 per"})
  void anUnknownBasisIsNotIgnored(String text) {
    assertThatThrownBy(() -> LimitText.read(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aLongTextIsReadInNoTime() {
    String text = "protein " + "per ".repeat(5000) + "<= 4";

    assertThatThrownBy(() -> LimitText.read(text)).isInstanceOf(IllegalArgumentException.class);
  }
}
