package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be done with revisions in the browser, also while somebody else writes. */
@ExtendWith(Chromium.class)
class ActsPagesTest {
  private static final Address BUN = Address.latest("seeded-lupin-bun", Optional.empty());
  private static final Address EGG_FREE =
      Address.latest("seeded-lupin-bun", Optional.of("egg-free"));

  private OwnBench bench;

  @BeforeEach
  void open() {
    bench = OwnBench.with(BenchNotebook::create);
  }

  @AfterEach
  void close() {
    assertThat(bench.faults()).isEmpty();
    bench.close();
  }

  private Revision newest(Address line) {
    return bench.desk().notebook().newest(line);
  }

  /** Somebody else's revision. */
  private void revise(Address line, String note, String... changes) {
    Notebook notebook = bench.desk().notebook();
    FormulaEdit edit = new FormulaEdit(notebook.formula(notebook.newest(line)));
    for (String change : changes) {
      edit = edit.set(change);
    }
    new FormulaWriter(notebook)
        .revise(notebook.newest(line), edit.formula(), note, RunningBench.by());
  }

  private String water(Address line) {
    return bench
        .desk()
        .notebook()
        .formula(newest(line))
        .line("water")
        .orElseThrow()
        .amount()
        .toString();
  }

  private static Locator button(Visit visit, String name) {
    return visit
        .page()
        .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  private static Visit act(Visit visit, String page, String name) {
    visit.to(page).at(".acts summary").click();
    button(visit, name).click();
    visit.at("dialog[open]").waitFor();
    return visit;
  }

  /** What it says, with plain blanks. */
  private static String text(Locator locator) {
    return locator.innerText().replaceAll("\\h+", " ");
  }

  private static String told(Visit visit) {
    visit.at("#notices .notice").waitFor();
    return visit.at("#notices").innerText();
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void anEarlierRevisionIsRestoredAndAMovedNotebookIsShownFirst(
      int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      act(visit, "/formulas/seeded-lupin-bun?a=5&b=2", "Restore…");
      Locator dialog = visit.at("dialog");
      assertThat(text(dialog)).contains("after 5", "Water 188 g → 220 g");
      assertThat(visit.at("#act-note").inputValue()).isEqualTo("Back to seeded-lupin-bun@2");
      visit.assertAccessible();
      visit.assertFits();
      visit.at("#act-note").fill("Softer again");
      revise(BUN, "A little wetter", "water=200 g");
      button(visit, "Restore 2").click();
      visit.at("dialog .refused").waitFor();
      visit.expectRefusal();
      assertThat(text(dialog))
          .contains("The newest revision is another one by now")
          .contains("A little wetter", "after 6", "Water 200 g → 220 g");
      assertThat(visit.at("#act-note").inputValue()).isEqualTo("Softer again");
      assertThat(water(BUN)).isEqualTo("200 g");
      button(visit, "Restore 2").click();
      assertThat(told(visit)).contains("Saved 7: “Softer again”.", "Worksheet of 7");
      assertThat(visit.settled().address()).contains("a=6&b=7");
      assertThat(water(BUN)).isEqualTo("220 g");
    }
  }

  @Test
  void aRevisionIsPublishedFromItsWorksheetWithItsCautionsInView(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE)) {
      act(visit, "/worksheet/seeded-lupin-bun@4", "Publish…");
      assertThat(text(visit.at("dialog"))).contains("Low-carbohydrate bun: missed");
      visit.at("dialog summary").click();
      assertThat(text(visit.at("dialog"))).contains("Contains egg", "Local food codes");
      visit.assertAccessible();
      button(visit, "Publish 4").click();
      visit.at("dialog .refused").getByText("needs a note").waitFor();
      visit.expectRefusal();
      visit.at("#act-note").fill("For the spring market");
      button(visit, "Publish 4").click();
      assertThat(told(visit)).contains("Published 4: “For the spring market”.");
      visit.page().getByText("published: For the spring market").waitFor();
      visit.at(".acts summary").click();
      assertThat(button(visit, "Publish…").count()).isZero();
    }
  }

  @Test
  void aVariantIsForkedWithAGoalAndANameThatCannotBeIsToldAtOnce(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      act(visit, "/formulas/seeded-lupin-bun", "Fork a variant…");
      visit.at("#variant-name").fill("Without Seed");
      button(visit, "Fork the variant").click();
      visit.at("dialog .refused").waitFor();
      visit.expectRefusal();
      visit.at("#variant-name").fill("seed-free");
      visit.at("#variant-goal").selectOption("egg-free-bun");
      visit.assertAccessible();
      button(visit, "Fork the variant").click();
      assertThat(told(visit)).contains("Forked seed-free from 5.");
      assertThat(visit.settled().address()).isEqualTo("/formulas/seeded-lupin-bun?line=seed-free");
      Revision forked =
          newest(Address.latest("seeded-lupin-bun", Optional.of("seed-free")));
      assertThat(bench.desk().notebook().formula(forked).goal()).contains("egg-free-bun");
    }
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void improvementsAreCarriedOverAfterEveryChoiceIsMade(
      int width, ColorScheme colours, Browser browser) {
    revise(BUN, "Wetter, more flax", "water=200 g", "flaxseed=40 g");
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/formulas/seeded-lupin-bun?line=egg-free").at(".acts summary").click();
      visit.at("text=Carry improvements over…").click();
      visit.settled();
      assertThat(visit.address()).isEqualTo("/carry/seeded-lupin-bun/egg-free");
      assertThat(text(visit.at("main")))
          .contains("Flaxseed 30 g → 40 g", "1 place where both sides changed the same");
      visit.assertAccessible();
      visit.assertFits();
      button(visit, "Carry over").click();
      visit.page().getByText("Choose a side at each place first.").waitFor();
      assertThat(newest(EGG_FREE).number()).isEqualTo(5);
      visit.at(".conflict-sides label:has-text('200 g')").click();
      visit.at(".changes").getByText(Pattern.compile("240.g.→.200")).waitFor();
      visit.at("#carry-note").fill("The main line’s dough");
      revise(BUN, "Less flax after all", "flaxseed=35 g");
      button(visit, "Carry over").click();
      visit.at(".refused").getByText("Less flax after all").waitFor();
      visit.expectRefusal();
      visit.at(".changes").getByText(Pattern.compile("30.g.→.35")).waitFor();
      assertThat(visit.at("#carry-note").inputValue()).isEqualTo("The main line’s dough");
      assertThat(text(visit.at(".conflict-sides .chosen"))).contains("200 g");
      button(visit, "Carry over").click();
      assertThat(told(visit)).contains("Carried 7 over: egg-free 6, “The main line’s dough”.");
      assertThat(water(EGG_FREE)).isEqualTo("200 g");
      visit.to("/carry/seeded-lupin-bun/egg-free");
      assertThat(text(visit.at("main"))).contains("holds everything of the main line’s 7");
      visit.assertAccessible();
    }
  }

  @Test
  void theLastChangeIsSaidBeforeItIsUndoneAndAnotherOneIsNotUndoneUnseen(Browser browser) {
    revise(BUN, "Wetter", "water=230 g");
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE)) {
      act(visit, "/formulas/seeded-lupin-bun", "Undo the last change of the main line…");
      Locator dialog = visit.at("dialog");
      assertThat(text(dialog)).contains("“Wetter”", "Water 230 g → 188 g");
      visit.assertAccessible();
      revise(BUN, "Wetter still", "water=240 g");
      button(visit, "Undo it").click();
      visit.at("dialog .refused").waitFor();
      visit.expectRefusal();
      assertThat(text(dialog)).contains("“Wetter still”", "Water 240 g → 230 g");
      button(visit, "Undo it").click();
      assertThat(told(visit)).contains("Undone: “Wetter still”.", "seeded-lupin-bun@8");
      assertThat(water(BUN)).isEqualTo("230 g");
      assertThat(visit.settled().text()).contains("Undo: Wetter still");
    }
  }

  @Test
  void editingFromARevisionBeginsADraftOfIt(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/formulas/seeded-lupin-bun?a=1&b=2");
      assertThat(visit.at("a:text('Record a bake of 2')").getAttribute("href"))
          .isEqualTo("/record/seeded-lupin-bun@2");
      button(visit, "Edit from 2").click();
      visit.page().waitForURL(Pattern.compile(".*/drafts/.*"));
      visit.settled();
      visit.to("/");
      assertThat(visit.at(".drafts").innerText()).contains("Seeded lupin bun", "from 2");
    }
  }
}
