package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.FrameLocator;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class CardPagesTest {
  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void choicesShowAtOnceInThePreviewAndTheTexts(int width, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, ColorScheme.LIGHT)) {
      visit.to("/card/seeded-lupin-bun");
      FrameLocator frame = visit.page().frameLocator(".card-frame");
      frame.locator("h1").waitFor();
      assertThat(frame.locator("h1").innerText()).isEqualTo("Seeded lupin bun");
      assertThat(frame.locator("body").innerText()).contains("To mind", "71\u00a0°C");
      visit.assertAccessible();
      visit.assertFits();

      visit.at("#card-masses").selectOption("oz");
      visit.page().waitForURL("**masses=oz**");
      visit.settled();
      frame.locator(".mass:has-text('oz')").first().waitFor();
      visit.at("#card-more").fill("Ask each guest.");
      visit.page().waitForURL("**more=Ask**");
      visit.settled();
      frame.locator("li:text('Ask each guest.')").waitFor();
      visit.at("#card-word-egg").fill("Use a probe.");
      visit.page().waitForURL("**word=egg**");
      visit.settled();
      frame.locator("li:text('local food codes. Use a probe.')").waitFor();
      assertThat(visit.at("#card-more").inputValue()).isEqualTo("Ask each guest.");
      Download page =
          visit.page().waitForDownload(() -> visit.at("a:text-is('Download the page')").click());
      assertThat(page.suggestedFilename()).isEqualTo("seeded-lupin-bun-5.html");
      visit.at("input[value=json_ld]").check();
      assertThat(visit.at(".card-text").innerText()).contains("\"@type\": \"Recipe\"");
      visit.at("input[value=short]").check();
      assertThat(visit.at(".card-texts").innerText()).contains("of 1500 signs");
      visit.assertAccessible();
      visit.assertFits();
    }
  }
}
