package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodEdit;
import io.ovenmark.pantry.FoodFacts;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Adds or changes a food by a form: first tried, with the figures that would move, then saved. A
 * form carries the commit that it rests on. What somebody else changed meanwhile is merged fact by
 * fact; where both changed the same nothing is saved and both sides are shown.
 *
 * <pre>{@code
 * FoodForm form = new FoodForm("lupin-flour", null, page.seen(), Map.of("protein_g", "37.2"),
 *     null, null, true, null, null);
 * KitchenWork.FoodTried tried = new SaveFood(desk).look(form);
 * KitchenWork.Saved saved = new SaveFood(desk).call(form, by);
 * }</pre>
 */
public final class SaveFood {
  private static final int MOST_TRIES = 5;
  private static final int NAMED_IN_NOTE = 4;

  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public SaveFood(Desk desk) {
    this.desk = desk;
  }

  /** What a form is about: what it began with, what is there now, and what it says. */
  private record Sides(
      String slug,
      LinesInUse lines,
      FoodPlace place,
      Food base,
      Optional<Food> theirs,
      FoodReading.Typed mine) {
    boolean isNew() {
      return theirs.isEmpty();
    }
  }

  /**
   * Tries a form out; nothing is written, and fields that are faulty are left as they were.
   *
   * @param form the form
   * @return what the food would be and what would move
   * @throws Refusal when what the form rests on is not known
   */
  public KitchenWork.FoodTried look(FoodForm form) {
    Sides sides = sides(form);
    Food food = sides.mine().food();
    NetCarbohydrate net = sides.place().contents().settings().policy().netCarbohydrate();
    MovesMaker moves = new MovesMaker(desk);
    List<String> apart = new ArrayList<>();
    if (!food.equals(sides.base())) {
      moves.add(sides.place().users(sides.slug(), sides.lines()), Trial.with(food));
    }
    for (LinesInUse.Use copy : sides.place().copies(sides.slug(), sides.lines())) {
      if (form.variants() && follows(copy, sides)) {
        moves.add(List.of(copy), Trial.with(food));
      } else {
        apart.add(copy.line().line());
      }
    }
    return new KitchenWork.FoodTried(
        FoodParts.view(food, !sides.isNew(), sides.lines().withFood(sides.slug())),
        FoodParts.net(food, net),
        changed(sides.base(), food),
        problems(sides),
        moves.moves(apart),
        Cautions.of(food));
  }

  /**
   * Saves a form.
   *
   * @param form the form
   * @param by who commits it, and when
   * @return what became of it
   * @throws Refusal when what the form rests on is not known, or the notebook cannot be written
   */
  public KitchenWork.Saved call(FoodForm form, By by) {
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

  private KitchenWork.Saved attempt(FoodForm form, By by) {
    Sides sides = sides(form);
    List<KitchenWork.FieldProblem> problems = problems(sides);
    if (!problems.isEmpty()) {
      return result("invalid", sides, List.of(), List.of(), List.of(), problems, List.of());
    }
    Food theirs = sides.theirs().orElse(sides.base());
    FactMerge merge =
        FactMerge.of(
            FoodFacts.of(sides.base()),
            FoodFacts.of(sides.mine().food()),
            FoodFacts.of(theirs),
            answers(form, sides));
    if (!merge.clashes().isEmpty()) {
      List<KitchenWork.Clash> clashes =
          merge.clashes().stream()
              .map(clash -> clash.labelled(FoodFacts.label(clash.fact())))
              .toList();
      return result("conflict", sides, clashes, List.of(), List.of(), List.of(), List.of());
    }
    Food merged = merged(sides, theirs, merge.merged());
    List<String> taken = merge.fromThem().stream().map(FoodFacts::label).toList();
    boolean unchanged = sides.theirs().equals(Optional.of(merged));
    if (!unchanged) {
      save(sides, merged, by);
    }
    List<String> remarks = new ArrayList<>();
    List<String> alsoIn = form.variants() ? variants(sides, merged, by, remarks) : List.of();
    return result(
        unchanged && alsoIn.isEmpty() ? "unchanged" : "saved",
        sides, List.of(), taken, alsoIn, List.of(), remarks);
  }

  /** Picks count only as long as the other side is the one that was shown. */
  private Map<String, String> answers(FoodForm form, Sides sides) {
    boolean same =
        FoodPlace.seen(desk.notebook(), sides.slug(), form.answered()).equals(sides.theirs());
    return same ? form.picks() : Map.of();
  }

  private void save(Sides sides, Food merged, By by) {
    String note =
        sides.isNew()
            ? "Food: " + merged.name()
            : "Food changed: " + merged.name() + what(sides.theirs().orElseThrow(), merged);
    RecordWriter writer = new RecordWriter(desk.notebook());
    Optional<Address> line = sides.place().line();
    if (line.isPresent()) {
      writer.saveFood(line.get(), merged, sides.theirs(), note, by);
    } else {
      writer.saveFood(merged, sides.theirs(), note, by);
    }
  }

  /** Changes the copies of variants that said the same as the food before. */
  private List<String> variants(Sides sides, Food merged, By by, List<String> remarks) {
    List<String> alsoIn = new ArrayList<>();
    RecordWriter writer = new RecordWriter(desk.notebook());
    for (LinesInUse.Use copy : sides.place().copies(sides.slug(), sides.lines())) {
      Optional<Food> own = copy(copy, sides.slug());
      if (!follows(copy, sides) || own.equals(Optional.of(merged))) {
        continue;
      }
      try {
        String note = "Food changed: " + merged.name() + what(own.orElseThrow(), merged);
        writer.saveFood(copy.line(), merged, own, note, by);
        alsoIn.add(copy.line().line());
      } catch (Refusal | StoreException e) {
        remarks.add(
            "The copy of " + copy.line().line() + " stayed as it was: " + e.getMessage());
      }
    }
    return alsoIn;
  }

  /** Whether a variant's copy says the same as the food that the form began with, or as it is. */
  private boolean follows(LinesInUse.Use copy, Sides sides) {
    Optional<Food> own = copy(copy, sides.slug());
    return own.isPresent()
        && (own.get().equals(sides.base()) || own.equals(sides.theirs()));
  }

  private Optional<Food> copy(LinesInUse.Use copy, String slug) {
    try {
      return desk.notebook().latest(copy.line()).food(slug);
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
      return Optional.empty();
    }
  }

  private Sides sides(FoodForm form) {
    String slug = FoodReading.slugOf(form);
    LinesInUse lines = new LinesInUse(desk.notebook());
    FoodPlace place = FoodPlace.of(desk, slug, form.line(), lines);
    boolean begun = form.seen() != null && !form.seen().isBlank();
    Food base =
        FoodPlace.seen(desk.notebook(), slug, form.seen())
            .or(() -> begun ? BuiltInPantry.find(slug) : Optional.empty())
            .orElseGet(() -> FoodReading.blank(slug));
    return new Sides(slug, lines, place, base, place.food(), FoodReading.of(base, form));
  }

  /** The faults of the fields, and a short name that is taken by another food. */
  private static List<KitchenWork.FieldProblem> problems(Sides sides) {
    List<KitchenWork.FieldProblem> problems = new ArrayList<>(sides.mine().problems());
    if (sides.base().name().isEmpty() && sides.theirs().isPresent()) {
      problems.add(
          new KitchenWork.FieldProblem(
              "food",
              "The pantry has a food \"" + sides.slug() + "\" already.",
              "Choose another short name, or open that food and change it."));
    }
    return problems;
  }

  private static Food merged(Sides sides, Food theirs, Map<String, String> facts) {
    Food mine = sides.mine().food();
    if (theirs.equals(sides.base())) {
      return mine;
    }
    Map<String, String> now = FoodFacts.of(theirs);
    Food merged = theirs;
    for (Map.Entry<String, String> fact : facts.entrySet()) {
      boolean differs = !fact.getValue().equals(now.getOrDefault(fact.getKey(), ""));
      if (differs && !fact.getKey().equals(FoodFacts.SOURCE)) {
        merged = FoodEdit.of(merged, fact.getKey(), fact.getValue());
      }
    }
    String source = FoodFacts.of(mine).get(FoodFacts.SOURCE);
    return withSource(
        merged,
        facts.get(FoodFacts.SOURCE).equals(source) ? mine.source() : theirs.source());
  }

  private static Food withSource(Food food, Source source) {
    return new Food(
        food.slug(), food.name(), food.kind(), source, food.per100g(), food.household(),
        food.densityGramsPerMillilitre(), food.allergens(), food.polyol(), food.price(),
        food.extras());
  }

  /** What differs, by name for people; the source follows the figures and is not named. */
  private static List<String> changed(Food from, Food to) {
    Map<String, String> before = FoodFacts.of(from);
    Map<String, String> after = FoodFacts.of(to);
    List<String> changed = new ArrayList<>();
    after.forEach(
        (fact, text) -> {
          if (!fact.equals(FoodFacts.SOURCE) && !text.equals(before.getOrDefault(fact, ""))) {
            changed.add(FoodFacts.label(fact));
          }
        });
    before.keySet().stream()
        .filter(fact -> !after.containsKey(fact))
        .forEach(fact -> changed.add(FoodFacts.label(fact)));
    return changed;
  }

  private static String what(Food from, Food to) {
    List<String> changed =
        changed(from, to).stream().map(label -> label.replaceFirst(", .*", "")).toList();
    if (changed.isEmpty()) {
      return "";
    }
    String rest =
        changed.size() > NAMED_IN_NOTE ? " and " + (changed.size() - NAMED_IN_NOTE) + " more" : "";
    return changed.stream()
        .limit(NAMED_IN_NOTE)
        .collect(Collectors.joining(", ", " (", rest + ")"));
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
        sides.place().contents().commit().hex(),
        taken,
        alsoIn,
        problems,
        remarks);
  }
}
