package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswerTextTest {
  @Test
  void readsEachKind() {
    assertThat(AnswerText.read(TastingKind.TRIANGLE, " 417 ").choice()).contains("417");
    assertThat(AnswerText.read(TastingKind.PREFERENCE, "None").choice())
        .contains(Answer.NO_PREFERENCE);
    assertThat(AnswerText.read(TastingKind.RANKING, "417 > 233, 871").ranking())
        .containsExactly("417", "233", "871");
    assertThat(AnswerText.read(TastingKind.LIKING, "417=7 233=5.5").scores().get(1).liking())
        .hasValue(5.5);
    Score score =
        AnswerText.read(TastingKind.JUST_ABOUT_RIGHT, "417=7,too_sweet=−1,moist=2")
            .scores()
            .get(0);
    assertThat(score.attribute("too sweet")).hasValue(-1);
    assertThat(score.attribute("moist")).hasValue(2);
  }

  @Test
  void aDashLeavesTheLikingUnknown() {
    Score score =
        AnswerText.read(TastingKind.JUST_ABOUT_RIGHT, "417=-,moist=0").scores().get(0);

    assertThat(score.liking()).isEmpty();
    assertThat(score.attribute("moist")).hasValue(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TRIANGLE | 417 233",
        "TRIANGLE | ''",
        "LIKING | 417",
        "LIKING | 417=good",
        "LIKING | 417=12",
        "LIKING | 417=NaN",
        "LIKING | 17=5",
        "JUST_ABOUT_RIGHT | 417=7,sweet=3",
        "JUST_ABOUT_RIGHT | 417=7,sweet=0.5",
        "JUST_ABOUT_RIGHT | 417=7,=1",
        "JUST_ABOUT_RIGHT | 417=7,sweet=1,sweet=0",
      })
  void refusesWithARemedy(TastingKind kind, String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AnswerText.read(kind, text))
        .withMessageContaining("\n");
  }
}
