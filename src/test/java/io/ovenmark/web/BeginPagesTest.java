package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.KeepDrafts;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Writing a formula in the browser, until it is a draft. */
@ExtendWith(Chromium.class)
class BeginPagesTest {
  private static final String LINES =
      """
      Seeded bun
      Makes 6 to 8 buns

      1 1/2 cups almond meal, sifted
      3 large egg whites
      120 g water (warm)
      ½ tsp salt
      2-3 tbsp psyllium husk
      5 g xylophone dust

      Method
      1. Mix it all.

      Notes
      Keeps two days.
      """;

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

  private static Locator button(Visit visit, String name) {
    return visit
        .page()
        .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  /** Goes on, and reads the draft that the browser came to. */
  private String continued(Visit visit) {
    button(visit, "Continue").click();
    visit.page().waitForURL(Pattern.compile(".*/drafts/.*"));
    visit.settled();
    String id = visit.address().substring("/drafts/".length());
    DraftViews.DraftView draft = new KeepDrafts(bench.desk()).show(id);
    assertThat(draft.base()).isNull();
    return Json.compact(draft).replaceAll("\\s*\n\\s*", "").replace("\": ", "\":");
  }

  private int revisions() {
    return bench.desk().notebook().latest().formulas().size();
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aFormulaBegunFromNothingBecomesADraftAndIsNotCommitted(int width, Browser browser) {
    int before = revisions();
    try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to("/").at("text=Write a formula").click();
      visit.settled();
      button(visit, "Continue").click();
      assertThat(visit.at("#name-problem").innerText()).isEqualTo("Give the formula a name.");
      assertThat(visit.at("#name").evaluate("e => e === document.activeElement")).isEqualTo(true);
      visit.page().keyboard().type("Caraway bun");
      visit.at("#pieces").fill("6");
      visit.at("#goal").selectOption("low-carb-bun");
      visit.page().reload();
      visit.settled();
      assertThat(visit.at("#name").inputValue()).isEqualTo("Caraway bun");
      assertThat(continued(visit))
          .contains("\"name\":\"Caraway bun\"", "\"goal\":\"low-carb-bun\"", "\"pieces\":6");
      assertThat(revisions()).isEqualTo(before);
      visit.to("/");
      assertThat(visit.at(".drafts").innerText()).contains("Caraway bun", "Ines");
      visit.at(".drafts button").click();
      button(visit, "Throw away").click();
      visit.at("#notices .notice").waitFor();
      assertThat(visit.settled().at(".drafts").count()).isZero();
      assertThat(visit.to("/begin").at("#name").inputValue()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void pastedLinesAreSettledByChoicesAndNothingIsDroppedUnseen(
      int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/begin?way=paste").at("#text").fill(LINES);
      Locator standing = visit.at(".standing");
      standing.getByText("6 ingredients; 3 need a choice.").waitFor();
      visit.assertFits();
      visit.assertAccessible();
      assertThat(visit.at(".pasted-line").allInnerTexts())
          .anyMatch(text -> text.contains("water") && text.contains("warm"))
          .anyMatch(text -> text.contains("½ tsp") && text.contains("≈ 3"))
          .anyMatch(text -> text.contains("No food is called \"xylophone dust\""));
      assertThat(visit.at(".pasted-rest").allInnerTexts()).anyMatch(t -> t.contains("1 line"));

      button(visit, "Continue").click();
      visit.page().getByText("Some lines still need a choice.").waitFor();
      assertThat(visit.page().evaluate("document.activeElement.innerText").toString())
          .contains("almond meal");

      visit.at(".choices button:has-text('almond flour')").click();
      standing.getByText("2 need a choice").waitFor();
      assertThat(visit.page().evaluate("document.activeElement.textContent").toString().strip())
          .isEqualTo("Change");
      button(visit, "3 tbsp").click();
      standing.getByText("1 needs a choice").waitFor();
      visit.page().getByLabel("Another food").fill("sesame");
      visit.at("[role=option]:has-text('sesame seeds')").first().click();
      standing.getByText("all understood").waitFor();
      assertThat(visit.at("#pieces-hint").innerText()).contains("Makes 6 to 8 buns");
      button(visit, "6 pieces").click();
      visit.assertAccessible();

      assertThat(continued(visit))
          .contains("\"name\":\"Seeded bun\"", "\"pieces\":6", "\"amount\":\"1 1/2 cups\"")
          .contains("\"food\":\"psyllium-husk\",\"amount\":\"3 tbsp\"")
          .contains("\"food\":\"sesame-seeds\",\"amount\":\"5 g\"")
          .contains("\"note\":\"warm\"", "Mix it all.");
    }
  }

  @Test
  void aLineIsLeftOutOnPurposeAndTakenInAgainAndAnAmountCanBeTyped(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE)) {
      visit.to("/begin?way=paste").at("#text").fill("60 g water\nsalt to taste");
      Locator standing = visit.at(".standing");
      standing.getByText("1 needs a choice").waitFor();
      button(visit, "Leave this line out").click();
      standing.getByText("1 ingredient, all understood.").waitFor();
      assertThat(visit.at(".pasted-left").innerText()).contains("salt to taste");
      button(visit, "Take it in again").click();
      standing.getByText("1 needs a choice").waitFor();
      Locator amount =
          visit.page().getByLabel("Amount", new Page.GetByLabelOptions().setExact(true));
      amount.fill("some");
      amount.press("Enter");
      visit.at(".pasted-line .problem").getByText("some").waitFor();
      amount.fill("2 g");
      amount.press("Enter");
      standing.getByText("2 ingredients, all understood.").waitFor();
      visit.at("#name").fill("Salt water");
      assertThat(continued(visit)).contains("\"amount\":\"2 g\"");
    }
  }

  @Test
  void aRecipeInJsonIsTakenFromAFileAndOtherFilesAreRefusedInOneSentence(Browser browser) {
    String recipe =
        "{\"@context\":\"https://schema.org\",\"@type\":\"Recipe\",\"name\":\"Crispbread\","
            + "\"recipeYield\":\"12 pieces\","
            + "\"recipeIngredient\":[\"80 g sesame seeds\",\"60 g water\"],"
            + "\"recipeInstructions\":\"Mix and roll out.\"}";
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/begin?way=paste").at("#text").fill("1 g salt");
      visit.at("#file").setInputFiles(file("bun.jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, 0}));
      visit.page().getByText("“bun.jpg” is not a text file in UTF-8.").waitFor();
      assertThat(visit.at("#text").inputValue()).isEqualTo("1 g salt");
      visit.at("#file").setInputFiles(file("recipe.json", bytes(recipe)));
      visit.at(".standing").getByText("2 ingredients, all understood.").waitFor();
      assertThat(visit.at("#notices").innerText()).contains("Put the earlier text back");
      visit.at("#text").fill(recipe.substring(0, 60));
      visit.at(".paste-out .problems").waitFor();
      visit.expectRefusal();
      drop(visit, recipe);
      visit.at(".standing").getByText("2 ingredients, all understood.").waitFor();
      assertThat(continued(visit))
          .contains("\"name\":\"Crispbread\"", "\"pieces\":12", "Mix and roll out.");
    }
  }

  private static void drop(Visit visit, String text) {
    visit
        .page()
        .evaluate(
            "text => { const data = new DataTransfer();"
                + " data.items.add(new File([text], 'dropped.json'));"
                + " document.querySelector('#text').dispatchEvent(new DragEvent('drop',"
                + " {dataTransfer: data, bubbles: true, cancelable: true})); }",
            text);
  }

  private static FilePayload file(String name, byte[] bytes) {
    return new FilePayload(name, "", bytes);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void anyRevisionIsCopiedAndBecomesTheReference(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/begin?way=copy").at("#from").selectOption("seeded-lupin-bun");
      visit.at("#revision").selectOption("seeded-lupin-bun@2");
      visit.at(".copied li:has-text('220 g')").waitFor();
      visit.at("#name").fill("Caraway lupin bun");
      assertThat(continued(visit))
          .contains("\"name\":\"Caraway lupin bun\"", "\"reference\":\"seeded-lupin-bun\"")
          .contains("\"amount\":\"220 g\"", "\"goal\":\"low-carb-bun\"");
    }
  }

  @Test
  void theWholeWayGoesByKeyboard(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/begin?way=paste").at("#text").focus();
      visit.page().keyboard().insertText("60 g water\n2-3 tbsp honey");
      visit.at(".standing").getByText("1 needs a choice").waitFor();
      for (String expected : List.of("file", "Change", "2 tbsp", "3 tbsp")) {
        visit.page().keyboard().press("Tab");
        assertThat(visit.page().evaluate("document.activeElement.id + document.activeElement"
                + ".textContent.trim()"))
            .isEqualTo(expected);
      }
      visit.page().keyboard().press("Enter");
      visit.at(".standing").getByText("all understood").waitFor();
      visit.at("#name").focus();
      visit.page().keyboard().type("Honey water");
      visit.page().keyboard().press("Enter");
      visit.page().waitForURL(Pattern.compile(".*/drafts/.*"));
      visit.settled();
    }
  }
}
