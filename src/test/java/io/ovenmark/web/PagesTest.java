package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@ExtendWith(Chromium.class)
class PagesTest {
  private static final List<String> PAGES =
      List.of(
          "/",
          "/begin",
          "/begin?way=copy&from=seeded-lupin-bun@2",
          "/carry/seeded-lupin-bun/egg-free",
          "/formulas/seeded-lupin-bun?a=2&b=3",
          "/formulas/seeded-lupin-bun?a=../wheat-bun@1&b=egg-free@4",
          "/worksheet/seeded-lupin-bun@2",
          "/bakes/seeded-lupin-bun/2026-03-04-1");

  private static final String LOADED_WIDTH =
      "image => image.decode().then(() => image.naturalWidth)";

  @AfterEach
  void nothingIsWrongInside() {
    assertThat(RunningBench.FULL.faults()).isEmpty();
  }

  static Stream<Arguments> windows() {
    return PAGES.stream()
        .flatMap(
            page ->
                Stream.of(
                    Arguments.of(page, Visit.DESK, ColorScheme.LIGHT),
                    Arguments.of(page, Visit.PHONE, ColorScheme.DARK)));
  }

  @ParameterizedTest
  @MethodSource("windows")
  void everyPageIsAccessibleAndFitsItsWindow(
      String path, int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      visit.to(path);
      visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
      visit.assertFits();
      visit.assertAccessible();
    }
  }

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void theColoursOfTheOtherSchemeHaveContrastToo(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      visit.to("/formulas/seeded-lupin-bun?a=2&b=3").assertContrast();
      visit.to("/").assertContrast();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/ | Saltmarsh bench",
        "/formulas/seeded-lupin-bun?a=2&b=3 | Seeded lupin bun: 2 → 3",
        "/formulas/seeded-lupin-bun?line=egg-free | Seeded lupin bun: egg-free 4 → egg-free 5",
        "/worksheet/seeded-lupin-bun/egg-free@5 | Seeded lupin bun egg-free 5, worksheet",
        "/bakes/seeded-lupin-bun/2026-03-04-1 | Bake 2026-03-04-1 of seeded-lupin-bun"
      })
  void everyPageHasATitleOneHeadingAndLandmarks(String path, String title, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(path);
      assertThat(visit.page().title()).isEqualTo(title.strip() + " · Ovenmark");
      assertThat(visit.at("h1").count()).isEqualTo(1);
      assertThat(visit.at("main").count()).isEqualTo(1);
      assertThat(visit.at("header nav").count()).isEqualTo(1);
      assertThat(headings(visit)).startsWith(1).doesNotContain(4, 5, 6);
    }
  }

  private static List<Object> headings(Visit visit) {
    Object levels =
        visit
            .page()
            .evaluate("[...document.querySelectorAll('h1,h2,h3,h4')].map(h => +h.tagName[1])");
    return List.copyOf((List<?>) levels);
  }

  @Test
  void theListSaysHowEachFormulaStands(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      String text = visit.to("/").text();
      assertThat(text)
          .contains("Seeded lupin bun", "compare with Wheat bun", "egg-free", "from revision 3")
          .contains("Low-carbohydrate bun", "missed")
          .contains("Back to less seed")
          .contains("edited by hand, not yet a revision")
          .contains("no goal")
          .contains("formulas/broken-bun.json:1:")
          .contains("Σησαμένια τραγανά");
      visit.at("a:text('compare with Wheat bun')").click();
      visit.settled();
      assertThat(visit.address())
          .isEqualTo("/formulas/seeded-lupin-bun?a=../wheat-bun@1&b=5");
      assertThat(visit.text()).contains("A stands on wheat-bun 1, which is not on this spine");
    }
  }

  @Test
  void anEmptyNotebookExplainsItselfAndLeadsToTheFirstFormulaInOneClick(Browser browser) {
    try (Visit visit = Visit.open(RunningBench.EMPTY, browser, Visit.PHONE, ColorScheme.LIGHT)) {
      assertThat(visit.to("/").text())
          .contains("There is no formula in this notebook yet.")
          .contains("A formula", "A revision", "A bake")
          .doesNotContain("ovenmark new", "terminal");
      visit.assertFits();
      visit.assertAccessible();
      visit.at("text=Paste a recipe").click();
      visit.settled();
      assertThat(visit.address()).isEqualTo("/begin?way=paste");
      visit.to("/").at("text=Write the first formula").click();
      visit.settled();
      assertThat(visit.address()).isEqualTo("/begin");
    }
  }

  @Test
  void namesAndNotesAreNeverMarkup(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      for (String path : List.of("/", "/formulas/hostile", "/worksheet/hostile")) {
        visit.to(path);
        assertThat(visit.text()).contains(BenchNotebook.HOSTILE);
        assertThat(visit.at("main img, main script").count()).isZero();
      }
      assertThat(visit.page().title()).startsWith(BenchNotebook.HOSTILE);
    }
  }

  @Test
  void aDamagedFormulaIsToldAndItsEarlierRevisionsStayReadable(Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to("/formulas/broken-bun").expectRefusal();
      assertThat(visit.at(".answer").innerText()).contains("formulas/broken-bun.json:1:");
      assertThat(visit.at(".revision").count()).isEqualTo(2);
      visit.assertAccessible();
      visit.to("/worksheet/broken-bun@2").expectRefusal();
      assertThat(visit.text()).contains("This cannot be shown", "formulas/broken-bun.json:1:");
      visit.at("a:text('Timeline of broken-bun')").click();
      visit.settled().expectRefusal();
      visit.to("/worksheet/broken-bun@1");
      assertThat(visit.text()).contains("Broken bun", "There are none yet.");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/nowhere | No such page",
        "/formulas/nowhere | There is no formula \"nowhere\" in this notebook.",
        "/worksheet/seeded-lupin-bun@99 | Its revisions are 1 to 5",
        "/worksheet/%3Cb%3E | is not an address",
        "/bakes/seeded-lupin-bun/2030-01-01-1 | There is no bake",
        "/formulas/seeded-lupin-bun?a=1&b=99 | There is no revision seeded-lupin-bun@99."
      })
  void whatIsNotThereIsSaidInWords(String path, String words, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      assertThat(visit.to(path).text()).contains(words.strip());
      visit.expectRefusal();
    }
  }

  @Test
  void whatIsNotKnownIsNamedAndNeverZero(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      String sheet = visit.to("/worksheet/sesame-crispbread").text();
      assertThat(sheet).contains("unknown", "What is not known");
      visit.to("/bakes/seeded-lupin-bun/2026-03-09-1");
      assertThat(visit.at(".piece-table tbody tr:last-child td").allInnerTexts())
          .contains("unknown")
          .noneMatch(text -> text.strip().equals("0"));
      assertThat(visit.at(".tray .crust-unknown.width-unknown").count()).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @CsvSource({"no-lines, 0", "one-line, 1", "sixty-lines, 60"})
  void worksheetsOfAnyLengthAreDrawn(String formula, int lines, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.PHONE)) {
      visit.to("/worksheet/" + formula);
      assertThat(visit.at(".weigh tbody tr").count()).isEqualTo(lines);
      visit.assertFits();
      visit.to("/formulas/" + formula).assertFits();
    }
  }

  @Test
  void unchangedLinesAreFoldedAway(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/formulas/sixty-lines");
      assertThat(visit.at(".lines > .line-table tbody tr").count()).isEqualTo(1);
      assertThat(visit.at(".unchanged summary").innerText()).isEqualTo("59 more unchanged");
    }
  }

  @Test
  void aBakeShowsItsPhotoWithTheLettersOfThePieces(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/bakes/seeded-lupin-bun/2026-03-04-1");
      assertThat(visit.at(".picture img").getAttribute("alt")).isEqualTo("Two buns");
      assertThat(visit.at(".picture img").evaluate(LOADED_WIDTH)).isEqualTo(1200);
      assertThat(visit.at(".picture text").allTextContents()).containsExactly("a", "b");
      assertThat(visit.text())
          .contains("gummy crumb fault", "still damp", "moist: 1 just right, 0 too little, 2 too");
    }
  }

  @Test
  void theWorksheetPrintsOnOnePage(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/worksheet/seeded-lupin-bun@2");
      byte[] pdf =
          visit.page().pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
      String text = new String(pdf, StandardCharsets.ISO_8859_1);
      assertThat(Pattern.compile("/Type\\s*/Page[^s]").matcher(text).results()).hasSize(1);
      visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(visit.at("#header").isVisible()).isFalse();
      assertThat(visit.at(".sheet-head button").first().isVisible()).isFalse();
      assertThat(visit.at(".weigh").isVisible()).isTrue();
    }
  }

  @Test
  void aPageAtTwiceTheSizeStillFits(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.DESK / 2)) {
      for (String path : PAGES) {
        visit.to(path).assertFits();
      }
    }
  }
}
