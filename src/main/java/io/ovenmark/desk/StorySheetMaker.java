package io.ovenmark.desk;

import io.ovenmark.bake.Photo;
import io.ovenmark.notebook.Stories;
import io.ovenmark.publish.story.Arc;
import io.ovenmark.publish.story.Lesson;
import io.ovenmark.publish.story.Move;
import io.ovenmark.publish.story.Story;
import io.ovenmark.publish.story.StoryFile;
import io.ovenmark.publish.story.StoryMarkdown;
import io.ovenmark.story.StoryPlan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns a story into the record of its answer. */
final class StorySheetMaker {
  private StorySheetMaker() {}

  static StoryViews.StorySheet of(
      StoryLine line,
      StoryParts parts,
      List<Lesson> lessons,
      List<StoryParts.Told> told,
      Story story,
      StoryPlan plan,
      Optional<Stories.Kept> kept,
      List<StoryFile> pictures) {
    return new StoryViews.StorySheet(
        line.line().line(),
        story.name(),
        kept.filter(found -> found.plan().equals(plan)).isPresent(),
        kept.map(Stories.Kept::content).orElse(null),
        plan.steps().isEmpty(),
        plan(plan),
        story.title(),
        story.span(),
        told.stream().map(StorySheetMaker::step).toList(),
        story.arcs().stream().map(StorySheetMaker::arc).toList(),
        candidates(line, lessons),
        parts.figures().stream()
            .map(figure -> new TrendViews.Choice(figure.key(), figure.label(), figure.group()))
            .toList(),
        line.all().stream()
            .flatMap(bake -> bake.photos().stream())
            .map(photo -> new CardViews.PhotoChoice(photo.file(), PublishedPhotos.alternative(photo)))
            .toList(),
        story.card().address(),
        story.card().cautions(),
        StoryMarkdown.text(story),
        pictures.stream()
            .map(each -> new StoryViews.PictureView(each.name(), each.alternative()))
            .toList());
  }

  private static StoryViews.PlanView plan(StoryPlan plan) {
    return new StoryViews.PlanView(
        plan.title().orElse(null),
        plan.by().orElse(null),
        plan.opening().orElse(null),
        plan.closing().orElse(null),
        plan.figures(),
        plan.steps().stream()
            .map(
                step ->
                    new StoryOrder.StepOrder(
                        step.revision(),
                        step.heading().orElse(null),
                        step.words().orElse(null),
                        step.photo().orElse(null),
                        step.figure().orElse(null)))
            .toList());
  }

  private static StoryViews.StepView step(StoryParts.Told told) {
    List<StoryViews.MoveView> moves = told.moves().stream().map(StorySheetMaker::move).toList();
    return new StoryViews.StepView(
        told.stop().number(),
        told.stop().address().toString(),
        told.stop().date(),
        told.heading(),
        told.chosen().words().orElse(null),
        told.changed(),
        told.credit().orElse(null),
        told.seen(),
        moves.stream().findFirst().orElse(null),
        moves,
        told.photo().map(Photo::file).orElse(null),
        told.photo().map(PublishedPhotos::alternative).orElse(null));
  }

  private static StoryViews.MoveView move(Move move) {
    return new StoryViews.MoveView(
        move.key(),
        move.label(),
        move.unit(),
        move.from(),
        move.to(),
        move.fromText(),
        move.toText(),
        move.difference(),
        move.turned());
  }

  private static StoryViews.ArcView arc(Arc arc) {
    boolean limited = arc.atLeast().isPresent() || arc.atMost().isPresent();
    return new StoryViews.ArcView(
        arc.key(),
        arc.label(),
        arc.unit(),
        limited ? new Views.LimitView(number(arc.atLeast()), number(arc.atMost())) : null,
        arc.points().stream()
            .map(
                point ->
                    new StoryViews.ArcPoint(
                        point.revision(), point.told(), number(point.value()), point.text()))
            .toList());
  }

  private static Double number(OptionalDouble value) {
    return BakeViews.number(value);
  }

  private static List<StoryViews.Candidate> candidates(StoryLine line, List<Lesson> lessons) {
    Map<Integer, Lesson> byRevision = new HashMap<>();
    lessons.forEach(lesson -> byRevision.put(lesson.revision(), lesson));
    List<Integer> proposed = Lesson.proposed(lessons);
    return line.stops().stream()
        .map(
            stop ->
                new StoryViews.Candidate(
                    stop.number(),
                    stop.address().toString(),
                    stop.date(),
                    stop.revision().note(),
                    stop.bakes().size(),
                    Optional.ofNullable(byRevision.get(stop.number()))
                        .filter(Lesson::taught)
                        .map(Lesson::why)
                        .orElse(null),
                    proposed.contains(stop.number()),
                    line.sheet(stop).isPresent()))
        .toList();
  }
}
