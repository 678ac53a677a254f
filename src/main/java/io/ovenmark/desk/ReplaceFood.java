package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.lever.Kept;
import io.ovenmark.lever.Readings;
import io.ovenmark.lever.Replacement;
import io.ovenmark.lever.ReplacementSentences;
import io.ovenmark.lever.Replacements;
import io.ovenmark.lever.SetAside;
import io.ovenmark.lever.StandIn;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds the foods that can stand in for a line and keep a figure of it, and turns one of them into
 * a draft or a revision. A change concerns the next revision, so everything is worked out with the
 * foods of today.
 *
 * <pre>{@code
 * ReplaceFood verb = new ReplaceFood(desk);
 * ReplaceOrder order = ReplaceOrder.of("lupin-flour");
 * ReplaceViews.ReplaceSheet sheet = verb.call(address, order);
 * verb.draft(address, order.asking("chickpea-flour"), by);
 * }</pre>
 */
public final class ReplaceFood {
  private static final String NO_GOAL = "none";

  private final Desk desk;

  /**
   * What was asked and found.
   *
   * @param state the formula's state
   * @param sheet worked out, held to the goal that was asked for
   * @param found the answers, all of them
   * @param with the food that was asked about alone; empty for all
   * @param unreadable foods whose files are damaged, with what is wrong
   */
  record Found(
      FindLevers.State state,
      Desk.Sheet sheet,
      Replacements found,
      Optional<String> with,
      Map<String, String> unreadable) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ReplaceFood(Desk desk) {
    this.desk = desk;
  }

  /**
   * What can be asked about a state.
   *
   * @param address which state
   * @return its lines, what can be kept, and the goals
   * @throws Refusal when there is no such state
   */
  public ReplaceViews.Choices choices(Address address) {
    FindLevers.State state = FindLevers.state(desk, address);
    Worksheet sheet = state.sheet().worksheet();
    List<ReplaceViews.KeepChoice> keeps = new ArrayList<>();
    for (Kept kept : Kept.values()) {
      keeps.add(new ReplaceViews.KeepChoice(kept.key(), kept.label()));
    }
    List<ReplaceViews.GoalChoice> goals = new ArrayList<>();
    for (String slug : goals(state)) {
      goal(state, slug)
          .ifPresent(goal -> goals.add(new ReplaceViews.GoalChoice(slug, goal.name())));
    }
    return new ReplaceViews.Choices(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        sheet.formula().name(),
        sheet.lines().stream().map(ReplaceFood::choice).toList(),
        keeps,
        sheet.formula().goal().filter(slug -> goal(state, slug).isPresent()).orElse(null),
        goals);
  }

  private static ReplaceViews.LineChoice choice(WorksheetLine line) {
    return new ReplaceViews.LineChoice(
        line.line().id(),
        line.name(),
        line.line().amount().toString(),
        line.food().map(Kept::usual).map(Kept::key).orElse(null));
  }

  /**
   * Finds the foods.
   *
   * @param address which state
   * @param order what is asked
   * @return the foods, best first, and those that are not proposed
   * @throws Refusal when there is no such state, line, goal or food, or nothing to keep
   */
  public ReplaceViews.ReplaceSheet call(Address address, ReplaceOrder order) {
    return new ReplaceSheetMaker(desk, find(address, order)).sheet();
  }

  /**
   * Begins a draft with the food that was asked about, with the note that is proposed.
   *
   * @param address which state
   * @param order what is asked, with a food
   * @param by who, and when
   * @return the draft
   * @throws Refusal when no food was named, or it is not one that is proposed
   */
  public DraftViews.DraftView draft(Address address, ReplaceOrder order, By by) {
    Found found = find(address, order);
    Replacement answer = answer(found);
    JsonText document = JsonText.of(FormulaCodec.write(formula(found, answer)));
    KeepDrafts drafts = new KeepDrafts(desk);
    DraftViews.DraftView begun =
        drafts.begin(Optional.of(document), Optional.of(found.state().shown().toString()), by);
    KeepDrafts.Typed typed =
        new KeepDrafts.Typed(document, "", ReplacementSentences.note(found.found(), answer));
    drafts.keep(begun.id(), begun.version(), typed, by);
    return drafts.show(begun.id());
  }

  /**
   * Commits the food that was asked about as the next revision.
   *
   * @param address the revision that was asked about, the newest of its line of history
   * @param order what is asked, with a food
   * @param note why; empty for the note that is proposed
   * @param by who, and when
   * @return what was committed
   * @throws Refusal when no food was named, it is not proposed, or a newer revision came since
   */
  public WriteViews.RevisionWritten apply(
      Address address, ReplaceOrder order, Optional<String> note, By by) {
    Found found = find(address, order);
    Replacement answer = answer(found);
    Revision base = FindLevers.newestOf(desk, found.state(), address);
    ReviseFormula.Proposal proposal =
        new ReviseFormula.Proposal(
            found.state().line(), Optional.of(base), formula(found, answer), Optional.empty());
    String why = note.orElseGet(() -> ReplacementSentences.note(found.found(), answer));
    return new ReviseFormula(desk).call(proposal, why, Choices.NONE, by);
  }

  /** The formula with its own goal, whatever goal was asked about. */
  private static Formula formula(Found found, Replacement answer) {
    return Replacements.replaced(
        found.state().sheet().worksheet().formula(),
        found.found().line().line().id(),
        answer.standIn().food().slug(),
        answer.weigh());
  }

  private static Replacement answer(Found found) {
    String food =
        found
            .with()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        "with",
                        "No food was named that shall stand in.",
                        "Name one of those that are proposed."));
    return found
        .found()
        .answer(food)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    food,
                    "The food \"" + food + "\" is not proposed: "
                        + found.found().setAside().stream()
                            .filter(each -> each.standIn().food().slug().equals(food))
                            .map(SetAside::because)
                            .findFirst()
                            .orElse("the line is made of it already")
                        + ".",
                    "Choose another, keep another figure, or hold the formula to another goal."));
  }

  private Found find(Address address, ReplaceOrder order) {
    if (order.line() == null || order.line().isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "line",
          "No line was named.",
          "Name the line whose food shall be replaced.");
    }
    FindLevers.State state = FindLevers.state(desk, address);
    Desk.Sheet sheet = held(state, order.goal());
    String id = order.line().strip();
    Kept kept =
        order.keep() == null || order.keep().isBlank()
            ? sheet.worksheet().line(id).flatMap(WorksheetLine::food).map(Kept::usual)
                .orElse(Kept.MASS)
            : Asked.read("keep", () -> Kept.read(order.keep()));
    double reading =
        order.readable() == null || order.readable().isBlank()
            ? Readings.FINE
            : Asked.read("readable", () -> Readings.read(order.readable()));
    Map<String, String> unreadable = new TreeMap<>();
    List<StandIn> foods = foods(state, unreadable);
    Optional<String> with =
        Optional.ofNullable(order.with()).map(String::strip).filter(food -> !food.isEmpty());
    with.ifPresent(food -> requireKnown(food, foods, unreadable));
    Replacements found =
        Asked.read(
            "line",
            () ->
                Replacements.of(
                    sheet.worksheet(),
                    id,
                    kept,
                    sheet.goal().map(GoalCheck::goal),
                    foods,
                    reading));
    return new Found(state, sheet, found, with, unreadable);
  }

  private static void requireKnown(
      String food, List<StandIn> foods, Map<String, String> unreadable) {
    List<String> slugs = foods.stream().map(each -> each.food().slug()).toList();
    if (!slugs.contains(food) && !unreadable.containsKey(food)) {
      List<String> near = NearNames.of(food, slugs);
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          food,
          "There is no food \"" + food + "\" in the pantry or the built-in table.",
          near.isEmpty()
              ? "Find foods with: ovenmark pantry find WORDS"
              : "Did you mean " + String.join(" or ", near) + "?");
    }
  }

  /** The state held to a goal, with the goal's own policy. */
  private Desk.Sheet held(FindLevers.State state, String wanted) {
    if (wanted == null || wanted.isBlank()) {
      return state.sheet();
    }
    Formula own = state.sheet().worksheet().formula();
    Optional<String> slug =
        wanted.strip().equals(NO_GOAL) ? Optional.empty() : Optional.of(wanted.strip());
    slug.ifPresent(
        goal -> {
          if (goal(state, goal).isEmpty()) {
            throw new Refusal(
                Refusal.Reason.NOT_FOUND,
                goal,
                "There is no goal \"" + goal + "\" in this notebook.",
                "Its goals are " + String.join(", ", goals(state)) + "; none asks without a goal.");
          }
        });
    Desk.Sheet sheet = desk.draft(own.withGoal(slug), state.line(), List.of());
    Worksheet weighed =
        sheet.worksheet().with(state.sheet().worksheet().bakedYield());
    return new Desk.Sheet(
        weighed,
        sheet.goal().map(check -> GoalCheck.of(check.goal(), weighed)));
  }

  private SortedSet<String> goals(FindLevers.State state) {
    SortedSet<String> slugs = new TreeSet<>(desk.notebook().latest().goals());
    slugs.addAll(here(state).goals());
    return slugs;
  }

  private Optional<Goal> goal(FindLevers.State state, String slug) {
    try {
      return here(state).goal(slug).or(() -> desk.notebook().latest().goal(slug));
    } catch (UnreadableException | StoreException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Contents here(FindLevers.State state) {
    return state.line().variant().isEmpty()
        ? desk.notebook().latest()
        : desk.notebook().latest(state.line());
  }

  /** The pantry of the line of history, then the main line's, then the built-in table's. */
  private List<StandIn> foods(FindLevers.State state, Map<String, String> unreadable) {
    Contents main = desk.notebook().latest();
    Contents here = here(state);
    SortedSet<String> own = new TreeSet<>(main.foods());
    own.addAll(here.foods());
    Map<String, StandIn> foods = new HashMap<>();
    List<StandIn> ordered = new ArrayList<>();
    for (String slug : own) {
      try {
        Optional<Food> food = here.food(slug).or(() -> main.food(slug));
        food.ifPresent(found -> foods.put(slug, new StandIn(found, true)));
      } catch (UnreadableException | StoreException e) {
        unreadable.put(slug, "its file is damaged");
      }
      Optional.ofNullable(foods.get(slug)).ifPresent(ordered::add);
    }
    for (Food food : BuiltInPantry.all()) {
      if (!own.contains(food.slug())) {
        ordered.add(new StandIn(food, false));
      }
    }
    return ordered;
  }
}
