package io.ovenmark.bake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PieceTextTest {
  private static Piece piece(String text) {
    return PieceText.read(List.of(), List.of(text)).get(0);
  }

  @Test
  void everythingThatABakerNotesIsRead() {
    Piece piece =
        piece(
            "a 190C 24min dough=95g baked=82g width=88mm height=46mm core=96C crust=2"
                + " liking=7,8,6 finding='gummy crumb' score.sweet=1,0,-1 rack=middle"
                + " verdict=longer note='dark at the edge'");

    assertThat(piece.id()).isEqualTo("a");
    assertThat(piece.temperature()).contains(Temperature.parse("190 °C"));
    assertThat(piece.minutes()).hasValue(24);
    assertThat(piece.doughGrams()).hasValue(95);
    assertThat(piece.bakedGrams()).hasValue(82);
    assertThat(piece.widthMillimetres()).hasValue(88);
    assertThat(piece.heightMillimetres()).hasValue(46);
    assertThat(piece.core()).contains(Temperature.parse("96 °C"));
    assertThat(piece.crustShade()).hasValue(2);
    assertThat(piece.liking()).containsExactly(7.0, 8.0, 6.0);
    assertThat(piece.findings()).containsExactly("gummy crumb");
    assertThat(piece.attributes())
        .containsExactly(new Piece.Attribute("sweet", List.of(1.0, 0.0, -1.0)));
    assertThat(piece.rack()).contains("middle");
    assertThat(piece.verdict()).contains("longer");
    assertThat(piece.note()).contains("dark at the edge");
  }

  @Test
  void whatIsNotWrittenStaysUnknown() {
    assertThat(piece("a")).isEqualTo(Piece.named("a"));
    assertThat(piece("a 190C").minutes()).isEqualTo(OptionalDouble.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "190C, 190 °C",
    "190c, 190 °C",
    "190°C, 190 °C",
    "190 C, 190 °C",
    "190 °C, 190 °C",
    "oven=190C, 190 °C",
    "oven='190 °C', 190 °C",
    "375F, 375 °F",
    "375 °F, 375 °F",
    "187.5C, 187.5 °C"
  })
  void theOvenIsReadHoweverItIsWritten(String text, String temperature) {
    assertThat(piece("a " + text + " 24min").temperature())
        .contains(Temperature.parse(temperature));
    assertThat(piece("a " + text + " 24min").minutes()).hasValue(24);
  }

  @ParameterizedTest
  @CsvSource({
    "24min, 24",
    "24 min, 24",
    "24m, 24",
    "24', 24",
    "time=24min, 24",
    "7.5min, 7.5",
    "1h, 60",
    "1h10min, 70",
    "1h10, 70",
    "1.5h, 90"
  })
  void theTimeIsReadInMinutes(String text, double minutes) {
    assertThat(piece("a " + text).minutes()).hasValue(minutes);
  }

  /** An inch is 25.4 mm, an avoirdupois ounce 28.349523125 g (NIST SP 811, Appendix B). */
  @ParameterizedTest
  @CsvSource({
    "height=46mm, 46",
    "height=4.6cm, 46",
    "height='4.6 cm', 46",
    "height=4.6 cm, 46",
    "height=2in, 50.8"
  })
  void lengthsAreKeptInMillimetres(String text, double millimetres) {
    assertThat(piece("a " + text).heightMillimetres()).hasValue(millimetres);
  }

  @Test
  void massesAreKeptInGrams() {
    assertThat(piece("a dough=3oz").doughGrams().getAsDouble())
        .isCloseTo(85.048569375, within(1e-9));
    assertThat(piece("a dough=0.095kg").doughGrams()).hasValue(95);
    assertThat(piece("a dough=95 g baked=82 g").bakedGrams()).hasValue(82);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "finding=pale | pale",
        "finding=Pale | pale",
        "finding='Gummy Crumb' | gummy crumb",
        "finding=pale,dense | pale;dense",
        "finding='gummy crumb',pale | gummy crumb;pale",
        "finding=pale finding=dense | pale;dense",
        "finding=pale finding=pale | pale",
        "finding='tastes of the sea' | tastes of the sea",
        "finding=“gummy crumb” | gummy crumb"
      })
  void findingsMayStandSeveralTimesAndTakeTheVocabularysForm(String text, String findings) {
    assertThat(piece("a " + text).findings()).containsExactly(findings.split(";"));
  }

  @Test
  void anApostropheWithinQuotesIsPartOfTheNote() {
    assertThat(piece("a note='the baker's own' rack=top").note()).contains("the baker's own");
    assertThat(piece("a note=\"it's fine\"").note()).contains("it's fine");
  }

  @Test
  void aNoteWithCommasKeepsThem() {
    assertThat(piece("a note='dark, dry, flat'").note()).contains("dark, dry, flat");
    assertThat(piece("a note=dark,dry").note()).contains("dark,dry");
  }

  @Test
  void aPieceWithoutLetterTakesTheNextFreeOne() {
    List<Piece> pieces = PieceText.read(List.of(), List.of("190C", "c 200C", "210C", "220C"));

    assertThat(pieces).extracting(Piece::id).containsExactly("a", "c", "b", "d");
  }

  @Test
  void afterZComesAa() {
    List<Piece> many = PieceText.read(List.of(), Stream.generate(() -> "190C").limit(54).toList());

    assertThat(many.get(25).id()).isEqualTo("z");
    assertThat(many.get(26).id()).isEqualTo("aa");
    assertThat(many.get(53).id()).isEqualTo("bb");
  }

  @Test
  void aKnownLetterChangesThatPieceOnly() {
    List<Piece> before = PieceText.read(List.of(), List.of("a 190C dough=95g", "b 200C"));

    List<Piece> after = PieceText.read(before, List.of("a baked=82g finding=pale"));

    assertThat(after).hasSize(2);
    assertThat(after.get(0).doughGrams()).hasValue(95);
    assertThat(after.get(0).bakedGrams()).hasValue(82);
    assertThat(after.get(1)).isEqualTo(before.get(1));
    assertThat(PieceText.read(after, List.of("a finding=dense")).get(0).findings())
        .containsExactly("pale", "dense");
  }

  @Test
  void nothingAfterTheSignTakesAValueBack() {
    List<Piece> before =
        PieceText.read(
            List.of(),
            List.of("a 190C baked=82g liking=7 finding=pale score.salt=1 note='too dark'"));

    Piece after =
        PieceText.read(
                before, List.of("a oven= baked= liking= finding= score.salt= note="))
            .get(0);

    assertThat(after).isEqualTo(Piece.named("a"));
  }

  @Test
  void findingsCanBeReplacedInOneText() {
    List<Piece> before = PieceText.read(List.of(), List.of("a finding=pale"));

    assertThat(PieceText.read(before, List.of("a finding= finding=dense")).get(0).findings())
        .containsExactly("dense");
  }

  static Stream<Arguments> slips() {
    return Stream.of(
        Arguments.of("a 190", "has no unit", "190C for the oven"),
        Arguments.of("a 190X", "\"190X\" is not understood", "Put several words in quotes"),
        Arguments.of("a dark at the edge", "\"dark\" is not understood", "quotes"),
        Arguments.of("a note=dark at the edge", "\"at\" is not understood", "quotes"),
        Arguments.of("a note='dark at the edge", "not closed", "one after"),
        Arguments.of("a dough=95", "no unit", "Add g"),
        Arguments.of("a dough=2tbsp", "is not a mass", "95g"),
        Arguments.of("a dough=-5g", "negative", "0 or more"),
        Arguments.of("a dough=0g", "out of range", "0.01"),
        Arguments.of("a dough=1e308g", "", ""),
        Arguments.of("a baked=82,5g", "not understood", "point"),
        Arguments.of("a width=88", "length", "88mm"),
        Arguments.of("a height=88ft", "length", "88mm"),
        Arguments.of("a height=0mm", "out of range", ""),
        Arguments.of("a time=24", "The time", "24min"),
        Arguments.of("a 99999min", "out of range", "2880"),
        Arguments.of("a 900C", "out of range", ""),
        Arguments.of("a core=hot", "temperature", "205"),
        Arguments.of("a crust=9", "out of range", "0 to 4"),
        Arguments.of("a crust=dark", "is not a number", "point"),
        Arguments.of("a liking=10", "out of range", "1 to 9"),
        Arguments.of("a liking=7;8", "is not a number", "commas"),
        Arguments.of("a score.sweet=3", "out of range", "-2 to 2"),
        Arguments.of("a score.=1", "no \"score.\"", "score.<attribute>"),
        Arguments.of("a colour=brown", "no \"colour\"", "crust"),
        Arguments.of("a 190C 200C", "stands twice", "Keep one"),
        Arguments.of("a dough=95g dough=96g", "stands twice", "Keep one"),
        Arguments.of("A 190C", "\"A\" is not understood", ""),
        Arguments.of("a/b 190C", "not understood", ""),
        Arguments.of("<script>alert(1)</script>", "not understood", ""));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("slips")
  void aSlipIsToldInOneSentenceWithTheRemedy(String text, String says, String hint) {
    assertThatThrownBy(() -> piece(text))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .contains(says)
        .matches("(?s)[^\n]+\\.\n(?s)[^\n]+")
        .satisfies(
            message -> assertThat(message.substring(message.indexOf('\n'))).contains(hint));
  }

  @Test
  void theSameLetterTwiceIsASlip() {
    assertThatThrownBy(() -> PieceText.read(List.of(), List.of("a 190C", "a 200C")))
        .hasMessageContaining("\"a\" is written twice");
  }

  @ParameterizedTest
  @ValueSource(ints = {201, 1000})
  void moreThan200PiecesAreTooMany(int count) {
    List<String> texts = Stream.generate(() -> "190C").limit(count).toList();

    assertThatThrownBy(() -> PieceText.read(List.of(), texts)).hasMessageContaining("200");
  }

  @Test
  void anEmptyTextIsAPieceOfWhichNothingIsKnown() {
    assertThat(piece("  ")).isEqualTo(Piece.named("a"));
    assertThat(piece("").verdict()).isEqualTo(Optional.empty());
  }
}
