package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class SearchPagesTest {
  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void wordsAreFoundMarkedAndLeadToTheirPages(int width, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, ColorScheme.LIGHT)) {
      visit.to("/search");
      assertThat(visit.text()).contains("also what an old method said");
      visit.assertAccessible();
      visit.at("#search-words").pressSequentially("stir wat");
      visit.page().waitForURL("**/search?q=stir+wat");
      visit.at("mark").first().waitFor();
      assertThat(visit.at("mark").allTextContents()).contains("Stir", "water");
      assertThat(visit.at(".found h2").first().innerText()).isEqualTo("Seeded lupin bun");
      assertThat(visit.at(".found-count").innerText()).contains(" in 1 formula");
      assertThat(visit.at("#search-words").inputValue()).isEqualTo("stir wat");
      visit.assertAccessible();
      visit.assertFits();
      visit.at(".hit a:text('Revision 1')").click();
      visit.page().waitForURL("**/worksheet/seeded-lupin-bun@1");
      visit.settled();
      visit.page().goBack();
      visit.page().waitForURL("**/search?q=stir+wat");
      visit.settled();
      assertThat(visit.at("mark").count()).isPositive();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatWasFoundIsNarrowedByClickingWords(int width, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, ColorScheme.DARK)) {
      visit.to("/search?q=crumb");
      visit.at(".search-narrow a:text-is('gummy crumb')").click();
      visit.page().waitForURL("**/search?q=crumb&finding=gummy+crumb");
      visit.settled();
      assertThat(visit.at(".found-count").innerText()).isEqualTo("1 revision or bake in 1 formula");
      assertThat(visit.at(".search-findings mark").allTextContents()).contains("gummy crumb");
      assertThat(visit.at(".stated").innerText()).contains("finding: gummy crumb");
      visit.assertAccessible();
      visit.assertFits();
      visit.at(".stated a").first().click();
      visit.page().waitForURL("**/search?q=crumb");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "ingredient=sunflower-seeds, Sunflower seed kernels 25 g → 50 g",
    "q=σησαμενια, Σησαμένια τραγανά",
    "q=script, <script>alert(2)</script>",
    "q=two+buns, Caption Two buns",
    "q=still+damp, Verdict still damp",
    "q=unheard, Nothing fits.",
    "since=soon, is not a day.",
    "formula=no-bun&q=x, There is no formula",
    "kind=published, The file"
  })
  void theAddressSaysWhatIsSearched(String query, String expected, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/search?" + query).expectRefusal();
      String text = visit.text().replace('\u00a0', ' ').replaceAll("\\s+", " ");
      assertThat(text).contains(expected.equals("The file") ? "revision or bake" : expected);
    }
  }

  @Test
  void aLongHistoryIsReadWhenItIsSearchedFirst(Browser browser) {
    try (OwnBench bench = OwnBench.with(LongNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to("/search?q=640");
      visit.at(".found-count:text('1 revision or bake')").waitFor();
      visit.at(".progress, .notice-line").waitFor(hidden());
      visit.to("/search?ingredient=water");
      assertThat(visit.at(".found-count").innerText()).startsWith("640 revisions and bakes");
      assertThat(visit.at(".found h2 ~ p").innerText()).isEqualTo("All 640 in Long bun");
      visit.at(".found h2 ~ p a").click();
      visit.page().waitForURL("**/search?ingredient=water&formula=long-bun");
      visit.settled();
      assertThat(visit.at(".found li").count()).isEqualTo(200);
      assertThat(bench.faults()).isEmpty();
    }
  }

  @Test
  void theReadingOfALongHistoryShowsItsProgressAndCanBeCancelled(Browser browser) {
    try (OwnBench bench = OwnBench.with(LongNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.PHONE, ColorScheme.LIGHT)) {
      List<String> cancelled = new CopyOnWriteArrayList<>();
      visit.page()
          .onRequest(
              request -> {
                if (request.url().contains("/api/task/cancel")) {
                  cancelled.add(request.postData());
                }
              });
      visit.page()
          .route(
              url -> url.contains("/api/task?") || url.contains("/api/task/cancel"),
              route ->
                  route.fulfill(
                      new Route.FulfillOptions()
                          .setContentType("application/json")
                          .setBody(cancelled.isEmpty() ? task("running") : task("cancelled"))));
      visit.to("/search?q=640");
      visit.at("progress[value='160']").waitFor();
      assertThat(visit.at(".progress").innerText()).contains("25 %");
      visit.assertAccessible();
      visit.assertFits();
      visit.at(".progress button").click();
      visit.at(".progress").waitFor(hidden());
      assertThat(cancelled).hasSize(1);
      assertThat(visit.at("h1").innerText()).isEqualTo("Search");
    }
  }

  /** How a task stands that is a quarter done. */
  private static String task(String state) {
    return "{\"task\": \"t\", \"words\": \"Reading\", \"state\": \""
        + state
        + "\", \"done\": 160, \"total\": 640, \"outcome\": null, \"failure\": null}";
  }

  private static Locator.WaitForOptions hidden() {
    return new Locator.WaitForOptions()
        .setState(WaitForSelectorState.HIDDEN);
  }
}
