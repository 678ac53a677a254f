package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import io.ovenmark.notebook.Address;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class PantryPagesTest {
  private static final String SOY = "soy-flour-defatted";
  private static final String CHANGE_SOY = "/pantry/" + SOY + "?edit=facts";
  private static final String SAVE = ".form-actions button.main";

  private static Optional<Food> food(OwnBench bench, String slug) {
    return bench.desk().notebook().latest().food(slug);
  }

  private static double protein(OwnBench bench) {
    return food(bench, SOY).orElseThrow().per100g().get(Nutrient.PROTEIN).low();
  }

  private static void says(Visit visit, String selector, String text) {
    PlaywrightAssertions.assertThat(visit.at(selector).first()).containsText(text);
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void everyPageIsAccessibleAndFitsItsWindow(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      for (String path :
          List.of(
              "/pantry", "/pantry?words=almond", "/pantry/egg-whole", "/pantry/salt",
              CHANGE_SOY, "/new-food", "/food-table")) {
        visit.to(path);
        visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        visit.assertFits();
        visit.assertAccessible();
      }
    }
  }

  @Test
  void foodsAreFoundInThePantryAndInTheBuiltInTable(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      assertThat(visit.to("/pantry").text())
          .contains("defatted soy flour", "seeded-lupin-bun and 1 variant", "contains soybeans")
          .doesNotContain("not yet in the pantry");

      visit.at("#pantry-words").fill("almond meal");
      says(visit, ".food-list .built-in", "not yet in the pantry");
      assertThat(visit.address()).isEqualTo("/pantry?words=almond+meal");

      visit.to("/pantry?sort=protein_g&down=yes");
      assertThat(visit.at(".food-list tbody .title").first().innerText())
          .isEqualTo("defatted soy flour");
      assertThat(visit.at("th[aria-sort=descending]").innerText()).startsWith("Protein");
    }
  }

  @Test
  void theListIsAnsweredByKeyboard(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/pantry");
      visit.page().keyboard().press("/");
      visit.page().keyboard().type("salt");
      says(visit, ".food-list tbody tr", "table salt");
      PlaywrightAssertions.assertThat(visit.at("#pantry-words")).isFocused();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aLabelIsCopiedAndSurvivesAReloadOnTheWay(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to("/new-food");
      visit.at("#name").fill("Lupin flour of the bench");
      visit.at("#kind").selectOption("dry");
      visit.at("#serving_g").fill("30 g");
      visit.at("#protein_g").fill("12");
      visit.at("#carbohydrate_g").fill("3,4");

      visit.page().reload();
      visit.settled();
      says(visit, ".restored", "What you typed here earlier is back");
      assertThat(visit.at("#protein_g").inputValue()).isEqualTo("12");

      visit.at("#fibre_g").fill("8");
      visit.at("#salt_g").fill("0,03");
      visit.at("text=Known: contains what is ticked").click();
      visit.at("#allergen-lupin").check();
      visit.at("#add-weight").click();
      visit.at("#weight-0-measure").fill("tbsp");
      visit.at("#weight-0-grams").fill("9 g");
      visit.at("#price-amount").fill("4,80");
      visit.at("#price-currency").fill("EUR");
      visit.at("#price-buys").fill("500 g");
      visit.at("#price-date").fill("2026-10-03");
      says(visit, "#would .food-composition", "40 g");
      visit.at(SAVE).click();

      says(visit, "h1", "Lupin flour of the bench");
      assertThat(visit.text())
          .contains("Contains lupin.", "at most 11.4 g", "9.60 a kilogram, on 3 Oct 2026")
          .contains("EU label, per serving of 30 g");
      Food food = food(bench, "lupin-flour-of-the-bench").orElseThrow();
      assertThat(food.per100g().get(Nutrient.SODIUM).low()).isEqualTo(40);
      assertThat(food.per100g().get(Nutrient.SUGARS).isUnknown()).isTrue();
      visit.to("/new-food");
      assertThat(visit.at("#name").inputValue()).isEmpty();
      assertThat(bench.faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatWouldMoveIsSeenBeforeItIsSaved(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      double before = protein(bench);
      visit.to(CHANGE_SOY);
      visit.at("#protein_g").fill("1");

      says(visit, "#would .line-moves", "Low-carbohydrate bun");
      says(visit, "#would", "Numbered revisions never move");
      assertThat(visit.at("#would .dot.from").count()).isPositive();
      assertThat(visit.at("#would .dot.to").count()).isPositive();
      assertThat(visit.at("#would .figure-table").first().innerText()).contains("protein", "→");
      visit.assertAccessible();
      visit.assertFits();
      assertThat(protein(bench)).isEqualTo(before);

      visit.at(SAVE).click();
      says(visit, "#notices", "Also changed in seeded-lupin-bun/egg-free");
      assertThat(protein(bench)).isEqualTo(1);
      Address variant = Address.parse("seeded-lupin-bun/egg-free");
      assertThat(bench.desk().notebook().latest(variant).food(SOY)).isEqualTo(food(bench, SOY));
    }
  }

  @Test
  void aFieldThatIsFaultySaysSoWhenItIsLeft(Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to(CHANGE_SOY);
      visit.at("#protein_g").fill("<0.5");
      visit.at("#fat_g").fill("1");
      says(visit, "#protein_g-problem", "bound on protein");
      visit.assertAccessible();
      visit.at(SAVE).click();
      PlaywrightAssertions.assertThat(visit.at("#protein_g")).isFocused();
      assertThat(visit.address()).isEqualTo(CHANGE_SOY);
      assertThat(bench.faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void twoWhoChangeTheSameFoodChooseAndLoseNothing(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit mine = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT);
        Visit theirs = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      mine.to(CHANGE_SOY);
      theirs.to(CHANGE_SOY);
      mine.at("#protein_g").fill("41");
      mine.at("#price-amount").fill("6");
      mine.at("#price-currency").fill("EUR");
      mine.at("#price-buys").fill("1 kg");
      theirs.at("#protein_g").fill("42");
      theirs.at("#density").fill("0.5");
      theirs.at(SAVE).click();
      says(theirs, "#notices", "Saved.");

      mine.at(SAVE).click();
      says(mine, ".both-sides", "Nothing is saved yet");
      says(mine, ".side-choice.theirs", "42");
      says(mine, ".side-choice.mine", "41");
      mine.assertAccessible();
      mine.assertFits();
      PlaywrightAssertions.assertThat(mine.at(SAVE)).isDisabled();
      assertThat(mine.at("#price-amount").inputValue()).isEqualTo("6");

      mine.at(".side-choice.mine input").check();
      mine.at(SAVE).click();
      says(mine, "#notices", "Somebody else’s changes are kept: density");
      Food food = food(bench, SOY).orElseThrow();
      assertThat(protein(bench)).isEqualTo(41);
      assertThat(food.densityGramsPerMillilitre()).hasValue(0.5);
      assertThat(food.price()).isPresent();
      assertThat(bench.faults()).isEmpty();
    }
  }

  @Test
  void whatAnotherWindowLeftBehindCanBeTakenUp(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(CHANGE_SOY);
      visit.at("#name").fill("Soy of the bench");
      says(visit, "#would", "Changed: name");
      visit.page().evaluate("sessionStorage.clear()");

      visit.to(CHANGE_SOY);
      assertThat(visit.at("#name").inputValue()).isEqualTo("defatted soy flour");
      visit.at("text=Go on with it").click();
      assertThat(visit.at("#name").inputValue()).isEqualTo("Soy of the bench");
      visit.at(".restored button").click();
      assertThat(visit.at("#name").inputValue()).isEqualTo("defatted soy flour");
      visit.page().reload();
      assertThat(visit.settled().at(".restored").count()).isZero();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aTableIsSeenRowByRowBeforeItIsAdded(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      visit.to("/food-table");
      String table =
          "name;kind;protein_g;fibre_g;allergens;colour\n"
              + "Lupin flour, coarse;dry;37,2;28;lupin;yellow\n"
              + ";dry;1;1;;\n"
              + "<img src=x onerror=alert(1)>;dry;much;2;none;\n";
      byte[] bytes = table.getBytes(StandardCharsets.UTF_8);
      visit.at("#table-file").setInputFiles(new FilePayload("mill.csv", "text/csv", bytes));

      says(visit, ".say", "2 foods, 2 of them new, 2 problems");
      says(visit, ".row-problems", "mill.csv:3:1, field name");
      says(visit, ".row-problems", "Protein needs a number");
      says(visit, "main", "Columns left out: colour");
      visit.assertAccessible();
      visit.assertFits();
      assertThat(food(bench, "lupin-flour-coarse")).isEmpty();

      visit.at("tbody input[type=checkbox]").last().uncheck();
      visit.at(SAVE).click();
      says(visit, "#notices", "1 food added");
      assertThat(food(bench, "lupin-flour-coarse")).isPresent();
      assertThat(bench.desk().notebook().latest().foods()).noneMatch(slug -> slug.contains("img"));
      assertThat(bench.faults()).isEmpty();
    }
  }

  @Test
  void aFileThatIsNoTableIsRefusedInOneSentence(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/food-table");
      visit.at("#table-file")
          .setInputFiles(new FilePayload("a.csv", "text/csv", "hello".getBytes()));
      says(visit, ".caution", "no column \"name\"");
      visit.at("#table-file")
          .setInputFiles(new FilePayload("a.zip", "application/zip", "hello".getBytes()));
      visit.at("#zip-words").fill("lupin");
      visit.at("text=Look").click();
      says(visit, ".caution", "The file is not a zip file");
      visit.expectRefusal();
    }
    assertThat(RunningBench.FULL.faults()).isEmpty();
  }
}
