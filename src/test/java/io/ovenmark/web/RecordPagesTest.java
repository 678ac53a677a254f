package io.ovenmark.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.desk.BakeDrafts;
import io.ovenmark.desk.ListBakes;
import io.ovenmark.desk.Views;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class RecordPagesTest {
  private static final String BUN = "seeded-lupin-bun";
  private static final String BAKE_PAGE = "**/bakes/seeded-lupin-bun/2026-05-20-*";

  /** Stands for the sound of the browser and counts the tones that it was asked for. */
  private static final String COUNT_TONES =
      """
      globalThis.tones = 0;
      Object.defineProperty(navigator, "userActivation", {value: {hasBeenActive: false}});
      const parameter = {setValueAtTime() {}, linearRampToValueAtTime() {}};
      globalThis.AudioContext = class {
        state = "running";
        currentTime = 0;
        resume() { return Promise.resolve(); }
        createGain() { return {gain: parameter, connect: (next) => next}; }
        createOscillator() {
          return {frequency: {}, connect: (next) => next, stop() {}, start() { tones += 1; }};
        }
      };
      """;

  private OwnBench bench;

  @BeforeEach
  void open() {
    bench = OwnBench.with(BenchNotebook::create);
  }

  @AfterEach
  void nothingIsWrongInside() {
    List<Throwable> faults = bench.faults();
    bench.close();
    assertThat(faults).isEmpty();
  }

  private Visit visit(Browser browser, int width) {
    return Visit.on(bench.viewer(), browser, width, ColorScheme.LIGHT);
  }

  private Views.BakeView newest() {
    List<Views.BakeView> bakes = new ListBakes(bench.desk()).call(BUN).bakes();
    return bakes.get(bakes.size() - 1);
  }

  /** On the phone one measure of all pieces is shown at a time. */
  private static void show(Visit visit, String group) {
    Locator choice = visit.at(".measure-groups label:has-text('" + group + "')");
    if (choice.isVisible()) {
      choice.click();
    }
  }

  private static void makePieces(Visit visit, String grid, int pieces) {
    visit.at("#grid").fill(grid);
    assertThat(visit.at(".grid-preview li")).hasCount(pieces);
    visit.at("#grid").press("Enter");
    assertThat(visit.at(".measure-table tbody tr")).hasCount(pieces);
  }

  private static void record(Visit visit) {
    visit.at("button:has-text('Record this bake')").click();
    visit.page().waitForURL(BAKE_PAGE);
    visit.settled();
  }

  @ParameterizedTest
  @CsvSource({"1440, LIGHT", "390, DARK"})
  void aTrayIsMeasuredAndSavedAndWhatWasNotMeasuredStaysUnknown(
      int width, ColorScheme colours, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/record/seeded-lupin-bun").assertFits();
      visit.assertAccessible();
      visit.at("#grid").fill("190-200 °C × 14 min");
      assertThat(visit.at("#grid-preview")).containsText("which values lie between");
      makePieces(visit, "190, 200 °C × 14, 16 min", 4);
      show(visit, "Dough");
      visit.at("#piece-a-dough").fill("95");
      visit.at("button.same:visible:has-text('95')").click();
      assertThat(visit.at("#piece-d-dough")).hasValue("95");
      show(visit, "Baked");
      assertThat(visit.at("tr:has(#piece-a-baked)")).containsText("unknown: no baked mass");
      visit.at("#piece-a-baked").fill("81.7");
      assertThat(visit.at("tr:has(#piece-a-baked)")).containsText("14 %");
      assertThat(visit.at(".baked-composition")).containsText("86 % of the dough is left");
      visit.at("#piece-b-core").fill("150 F");
      assertThat(visit.at(".results .caution"))
          .containsText("Below 71 °C (160 °F) in the centre, though made with egg: b");
      show(visit, "Size");
      visit.at("#piece-a-width").fill("9 cm");
      visit.at("#piece-a-height").fill("30");
      assertThat(visit.at("tr:has(#piece-a-width) .size.result")).containsText("3");
      visit.at(".crust-scale .step:has-text('golden')").click();
      visit.at("#piece-a-filter").fill("smells of the sea");
      visit.at("#piece-a-filter").press("Enter");
      visit.at(".looks .chip:has-text('even crumb')").click();
      visit.at(".liking-scale .step").nth(6).click();
      visit.at("text=Attributes, just about right").click();
      visit.at(".right-scale .step:has-text('too moist')").first().click();
      visit.at("#ambient").fill("22 °C, 55 % humidity");
      visit.assertFits();
      visit.assertAccessible();

      record(visit);

      assertThat(visit.at("#notices")).containsText("Recorded as 2026-05-20-1");
    }
    Views.BakeView bake = newest();
    Views.PieceView a = bake.pieces().get(0);
    assertThat(bake.address()).isEqualTo("seeded-lupin-bun@5");
    assertThat(bake.ambient()).isEqualTo("22 °C, 55 % humidity");
    assertThat(a.bakedG()).isEqualTo(81.7);
    assertThat(a.widthMm()).isEqualTo(90);
    assertThat(a.crustShade()).isEqualTo(2);
    assertThat(a.liking()).containsExactly(7.0);
    assertThat(a.findings())
        .extracting(Views.FindingView::word)
        .containsExactly("smells of the sea", "even crumb");
    assertThat(a.attributes()).containsExactly(new Views.AttributeView("moist", List.of(1.0)));
    Views.PieceView b = bake.pieces().get(1);
    assertThat(b.doughG()).isEqualTo(95);
    assertThat(b.core()).isEqualTo("150 °F");
    assertThat(b.bakedG()).isNull();
    assertThat(b.lossPercent()).isNull();
    assertThat(b.liking()).isEmpty();
    assertThat(new BakeDrafts(bench.desk()).of(BUN)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void timersRunOnWhileThePageIsReloadedOrClosed(int width, Browser browser) {
    try (Visit visit = visit(browser, width)) {
      Page page = visit.page();
      page.addInitScript(COUNT_TONES);
      page.clock().install(new Clock.InstallOptions().setTime("2026-05-20T09:00:00"));
      visit.to("/record/seeded-lupin-bun");
      makePieces(visit, "190 °C × 10, 20, 30 min", 3);
      visit.at("button:has-text('Start all')").click();
      page.clock().fastForward("04:00");
      assertThat(visit.at(".timer-left").first()).hasText(Pattern.compile("[56]:\\d\\d"));
      visit.at("[aria-label='Pause, b']").click();
      visit.at("[aria-label='+1 min, c']").click();
      assertThat(page).hasTitle(Pattern.compile("a [56]:\\d\\d · Record a bake.*"));
      page.waitForURL("**/record/**draft=*");
      assertThat(visit.at(".record-bar")).containsText("Kept,");

      page.reload();
      visit.settled();
      assertThat(visit.at(".timer.paused .timer-left")).hasText(Pattern.compile("1[56]:\\d\\d"));
      assertThat(visit.at(".timer").nth(2).locator(".timer-left"))
          .hasText(Pattern.compile("2[67]:\\d\\d"));
      page.clock().fastForward("06:30");
      assertThat(visit.at(".timer-due")).hasText("a: take out");
      assertThat(page).hasTitle(Pattern.compile("a: take out · .*"));
      assertThat(visit.at(".timer-sound")).isVisible();
      visit.assertAccessible();
      visit.assertFits();
      visit.at("text=Turn the sound on").click();
      page.waitForFunction("tones > 0");

      String address = visit.address();
      page.navigate(bench.viewer().address() + "preferences");
      visit.settled();
      page.clock().fastForward("03:00");
      assertThat(visit.at("#notices")).containsText("a: take out");
      visit.to(address);
      assertThat(visit.at(".timer.due")).containsText(Pattern.compile("was due [34] min ago"));
      visit.at("[aria-label='Take out, a']").click();
      visit.at("button:has-text('Note 13'), button:has-text('Note 14')").click();
      record(visit);
    }
    Views.BakeView bake = newest();
    assertThat(bake.pieces().get(0).minutes()).isBetween(13.4, 14.9);
    assertThat(bake.pieces().get(1).minutes()).isEqualTo(20);
    assertThat(bake.time()).startsWith("2026-05-20T09:00");
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatWasTypedOnTheOneDeviceIsGoneOnWithOnTheOther(int width, Browser browser) {
    try (Visit phone = visit(browser, Visit.PHONE);
        Visit other = visit(browser, width)) {
      phone.to("/record/seeded-lupin-bun");
      makePieces(phone, "375, 400 F x 14 min", 2);
      phone.page().waitForURL("**/record/**draft=*");
      assertThat(phone.at(".record-bar")).containsText("Kept,");

      other.to("/formulas/seeded-lupin-bun");
      assertThat(other.at(".unfinished")).containsText("A bake of 5, 2 pieces");
      other.at(".unfinished >> text=Go on").click();
      other.settled();
      assertThat(other.at("#piece-a-temperature")).hasValue("375 °F");
      show(other, "Dough");
      other.at("#piece-a-dough").fill("3.4 oz");
      phone.at("#note").fill("from the phone");
      assertThat(phone.at(".record-bar .kept")).containsText("Kept,");
      other.at("#piece-b-dough").fill("3.3 oz");
      phone.page().evaluate("dispatchEvent(new Event('focus'))");
      assertThat(other.at(".record-bar .kept")).containsText("Kept,");
      assertThat(other.at("#note")).hasValue("from the phone");
      record(other);
    }
    Views.BakeView bake = newest();
    assertThat(bake.note()).isEqualTo("from the phone");
    assertThat(bake.pieces().get(0).temperature()).isEqualTo("375 °F");
    assertThat(bake.pieces().get(0).doughG()).isEqualTo(3.4 * 28.349523125, within(1e-9));
  }

  @Test
  void aViewerThatEndsAndComesBackLosesNothing(Browser browser) {
    try (Visit visit = visit(browser, Visit.PHONE)) {
      visit.to("/record/seeded-lupin-bun");
      makePieces(visit, "190 °C × 14 min", 1);
      visit.page().waitForURL("**/record/**draft=*");
      bench.stop();
      visit.at("#note").fill("typed while it was away");
      assertThat(visit.at(".record-bar .kept")).containsText("Kept in this browser");
      visit.at("button:has-text('Record this bake')").click();
      assertThat(visit.at(".record-bar")).containsText("not recorded yet");
      bench.startAgain();
      visit.page().reload();
      visit.settled();
      assertThat(visit.at("#note")).hasValue("typed while it was away");
      visit.expectRefusal();
      record(visit);
    }
    assertThat(newest().note()).isEqualTo("typed while it was away");
  }

  @Test
  void anOlderRevisionOrAVariantCanBeChosen(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK)) {
      visit.to("/record/seeded-lupin-bun@2");
      assertThat(visit.at("#revision")).hasValue("seeded-lupin-bun@2");
      visit.at("button:has-text('Add one piece')").click();
      visit.at("#piece-a-dough").fill("90");
      visit.at("text=Units of these fields").click();
      visit.at("#form-mass").selectOption("oz");
      assertThat(visit.at("#piece-a-dough")).hasValue("90 g");
      visit.at("#revision").selectOption("seeded-lupin-bun/egg-free@5");
      visit.page().waitForURL("**/record/seeded-lupin-bun/egg-free@5?draft=*");
      visit.settled();
      assertThat(visit.at("#piece-a-dough")).hasValue("90 g");
      record(visit);
      assertThat(visit.at("h1")).containsText("20 May 2026");
    }
    assertThat(newest().address()).isEqualTo("seeded-lupin-bun/egg-free@5");
    assertThat(newest().pieces().get(0).doughG()).isEqualTo(90);
  }

  @Test
  void aFieldThatIsNotUnderstoodIsSaidAndGetsTheFocus(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK)) {
      visit.to("/record/seeded-lupin-bun");
      visit.at("button:has-text('Add one piece')").click();
      visit.at("#piece-a-baked").fill("ninety");
      assertThat(visit.at("#piece-a-baked-problem")).containsText("Write it as in 95 or 3.4 oz");
      visit.at("button:has-text('Record this bake')").click();
      assertThat(visit.at(".record-bar [role=alert]")).containsText("\"ninety\"");
      assertThat(visit.at("#piece-a-baked")).isFocused();
      visit.assertAccessible();
      visit.at("button[aria-label='Take piece a away']").click();
      visit.at("text=Bring it back").click();
      assertThat(visit.at("#piece-a-baked")).hasValue("ninety");
      visit.expectRefusal();
    }
    assertThat(new ListBakes(bench.desk()).call(BUN).bakes()).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void twoTabsThatChangeTheSameBakeAreJoinedOrChosenFrom(int width, Browser browser) {
    String path = "/bakes/seeded-lupin-bun/2026-03-09-1";
    try (Visit one = visit(browser, width);
        Visit two = visit(browser, Visit.DESK)) {
      one.to(path).at("text=Change this bake").click();
      two.to(path).at("text=Change this bake").click();
      two.at("#piece-b-baked").fill("83");
      two.at("#note").fill("cut warm");
      two.at("button:has-text('Save the changes')").click();
      assertThat(two.at("#notices")).containsText("The changes are saved");

      show(one, "Baked");
      one.at("#piece-b-baked").fill("84");
      one.at("#piece-a-baked").fill("");
      one.at("#ambient").fill("");
      one.assertFits();
      one.at("button:has-text('Save the changes')").click();
      assertThat(one.at(".caution h2")).containsText("Somebody changed this bake meanwhile");
      one.assertAccessible();
      one.at(".conflict label:has-text('84')").click();
      one.at("text=Save with these choices").click();
      assertThat(one.at("#notices")).containsText("joined with what somebody else changed");
      assertThat(one.at(".piece-table")).isVisible();
    }
    Views.BakeView bake = newest();
    assertThat(bake.pieces().get(1).bakedG()).isEqualTo(84);
    assertThat(bake.pieces().get(0).bakedG()).isNull();
    assertThat(bake.pieces().get(0).doughG()).isEqualTo(94.6);
    assertThat(bake.note()).isEqualTo("cut warm");
    assertThat(bake.ambient()).isNull();
    assertThat(new BakeDrafts(bench.desk()).of(BUN)).isEmpty();
  }

  @Test
  void changesOfABakeSurviveAReload(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK)) {
      visit.to("/bakes/seeded-lupin-bun/2026-03-09-1").at("text=Change this bake").click();
      visit.at("#piece-c-width").fill("90");
      visit.page().reload();
      visit.settled();
      assertThat(visit.at("#piece-c-width")).hasValue("90");
      visit.page().waitForURL("**edit=*");
      visit.at("text=Leave it as it was").click();
      visit.at("text=Throw the changes away").click();
      assertThat(visit.at("text=Change this bake").first()).isVisible();
    }
    assertThat(newest().pieces().get(2).widthMm()).isNull();
  }

  @Test
  void theWholeJobIsDoneByKeyboard(Browser browser) {
    try (Visit visit = visit(browser, Visit.DESK)) {
      visit.to("/record/seeded-lupin-bun");
      Page page = visit.page();
      tabTo(page, "grid");
      page.keyboard().type("190 C x 14, 16 min");
      page.keyboard().press("Enter");
      visit.at(".measure-table").waitFor();
      tabTo(page, "piece-a-dough");
      page.keyboard().type("95");
      page.keyboard().press("Enter");
      page.keyboard().type("96");
      page.keyboard().press("ArrowUp");
      tabTo(page, "tray-filter");
      page.keyboard().type("pale");
      page.keyboard().press("Enter");
      tabTo(page, "note");
      page.keyboard().type("by keys");
      tabTo(page, "record");
      page.keyboard().press("Enter");
      page.waitForURL(BAKE_PAGE);
    }
    Views.BakeView bake = newest();
    assertThat(bake.pieces()).extracting(Views.PieceView::doughG).containsExactly(95.0, 97.0);
    assertThat(bake.findings()).containsExactly("pale");
    assertThat(bake.note()).isEqualTo("by keys");
  }

  private static void tabTo(Page page, String id) {
    for (int i = 0; i < 120; i++) {
      page.keyboard().press("Tab");
      if (id.equals(page.evaluate("document.activeElement.id"))) {
        return;
      }
    }
    throw new AssertionError("the focus never came to " + id);
  }
}
