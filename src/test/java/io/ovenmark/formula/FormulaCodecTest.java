package io.ovenmark.formula;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.json.Problem;
import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Temperature;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaCodecTest {
  private static final String FILE = "formulas/bun.json";

  private static byte[] golden() throws IOException {
    try (InputStream in = FormulaCodecTest.class.getResourceAsStream("seeded-lupin-bun.json")) {
      return in.readAllBytes();
    }
  }

  private static Formula read(String text) {
    return FormulaCodec.read(FILE, text.getBytes(UTF_8));
  }

  private static UnreadableException refused(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> read(text));
  }

  private static String written(Formula formula) {
    return new String(FormulaCodec.write(formula), UTF_8);
  }

  @Test
  void readsEveryFieldOfAFullFormula() throws IOException {
    Formula formula = FormulaCodec.read(FILE, golden());
    assertThat(formula.name()).isEqualTo("Seeded lupin bun");
    assertThat(formula.goal()).contains("low-carbohydrate-bun");
    assertThat(formula.reference()).contains("wheat-bun");
    assertThat(formula.lines())
        .extracting(Line::id)
        .containsExactly("lupin-flour", "water", "egg", "water-2");
    Line flour = formula.line("lupin-flour").orElseThrow();
    assertThat(flour.flour()).isTrue();
    assertThat(flour.extras().names()).containsExactly("batch");
    assertThat(formula.line("egg").orElseThrow().amount()).isEqualTo(Amount.parse("2 large"));
    assertThat(formula.line("water").orElseThrow().note()).contains("35 °C");
    assertThat(formula.method()).hasSize(2);
    BakeSetting bake = formula.bakeSetting("bake").orElseThrow();
    assertThat(bake.temperature()).contains(Temperature.celsius(205));
    assertThat(bake.minutes()).hasValue(18.5);
    assertThat(bake.steam()).contains("10 s at loading");
    assertThat(bake.extras().text("fan")).isEqualTo("false");
    assertThat(formula.yield())
        .isEqualTo(new Yield(Optional.of(6), OptionalDouble.empty(), OptionalDouble.of(1.5)));
    assertThat(formula.extras().names()).containsExactly("shelf", "yield");
  }

  @Test
  void writesAFullFormulaAsTheGoldenFileStands() throws IOException {
    byte[] golden = golden();
    assertThat(FormulaCodec.write(FormulaCodec.read(FILE, golden))).isEqualTo(golden);
    assertThat(SchemaCheck.errors("formula", golden)).isEmpty();
  }

  @Test
  void keepsUnknownFieldsThroughEveryChange() throws IOException {
    Formula formula = FormulaCodec.read(FILE, golden());
    String changed =
        written(
            formula
                .withName("Ψωμί")
                .withYield(Yield.ofPieces(8))
                .withLines(
                    formula.lines().stream()
                        .map(line -> line.withAmount(Amount.parse("1 g")).withFlour(false))
                        .toList())
                .withBake(
                    formula.bake().stream()
                        .map(stage -> stage.withMinutes(OptionalDouble.of(9)))
                        .toList()));
    assertThat(changed)
        .contains("\"batch\": \"B7\"", "\"fan\": false", "\"use\": \"crumbs\"", "\"days\": 3")
        .contains("\"pieces\": 8")
        .doesNotContain("18.5", "188 g");
  }

  @Test
  void writesTheSmallestFormulaWithItsEmptyLists() {
    assertThat(written(read("{\"name\": \"Bun\"}")))
        .isEqualTo(
            """
            {
              "name": "Bun",
              "lines": [],
              "method": [],
              "bake": [],
              "yield": {}
            }
            """);
  }

  @Test
  void randomFormulasComeBackAsTheyWereAndFitTheSchema() {
    RandomFormulas formulas = new RandomFormulas(6);
    for (int round = 0; round < 500; round++) {
      Formula formula = formulas.next();
      byte[] written = FormulaCodec.write(formula);
      Formula again = FormulaCodec.read(FILE, written);
      assertThat(again).isEqualTo(formula).hasSameHashCodeAs(formula);
      assertThat(FormulaCodec.write(again)).isEqualTo(written);
      assertThat(SchemaCheck.errors("formula", written)).isEmpty();
    }
  }

  @Test
  void givesFreeIdsToLinesAndStagesWithoutOne() {
    Formula formula =
        read(
            """
            {"name": "Bun", "lines": [
              {"food": "water", "amount": "1 g"},
              {"id": "water", "food": "water", "amount": "2 g"},
              {"food": "water", "amount": "3 g"},
              {"food": "salt", "amount": "4 g"}],
             "bake": [{}, {"id": "bake-2"}, {}]}
            """);
    assertThat(formula.lines())
        .extracting(Line::id)
        .containsExactly("water-2", "water", "water-3", "salt");
    assertThat(formula.bake())
        .extracting(BakeSetting::id)
        .containsExactly("bake", "bake-2", "bake-3");
  }

  @Test
  void givesFreeIdsToFoodsWhoseNameHasTheGreatestLength() {
    String food = "a".repeat(62) + "-b";
    String line = "{\"food\": \"" + food + "\", \"amount\": \"1 g\"}";
    Formula formula = read("{\"name\": \"Bun\", \"lines\": [" + line + "," + line + "]}");
    assertThat(formula.lines()).extracting(Line::id).containsExactly(food, "a".repeat(62) + "-2");
    assertThat(formula.freeLineId(food)).isEqualTo("a".repeat(62) + "-3");
  }

  @Test
  void takesNamesInAnyScript() {
    for (String name :
        new String[] {"Ψωμί λούπινου", "<script>alert('x')</script>", "🍞", "a\nb"}) {
      Formula formula = Formula.named(name);
      assertThat(FormulaCodec.read(FILE, FormulaCodec.write(formula))).isEqualTo(formula);
    }
  }

  private static Arguments row(String json, String... problems) {
    return Arguments.of(json, problems);
  }

  private static String slug(String shown) {
    return "\""
        + shown
        + "\" cannot be a short name. Use up to 64 lower-case letters a-z, digits and"
        + " single hyphens, such as \"lupin-bun\".";
  }

  static Stream<Arguments> refusals() {
    return Stream.of(
        row("{}", ":1:1, field name: The field is missing. Add \"name\" with a text."),
        row(
            "{\"name\": \"\"}",
            ":1:10, field name: The text is empty. Write something or use a placeholder."),
        row("{\"name\": \"x\", \"goal\": \"Low Carb\"}", ":1:23, field goal: " + slug("Low Carb")),
        row(
            "{\"name\": \"x\", \"reference\": \"../x\"}",
            ":1:28, field reference: " + slug("../x")),
        row(
            "{\"name\": \"x\", \"lines\": {}}",
            ":1:24, field lines: There is an object in { } where a list in [ ] belongs."
                + " Write a list in [ ]."),
        row(
            "{\"name\": \"x\", \"method\": [1]}",
            ":1:26, field method[0]: There is the number 1 where a text in quotes belongs."
                + " Put it in quotes."),
        row(
            "{\"name\": \"x\",\n \"lines\": [\n  {}\n ]}",
            ":3:3, field lines[0].food: The line has no food. Add the short name of a food.",
            ":3:3, field lines[0].amount: The line has no amount. Add one such as \"150 g\"."),
        row(
            line("\"food\": \"water\", \"amount\": 150"),
            ":2:29, field lines[0].amount: There is the number 150 where a text in quotes belongs."
                + " Write a text in quotes."),
        row(
            line("\"food\": \"Water!\", \"amount\": \"1 g\""),
            ":2:10, field lines[0].food: " + slug("Water!")),
        row(
            line("\"food\": \"water\", \"amount\": \"-5 g\""),
            ":2:29, field lines[0].amount: The amount \"-5 g\" is negative. Use 0 or more."),
        row(
            line("\"food\": \"water\", \"amount\": \"1e308 g\""),
            ":2:29, field lines[0].amount: The amount \"1e308 g\" is absurdly large or small."
                + " The most that can be written is 1000000 of a unit."),
        row(
            line("\"food\": \"water\", \"amount\": \"1001 kg\""),
            ":2:29, field lines[0].amount: The amount \"1001 kg\" is more than a tonne."
                + " Check the number and the unit."),
        row(
            line("\"food\": \"water\", \"amount\": \"5\""),
            ":2:29, field lines[0].amount: The amount \"5\" has no unit."
                + " Add g, ml, tsp or a measure of the food such as \"large\"."),
        row(
            line("\"food\": \"water\", \"amount\": \"1,5 g\""),
            ":2:29, field lines[0].amount: The amount \"1,5 g\" is not understood."
                + " Write decimals with a point and no thousands separators, such as \"1.5 g\"."),
        row(
            line("\"id\": \"A b\", \"food\": \"water\", \"amount\": \"1 g\""),
            ":2:8, field lines[0].id: " + slug("A b")),
        row(
            line("\"flour\": \"yes\", \"food\": \"water\", \"amount\": \"1 g\""),
            ":2:11, field lines[0].flour: There is a text in quotes where true or false belongs."
                + " Write true or false."),
        row(
            "{\"name\": \"x\", \"lines\": [\n"
                + "{\"id\": \"a\", \"food\": \"b\", \"amount\": \"1 g\"},\n"
                + "{\"food\": \"b\", \"id\": \"a\", \"amount\": \"1 g\"}]}",
            ":3:21, field lines[1].id: The line id \"a\" stands twice."
                + " Give one of the two another id."),
        row(
            "{\"name\": \"x\", \"bake\": [{\"id\": \"a\"}, {\"id\": \"a\"}]}",
            ":1:44, field bake[1].id: The bake setting id \"a\" stands twice."
                + " Give one of the two another id."),
        row(
            "{\"name\": \"x\", \"bake\": [{\"temperature\": \"hot\"}]}",
            ":1:40, field bake[0].temperature: The temperature \"hot\" is not understood."
                + " Write a number and the scale, such as \"205 °C\" or \"400 °F\"."),
        row(
            "{\"name\": \"x\", \"bake\": [{\"temperature\": \"900 °C\"}]}",
            ":1:40, field bake[0].temperature: The temperature \"900 °C\" is out of range."
                + " Use one from -60 to 600 °C."),
        row(
            "{\"name\": \"x\", \"bake\": [{\"minutes\": -1}]}",
            ":1:36, field bake[0].minutes: The number -1 is out of range."
                + " Use a number from 0 to 2880."),
        row(
            "{\"name\": \"x\", \"bake\": [{\"minutes\": \"18\"}]}",
            ":1:36, field bake[0].minutes: There is a text in quotes where a number without quotes"
                + " belongs. Write a number without quotes."),
        row(
            "{\"name\": \"x\", \"yield\": {\"pieces\": 0}}",
            ":1:35, field yield.pieces: The number 0 is out of range."
                + " Use a number from 1 to 100000."),
        row(
            "{\"name\": \"x\", \"yield\": {\"pieces\": 2.5}}",
            ":1:35, field yield.pieces: The number 2.5 is not a whole number."
                + " Round it to a whole number."),
        row(
            "{\"name\": \"x\", \"yield\": {\"pieces\": 6, \"dough_per_piece_g\": 60}}",
            ":1:24, field yield: The yield states both pieces and the dough mass of a piece."
                + " Keep one; the other follows from the batch mass."),
        row(
            "{\"name\": \"x\", \"yield\": {\"dough_per_piece_g\": 0}}",
            ":1:46, field yield.dough_per_piece_g: The number 0 is out of range."
                + " Use a number from 0.01 to 1000000."),
        row(
            "{\"name\": \"x\", \"yield\": {\"handling_loss_percent\": 100}}",
            ":1:50, field yield.handling_loss_percent: The number 100 is out of range."
                + " Use a number from 0 to 99.9."),
        row(
            "{\"name\": 7,\n \"goal\": \"A\",\n \"lines\": [{\"food\": \"a\"}],\n"
                + " \"yield\": {\"pieces\": 0}}",
            ":1:10, field name: There is the number 7 where a text in quotes belongs."
                + " Write a text in quotes.",
            ":2:10, field goal: " + slug("A"),
            ":3:12, field lines[0].amount: The line has no amount. Add one such as \"150 g\".",
            ":4:22, field yield.pieces: The number 0 is out of range."
                + " Use a number from 1 to 100000."));
  }

  private static String line(String members) {
    return "{\"name\": \"x\", \"lines\": [\n{" + members + "}]}";
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void saysEverythingThatIsWrongInTheOrderOfTheFile(String json, String[] problems) {
    UnreadableException refused = refused(json);
    assertThat(refused).isNotNull();
    assertThat(refused.problems())
        .extracting(Problem::toString)
        .containsExactly(Stream.of(problems).map(problem -> FILE + problem).toArray(String[]::new));
  }

  /** What a schema can say, it says as the codec does. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "1",
        "{}",
        "{\"name\": null}",
        "{\"name\": 1}",
        "{\"name\": \" \"}",
        "{\"name\": \"x\", \"description\": 1}",
        "{\"name\": \"x\", \"storage\": {\"days\": 2}}",
        "{\"name\": \"x\", \"goal\": \"A\"}",
        "{\"name\": \"x\", \"goal\": \"a--b\"}",
        "{\"name\": \"x\", \"reference\": []}",
        "{\"name\": \"x\", \"lines\": {}}",
        "{\"name\": \"x\", \"lines\": [1]}",
        "{\"name\": \"x\", \"lines\": [null]}",
        "{\"name\": \"x\", \"lines\": [{}]}",
        "{\"name\": \"x\", \"method\": \"mix\"}",
        "{\"name\": \"x\", \"method\": [null]}",
        "{\"name\": \"x\", \"bake\": [[]]}",
        "{\"name\": \"x\", \"bake\": [{\"id\": \"\"}]}",
        "{\"name\": \"x\", \"bake\": [{\"minutes\": -0.1}]}",
        "{\"name\": \"x\", \"bake\": [{\"minutes\": 2880.1}]}",
        "{\"name\": \"x\", \"bake\": [{\"minutes\": \"1\"}]}",
        "{\"name\": \"x\", \"bake\": [{\"temperature\": \"205\"}]}",
        "{\"name\": \"x\", \"bake\": [{\"temperature\": 205}]}",
        "{\"name\": \"x\", \"bake\": [{\"rack\": true}]}",
        "{\"name\": \"x\", \"yield\": []}",
        "{\"name\": \"x\", \"yield\": {\"pieces\": 0}}",
        "{\"name\": \"x\", \"yield\": {\"pieces\": 100001}}",
        "{\"name\": \"x\", \"yield\": {\"pieces\": 1.5}}",
        "{\"name\": \"x\", \"yield\": {\"dough_per_piece_g\": 0.009}}",
        "{\"name\": \"x\", \"yield\": {\"dough_per_piece_g\": 1000000.1}}",
        "{\"name\": \"x\", \"yield\": {\"handling_loss_percent\": 99.91}}",
        "{\"name\": \"x\", \"yield\": {\"handling_loss_percent\": -1}}",
        "{\"name\": \"x\", \"yield\": {\"pieces\": 1, \"dough_per_piece_g\": 60}}"
      })
  void schemaAndCodecRefuseTheSame(String json) {
    assertThat(refused(json)).isNotNull();
    assertThat(SchemaCheck.errors("formula", json)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "g",
        "5",
        "-5 g",
        "1,5 g",
        "nan g",
        "1/2",
        "½",
        "5 %",
        "1 cup 2 tbsp",
        "1..5 g",
        "1 1/2",
        "x5 g",
        "1/2/3 g"
      })
  void schemaAndCodecRefuseTheSameAmounts(String amount) {
    String json = line("\"food\": \"water\", \"amount\": \"" + amount + "\"");
    assertThat(refused(json)).isNotNull();
    assertThat(SchemaCheck.errors("formula", json)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 g",
        "5g",
        "5\u00a0g",
        "+5 g",
        "1.5e2 g",
        ".5 tsp",
        "1/2 tsp",
        "1 1/2 tsp",
        "1½ tsp",
        "½ tsp",
        "3⁄4 cup",
        "3 large",
        "1 can (400 ml)",
        "1 cup, sifted",
        "2 φέτες",
        " 5 g "
      })
  void schemaAndCodecAcceptTheSameAmounts(String amount) {
    String json = line("\"food\": \"water\", \"amount\": \"" + amount + "\"");
    assertThat(refused(json)).isNull();
    assertThat(SchemaCheck.errors("formula", json)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"205 °C", "205C", "401 °F", "-18 °C", "37.5c", "400 deg F", "190 ℃", " 5 C "})
  void schemaAndCodecAcceptTheSameTemperatures(String temperature) {
    String json = "{\"name\": \"x\", \"bake\": [{\"temperature\": \"" + temperature + "\"}]}";
    assertThat(refused(json)).isNull();
    assertThat(SchemaCheck.errors("formula", json)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"name\": \"x\"}",
        "{\"name\": \"x\", \"own\": [1, {}]}",
        "{\"name\": \"x\", \"description\": null, \"goal\": null, \"reference\": null,"
            + " \"lines\": null, \"method\": null, \"bake\": null, \"yield\": null,"
            + " \"storage\": null}",
        "{\"name\": \"x\", \"description\": \"\", \"lines\": [], \"method\": [\"\"], \"bake\":"
            + " [{}], \"yield\": {}}",
        "{\"name\": \"x\", \"yield\": {\"pieces\": 6.0, \"dough_per_piece_g\": null}}",
        "{\"name\": \"x\", \"yield\": {\"dough_per_piece_g\": 0.01, \"handling_loss_percent\":"
            + " 99.9, \"own\": 1}}",
        "{\"name\": \"x\", \"bake\": [{\"id\": null, \"minutes\": 0, \"own\": null},"
            + " {\"minutes\": 2880}]}",
        "{\"name\": \"x\", \"lines\": [{\"food\": \"a\", \"amount\": \"1 g\", \"id\": null,"
            + " \"flour\": null, \"note\": null, \"own\": 1}]}"
      })
  void schemaAndCodecAcceptTheSame(String json) {
    assertThat(refused(json)).isNull();
    assertThat(SchemaCheck.errors("formula", json)).isEmpty();
  }

  @Test
  void randomMutationsAreReadOrRefusedButNeverFailOtherwise() throws IOException {
    byte[] golden = golden();
    Random random = new Random(5);
    for (int round = 0; round < 3_000; round++) {
      byte[] mutant = golden.clone();
      for (int i = random.nextInt(3); i >= 0; i--) {
        mutant[random.nextInt(mutant.length)] = golden[random.nextInt(golden.length)];
      }
      try {
        Formula formula = FormulaCodec.read(FILE, mutant);
        assertThat(FormulaCodec.read(FILE, FormulaCodec.write(formula))).isEqualTo(formula);
      } catch (UnreadableException e) {
        assertThat(e.problems()).isNotEmpty();
      }
    }
  }
}
