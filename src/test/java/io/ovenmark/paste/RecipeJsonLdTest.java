package io.ovenmark.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.UnreadableException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Names of types and properties, and what values each may have, are checked against the published
 * schema.org vocabulary (its file {@code schema.ttl}: recipeIngredient is Text, ItemList or
 * PropertyValue; recipeInstructions is Text, ItemList or CreativeWork; recipeYield is Text or
 * QuantitativeValue; performTime is a Duration of ISO 8601). From memory: cookTime,
 * itemListElement and the superseded ingredients.
 */
class RecipeJsonLdTest {
  private static final FoodMatcher FOODS = FoodMatcher.of(List.of());

  private static final String BUN =
      """
      {"@context": "https://schema.org", "@type": "Recipe", "name": "Seeded lupin bun",
       "recipeYield": "6 buns", "cookTime": "PT24M", "performTime": "PT1H30M",
       "recipeIngredient": ["120 g lupin flour", "180 g water", "2 large eggs"],
       "recipeInstructions": [
         {"@type": "HowToStep", "text": "Mix."},
         {"@type": "HowToStep", "text": "Bake."}]}
      """;

  private static RecipeJsonLd read(String text) {
    return RecipeJsonLd.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static RecipeJsonLd with(String members) {
    return read("{\"@type\": \"Recipe\", " + members + "}");
  }

  @Test
  void aBareObjectIsRead() {
    RecipeJsonLd recipe = read(BUN);
    assertThat(recipe.name()).contains("Seeded lupin bun");
    assertThat(recipe.ingredients())
        .containsExactly("120 g lupin flour", "180 g water", "2 large eggs");
    assertThat(recipe.instructions()).containsExactly("Mix.", "Bake.");
    assertThat(recipe.yield()).contains("6 buns");
    assertThat(recipe.cookMinutes()).hasValue(24);
    assertThat(recipe.performMinutes()).hasValue(90);
    assertThat(recipe.remarks()).isEmpty();
  }

  @Test
  void itBecomesADraft() {
    PastedFormula pasted = PastedFormula.of(read(BUN), FOODS);
    assertThat(pasted.isCertain()).isTrue();
    assertThat(pasted.draft().name()).isEqualTo("Seeded lupin bun");
    assertThat(pasted.draft().lines()).hasSize(3);
    assertThat(pasted.draft().yield().pieces()).contains(6);
    assertThat(pasted.draft().method()).containsExactly("Mix.", "Bake.");
    assertThat(pasted.draft().bake().get(0).minutes()).hasValue(24);
    assertThat(pasted.remarks())
        .containsExactly("The cook time is taken as the time in the oven; check it.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[%s]",
        "{\"@context\": \"https://schema.org\", \"@graph\": [{\"@type\": \"WebPage\"}, %s]}",
        "[{\"@type\": \"Person\", \"name\": \"Ines\"}, {\"@graph\": [%s]}]",
        "{\"@type\": \"WebPage\", \"mainEntity\": %s}",
        "<html><script type=\"application/ld+json\">%s</script></html>",
        "<SCRIPT data-x='1' TYPE='application/ld+json'>\n%s\n</SCRIPT>",
        "<script>if (a < b) {}</script><script type=application/ld+json>%s</script>",
        "<script type=\"application/ld+json\">{broken</script>"
            + "<script type=\"application/ld+json\">%s</script>",
        "<script type=\"application/ld+json\">%s",
        "\n \t%s\n",
        "\uFEFF%s",
        "\uFEFF<script type=\"application/ld+json\">%s</script>"
      })
  void itIsFoundWhereverItStands(String around) {
    String text = around.replace("%s", BUN);
    assertThat(RecipeJsonLd.isMeant(text)).isTrue();
    assertThat(read(text)).isEqualTo(read(BUN));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"Recipe\"", "[\"Recipe\"]", "[\"NewsArticle\", \"Recipe\"]", "\"https://schema.org/Recipe\"",
        "\"http://schema.org/Recipe\"", "\"schema:Recipe\""
      })
  void theTypeMayBeWrittenInSeveralWays(String type) {
    assertThat(read("{\"@type\": " + type + ", \"name\": \"Bun\"}").name()).contains("Bun");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"Mix.\\nBake.\"",
        "\"1. Mix.\\n2. Bake.\"",
        "\"<p>Mix.</p><p>Bake.</p>\"",
        "\"<ol><li>Mix.</li><li>Bake.</li></ol>\"",
        "[\"Mix.\", \"Bake.\"]",
        "[[\"Mix.\"], \"Bake.\"]",
        "[{\"@type\": \"HowToStep\", \"text\": \"Mix.\"}, {\"@type\": \"HowToStep\", \"name\": \"Bake.\"}]",
        "{\"@type\": \"ItemList\", \"itemListElement\": [\"Mix.\", {\"text\": \"Bake.\"}]}",
        "[{\"@type\": \"ListItem\", \"item\": {\"@type\": \"HowToStep\", \"text\": \"Mix.\"}}, \"Bake.\"]",
        "[{\"@type\": \"HowToStep\", \"itemListElement\":"
            + " [{\"@type\": \"HowToDirection\", \"text\": \"Mix.\"}]}, \"Bake.\", null, 3]"
      })
  void instructionsComeInManyForms(String value) {
    assertThat(with("\"recipeInstructions\": " + value).instructions())
        .containsExactly("Mix.", "Bake.");
  }

  @Test
  void aSectionsNameBeginsItsFirstStep() {
    RecipeJsonLd recipe =
        with(
            """
            "recipeInstructions": [
              {"@type": "HowToSection", "name": "Dough", "itemListElement": [
                {"@type": "HowToStep", "text": "Mix."}, {"@type": "HowToStep", "text": "Rest."}]},
              {"@type": "HowToSection", "name": "Empty", "itemListElement": []},
              {"@type": "HowToStep", "text": "Bake."}]
            """);
    assertThat(recipe.instructions()).containsExactly("Dough: Mix.", "Rest.", "Bake.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"recipeIngredient\": [\"120 g water\", \"2 g salt\"]",
        "\"recipeIngredient\": \"120 g water\\n2 g salt\"",
        "\"ingredients\": [\"120 g water\", \"2 g salt\"]",
        "\"recipeIngredient\": [\"120&nbsp;g <b>water</b>\", \" 2 g salt \"]",
        "\"recipeIngredient\": {\"@type\": \"ItemList\", \"itemListElement\":"
            + " [{\"@type\": \"ListItem\", \"item\": \"120 g water\"}, \"2 g salt\"]}",
        "\"recipeIngredient\": [{\"@type\": \"PropertyValue\", \"name\": \"water\", \"value\": 120,"
            + " \"unitText\": \"g\"}, {\"text\": \"2 g salt\"}, null]"
      })
  void ingredientsComeInSeveralForms(String member) {
    assertThat(with(member).ingredients()).containsExactly("120 g water", "2 g salt");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "6 buns"                               | 6 buns | 6
          ["6", "6 buns"]                        | 6 buns | 6
          6                                      | 6      |
          "6"                                    | 6      |
          [6]                                    | 6      |
          "6 servings"                           | 6 servings |
          "Makes 6"                              | Makes 6 | 6
          {"value": 6, "unitText": "buns"}       | 6 buns | 6
          {"@type": "QuantitativeValue", "value": "6"} | 6 |
          """)
  void aYieldIsPiecesOnlyWhereItSaysSo(String value, String text, Integer pieces) {
    RecipeJsonLd recipe = with("\"recipeYield\": " + value);
    assertThat(recipe.yield()).contains(text);
    assertThat(PastedFormula.of(recipe, FOODS).draft().yield().pieces().orElse(null))
        .isEqualTo(pieces);
  }

  @Test
  void aDurationThatCannotBeReadIsRemarked() {
    RecipeJsonLd recipe = with("\"cookTime\": \"24 minutes\", \"performTime\": \"P1M\"");
    assertThat(recipe.cookMinutes()).isEmpty();
    assertThat(recipe.remarks())
        .anySatisfy(remark -> assertThat(remark).startsWith("cookTime: The duration \"24 minutes\""))
        .anySatisfy(remark -> assertThat(remark).startsWith("performTime: The duration \"P1M\""));
    assertThat(PastedFormula.of(with("\"cookTime\": \"P2W\""), FOODS).draft().bake()).isEmpty();
  }

  @Test
  void endlessIngredientsAreKeptAndDoubted() {
    String many = "\"3 g salt\", ".repeat(30_000);
    PastedFormula pasted =
        PastedFormula.of(with("\"recipeIngredient\": [" + many + "\"last\"]"), FOODS);
    assertThat(pasted.draft().lines()).hasSize(500);
    assertThat(pasted.doubtful()).hasSize(1);
    assertThat(pasted.doubtful().get(0).text()).endsWith("\nlast");
  }

  @Test
  void ofSeveralRecipesTheFirstIsRead() {
    RecipeJsonLd recipe = read("[" + BUN + ", {\"@type\": \"Recipe\", \"name\": \"Other\"}]");
    assertThat(recipe.name()).contains("Seeded lupin bun");
    assertThat(recipe.remarks()).containsExactly("There are 2 recipes in it; the first is read.");
  }

  @Test
  void entitiesAndTagsInNamesAreText() {
    RecipeJsonLd recipe = with("\"name\": \"Seeds &amp; lupin &#189; <script>x</script>&bogus;\"");
    assertThat(recipe.name()).contains("Seeds & lupin ½ x&bogus;");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {}                                                       | There is no schema.org recipe in it.
          []                                                       | There is no schema.org recipe in it.
          {"name": "Bun", "lines": []}                             | There is no schema.org recipe in it.
          <html><p>Bun</p></html>                                  | There is no schema.org recipe in it.
          {"@type": "Recipe", "name":                              | The file ends before it is complete.
          {"@type": "Recipe", "@type": "Thing"}                    | stands twice
          <script type="application/ld+json">{"a": </script>       | The file ends before it is complete.
          """)
  void whatHoldsNoRecipeIsRefusedWithAReason(String text, String sentence) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            e -> {
              assertThat(e.problems().get(0).message()).contains(sentence);
              assertThat(e.problems().get(0).hint()).isNotBlank();
            });
  }

  @Test
  void aFaultInAPageIsToldWithItsLineInThePage() {
    assertThatThrownBy(
            () ->
                read("<html>\n<p>\n<script type=\"application/ld+json\">\n{\n\"a\": b}\n</script>"))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            e -> assertThat(e.problems().get(0).at().line()).isEqualTo(5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "120 g water", "[ ] 120 g water", "[x] 120 g water", "", "<3 this bun", "- 2 eggs", "[Dough]"
      })
  void linesOfTextAreNotTakenForJson(String text) {
    assertThat(RecipeJsonLd.isMeant(text)).isFalse();
  }
}
