package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldsTest {
  private static Fields of(String text) {
    return Fields.of("a.json", text.getBytes(UTF_8));
  }

  private static UnreadableException refused(String text, Consumer<Fields> read) {
    Fields fields = of(text);
    read.accept(fields);
    return catchThrowableOfType(UnreadableException.class, fields::finish);
  }

  private static void assertRefused(String text, Consumer<Fields> read, String... problems) {
    UnreadableException refused = refused(text, read);
    assertThat(refused).isNotNull();
    assertThat(refused.problems()).extracting(Problem::toString).containsExactly(problems);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[]|a list in [ ]",
        "\"a\"|a text in quotes",
        "1.50|the number 1.5",
        "true|the word true",
        "null|the word null"
      })
  void refusesAFileThatIsNoObject(String text, String what) {
    UnreadableException refused = catchThrowableOfType(UnreadableException.class, () -> of(text));
    assertThat(refused.problems())
        .singleElement()
        .hasToString(
            "a.json:1:1: The file holds "
                + what
                + " where an object in { } belongs."
                + " Begin the file with { and end it with }.");
  }

  @Test
  void saysWhichTypeStandsWhereAnotherBelongs() {
    assertRefused(
        """
        {
          "text": 1,
          "number": "1",
          "flag": "yes",
          "list": {},
          "object": [],
          "required": false
        }
        """,
        fields -> {
          fields.text("text");
          fields.decimal("number");
          fields.flag("flag");
          fields.texts("list");
          fields.object("object");
          fields.requiredText("required");
        },
        "a.json:2:11, field text: There is the number 1 where a text in quotes belongs."
            + " Write a text in quotes.",
        "a.json:3:13, field number: There is a text in quotes where a number without quotes"
            + " belongs. Write a number without quotes.",
        "a.json:4:11, field flag: There is a text in quotes where true or false belongs."
            + " Write true or false.",
        "a.json:5:11, field list: There is an object in { } where a list in [ ] belongs."
            + " Write a list in [ ].",
        "a.json:6:13, field object: There is a list in [ ] where an object in { } belongs."
            + " Write an object in { }.",
        "a.json:7:15, field required: There is the word false where a text in quotes belongs."
            + " Write a text in quotes.");
  }

  @Test
  void reportsInTheOrderOfTheFileWhateverTheOrderOfReading() {
    assertRefused(
        "{\"b\": 1,\n \"a\": 2}",
        fields -> {
          fields.text("a");
          fields.text("b");
        },
        "a.json:1:7, field b: There is the number 1 where a text in quotes belongs."
            + " Write a text in quotes.",
        "a.json:2:7, field a: There is the number 2 where a text in quotes belongs."
            + " Write a text in quotes.");
  }

  @Test
  void readsNullAsAbsentAndRefusesItWhereSomethingIsRequired() {
    Fields fields = of("{\"a\": null}");
    assertThat(fields.text("a")).isEmpty();
    assertThat(fields.number("a", 0, 1)).isEmpty();
    assertThat(fields.texts("a")).isEmpty();
    assertThat(fields.object("a")).isEmpty();
    assertThat(fields.flag("a")).isFalse();
    assertThat(fields.has("a")).isFalse();
    assertThat(fields.problems()).isEmpty();
    assertRefused(
        "{\"a\": null}",
        f -> f.requiredText("a"),
        "a.json:1:7, field a: The field is missing. Add \"a\" with a text.");
  }

  @Test
  void refusesBlankTextsWhereSomethingIsRequired() {
    assertRefused(
        "{\"a\": \" \\t\"}",
        f -> f.requiredText("a"),
        "a.json:1:7, field a: The text is empty. Write something or use a placeholder.");
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, true", "0.1000, true", "5, true", "5.0, true", "0.09999999999999999999, false",
    "5.00000000000000000001, false", "-1, false", "1e400, false", "1e-400, false", "-1e400, false"
  })
  void comparesLimitsExactly(String number, boolean fits) {
    Fields fields = of("{\"a\": " + number + "}");
    assertThat(fields.number("a", 0.1, 5).isPresent()).isEqualTo(fits);
    assertThat(fields.problems().isEmpty()).isEqualTo(fits);
    Fields list = of("{\"a\": [" + number + "]}");
    assertThat(list.numbers("a", 0.1, 5)).hasSize(fits ? 1 : 0);
    assertThat(list.problems().isEmpty()).isEqualTo(fits);
  }

  @Test
  void namesTheLimitsInPlainDigits() {
    assertRefused(
        "{\"a\": 0, \"b\": [1, \"x\", 10]}",
        fields -> {
          fields.number("a", 0.01, 1_000_000);
          fields.numbers("b", 1, 9);
        },
        "a.json:1:7, field a: The number 0 is out of range. Use a number from 0.01 to 1000000.",
        "a.json:1:19, field b[1]: There is a text in quotes where a number without quotes belongs."
            + " Use a number from 1 to 9.",
        "a.json:1:24, field b[2]: The number 10 is out of range. Use a number from 1 to 9.");
  }

  @ParameterizedTest
  @CsvSource({"6, 6", "6.0, 6", "1e2, 100", "6.5,", "6.00000000000000000001,", "0,", "1001,"})
  void readsWholeNumbersOnly(String number, Integer expected) {
    Fields fields = of("{\"a\": " + number + "}");
    assertThat(fields.whole("a", 1, 1000)).isEqualTo(Optional.ofNullable(expected));
    assertThat(fields.problems()).hasSize(expected == null ? 1 : 0);
  }

  @Test
  void saysThatANumberIsNotWhole() {
    assertRefused(
        "{\"a\": 2.50}",
        f -> f.whole("a", 1, 10),
        "a.json:1:7, field a: The number 2.5 is not a whole number. Round it to a whole number.");
  }

  @Test
  void pointsAtItemsOfLists() {
    assertRefused(
        "{\"a\": [{\"b\": 1}, 2, null], \"c\": [\"x\", {}]}",
        fields -> {
          fields.objects(
              "a",
              item -> {
                item.text("b");
                return Optional.empty();
              });
          fields.texts("c");
        },
        "a.json:1:14, field a[0].b: There is the number 1 where a text in quotes belongs."
            + " Write a text in quotes.",
        "a.json:1:18, field a[1]: There is the number 2 where an object in { } belongs."
            + " Write an object in { }.",
        "a.json:1:21, field a[2]: There is the word null where an object in { } belongs."
            + " Write an object in { }.",
        "a.json:1:39, field c[1]: There is an object in { } where a text in quotes belongs."
            + " Put it in quotes.");
  }

  @Test
  void splitsARemedyOffAtTheLastLineBreakSoThatAQuotedTextMayHoldOne() {
    assertRefused(
        "{\"a\": \"x\\ny\"}",
        fields ->
            fields.parsed(
                "a",
                text -> {
                  throw new IllegalArgumentException("\"" + text + "\" is wrong.\nMend it.");
                }),
        "a.json:1:7, field a: \"x y\" is wrong. Mend it.");
  }

  @Test
  void givesARemedyWhereAParserHasNone() {
    assertRefused(
        "{\"a\": \"x\"}",
        fields -> fields.parsed("a", Integer::valueOf),
        "a.json:1:7, field a: For input string: \"x\" Correct the value.");
  }

  @Test
  void keepsWhatNobodyReadEvenWithinInnerObjects() {
    Fields fields = of("{\"z\": 1, \"in\": {\"known\": 1, \"own\": [1]}, \"a\": {\"b\": null}}");
    fields.object("in").orElseThrow().decimal("known");
    Extras extras = fields.extras();
    assertThat(extras.names()).containsExactly("z", "a", "in");
    assertThat(extras.text("in")).isEqualTo("{\n  \"own\": [\n    1\n  ]\n}");
    assertThat(extras.text("a")).isEqualTo("{\n  \"b\": null\n}");
    assertThat(extras.text("missing")).isEmpty();
  }

  @Test
  void putsKeptFieldsBackBesideTheKnownOnes() {
    Fields fields = of("{\"in\": {\"known\": 1, \"own\": 2}, \"z\": 1}");
    fields.object("in").orElseThrow().decimal("known");
    String written =
        CanonicalJson.text(
            new Members()
                .text("name", "n")
                .value("in", new Members().number("known", java.math.BigDecimal.TEN).object())
                .extras(fields.extras())
                .object());
    assertThat(written)
        .isEqualTo(
            """
            {
              "name": "n",
              "in": {
                "known": 10,
                "own": 2
              },
              "z": 1
            }
            """);
  }
}
