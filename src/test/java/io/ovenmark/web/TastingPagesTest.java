package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.desk.TastingViews;
import io.ovenmark.notebook.Address;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class TastingPagesTest {
  private static final String BUN = "seeded-lupin-bun";

  private static TastingViews.TastingSheet only(OwnBench bench) {
    ShowTasting show = new ShowTasting(bench.desk());
    return show.call(BUN, show.list(Address.parse(BUN)).tastings().get(0).id());
  }

  private static void says(Visit visit, String selector, String text) {
    PlaywrightAssertions.assertThat(visit.at(selector).first()).containsText(text);
  }

  private static void looksRight(Visit visit) {
    visit.assertFits();
    visit.assertAccessible();
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void aTriangleIsSetUpSentFromASheetCorrectedAndPrinted(
      int width, ColorScheme colours, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/tastings/" + BUN);
      says(visit, ".tastings", "Nothing was tasted blind yet.");
      looksRight(visit);
      visit.at("#tasters").fill("6");
      visit.at(".tasting-form button.main").click();
      says(visit, ".tasting-results", "0 of 6 sheets answered");
      TastingViews.TastingSheet tasting = only(bench);
      String page = "/tasting/" + BUN + "/" + tasting.id();
      says(visit, ".tasting .caution", "Ask each taster about allergies");
      assertThat(visit.text()).doesNotContain("sample 1");

      visit.to(page + "/sheet/2");
      says(visit, ".tasting-sheet .caution", "The samples contain");
      assertThat(visit.text()).doesNotContain("@1", "@2", "Softer dough");
      looksRight(visit);
      visit.at(".tasting-picks input").nth(1).focus();
      visit.page().keyboard().press("Space");
      visit.page().keyboard().press("Tab");
      visit.page().keyboard().type("sure");
      visit.to(page + "/sheet/2");
      PlaywrightAssertions.assertThat(visit.at("#note-2")).hasValue("sure");
      visit.at(".tasting-sheet button.main").click();
      says(visit, ".tasting-sheet", "Thank you.");
      assertThat(only(bench).sheets().get(1).answer().choice())
          .isEqualTo(tasting.sheets().get(1).codes().get(1));

      visit.to(page);
      says(visit, ".tasting-results", "1 of 6 sheets answered");
      visit.at(".tasting-key button").click();
      says(visit, ".tasting-key table", "sample 1");
      visit.at(".tasting-sheets button").nth(1).click();
      looksRight(visit);
      visit.at("dialog .tasting-picks input").nth(2).check();
      visit.at("dialog button.main").click();
      says(
          visit,
          ".tasting-sheets tr:nth-child(2) td:nth-child(3)",
          tasting.sheets().get(1).codes().get(2));
      looksRight(visit);

      visit.to(page + "/sheets");
      PlaywrightAssertions.assertThat(visit.at(".tasting-page")).hasCount(6);
      looksRight(visit);
    }
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void aJustAboutRightTastingIsAnsweredBySampleAndShowsItsPenalties(
      int width, ColorScheme colours, Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/tastings/" + BUN);
      visit.at("#kind").selectOption("just-about-right");
      visit.at("#attributes").fill("sweet");
      visit.at("#tasters").fill("none");
      visit.at(".tasting-form button.main").click();
      says(visit, "#tasters-problem", "A tasting cannot have 0 tasters.");
      visit.expectRefusal();
      visit.at("#tasters").fill("1");
      visit.at(".tasting-form button.main").click();
      says(visit, ".tasting-results", "0 of 1 sheets answered");
      visit.at(".tasting-sheets button").click();
      for (String code : only(bench).sheets().get(0).codes()) {
        visit.at("input[name='liking-1-" + code + "'][value='7']").check();
        visit.at("input[name='sweet-1-" + code + "'][value='-1']").check();
      }
      visit.at("dialog button.main").click();
      says(visit, ".tasting-results", "1 of 1 sheets answered");
      says(visit, ".tasting-results", "sweet: too little for 1 taster (100 %)");
      visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
      looksRight(visit);
    }
  }
}
