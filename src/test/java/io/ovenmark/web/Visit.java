package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.ArrayList;
import java.util.List;

/**
 * A browser window on a viewer that keeps an eye on what must never happen: errors in the console,
 * violations of the content security policy, requests to elsewhere. Closing it checks them.
 *
 * <p>With the system property {@code ovenmark.slow} set to a number the browser has that many times
 * less of the processor and waits {@value #LATENCY_MS} ms for each answer. What a test does not wait
 * for then shows itself.
 *
 * <pre>{@code
 * try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
 *   visit.to("/formulas/seeded-lupin-bun");
 * }
 * }</pre>
 */
final class Visit implements AutoCloseable {
  static final int DESK = 1440;
  static final int PHONE = 390;

  private static final int SLOW = Integer.getInteger("ovenmark.slow", 1);
  private static final int LATENCY_MS = 150;
  private static final int TIMEOUT_MS = 10_000;

  private final String root;
  private final BrowserContext context;
  private final Page page;
  private final List<String> complaints = new ArrayList<>();

  private Visit(Viewer viewer, BrowserContext context) {
    root = viewer.address().toString();
    this.context = context;
    context.addInitScript(
        "addEventListener('securitypolicyviolation', event =>"
            + " console.error('policy: ' + event.violatedDirective + ' ' + event.blockedURI))");
    context.setDefaultTimeout(SLOW * TIMEOUT_MS);
    page = context.newPage();
    if (SLOW > 1) {
      slow(page);
    }
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(message.type() + ": " + message.text());
          }
        });
    page.onPageError(error -> complaints.add("thrown: " + error));
    page.onDialog(
        dialog -> {
          complaints.add("dialog: " + dialog.message());
          dialog.dismiss();
        });
    page.onRequest(
        request -> {
          if (!request.url().startsWith(root)) {
            complaints.add("elsewhere: " + request.url());
          }
        });
  }

  private static void slow(Page page) {
    CDPSession browser = page.context().newCDPSession(page);
    JsonObject processor = new JsonObject();
    processor.addProperty("rate", SLOW);
    browser.send("Emulation.setCPUThrottlingRate", processor);
    JsonObject network = new JsonObject();
    network.addProperty("offline", false);
    network.addProperty("latency", LATENCY_MS);
    network.addProperty("downloadThroughput", -1);
    network.addProperty("uploadThroughput", -1);
    browser.send("Network.enable");
    browser.send("Network.emulateNetworkConditions", network);
  }

  /** A window of a desk's width. */
  static Visit of(RunningBench bench, Browser browser) {
    return of(bench, browser, DESK, ColorScheme.LIGHT, false);
  }

  /** A window of any width. */
  static Visit of(RunningBench bench, Browser browser, int width) {
    return of(bench, browser, width, ColorScheme.LIGHT, false);
  }

  /** A window whose page may be given scripts by the test, which the policy forbids otherwise. */
  static Visit open(RunningBench bench, Browser browser, int width, ColorScheme colours) {
    return of(bench, browser, width, colours, true);
  }

  /** A window on any viewer, whose page may be given scripts by the test. */
  static Visit on(Viewer viewer, Browser browser, int width, ColorScheme colours) {
    return of(viewer, browser, width, colours, true);
  }

  /** A window on any viewer. */
  static Visit on(Viewer viewer, Browser browser, int width) {
    return of(viewer, browser, width, ColorScheme.LIGHT, false);
  }

  private static Visit of(
      RunningBench bench, Browser browser, int width, ColorScheme colours, boolean bypass) {
    return of(bench.viewer(), browser, width, colours, bypass);
  }

  private static Visit of(
      Viewer viewer, Browser browser, int width, ColorScheme colours, boolean bypass) {
    Browser.NewContextOptions options =
        new Browser.NewContextOptions()
            .setViewportSize(width, width == PHONE ? 844 : 900)
            .setHasTouch(width == PHONE)
            .setColorScheme(colours)
            .setBypassCSP(bypass);
    return new Visit(viewer, browser.newContext(options));
  }

  /** Opens a page and waits until it is drawn. */
  Visit to(String path) {
    page.navigate(root + path.substring(1));
    return settled();
  }

  /** Waits until the page shows what it was asked for. */
  Visit settled() {
    page.locator("main:not([aria-busy]) h1").waitFor();
    page.locator("#header .notebook code").waitFor();
    page.locator(".trends[aria-busy]")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
    return this;
  }

  Page page() {
    return page;
  }

  Locator at(String selector) {
    return page.locator(selector);
  }

  /** Path and query of the address that the browser shows. */
  String address() {
    return page.url().replace(root, "/");
  }

  /** What the page says, as a reader sees it. */
  String text() {
    return page.locator("body").innerText();
  }

  /** No rule for accessible pages is broken. */
  void assertAccessible() {
    assertKept(new AxeBuilder(page));
  }

  /** All text stands out from its background. */
  void assertContrast() {
    assertKept(new AxeBuilder(page).withRules(List.of("color-contrast")));
  }

  private static void assertKept(AxeBuilder rules) {
    List<Rule> broken = rules.analyze().getViolations();
    assertThat(broken)
        .extracting(rule -> rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes())
        .isEmpty();
  }

  /** The page is not wider than its window. */
  void assertFits() {
    Object width = page.evaluate("document.documentElement.scrollWidth - innerWidth");
    assertThat(((Number) width).intValue()).isLessThanOrEqualTo(0);
  }

  /** Accepts what the browser itself says of an answer that is a refusal. */
  Visit expectRefusal() {
    complaints.removeIf(complaint -> complaint.contains("Failed to load resource"));
    return this;
  }

  @Override
  public void close() {
    context.close();
    assertThat(complaints).isEmpty();
  }
}
