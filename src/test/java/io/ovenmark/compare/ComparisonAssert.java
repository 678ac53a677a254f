package io.ovenmark.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.List;
import org.assertj.core.api.AbstractAssert;

/** Says what a comparison should be. */
final class ComparisonAssert extends AbstractAssert<ComparisonAssert, Comparison> {
  private ComparisonAssert(Comparison actual) {
    super(actual, ComparisonAssert.class);
  }

  static ComparisonAssert assertThatComparison(Comparison actual) {
    return new ComparisonAssert(actual);
  }

  ComparisonAssert says(String summary) {
    assertThat(actual.summary()).isEqualTo(summary);
    return this;
  }

  /** Each line as {@code change id}, in order. */
  ComparisonAssert hasLines(String... lines) {
    List<String> all =
        actual.lines().stream().map(line -> line.change().key() + " " + line.id()).toList();
    assertThat(all).containsExactly(lines);
    return this;
  }

  ComparisonAssert replaces(String otherName, String id) {
    assertThat(line(id).change()).isEqualTo(LineChange.REPLACED);
    assertThat(line(id).otherName()).contains(otherName);
    return this;
  }

  ComparisonAssert hasDelta(String id, double grams) {
    assertThat(line(id).delta().value().orElseThrow()).isCloseTo(grams, within(1e-9));
    return this;
  }

  ComparisonAssert moved(String... ids) {
    assertThat(actual.lines().stream().filter(LineComparison::moved).map(LineComparison::id))
        .containsExactly(ids);
    return this;
  }

  /** Each cause as {@code text: delta}, with three figures. */
  ComparisonAssert hasCauses(Figure figure, Basis basis, String... causes) {
    List<String> all =
        actual.figure(figure, basis).contributions().stream()
            .map(part -> part.text() + ": " + io.ovenmark.measure.FigureText.signed(part.delta()))
            .toList();
    assertThat(all).containsExactly(causes);
    return addsUp();
  }

  ComparisonAssert hasNoCauses() {
    assertThat(actual.figures()).allMatch(figure -> figure.contributions().isEmpty());
    return this;
  }

  /** Every figure's parts add up to its difference, and none is 0. */
  ComparisonAssert addsUp() {
    for (FigureComparison figure : actual.figures()) {
      List<Contribution> parts = figure.contributions();
      if (figure.from().isKnown() && figure.to().isKnown()) {
        double sum = parts.stream().mapToDouble(Contribution::delta).sum();
        double delta = figure.delta().value().orElseThrow();
        double largest = parts.stream().mapToDouble(part -> Math.abs(part.delta())).max().orElse(0);
        double scale = Math.max(largest, Math.abs(delta));
        assertThat(sum).as(figure.name()).isCloseTo(delta, within(4 * Math.ulp(scale)));
        assertThat(delta)
            .as(figure.name())
            .isCloseTo(
                figure.to().low() - figure.from().low(), within(1e-11 * (1 + figure.to().low())));
      } else {
        assertThat(parts).as(figure.name()).isEmpty();
      }
      assertThat(parts).as(figure.name()).noneMatch(part -> part.delta() == 0);
    }
    return this;
  }

  private LineComparison line(String id) {
    return actual.lines().stream().filter(line -> line.id().equals(id)).findFirst().orElseThrow();
  }
}
