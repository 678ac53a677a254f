package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import io.ovenmark.desk.FigureSet;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The page writes numbers as {@link FigureText} does. */
@ExtendWith(Chromium.class)
class FormatTest {
  private static final List<Double> EDGES =
      List.of(
          0.0, -0.0, 1e-12, 0.0005, 0.9995, 0.99949, 2.345, 9.995, 9.994999, 99.95, 999.5, 999.4,
          1234.5, -1234.5, 1e6, 123456789.0, 0.1 + 0.2, -0.0004, -2.345, 46.0);

  @Test
  void numbersAndDifferencesReadAsTheyDoEverywhere(Browser browser) {
    Random random = new Random(20260914);
    List<Double> values = new ArrayList<>(EDGES);
    Stream.generate(() -> (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 3))
        .limit(2000)
        .forEach(values::add);

    assertThat(inThePage(browser, "each => format.number(each)", values))
        .containsExactlyElementsOf(values.stream().map(FigureText::number).toList());
    assertThat(inThePage(browser, "each => format.signed(each)", values))
        .containsExactlyElementsOf(values.stream().map(FigureText::signed).toList());
  }

  @Test
  void boundsReadAsTheyDoEverywhere(Browser browser) {
    Random random = new Random(20260915);
    List<Quantity> quantities = new ArrayList<>();
    quantities.add(Quantity.UNKNOWN);
    for (int i = 0; i < 300; i++) {
      double low = random.nextDouble() * Math.pow(10, random.nextInt(6) - 2);
      quantities.add(Quantity.known(low));
      quantities.add(Quantity.atLeast(low));
      quantities.add(Quantity.between(0, low));
      quantities.add(Quantity.between(low, low * 1.7));
    }
    List<Map<String, Object>> sets =
        quantities.stream()
            .map(quantity -> new FigureSet(Map.of("fibre_g", quantity)).json())
            .toList();

    assertThat(inThePage(browser, "set => format.figure(set, 'fibre_g', 'g')", sets))
        .containsExactlyElementsOf(
            quantities.stream().map(each -> FigureText.of(each, "g")).toList());
  }

  /** What the page's formatter makes of values; the function may name {@code format}. */
  private static List<String> inThePage(Browser browser, String function, List<?> values) {
    try (Visit visit = Visit.of(RunningBench.EMPTY, browser)) {
      Object texts =
          visit
              .to("/")
              .page()
              .evaluate(
                  "async values => { const format = await import('/format.js');"
                      + " return values.map(" + function + "); }",
                  values);
      return ((List<?>) texts).stream().map(String::valueOf).toList();
    }
  }
}
