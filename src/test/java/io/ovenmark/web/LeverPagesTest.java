package io.ovenmark.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.KeepDrafts;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** On the demo, whose bun has prices of all but three foods. */
@ExtendWith(Chromium.class)
class LeverPagesTest {
  private static final String LEVERS = "/levers/seeded-lupin-bun@13";
  private static final String SCALE = "/scale/seeded-lupin-bun@13";
  private static final String DRY = LEVERS + "?want=liquid+ratio+0.9";
  private static OwnBench bench;

  @BeforeAll
  static void begin() {
    bench = OwnBench.with(folder -> DemoNotebook.create(folder, (done, total) -> {}));
  }

  @AfterAll
  static void end() {
    assertThat(bench.faults()).isEmpty();
    bench.close();
  }

  private static void says(Visit visit, String selector, String text) {
    assertThat(visit.at(selector).first()).containsText(text);
  }

  private static DraftViews.DraftView draft(Visit visit) {
    visit.page().waitForURL("**/drafts/*");
    visit.settled();
    String id = visit.address().substring("/drafts/".length());
    return new KeepDrafts(bench.desk()).show(id);
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void everyPageIsAccessibleAndFitsItsWindow(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      for (String path :
          List.of(
              LEVERS,
              DRY + "&keep=egg-whole&at_most=lupin-flour%3D130+g",
              LEVERS + "?want=liquid+ratio+0.8&within=10+%25",
              SCALE,
              SCALE + "?tin=loaf:25cmx11cmx7cm&density=1.1&have=psyllium-husk%3D400+g",
              "/worksheet/seeded-lupin-bun@13")) {
        visit.to(path);
        visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        if (visit.at(".line-name button").count() > 0) {
          visit.at(".line-name button").first().click();
          visit.at(".lever-detail").waitFor();
        }
        visit.assertFits();
        visit.assertAccessible();
      }
    }
  }

  /** By hand: dry 268.7 g, liquid 284.9 g; at 0.9 liquid is 241.8 g, so water 136.9 g. */
  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aWishIsAnsweredWhileItIsTypedAndAnAnswerBecomesADraft(int width, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to("/formulas/seeded-lupin-bun");
      visit.at(".next-change a:has-text('Levers')").click();
      visit.page().waitForURL("**/levers/seeded-lupin-bun@13");
      visit.settled();
      visit.at("#want-0").pressSequentially("liquid ratio 0.9");
      says(visit, ".lever-summary", "10 changes of one line do it; water");
      assertThat(visit.address()).isEqualTo("/levers/seeded-lupin-bun@13?want=liquid+ratio+0.9");
      assertThat(visit.at(".lever-table > tbody")).hasCount(6);
      says(visit, ".lever-table > tbody", "136.9\u00a0g");
      says(visit, ".lever-ways", "Drying by less water takes");
      says(visit, ".lever-ways", "drying by more lupin flour adds");
      says(visit, ".unpriced", "double-acting baking powder; cider vinegar; table salt");
      visit.at("button:has-text('which disturb more')").click();
      assertThat(visit.at(".lever-table > tbody")).hasCount(10);
      says(visit, ".lever-together", "All lines together");
      visit.at(".lever-table button:has-text('Open as a draft')").first().click();

      DraftViews.DraftView draft = draft(visit.expectRefusal());
      assertThat(draft.base().address()).isEqualTo("seeded-lupin-bun@13");
      assertThat(draft.note()).isEqualTo("Liquid ratio 1.06 → 0.9: water 180 g → 136.9 g");
      assertThat(draft.document().text()).contains("\"136.9 g\"");
      visit.page().goBack();
      visit.page().waitForURL("**want=liquid+ratio+0.9");
      visit.settled();
      says(visit, ".lever-summary", "10 changes of one line do it; water");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatCannotBeDoneIsExplainedAndTheNearestIsOneClickAway(int width, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to(LEVERS + "?want=liquid+ratio+0.8");
      visit.at(".lever-lines summary").click();
      visit.at("input[aria-label='water at least, g']").fill("175");
      visit.at("input[aria-label='lupin flour stays']").check();
      visit.at("#within").fill("10");
      says(visit, ".lever-summary", "It cannot be done.");
      assertThat(visit.at(".lever-because")).containsText("Water at least");
      assertThat(visit.at(".lever-because")).containsText("Lupin flour stays at 120\u00a0g");
      assertThat(visit.at(".lever-because")).containsText("Liquid ratio 0.8");
      visit.at(".lever-nearest button").click();
      says(visit, ".lever-summary", "do");
      assertThat(visit.at("#want-0").inputValue()).matches("liquid ratio 0\\.\\d+|liquid ratio 1");
      assertThat(visit.at(".lever-impossible")).hasCount(0);
      assertThat(visit.at(".lever-together")).containsText("Open as a draft");
      assertThat(visit.address())
          .contains("at_least=water%3D175+g", "keep=lupin-flour", "within=10");
    }
  }

  @Test
  void figuresAreOfferedAndAWrongWishIsToldAtItsField(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to(LEVERS);
      visit.at(".lever-offers button:has-text('net carbohydrate a piece 3.87')").click();
      visit.page().keyboard().type("3");
      says(visit, ".lever-standing", "3\u00a0g net carbohydrate a piece");
      visit.at("button:has-text('Add another wish')").click();
      visit.at("#want-1").fill("taste 7");
      assertThat(visit.at("#want-1-problem")).containsText("\"taste\" is not a figure");
      assertThat(visit.at("#want-1-problem")).containsText("liquid ratio");
      assertThat(visit.at("#want-0-problem")).isHidden();
      visit.expectRefusal();
      visit.at("#want-1").fill("at least 14 g protein a piece");
      assertThat(visit.at("#want-1-problem")).isHidden();
      assertThat(visit.at(".lever-standing li")).hasCount(2);
      visit.at("button[aria-label='Leave out wish 2']").click();
      assertThat(visit.at("#want-1")).hasCount(0);
      assertThat(visit.address()).endsWith("?want=net+carbohydrate+a+piece+3+g");
      visit.expectRefusal();
    }
  }

  /** By hand: 25 × 11 × 7 cm hold 1925 ml, of which 60 % of 1.1 g/ml are 1270.5 g of dough. */
  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aTinIsFilledPrintedAndOpenedAsADraft(int width, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to(SCALE);
      visit.at("#scale-size").selectOption("tin");
      visit.at("#tin-length").fill("25");
      visit.at("#tin-width").fill("11");
      visit.at("#tin-depth").fill("7");
      assertThat(visit.at(".scale-failure")).containsText("is not known");
      visit.expectRefusal();
      visit.at("#scale-density").fill("1.1");
      says(visit, ".lever-result .say", "Scaled to 1 tin of 1271\u00a0g dough");
      visit.at("#scale-readable").selectOption("5 g");
      says(visit, ".scale-rounding h2", "5\u00a0g and spoons");
      says(visit, ".scale-rounding", "Liquid ratio");
      says(visit, ".scale-facts", "1925\u00a0ml");
      says(visit, ".cost", "EUR");
      visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(visit.at(".scale-form")).isHidden();
      assertThat(visit.at(".scaled-lines").first()).isVisible();
      visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
      visit.at("button:has-text('Open as a draft')").click();

      DraftViews.DraftView draft = draft(visit.expectRefusal());
      assertThat(draft.note()).startsWith("Scaled to 1 tin of 1271 g dough");
      assertThat(draft.document().text()).contains("\"275 g\"");
    }
  }

  @Test
  void theScarcestIngredientDecidesHowMany(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE)) {
      visit.to(SCALE);
      visit.at("select[aria-label='Ingredient at hand 1']").selectOption("psyllium-husk");
      visit.at("input[aria-label='How much is at hand 1, g']").fill("40");
      says(visit, ".lever-result .say", "Scaled to 8 pieces");
      visit.at("button:has-text('Add another')").click();
      visit.at("select[aria-label='Ingredient at hand 2']").selectOption("lupin-flour");
      visit.at("input[aria-label='How much is at hand 2, g']").fill("100");
      says(visit, ".lever-result .say", "Scaled to 5 pieces");
      assertThat(visit.at(".scale-facts li:has-text('the scarcest')")).containsText("lupin flour");
      visit.at("#scale-pieces").fill("12");
      says(visit, ".lever-result .say", "Scaled to 12 pieces");
      assertThat(visit.address()).endsWith("?pieces=12");
    }
  }

  @Test
  void worksheetAndComparisonSayWhatItCosts(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/worksheet/seeded-lupin-bun@13");
      assertThat(visit.at(".cost")).containsText("at least 0.53\u00a0EUR");
      assertThat(visit.at(".cost")).containsText("not known of double-acting baking powder");
      visit.to("/formulas/seeded-lupin-bun?a=11&b=13");
      assertThat(visit.at(".cost tbody tr")).hasCount(2);
      assertThat(visit.at(".cost")).containsText("EUR");
    }
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/worksheet/seeded-lupin-bun");
      assertThat(visit.at(".cost")).containsText("No price is known yet");
      for (String page : List.of("/levers/no-lines", "/scale/no-lines")) {
        visit.to(page);
        assertThat(visit.at(".lever-result")).containsText("The formula has no lines yet");
      }
    }
  }
}
