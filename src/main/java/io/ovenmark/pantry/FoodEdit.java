package io.ovenmark.pantry;

import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Quoting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Changes a food by short texts: {@code price=3.20 EUR for 1000 g}, {@code weight.tbsp=9 g}, {@code
 * density=0.55 g/ml}, {@code allergens=lupin}, {@code kind=dry}, {@code name=Lupin flour}, {@code
 * polyol=erythritol} or a figure per 100 g, {@code protein=39.1}. Nothing after the sign of equality
 * makes a fact unknown; {@code allergens=none} states that there are none.
 *
 * <p>A figure that is changed by hand is no longer that of its source, so the food's source becomes
 * {@link Source.Kind#OWN} with a note of where it came from, unless it was the person's own or a
 * label already.
 */
public final class FoodEdit {
  private static final String WEIGHT = "weight.";

  private FoodEdit() {}

  /**
   * Makes one change.
   *
   * @param food the food
   * @param name what changes, such as {@code price} or {@code weight.tbsp}
   * @param value what it becomes; empty for unknown
   * @return the changed food
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Food of(Food food, String name, String value) {
    return change(food, name, value.strip());
  }

  /**
   * Makes the changes one after the other.
   *
   * @param food the food
   * @param texts the changes
   * @return the changed food
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Food of(Food food, List<String> texts) {
    Food result = food;
    for (String text : texts) {
      Map.Entry<String, String> change = FoodText.assignment(text);
      result = change(result, change.getKey(), change.getValue());
    }
    return result;
  }

  private static Food change(Food food, String name, String value) {
    if (name.startsWith(WEIGHT) && name.length() > WEIGHT.length()) {
      return withWeight(food, name.substring(WEIGHT.length()), value);
    }
    return switch (name) {
      case "name" -> {
        if (value.isBlank()) {
          throw FoodText.bad("A food needs a name.", "Write it as in name=Lupin flour");
        }
        yield copy(food, value, food.kind(), food.source(), food.per100g(), food.household());
      }
      case "kind" ->
          copy(
              food, food.name(), FoodText.kind(value), food.source(), food.per100g(),
              food.household());
      case "density" ->
          with(
              food,
              value.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(FoodText.density(value)),
              food.allergens(),
              food.polyol(),
              food.price());
      case "allergens" ->
          with(
              food,
              food.densityGramsPerMillilitre(),
              FoodText.allergens(value),
              food.polyol(),
              food.price());
      case "polyol" ->
          with(
              food,
              food.densityGramsPerMillilitre(),
              food.allergens(),
              Optional.of(value).filter(text -> !text.isEmpty()),
              food.price());
      case "price" ->
          with(
              food,
              food.densityGramsPerMillilitre(),
              food.allergens(),
              food.polyol(),
              value.isEmpty() ? Optional.empty() : Optional.of(FoodText.price(value)));
      default -> withFigure(food, name, value);
    };
  }

  private static Food withWeight(Food food, String measure, String value) {
    List<HouseholdMeasure> measures = new ArrayList<>(food.household());
    boolean known = measures.removeIf(each -> each.measure().equals(measure));
    if (value.isEmpty() && !known) {
      throw FoodText.bad(
          food.name() + " has no measure \"" + measure + "\" to be taken away.",
          measures.isEmpty()
              ? "It has none."
              : "It has "
                  + String.join(", ", measures.stream().map(HouseholdMeasure::measure).toList())
                  + ".");
    }
    if (!value.isEmpty()) {
      measures.add(FoodText.household(measure, value));
    }
    return copy(food, food.name(), food.kind(), food.source(), food.per100g(), measures);
  }

  private static Food withFigure(Food food, String name, String value) {
    Optional<Nutrient> found = FoodText.nutrient(name);
    if (found.isEmpty()) {
      throw FoodText.bad(
          "A food has no \"" + name + "\".",
          "It has name, kind, density, price, allergens, polyol, weight.<measure> and figures per"
              + " 100 g: "
              + Arrays.stream(Nutrient.values()).map(Nutrient::key).collect(Collectors.joining(", "))
              + ".");
    }
    Nutrient nutrient = found.get();
    Quantity figure = Quantity.UNKNOWN;
    if (!value.isEmpty() && !value.equals("unknown")) {
      double number = FoodText.number(name, value, nutrient.unit());
      if (number > FoodCodec.greatest(nutrient)) {
        throw FoodText.bad(
            "100 g of a food cannot have " + Quoting.quote(value) + " of " + nutrient.label() + ".",
            "Give the figure per 100 g, at most "
                + HouseholdNames.number(FoodCodec.greatest(nutrient)) + " " + nutrient.unit() + ".");
      }
      figure = Quantity.known(number);
    }
    if (figure.equals(food.per100g().get(nutrient))) {
      return food;
    }
    return copy(
        food,
        food.name(),
        food.kind(),
        ownSource(food.source()),
        food.per100g().with(nutrient, figure),
        food.household());
  }

  private static Source ownSource(Source source) {
    if (source.kind() == Source.Kind.OWN || source.kind() == Source.Kind.LABEL) {
      return source;
    }
    String from = source.kind().key() + source.id().map(id -> " " + id).orElse("");
    String note =
        "After " + from + ", figures changed by hand."
            + source.note().map(text -> " " + text).orElse("");
    return new Source(Source.Kind.OWN, Optional.empty(), Optional.of(note));
  }

  private static Food copy(
      Food food,
      String name,
      FoodKind kind,
      Source source,
      Nutrients per100g,
      List<HouseholdMeasure> household) {
    return new Food(
        food.slug(), name, kind, source, per100g, household, food.densityGramsPerMillilitre(),
        food.allergens(), food.polyol(), food.price(), food.extras());
  }

  private static Food with(
      Food food,
      OptionalDouble density,
      Optional<Set<Allergen>> allergens,
      Optional<String> polyol,
      Optional<Price> price) {
    return new Food(
        food.slug(), food.name(), food.kind(), food.source(), food.per100g(), food.household(),
        density, allergens, polyol, price, food.extras());
  }
}
