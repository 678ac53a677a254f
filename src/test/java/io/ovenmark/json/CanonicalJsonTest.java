package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanonicalJsonTest {
  private static JsonValue read(String text) {
    return JsonReader.read("a.json", text.getBytes(UTF_8));
  }

  @Test
  void writesOneValueALineWithAFinalNewline() {
    assertThat(CanonicalJson.text(read("{\"b\":[1,{\"c\":null}],\"a\":{},\"d\":[],\"e\":true}")))
        .isEqualTo(
            """
            {
              "b": [
                1,
                {
                  "c": null
                }
              ],
              "a": {},
              "d": [],
              "e": true
            }
            """);
  }

  @ParameterizedTest
  @CsvSource({
    "1.0, 1",
    "150.250, 150.25",
    "0.00, 0",
    "-0, 0",
    "-0.0e5, 0",
    "1e3, 1000",
    "1E-3, 0.001",
    "-1.5e2, -150",
    "12e37, 120000000000000000000000000000000000000",
    "1e40, 1E+40",
    "1e-40, 0.0000000000000000000000000000000000000001",
    "1e-41, 1E-41",
    "1e1000, 1E+1000"
  })
  void writesNumbersInTheirShortestExactForm(String read, String written) {
    assertThat(CanonicalJson.number(new BigDecimal(read))).isEqualTo(written);
    assertThat(CanonicalJson.text(read(read))).isEqualTo(written + "\n");
  }

  @Test
  void neverSpellsOutAnAstronomicNumber() {
    assertThat(CanonicalJson.number(new BigDecimal("1e2147483647"))).isEqualTo("1E+2147483647");
    assertThat(CanonicalJson.number(new BigDecimal("1e-2147483647"))).isEqualTo("1E-2147483647");
  }

  @Test
  void escapesOnlyWhatMustBeEscaped() {
    String text =
        "\" \\ / \b\f\n\r\t \0 \u001f \u007f é Ψ 🍞 \u2028 \uD800 \uDC00 \uD800\uD83C\uDF5E";
    assertThat(CanonicalJson.text(new JsonValue.JsonString(text)))
        .isEqualTo(
            "\"\\\" \\\\ / \\b\\f\\n\\r\\t \\u0000 \\u001f \\u007f é Ψ 🍞 \u2028 \\ud800 \\udc00"
                + " \\ud800🍞\"\n");
    assertThat(read(CanonicalJson.text(new JsonValue.JsonString(text))))
        .isEqualTo(new JsonValue.JsonString(text));
  }

  @Test
  void writesTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(CanonicalJson.text(read("[1234.5, \"\\u0001\"]")))
          .isEqualTo("[\n  1234.5,\n  \"\\u0001\"\n]\n");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void isIdempotentAndLosesNothing() {
    Random random = new Random(20);
    for (int round = 0; round < 500; round++) {
      JsonValue value = any(random, 0);
      byte[] once = CanonicalJson.write(value);
      JsonValue again = JsonReader.read("a.json", once);
      assertThat(again).isEqualTo(value);
      assertThat(again).hasSameHashCodeAs(value);
      assertThat(CanonicalJson.write(again)).isEqualTo(once);
    }
  }

  private static JsonValue any(Random random, int depth) {
    return switch (random.nextInt(depth < 4 ? 7 : 5)) {
      case 0 -> new JsonValue.JsonString(text(random));
      case 1 ->
          new JsonValue.JsonNumber(
              new BigDecimal(random.nextInt()).movePointLeft(random.nextInt(60) - 30));
      case 2 -> new JsonValue.JsonNumber(Members.decimal(random.nextGaussian()));
      case 3 -> new JsonValue.JsonBoolean(random.nextBoolean());
      case 4 -> new JsonValue.JsonNull(Position.NONE);
      case 5 -> {
        List<JsonValue> items = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          items.add(any(random, depth + 1));
        }
        yield new JsonValue.JsonArray(items);
      }
      default -> {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        for (int i = random.nextInt(4); i > 0; i--) {
          members.put(text(random).replaceAll("[\\ud800-\\udfff]", "🍞"), any(random, depth + 1));
        }
        yield new JsonValue.JsonObject(members);
      }
    };
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(6); i > 0; i--) {
      text.append((char) (random.nextBoolean() ? random.nextInt(128) : random.nextInt(0x10000)));
    }
    return text.toString();
  }
}
