package io.ovenmark.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.JsonText;
import io.ovenmark.desk.KeepDrafts;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
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
import org.junit.jupiter.params.provider.ValueSource;

/** Editing a formula in the browser: live figures, the scale, undo, keeping, saving, two people. */
@ExtendWith(Chromium.class)
class DraftPagesTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

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

  private static By by() {
    By first = RunningBench.by();
    return new By(first.author(), first.time().plusHours(1));
  }

  private DraftViews.DraftView begin(String base) {
    return new KeepDrafts(bench.desk()).begin(Optional.empty(), Optional.of(base), by());
  }

  private DraftViews.DraftView kept(DraftViews.DraftView draft) {
    return new KeepDrafts(bench.desk()).show(draft.id());
  }

  private Visit visit(Browser browser, int width, DraftViews.DraftView draft) {
    return Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT).to("/drafts/" + draft.id());
  }

  private static Locator amount(Visit visit, String food) {
    return visit.page().getByLabel(Pattern.compile("^Amount of .*" + food));
  }

  private static Locator button(Visit visit, String name) {
    return visit
        .page()
        .getByRole(
            AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("^" + name)))
        .first();
  }

  private static Locator among(Visit visit, String selector, String text) {
    return visit.at(selector).filter(new Locator.FilterOptions().setHasText(text));
  }

  private static Locator row(Visit visit, String food) {
    return visit.at(".edit-line").filter(new Locator.FilterOptions().setHas(amount(visit, food)));
  }

  /** The row of a figure: what it was, is, and the difference. */
  private static Locator figure(Visit visit, String name) {
    return among(visit, ".edit-figures tr", name);
  }

  private static void waitUntilKept(Visit visit) {
    assertThat(visit.at(".kept")).containsText(Pattern.compile("^\\s*Kept\\s*$"));
  }

  private Revision newest() {
    return bench.desk().notebook().newest(BUN);
  }

  private String amountNow(String line) {
    Formula formula = bench.desk().notebook().formula(newest());
    return formula.line(line).orElseThrow().amount().toString();
  }

  /** What somebody else commits while the draft is open. */
  private void commitElsewhere(String note, String... changes) {
    Notebook notebook = bench.desk().notebook();
    FormulaEdit edit = new FormulaEdit(notebook.formula(newest()));
    for (String change : changes) {
      edit = edit.set(change);
    }
    new FormulaWriter(notebook).revise(newest(), edit.formula(), note, by());
  }

  private static void saveAs(Visit visit, String note) {
    button(visit, "Save as").click();
    if (note != null) {
      visit.at("#save-note").fill(note);
    }
    visit.at("dialog button.main").click();
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void figuresFollowWhatIsTypedBesideWhatTheyWere(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, width, draft)) {
      visit.assertAccessible();
      visit.assertFits();
      amount(visit, "water").fill("202 g");
      if (width == Visit.PHONE) {
        assertThat(visit.at(".glance")).containsText("Liquid ratio");
        visit.at(".glance").click();
      }
      assertThat(figure(visit, "Liquid ratio").locator(".before")).hasText("1.7");
      assertThat(figure(visit, "Liquid ratio").locator(".now")).hasText("1.78");
      assertThat(figure(visit, "Batch, g").locator(".change")).hasText("+14");
      assertThat(row(visit, "water").locator(".was")).containsText("188");
      assertThat(visit.at(".edit-end .changes")).hasText("Water 188 g → 202 g (+14 g).");

      amount(visit, "water").fill("202");
      assertThat(figure(visit, "Batch, g").locator(".now")).containsText("at least");
      assertThat(row(visit, "water").locator(".problem.line-problem")).isHidden();
      visit.at("#draft-name").focus();
      assertThat(row(visit, "water").locator(".problem.line-problem"))
          .containsText("has no unit");
      assertThat(visit.at(".to-complete")).containsText("1 thing to complete");
      visit.assertAccessible();
      visit.assertFits();
      waitUntilKept(visit);
      assertThat(kept(draft).document().text()).contains("\"202\"");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void theScaleChangesMassesByPercentagesAndTicksOff(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, width, draft)) {
      button(visit, "At the scale").click();
      visit.page().waitForURL("**/drafts/*weigh=1");
      visit.assertAccessible();
      visit.assertFits();
      Page page = visit.page();
      page.getByLabel(Pattern.compile("Baker’s percentage of .*water")).fill("200");
      assertThat(page.getByLabel(Pattern.compile("Mass of .*water"))).hasValue("220");
      page.getByLabel(Pattern.compile("Percent of the batch of .*water")).fill("100");
      assertThat(visit.at(".scale-table [role=alert]")).containsText("Use less than 100 %.");
      visit.expectRefusal();
      page.getByLabel(Pattern.compile("water")).first().check();
      assertThat(visit.at(".bowl b")).hasText("220 g");
      page.getByLabel("Scale to", new Page.GetByLabelOptions().setExact(true)).fill("12");
      page.keyboard().press("Enter");
      assertThat(page.getByLabel(Pattern.compile("Mass of .*water"))).hasValue("440");
      assertThat(visit.at(".bowl b")).hasText("440 g");
      page.reload();
      visit.settled();
      assertThat(visit.at(".bowl b")).hasText("440 g");
      button(visit, "Back to the formula").click();
      assertThat(amount(visit, "egg")).hasValue("4 large");
      assertThat(page.getByLabel("Pieces", new Page.GetByLabelOptions().setExact(true)))
          .hasValue("12");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void stepsAreTakenBackAndDoneAgainAlsoAfterAReload(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, width, draft)) {
      Page page = visit.page();
      amount(visit, "water").fill("");
      amount(visit, "water").pressSequentially("199 g");
      page.getByLabel(Pattern.compile("flaxseed counts as flour")).check();
      page.reload();
      visit.settled();
      assertThat(amount(visit, "water")).hasValue("199 g");
      amount(visit, "water").focus();
      page.keyboard().press("Control+z");
      assertThat(page.getByLabel(Pattern.compile("flaxseed counts as flour"))).not().isChecked();
      page.keyboard().press("Control+z");
      assertThat(amount(visit, "water")).hasValue("188 g");
      assertThat(button(visit, "Undo")).isDisabled();
      page.keyboard().press("Control+Shift+z");
      assertThat(amount(visit, "water")).hasValue("199 g");
      button(visit, "Redo").click();
      assertThat(page.getByLabel(Pattern.compile("flaxseed counts as flour"))).isChecked();
      waitUntilKept(visit);
      assertThat(kept(draft).document().text()).contains("199 g");
    }
  }

  @Test
  void whatIsTypedWhileTheViewerIsAwayIsThereWhenItIsBack(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      bench.stop();
      amount(visit, "water").fill("201 g");
      assertThat(visit.at(".kept")).containsText("Nothing is lost, go on typing");
      amount(visit, "butter").fill("22 g");
      visit.assertAccessible();
      bench.startAgain();
      waitUntilKept(visit);
      assertThat(kept(draft).document().text()).contains("201 g", "22 g");
      assertThat(figure(visit, "Batch, g").locator(".change")).hasText("+15");
      visit.expectRefusal();
    }
  }

  @Test
  void aLaptopClosedBeforeTheViewerHeardOfItShowsBothSides(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      bench.stop();
      amount(visit, "water").fill("201 g");
      assertThat(visit.at(".kept")).containsText("Nothing is lost");
      visit.page().navigate("about:blank");
      JsonText phone = new JsonText(draft.document().text().replace("188 g", "170 g"));
      new KeepDrafts(bench.desk())
          .keep(draft.id(), 1, new KeepDrafts.Typed(phone, "", "From the phone"), by());
      bench.startAgain();
      visit.to("/drafts/" + draft.id());
      assertThat(visit.at("dialog")).containsText("Water 170 g → 201 g (+31 g).");
      visit.assertAccessible();
      button(visit, "Go on with yours").click();
      assertThat(amount(visit, "water")).hasValue("201 g");
      waitUntilKept(visit);
      assertThat(kept(draft).document().text()).contains("201 g");
      assertThat(new KeepDrafts(bench.desk()).all().drafts()).hasSize(2);
      visit.page().getByText("Open it").click();
      assertThat(amount(visit, "water")).hasValue("170 g");
      visit.expectRefusal();
    }
  }

  @Test
  void whatAClosedTabTypedIsFoundByTheNext(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      bench.stop();
      amount(visit, "water").fill("201 g");
      assertThat(visit.at(".kept")).containsText("Nothing is lost");
      String address = visit.page().url();
      Page next = visit.page().context().newPage();
      visit.page().close();
      bench.startAgain();
      next.navigate(address);
      assertThat(next.getByLabel(Pattern.compile("^Amount of .*water"))).hasValue("201 g");
      assertThat(next.locator(".kept")).containsText(Pattern.compile("^\\s*Kept\\s*$"));
      assertThat(kept(draft).document().text()).contains("201 g");
      assertThat(new KeepDrafts(bench.desk()).all().drafts()).hasSize(1);
      visit.expectRefusal();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void theSameDraftInTwoTabsIsNeverOverwritten(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit one = visit(browser, width, draft);
        Visit two = visit(browser, width, draft)) {
      amount(one, "water").fill("190 g");
      waitUntilKept(one);
      amount(two, "water").fill("180 g");
      assertThat(two.at("dialog")).containsText("Water 190 g → 180 g (−10 g).");
      two.assertAccessible();
      two.assertFits();
      button(two, "Go on with the other").click();
      assertThat(amount(two, "water")).hasValue("190 g");
      waitUntilKept(two);
      two.page().getByText("Open it").click();
      assertThat(amount(two, "water")).hasValue("180 g");
      two.expectRefusal();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void savingProposesANoteAndSaysWhatWasCommitted(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, width, draft)) {
      amount(visit, "water").fill("202 g");
      button(visit, "Save as 6").click();
      assertThat(visit.at("#save-note")).hasValue("Water 188 g → 202 g (+14 g)");
      assertThat(visit.at("dialog .changes")).hasText("Water 188 g → 202 g (+14 g).");
      visit.assertAccessible();
      visit.assertFits();
      visit.at("#save-note").fill("Softer");
      visit.at("dialog button.main").click();
      visit.page().waitForURL("**/formulas/seeded-lupin-bun?a=5&b=6");
      assertThat(visit.at("#notices")).containsText("Saved as seeded-lupin-bun@6: Softer.");
      assertThat(newest().note()).isEqualTo("Softer");
      assertThat(amountNow("water")).isEqualTo("202 g");
      assertThat(new KeepDrafts(bench.desk()).all().drafts()).isEmpty();
    }
  }

  @Test
  void aStepThatNamesWhatNoLineWeighsIsPointedOutWhileTyping(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK, begin("seeded-lupin-bun"))) {
      Locator said = visit.at(".edit-method [role=status]");
      assertThat(said).isEmpty();
      button(visit, "Add a step").click();
      visit.at(".edit-steps textarea").last().fill("Brush with honey.");
      assertThat(said).containsText("names “honey”, but no line weighs that");
      visit.assertAccessible();
      visit.at(".edit-steps textarea").last().fill("Brush with water.");
      assertThat(said).isEmpty();
    }
  }

  @Test
  void howToKeepItIsTypedAndSaved(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK, begin("seeded-lupin-bun"))) {
      visit.at("summary:has-text('Description, storage')").click();
      visit.page().getByLabel("Storage, how to keep what was baked").fill("Two days in a box.");
      waitUntilKept(visit);
      saveAs(visit, "How to keep it");
      visit.page().waitForURL("**/formulas/seeded-lupin-bun?a=5&b=6");
      assertThat(bench.desk().notebook().formula(newest()).storage())
          .isEqualTo(Optional.of("Two days in a box."));
    }
  }

  @Test
  void whatOthersChangedElsewhereIsMergedAndTold(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      amount(visit, "water").fill("202 g");
      waitUntilKept(visit);
      commitElsewhere("Less butter", "butter-unsalted=15 g");
      visit.page().evaluate("dispatchEvent(new Event('focus'))");
      assertThat(visit.at(".edit-banner")).containsText("6 while this draft was open");
      visit.assertAccessible();
      saveAs(visit, "Softer");
      assertThat(visit.at("#notices")).containsText("Merged with 6 by");
      assertThat(visit.at("#notices")).containsText("utter");
      assertThat(amountNow("water")).isEqualTo("202 g");
      assertThat(amountNow("butter-unsalted")).isEqualTo("15 g");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatBothChangedIsChosenSideBySide(int width, Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, width, draft)) {
      amount(visit, "water").fill("202 g");
      amount(visit, "butter").fill("25 g");
      waitUntilKept(visit);
      commitElsewhere("Drier, less butter", "water=170 g", "butter-unsalted=15 g");
      saveAs(visit, "Softer");
      assertThat(visit.at("dialog .conflict")).hasCount(2);
      assertThat(visit.at("dialog")).containsText("Drier, less butter");
      assertThat(visit.at("dialog button.main")).isDisabled();
      visit.assertAccessible();
      visit.assertFits();
      button(visit, "Back to the draft").click();
      assertThat(amount(visit, "water")).hasValue("202 g");
      saveAs(visit, null);
      Locator water = among(visit, "dialog .conflict", "202 g");
      water.getByText("202 g").last().click();
      among(visit, "dialog .conflict", "25 g").locator("input[value=theirs]").check();
      visit.at("dialog button.main").click();
      assertThat(visit.at("#notices")).containsText("Saved as seeded-lupin-bun@7");
      assertThat(amountNow("water")).isEqualTo("202 g");
      assertThat(amountNow("butter-unsalted")).isEqualTo("15 g");
    }
  }

  @Test
  void aNewFormulaIsWrittenAndSavedByTheKeyboardAlone(Browser browser) {
    DraftViews.DraftView draft =
        new KeepDrafts(bench.desk()).begin(Optional.empty(), Optional.empty(), by());
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      Page page = visit.page();
      visit.at("#draft-name").focus();
      page.keyboard().type("Flax cracker");
      tabTo(page, "add-line");
      page.keyboard().press("Enter");
      page.keyboard().type("flaxseed");
      visit.at(".options li.active").waitFor();
      page.keyboard().press("Enter");
      page.keyboard().press("Tab");
      page.keyboard().type("120 g");
      tabTo(page, "add-line");
      page.keyboard().press("Enter");
      page.keyboard().type("water");
      visit.at(".options li.active").waitFor();
      page.keyboard().press("Enter");
      page.keyboard().press("Tab");
      page.keyboard().type("80 g");
      page.keyboard().press("Alt+ArrowUp");
      assertThat(visit.at(".edit-line").first().locator(".amount-field input"))
          .hasValue("80 g");
      assertThat(visit.at(".edit-line").first().locator(".amount-field input")).isFocused();
      assertThat(figure(visit, "Batch, g").locator(".now")).hasText("200");
      visit.assertAccessible();
      page.keyboard().press("Control+s");
      visit.at("dialog").waitFor();
      visit.assertAccessible();
      tabTo(page, "save-short-name");
      page.keyboard().type("cracker");
      page.keyboard().press("Enter");
      page.waitForURL("**/formulas/cracker");
      Formula saved = bench.desk().notebook().formula(
          bench.desk().notebook().newest(Address.parse("cracker")));
      assertThat(saved.name()).isEqualTo("Flax cracker");
      assertThat(saved.lines()).extracting(line -> line.amount().toString())
          .containsExactly("80 g", "120 g");
    }
  }

  private static void tabTo(Page page, String id) {
    for (int i = 0; i < 60; i++) {
      page.keyboard().press("Tab");
      if (page.evaluate("document.activeElement.id").equals(id)) {
        return;
      }
    }
    throw new AssertionError("the Tab key does not lead to " + id);
  }

  @Test
  void fieldsBesideTheLinesAreEditedToo(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.PHONE, draft)) {
      Page page = visit.page();
      page.getByLabel("dough a piece").check();
      page.getByLabel("Temperature").fill("374 F");
      button(visit, "Add a step").click();
      page.getByLabel("Step 4").fill("Cool.\nThen cut.");
      button(visit, "Up step 4").click();
      visit.at("#draft-goal").selectOption("egg-free-bun");
      button(visit, "Undo").click();
      assertThat(visit.at("#draft-goal")).hasValue("low-carb-bun");
      button(visit, "Redo").click();
      assertThat(visit.at("#draft-goal")).hasValue("egg-free-bun");
      button(visit, "More for line 2").click();
      visit.at(".line-more input").fill("coarse");
      visit.assertAccessible();
      visit.assertFits();
      button(visit, "Remove .*line|Remove flax").click();
      assertThat(visit.at(".left-out")).containsText("flaxseed");
      assertThat(visit.at(".edit-end .changes")).containsText("Goal low-carb-bun → egg-free-bun");
      saveAs(visit, "All else");
      page.waitForURL("**/formulas/seeded-lupin-bun?a=5&b=6");
      Formula saved = bench.desk().notebook().formula(newest());
      assertThat(saved.method()).containsSequence("Cool.\nThen cut.");
      assertThat(saved.bake().get(0).temperature().orElseThrow()).hasToString("374 °F");
      assertThat(saved.yield().pieces()).isEmpty();
      assertThat(saved.line("flaxseed")).isEmpty();
    }
  }

  @Test
  void aDiscardedDraftCanBeBroughtBack(Browser browser) {
    DraftViews.DraftView draft = begin("seeded-lupin-bun");
    try (Visit visit = visit(browser, Visit.DESK, draft)) {
      amount(visit, "water").fill("202 g");
      assertThat(visit.at(".edit-end .changes")).isVisible();
      button(visit, "Discard").click();
      assertThat(visit.at("dialog")).containsText("1 change would be thrown away.");
      button(visit, "Discard it").click();
      button(visit, "Bring it back").click();
      assertThat(amount(visit, "water")).hasValue("202 g");
    }
  }
}
