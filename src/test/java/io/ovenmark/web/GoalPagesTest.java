package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.ShowGoal;
import io.ovenmark.notebook.Address;
import io.ovenmark.worksheet.EnergyRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class GoalPagesTest {
  private static final String CHANGE = "/goals/low-carb-bun?edit=yes";
  private static final String SAVE = ".form-actions button.main";

  private static void says(Visit visit, String selector, String text) {
    PlaywrightAssertions.assertThat(visit.at(selector).first()).containsText(text);
  }

  private static List<String> rules(OwnBench bench, String goal) {
    return new ShowGoal(bench.desk()).call(goal).rules();
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void everyPageIsAccessibleAndFitsItsWindow(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      for (String path :
          List.of("/goals", "/goals/low-carb-bun", CHANGE, "/new-goal", "/notebook")) {
        visit.to(path);
        visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        visit.assertFits();
        visit.assertAccessible();
      }
    }
  }

  @Test
  void anEmptyNotebookSaysWhatFoodsAndGoalsAre(Browser browser) {
    try (Visit visit = Visit.open(RunningBench.EMPTY, browser, Visit.PHONE, ColorScheme.LIGHT)) {
      assertThat(visit.to("/goals").text()).contains("There is no goal in this notebook yet");
      visit.assertAccessible();
      assertThat(visit.to("/pantry").text()).contains("A food comes here by itself");
      visit.assertAccessible();
    }
  }

  @Test
  void aGoalSaysHowEveryFormulaStands(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/goals/low-carb-bun");
      assertThat(visit.text().replace('\u00a0', ' '))
          .contains("At most 4 g net carbohydrate a piece", "Seeded lupin bun", "missed")
          .contains("Net carbohydrate has no legal definition");
      visit.at(".others summary").click();
      says(visit, ".others", "Wheat bun");
      says(visit, ".others", "egg-free");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aNewGoalShowsWhoWouldMeetItAndSurvivesAReload(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      visit.to("/new-goal");
      visit.at("#name").fill("High protein");
      visit.at("#add-limit").click();
      visit.at("#limit-0-figure").selectOption("protein_g");
      visit.at("#limit-0-manner").selectOption("between");
      visit.at("#limit-0-at_least").fill("10");
      visit.at("#limit-0-at_most").fill("9");
      visit.at("#note").click();
      says(visit, "#limit-0-problem", "more than the greatest");
      visit.at("#limit-0-at_most").fill("60,5");
      visit.at("#limit-0-per").selectOption("per_100_g_dough");
      visit.at("#add-limit").click();
      visit.at("#limit-1-figure").selectOption("liquid_ratio");
      visit.at("#limit-1-at_most").fill("2");
      visit.at("#without-tree-nuts").check();
      visit.at("#without-food").fill("granulated");
      visit.at("#without-food-option-0").waitFor();
      visit.page().keyboard().press("Enter");
      says(visit, ".without-foods", "sugar-granulated");
      visit.at("text=By a rule of its own").click();
      visit.at("#subtract-polyols").selectOption("0.5");
      says(visit, "#would", "would meet it");
      visit.assertAccessible();
      visit.assertFits();

      visit.page().reload();
      visit.settled();
      says(visit, ".restored", "What you typed here earlier is back");
      visit.at(SAVE).click();

      says(visit, "h1", "High protein");
      assertThat(rules(bench, "high-protein"))
          .containsExactly(
              "at least 10 g and at most 60.5 g protein per 100 g dough",
              "liquid ratio at most 2", "no tree nuts", "no sugar-granulated");
      assertThat(new ShowGoal(bench.desk()).call("high-protein").netCarbohydrateRule())
          .isEqualTo("carbohydrate − fibre − 50 % of polyols − allulose");
      assertThat(bench.faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aChangedGoalShowsWhoWouldStandOtherwiseAndTwoPeopleChoose(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit mine = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT);
        Visit theirs = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      mine.to(CHANGE);
      theirs.to(CHANGE);
      mine.at("#limit-0-at_most").fill("1");
      mine.at("#note").fill("For the guests");
      says(mine, "#would .line-moves", "newly missed");
      theirs.at("#limit-0-at_most").fill("6");
      theirs.at(SAVE).click();
      says(theirs, "#notices", "Saved.");

      mine.at(SAVE).click();
      says(mine, ".side-choice.theirs", "at most 6 g net carbohydrate a piece");
      says(mine, ".side-choice.mine", "at most 1 g net carbohydrate a piece");
      mine.assertAccessible();
      mine.assertFits();
      assertThat(rules(bench, "low-carb-bun")).contains("at most 6 g net carbohydrate a piece");

      mine.at(".side-choice.theirs input").check();
      mine.at(SAVE).click();
      says(mine, "#notices", "Saved.");
      assertThat(rules(bench, "low-carb-bun")).contains("at most 6 g net carbohydrate a piece");
      assertThat(new ShowGoal(bench.desk()).call("low-carb-bun").note())
          .isEqualTo("For the guests");
      assertThat(bench.faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void settingsOfTheNotebookShowWhatTheyWouldMove(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      visit.to("/notebook");
      visit.at("#energy_rule").selectOption("EU factors");
      visit.at("#title").fill("Saltmarsh bench, summer");
      says(visit, "#would .line-moves", "energy");
      visit.assertAccessible();
      visit.assertFits();
      visit.at(SAVE).click();

      says(visit, "#notices", "Also changed in seeded-lupin-bun/egg-free");
      says(visit, "h1", "Saltmarsh bench, summer");
      says(visit, "#header .notebook", "Saltmarsh bench, summer");
      for (String line : List.of("wheat-bun", "seeded-lupin-bun/egg-free")) {
        assertThat(
                bench.desk().notebook().latest(Address.parse(line)).settings().policy().energy())
            .isEqualTo(EnergyRule.EU_FACTORS);
      }
      assertThat(bench.faults()).isEmpty();
    }
  }
}
