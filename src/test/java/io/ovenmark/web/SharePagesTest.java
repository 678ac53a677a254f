package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A formula is shared from one viewer and taken in by another. */
@ExtendWith(Chromium.class)
class SharePagesTest {
  private static final String BUN = "seeded-lupin-bun";

  private OwnBench bench;
  private OwnBench colleague;

  @BeforeEach
  void open() {
    bench = OwnBench.with(BenchNotebook::create);
    colleague = OwnBench.with(BenchNotebook::empty);
  }

  @AfterEach
  void close() {
    assertThat(bench.faults()).isEmpty();
    assertThat(colleague.faults()).isEmpty();
    bench.close();
    colleague.close();
  }

  private byte[] bundle() {
    HttpResponse<byte[]> answer = Asking.get(bench.viewer(), "/made/bundle?formula=" + BUN);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"" + BUN + ".bundle\"");
    return answer.body();
  }

  private static void press(Visit visit, String name) {
    visit
        .page()
        .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true))
        .click();
  }

  private static FilePayload file(byte[] bytes) {
    return new FilePayload("bun.bundle", "application/octet-stream", bytes);
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void aFormulaGoesFromOneNotebookToAnother(int width, Browser browser) {
    byte[] bundle = bundle();
    try (Visit visit = Visit.on(colleague.viewer(), browser, width, ColorScheme.DARK)) {
      visit.to("/take-in").at("#bundle").setInputFiles(file(bundle));
      visit.at("#take-as").waitFor();
      assertThat(visit.text()).contains("Ines");
      visit.assertAccessible();
      visit.assertFits();
      press(visit, "Take it in");
      visit.page().waitForURL("**/formulas/" + BUN);
      visit.settled();
      assertThat(visit.text()).contains("Took in Seeded lupin bun as " + BUN + "@");
      visit.to("/take-in").at("#bundle").setInputFiles(file(bundle));
      visit.at("#take-as-problem:not([hidden])").waitFor();
      visit.at("#take-as").fill("harbour-bun");
      visit.at("#take-as-problem[hidden]").waitFor(
          new Locator.WaitForOptions()
              .setState(WaitForSelectorState.ATTACHED));
      press(visit, "Take it in");
      visit.page().waitForURL("**/formulas/harbour-bun");
      visit.settled();
    }
    assertThat(colleague.desk().notebook().latest().formulas())
        .contains(BUN, "harbour-bun");
  }

  @ParameterizedTest
  @ValueSource(ints = {Visit.DESK, Visit.PHONE})
  void whatGoesAlongIsListedBefore(int width, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
      visit.to("/share/" + BUN);
      assertThat(visit.text()).contains("What goes along", "What stays", "Written by");
      assertThat(visit.at(".bundle-download").getAttribute("href")).contains("emails=false");
      visit.assertAccessible();
      visit.assertFits();
      visit.at("#share-emails").check();
      visit.page().waitForURL("**emails=true**");
      visit.at("text=ines@saltmarsh.example").waitFor();
      assertThat(visit.at(".bundle-download").getAttribute("href")).contains("emails=true");
      visit.at("#share-others").uncheck();
      visit.page().waitForURL("**others=false**");
      visit.at("text=without their words").waitFor();
      visit.at("#share-variant").selectOption("egg-free");
      visit.page().waitForURL("**variant=egg-free**");
      visit.at("text=Download " + BUN + "-egg-free.bundle").waitFor();
      assertThat(visit.at(".bundle-download").getAttribute("href"))
          .contains("variant=egg-free", "others=false", "emails=true", "prices=false");
      visit.assertAccessible();
      visit.assertFits();
    }
  }

  @Test
  void aBrokenBundleIsRefusedInOneSentenceAndNotKept() {
    byte[] broken = "Dear colleague".getBytes(StandardCharsets.UTF_8);

    Asking.Raw answer =
        Asking.raw(
            colleague.viewer(),
            "POST /api/take-in/send HTTP/1.1\r\nHost: "
                + colleague.viewer().address().getAuthority()
                + "\r\nOrigin: http://"
                + colleague.viewer().address().getAuthority()
                + "\r\nContent-Type: application/octet-stream\r\nConnection: close\r\n"
                + "Content-Length: "
                + broken.length
                + "\r\n\r\nDear colleague");

    assertThat(answer.toString()).contains("It is not a Git bundle.");
    assertThat(colleague.folder().resolve(".git/ovenmark/waiting-bundles")).isEmptyDirectory();
    assertThat(Asking.text(Asking.get(colleague.viewer(), "/api/take-in/limits")))
        .contains("67108864");
  }
}
