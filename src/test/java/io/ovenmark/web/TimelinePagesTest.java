package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class TimelinePagesTest {
  private static final String BUN = "/formulas/seeded-lupin-bun";
  private static final String LONG = "/formulas/long-bun";
  private static final int MOST_ROWS = 60;
  private static final String TWO_FRAMES =
      "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))";

  /** On a phone the timeline is folded at first. Its rows are measured once they are in view. */
  private static void unfold(Visit visit, int width) {
    if (width == Visit.PHONE) {
      visit.at(".spine > summary").click();
    }
    visit.at("li.revision").first().waitFor();
    visit.page().evaluate(TWO_FRAMES);
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void rowsAreMadeWhenTheyComeIntoView(int width, Browser browser) {
    try (OwnBench bench = OwnBench.with(LongNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT)) {
      visit.to(LONG);
      unfold(visit, width);
      visit.at("li.revision").nth(2).waitFor();
      assertThat(visit.at("li.revision").count()).isLessThan(MOST_ROWS);
      Locator newest = visit.at("li.revision").first();
      assertThat(newest.getAttribute("aria-posinset")).isEqualTo("1");
      assertThat(newest.getAttribute("aria-setsize"))
          .isEqualTo(String.valueOf(LongNotebook.REVISIONS));
      visit.assertAccessible();
      visit.assertFits();
      visit.page()
          .evaluate(
              "async () => { for (let i = 0; i < 3; i++) {"
                  + " document.querySelector('revision-list').scrollIntoView({block: 'end'});"
                  + " await new Promise(requestAnimationFrame); } }");
      Locator first = visit.at("li.revision:has(input[value='long-bun@2'])");
      first.locator(".changes").waitFor();
      assertThat(first.innerText().replace('\u00a0', ' ')).contains("Water 101 g → 102 g");
      assertThat(visit.at("li.revision").count()).isLessThan(MOST_ROWS);
      visit.assertAccessible();
    }
  }

  @Test
  void aPinGoesByKeysAndByDraggingToRowsThatWereNotThere(Browser browser) {
    try (OwnBench bench = OwnBench.with(LongNotebook::create);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to(LONG);
      Page page = visit.page();
      visit.at("input[name='pin-from']:checked").focus();
      page.keyboard().press("PageDown");
      page.waitForURL("**?a=629&b=640");
      page.keyboard().press("End");
      page.waitForURL("**?a=1&b=640");
      assertThat(focused(page)).isEqualTo("long-bun@1");
      page.keyboard().press("ArrowUp");
      page.waitForURL("**?a=2&b=640");
      page.keyboard().press("Home");
      page.waitForURL("**?a=640&b=640");
      page.keyboard().press("ArrowUp");
      page.waitForURL("**?a=1&b=640");
      visit.settled();
      BoundingBox pin = visit.at(".pin.from:has(input:checked)").boundingBox();
      page.mouse().move(pin.x + 8, pin.y + 8);
      page.mouse().down();
      page.mouse().move(pin.x + 8, 60);
      page.mouse().move(pin.x + 8, 6);
      page.waitForURL(Pattern.compile(".*a=[3-9]\\d&b=640"));
      page.mouse().up();
      visit.settled();
      String address = visit.address();
      assertThat(visit.at("input[name='pin-from']:checked").inputValue())
          .isEqualTo("long-bun@" + address.replaceAll(".*a=(\\d+)&.*", "$1"));
    }
  }

  private static String focused(Page page) {
    return (String) page.evaluate("document.activeElement.value");
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void theTimelineIsFilteredAndItsAddressKeepsTheFilter(int width, Browser browser) {
    try (Visit visit =
        Visit.open(RunningBench.FULL, browser, width, ColorScheme.LIGHT)) {
      visit.to(BUN);
      unfold(visit, width);
      visit.at(".timeline-filter summary").click();
      visit.at("#filter-ingredient").fill("sunflower");
      visit.page().waitForURL("**ingredient=sunflower**");
      visit.settled();
      assertThat(visit.at(".filter-count").innerText()).isEqualTo("3 of 7 revisions");
      visit.assertAccessible();
      visit.assertFits();
      visit.page().reload();
      visit.settled();
      unfold(visit, width);
      assertThat(addresses(visit))
          .containsExactly("seeded-lupin-bun@5", "seeded-lupin-bun@4", "seeded-lupin-bun@1");
      visit.at("a:text('Show all revisions')").click();
      visit.page().waitForURL(Pattern.compile("[^?]*(\\?a=4&b=5)?"));
      visit.settled();
      assertThat(visit.at(".filter-count").innerText()).isEmpty();
    }
  }

  private static List<String> addresses(Visit visit) {
    return visit.at("li.revision input[name='pin-to']").all().stream()
        .map(Locator::inputValue)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "finding=gummy crumb, 2",
    "finding=even, 5 3",
    "kind=published, 5",
    "kind=restored, 5",
    "kind=oven, 3",
    "kind=method, 3",
    "kind=baked, 5 3 2",
    "q=tore, 2",
    "q=smells SEA, 5 3",
    "person=ines, 5 4 egg-free@5 egg-free@4 3 2 1",
    "since=2026-04-01, ''"
  })
  void aFilterInTheAddressLeavesWhatFits(String query, String expected, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?" + query.replace(" ", "+"));
      assertThat(
              String.join(" ", addresses(visit))
                  .replace("seeded-lupin-bun@", "")
                  .replace("seeded-lupin-bun/", ""))
          .isEqualTo(expected);
    }
  }

  @Test
  void aFilterThatCannotBeReadSaysSo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?since=soon").expectRefusal();
      assertThat(visit.text()).contains("\"soon\" is not a day.");
      assertThat(addresses(visit)).hasSize(7);
    }
  }

  @Test
  void aBakeWithAPhotoShowsIt(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN);
      Locator image = visit.at("img.thumbnail").first();
      image.scrollIntoViewIfNeeded();
      assertThat(image.getAttribute("loading")).isEqualTo("lazy");
      assertThat(image.getAttribute("alt")).isEqualTo("Two buns");
      visit.page().waitForFunction(
          "document.querySelector('img.thumbnail').naturalWidth > 0");
      assertThat(visit.at(".trays svg.tray").count()).isPositive();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void anyFigureCanBeChartedReadByKeysAndFromATable(int width, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, ColorScheme.DARK)) {
      visit.to(BUN + "?a=2&b=3");
      visit.at("select[aria-label='Figure of chart 1']").selectOption("mean_loss_percent");
      visit.page().waitForURL("**trends=mean_loss_percent,**");
      visit.settled();
      String caption = visit.at(".trend figcaption").first().innerText();
      assertThat(caption).contains("11.2 % (n 1)", "was 10.5 % (n 2)");
      assertThat(visit.at(".trend .dot.from").count()).isPositive();
      assertThat(visit.at(".trend .dot.to").count()).isPositive();
      assertThat(visit.at(".trend .goal-zone").count()).isEqualTo(1);
      Locator plot = visit.at(".plot").first();
      plot.focus();
      visit.page().keyboard().press("Home");
      assertThat(plot.getAttribute("aria-valuetext")).isEqualTo("1: not baked");
      visit.page().keyboard().press("ArrowRight");
      assertThat(visit.at(".reading").innerText()).startsWith("2: 10.5 %");
      visit.at(".behind summary").click();
      visit.at(".behind tbody tr").first().waitFor();
      assertThat(visit.at(".behind thead").innerText()).contains("Mean loss on baking");
      assertThat(visit.at(".behind tbody tr").count()).isEqualTo(5);
      visit.assertAccessible();
      visit.assertFits();
      visit.page().reload();
      visit.settled();
      assertThat(visit.at(".trend figcaption").first().innerText()).isEqualTo(caption);
    }
  }

  @Test
  void aPinOnAnotherLineIsChartedToo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=../wheat-bun@1&b=egg-free@5");
      assertThat(visit.at(".trend strong").first().innerText()).matches("[0-9.]+|at .*");
      assertThat(visit.at(".trend .was").first().innerText()).matches("was [0-9.]+.*");
    }
  }
}
