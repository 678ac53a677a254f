package io.ovenmark.desk;

import io.ovenmark.change.StepDiff;
import io.ovenmark.change.TextRun;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Confounding;
import io.ovenmark.compare.FieldChange;
import io.ovenmark.compare.FigureComparison;
import io.ovenmark.compare.FoodDataChange;
import io.ovenmark.compare.GoalComparison;
import io.ovenmark.compare.LineComparison;
import io.ovenmark.compare.Outcomes;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns a comparison into the records of its answer. */
final class ComparisonViewMaker {
  private ComparisonViewMaker() {}

  static ComparisonViews.ComparisonView of(
      Comparison comparison,
      ComparisonViews.SideView from,
      ComparisonViews.SideView to,
      Map<String, List<String>> addresses) {
    Map<String, ComparisonViews.FigureDifference> ratios = new LinkedHashMap<>();
    Map<String, Map<String, ComparisonViews.FigureDifference>> macros = new LinkedHashMap<>();
    for (Basis basis : Basis.values()) {
      macros.put(basis.key(), new LinkedHashMap<>());
    }
    for (FigureComparison figure : comparison.figures()) {
      Map<String, ComparisonViews.FigureDifference> place =
          figure.basis().map(basis -> macros.get(basis.key())).orElse(ratios);
      place.put(figure.figure().key(), figure(figure, comparison.units()));
    }
    Confounding confounding = comparison.confounding();
    List<ComparisonViews.FieldDifference> yield = fields(comparison.yieldChanges());
    yield.addAll(fields(comparison.rules()));
    return new ComparisonViews.ComparisonView(
        from,
        to,
        comparison.summary(),
        comparison.changes().isEmpty() && comparison.foodDataChanges().isEmpty(),
        comparison.lines().stream().map(ComparisonViewMaker::line).toList(),
        comparison.foodDataChanges().stream().map(ComparisonViewMaker::food).toList(),
        yield,
        ratios,
        macros,
        goal(comparison.goal(), comparison.units()),
        fields(comparison.process()),
        comparison.method().stream().map(ComparisonViewMaker::step).toList(),
        fields(comparison.texts()),
        outcomes(comparison, addresses),
        confounding.verdict() == Confounding.Verdict.CONFOUNDED
            ? confounding.influences().stream()
                .map(each -> (each.name() + " " + each.detail()).strip())
                .toList()
            : List.of(),
        confounding.sentence().isEmpty() ? null : confounding.sentence(),
        CostViews.between(comparison.from().sheet(), comparison.to().sheet()));
  }

  private static ComparisonViews.LineDifference line(LineComparison line) {
    return new ComparisonViews.LineDifference(
        line.id(),
        line.name(),
        line.otherName().orElse(null),
        line.change().key(),
        line.fromEntered().orElse(null),
        line.toEntered().orElse(null),
        FigureSet.number(line.from()),
        FigureSet.number(line.to()),
        FigureSet.number(line.delta()),
        BakeViews.number(line.percentChange()),
        line.before().isPresent() ? FigureSet.number(line.fromBakersPercent()) : null,
        line.after().isPresent() ? FigureSet.number(line.toBakersPercent()) : null,
        line.moved(),
        line.flourMarkChanged() ? line.after().map(l -> l.line().flour()).orElse(null) : null,
        line.noteChanged() ? note(line.before()) : null,
        line.noteChanged() ? note(line.after()) : null);
  }

  private static String note(Optional<WorksheetLine> line) {
    return line.flatMap(each -> each.line().note()).orElse(null);
  }

  private static ComparisonViews.FoodDifference food(FoodDataChange change) {
    List<ComparisonViews.FieldDifference> fields = new ArrayList<>();
    for (FoodDataChange.FoodFigureChange figure : change.figures()) {
      String unit = figure.nutrient().unit();
      fields.add(
          new ComparisonViews.FieldDifference(
              figure.nutrient().label() + " of 100 g",
              FigureText.of(figure.from(), unit),
              FigureText.of(figure.to(), unit)));
    }
    fields.addAll(fields(change.weights()));
    fields.addAll(fields(change.others()));
    return new ComparisonViews.FoodDifference(change.food(), change.name(), fields);
  }

  private static List<ComparisonViews.FieldDifference> fields(List<FieldChange> changes) {
    List<ComparisonViews.FieldDifference> fields = new ArrayList<>();
    for (FieldChange change : changes) {
      fields.add(
          new ComparisonViews.FieldDifference(
              change.label(), change.from().orElse(null), change.to().orElse(null)));
    }
    return fields;
  }

  private static ComparisonViews.FigureDifference figure(
      FigureComparison figure, ShownUnits units) {
    String unit = figure.figure().unit();
    return new ComparisonViews.FigureDifference(
        figure.name(),
        unit,
        FigureSet.number(figure.from()),
        FigureSet.number(figure.to()),
        FigureSet.number(figure.delta()),
        figure.text(figure.from(), units),
        figure.text(figure.to(), units),
        figure.difference(units),
        figure.contributions().stream()
            .map(
                each ->
                    new ComparisonViews.ContributionView(
                        each.text(), each.line().orElse(null), each.delta()))
            .toList());
  }

  private static ComparisonViews.GoalDifference goal(GoalComparison goal, ShownUnits units) {
    if (goal.from().isEmpty() && goal.to().isEmpty()) {
      return null;
    }
    return new ComparisonViews.GoalDifference(
        goal.from().orElse(null),
        goal.to().orElse(null),
        goal.rules().stream().map(rule -> rule(rule, units)).toList());
  }

  private static ComparisonViews.GoalRuleDifference rule(
      GoalComparison.RuleChange rule, ShownUnits units) {
    return new ComparisonViews.GoalRuleDifference(
        rule.limit().map(limit -> limit.inWords(units)).orElse(rule.rule()),
        rule.limit().map(limit -> limit.figure().key()).orElse(null),
        rule.limit()
            .filter(limit -> limit.figure().isMacro())
            .map(limit -> limit.basis().key())
            .orElse(null),
        rule.limit()
            .map(
                limit ->
                    new Views.LimitView(
                        BakeViews.number(limit.atLeast()), BakeViews.number(limit.atMost())))
            .orElse(null),
        met(rule.from()),
        met(rule.to()),
        switch (rule.course()) {
          case NEWLY_MET -> "newly met";
          case NEWLY_BROKEN -> "newly broken";
          case NEWLY_UNKNOWN -> "newly unknown";
          case STILL_MET -> "still met";
          case STILL_BROKEN -> "still broken";
          case STILL_UNKNOWN -> "still unknown";
          case ONLY_BEFORE -> "only before";
          case ONLY_AFTER -> "only now";
        });
  }

  private static Boolean met(Optional<GoalCheck.Outcome> outcome) {
    return outcome.isEmpty() ? null : GoalViews.met(outcome.get());
  }

  private static ComparisonViews.StepDifference step(StepDiff step) {
    if (step instanceof StepDiff.Kept kept) {
      return new ComparisonViews.StepDifference(
          "same", kept.fromNumber(), kept.toNumber(), List.of(run("same", kept.text())));
    }
    if (step instanceof StepDiff.Added added) {
      return new ComparisonViews.StepDifference(
          "added", null, added.toNumber(), List.of(run("added", added.text())));
    }
    if (step instanceof StepDiff.Removed removed) {
      return new ComparisonViews.StepDifference(
          "removed", removed.fromNumber(), null, List.of(run("removed", removed.text())));
    }
    StepDiff.Changed changed = (StepDiff.Changed) step;
    return new ComparisonViews.StepDifference(
        "changed",
        changed.fromNumber(),
        changed.toNumber(),
        changed.words().stream().map(ComparisonViewMaker::run).toList());
  }

  private static ComparisonViews.RunView run(TextRun run) {
    return run(run.kind().name().toLowerCase(Locale.ROOT), run.text());
  }

  private static ComparisonViews.RunView run(String change, String text) {
    return new ComparisonViews.RunView(change, text);
  }

  private static ComparisonViews.OutcomeView outcomes(
      Comparison comparison, Map<String, List<String>> addresses) {
    Outcomes outcomes = comparison.outcomes();
    return new ComparisonViews.OutcomeView(
        Desk.views(comparison.from().bakes(), addresses),
        Desk.views(comparison.to().bakes(), addresses),
        outcomes.figures().stream().map(ComparisonViewMaker::outcome).toList(),
        outcomes.findings().stream().map(ComparisonViewMaker::finding).toList(),
        comparison.confounding().likeForLikeSentence().map(List::of).orElse(List.of()));
  }

  private static ComparisonViews.OutcomeFigure outcome(Outcomes.OutcomeFigure figure) {
    return new ComparisonViews.OutcomeFigure(
        figure.measure().label(),
        figure.measure().unit(),
        FigureSet.number(figure.from()),
        FigureSet.number(figure.to()),
        BakeViews.number(
            figure.delta().isKnown()
                ? OptionalDouble.of(figure.delta().low())
                : OptionalDouble.empty()),
        figure.fromCount(),
        figure.toCount());
  }

  private static ComparisonViews.FindingDifference finding(Outcomes.FindingComparison finding) {
    return new ComparisonViews.FindingDifference(
        finding.finding(),
        finding.merit().orElse(null),
        finding.fromPieces(),
        finding.toPieces(),
        switch (finding.course()) {
          case APPEARED -> "appeared";
          case GONE -> "gone";
          case STAYED -> "stayed";
          case NOT_COMPARABLE -> "not comparable";
        });
  }
}
