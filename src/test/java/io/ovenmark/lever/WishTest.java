package io.ovenmark.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.goal.Limit;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WishTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "liquid ratio 0.80 | LIQUID_RATIO | 0.8 | 0.8 | liquid ratio 0.8",
        "liquid_ratio = 0.8 | LIQUID_RATIO | 0.8 | 0.8 | liquid ratio 0.8",
        "Net carbohydrate a piece at most 3 g | NET_CARBOHYDRATE | -Infinity | 3"
            + " | at most 3 g net carbohydrate a piece",
        "at most 3 g net carbohydrate a piece | NET_CARBOHYDRATE | -Infinity | 3"
            + " | at most 3 g net carbohydrate a piece",
        "dough a piece 95 g | DOUGH_PER_PIECE | 95 | 95 | dough a piece 95 g",
        "baked a piece at least 80 g | BAKED_PER_PIECE | 80 | Infinity"
            + " | baked a piece at least 80 g",
        "protein a piece at least 10 g | PROTEIN | 10 | Infinity | at least 10 g protein a piece",
        "12 g protein a piece | PROTEIN | 12 | 12 | 12 g protein a piece",
        "dough moisture of 52 % | DOUGH_MOISTURE | 52 | 52 | dough moisture 52 %",
        "dough moisture 52 to 55 % | DOUGH_MOISTURE | 52 | 55"
            + " | dough moisture at least 52 % and at most 55 %",
        "pieces 8 | PIECES | 8 | 8 | pieces 8",
        "batch mass at most 600 g | BATCH_MASS | -Infinity | 600 | batch mass at most 600 g",
        "energy_kcal <= 200 per piece | ENERGY | -Infinity | 200 | at most 200 kcal energy a piece",
        "salt-free: 0 | | | |",
      })
  void aWishIsReadAsPeopleWriteIt(
      String text, String figure, Double least, Double most, String words) {
    if (figure == null) {
      assertThatThrownBy(() -> Wish.read(text)).hasMessageContaining("not a figure");
      return;
    }
    Wish wish = Wish.read(text);
    assertThat(wish.figure().name()).isEqualTo(figure);
    assertThat(wish.least()).isEqualTo(least);
    assertThat(wish.most()).isEqualTo(most);
    assertThat(wish.inWords(ShownUnits.AS_WRITTEN)).isEqualTo(words);
    assertThat(Wish.read(wish.inWords(ShownUnits.AS_WRITTEN))).isEqualTo(wish);
  }

  @ParameterizedTest
  @CsvSource({
    "fibre per 100 g baked at least 12 g, BAKED_100_G",
    "at least 12 g fibre per 100g dough, DOUGH_100_G",
    "fibre a batch 60 g, BATCH",
    "fibre 10 g, PIECE",
  })
  void aWishMayBeStatedForAnything(String text, Basis basis) {
    assertThat(Wish.read(text).basis()).isEqualTo(basis);
  }

  @ParameterizedTest
  @EnumSource(Figure.class)
  void aWishInWordsCanBeReadAgain(Figure figure) {
    for (Basis basis : Basis.values()) {
      for (double[] bounds : new double[][] {{3, 3}, {2.5, 4}, {0.125, -1}, {-1, 1234.5}}) {
        Limit limit =
            new Limit(figure, basis, bound(bounds[0]), bound(bounds[1]), Extras.NONE);
        Wish wish = new Wish(limit);
        assertThat(Wish.read(wish.inWords(ShownUnits.AS_WRITTEN))).isEqualTo(wish);
      }
    }
  }

  private static OptionalDouble bound(double value) {
    return value < 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Test
  void massesOfTheBenchAreShownInTheReadersUnits() {
    ShownUnits ounces = ShownUnits.of(Optional.of("oz"), Optional.empty());
    assertThat(Wish.read("dough a piece 95 g").inWords(ounces)).isEqualTo("dough a piece 3.35 oz");
    assertThat(Wish.read("protein a piece 9 g").inWords(ounces)).isEqualTo("9 g protein a piece");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "0.8", "liquid ratio", "liquid ratio 0,8", "taste 7", "liquid ratio 0.8 g",
        "protein 9 %", "moisture −3 %", "liquid ratio per batch 0.8"})
  void whatIsNotUnderstoodIsRefusedWithARemedy(String text) {
    assertThatThrownBy(() -> Wish.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\n")
        .hasMessageNotContaining(" to 0.8")
        .hasMessageNotContaining("the limit");
  }
}
