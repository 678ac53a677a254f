package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.ovenmark.json.Extras;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PieceTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private static OptionalDouble number(Double value) {
    return value == null ? UNKNOWN : OptionalDouble.of(value);
  }

  private static Piece piece(
      OptionalDouble dough,
      OptionalDouble baked,
      OptionalDouble width,
      OptionalDouble height,
      List<Double> liking) {
    return new Piece(
        "a",
        Optional.empty(),
        UNKNOWN,
        Optional.empty(),
        dough,
        baked,
        width,
        height,
        Optional.empty(),
        UNKNOWN,
        List.of(),
        liking,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  @ParameterizedTest
  @CsvSource({"62.5, 55, 12", "100, 100, 0", "100, 102, -2", "100,,", ", 90,", ",,"})
  void losesWhatItWeighsLessAndIsSilentWhenNotWeighed(Double dough, Double baked, Double loss) {
    OptionalDouble found =
        piece(number(dough), number(baked), UNKNOWN, UNKNOWN, List.of()).lossPercent();
    assertThat(found.isPresent()).isEqualTo(loss != null);
    if (loss != null) {
      assertThat(found.getAsDouble()).isCloseTo(loss, Offset.offset(1e-12));
    }
  }

  @ParameterizedTest
  @CsvSource({"84, 42, 2", "50, 50, 1", "84,,", ", 42,", ",,"})
  void spreadsByWidthOverHeightAndIsSilentWhenNotMeasured(
      Double width, Double height, Double spread) {
    assertThat(piece(UNKNOWN, UNKNOWN, number(width), number(height), List.of()).spreadFactor())
        .isEqualTo(number(spread));
  }

  @Test
  void isLikedAsItsTastersMeanAndSilentWithoutThem() {
    assertThat(piece(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, List.of(7.0, 8.0)).meanLiking())
        .hasValue(7.5);
    assertThat(Piece.named("a").meanLiking()).isEmpty();
    assertThat(Piece.named("a").lossPercent()).isEmpty();
    assertThat(Piece.named("a").spreadFactor()).isEmpty();
  }

  @Test
  void whatCannotBeReadBackCannotBeMade() {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> piece(number(0.0), UNKNOWN, UNKNOWN, UNKNOWN, List.of()))
        .withMessage("The dough mass 0 is out of range.\nUse a number from 0.01 to 1000000.");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> piece(UNKNOWN, UNKNOWN, number(Double.NaN), UNKNOWN, List.of()))
        .withMessage("The width that was given is out of range.\nUse a number from 0.1 to 10000.");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> piece(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, List.of(10.0)))
        .withMessage("The liking 10 is out of range.\nUse a number from 1 to 9.");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Piece.Attribute("sweet", List.of(-3.0)))
        .withMessage("The score -3 is out of range.\nUse a number from -2 to 2.");
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Piece.Attribute(" ", List.of()));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> new Photo.Mark("a", 0.5, Double.NaN));
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Piece.named("x".repeat(100_000)))
        .withMessage(
            "\""
                + "x".repeat(40)
                + "…\" cannot name a piece.\n"
                + "Use up to 12 lower-case letters a-z and digits.");
  }

  @ParameterizedTest
  @EnumSource(FindingVocabulary.class)
  void findsEveryWordOfTheTradeInAnyCase(FindingVocabulary finding) {
    assertThat(FindingVocabulary.of(finding.word())).contains(finding);
    assertThat(FindingVocabulary.of(" " + finding.word().toUpperCase(java.util.Locale.ROOT)))
        .contains(finding);
    assertThat(FindingVocabulary.of(finding.word() + " a little")).isEmpty();
  }
}
