package io.ovenmark.speed;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.web.Chromium;
import io.ovenmark.web.Opening;
import io.ovenmark.web.Viewer;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures the pages in a real browser, a new one for every first view: from the request until the
 * page is drawn, and what was sent for it.
 */
final class PagesRun implements AutoCloseable {
  private static final int TIMES = 3;
  private static final String TELL_WHEN_DRAWN =
      """
      window.drawn = new Promise((resolve) => {
        new MutationObserver((changes, observer) => {
          if (document.querySelector('main:not([aria-busy]) h1')) {
            observer.disconnect();
            requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
          }
        }).observe(document, {subtree: true, childList: true, attributes: true});
      });
      """;
  private static final String SENT =
      """
      performance.getEntriesByType('navigation')
        .concat(performance.getEntriesByType('resource'))
        .filter((each) => !each.name.includes('/photos/'))
        .reduce((sum, each) => sum + each.transferSize, 0)
      """;

  private static final String SCROLL =
      """
      async () => {
        const frames = [];
        let most = 0;
        let last = performance.now();
        for (let at = 0; at <= document.documentElement.scrollHeight; at += 400) {
          scrollTo(0, at);
          await new Promise(requestAnimationFrame);
          const now = performance.now();
          frames.push(now - last);
          last = now;
          most = Math.max(most, document.querySelectorAll('.revision').length);
        }
        return {frames, most};
      }
      """;

  private final SpeedTable table;
  private final Playwright playwright = Chromium.driver();

  PagesRun(SpeedTable table) {
    this.table = table;
  }

  /** Measures each page of a notebook; names say what the table calls them. */
  void measure(String name, Path notebook, Map<String, String> pages) throws Exception {
    try (Desk desk = new Desk(Notebook.open(notebook));
        Viewer viewer = viewer(desk)) {
      Sample first = new Sample();
      first.add(view(viewer, "/").drawn());
      table.elsewhere(name + ": the list, right after the viewer was started", first);
      for (Map.Entry<String, String> page : pages.entrySet()) {
        Sample drawn = new Sample();
        double bytes = 0;
        for (int i = 0; i < TIMES; i++) {
          View view = view(viewer, page.getValue());
          drawn.add(view.drawn());
          bytes = view.bytes();
        }
        String sent = String.format(Locale.ROOT, ", %.0f KB without photos", bytes / 1000);
        table.elsewhere(name + ": " + page.getKey() + ", first view" + sent, drawn);
      }
    }
  }

  /** Scrolls a timeline from its top to its end, 400 px for each frame, and times the frames. */
  void scroll(String name, Path notebook, String formula) throws Exception {
    try (Desk desk = new Desk(Notebook.open(notebook));
        Viewer viewer = viewer(desk);
        Browser browser = Chromium.launch(playwright);
        BrowserContext context = browser.newContext()) {
      int revisions = desk.notebook().revisions(Address.parse(formula)).size();
      Page page = context.newPage();
      page.navigate(viewer.address().resolve("/formulas/" + formula).toString());
      page.waitForSelector(".revision");
      Map<?, ?> scrolled = (Map<?, ?>) page.evaluate(SCROLL);
      Sample frames = new Sample();
      double longest = 0;
      for (Object frame : (List<?>) scrolled.get("frames")) {
        double time = ((Number) frame).doubleValue();
        frames.add(time);
        longest = Math.max(longest, time);
      }
      String what =
          String.format(
              Locale.ROOT,
              "%s: a frame while scrolling %d revisions by 400 px a frame,"
                  + " at most %s rows made at once; the longest %.0f ms",
              name,
              revisions,
              scrolled.get("most"),
              longest);
      table.elsewhere(what, frames);
    }
  }

  private record View(double drawn, double bytes) {}

  private View view(Viewer viewer, String path) {
    try (Browser browser = Chromium.launch(playwright);
        BrowserContext context = browser.newContext()) {
      context.addInitScript(TELL_WHEN_DRAWN);
      Page page = context.newPage();
      page.navigate(viewer.address().resolve(path).toString());
      return new View(number(page, "window.drawn"), number(page, SENT));
    }
  }

  private static double number(Page page, String expression) {
    return ((Number) page.evaluate(expression)).doubleValue();
  }

  private static Viewer viewer(Desk desk) {
    Author author = new Author("Bench Hand", "bench@example.org");
    By by = new By(author, OffsetDateTime.parse("2027-01-01T08:00:00+01:00"));
    return Viewer.start(desk, Opening.onAnyPort(() -> by), List.<Throwable>of()::contains);
  }

  @Override
  public void close() {
    playwright.close();
  }
}
