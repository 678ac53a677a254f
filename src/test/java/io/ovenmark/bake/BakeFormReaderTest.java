package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.Extras;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BakeFormReaderTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-05-20T07:30:00Z"), ZoneOffset.ofHours(2));

  private static BakeFormReader.Reading read(TypedUnits units, PieceForm... pieces) {
    BakeForm form = new BakeForm(units, "", "", "", "", List.of(), List.of(pieces));
    return BakeFormReader.read(form, Optional.empty(), CLOCK);
  }

  private static PieceForm measures(
      String temperature, String minutes, String dough, String width, String core) {
    return new PieceForm(
        "a", temperature, minutes, "", dough, "", width, "", core, "", List.of(), List.of(), "", "");
  }

  private static PieceForm lettered(String id) {
    return new PieceForm(id, "", "", "", "", "", "", "", "", "", List.of(), List.of(), "", "");
  }

  @Test
  void whatIsNotTypedStaysUnknown() {
    BakeFormReader.Reading read = read(TypedUnits.METRIC, lettered("a"));

    assertThat(read.faults()).isEmpty();
    assertThat(read.pieces()).containsExactly(Piece.named("a"));
    assertThat(read.time()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // typed | degrees Celsius with °C beside the field | with °F beside it
        "190 | 190 °C | 190 °F",
        "375 F | 375 °F | 375 °F",
        "190 °c | 190 °C | 190 °C",
        "96,5 | 96.5 °C | 96.5 °F",
        "205. | 205 °C | 205 °F"
      })
  void aBareTemperatureHasTheScaleBesideItsField(String typed, String celsius, String fahrenheit) {
    PieceForm piece = measures(typed, "", "", "", typed);

    for (String scale : List.of("C", "F")) {
      Piece read = read(new TypedUnits("g", scale), piece).pieces().get(0);
      String expected = scale.equals("C") ? celsius : fahrenheit;
      assertThat(read.temperature().orElseThrow()).hasToString(expected);
      assertThat(read.core().orElseThrow()).hasToString(expected);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "95 | 95", "95 g | 95", "94,6 | 94.6", "3.4 oz | 96.3883786", "3 oz | 85.0485694",
        ".5 kg | 500"
      })
  void massesAreReadInGramsUnlessTheySayOtherwise(String typed, double grams) {
    Piece read = read(TypedUnits.METRIC, measures("", "", typed, "", "")).pieces().get(0);

    assertThat(read.doughGrams().getAsDouble()).isCloseTo(grams, within(1e-6));
  }

  @Test
  void anOunceBesideTheFieldIsTheAvoirdupoisOunce() {
    // NIST SP 811, Appendix B.8: 1 oz = 28.349523125 g.
    Piece read =
        read(new TypedUnits("oz", "F"), measures("", "", "1", "", "")).pieces().get(0);

    assertThat(read.doughGrams().getAsDouble()).isCloseTo(28.349523125, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"88 | 88", "8.8 cm | 88", "3.5 in | 88.9", "88,5 | 88.5"})
  void lengthsAreReadInMillimetres(String typed, double millimetres) {
    Piece read = read(TypedUnits.METRIC, measures("", "", "", typed, "")).pieces().get(0);

    assertThat(read.widthMillimetres().getAsDouble()).isCloseTo(millimetres, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"14 | 14", "14 min | 14", "1 h 10 | 70", "1.5 hours | 90", "14,5 | 14.5"})
  void timesAreReadInMinutes(String typed, double minutes) {
    Piece read = read(TypedUnits.METRIC, measures("", typed, "", "", "")).pieces().get(0);

    assertThat(read.minutes().getAsDouble()).isCloseTo(minutes, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ninety", "1,234", "-4", "0", "95 ml", "95 g 2", "NaN", "1e99", "<b>"})
  void aMassThatIsNoneIsToldAtItsFieldAndTheRestIsReadAllTheSame(String typed) {
    BakeFormReader.Reading read =
        read(TypedUnits.METRIC, measures("190", "14", typed, "88", ""));

    assertThat(read.faults()).extracting(BakeFormReader.Fault::field).containsExactly(
        "pieces.0.dough");
    assertThat(read.faults().get(0).sentence()).matches("(?s)[^\n]+\\.");
    assertThat(read.faults().get(0).remedy()).isNotEmpty();
    assertThat(read.pieces().get(0).doughGrams()).isEmpty();
    assertThat(read.pieces().get(0).widthMillimetres()).hasValue(88);
  }

  @Test
  void aTimeOfDayInTheFieldOfMinutesIsRefusedForItMayMeanTwoThings() {
    BakeFormReader.Reading read = read(TypedUnits.METRIC, measures("", "1:10", "", "", ""));

    assertThat(read.faults().get(0).sentence()).contains("hours or minutes");
  }

  @Test
  void lettersMayBeWrittenLargeAndMustDiffer() {
    BakeFormReader.Reading read =
        read(TypedUnits.METRIC, lettered("A"), lettered("a "), lettered(""), lettered("top left"));

    assertThat(read.pieces()).extracting(Piece::id).containsExactly("a");
    assertThat(read.faults())
        .extracting(BakeFormReader.Fault::field)
        .containsExactly("pieces.1.id", "pieces.2.id", "pieces.3.id");
  }

  @Test
  void tastersScoresBecomeListsThatLeaveOutWhatTheyDidNotSay() {
    PieceForm piece =
        new PieceForm(
            "a", "", "", "", "", "", "", "", "", "2", List.of("Gummy Crumb", "smells of the sea"),
            List.of(
                new PieceForm.Taster("7", Map.of("moist", "1")),
                new PieceForm.Taster("", Map.of("sweet", "0", "moist", "")),
                new PieceForm.Taster("8", Map.of("moist", "-1"))),
            "keep", "");

    Piece read = read(TypedUnits.METRIC, piece).pieces().get(0);

    assertThat(read.liking()).containsExactly(7.0, 8.0);
    assertThat(read.attributes())
        .containsExactly(
            new Piece.Attribute("moist", List.of(1.0, -1.0)),
            new Piece.Attribute("sweet", List.of(0.0)));
    assertThat(read.findings()).containsExactly("gummy crumb", "smells of the sea");
    assertThat(read.crustShade()).hasValue(2);
  }

  @Test
  void scoresOutsideOfTheirScalesAreTold() {
    PieceForm piece =
        new PieceForm(
            "a", "", "", "", "", "", "", "", "", "5", List.of(),
            List.of(new PieceForm.Taster("10", Map.of("moist", "3"))), "", "");

    assertThat(read(TypedUnits.METRIC, piece).faults())
        .extracting(BakeFormReader.Fault::field)
        .containsExactly("pieces.0.crust", "pieces.0.tasters.0.liking", "pieces.0.tasters.0.moist");
  }

  @Test
  void aTimeOfDayIsTodayAndTheFutureIsRefused() {
    BakeForm form = new BakeForm(null, "08:15", null, null, null, null, null);

    assertThat(BakeFormReader.read(form, Optional.empty(), CLOCK).time())
        .contains(OffsetDateTime.parse("2026-05-20T08:15:00+02:00"));

    BakeForm later = new BakeForm(null, "2026-06-20 08:15", "", "", "", List.of(), List.of());
    assertThat(BakeFormReader.read(later, Optional.empty(), CLOCK).faults())
        .extracting(BakeFormReader.Fault::field)
        .containsExactly("time");
  }

  @Test
  void clearingAFieldClearsTheValueAndOthersKeepTheirVeryNumbers() {
    Bake bake =
        new Bake(
            "bun", "2026-03-02-1", "bun@1", "0123456789abcdef0123456789abcdef01234567",
            OffsetDateTime.parse("2026-03-02T08:30:12+01:00"), Optional.of("Ines"),
            Optional.empty(), Optional.empty(),
            PieceText.read(List.of(), List.of("a 190C dough=94.6g baked=82.3g core=94C")),
            List.of(), List.of(), Extras.NONE);
    TypedUnits ounces = new TypedUnits("oz", "F");
    BakeForm form = BakeFormText.of(bake, ounces);
    PieceForm a = form.pieces().get(0);
    assertThat(a.dough()).isEqualTo("3.3369");
    assertThat(a.temperature()).isEqualTo("190 °C");
    PieceForm cleared =
        new PieceForm(
            "a", a.temperature(), "", "", a.dough(), "", "", "", a.core(), "", List.of(),
            List.of(), "", "");

    BakeFormReader.Reading read =
        BakeFormReader.read(
            new BakeForm(ounces, form.time(), "", "", "", List.of(), List.of(cleared)),
            Optional.of(bake),
            CLOCK);

    assertThat(read.faults()).isEmpty();
    assertThat(read.time()).contains(bake.time());
    assertThat(read.baker()).isEmpty();
    assertThat(read.pieces().get(0).doughGrams()).hasValue(94.6);
    assertThat(read.pieces().get(0).bakedGrams()).isEmpty();
  }
}
