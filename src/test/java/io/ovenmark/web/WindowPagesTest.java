package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import io.ovenmark.bake.PieceText;
import io.ovenmark.desk.ListBakes;
import io.ovenmark.desk.RecordBake;
import io.ovenmark.desk.Views;
import io.ovenmark.notebook.Address;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(Chromium.class)
class WindowPagesTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");
  private static final String PAGE = "/window/seeded-lupin-bun";

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

  private void bakeTray() {
    RecordBake.Request request =
        RecordBake.Request.of(BUN, RunningBench.by().time())
            .withPieces(
                PieceText.read(
                    List.of(),
                    List.of(
                        "a 190C 20min core=90C crust=0.9 finding='gummy crumb' log='5min 40C'",
                        "b 190C 25min core=95C crust=1.6 finding='even crumb'",
                        "c 190C 30min core=98C crust=2.1 finding=dry",
                        "d 205C 16min core=90C crust=1.5 finding='gummy crumb'",
                        "e 205C 20min core=95C crust=2.2 finding='even crumb'",
                        "f 205C 25min core=98C crust=2.9 finding=dry")));
    new RecordBake(bench.desk()).call(request, RunningBench.by());
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void theMapShowsWhereItIsDoneAndWhatToBakeNext(int width, Browser browser) {
    bakeTray();
    ColorScheme colours = width == Visit.DESK ? ColorScheme.LIGHT : ColorScheme.DARK;
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to(PAGE);
      assertThat(visit.at(".window-piece").count()).isGreaterThanOrEqualTo(6);
      assertThat(visit.at(".window-words").allTextContents()).contains("gummy crumb", "dry");
      assertThat(visit.at(".window-chart svg").first().getAttribute("aria-label"))
          .contains("6 pieces");
      assertThat(visit.at(".window-next-bakes li").count()).isBetween(2, 3);
      visit.assertAccessible();
      visit.assertFits();
      visit.at("summary:text('The map as a table')").click();
      visit.at("summary:text('pieces as a table')").click();
      visit.assertAccessible();
      visit.assertFits();

      visit.at("#window-limit").fill("crust 1 to 2");
      visit.at("#window-limit").press("Enter");
      visit.at(".window-limits li b:text-is('crust 1 to 2')").waitFor();
      assertThat(visit.address()).contains("crust+1+to+2");
      visit.at("button[aria-label='Leave out: crust 1 to 2']").click();
      visit.at(".window-limits li b:text-is('crust 1 to 2')")
          .waitFor(
              new Locator.WaitForOptions()
                  .setState(WaitForSelectorState.DETACHED));
      visit.at("#window-limit").fill("nice");
      visit.at("#window-limit").press("Enter");
      visit.at("#window-limit-problem:not([hidden])").waitFor();
      visit.assertAccessible();
      visit.expectRefusal();
    }
  }

  /** One click; nothing but the settings is filled in, and a reload does not add them again. */
  @Test
  void whatIsWorthBakingBecomesPiecesOfABake(Browser browser) {
    bakeTray();
    try (Visit visit =
        Visit.on(bench.viewer(), browser, Visit.DESK, ColorScheme.LIGHT)) {
      visit.to(PAGE);
      int planned = visit.at(".window-next-bakes li").count();
      visit.at(".window-next-bakes a.main").focus();
      visit.page().keyboard().press("Enter");
      visit.page().waitForURL("**/record/seeded-lupin-bun*draft=*");
      visit.settled();
      assertThat(visit.at(".measure-table tbody tr").count()).isEqualTo(planned);
      assertThat(visit.at("#piece-a-temperature").inputValue()).matches("\\d+");
      assertThat(visit.at("#piece-a-core").inputValue()).isEmpty();
      assertThat(visit.address()).doesNotContain("plan=");
      visit.page().reload();
      visit.settled();
      visit.at(".measure-table").waitFor();
      assertThat(visit.at(".measure-table tbody tr").count()).isEqualTo(planned);

      visit.at("#piece-a-core_log").fill("4 min 45");
      visit.at("#piece-a-core_log-problem:not([hidden])").waitFor();
      visit.at("#piece-a-core_log").fill("4 min 45 °C, 12 min 90 °C");
      visit.at("#piece-a-core_log-problem[hidden]")
          .waitFor(
              new Locator.WaitForOptions()
                  .setState(WaitForSelectorState.ATTACHED));
      visit.at("#record").click();
      visit.page().waitForURL("**/bakes/seeded-lupin-bun/*");
      visit.settled();
      assertThat(visit.text()).contains("core 4 min 45 °C, 12 min 90 °C");
      List<Views.BakeView> bakes = new ListBakes(bench.desk()).call("seeded-lupin-bun").bakes();
      assertThat(bakes.get(bakes.size() - 1).pieces()).hasSize(planned);
      visit.expectRefusal();
    }
  }

  @Test
  void withTooLittleThePageSaysWhatIsMissing(Browser browser) {
    try (Visit visit =
        Visit.on(bench.viewer(), browser, Visit.PHONE, ColorScheme.LIGHT)) {
      visit.to("/formulas/seeded-lupin-bun");
      visit.at(".next-change a:text-is('Bake window')").click();
      visit.page().waitForURL("**/window/seeded-lupin-bun*");
      visit.settled();
      assertThat(visit.at(".window-chart").count()).isZero();
      assertThat(visit.text()).contains("What is missing for a map");
      visit.assertAccessible();
      visit.assertFits();
    }
  }
}
