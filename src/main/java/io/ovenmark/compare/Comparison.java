package io.ovenmark.compare;

import io.ovenmark.change.Change;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.change.MethodText;
import io.ovenmark.change.StepDiff;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.ShownUnits;
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
 * <p>Printed:
 *
 * <pre>{@code
 * ○ seeded-lupin-bun@5 · 2026-08-28 · Psyllium up, for height
 * ● seeded-lupin-bun@7 · 2026-09-09 · Drier dough, hotter and shorter bake
 *
 * Half the egg white gave way to whey isolate, water down 22 g and pieces 6 → 7: liquid
 * ratio 2.18 → 1.59, net carbohydrate 4.05 → 3.85 g a piece, now inside the goal. Oven
 * temperature 190 → 205 °C and oven time 24 → 21 min. Method: step 2 reworded.
 *
 * Lines, g                                   ○ before          ● after           change
 *   egg white                                      80               40              −40
 *       baker's percentage 76.2 → 38.1 %
 *   whey isolate                                    ·               10         new, +10
 *   water                                         210              188              −22
 *       baker's percentage 200 → 179 %
 *   3 more unchanged
 *
 * Yield
 *   pieces: ○ 6 → ● 7
 *
 * Figures, a piece                           ○ before          ● after           change
 *   energy, kcal                                 79.9             70.6            −9.25
 *   protein, g                                   7.86             6.95           −0.916
 *   fat, g                                       1.75             1.51           −0.243
 *   saturated fat, g                            0.206            0.185          −0.0212
 *   carbohydrate, g                              10.6             9.43            −1.14
 *   fibre, g                                     6.51             5.58            −0.93
 *   sugars, g                                    0.69            0.567           −0.123
 *   net carbohydrate, g                          4.05             3.85           −0.206
 *   sodium, mg                                    287              242            −45.3
 *   water, g                                     48.8             33.7            −15.1
 *   liquid ratio                                 2.18             1.59           −0.586
 *   dough moisture, %                            69.3             63.6            −5.63
 *   batch mass, g                                 423              371              −52
 *   pieces                                          6                7               +1
 *   dough a piece, g                             70.5               53            −17.5
 *
 * What moved net carbohydrate a piece, g
 *   egg white −40 g                                                             −0.0452
 *   whey isolate +10 g                                                            +0.45
 *   pieces 6 → 7                                                                  −0.61
 *
 * What moved liquid ratio
 *   egg white −40 g                                                               −0.29
 *   whey isolate +10 g                                                           −0.136
 *   water −22 g                                                                   −0.16
 *
 * Goal: low-carbohydrate bun
 *   at most 4 g net carbohydrate a piece: now kept
 *   no eggs: still broken (egg white)
 *   Allergens as the foods' data state them: check the packages for traces.
 *
 * Oven, as prescribed
 *   oven temperature: ○ 190 °C → ● 205 °C
 *   oven time: ○ 24 min → ● 21 min
 *
 * Method
 *     2. Rest ○[20]●[30] min.
 *
 * Bakes
 *   ○ 2026-08-28-1 a: 190 °C, 24 min, 31 mm high, loss 13.7 %, spread 2.97, liking 5.5
 *     (n 2), gummy crumb
 *   ● 2026-09-09-1 a: 205 °C, 18 min, 44 mm high, loss 13.7 %, spread 2.09
 *   ● 2026-09-09-1 b: 205 °C, 21 min, 46 mm high, loss 13.7 %, spread 2, liking 7 (n 1),
 *     even crumb
 *
 * Over all pieces                        ○ before (n)      ● after (n)           change
 *   best height, mm                            31 (1)           46 (2)              +15
 *   mean liking (1–9)                         5.5 (2)            7 (1)             +1.5
 *   mean loss in the oven, %                 13.7 (1)         13.7 (2)                0
 *   mean spread factor                       2.97 (1)         2.05 (2)           −0.922
 *   gummy crumb: gone, noted on 1 of 1 → 0 of 2 pieces
 *   even crumb: appeared, noted on 0 of 1 → 1 of 2 pieces
 *
 * What the bakes can tell
 *   Seven things changed between these bakes (egg white, whey isolate, water, dividing of
 *   the batch, method, oven temperature and oven time). A difference in outcome cannot be
 *   credited to one of them.
 * }</pre>
 *
 * @param from the earlier side
 * @param to the later side
 * @param units how masses and temperatures stand in sentences
 * @param summary what matters most in plain words, one sentence or a few
 * @param changes every change of the formula by ids, see {@link FormulaDiff}
 * @param lines lines side by side in the order of the later formula, removed ones at their old
 *     place
 * @param foodDataChanges foods of both sides whose data differ
 * @param yieldChanges how the batch is divided, where that differs
 * @param rules rules for energy and net carbohydrate, where they differ
 * @param process what is prescribed for the oven, where it differs, field by field
 * @param method the steps, word by word; empty when they are the same
 * @param texts name, description, goal, reference, storage, notes on lines and unknown fields
 *     that differ
 * @param figures every figure with the causes of its difference, see {@link FigureComparison}: the
 *     macros for each {@link Basis}, then the others
 * @param goal the goal's rules on both sides
 * @param outcomes what came out of the oven
 * @param confounding what may be concluded from it
 */
public record Comparison(
    Side from,
    Side to,
    ShownUnits units,
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
      new Confounding(Confounding.Verdict.NO_OUTCOMES, List.of(), "", List.of(), Optional.empty());

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
    return between(from, to, ShownUnits.AS_WRITTEN);
  }

  /**
   * Compares, with sentences for a reader of certain units. No figure and no verdict depends on
   * them.
   *
   * @param from the earlier side
   * @param to the later side
   * @param units how masses and temperatures stand in sentences
   * @return the comparison
   */
  public static Comparison between(Side from, Side to, ShownUnits units) {
    Formula before = from.sheet().formula();
    Formula after = to.sheet().formula();
    List<Change> changes = FormulaDiff.between(before, after);
    List<LineComparison> lines = LineAlignment.of(from.sheet(), to.sheet(), moved(changes));
    Map<String, String> names = Words.spokenNames(lines);
    FieldChanges fields = new FieldChanges(changes, units);
    Comparison facts =
        new Comparison(
            from,
            to,
            units,
            "",
            changes,
            lines,
            FoodDataChange.between(from.sheet(), to.sheet(), units),
            fields.yieldChanges(),
            FieldChanges.rules(from.sheet().policy(), to.sheet().policy()),
            fields.process(),
            before.method().equals(after.method())
                ? List.of()
                : MethodText.diff(before.method(), after.method()),
            fields.texts(),
            Attribution.of(from.sheet(), to.sheet(), lines, names, units),
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
        units,
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
