package io.ovenmark.compare;

import io.ovenmark.change.Change;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.change.MethodText;
import io.ovenmark.change.StepDiff;
import io.ovenmark.formula.Formula;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Two revisions held against each other: what changed, what that did to the figures and the goal,
 * and what came out of the oven.
 *
 * <pre>{@code
 * Comparison comparison = Comparison.between(earlier, later);
 * String text = ComparisonText.of(comparison);
 * }</pre>
 *
 * <p>EXAMPLE
 *
 * @param from the earlier side
 * @param to the later side
 * @param summary what matters most in plain words, one sentence or a few
 * @param changes every change of the formula by ids, see {@link FormulaDiff}
 * @param lines lines side by side in the order of the later formula, removed ones at their old place
 * @param foodDataChanges foods of both sides whose data differ
 * @param yieldChanges how the batch is divided, where that differs
 * @param rules rules for energy and net carbohydrate, where they differ
 * @param process what is prescribed for the oven, where it differs, field by field
 * @param method the steps, word by word; empty when they are the same
 * @param texts name, description, goal, reference, notes on lines and unknown fields that differ
 * @param figures every figure with the causes of its difference, see {@link FigureComparison}: the
 *     macros for each {@link Basis}, then the others
 * @param goal the goal's rules on both sides
 * @param outcomes what came out of the oven
 * @param confounding what may be concluded from it
 */
public record Comparison(
    Side from,
    Side to,
    String summary,
    List<Change> changes,
    List<LineComparison> lines,
    List<FoodDataChange> foodDataChanges,
    List<FieldChange> yieldChanges,
    List<FieldChange> rules,
    List<FieldChange> process,
    List<StepDiff> method,
    List<FieldChange> texts,
    List<FigureComparison> figures,
    GoalComparison goal,
    Outcomes outcomes,
    Confounding confounding) {

  /** Two ratios of masses are one proportion when they agree to this share. */
  private static final double SAME_PROPORTION = 1e-6;

  private static final Confounding UNJUDGED =
      new Confounding(
          Confounding.Verdict.NO_OUTCOMES, List.of(), "", List.of(), Optional.empty());

  /** Copies the lists. */
  public Comparison {
    changes = List.copyOf(changes);
    lines = List.copyOf(lines);
    foodDataChanges = List.copyOf(foodDataChanges);
    yieldChanges = List.copyOf(yieldChanges);
    rules = List.copyOf(rules);
    process = List.copyOf(process);
    method = List.copyOf(method);
    texts = List.copyOf(texts);
    figures = List.copyOf(figures);
  }

  /**
   * Compares. The two sides may be of one formula, of variants, or of different formulas; where ids
   * do not agree lines are paired by food. Takes time in proportion to the size of the formulas.
   *
   * @param from the earlier side
   * @param to the later side
   * @return the comparison; the same for the same sides, whatever the locale and time
   */
  public static Comparison between(Side from, Side to) {
    Formula before = from.sheet().formula();
    Formula after = to.sheet().formula();
    List<Change> changes = FormulaDiff.between(before, after);
    List<LineComparison> lines = LineAlignment.of(from.sheet(), to.sheet(), moved(changes));
    Map<String, String> names = Words.spokenNames(lines);
    FieldChanges fields = new FieldChanges(changes);
    Comparison facts =
        new Comparison(
            from,
            to,
            "",
            changes,
            lines,
            FoodDataChange.between(from.sheet(), to.sheet()),
            fields.yieldChanges(),
            FieldChanges.rules(from.sheet().policy(), to.sheet().policy()),
            fields.process(),
            before.method().equals(after.method())
                ? List.of()
                : MethodText.diff(before.method(), after.method()),
            fields.texts(),
            Attribution.of(from.sheet(), to.sheet(), lines, names),
            GoalComparison.between(from.goal(), to.goal()),
            Outcomes.between(from.bakes(), to.bakes()),
            UNJUDGED);
    return facts.with(SummarySentence.of(facts, names), BakeInfluences.of(facts, names));
  }

  private static Set<String> moved(List<Change> changes) {
    Set<String> moved = new HashSet<>();
    for (Change change : changes) {
      if (change instanceof Change.LinesReordered order) {
        moved.addAll(order.moved());
      }
    }
    return moved;
  }

  private Comparison with(String nextSummary, Confounding nextConfounding) {
    return new Comparison(
        from,
        to,
        nextSummary,
        changes,
        lines,
        foodDataChanges,
        yieldChanges,
        rules,
        process,
        method,
        texts,
        figures,
        goal,
        outcomes,
        nextConfounding);
  }

  /**
   * One figure.
   *
   * @param figure which
   * @param basis for what; without meaning for figures that are not macros
   * @return the figure on both sides
   */
  public FigureComparison figure(Figure figure, Basis basis) {
    Optional<Basis> wanted = figure.isMacro() ? Optional.of(basis) : Optional.empty();
    return figures.stream()
        .filter(each -> each.figure() == figure && each.basis().equals(wanted))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Whether all lines changed in one proportion, as when a batch was scaled.
   *
   * @return masses after divided by masses before; empty when they are not in one proportion, when
   *     there are fewer than two lines, or when nothing changed
   */
  public OptionalDouble proportion() {
    double proportion = Double.NaN;
    for (LineComparison line : lines) {
      boolean comparable =
          line.change() == LineChange.CHANGED
              && line.delta().isKnown()
              && line.from().isKnown()
              && line.from().low() > 0
              && line.to().low() > 0;
      if (!comparable) {
        return OptionalDouble.empty();
      }
      double ratio = line.to().low() / line.from().low();
      if (Double.isNaN(proportion)) {
        proportion = ratio;
      } else if (Math.abs(ratio / proportion - 1) > SAME_PROPORTION) {
        return OptionalDouble.empty();
      }
    }
    return lines.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(proportion);
  }
}
