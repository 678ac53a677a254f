package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.KeepDrafts;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class CausePagesTest {
  private static final String GUMMY = "/causes/seeded-lupin-bun@3?finding=gummy+crumb";

  @ParameterizedTest
  @CsvSource({"1440, DARK", "390, LIGHT"})
  void theCausesOfAFindingAreAccessibleAndFitTheWindow(
      int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      visit.to(GUMMY);
      visit.page().evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
      visit.assertFits();
      visit.assertAccessible();
      assertThat(visit.text())
          .contains("Gummy crumb is gone", "Likely causes, by your own figures")
          .contains("Dough and oven changed together.", "Dough or oven", "Is it the dough?")
          .contains("71 °C", "common practice, no source");
      visit.at(".cause-findings a:has-text('pale')").click();
      visit.settled();
      assertThat(visit.address()).endsWith("finding=pale");
    }
  }

  @Test
  void withoutABakeItSaysWhatToDo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.PHONE)) {
      visit.to("/causes/seeded-lupin-bun@1");
      assertThat(visit.text()).contains("No bake up to this revision has a finding yet");
      visit.at("#cause-other").selectOption("hollow");
      PlaywrightAssertions.assertThat(visit.at("h1")).hasText("Hollow");
      assertThat(visit.text()).contains("No bake of this line of history was judged yet");
    }
  }

  @Test
  void theSizeOfAPlanIsChosenAndASettingBecomesADraft(Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to(GUMMY);
      visit.at("#cause-pieces").fill("3");
      visit.page().keyboard().press("Enter");
      PlaywrightAssertions.assertThat(visit.at(".cause-plan > p").first())
          .containsText("12 pieces");
      visit.at(".cause-setting button").first().click();
      visit.page().waitForURL(Pattern.compile(".*/drafts/.*"));
      visit.settled();
      assertThat(new KeepDrafts(bench.desk()).all().drafts()).hasSize(1);
    }
  }
}
