package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ForcedColors;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people are used to: units, colours, keys, paper, a phone beside the bowl. */
@ExtendWith(Chromium.class)
class HabitsPagesTest {
  private static final String BUN = "/formulas/seeded-lupin-bun?a=1&b=2";
  private static final String SHEET = "/worksheet/seeded-lupin-bun@2";
  private static final String TRAY = "/bakes/seeded-lupin-bun/2026-03-04-1";
  private static final String IN_OUNCES =
      "localStorage.setItem('ovenmark.preferences',"
          + " JSON.stringify({mass: 'oz', temperature: 'F'}))";
  private static final Pattern GRAMS_AFTER_ARROW = Pattern.compile("→ [\\d.]+ g \\(");

  @Test
  void everyPageStatesMassesAndTemperaturesAsPreferredAndNothingStoredChanges(Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::create)) {
      Map<String, byte[]> before = stored(bench.folder());
      try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
        visit.to("/preferences");
        visit.at("input[name=mass][value=oz]").check();
        visit.at("input[name=temperature][value=F]").check();
        assertThat(visit.at(".sample").innerText()).contains("3.34 oz", "374 °F");

        String formula = visit.to(BUN).text().replace('\u00a0', ' ');
        assertThat(formula).contains("Water up 0.353 oz", "7.41", "(+0.353 oz)", ", oz");
        assertThat(GRAMS_AFTER_ARROW.matcher(formula).find()).isFalse();

        String sheet = visit.to(SHEET).text();
        assertThat(sheet).contains("Ounces", "7.76", "220", "374 °F, 27 min");
        assertThat(sheet).contains("Rest 15 min.");

        assertThat(visit.to(TRAY).text()).contains("Dough, oz", "374 °F").doesNotContain("190 °C");
        visit.to("/preferences");
        visit.at("input[name=mass][value=g]").check();
        visit.at("input[name=temperature][value=C]").check();
        assertThat(visit.to(BUN).text().replace('\u00a0', ' '))
            .contains("Water up 10 g")
            .doesNotContain(" oz");
      }
      Map<String, byte[]> after = stored(bench.folder());
      assertThat(after.keySet()).isEqualTo(before.keySet());
      before.forEach((file, bytes) -> assertThat(after.get(file)).as(file).isEqualTo(bytes));
    }
  }

  /** All files of the notebook and its branches, without what is worked out from them. */
  private static Map<String, byte[]> stored(Path folder) {
    Map<String, byte[]> stored = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString();
        if (!name.startsWith(".git/ovenmark")) {
          stored.put(name, Files.readAllBytes(file));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return stored;
  }

  @Test
  void unitsThatWereNeverChosenAreThoseOfTheNotebook(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit
          .page()
          .route(
              "**/api/notebook/line*",
              route -> {
                String list = route.fetch().text().replace("\"mass_unit\":\"g\"", OUNCES);
                route.fulfill(
                    new Route.FulfillOptions().setContentType("application/json").setBody(list));
              });
      visit.to(SHEET);
      visit.at(".weigh th:text('Ounces')").waitFor();
      visit.to("/preferences");
      assertThat(visit.at("input[name=mass][value=oz]").isChecked()).isTrue();
      visit.at("input[name=mass][value=g]").check();
      visit.to(SHEET);
      assertThat(visit.at(".weigh").innerText()).doesNotContain("Ounces");
    }
  }

  private static final String OUNCES = "\"mass_unit\":\"oz\"";

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void preferencesAndPhoneAreAccessibleAndFit(int width, Browser browser) {
    for (ColorScheme colours : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      try (Visit visit = Visit.open(RunningBench.FULL, browser, width, colours)) {
        for (String path : List.of("/preferences", "/phone")) {
          visit.to(path);
          visit.assertAccessible();
          visit.assertFits();
        }
      }
    }
  }

  @Test
  void coloursAreThoseOfTheSystemOrTheChosenOnesFromTheFirstMoment(Browser browser) {
    try (Visit visit =
        Visit.open(RunningBench.FULL, browser, Visit.DESK, ColorScheme.DARK)) {
      visit.to("/preferences");
      assertThat(colours(visit)).isEqualTo("dark");
      visit.at("input[name=colours][value=light]").check();
      assertThat(colours(visit)).isEqualTo("light");
      visit.assertContrast();
      visit.to(BUN);
      assertThat(colours(visit)).isEqualTo("light");
      visit.assertContrast();
      visit.to("/preferences");
      visit.at("input[name=colours][value=system]").check();
      assertThat(colours(visit)).isEqualTo("dark");
    }
  }

  private static Object colours(Visit visit) {
    return visit.page().evaluate("document.documentElement.dataset.colours");
  }

  @Test
  void keysLeadAboutAreListedAndCanBeSwitchedOff(Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to(BUN);
      press(visit, "?");
      visit.at("dialog[open]").waitFor();
      assertThat(visit.at("dialog").innerText())
          .contains("On this page", "Swap A and B", "On every page", "Go to Pantry", "Search");
      visit.assertAccessible();
      press(visit, "Escape");
      press(visit, "x");
      visit.settled();
      assertThat(visit.address()).contains("a=2").contains("b=1");
      press(visit, "g");
      visit.at("h1:text('Goals')").waitFor();
      press(visit, "/");
      visit.at("main input:focus").waitFor();
      visit.page().keyboard().type("pf");
      assertThat(visit.address()).startsWith("/search");

      visit.to("/preferences");
      visit.at("input[name=keys][value=off]").check();
      visit.at("h1").click();
      press(visit, "g");
      press(visit, "?");
      assertThat(visit.at("dialog").count()).isZero();
      assertThat(visit.address()).isEqualTo("/preferences");
      visit.at("#header button:text('Keys')").click();
      assertThat(visit.at("dialog").innerText()).contains("switched off");
    }
  }

  private static void press(Visit visit, String key) {
    visit.page().keyboard().press(key);
  }

  @Test
  void onAPhoneTheHeaderIsOneLineWithAMenu(Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, Visit.PHONE, ColorScheme.LIGHT)) {
      visit.to("/");
      Locator menu = visit.at("#header .menu");
      assertThat(visit.at("#menu").isVisible()).isFalse();
      menu.click();
      assertThat(menu.getAttribute("aria-expanded")).isEqualTo("true");
      assertThat(visit.at("#menu a").allInnerTexts())
          .containsExactly(
              "Formulas", "Search", "Pantry", "Goals", "Notebook", "Phone", "Preferences");
      for (Locator link : visit.at("#menu a").all()) {
        assertThat(link.boundingBox().height).isGreaterThanOrEqualTo(44);
      }
      visit.assertAccessible();
      visit.assertFits();
      press(visit, "Escape");
      assertThat(visit.at("#menu").isVisible()).isTrue();
      visit.at("#menu a").first().focus();
      press(visit, "Escape");
      assertThat(visit.at("#menu").isVisible()).isFalse();
      assertThat(visit.at(".menu:focus").count()).isEqualTo(1);
      menu.click();
      visit.at("#menu a:text('Goals')").click();
      visit.at("h1:text('Goals')").waitFor();
      assertThat(visit.at("#menu").isVisible()).isFalse();
    }
  }

  /** 200 % of 1440 pixels leave room for 720. */
  @Test
  void magnifiedTwiceEveryHabitStillFits(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.DESK / 2)) {
      for (String path : List.of("/", BUN, SHEET, TRAY, "/preferences", "/phone")) {
        visit.to(path).assertFits();
      }
    }
  }

  @Test
  void inColoursOfTheSystemsOwnBeforeIsHollowAndAfterIsFilled(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit
          .page()
          .emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
      visit.to(BUN);
      String background = "each => getComputedStyle(each).backgroundColor";
      Object hollow = visit.at(".between .side-mark.from").first().evaluate(background);
      Object filled = visit.at(".between .side-mark.to").first().evaluate(background);
      assertThat(filled).isNotEqualTo(hollow);
      String fill = "each => getComputedStyle(each).fill";
      assertThat(visit.at(".dot-line .dot.to").first().evaluate(fill))
          .isNotEqualTo(visit.at(".dot-line .dot.from").first().evaluate(fill));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatIsTickedAtTheBenchSurvivesAReloadAndBelongsToItsContent(int width, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.FULL, browser, width, ColorScheme.LIGHT)) {
      visit.to(SHEET);
      visit.at(".weigh .box").first().click();
      visit.at(".method-steps .box").first().click();
      assertThat(visit.at(".ticked").innerText()).contains("2 of 11 ticked");
      visit.assertAccessible();
      visit.assertFits();
      visit.to(SHEET);
      assertThat(visit.at(".weigh input").first().isChecked()).isTrue();
      assertThat(visit.at(".weigh input").nth(1).isChecked()).isFalse();
      visit.to("/worksheet/seeded-lupin-bun@1");
      assertThat(visit.at(".weigh input").first().isChecked()).isFalse();
      visit.to(SHEET);
      visit.at("button:text('Start again')").click();
      assertThat(visit.at(".weigh input").first().isChecked()).isFalse();
      visit.at("button:text('Bring them back')").click();
      assertThat(visit.at(".weigh input").first().isChecked()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void onPaperTheBenchGetsOnePageInEitherUnit(String format, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/");
      for (String units : List.of("localStorage.clear()", IN_OUNCES)) {
        visit.page().evaluate(units);
        visit.to(SHEET);
        byte[] pdf = visit.page().pdf(new Page.PdfOptions().setFormat(format));
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        assertThat(Pattern.compile("/Type\\s*/Page[^s]").matcher(text).results()).hasSize(1);
      }
    }
  }

  @Test
  void paperHasWhatIsFilledInByHandAndTheScreenHasNot(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(SHEET);
      Locator byHand = visit.at(".by-hand table");
      assertThat(byHand.isVisible()).isFalse();
      visit.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(byHand.isVisible()).isTrue();
      assertThat(byHand.locator("thead th").allInnerTexts())
          .containsExactly(
              "Piece",
              "Oven, °C",
              "Time, min",
              "Dough, g",
              "Baked, g",
              "Width, mm",
              "Height, mm",
              "Core, °C",
              "Seen, tasted");
      assertThat(byHand.locator("tbody tr").count()).isEqualTo(6);
      assertThat(visit.at(".macros").isVisible()).isFalse();
      visit.page().evaluate("document.documentElement.dataset.print = 'figures'");
      assertThat(visit.at(".macros").isVisible()).isTrue();
      assertThat(byHand.isVisible()).isFalse();
    }
  }

  @Test
  void aViewerThatIsGoneIsToldQuietlyAndThePageGoesOnWhenItIsBack(Browser browser) {
    try (OwnBench bench = OwnBench.with(BenchNotebook::empty);
        Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to("/");
      bench.stop();
      visit.at("#menu a:text('Goals')").click();
      visit.at("#answering .notice").waitFor();
      assertThat(visit.text()).contains("The viewer does not answer", "still here");
      visit.assertAccessible();
      bench.startAgain();
      visit.at("#answering .notice").waitFor(gone());
      visit.at("h1:text('Goals')").waitFor();
      visit.expectRefusal();
    }
  }

  private static Locator.WaitForOptions gone() {
    return new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED);
  }

  @Test
  void noPageAsksAnythingOfAnotherMachine(Browser browser) {
    Viewer viewer = RunningBench.FULL.viewer();
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      List<String> elsewhere = new ArrayList<>();
      visit
          .page()
          .route(
              address -> !address.startsWith(viewer.address().toString()),
              route -> {
                elsewhere.add(route.request().url());
                route.abort();
              });
      for (String path :
          List.of(
              "/", "/begin", "/search", "/pantry", "/goals", "/notebook", "/phone", "/preferences",
              BUN, SHEET, TRAY, "/nowhere")) {
        visit.to(path);
        visit.expectRefusal();
      }
      assertThat(elsewhere).isEmpty();
    }
  }

  enum Ends {
    DONE,
    CANCELLED
  }

  @ParameterizedTest
  @EnumSource(Ends.class)
  void aLongTaskShowsHowFarItIsAndCanBeCancelled(Ends ends, Browser browser) {
    try (Visit visit = Visit.open(RunningBench.EMPTY, browser, Visit.PHONE, ColorScheme.LIGHT)) {
      visit.to("/");
      List<String> asked = new ArrayList<>();
      visit
          .page()
          .route(
              "**/api/task**",
              route -> {
                boolean cancel = route.request().method().equals("POST");
                asked.add(cancel ? "cancel" : "ask");
                boolean cancelled = asked.contains("cancel");
                boolean done = ends == Ends.DONE && asked.size() > 2;
                String state = cancelled ? "cancelled" : done ? "done" : "running";
                route.fulfill(
                    new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(
                            "{\"task\":\"t\",\"words\":\"Reading\",\"state\":\"" + state
                                + "\",\"done\":30,\"total\":120,\"outcome\":{\"found\":7}}"));
              });
      visit.page().evaluate(TASK);
      if (ends == Ends.CANCELLED) {
        Locator bar = visit.at(".progress progress[value]");
        bar.waitFor();
        assertThat(visit.at(".progress").innerText()).contains("Reading", "25 %");
        assertThat(bar.getAttribute("max")).isEqualTo("120");
        visit.assertAccessible();
        visit.assertFits();
        visit.at(".progress button:text('Cancel')").click();
        visit.at("h1:text('Ended with null')").waitFor();
        assertThat(asked).contains("cancel");
      } else {
        visit.at("h1:text('Ended with {\"found\":7}')").waitFor();
        assertThat(asked).doesNotContain("cancel");
      }
    }
  }

  private static final String TASK =
      """
      async () => {
        const {render, html} = await import("/lib/lit-html/lit-html.js");
        const {progressView, followTask} = await import("/parts/progress.js");
        const content = document.getElementById("content");
        const away = new AbortController();
        const draw = (task) => render(
          html`<h1>Task</h1>${progressView({id: "t", ...task, cancel: () => away.abort()})}`,
          content);
        draw({words: "Reading"});
        const begun = {task: "t", state: "waiting", words: "Reading", done: 0, total: 0};
        followTask(begun, {changed: draw, signal: away.signal}).then((outcome) =>
          render(html`<h1>Ended with ${JSON.stringify(outcome)}</h1>`, content));
      }
      """;

  @Test
  void aPhoneIsPairedAndLetGoAgain(Browser browser, @TempDir Path folder) {
    try (LanBench bench = new LanBench(folder);
        BrowserContext context =
            browser.newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(Visit.PHONE, 844)
                    .setHasTouch(true)
                    .setBypassCSP(true));
        Visit desk = Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      Page phone = context.newPage();
      phone.navigate(bench.at("/"));
      assertThat(phone.url()).isEqualTo(bench.at("/pair"));
      assertThat(new AxeBuilder(phone).analyze().getViolations()).isEmpty();

      desk.to("/phone");
      desk.at("button:text('Make a new code')").click();
      desk.at(".matrix").waitFor();
      desk.assertAccessible();
      desk.assertFits();
      String code = desk.at("code.code").innerText();
      phone.locator("#code").fill(code.substring(0, 4) + "-ZZZZ");
      phone.locator("button").click();
      phone.locator("#problem:not(:empty)").waitFor();
      assertThat(phone.locator("#problem").innerText()).contains("not the code");

      phone.navigate(bench.at("/favicon.svg"));
      phone.navigate(bench.at("/pair#" + code));
      phone.locator("#name").fill("Ruben");
      assertThat(phone.url()).doesNotContain("#");
      phone.locator("button").click();
      phone.locator("main h1:text('Saltmarsh bench')").waitFor();
      assertThat((String) phone.evaluate("document.cookie")).isEmpty();

      desk.at(".devices b:text('Ruben')").waitFor();
      desk.at(".devices button").click();
      desk.at("dialog button:text('End the pairing')").click();
      desk.at("p:text('No phone is paired.')").waitFor();

      phone.locator(".menu").click();
      phone.locator("#menu a:text('Goals')").click();
      phone.locator("#answering .notice").waitFor();
      assertThat(phone.locator("#answering").innerText()).contains("no longer paired");
      assertThat(new AxeBuilder(phone).analyze().getViolations()).isEmpty();
      assertThat(bench.faults()).isEmpty();
    }
  }

  @Test
  void thePageCanBePutOnAHomeScreen(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.EMPTY, browser)) {
      visit.to("/");
      Object manifest =
          visit
              .page()
              .evaluate(
                  "async () => {"
                      + " const link = document.querySelector('link[rel=manifest]');"
                      + " const manifest = await (await fetch(link.href)).json();"
                      + " const sizes = await Promise.all(manifest.icons.map(async (icon) => {"
                      + "   const image = new Image(); image.src = icon.src; await image.decode();"
                      + "   return image.naturalWidth + ' ' + icon.sizes + ' ' + icon.purpose;"
                      + " }));"
                      + " return [manifest.display, manifest.start_url, ...sizes.slice(1)]; }");
      assertThat(manifest)
          .isEqualTo(
              List.of(
                  "standalone",
                  "/",
                  "192 192x192 any",
                  "512 512x512 any",
                  "512 512x512 maskable"));
    }
  }
}
