package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.goal.LimitText;
import io.ovenmark.json.Extras;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodText;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Adds a goal, or takes a new one in the place of the old.
 *
 * <pre>{@code
 * SaveGoal.Request request = new SaveGoal.Request("low-carb", "Low carbohydrate",
 *     Optional.empty(), List.of("net_carbohydrate_g <= 4 per piece"), List.of("gluten"), List.of(),
 *     Optional.empty());
 * new SaveGoal(desk).call(request, false, by);
 * }</pre>
 */
public final class SaveGoal {
  private static final String GLUTEN = "gluten";

  private final Desk desk;

  /**
   * A goal in words.
   *
   * @param slug its short name
   * @param name its name for people
   * @param note anything else; empty when there is none
   * @param limits limits as {@link LimitText} reads them
   * @param withoutAllergens allergens it must be free of, {@code gluten} included
   * @param withoutFoods short names of foods it must not contain
   * @param netCarbohydrate its own policy; empty for the notebook's
   */
  public record Request(
      String slug,
      String name,
      Optional<String> note,
      List<String> limits,
      List<String> withoutAllergens,
      List<String> withoutFoods,
      Optional<NetCarbohydrate> netCarbohydrate) {
    /** Copies the lists. */
    public Request {
      limits = List.copyOf(limits);
      withoutAllergens = List.copyOf(withoutAllergens);
      withoutFoods = List.copyOf(withoutFoods);
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public SaveGoal(Desk desk) {
    this.desk = desk;
  }

  /**
   * Saves it.
   *
   * @param request the goal
   * @param replace whether it may take the place of one of the same short name
   * @param by who commits it, and when
   * @return the goal and how the formulas stand to it
   * @throws Refusal when it is there already, has no rule, or a rule is not understood
   */
  public KitchenViews.GoalSheet call(Request request, boolean replace, By by) {
    String slug = Asked.slug("goal", request.slug());
    Contents contents = desk.notebook().latest();
    if (!replace && contents.goals().contains(slug)) {
      throw exists(slug);
    }
    Optional<Goal> before = contents.goal(slug);
    Goal goal = goal(request, contents, before.map(Goal::extras).orElse(Extras.NONE));
    if (before.filter(goal::equals).isEmpty()) {
      String note = (before.isPresent() ? "Goal changed: " : "Goal: ") + goal.name();
      save(goal, before, note, by);
    }
    return new ShowGoal(desk).call(slug);
  }

  private void save(Goal goal, Optional<Goal> before, String note, By by) {
    try {
      new RecordWriter(desk.notebook()).saveGoal(goal, before, note, by);
    } catch (Refusal refusal) {
      throw refusal.reason() == Refusal.Reason.EXISTS ? exists(goal.slug()) : refusal;
    }
  }

  private static Refusal exists(String slug) {
    return new Refusal(
        Refusal.Reason.EXISTS,
        "goal " + slug,
        "There is a goal \"" + slug + "\" already.",
        "Choose another short name, or replace it with --replace.");
  }

  private static Goal goal(Request request, Contents contents, Extras extras) {
    if (request.name().isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID, "name", "The goal has no name.", "Give it one.");
    }
    List<Limit> limits =
        request.limits().stream()
            .map(text -> Asked.read("limit", () -> LimitText.read(text)))
            .toList();
    Set<String> allergens = new LinkedHashSet<>();
    request.withoutAllergens().forEach(word -> allergens.addAll(allergens(word)));
    request.withoutFoods().forEach(food -> requireFood(food, contents));
    if (limits.isEmpty() && allergens.isEmpty() && request.withoutFoods().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "limit",
          "The goal has no rule.",
          "Give it a limit such as \"net_carbohydrate_g <= 4 per piece\", or say what it must be"
              + " without.");
    }
    return Asked.read(
        "goal",
        () ->
            new Goal(
                request.slug(),
                request.name().strip(),
                request.note().map(String::strip).filter(text -> !text.isEmpty()),
                limits,
                List.copyOf(allergens),
                request.withoutFoods().stream().distinct().toList(),
                request.netCarbohydrate(),
                extras));
  }

  private static List<String> allergens(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    if (plain.equals(GLUTEN)) {
      return List.of(GLUTEN);
    }
    return Asked.read("without", () -> FoodText.allergens(plain)).orElse(Set.of()).stream()
        .map(Allergen::key)
        .toList();
  }

  /** A slip of the keyboard would make a rule that is always kept. */
  private static void requireFood(String food, Contents contents) {
    Asked.slug("without-food", food);
    if (!contents.foods().contains(food) && BuiltInPantry.find(food).isEmpty()) {
      List<String> near = new ArrayList<>();
      BuiltInPantry.search(food.replace('-', ' ')).stream()
          .limit(3)
          .map(Food::slug)
          .forEach(near::add);
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          "food " + food,
          "Neither the pantry nor the built-in table has a food \"" + food + "\".",
          near.isEmpty()
              ? "Find it with: ovenmark pantry find"
              : "Perhaps you mean " + String.join(" or ", near) + ".");
    }
  }
}
