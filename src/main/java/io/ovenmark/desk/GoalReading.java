package io.ovenmark.desk;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.goal.SubtractText;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.Contents;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the form of a goal field by field, and says what a goal states fact by fact. */
final class GoalReading {
  static final String NOTE = "note";
  static final String SUBTRACT = "net carbohydrate";
  private static final String WITHOUT = "without ";
  private static final Pattern NUMBER =
      Pattern.compile("(\\d{1,9})(?:[.,](\\d{1,9}))?");

  private final List<KitchenWork.FieldProblem> problems = new ArrayList<>();

  private GoalReading() {}

  /**
   * What was read.
   *
   * @param goal the goal as far as it could be read; it may have no rule
   * @param problems field by field
   */
  record Typed(Goal goal, List<KitchenWork.FieldProblem> problems) {}

  /** The short name that a new goal gets. */
  static String slugOf(GoalForm form) {
    return Slug.isSlug(form.goal()) ? form.goal() : Slug.of(form.name(), "goal");
  }

  /**
   * Reads a form.
   *
   * @param before the goal that it began with; empty for a new one
   * @param foods where foods are known from
   */
  static Typed of(GoalForm form, Optional<Goal> before, Contents foods) {
    GoalReading reading = new GoalReading();
    if (!form.goal().isEmpty() && !Slug.isSlug(form.goal())) {
      reading.read("goal", () -> Slug.check(form.goal()));
    }
    if (form.name().isEmpty()) {
      reading.problem("name", "The goal has no name.", "Write what you call it.");
    }
    List<Limit> limits = reading.limits(form, before);
    for (String food : form.withoutFoods()) {
      reading.food(food, foods);
    }
    List<String> allergens =
        form.withoutAllergens().stream()
            .distinct()
            .filter(word -> !Allergen.group(word).isEmpty())
            .toList();
    if (limits.isEmpty() && allergens.isEmpty() && form.withoutFoods().isEmpty()
        && reading.problems.isEmpty()) {
      reading.problem(
          "limits",
          "The goal has no rule yet.",
          "Add a limit, or say what it must be without.");
    }
    Goal goal =
        new Goal(
            slugOf(form),
            form.name().isEmpty() ? "Goal" : form.name(),
            Optional.of(form.note()).filter(text -> !text.isEmpty()),
            limits,
            allergens,
            form.withoutFoods().stream().filter(Slug::isSlug).distinct().toList(),
            reading.subtract(form.subtract()),
            before.map(Goal::extras).orElse(Extras.NONE));
    return new Typed(goal, List.copyOf(reading.problems));
  }

  private List<Limit> limits(GoalForm form, Optional<Goal> before) {
    List<Limit> limits = new ArrayList<>();
    for (int i = 0; i < form.limits().size(); i++) {
      GoalForm.Limit typed = form.limits().get(i);
      String field = "limits." + i;
      Optional<Figure> figure = Figure.withKey(typed.figure());
      if (figure.isEmpty()) {
        problem(field + ".figure", "The limit names no figure.", "Choose one.");
        continue;
      }
      Basis basis =
          Arrays.stream(Basis.values())
              .filter(each -> each.key().equals(typed.per()))
              .findFirst()
              .orElse(Basis.PIECE);
      int faults = problems.size();
      OptionalDouble least = bound(field + ".at_least", typed.atLeast());
      OptionalDouble most = bound(field + ".at_most", typed.atMost());
      if (problems.size() > faults || !bounded(field, figure.get(), least, most)) {
        continue;
      }
      Extras extras =
          before.stream()
              .flatMap(goal -> goal.limits().stream())
              .filter(old -> old.figure() == figure.get() && old.basis() == basis)
              .map(Limit::extras)
              .findFirst()
              .orElse(Extras.NONE);
      read(field, () -> limits.add(new Limit(figure.get(), basis, least, most, extras)));
    }
    return limits;
  }

  private boolean bounded(
      String field, Figure figure, OptionalDouble least, OptionalDouble most) {
    if (least.isEmpty() && most.isEmpty()) {
      problem(
          field,
          "The limit on " + figure.label() + " states no number yet.",
          "Write one, or take the limit out.");
      return false;
    }
    if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
      problem(
          field,
          "The least " + figure.label() + " is more than the greatest.",
          "Exchange the two numbers.");
      return false;
    }
    return true;
  }

  private OptionalDouble bound(String field, String text) {
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches()) {
      problem(
          field, "The bound “" + text + "” is no number.", "Write a number such as 4 or 0.5.");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(new BigDecimal(text.replace(',', '.')).doubleValue());
  }

  private void food(String slug, Contents foods) {
    boolean known =
        Slug.isSlug(slug)
            && (foods.foods().contains(slug) || BuiltInPantry.find(slug).isPresent());
    if (!known) {
      problem(
          "without_foods",
          "Neither the pantry nor the built-in table has a food “" + slug + "”.",
          "Take it out, or choose one that there is.");
    }
  }

  private Optional<NetCarbohydrate> subtract(Map<String, String> shares) {
    if (shares == null) {
      return Optional.empty();
    }
    return subtract(shares, problems);
  }

  /** Reads the shares that net carbohydrate leaves out; a share that is missing is none. */
  static Optional<NetCarbohydrate> subtract(
      Map<String, String> shares, List<KitchenWork.FieldProblem> problems) {
    Map<String, String> read = new LinkedHashMap<>();
    for (String part : List.of("fibre", "polyols", "allulose")) {
      String share = shares.getOrDefault(part, "0").strip().replace(',', '.');
      try {
        SubtractText.read(part + "=" + share);
        read.put(part, share);
      } catch (IllegalArgumentException e) {
        problems.add(
            new KitchenWork.FieldProblem(
                "subtract." + part,
                "“" + share + "” is no share of the " + part + ".",
                "Choose all, half or none, or write a share from 0 to 1."));
      }
    }
    return read.size() < 3
        ? Optional.empty()
        : Optional.of(
            SubtractText.read(
                "fibre=" + read.get("fibre")
                    + ",polyols=" + read.get("polyols")
                    + ",allulose=" + read.get("allulose")));
  }

  private void read(String field, Runnable read) {
    try {
      read.run();
    } catch (IllegalArgumentException e) {
      String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
      problem(field, parts[0], parts.length > 1 ? parts[1] : "");
    }
  }

  private void problem(String field, String message, String hint) {
    problems.add(new KitchenWork.FieldProblem(field, message, hint));
  }

  /** What a goal states, fact by fact; the name of a fact is its name for people. */
  static Map<String, String> facts(Goal goal) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("name", goal.name());
    facts.put(NOTE, goal.note().orElse(""));
    limits(goal).forEach((name, limit) -> facts.put(name, limit.inWords()));
    goal.withoutAllergens().forEach(word -> facts.put(WITHOUT + word, "yes"));
    goal.withoutFoods().forEach(food -> facts.put(WITHOUT + "the food " + food, "yes"));
    facts.put(SUBTRACT, goal.netCarbohydrate().map(NetCarbohydrate::inWords).orElse(""));
    return facts;
  }

  private static Map<String, Limit> limits(Goal goal) {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (Limit limit : goal.limits()) {
      String name =
          "limit on " + limit.figure().label()
              + (limit.figure().isMacro() ? " per " + limit.basis().label() : "");
      String free = name;
      for (int n = 2; limits.containsKey(free); n++) {
        free = name + ", " + n;
      }
      limits.put(free, limit);
    }
    return limits;
  }

  /** The goal that merged facts state; each stands in one of the sides. */
  static Goal merged(Goal mine, Goal theirs, Map<String, String> merged) {
    Map<String, Limit> limits = new LinkedHashMap<>(limits(theirs));
    limits(mine)
        .forEach(
            (name, limit) -> {
              if (limit.inWords().equals(merged.get(name))) {
                limits.put(name, limit);
              }
            });
    limits.keySet().removeIf(name -> merged.getOrDefault(name, "").isEmpty());
    List<String> allergens = union(theirs.withoutAllergens(), mine.withoutAllergens());
    allergens.removeIf(word -> merged.getOrDefault(WITHOUT + word, "").isEmpty());
    List<String> foods = union(theirs.withoutFoods(), mine.withoutFoods());
    foods.removeIf(food -> merged.getOrDefault(WITHOUT + "the food " + food, "").isEmpty());
    boolean myRule = facts(mine).get(SUBTRACT).equals(merged.get(SUBTRACT));
    return new Goal(
        theirs.slug(),
        merged.get("name"),
        Optional.of(merged.get(NOTE)).filter(text -> !text.isEmpty()),
        List.copyOf(limits.values()),
        allergens,
        foods,
        myRule ? mine.netCarbohydrate() : theirs.netCarbohydrate(),
        theirs.extras());
  }

  private static List<String> union(List<String> first, List<String> second) {
    List<String> all = new ArrayList<>(first);
    second.stream().filter(each -> !all.contains(each)).forEach(all::add);
    return all;
  }

  /** The facts that differ, by their names. */
  static List<String> changed(Map<String, String> from, Map<String, String> to) {
    List<String> changed = new ArrayList<>();
    to.forEach(
        (fact, text) -> {
          if (!text.equals(from.getOrDefault(fact, ""))) {
            changed.add(fact);
          }
        });
    from.forEach(
        (fact, text) -> {
          if (!to.containsKey(fact) && !text.isEmpty()) {
            changed.add(fact);
          }
        });
    return changed;
  }
}
