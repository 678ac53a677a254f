package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.demo.DemoNotebook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class MatteredPagesTest {
  private static OwnBench bench;

  @BeforeAll
  static void makeTheDemo() {
    bench = OwnBench.with(folder -> DemoNotebook.create(folder, (done, total) -> {}));
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  @ParameterizedTest
  @CsvSource({Visit.DESK + ", LIGHT", Visit.PHONE + ", DARK"})
  void eachOutcomeHasASentenceAChartAndTheFiguresBehind(
      int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/mattered/seeded-lupin-bun@13");
      assertThat(visit.at("h1").innerText()).isEqualTo("What mattered Seeded lupin bun");
      Locator height = visit.at("#of-height-mm");
      assertThat(height.locator(".mattered-sentence").innerText().replace('\u00a0', ' '))
          .startsWith("A hotter oven went with higher pieces: about 1.6 mm more for each 10 °C");
      assertThat(height.locator(".effect-row.clear circle.clear").count()).isPositive();
      assertThat(height.locator(".effect-rows > li").count()).isEqualTo(2);
      visit.assertAccessible();
      visit.assertFits();
      height.locator("button").press("Enter");
      assertThat(height.locator(".effect-rows > li").count()).isEqualTo(18);
      height.locator("summary").press("Enter");
      assertThat(height.locator("tbody tr").count()).isEqualTo(18);
      assertThat(height.locator("tbody tr").first().innerText()).contains("alone", "99 %");
      visit.assertAccessible();
      visit.assertFits();
      Locator link = height.locator("tbody tr a[href*='formulas']").first();
      assertThat(link.getAttribute("href")).contains("a=", "b=");
    }
  }

  @Test
  void outcomesOfWhichNothingStandsOutAreFoldedUntilTheyAreAskedFor(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to("/mattered/seeded-lupin-bun@13");
      Locator liking = visit.at("#of-liking");
      assertThat(visit.at(".mattered-others > summary").innerText())
          .matches("\\d+ outcomes of which nothing can be told yet");
      assertThat(liking.isVisible()).isFalse();
      visit.at(".mattered-contents a:text('Liking')").click();
      liking.waitFor();
      assertThat(visit.at("#of-height-mm").isVisible()).isTrue();
      visit.assertAccessible();
    }
  }

  @Test
  void theBakesOfVariantsAreCountedOnWish(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/mattered/seeded-lupin-bun");
      assertThat(visit.at(".mattered .sub").innerText()).startsWith("11 bakes with 38 pieces");
      visit.at(".mattered-lines input").check();
      visit.page().waitForURL("**/mattered/seeded-lupin-bun?variants=yes");
      visit.settled();
      assertThat(visit.at(".mattered .sub").innerText()).startsWith("14 bakes");
      visit.to("/formulas/seeded-lupin-bun");
      visit.at(".next-change a:text('What mattered so far')").click();
      visit.page().waitForURL("**/mattered/seeded-lupin-bun@13");
    }
  }

  @Test
  void withTooFewBakesThePageSaysWhatIsMissing(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE)) {
      visit.to("/mattered/sesame-crispbread");
      assertThat(visit.text()).contains("at least four are needed");
      assertThat(visit.at(".mattered-missing dt").first().innerText()).isEqualTo("Height");
      visit.assertAccessible();
      visit.assertFits();
    }
  }
}
