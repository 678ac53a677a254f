package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.goal.Goal;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds or changes a goal by a form: first tried, with who would newly meet or miss it, then saved.
 * What somebody else changed meanwhile is merged fact by fact; where both changed the same nothing
 * is saved and both sides are shown.
 *
 * <pre>{@code
 * KitchenWork.GoalTried tried = new KeepGoal(desk).look(form);
 * KitchenWork.Saved saved = new KeepGoal(desk).call(form, by);
 * }</pre>
 */
public final class KeepGoal {
  private static final int MOST_TRIES = 5;

  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public KeepGoal(Desk desk) {
    this.desk = desk;
  }

  private record Sides(
      String slug,
      Contents contents,
      Optional<Goal> base,
      Optional<Goal> theirs,
      GoalReading.Typed mine) {}

  /**
   * Tries a form out; nothing is written.
   *
   * @param form the form
   * @return its rules and who would stand otherwise; for a goal that nobody states yet, how
   *     everything would stand
   * @throws Refusal when what the form rests on is not known
   */
  public KitchenWork.GoalTried look(GoalForm form) {
    Sides sides = sides(form);
    Goal goal = sides.mine().goal();
    LinesInUse lines = new LinesInUse(desk.notebook());
    MovesMaker moves = new MovesMaker(desk);
    List<String> apart = new ArrayList<>();
    boolean ruled = !GoalParts.rules(goal, desk.units()).isEmpty();
    if (sides.base().isEmpty() && ruled) {
      lines.all().stream()
          .map(use -> new LinesInUse.Use(use.line(), withGoal(use, goal)))
          .forEach(use -> moves.add(List.of(use), Trial.with(goal)));
    } else if (ruled) {
      for (LinesInUse.Use use : lines.stating(sides.slug())) {
        boolean own = use.line().variant().isPresent() && copy(use, sides.slug()).isPresent();
        if (!own || form.variants() && follows(use, sides)) {
          moves.add(
              List.of(use),
              own ? Trial.NOTHING : Trial.with(sides.base().orElse(goal)),
              Trial.with(goal));
        } else {
          apart.add(use.line().line());
        }
      }
    }
    return new KitchenWork.GoalTried(
        GoalParts.rules(goal, desk.units()),
        goal.netCarbohydrate().map(NetCarbohydrate::inWords).orElse(null),
        GoalReading.changed(
            sides.base().map(GoalReading::facts).orElse(Map.of()), GoalReading.facts(goal)),
        problems(sides),
        moves.moves(apart),
        Cautions.of(goal));
  }

  private static Formula withGoal(LinesInUse.Use use, Goal goal) {
    return use.formula().withGoal(Optional.of(goal.slug()));
  }

  /**
   * Saves a form.
   *
   * @param form the form
   * @param by who commits it, and when
   * @return what became of it
   * @throws Refusal when what the form rests on is not known, or the notebook cannot be written
   */
  public KitchenWork.Saved call(GoalForm form, By by) {
    for (int tries = 1; ; tries++) {
      try {
        return attempt(form, by);
      } catch (Refusal refusal) {
        boolean moved =
            refusal.reason() == Refusal.Reason.CONFLICT
                || refusal.reason() == Refusal.Reason.EXISTS;
        if (!moved || tries == MOST_TRIES) {
          throw refusal;
        }
      }
    }
  }

  private KitchenWork.Saved attempt(GoalForm form, By by) {
    Sides sides = sides(form);
    List<KitchenWork.FieldProblem> problems = problems(sides);
    if (!problems.isEmpty()) {
      return result("invalid", sides, List.of(), List.of(), List.of(), problems, List.of());
    }
    Goal mine = sides.mine().goal();
    Goal base = sides.base().orElse(mine);
    Goal theirs = sides.theirs().orElse(base);
    FactMerge merge =
        FactMerge.of(
            GoalReading.facts(base),
            GoalReading.facts(mine),
            GoalReading.facts(theirs),
            answers(form, sides));
    if (!merge.clashes().isEmpty()) {
      return result(
          "conflict", sides, merge.clashes(), List.of(), List.of(), List.of(), List.of());
    }
    Goal merged =
        theirs.equals(base) ? mine : GoalReading.merged(mine, theirs, merge.merged());
    boolean unchanged = sides.theirs().equals(Optional.of(merged));
    if (!unchanged) {
      String note = (sides.theirs().isPresent() ? "Goal changed: " : "Goal: ") + merged.name();
      new RecordWriter(desk.notebook()).saveGoal(merged, sides.theirs(), note, by);
    }
    List<String> remarks = new ArrayList<>();
    List<String> alsoIn = form.variants() ? variants(sides, merged, by, remarks) : List.of();
    return result(
        unchanged && alsoIn.isEmpty() ? "unchanged" : "saved",
        sides,
        List.of(),
        merge.fromThem(),
        alsoIn,
        List.of(),
        remarks);
  }

  /** Picks count only as long as the other side is the one that was shown. */
  private Map<String, String> answers(GoalForm form, Sides sides) {
    return seen(sides.slug(), form.answered()).equals(sides.theirs()) ? form.picks() : Map.of();
  }

  private List<String> variants(Sides sides, Goal merged, By by, List<String> remarks) {
    List<String> alsoIn = new ArrayList<>();
    for (LinesInUse.Use use : new LinesInUse(desk.notebook()).stating(sides.slug())) {
      Optional<Goal> own = copy(use, sides.slug());
      boolean follows =
          use.line().variant().isPresent() && own.isPresent() && follows(use, sides);
      if (!follows || own.equals(Optional.of(merged))) {
        continue;
      }
      try {
        new RecordWriter(desk.notebook())
            .saveGoal(use.line(), merged, own, "Goal changed: " + merged.name(), by);
        alsoIn.add(use.line().line());
      } catch (Refusal | StoreException e) {
        remarks.add("The copy of " + use.line().line() + " stayed as it was: " + e.getMessage());
      }
    }
    return alsoIn;
  }

  /** Whether a variant's copy says the same as the goal that the form began with, or as it is. */
  private boolean follows(LinesInUse.Use use, Sides sides) {
    Optional<Goal> own = copy(use, sides.slug());
    return own.isPresent() && (own.equals(sides.base()) || own.equals(sides.theirs()));
  }

  private Optional<Goal> copy(LinesInUse.Use use, String slug) {
    try {
      return desk.notebook().latest(use.line()).goal(slug);
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
      return Optional.empty();
    }
  }

  private Sides sides(GoalForm form) {
    String slug = GoalReading.slugOf(form);
    Contents contents = desk.notebook().latest();
    Optional<Goal> base = seen(slug, form.seen());
    return new Sides(
        slug, contents, base, contents.goal(slug), GoalReading.of(form, base, contents));
  }

  private Optional<Goal> seen(String slug, String commit) {
    if (commit == null || commit.isBlank()) {
      return Optional.empty();
    }
    CommitId id = Asked.read("seen", () -> new CommitId(commit));
    return desk.notebook().at(id).goal(slug);
  }

  private static List<KitchenWork.FieldProblem> problems(Sides sides) {
    List<KitchenWork.FieldProblem> problems = new ArrayList<>(sides.mine().problems());
    if (sides.base().isEmpty() && sides.theirs().isPresent()) {
      problems.add(
          new KitchenWork.FieldProblem(
              "goal",
              "There is a goal \"" + sides.slug() + "\" already.",
              "Choose another short name, or open that goal and change it."));
    }
    return problems;
  }

  private static KitchenWork.Saved result(
      String outcome,
      Sides sides,
      List<KitchenWork.Clash> clashes,
      List<String> taken,
      List<String> alsoIn,
      List<KitchenWork.FieldProblem> problems,
      List<String> remarks) {
    return new KitchenWork.Saved(
        outcome,
        sides.slug(),
        clashes,
        sides.contents().commit().hex(),
        taken,
        alsoIn,
        problems,
        remarks);
  }
}
