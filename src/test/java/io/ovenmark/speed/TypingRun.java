package io.ovenmark.speed;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.KeepDrafts;
import io.ovenmark.desk.WorkOutDraft;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.web.Chromium;
import io.ovenmark.web.Opening;
import io.ovenmark.web.Viewer;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Measures an edit in a real browser: from the keystroke until its figures are drawn, and what of
 * that is worked out by the desk.
 */
final class TypingRun implements AutoCloseable {
  private static final int WARM = 20;
  private static final int TIMES = 60;
  private static final By BY =
      new By(
          new Author("Bench Hand", "bench@example.org"),
          OffsetDateTime.parse("2027-01-01T08:00:00+01:00"));

  /** Notes each keystroke, and the moment after the next drawing that has new figures. */
  private static final String WATCH =
      """
      () => {
        window.times = [];
        let start = null;
        document.addEventListener('input', () => { start = performance.now(); }, true);
        new MutationObserver(() => {
          if (start !== null) {
            const mine = start;
            start = null;
            requestAnimationFrame(() => {
              const channel = new MessageChannel();
              channel.port1.onmessage = () => window.times.push(performance.now() - mine);
              channel.port2.postMessage(null);
            });
          }
        }).observe(document.querySelector('.edit-figures'),
          {subtree: true, characterData: true, childList: true});
      }
      """;

  private final SpeedTable table;
  private final Playwright playwright = Chromium.driver();

  TypingRun(SpeedTable table) {
    this.table = table;
  }

  /** Types into a draft on a formula's newest revision. */
  void measure(String name, Path notebook, String formula) throws Exception {
    try (Desk desk = new Desk(Notebook.open(notebook));
        Viewer viewer =
            Viewer.start(desk, Opening.onAnyPort(() -> BY), List.<Throwable>of()::contains)) {
      KeepDrafts drafts = new KeepDrafts(desk);
      DraftViews.DraftView draft = drafts.begin(Optional.empty(), Optional.of(formula), BY);
      onTheDesk(name, desk, draft, formula);
      typed(name, viewer, draft);
      drafts.discard(draft.id(), drafts.show(draft.id()).version());
    }
  }

  private void onTheDesk(String name, Desk desk, DraftViews.DraftView draft, String formula)
      throws Exception {
    Sample sample = new Sample();
    WorkOutDraft verb = new WorkOutDraft(desk);
    for (int i = 0; i < 400; i++) {
      Sample kept = i < 200 ? new Sample() : sample;
      kept.time(
          () -> Json.compact(verb.call(draft.document(), Optional.of(formula), Set.of())));
    }
    table.alone(name + ": figures of a draft with their JSON, on the desk", sample, "");
  }

  private void typed(String name, Viewer viewer, DraftViews.DraftView draft) {
    Sample drawn = new Sample();
    try (Browser browser = Chromium.launch(playwright);
        BrowserContext context = browser.newContext()) {
      Page page = context.newPage();
      page.navigate(viewer.address().resolve("/drafts/" + draft.id()).toString());
      Locator amount = page.locator(".amount-field input").nth(3);
      amount.fill("100 g");
      page.evaluate(WATCH);
      amount.evaluate("field => field.setSelectionRange(2, 3)");
      for (int i = 0; i < WARM + TIMES; i++) {
        page.keyboard().press(String.valueOf(1 + i % 9));
        page.waitForFunction("many => window.times.length > many", i);
        page.keyboard().press("Shift+ArrowLeft");
      }
      List<?> times = (List<?>) page.evaluate("window.times");
      times.subList(WARM, times.size()).forEach(each -> drawn.add(((Number) each).doubleValue()));
    }
    table.elsewhere(name + ": from a keystroke to its figures drawn (aim: 50 ms)", drawn);
  }

  @Override
  public void close() {
    playwright.close();
  }
}
