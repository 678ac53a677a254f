package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.KeepDrafts;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class ReplacePagesTest {
  private static final String EGG = "/replace/seeded-lupin-bun?line=egg-whole";

  private static void says(Visit visit, String selector, String text) {
    PlaywrightAssertions.assertThat(visit.at(selector).first()).containsText(text);
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void everyPageIsAccessibleAndFitsItsWindow(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      for (String path :
          List.of(
              "/replace/seeded-lupin-bun",
              EGG,
              EGG + "&with=milk-whole",
              EGG + "&keep=protein&with=water",
              "/replace/seeded-lupin-bun/egg-free?line=soy-flour-defatted&keep=protein",
              "/rebuild/seeded-lupin-bun",
              "/rebuild/sesame-crispbread?reference=one-line")) {
        visit.to(path);
        visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        visit.assertFits();
        visit.assertAccessible();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aFoodIsFoundByKeyboardAndBecomesADraft(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      visit.to("/formulas/seeded-lupin-bun");
      visit.at(".next-change a:has-text('Replace a food')").click();
      says(visit, "h1", "Replace a food");
      visit.at("#replace-line").selectOption("egg-whole");
      says(visit, "h1", "Replace whole egg");
      says(visit, ".replace-page .say", "can stand in for whole egg and keep its 76.2");
      says(visit, ".replace-page > .caution", "Egg sets the crumb");
      says(visit, ".replace-aside", "They hold nothing of what is to be kept");

      visit.at("#replace-words").fill("whole milk");
      says(visit, ".replace-list", "whole milk");
      assertThat(visit.at(".replace-entry").count()).isLessThan(4);
      visit.at(".replace-entry a:text-is('whole milk')").focus();
      visit.page().keyboard().press("Enter");
      says(visit, ".replace-weigh-large", "86.4");
      says(visit, ".replace-one", "100 g × 76.15 ÷ 88.13 = 86.41 g");
      assertThat(visit.address()).contains("with=milk-whole");
      says(visit, ".replace-one", "Dough moisture");

      visit.at(".replace-one button.main").click();
      visit.page().waitForURL("**/drafts/*");
      visit.settled();
      DraftViews.DraftEntry draft =
          new KeepDrafts(bench.desk()).all().drafts().get(0);
      assertThat(new KeepDrafts(bench.desk()).show(draft.id()).note())
          .isEqualTo("Whole egg 2 large → whole milk 86.4 g, same water");
      assertThat(visit.text()).contains("milk");
      assertThat(bench.faults()).isEmpty();
    }
  }

  @Test
  void whatIsKeptAndTheGoalAreChosenAndTheListIsNarrowed(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(EGG);
      visit.at("#replace-goal").selectOption("egg-free-bun");
      says(visit, ".replace-now", "no egg");
      says(visit, ".replace-aside", "Kept out by the goal");
      visit.at("#replace-keep").selectOption("protein");
      says(visit, ".replace-now", "12.6 g protein");
      assertThat(visit.address()).contains("keep=protein").contains("goal=egg-free-bun");
      visit.at("#replace-own").check();
      assertThat(visit.at(".replace-entry .quiet").count()).isZero();
      visit.at("#replace-words").fill("nothing like this");
      says(visit, ".replace-page", "No food in the list fits that.");
    }
  }

  @Test
  void aLineThatCannotBeKeptSaysWhatToDo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/replace/seeded-lupin-bun?line=water&keep=fat").expectRefusal();
      assertThat(visit.text()).contains("There is no fat in water to keep.", "Keep water instead");
    }
  }

  @Test
  void aRebuildStandsBesideItsReferenceLineByLine(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/rebuild/seeded-lupin-bun");
      says(visit, "h1", "Seeded lupin bun beside Wheat bun");
      says(visit, ".rebuild-lines", "bread flour");
      says(visit, ".rebuild-lines", "defatted soy flour");
      assertThat(visit.at(".rebuild-bar rect.from").count()).isPositive();
      visit.at("#rebuild-shown").selectOption("protein_g");
      says(visit, ".rebuild-lines thead", "Protein in a piece");
      says(visit, ".rebuild-page", "Gluten holds the gas");

      visit.to("/rebuild/wheat-bun").expectRefusal();
      says(visit, ".rebuild-page", "names no conventional formula");
      visit.at("#rebuild-reference").selectOption("seeded-lupin-bun");
      says(visit, "h1", "Wheat bun beside Seeded lupin bun");
    }
  }
}
