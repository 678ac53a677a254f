package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class LabelPagesTest {
  private static String text(Visit visit) {
    return visit.text().replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void aLabelFollowsWhatIsTypedAndChosen(int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
      visit.to("/worksheet/seeded-lupin-bun@1");
      visit.at("a:text-is('Label figures of 1')").click();
      visit.page().waitForURL("**/label/seeded-lupin-bun@1");
      visit.settled();
      assertThat(text(visit))
          .contains("An aid for development, not an approved label.")
          .contains("Total carbohydrate", "21 CFR 101.9(c)(6)", "of which saturates", "Allergens")
          .contains("Local food codes and licensed practice decide.");
      visit.at(".label-claims details:not([open]) summary").first().click();
      visit.assertAccessible();
      visit.assertFits();

      visit.at("#label-loss").fill("12.5");
      visit.page().waitForURL("**/label/seeded-lupin-bun@1?loss=12.5");
      visit.at(".label-basis:has-text('12.5 %, an allowance that was entered')").waitFor();
      assertThat(visit.page().evaluate("document.activeElement.id")).isEqualTo("label-loss");

      visit.at("#label-reference").selectOption("bread");
      visit.page().waitForURL("**?loss=12.5&reference=bread");
      visit.at(".label-basis:has-text('of the reference amount of 50 g')").waitFor();
      visit.at("#label-regions").selectOption("eu");
      visit.at("#label-us").waitFor(gone());
      assertThat(text(visit)).contains("Salt").doesNotContain("Total carbohydrate");

      visit.at("#label-loss").fill("a lot");
      visit.at("#label-loss-problem:has-text('is not understood')").waitFor();
      assertThat(text(visit)).contains("do not know of this choice yet", "Salt");
      visit.assertAccessible();
      visit.expectRefusal();
    }
  }

  @Test
  void anAddressWithChoicesShowsThemAgainEvenAWrongOne(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/label/seeded-lupin-bun@1?regions=us&reference=45+g&energy=foods");
      assertThat(visit.at("#label-reference-own").inputValue()).isEqualTo("45 g");
      assertThat(visit.at("#label-energy").inputValue()).isEqualTo("foods");
      assertThat(text(visit)).contains("of the reference amount of 45 g");
      visit.to("/label/seeded-lupin-bun@1?loss=120").expectRefusal();
      assertThat(visit.at("#label-loss-problem").innerText()).contains("below 100 %");
      assertThat(text(visit)).contains("An aid for development", "Total carbohydrate");
      visit.to("/label/no-such-bun").expectRefusal();
      assertThat(text(visit)).contains("There is no formula");
    }
  }

  private static Locator.WaitForOptions gone() {
    return new Locator.WaitForOptions()
        .setState(WaitForSelectorState.DETACHED);
  }
}
