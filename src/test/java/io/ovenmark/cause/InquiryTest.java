package io.ovenmark.cause;

import static io.ovenmark.cause.Buns.baked;
import static io.ovenmark.cause.Buns.bun;
import static io.ovenmark.cause.Buns.piece;
import static io.ovenmark.cause.Buns.sheet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.cause.Evidence.Place;
import io.ovenmark.cause.Evidence.Speech;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InquiryTest {
  private static final String GUMMY = "gummy crumb";
  private static final PlanSize SIZE = new PlanSize(2, 6);

  /** Dry at 190 °C, then wet and gummy, then dry and hot and good again. */
  private static final Baked GOOD =
      baked(1, bun(180, "190 °C", 25), piece("a", "190 °C", 25, 96, "dry"));
  private static final Baked BAD =
      baked(
          2,
          bun(230, "190 °C", 27),
          piece("a", "190 °C", 24, 91, GUMMY),
          piece("b", "190 °C", 30, 96, "even crumb"));
  private static final Baked CURED =
      baked(3, bun(190, "205 °C", 21), piece("a", "205 °C", 21, 97, "even crumb"));

  private static Inquiry ask(String finding, Baked... bakes) {
    return Inquiry.of(
        finding, List.of(bakes), sheet(bun(230, "190 °C", 27)), SIZE, ShownUnits.AS_WRITTEN);
  }

  private static Suspect suspect(Inquiry inquiry, Gauge gauge) {
    return inquiry.suspects().stream()
        .filter(each -> each.cause().gauge() == gauge)
        .findFirst()
        .orElseThrow();
  }

  private static CauseSentences sentences(Inquiry inquiry) {
    return new CauseSentences(inquiry, ShownUnits.AS_WRITTEN);
  }

  @Test
  void aFigureThatMovedAsTheCauseNeedsComesFirst() {
    Inquiry inquiry = ask(GUMMY, GOOD, BAD);

    assertThat(inquiry.history().standing()).isEqualTo(History.Standing.PRESENT);
    assertThat(inquiry.suspects().get(0).cause().gauge()).isEqualTo(Gauge.LIQUID_RATIO);
    assertThat(inquiry.suspects().get(0).standing()).isEqualTo(Suspect.Standing.LIKELY);
    assertThat(sentences(inquiry).figure(inquiry.suspects().get(0)))
        .isEqualTo("liquid ratio 1.48, up 0.265 since the last bake without this finding");
    assertThat(inquiry.suspects())
        .extracting(Suspect::standing)
        .isSorted();
  }

  @Test
  void whatMovedTheOtherWayOrStayedIsSaidSo() {
    Inquiry inquiry = ask(GUMMY, GOOD, BAD);

    assertThat(suspect(inquiry, Gauge.OVEN_TEMPERATURE).standing())
        .isEqualTo(Suspect.Standing.UNMOVED);
    assertThat(sentences(inquiry).figure(suspect(inquiry, Gauge.OVEN_TEMPERATURE)))
        .isEqualTo(
            "oven temperature 190 °C, the same since the last bake without this finding");
    assertThat(suspect(inquiry, Gauge.GELLING).standing())
        .isEqualTo(Suspect.Standing.UNLIKELY);
  }

  @Test
  void onlyThePiecesWithTheFindingCountWhereItCame() {
    Evidence core = suspect(ask(GUMMY, GOOD, BAD), Gauge.CORE).at(Place.CAME).orElseThrow();

    assertThat(core.without().number()).isEqualTo(Quantity.known(96));
    assertThat(core.with().number()).isEqualTo(Quantity.known(91));
    assertThat(core.speech()).isEqualTo(Speech.FOR);
  }

  @Test
  void piecesOfOneBakeAreHeldAgainstEachOther() {
    Evidence time =
        suspect(ask(GUMMY, GOOD, BAD), Gauge.OVEN_TIME).at(Place.WITHIN_A_BAKE).orElseThrow();

    assertThat(time.without().number()).isEqualTo(Quantity.known(30));
    assertThat(time.with().number()).isEqualTo(Quantity.known(24));
    assertThat(time.speech()).isEqualTo(Speech.FOR);
    assertThat(suspect(ask(GUMMY, GOOD, BAD), Gauge.LIQUID_RATIO).at(Place.WITHIN_A_BAKE))
        .isEmpty();
  }

  @Test
  void theRemedyGoesBackToTheFigureWithoutTheFinding() {
    Inquiry inquiry = ask(GUMMY, GOOD, BAD);
    Suspect liquid = suspect(inquiry, Gauge.LIQUID_RATIO);

    assertThat(liquid.remedy().back()).isTrue();
    assertThat(liquid.remedy().wish()).contains("liquid ratio 1.22");
    assertThat(sentences(inquiry).advice(liquid))
        .isEqualTo("Less liquid, or more of what binds it; liquid ratio back to 1.22.");
  }

  @Test
  void withoutHistoryTheRemedyIsAFirstStepAndSaidToBeOne() {
    Inquiry inquiry = ask("hollow", GOOD, BAD);
    Suspect liquid = suspect(inquiry, Gauge.LIQUID_RATIO);

    assertThat(inquiry.history().standing()).isEqualTo(History.Standing.NEVER);
    assertThat(liquid.standing()).isEqualTo(Suspect.Standing.OPEN);
    assertThat(liquid.remedy().back()).isFalse();
    assertThat(sentences(inquiry).advice(liquid)).endsWith("to 1.36 as a first step.");
    assertThat(inquiry.plans()).isEmpty();
  }

  @Test
  void aShareOfTheBatchIsChangedInTheFormulaToExactlyItsTarget() {
    Suspect gelling = suspect(ask(GUMMY, GOOD, BAD), Gauge.GELLING);
    Quantity share =
        Reading.of(
                Gauge.GELLING, sheet(gelling.remedy().formula().orElseThrow()), List.of())
            .number();

    assertThat(share.low()).isCloseTo(gelling.remedy().target().low(), within(0.05));
    assertThat(gelling.remedy().formula().orElseThrow().lines())
        .hasSameSizeAs(bun(230, "190 °C", 27).lines());
  }

  @Test
  void aFindingThatWentIsHeldAgainstTheLastBakeWithIt() {
    Inquiry inquiry = ask(GUMMY, GOOD, BAD, CURED);

    assertThat(inquiry.history().standing()).isEqualTo(History.Standing.GONE);
    assertThat(inquiry.turn().orElseThrow().came()).isFalse();
    assertThat(sentences(inquiry).summary())
        .startsWith("Gummy crumb is gone: it was last on the bake 2026-08-02-1 (bun@2)");
    assertThat(sentences(inquiry).figure(inquiry.suspects().get(0)))
        .endsWith("since the last bake with it");
    assertThat(sentences(inquiry).advice(inquiry.suspects().get(0)))
        .startsWith("If it comes back: ");
  }

  @Test
  void aFindingOfEveryBakeHasNothingToCompareWith() {
    Inquiry inquiry = ask(GUMMY, BAD);

    assertThat(inquiry.history().standing()).isEqualTo(History.Standing.ALWAYS);
    assertThat(sentences(inquiry).summary()).contains("there is none without it");
    assertThat(suspect(inquiry, Gauge.LIQUID_RATIO).standing()).isEqualTo(Suspect.Standing.OPEN);
  }

  @Test
  void aBakeOnWhichNothingWasNotedTellsNothing() {
    Baked silent = baked(1, bun(180, "190 °C", 25), piece("a", "190 °C", 25, 96));
    Inquiry inquiry = ask(GUMMY, silent, BAD);

    assertThat(inquiry.history().unjudged()).isEqualTo(1);
    assertThat(inquiry.history().standing()).isEqualTo(History.Standing.ALWAYS);
    assertThat(ask(GUMMY, silent).history().standing()).isEqualTo(History.Standing.NOT_BAKED);
    assertThat(ask(GUMMY).history().standing()).isEqualTo(History.Standing.NOT_BAKED);
  }

  @Test
  void anUnknownFigureIsSaidToBeUnknownAndSpeaksForNothing() {
    Baked unmeasured =
        baked(1, bun(180, "190 °C", 25), piece("a", "", 0, 0, "dry"));
    Inquiry inquiry = ask(GUMMY, unmeasured, BAD);
    Suspect core = suspect(inquiry, Gauge.CORE);

    assertThat(core.at(Place.CAME).orElseThrow().speech()).isEqualTo(Speech.UNKNOWN);
    assertThat(sentences(inquiry).details(core).get(0))
        .isEqualTo("When it came: unknown → 91 °C; that says nothing either way.");
    assertThat(suspect(inquiry, Gauge.OVEN_TIME).at(Place.CAME).orElseThrow().without().number())
        .isEqualTo(Quantity.known(25));
  }

  @Test
  void ofWhatIsNotInTheFormulaItCannotBe() {
    Inquiry inquiry = ask("dark crust", GOOD, BAD);

    for (Gauge gauge : List.of(Gauge.ALLULOSE, Gauge.MILK_PROTEIN)) {
      Suspect suspect = suspect(inquiry, gauge);
      assertThat(suspect.standing()).isEqualTo(Suspect.Standing.ABSENT);
      assertThat(suspect.remedy().formula()).isEmpty();
      assertThat(sentences(inquiry).details(suspect))
          .anyMatch(words -> words.contains("cannot be this"));
    }
  }

  @Test
  void aFindingOfTheTrayIsOneOfAllItsPieces() {
    Baked tray =
        baked(2, bun(230, "190 °C", 27), List.of("Gummy crumb "), piece("a", "190 °C", 27, 95));

    assertThat(tray.with(GUMMY)).hasSize(1);
    assertThat(tray.without(GUMMY)).isEmpty();
    assertThat(ask(" GUMMY crumb", GOOD, tray).history().standing())
        .isEqualTo(History.Standing.PRESENT);
  }

  @Test
  void freeWordsAndMeritsHaveAHistoryButNoCauses() {
    Inquiry words = ask("smells of the sea", GOOD, BAD);
    Inquiry merit = ask("even crumb", GOOD, BAD);

    assertThat(words.suspects()).isEmpty();
    assertThat(sentences(words).summary()).contains("words of your own");
    assertThat(merit.suspects()).isEmpty();
    assertThat(merit.turn()).isPresent();
    assertThat(sentences(merit).summary()).contains("worth keeping");
  }

  @Test
  void temperaturesAndMassesAreToldInTheReadersUnits() {
    Inquiry inquiry = ask(GUMMY, GOOD, BAD, CURED);
    CauseSentences fahrenheit =
        new CauseSentences(inquiry, ShownUnits.of(Optional.of("oz"), Optional.of("F")));

    assertThat(fahrenheit.figure(suspect(inquiry, Gauge.OVEN_TEMPERATURE)))
        .isEqualTo("oven temperature 401 °F, up 27 °F since the last bake with it");
    assertThat(fahrenheit.figure(suspect(inquiry, Gauge.DOUGH_PER_PIECE))).contains(" oz, down ");
  }

  @ParameterizedTest
  @EnumSource(FindingVocabulary.class)
  void everyFindingCanBeAskedFor(FindingVocabulary finding) {
    Inquiry inquiry = ask(finding.word(), GOOD, BAD, CURED);

    assertThat(inquiry.suspects().isEmpty()).isEqualTo(finding.merit());
    assertThat(inquiry.suspects()).extracting(Suspect::standing).isSorted();
    for (Suspect suspect : inquiry.suspects()) {
      assertThat(sentences(inquiry).figure(suspect)).contains(suspect.cause().gauge().label());
      assertThat(sentences(inquiry).advice(suspect)).endsWith(".");
      assertThat(suspect.remedy().wish().isPresent() && suspect.remedy().formula().isPresent())
          .isFalse();
    }
  }
}
