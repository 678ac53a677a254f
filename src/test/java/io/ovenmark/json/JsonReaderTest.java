package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonReaderTest {
  /** RFC 8259, section 13, "Examples", the first. */
  private static final String RFC_IMAGE =
      """
      {
        "Image": {
            "Width":  800,
            "Height": 600,
            "Title":  "View from 15th Floor",
            "Thumbnail": {
                "Url":    "http://www.example.com/image/481989943",
                "Height": 125,
                "Width":  100
            },
            "Animated" : false,
            "IDs": [116, 943, 234, 38793]
          }
      }
      """;

  /** RFC 8259, section 13, "Examples", the second. */
  private static final String RFC_PLACES =
      """
      [
        {
           "precision": "zip",
           "Latitude":  37.7668,
           "Longitude": -122.3959,
           "Address":   "",
           "City":      "SAN FRANCISCO",
           "State":     "CA",
           "Zip":       "94107",
           "Country":   "US"
        },
        {
           "precision": "zip",
           "Latitude":  37.371991,
           "Longitude": -122.026020,
           "Address":   "",
           "City":      "SUNNYVALE",
           "State":     "CA",
           "Zip":       "94085",
           "Country":   "US"
        }
      ]
      """;

  private static final String SAMPLE =
      """
      {
        "name": "Ψωμί λούπινου \\u00e9 \\"seeded\\" 🍞",
        "lines": [
          {"id": "water", "food": "water", "amount": "188 g", "flour": false, "x": null},
          {"id": "salt", "food": "salt", "amount": "½ tsp", "flour": true, "y": -1.5e-3}
        ],
        "yield": {"pieces": 6, "handling_loss_percent": 2.25},
        "empty": [[], {}, ""],
        "\\ud83c\\udf5e \\u00e9": 1
      }
      """;

  private static JsonValue read(String text) {
    return JsonReader.read("a.json", text.getBytes(UTF_8));
  }

  private static Problem problem(byte[] bytes) {
    UnreadableException refused =
        catchThrowableOfType(UnreadableException.class, () -> JsonReader.read("a.json", bytes));
    assertThat(refused).as(new String(bytes, UTF_8)).isNotNull();
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }

  private static Problem problem(String text) {
    return problem(text.getBytes(UTF_8));
  }

  private static Map<String, JsonValue> members(JsonValue value) {
    return ((JsonValue.JsonObject) value).members();
  }

  @Test
  void readsTheFirstExampleOfRfc8259() {
    Map<String, JsonValue> image = members(members(read(RFC_IMAGE)).get("Image"));
    assertThat(image.keySet())
        .containsExactly("Width", "Height", "Title", "Thumbnail", "Animated", "IDs");
    assertThat(image.get("Width")).isEqualTo(new JsonValue.JsonNumber(new BigDecimal("800")));
    assertThat(image.get("Animated")).isEqualTo(new JsonValue.JsonBoolean(false));
    assertThat(((JsonValue.JsonArray) image.get("IDs")).items()).hasSize(4);
    assertThat(members(image.get("Thumbnail")).get("Url"))
        .isEqualTo(new JsonValue.JsonString("http://www.example.com/image/481989943"));
  }

  @Test
  void readsTheSecondExampleOfRfc8259() {
    List<JsonValue> places = ((JsonValue.JsonArray) read(RFC_PLACES)).items();
    assertThat(places).hasSize(2);
    assertThat(members(places.get(1)).get("Longitude"))
        .isEqualTo(new JsonValue.JsonNumber(new BigDecimal("-122.02602")));
    assertThat(members(places.get(0)).get("Address")).isEqualTo(new JsonValue.JsonString(""));
  }

  /** RFC 8259, section 13: "three small JSON texts containing only values". */
  @Test
  void readsTheBareValuesOfRfc8259() {
    assertThat(read("\"Hello world!\"")).isEqualTo(new JsonValue.JsonString("Hello world!"));
    assertThat(read("42")).isEqualTo(new JsonValue.JsonNumber(new BigDecimal("42")));
    assertThat(read("true")).isEqualTo(new JsonValue.JsonBoolean(true));
  }

  /** RFC 8259, section 7: the G clef as a surrogate pair. */
  @Test
  void readsEscapedSurrogatePairsAndLoneSurrogates() {
    assertThat(read("\"\\uD834\\uDD1E\"")).isEqualTo(new JsonValue.JsonString("𝄞"));
    JsonValue lone = read("\"\\uD834 and \\udd1e\"");
    assertThat(lone).isEqualTo(new JsonValue.JsonString("\uD834 and \udd1e"));
    assertThat(JsonReader.read("a.json", CanonicalJson.write(lone))).isEqualTo(lone);
  }

  @Test
  void tellsWhereEachValueBegins() {
    JsonValue root = read("{\n  \"a\": [1,\r\n    {\"b\":\ttrue}],\n\n \"c\": \"x\"}");
    assertThat(root.at()).isEqualTo(new Position(1, 1));
    JsonValue list = members(root).get("a");
    assertThat(list.at()).isEqualTo(new Position(2, 8));
    List<JsonValue> items = ((JsonValue.JsonArray) list).items();
    assertThat(items.get(0).at()).isEqualTo(new Position(2, 9));
    assertThat(items.get(1).at()).isEqualTo(new Position(3, 5));
    assertThat(members(items.get(1)).get("b").at()).isEqualTo(new Position(3, 11));
    assertThat(members(root).get("c").at()).isEqualTo(new Position(5, 7));
  }

  @Test
  void passesOverAByteOrderMarkWithoutShiftingColumns() {
    assertThat(members(read("\uFEFF{\"a\": 1}")).get("a").at()).isEqualTo(new Position(1, 7));
    assertThat(problem("\uFEFF{\"a\": ?}").at()).isEqualTo(new Position(1, 7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n", "\uFEFF", "\uFEFF \t\r\n"})
  void refusesAnEmptyFile(String text) {
    assertThat(problem(text))
        .hasToString("a.json: The file is empty. Restore it or write an object.");
  }

  @Test
  void refusesANameThatStandsTwiceAndPointsAtTheSecond() {
    assertThat(problem("{\n  \"a\": 1,\n  \"b\": 2,\n   \"a\": 3\n}"))
        .hasToString("a.json:4:4: The name \"a\" stands twice in one object. Keep one of the two.");
  }

  @Test
  void allowsTheSameNameInDifferentObjects() {
    assertThat(members(read("{\"a\": {\"a\": 1}}"))).containsOnlyKeys("a");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} x|1:4",
        "{}}|1:3",
        "{}\\n\\n[]|3:1",
        "[1] 2|1:5",
        "{}\\u0000|1:3",
        "42 43|1:4",
        "{},|1:3",
        "\"a\" \"b\"|1:5",
        "{}\\u00a0|1:3"
      })
  void refusesWhatFollowsTheValue(String text, String at) {
    String real = text.replace("\\n", "\n").replace("\\u0000", "\0").replace("\\u00a0", "\u00a0");
    assertThat(problem(real))
        .hasToString(
            "a.json:"
                + at
                + ": Something follows the end of the JSON value."
                + " Remove what comes after the last bracket.");
  }

  @Test
  void everyTruncationIsOneClearProblem() {
    byte[] whole = SAMPLE.strip().getBytes(UTF_8);
    for (int length = 1; length < whole.length; length++) {
      byte[] part = java.util.Arrays.copyOf(whole, length);
      Problem problem = problem(part);
      assertThat(problem.message())
          .as("after %d bytes", length)
          .isIn(
              "The file ends before it is complete.",
              "The file ends inside a text in quotes.",
              "The file ends in the middle of a character.");
      assertThat(problem.hint()).isEqualTo(SyntaxFault.RESTORE);
      String text = new String(part, UTF_8).replace("\uFFFD", "");
      int lines = (int) text.chars().filter(c -> c == '\n').count();
      assertThat(problem.at().line()).isEqualTo(lines + 1);
    }
  }

  @Test
  void pointsAtBytesThatAreNotUtf8() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes("{\n  \"é\": \"caf".getBytes(UTF_8));
    bytes.write(0xe9);
    bytes.writeBytes("\"}".getBytes(UTF_8));
    assertThat(problem(bytes.toByteArray()))
        .hasToString(
            "a.json:2:12: The file is not UTF-8 text from here on."
                + " Save it again with the encoding UTF-8.");
  }

  /** RFC 3629, section 10: overlong and surrogate sequences are not UTF-8. */
  @ParameterizedTest
  @ValueSource(strings = {"c080", "eda080", "f4908080", "80", "fe", "c3c3"})
  void refusesForbiddenUtf8Sequences(String hex) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write('"');
    bytes.writeBytes(java.util.HexFormat.of().parseHex(hex));
    bytes.writeBytes("\" ".getBytes(UTF_8));
    assertThat(problem(bytes.toByteArray()).message())
        .isEqualTo("The file is not UTF-8 text from here on.");
    assertThat(problem(bytes.toByteArray()).at()).isEqualTo(new Position(1, 2));
  }

  @Test
  void readsNestingUpToItsLimitAndRefusesOneMore() {
    int deepest = JsonReader.DEEPEST;
    assertThat(read("[".repeat(deepest) + "]".repeat(deepest)).kind()).isEqualTo("array");
    assertThat(problem("[".repeat(deepest + 1) + "]".repeat(deepest + 1)))
        .hasToString(
            "a.json:1:65: Lists and objects are nested more than 64 deep here."
                + " Check for pasted text that does not belong here.");
    assertThat(problem("{\"a\":".repeat(100_000)).message()).contains("nested more than 64");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1e1001",
        "1e-1001",
        "-1E+2147483647",
        "1e2147483648",
        "1e99999999999999999999",
        "5e-2147483648",
        "0e-5000"
      })
  void refusesNumbersBeyondAllBounds(String number) {
    assertThat(problem("{\"a\": " + number + "}"))
        .hasToString(
            "a.json:1:7: The number "
                + number
                + " is far too large or too small."
                + " Check its power of ten, the digits after the e.");
  }

  @Test
  void refusesNumbersOfManyDigits() {
    assertThat(problem("{\"a\": " + "9".repeat(65) + "}"))
        .hasToString(
            "a.json:1:7: The number has more than 64 digits."
                + " Round it, or put it in quotes if it is a text.");
    assertThat(problem("[" + "9".repeat(1_000_000) + "]").message()).contains("64 digits");
    assertThat(read("9".repeat(64)).kind()).isEqualTo("number");
  }

  /** RFC 8259, section 6 names both numbers as ones that trouble other programs. */
  @ParameterizedTest
  @ValueSource(strings = {"1E400", "3.141592653589793238462643383279"})
  void keepsNumbersExactlyEvenWhereADoubleCannot(String number) {
    JsonValue value = read(number);
    assertThat(value).isEqualTo(new JsonValue.JsonNumber(new BigDecimal(number)));
    assertThat(JsonReader.read("a.json", CanonicalJson.write(value))).isEqualTo(value);
  }

  @Test
  void readsLongTexts() {
    String text = "x".repeat(200_000);
    assertThat(read("{\"" + text + "\": \"" + text + "\"}"))
        .isEqualTo(new JsonValue.JsonObject(Map.of(text, new JsonValue.JsonString(text))));
  }

  @Test
  void randomMutationsAreReadOrRefusedButNeverFailOtherwise() {
    byte[] sample = SAMPLE.getBytes(UTF_8);
    Random random = new Random(8259);
    for (int round = 0; round < 5_000; round++) {
      byte[] mutant = sample.clone();
      int changes = 1 + random.nextInt(4);
      for (int i = 0; i < changes; i++) {
        mutant[random.nextInt(mutant.length)] = (byte) random.nextInt(256);
      }
      try {
        JsonValue value = JsonReader.read("a.json", mutant);
        byte[] canonical = CanonicalJson.write(value);
        assertThat(JsonReader.read("a.json", canonical)).isEqualTo(value);
      } catch (UnreadableException e) {
        assertThat(e.problems()).hasSize(1);
        SyntaxFaultTest.assertReadsWell(e.problems().get(0));
      }
    }
  }

  @Test
  void randomRunsOfPunctuationAreReadOrRefused() {
    String alphabet = "{}[]:,\"\\-+.019eEtrufalsn /'\n\t#<=>“”½";
    Random random = new Random(13);
    for (int round = 0; round < 5_000; round++) {
      StringBuilder text = new StringBuilder("{\"a\": ");
      int length = random.nextInt(12);
      for (int i = 0; i < length; i++) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        read(text.toString());
      } catch (UnreadableException e) {
        assertThat(e.problems()).hasSize(1);
        SyntaxFaultTest.assertReadsWell(e.problems().get(0));
      }
    }
  }
}
