package io.ovenmark.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests the installed Chromium as a {@link Browser}, one for the whole run. Where there is
 * none the tests are skipped and one line says so; with {@code CI=true} they fail instead.
 */
public final class Chromium implements ExecutionCondition, ParameterResolver {
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "chrome");
  private static final List<String> OPTIONS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");
  private static final String MISSING =
      "No browser tests: no Chromium found on the PATH. Install it, for example with:"
          + " apt-get install chromium";
  private static final AtomicBoolean TOLD = new AtomicBoolean();

  /** The running browser, closed when all tests are done. */
  private record Running(Playwright playwright, Browser browser) implements AutoCloseable {
    static Running start() {
      Playwright playwright = driver();
      return new Running(playwright, launch(playwright));
    }

    @Override
    public void close() {
      browser.close();
      playwright.close();
    }
  }

  /** What drives a browser; to be closed by the caller. */
  public static Playwright driver() {
    return Playwright.create(
        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
  }

  /** A new browser, without a window; to be closed by the caller. */
  public static Browser launch(Playwright playwright) {
    Path program = program().orElseThrow(() -> new IllegalStateException(MISSING));
    return playwright
        .chromium()
        .launch(new BrowserType.LaunchOptions().setExecutablePath(program).setArgs(OPTIONS));
  }

  private static Optional<Path> program() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Arrays.stream(path.split(File.pathSeparator))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    if (program().isPresent() || "true".equals(System.getenv("CI"))) {
      return ConditionEvaluationResult.enabled("there is a Chromium, or there must be one");
    }
    if (TOLD.compareAndSet(false, true)) {
      System.err.println(MISSING);
    }
    return ConditionEvaluationResult.disabled(MISSING);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(Chromium.class))
        .getOrComputeIfAbsent(Running.class, key -> Running.start(), Running.class)
        .browser();
  }
}
