package io.ovenmark.desk;

import io.ovenmark.bake.Photo;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Confounding;
import io.ovenmark.compare.Outcomes;
import io.ovenmark.compare.Side;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.story.Arc;
import io.ovenmark.publish.story.Lesson;
import io.ovenmark.publish.story.Move;
import io.ovenmark.story.StoryPlan;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Works out what a story tells, without pictures. */
final class StoryParts {
  private static final int GOAL_FIGURES = 2;

  private final Desk desk;
  private final StoryLine line;
  private final StoryMoves moves;

  /**
   * A step worked out.
   *
   * @param stop the revision
   * @param chosen what the author chose
   * @param changed what changed since the step before
   * @param credit what may be credited to what
   * @param seen what was seen
   * @param moves the figures that moved, the shown one first
   * @param photo its photo
   */
  record Told(
      StoryLine.Stop stop,
      StoryPlan.Step chosen,
      List<String> changed,
      Optional<String> credit,
      List<String> seen,
      List<Move> moves,
      Optional<Photo> photo) {
    String heading() {
      return chosen.heading().orElseGet(() -> stop.revision().note());
    }
  }

  StoryParts(Desk desk, StoryLine line) {
    this.desk = desk;
    this.line = line;
    this.moves = new StoryMoves(line, desk.units());
  }

  /** What the bakes of each baked revision taught. */
  List<Lesson> lessons() {
    List<Lesson> lessons = new ArrayList<>();
    StoryLine.Stop before = null;
    for (StoryLine.Stop stop : line.stops()) {
      if (stop.bakes().isEmpty() || line.sheet(stop).isEmpty()) {
        continue;
      }
      boolean verdict =
          stop.bakes().stream()
              .flatMap(bake -> bake.pieces().stream())
              .anyMatch(piece -> piece.verdict().isPresent());
      int findings =
          before == null
              ? 0
              : (int)
                  Comparison.between(line.side(before), line.side(stop)).outcomes().findings()
                      .stream()
                      .filter(
                          each ->
                              each.course() == Outcomes.Course.APPEARED
                                  || each.course() == Outcomes.Course.GONE)
                      .count();
      Optional<Move> move =
          before == null ? Optional.empty() : moves.measured(before, stop);
      lessons.add(new Lesson(stop.number(), before == null, findings, move, verdict));
      before = stop;
    }
    return lessons;
  }

  /** The steps of a plan, or those that are proposed when it has none. */
  List<StoryPlan.Step> steps(StoryPlan plan, List<Lesson> lessons) {
    if (!plan.steps().isEmpty()) {
      return plan.steps();
    }
    List<Integer> proposed = Lesson.proposed(lessons);
    if (proposed.isEmpty()) {
      List<Integer> readable =
          line.stops().stream()
              .filter(stop -> line.sheet(stop).isPresent())
              .map(StoryLine.Stop::number)
              .toList();
      proposed =
          Stream.of(readable.stream().findFirst(), readable.stream().reduce((a, b) -> b))
              .flatMap(Optional::stream)
              .distinct()
              .toList();
    }
    return proposed.stream().map(StoryPlan.Step::of).toList();
  }

  /** Works the steps out. */
  List<Told> tell(List<StoryPlan.Step> steps) {
    List<Told> told = new ArrayList<>();
    StoryLine.Stop before = null;
    for (StoryPlan.Step step : steps) {
      StoryLine.Stop stop = line.stop(step.revision());
      told.add(tell(step, Optional.ofNullable(before), stop));
      before = stop;
    }
    return told;
  }

  private Told tell(StoryPlan.Step step, Optional<StoryLine.Stop> before, StoryLine.Stop stop) {
    Side after = line.side(stop);
    Comparison comparison =
        Comparison.between(before.map(line::side).orElse(after), after, desk.units());
    List<Move> moved =
        before.map(earlier -> new ArrayList<>(moves.between(earlier, stop)))
            .orElseGet(ArrayList::new);
    step.figure()
        .ifPresent(
            key -> {
              Optional<Move> wanted =
                  moved.stream().filter(move -> move.key().equals(key)).findFirst();
              wanted.ifPresent(
                  move -> {
                    moved.remove(move);
                    moved.add(0, move);
                  });
            });
    return new Told(
        stop,
        step,
        before.isEmpty() ? List.of() : List.of(changed(comparison)),
        before.isEmpty() ? Optional.empty() : credit(comparison),
        StorySeen.of(stop.bakes(), comparison.outcomes().findings()),
        moved,
        photo(step, stop));
  }

  private static String changed(Comparison comparison) {
    return comparison.changes().isEmpty()
        ? "Nothing changed in the formula; it was baked again."
        : comparison.summary();
  }

  /** What differs stands beside it already: here only how many things, and what follows. */
  private static Optional<String> credit(Comparison comparison) {
    Confounding confounding = comparison.confounding();
    return switch (confounding.verdict()) {
      case CONFOUNDED ->
          Optional.of(
              confounding.influences().size()
                  + " things changed at once, so what came of it cannot be credited to one of"
                  + " them.");
      case SINGLE, NOTHING_DIFFERS ->
          Optional.of(confounding.sentence()).filter(text -> !text.isBlank());
      default -> Optional.empty();
    };
  }

  private Optional<Photo> photo(StoryPlan.Step step, StoryLine.Stop stop) {
    return PublishedPhotos.choose(
        step.photo(), line.all(), stop.bakes(), "photo of revision " + step.revision());
  }

  /** The figures whose way could be drawn. */
  List<TrendFigure> figures() {
    return TrendFigure.all(
        line.stops().stream().flatMap(stop -> line.worksheet(stop).stream()).toList());
  }

  /** The ways of the figures of a plan, or of the usual ones when it names none. */
  List<Arc> arcs(StoryPlan plan, List<Told> told) {
    if (told.isEmpty()) {
      return List.of();
    }
    Optional<Goal> goal = line.goal(told.get(told.size() - 1).stop());
    if (!plan.figures().isEmpty()) {
      List<TrendFigure> all = figures();
      return plan.figures().stream()
          .map(key -> arc(TrendFigure.named(key, all), goal, told))
          .toList();
    }
    List<TrendFigure> usual = new ArrayList<>();
    usual.add(TrendFigure.Outcome.LIKING);
    usual.add(TrendFigure.Outcome.HEIGHT);
    goal.map(Goal::limits).orElse(List.of()).stream()
        .limit(GOAL_FIGURES)
        .map(limit -> new TrendFigure.Worked(limit.figure(), limit.basis()))
        .forEach(usual::add);
    return usual.stream()
        .map(figure -> arc(figure, goal, told))
        .filter(Arc::isDrawable)
        .toList();
  }

  private Arc arc(TrendFigure figure, Optional<Goal> goal, List<Told> told) {
    int first = told.get(0).stop().number();
    int last = told.get(told.size() - 1).stop().number();
    Optional<Limit> limit = goal.flatMap(figure::limit);
    boolean weighed =
        figure instanceof TrendFigure.Worked worked && worked.figure().isWeighed();
    List<Arc.Point> points = new ArrayList<>();
    for (StoryLine.Stop stop : line.stops()) {
      if (stop.number() >= first && stop.number() <= last) {
        Optional<Worksheet> sheet = line.worksheet(stop);
        TrendViews.Value value = figure.value(sheet, stop.bakes(), desk.units());
        points.add(
            new Arc.Point(
                stop.number(),
                told.stream().anyMatch(each -> each.stop().number() == stop.number()),
                value.value() == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(value.value()),
                value.text()));
      }
    }
    return new Arc(
        figure.key(),
        figure.label(),
        figure.unit(desk.units()),
        bound(limit.map(Limit::atLeast), weighed),
        bound(limit.map(Limit::atMost), weighed),
        points);
  }

  private OptionalDouble bound(Optional<OptionalDouble> bound, boolean weighed) {
    OptionalDouble grams = bound.orElse(OptionalDouble.empty());
    return grams.isPresent() && weighed
        ? desk.units()
            .inMassUnit(Quantity.known(grams.getAsDouble()))
            .value()
        : grams;
  }
}
