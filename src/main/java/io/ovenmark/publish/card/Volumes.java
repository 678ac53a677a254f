package io.ovenmark.publish.card;

import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.HouseholdMeasure;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the measures of volume of a food weigh when they are filled in one manner.
 *
 * @param manner how they are filled, such as {@code , sifted}; empty for none
 * @param weights grams of the measures that the food states
 * @param density grams a millilitre, for the others
 */
record Volumes(String manner, Map<MeasureUnit, Double> weights, double density) {

  /** The food's own weights, else its density; empty when neither is known or manners differ. */
  static Optional<Volumes> of(Food food, String words) {
    Map<String, Map<MeasureUnit, Double>> manners = new TreeMap<>();
    for (HouseholdMeasure measure : food.household()) {
      String plain = measure.measure().replaceAll("\\s*\\([^)]*\\)?", "").strip();
      String[] parts = plain.split(",", 2);
      Optional<MeasureUnit> unit =
          MeasureUnit.named(parts[0].strip())
              .filter(each -> each.kind() == MeasureUnit.Kind.VOLUME);
      if (unit.isPresent()) {
        String manner = parts.length > 1 ? ", " + parts[1].strip() : "";
        manners
            .computeIfAbsent(manner, key -> new HashMap<>())
            .putIfAbsent(unit.get(), measure.grams());
      }
    }
    Optional<String> chosen = chosen(List.copyOf(manners.keySet()), words);
    if (chosen.isPresent()) {
      Map<MeasureUnit, Double> weights = manners.get(chosen.get());
      MeasureUnit largest =
          weights.keySet().stream()
              .max((one, other) -> Double.compare(one.base(), other.base()))
              .orElseThrow();
      return Optional.of(
          new Volumes(chosen.get(), weights, weights.get(largest) / largest.base()));
    }
    return manners.isEmpty() && food.densityGramsPerMillilitre().isPresent()
        ? Optional.of(new Volumes("", Map.of(), food.densityGramsPerMillilitre().getAsDouble()))
        : Optional.empty();
  }

  /** The manner that was named, else none, else the only one. */
  private static Optional<String> chosen(List<String> manners, String words) {
    String said = words.toLowerCase(Locale.ROOT);
    Optional<String> named =
        manners.stream()
            .filter(manner -> !manner.isEmpty())
            .filter(manner -> said.contains(manner.substring(2).toLowerCase(Locale.ROOT)))
            .findFirst();
    if (named.isPresent() || manners.contains("")) {
      return named.or(() -> Optional.of(""));
    }
    return manners.size() == 1 ? Optional.of(manners.get(0)) : Optional.empty();
  }

  /** Grams of one. */
  double of(MeasureUnit unit) {
    return weights.getOrDefault(unit, unit.base() * density);
  }
}
