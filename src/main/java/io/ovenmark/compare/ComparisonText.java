package io.ovenmark.compare;

import static io.ovenmark.compare.TextLayout.left;
import static io.ovenmark.compare.TextLayout.right;

import io.ovenmark.change.StepDiff;
import io.ovenmark.change.TextRun;
import io.ovenmark.compare.GoalComparison.RuleChange;
import io.ovenmark.compare.Outcomes.FindingComparison;
import io.ovenmark.compare.Outcomes.OutcomeFigure;
import io.ovenmark.goal.GoalCheck.Outcome;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Prints a comparison as plain text of at most 88 columns. A hollow ring is before, a filled one
 * after. Sections in which nothing differs are left out; characters that steer a terminal are
 * printed as spaces.
 */
public final class ComparisonText {
  private static final String BEFORE = "○ ";
  private static final String AFTER = "● ";
  private static final int NAME = 34;
  private static final int NUMBER = 17;
  private static final List<Figure> ALWAYS =
      List.of(Figure.NET_CARBOHYDRATE, Figure.PROTEIN, Figure.FAT, Figure.FIBRE, Figure.ENERGY);

  private final Comparison comparison;
  private final TextLayout out = new TextLayout();

  private ComparisonText(Comparison comparison) {
    this.comparison = comparison;
  }

  /**
   * Prints.
   *
   * @param comparison the comparison
   * @return lines that each end with a line feed
   */
  public static String of(Comparison comparison) {
    ComparisonText text = new ComparisonText(comparison);
    text.print();
    return text.out.text();
  }

  private void print() {
    side(BEFORE, comparison.from());
    side(AFTER, comparison.to());
    out.line("");
    out.prose("", comparison.summary());
    lines();
    fields("Yield", comparison.yieldChanges());
    foods();
    figures();
    contributions();
    fields("Rules", comparison.rules());
    goal();
    fields("Oven, as prescribed", comparison.process());
    method();
    fields("Writing", comparison.texts());
    outcomes();
    out.heading("What the bakes can tell");
    out.prose("  ", comparison.confounding().sentence());
    comparison.confounding().likeForLikeSentence().ifPresent(text -> out.prose("  ", text));
  }

  private void side(String mark, Side side) {
    String time = side.time().map(when -> " · " + when.toLocalDate()).orElse("");
    String note = side.note().map(text -> " · " + text).orElse("");
    out.entry(mark, side.address() + time + note);
  }

  private void lines() {
    List<LineComparison> shown =
        comparison.lines().stream().filter(ComparisonText::differs).toList();
    int same = comparison.lines().size() - shown.size();
    if (comparison.lines().isEmpty()) {
      return;
    }
    out.heading(
        left("Lines, g", NAME)
            + right(BEFORE + "before", NUMBER)
            + right(AFTER + "after", NUMBER)
            + right("change", NUMBER));
    shown.forEach(this::line);
    if (same > 0) {
      out.line("  " + same + (shown.isEmpty() ? "" : " more") + " unchanged");
    }
  }

  private static boolean differs(LineComparison line) {
    return line.change() != LineChange.SAME
        || line.moved()
        || line.flourMarkChanged()
        || line.noteChanged();
  }

  private void line(LineComparison line) {
    String change =
        switch (line.change()) {
          case ADDED -> "new, " + FigureText.signed(line.delta());
          case REMOVED -> "out, " + FigureText.signed(line.delta());
          case REPLACED -> "food, " + FigureText.signed(line.delta());
          case REWRITTEN -> "rewritten";
          default -> FigureText.signed(line.delta());
        };
    out.line(
        "  "
            + left(line.name(), NAME - 2)
            + right(line.before().isEmpty() ? "·" : FigureText.of(line.from()), NUMBER)
            + right(line.after().isEmpty() ? "·" : FigureText.of(line.to()), NUMBER)
            + right(change, NUMBER));
    List<String> more = new ArrayList<>();
    line.otherName().ifPresent(other -> more.add("in place of " + other));
    boolean written =
        line.fromEntered().isPresent()
            && line.toEntered().isPresent()
            && (line.change() == LineChange.REWRITTEN || !line.delta().isKnown());
    if (written) {
      more.add(
          BEFORE
              + line.fromEntered().orElseThrow()
              + FigureText.ARROW
              + AFTER
              + line.toEntered().orElseThrow());
    }
    if (!FigureText.looksTheSame(line.fromBakersPercent(), line.toBakersPercent())
        && !line.fromBakersPercent().isUnknown()
        && !line.toBakersPercent().isUnknown()) {
      more.add(
          "baker's percentage "
              + FigureText.change(line.fromBakersPercent(), line.toBakersPercent(), "%"));
    }
    if (line.flourMarkChanged()) {
      more.add(line.after().orElseThrow().line().flour() ? "now a flour" : "no longer a flour");
    }
    if (line.moved()) {
      more.add("moved");
    }
    if (!more.isEmpty()) {
      out.prose("      ", String.join(", ", more));
    }
  }

  private void foods() {
    if (comparison.foodDataChanges().isEmpty()) {
      return;
    }
    out.heading("Data of foods (the food changed, not the formula)");
    for (FoodDataChange food : comparison.foodDataChanges()) {
      List<String> parts = new ArrayList<>();
      food.figures()
          .forEach(
              figure ->
                  parts.add(
                      figure.nutrient().label()
                          + " "
                          + FigureText.change(figure.from(), figure.to(), figure.nutrient().unit())
                          + " per 100 g"));
      food.weights().forEach(weight -> parts.add(BakeInfluences.detail(weight)));
      food.others().forEach(other -> parts.add(BakeInfluences.detail(other)));
      out.entry("  ", food.name() + ": " + String.join(", ", parts));
    }
  }

  private void figures() {
    List<FigureComparison> shown = comparison.figures().stream().filter(this::isShown).toList();
    if (shown.isEmpty()) {
      return;
    }
    out.heading(
        left("Figures, a piece", NAME)
            + right(BEFORE + "before", NUMBER)
            + right(AFTER + "after", NUMBER)
            + right("change", NUMBER));
    for (FigureComparison figure : shown) {
      String unit = figure.figure().unit();
      out.line(
          "  "
              + left(figure.figure().label() + (unit.isEmpty() ? "" : ", " + unit), NAME - 2)
              + right(brief(figure.from()), NUMBER)
              + right(brief(figure.to()), NUMBER)
              + right(brief(figure.delta(), FigureText.signed(figure.delta())), NUMBER));
    }
  }

  private static String brief(Quantity quantity) {
    return brief(quantity, FigureText.of(quantity));
  }

  /** Two bounds in a narrow column: {@code 3 to 4.2}. */
  private static String brief(Quantity quantity, String words) {
    return quantity.isKnown() ? words : words.replace("between ", "").replace(" and ", " to ");
  }

  private boolean isShown(FigureComparison figure) {
    boolean piece = figure.basis().equals(Optional.of(Basis.PIECE));
    boolean wanted =
        !figure.figure().isMacro()
            ? figure.showsChange() || figure.figure() == Figure.LIQUID_RATIO
            : piece && (figure.showsChange() || ALWAYS.contains(figure.figure()));
    return wanted && !(figure.from().isUnknown() && figure.to().isUnknown());
  }

  private void contributions() {
    for (FigureComparison figure : comparison.figures()) {
      boolean told =
          figure.figure() == Figure.LIQUID_RATIO
              || figure.figure() == Figure.NET_CARBOHYDRATE
                  && figure.basis().equals(Optional.of(Basis.PIECE))
              || isLimited(figure);
      if (told && !figure.contributions().isEmpty()) {
        String unit = figure.figure().unit();
        out.heading("What moved " + figure.name() + (unit.isEmpty() ? "" : ", " + unit));
        for (Contribution part : figure.contributions()) {
          out.line(
              "  "
                  + left(part.text(), NAME + 2 * NUMBER - 2)
                  + right(FigureText.signed(part.delta()), NUMBER));
        }
      }
    }
  }

  private boolean isLimited(FigureComparison figure) {
    return comparison.goal().rules().stream()
        .flatMap(rule -> rule.limit().stream())
        .anyMatch(
            limit ->
                limit.figure() == figure.figure()
                    && (!limit.figure().isMacro()
                        || figure.basis().equals(Optional.of(limit.basis()))));
  }

  private void fields(String heading, List<FieldChange> changes) {
    if (changes.isEmpty()) {
      return;
    }
    out.heading(heading);
    for (FieldChange change : changes) {
      String same = change.matters() ? "" : " (no figure moves)";
      out.entry(
          "  ",
          change.label()
              + ": "
              + BEFORE
              + change.from().orElse("not stated")
              + FigureText.ARROW
              + AFTER
              + change.to().orElse("not stated")
              + (heading.equals("Writing") ? "" : same));
    }
  }

  private void goal() {
    GoalComparison goal = comparison.goal();
    if (goal.rules().isEmpty()) {
      return;
    }
    String name = goal.to().or(goal::from).orElse("");
    out.heading("Goal: " + name);
    for (RuleChange rule : goal.rules()) {
      String because =
          rule.because().isEmpty() ? "" : " (" + String.join(", ", rule.because()) + ")";
      String standing =
          switch (rule.course()) {
            case NEWLY_MET -> "now kept";
            case NEWLY_BROKEN -> "now broken";
            case NEWLY_UNKNOWN -> "no longer certain";
            case STILL_MET -> "kept";
            case STILL_BROKEN -> "still broken";
            case STILL_UNKNOWN -> "still not certain";
            case ONLY_BEFORE -> "before only, was " + word(rule.from());
            case ONLY_AFTER -> "after only, " + word(rule.to());
          };
      out.entry("  ", rule.rule() + ": " + standing + because);
    }
    if (goal.rules().stream().anyMatch(rule -> rule.limit().isEmpty())) {
      out.prose("  ", "Allergens as the foods' data state them: check the packages for traces.");
    }
  }

  private static String word(Optional<Outcome> outcome) {
    return switch (outcome.orElseThrow()) {
      case MET -> "kept";
      case BROKEN -> "broken";
      case UNKNOWN -> "not certain";
    };
  }

  private void method() {
    if (comparison.method().isEmpty()) {
      return;
    }
    out.heading("Method");
    for (StepDiff step : comparison.method()) {
      if (step instanceof StepDiff.Removed removed) {
        out.entry("  " + BEFORE + removed.fromNumber() + ". ", removed.text());
      } else if (step instanceof StepDiff.Added added) {
        out.entry("  " + AFTER + added.toNumber() + ". ", added.text());
      } else if (step instanceof StepDiff.Changed changed) {
        out.entry("    " + changed.toNumber() + ". ", words(changed.words()));
      }
    }
  }

  private static String words(List<TextRun> runs) {
    StringBuilder text = new StringBuilder();
    for (TextRun run : runs) {
      switch (run.kind()) {
        case SAME -> text.append(run.text());
        case REMOVED -> text.append("○[").append(run.text()).append(']');
        case ADDED -> text.append("●[").append(run.text()).append(']');
        default -> throw new IllegalStateException(run.kind().toString());
      }
    }
    return text.toString();
  }

  private void outcomes() {
    Outcomes outcomes = comparison.outcomes();
    if (outcomes.from().bakes() + outcomes.to().bakes() == 0) {
      return;
    }
    out.heading("Bakes");
    PieceText.print(outcomes.from(), BEFORE, out);
    PieceText.print(outcomes.to(), AFTER, out);
    List<OutcomeFigure> measured =
        outcomes.figures().stream()
            .filter(figure -> figure.fromCount() + figure.toCount() > 0)
            .toList();
    if (!measured.isEmpty()) {
      out.heading(
          left("Over all pieces", NAME)
              + right(BEFORE + "before (n)", NUMBER)
              + right(AFTER + "after (n)", NUMBER)
              + right("change", NUMBER));
    }
    for (OutcomeFigure figure : measured) {
      String unit = figure.measure().unit().isEmpty() ? "" : ", " + figure.measure().unit();
      out.line(
          "  "
              + left(figure.measure().label() + unit, NAME - 2)
              + right(FigureText.of(figure.from()) + " (" + figure.fromCount() + ")", NUMBER)
              + right(FigureText.of(figure.to()) + " (" + figure.toCount() + ")", NUMBER)
              + right(FigureText.signed(figure.delta()), NUMBER));
    }
    outcomes.findings().forEach(this::finding);
  }

  private void finding(FindingComparison finding) {
    String course =
        switch (finding.course()) {
          case APPEARED, GONE, STAYED -> finding.course().name().toLowerCase(Locale.ROOT) + ", ";
          case NOT_COMPARABLE -> "";
        };
    out.entry(
        "  ",
        finding.finding()
            + ": "
            + course
            + "noted on "
            + finding.fromPieces()
            + " of "
            + finding.fromOf()
            + FigureText.ARROW
            + finding.toPieces()
            + " of "
            + finding.toOf()
            + " pieces");
  }
}
