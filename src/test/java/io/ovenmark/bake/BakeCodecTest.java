package io.ovenmark.bake;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.formula.RandomFormulas;
import io.ovenmark.json.Problem;
import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Temperature;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BakeCodecTest {
  private static final String FORMULA = "seeded-lupin-bun";
  private static final String ID = "2026-09-14-1";
  private static final String FILE = "bakes/" + FORMULA + "/" + ID + ".json";
  private static final String BLOB = "0123456789abcdef0123456789abcdef01234567";

  private static byte[] golden() throws IOException {
    try (InputStream in = BakeCodecTest.class.getResourceAsStream(ID + ".json")) {
      return in.readAllBytes();
    }
  }

  private static Bake read(byte[] utf8) {
    return BakeCodec.read(FILE, FORMULA, ID, utf8);
  }

  private static UnreadableException refused(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> read(text.getBytes(UTF_8)));
  }

  /** A bake with the fields it must have and, on a second line, the given ones. */
  private static String bake(String members) {
    return "{\"address\": \"bun@5\", \"blob\": \""
        + BLOB
        + "\", \"time\": \"2026-09-14T10:30Z\",\n"
        + members
        + "}";
  }

  private static String piece(String members) {
    return bake("\"pieces\": [{\"id\": \"a\", " + members + "}]");
  }

  @Test
  void readsEveryFieldOfAFullBake() throws IOException {
    Bake bake = read(golden());
    assertThat(bake.path()).isEqualTo(FILE);
    assertThat(bake.address()).isEqualTo("seeded-lupin-bun@5");
    assertThat(bake.blob()).isEqualTo(BLOB);
    assertThat(bake.time()).isEqualTo(OffsetDateTime.parse("2026-09-14T10:30:00+02:00"));
    assertThat(bake.baker()).contains("bench one");
    assertThat(bake.ambient()).contains("21 °C, damp");
    assertThat(bake.note()).contains("new tray");
    assertThat(bake.findings()).containsExactly("pale");
    assertThat(bake.extras().text("oven")).contains("\"age\": 4");
    Piece piece = bake.pieces().get(0);
    assertThat(piece.temperature()).contains(Temperature.celsius(205));
    assertThat(piece.core()).contains(Temperature.celsius(97));
    assertThat(piece.minutes()).hasValue(18);
    assertThat(piece.crustShade()).hasValue(2.5);
    assertThat(piece.liking()).containsExactly(7.0, 8.5);
    assertThat(piece.attributes().get(0).scores()).containsExactly(-1.0, 0.0);
    assertThat(piece.verdict()).contains("keep");
    assertThat(bake.pieces().get(1)).isEqualTo(Piece.named("b2"));
    Photo photo = bake.photos().get(0);
    assertThat(photo.caption()).contains("Six buns on a tray");
    assertThat(photo.marks()).extracting(Photo.Mark::piece).containsExactly("a");
  }

  @Test
  void writesAFullBakeAsTheGoldenFileStands() throws IOException {
    byte[] golden = golden();
    assertThat(BakeCodec.write(read(golden))).isEqualTo(golden);
    assertThat(SchemaCheck.errors("bake", golden)).isEmpty();
  }

  @Test
  void keepsUnknownFieldsOfBakePieceAttributePhotoAndMark() throws IOException {
    Bake bake = read(golden());
    String written = new String(BakeCodec.write(bake.withPieces(bake.pieces())), UTF_8);
    assertThat(written)
        .contains("\"age\": 4", "\"knife\": \"bread knife\"", "\"panel\": \"noon\"")
        .contains("\"lens\": \"wide\"", "\"colour\": \"blue\"");
  }

  @Test
  void writesTheSmallestBakeWithItsEmptyLists() {
    assertThat(new String(BakeCodec.write(read(bake("\"x\": null").getBytes(UTF_8))), UTF_8))
        .isEqualTo(
            """
            {
              "address": "bun@5",
              "blob": "0123456789abcdef0123456789abcdef01234567",
              "time": "2026-09-14T10:30:00Z",
              "pieces": [],
              "findings": [],
              "photos": [],
              "x": null
            }
            """);
  }

  @Test
  void randomBakesComeBackAsTheyWereAndFitTheSchema() {
    RandomFormulas any = new RandomFormulas(8);
    for (int round = 0; round < 500; round++) {
      Bake bake = random(any);
      byte[] written = BakeCodec.write(bake);
      Bake again = read(written);
      assertThat(again).isEqualTo(bake).hasSameHashCodeAs(bake);
      assertThat(BakeCodec.write(again)).isEqualTo(written);
      assertThat(SchemaCheck.errors("bake", written)).isEmpty();
    }
  }

  private static List<CorePoint> coreLog(RandomFormulas any) {
    List<CorePoint> points = new ArrayList<>();
    for (int i = any.below(4); i > 0; i--) {
      double minutes = points.size() * 5 + any.below(5);
      points.add(new CorePoint(minutes, Temperature.celsius(any.below(100)), any.extras()));
    }
    return points;
  }

  private static Bake random(RandomFormulas any) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = any.below(4); i > 0; i--) {
      List<Double> scores = new ArrayList<>();
      List<Double> liking = new ArrayList<>();
      for (int taster = any.below(3); taster > 0; taster--) {
        any.number(-2, 2).ifPresent(scores::add);
        any.number(1, 9).ifPresent(liking::add);
      }
      pieces.add(
          new Piece(
              "p" + i,
              any.maybe(() -> Temperature.parse(any.one("205 °C", "400 °F", "37.5 °C"))),
              any.number(0, 2880),
              any.text(),
              any.number(0.01, 1_000_000),
              any.number(0.01, 1_000_000),
              any.number(0.1, 10_000),
              any.number(0.1, 10_000),
              any.maybe(() -> Temperature.celsius(any.below(100))),
              coreLog(any),
              any.number(0, 4),
              List.of(any.one("dense", "", "λευκό")),
              liking,
              List.of(new Piece.Attribute(any.one("sweet", "<b>"), scores, any.extras())),
              any.text(),
              any.text(),
              any.extras()));
    }
    Photo photo =
        new Photo(
            "photos/" + FORMULA + "/" + any.one("a.jpg", "A_b-2.jpeg", "x"),
            any.text(),
            any.text(),
            any.maybe(() -> time(any)),
            List.of(new Photo.Mark("a", any.number(0, 1).orElse(0.5), 1, any.extras())),
            any.extras());
    return new Bake(
        FORMULA,
        ID,
        any.one("bun@1", "bun/egg-free@7", "Ψωμί"),
        BLOB,
        time(any),
        any.text(),
        any.text(),
        any.text(),
        pieces,
        List.of(),
        any.below(2) == 0 ? List.of() : List.of(photo),
        any.extras());
  }

  private static OffsetDateTime time(RandomFormulas any) {
    Instant moment = Instant.ofEpochSecond(any.below(Integer.MAX_VALUE), any.below(3) * 1_000);
    return moment.atOffset(ZoneOffset.ofTotalSeconds((any.below(129) - 64) * 900));
  }

  private static Arguments row(String json, String... problems) {
    return Arguments.of(json, problems);
  }

  private static final String TIME =
      " is not a date and time. Write date, time and zone, such as"
          + " \"2026-09-14T10:30:00+02:00\".";

  static Stream<Arguments> refusals() {
    return Stream.of(
        row(
            "{}",
            ":1:1, field address: The field is missing. Add \"address\" with a text.",
            ":1:1, field blob: The field is missing. Add the Git blob id of the baked formula.",
            ":1:1, field time: The field is missing. Add when it went into the oven."),
        row(
            "{\"address\": \" \", \"blob\": \"abc\", \"time\": \"yesterday\"}",
            ":1:13, field address: The text is empty. Write something or use a placeholder.",
            ":1:26, field blob: \"abc\" is not a Git object id."
                + " Write the 40 hexadecimal digits of the formula's blob, in small letters.",
            ":1:41, field time: \"yesterday\"" + TIME),
        row(
            bake("\"pieces\": [{}]"),
            ":2:12, field pieces[0].id: The field is missing." + " Give the piece a letter."),
        row(
            bake("\"pieces\": [{\"id\": \"A\"}]"),
            ":2:19, field pieces[0].id: \"A\" cannot name a piece."
                + " Use up to 12 lower-case letters a-z and digits."),
        row(
            bake("\"pieces\": [{\"id\": \"a\"},\n {\"id\": \"a\"}]"),
            ":3:9, field pieces[1].id: The piece \"a\" stands twice."
                + " Give one of the two another letter."),
        row(
            piece("\"minutes\": 2881"),
            ":2:35, field pieces[0].minutes: The number 2881 is out of"
                + " range. Use a number from 0 to 2880."),
        row(
            piece("\"dough_g\": 0"),
            ":2:35, field pieces[0].dough_g: The number 0 is out of range."
                + " Use a number from 0.01 to 1000000."),
        row(
            piece("\"baked_g\": -1"),
            ":2:35, field pieces[0].baked_g: The number -1 is out of"
                + " range. Use a number from 0.01 to 1000000."),
        row(
            piece("\"width_mm\": 0"),
            ":2:36, field pieces[0].width_mm: The number 0 is out of"
                + " range. Use a number from 0.1 to 10000."),
        row(
            piece("\"height_mm\": 10001"),
            ":2:37, field pieces[0].height_mm: The number 10001 is"
                + " out of range. Use a number from 0.1 to 10000."),
        row(
            piece("\"crust_shade\": 4.5"),
            ":2:39, field pieces[0].crust_shade: The number 4.5 is"
                + " out of range. Use a number from 0 to 4."),
        row(
            piece("\"core\": \"hot\""),
            ":2:32, field pieces[0].core: The temperature \"hot\" is not"
                + " understood. Write a number and the scale, such as \"205 °C\" or \"400 °F\"."),
        row(
            piece("\"liking\": [0, 10]"),
            ":2:35, field pieces[0].liking[0]: The number 0 is out of range."
                + " Use a number from 1 to 9.",
            ":2:38, field pieces[0].liking[1]: The number 10 is out of range."
                + " Use a number from 1 to 9."),
        row(
            piece("\"attributes\": [{\"scores\": [3]}]"),
            ":2:39, field pieces[0].attributes[0].name: The field is missing."
                + " Add \"name\" with a text.",
            ":2:51, field pieces[0].attributes[0].scores[0]: The number 3 is out of range."
                + " Use a number from -2 to 2."),
        row(
            bake("\"photos\": [{}]"),
            ":2:12, field photos[0].file: The field is missing." + " Add the path of the picture."),
        row(
            bake("\"photos\": [{\"file\": \"../a.jpg\", \"taken\": \"2026-02-30T10:00Z\"}]"),
            ":2:21, field photos[0].file: \"../a.jpg\" is not the path of a photo. Write"
                + " photos/<formula>/<name>.jpg with plain letters, digits, dots and hyphens.",
            ":2:42, field photos[0].taken: \"2026-02-30T10:00Z\"" + TIME),
        row(
            bake(
                "\"photos\": [{\"file\": \"photos/a/b.jpg\", \"marks\": [{}, {\"piece\": \"a\","
                    + " \"x\": 1.1, \"y\": -0.1}]}]"),
            ":2:49, field photos[0].marks[0].piece: The field is missing."
                + " Name the piece that is marked.",
            ":2:49, field photos[0].marks[0].x: The field is missing. Add a number from 0 to 1.",
            ":2:49, field photos[0].marks[0].y: The field is missing. Add a number from 0 to 1.",
            ":2:73, field photos[0].marks[1].x: The number 1.1 is out of range."
                + " Use a number from 0 to 1.",
            ":2:83, field photos[0].marks[1].y: The number -0.1 is out of range."
                + " Use a number from 0 to 1."));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void saysEverythingThatIsWrongInTheOrderOfTheFile(String json, String[] problems) {
    UnreadableException refused = refused(json);
    assertThat(refused).isNotNull();
    assertThat(refused.problems())
        .extracting(Problem::toString)
        .containsExactly(Stream.of(problems).map(problem -> FILE + problem).toArray(String[]::new));
    assertThat(SchemaCheck.errors("bake", json))
        .as("the schema refuses it too, unless ids are the matter")
        .matches(errors -> !errors.isEmpty() || problems[0].contains("stands twice"));
  }

  @Test
  void saysThatTheFileIsMisnamed() {
    UnreadableException refused =
        catchThrowableOfType(
            UnreadableException.class,
            () ->
                BakeCodec.read(
                    "a.json",
                    FORMULA,
                    "2026-13-01-1",
                    bake("").strip().replace(",\n}", "}").getBytes(UTF_8)));
    assertThat(refused.problems())
        .singleElement()
        .hasToString(
            "a.json:1:1: \"2026-13-01-1\" cannot name a bake."
                + " Use the date and a number, such as 2026-09-14-1.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-09-14T10:30:00+02:00",
        "2026-09-14T10:30Z",
        "2026-09-14T10:30:59.123456789Z",
        "2024-02-29T00:00-03:30",
        "0001-01-01T00:00:00+18:00",
        "9999-12-31T23:59:59Z"
      })
  void schemaAndCodecAcceptTheSameTimes(String time) {
    String json = bake("\"photos\": [{\"file\": \"photos/a/b\", \"taken\": \"" + time + "\"}]");
    assertThat(refused(json)).isNull();
    assertThat(SchemaCheck.errors("bake", json)).isEmpty();
    OffsetDateTime taken = read(json.getBytes(UTF_8)).photos().get(0).taken().orElseThrow();
    assertThat(taken).isEqualTo(OffsetDateTime.parse(time));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2026-09-14",
        "2026-09-14T10:30",
        "2026-09-14 10:30Z",
        "2026-9-14T10:30Z",
        "2026-13-14T10:30Z",
        "2026-00-14T10:30Z",
        "2026-09-32T10:30Z",
        "2026-09-14T24:00Z",
        "2026-09-14T10:60Z",
        "2026-09-14T10:30:60Z",
        "2026-09-14T10:30+19:00",
        "2026-09-14T10:30+02",
        "2026-09-14T10:30:00.Z",
        "12026-09-14T10:30Z",
        "-2026-09-14T10:30Z",
        "2026-09-14t10:30z",
        "2026-09-14T10:30:00+02:00[Europe/Berlin]",
        "2026-09-14T10:30+18:30"
      })
  void schemaAndCodecRefuseTheSameTimes(String time) {
    String json = bake("\"photos\": [{\"file\": \"photos/a/b\", \"taken\": \"" + time + "\"}]");
    assertThat(refused(json)).isNotNull();
    assertThat(SchemaCheck.errors("bake", json)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a.jpg",
        "/photos/a/b.jpg",
        "photos/b.jpg",
        "photos/a/b/c.jpg",
        "photos/a/..",
        "photos/a/.",
        "photos/a/.hidden",
        "photos/a/b..jpg",
        "photos/../b.jpg",
        "photos/A/b.jpg",
        "photos/a/b c.jpg",
        "photos/a/ä.jpg",
        "photos\\\\a\\\\b.jpg",
        "photos/a/b.jpg/"
      })
  void schemaAndCodecRefuseTheSamePaths(String path) {
    String json = bake("\"photos\": [{\"file\": \"" + path + "\"}]");
    assertThat(refused(json)).isNotNull();
    assertThat(SchemaCheck.errors("bake", json)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"x\": {}",
        "\"baker\": null, \"ambient\": \"\", \"pieces\": null",
        "\"findings\": null, \"photos\": null, \"note\": null",
        "\"findings\": [\"\", \"λευκό\", \"<script>\"]",
        "\"pieces\": [{\"id\": \"abcdefghij12\", \"minutes\": null, \"core\": null,"
            + " \"findings\": null, \"liking\": null, \"attributes\": null}]",
        "\"pieces\": [{\"id\": \"a\", \"minutes\": 0, \"dough_g\": 0.01, \"baked_g\": 1e6,"
            + " \"width_mm\": 0.1, \"height_mm\": 10000, \"crust_shade\": 4, \"liking\": [1, 9],"
            + " \"attributes\": [{\"name\": \"x\", \"scores\": [-2, 2]}, {\"name\": \"y\"}]}]",
        "\"photos\": [{\"file\": \"photos/a/b.jpg\", \"caption\": null, \"taken\": null,"
            + " \"marks\": null}]"
      })
  void schemaAndCodecAcceptTheSame(String members) {
    assertThat(refused(bake(members))).isNull();
    assertThat(SchemaCheck.errors("bake", bake(members))).isEmpty();
  }

  @Test
  void keepsAPhotoOutOfOtherFoldersHoweverLongItsPath() {
    String path = "photos/a/" + "b".repeat(191);
    assertThat(refused(bake("\"photos\": [{\"file\": \"" + path + "\"}]"))).isNull();
    assertThat(refused(bake("\"photos\": [{\"file\": \"" + path + "b\"}]"))).isNotNull();
    assertThat(
            refused(bake("\"photos\": [{\"file\": \"photos/" + "a/".repeat(500_000) + "\"}]"))
                .problems()
                .get(0)
                .message())
        .hasSizeLessThan(100);
  }

  @Test
  void randomMutationsAreReadOrRefusedButNeverFailOtherwise() throws IOException {
    byte[] golden = golden();
    Random random = new Random(9);
    for (int round = 0; round < 3_000; round++) {
      byte[] mutant = golden.clone();
      for (int i = random.nextInt(3); i >= 0; i--) {
        mutant[random.nextInt(mutant.length)] = golden[random.nextInt(golden.length)];
      }
      try {
        Bake bake = read(mutant);
        assertThat(read(BakeCodec.write(bake))).isEqualTo(bake);
      } catch (UnreadableException e) {
        assertThat(e.problems()).isNotEmpty();
      }
    }
  }

  @Test
  void aBakeWithoutZoneInWholeMinutesCannotBeMade() {
    Bake bake = read(bake("\"x\": 1").getBytes(UTF_8));
    OffsetDateTime odd = OffsetDateTime.of(1850, 1, 1, 0, 0, 0, 0, ZoneOffset.ofTotalSeconds(-75));
    OffsetDateTime far = OffsetDateTime.parse("+12026-01-01T00:00Z");
    for (OffsetDateTime time : List.of(odd, far)) {
      assertThat(
              catchThrowableOfType(
                  IllegalArgumentException.class,
                  () ->
                      new Bake(
                          FORMULA,
                          ID,
                          bake.address(),
                          BLOB,
                          time,
                          Optional.empty(),
                          Optional.empty(),
                          Optional.empty(),
                          List.of(),
                          List.of(),
                          List.of(),
                          bake.extras())))
          .hasMessageContaining(" is not a date and time.\n");
    }
  }
}
