package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.json.Extras;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ResultSentencesTest {
  private static final List<String> NAMES = List.of("bun@8", "bun@9", "bun@10");

  private static Tasting tasting(TastingKind kind, int samples, int sheets, String... attributes) {
    List<Sample> what = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      what.add(
          new Sample(
              NAMES.get(i), "0".repeat(40), Optional.empty(), Optional.empty(), Extras.NONE));
    }
    return new Tasting(
        "bun",
        "2026-10-01-1",
        kind,
        kind.question(),
        OffsetDateTime.parse("2026-10-01T10:00:00+02:00"),
        7,
        what,
        List.of(attributes),
        Optional.empty(),
        SheetPlan.draw(kind, samples, sheets, 7),
        Extras.NONE);
  }

  private static Tasting answer(Tasting tasting, int sheet, String text) {
    Answer answer = AnswerText.read(tasting.kind(), text);
    return tasting.with(tasting.sheet(sheet).orElseThrow().answered(answer, Optional.empty()));
  }

  /** The code of a sample on a sheet. */
  private static String code(Tasting tasting, int sheet, int sample) {
    return tasting.sheet(sheet).orElseThrow().servings().stream()
        .filter(serving -> serving.sample() == sample)
        .findFirst()
        .orElseThrow()
        .code();
  }

  private static ResultSentences words(Tasting tasting) {
    return ResultSentences.of(Results.of(tasting), NAMES);
  }

  private static Tasting triangle(int sheets, int correct) {
    Tasting tasting = tasting(TastingKind.TRIANGLE, 2, sheets);
    for (int number = 1; number <= sheets; number++) {
      Sheet sheet = tasting.sheet(number).orElseThrow();
      int ones =
          (int) sheet.servings().stream().filter(serving -> serving.sample() == 1).count();
      int odd = ones == 1 ? 1 : 2;
      tasting = answer(tasting, number, code(tasting, number, number <= correct ? odd : 3 - odd));
    }
    return tasting;
  }

  @Test
  void aTriangleSaysWhatIsShownAndWhatItIsTooSmallFor() {
    ResultSentences shown = words(triangle(12, 8));

    assertThat(shown.says().get(0))
        .isEqualTo(
            "The samples can be told apart. 8 of 12 found the odd sample; guessing alone does as"
                + " well or better with p = 0.019.");
    assertThat(shown.cannot().get(0))
        .matches("12 answers are too few to see reliably a difference that less than \\d+ % .*");
    ResultSentences notShown = words(triangle(12, 5));
    assertThat(notShown.says().get(0)).startsWith("No difference is shown. 5 of 12");
    assertThat(notShown.says().get(1)).startsWith("At most ");
  }

  @Test
  void aPanelOfTwoIsToldThatItCanShowNothing() {
    assertThat(words(triangle(2, 2)).cannot().get(0)).contains("too few to show any difference");
  }

  @Test
  void openSheetsAreAReasonToWait() {
    Tasting begun = answer(tasting(TastingKind.PREFERENCE, 2, 4), 1, "none");

    assertThat(words(begun).says()).anyMatch(each -> each.startsWith("1 preferred neither"));
    assertThat(words(begun).cannot()).anyMatch(each -> each.startsWith("3 sheets are still open"));
    assertThat(words(tasting(TastingKind.RANKING, 3, 4)).says())
        .containsExactly("No sheet is answered yet.");
  }

  @Test
  void aPreferenceNamesTheSampleThatWins() {
    Tasting tasting = tasting(TastingKind.PREFERENCE, 2, 9);
    for (int number = 1; number <= 9; number++) {
      tasting = answer(tasting, number, code(tasting, number, number == 4 ? 1 : 2));
    }

    assertThat(words(tasting).says().get(0))
        .startsWith("bun@9 is preferred. 1 prefer bun@8, 8 bun@9; ")
        .endsWith("p = 0.039.");
  }

  @Test
  void aRankingNamesThePairsThatLieApart() {
    Tasting tasting = tasting(TastingKind.RANKING, 3, 8);
    for (int number = 1; number <= 8; number++) {
      tasting =
          answer(
              tasting,
              number,
              code(tasting, number, 2) + " " + code(tasting, number, 3) + " "
                  + code(tasting, number, 1));
    }

    assertThat(words(tasting).says().get(0))
        .isEqualTo(
            "The order is more than chance (p < 0.001, exact). Mean ranks, 1 is best: bun@9 1.0,"
                + " bun@10 2.0, bun@8 3.0.");
    assertThat(words(tasting).says().get(1)).startsWith("bun@9 is ranked before bun@8");
  }

  @Test
  void likingAndAttributesNameTheDropAndItsLimits() {
    Tasting tasting = tasting(TastingKind.JUST_ABOUT_RIGHT, 2, 4, "sweet");
    for (int number = 1; number <= 4; number++) {
      String first = number <= 2 ? "=5,sweet=-1" : "=7,sweet=0";
      tasting =
          answer(
              tasting,
              number,
              code(tasting, number, 1) + first + " " + code(tasting, number, 2) + "="
                  + (7 + number % 2) + ",sweet=0");
    }
    ResultSentences words = words(tasting);

    assertThat(words.says())
        .contains(
            "bun@8, sweet: too little for 2 tasters (50 %), who like it 2.0 points less than those"
                + " who find it right.")
        .noneMatch(each -> each.startsWith("bun@9, sweet"));
    assertThat(words.cannot()).anyMatch(each -> each.contains("common practice, no source"));
  }
}
