package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * A food of the pantry.
 *
 * @param slug the short name it is filed under
 * @param name its name for people
 * @param kind the part it plays in a dough
 * @param source where the figures come from
 * @param per100g composition of 100 g edible portion; figures may be unknown
 * @param household what its household measures weigh, in the source's order
 * @param densityGramsPerMillilitre density; empty when unknown
 * @param allergens the allergens it contains; empty set for none of them, empty optional for unknown
 * @param polyol which sugar alcohol its polyols are, such as {@code erythritol}; empty when unknown
 *     or without meaning
 * @param price what it costs; empty when unknown
 * @param extras unknown fields of its file
 */
public record Food(
    String slug,
    String name,
    FoodKind kind,
    Source source,
    Nutrients per100g,
    List<HouseholdMeasure> household,
    OptionalDouble densityGramsPerMillilitre,
    Optional<Set<Allergen>> allergens,
    Optional<String> polyol,
    Optional<Price> price,
    Extras extras) {

  /** Checks and copies. */
  public Food {
    Slug.check(slug);
    requireNonNull(name, "name");
    requireNonNull(kind, "kind");
    requireNonNull(source, "source");
    requireNonNull(per100g, "per100g");
    household = List.copyOf(household);
    requireNonNull(densityGramsPerMillilitre, "densityGramsPerMillilitre");
    allergens = allergens.map(set -> java.util.Collections.unmodifiableSet(new TreeSet<>(set)));
    requireNonNull(polyol, "polyol");
    requireNonNull(price, "price");
    requireNonNull(extras, "extras");
  }

  /**
   * Turns an amount of this food into mass. A mass is exact. A household measure of the same name
   * is taken from the food's weights; a volume else from the density, else from the density that
   * another volume's weight implies. What none of these can tell is unresolved, never guessed.
   *
   * @param amount what was written
   * @return the mass or why there is none
   */
  public Resolved resolve(Amount amount) {
    double number = amount.number().doubleValue();
    if (amount.grams().isPresent()) {
      double grams = amount.grams().get().doubleValue();
      return new Resolved(Quantity.known(grams), false, "weighed");
    }
    String wanted = plain(amount.measure());
    List<HouseholdMeasure> same = named(wanted);
    if (same.size() == 1) {
      HouseholdMeasure found = same.get(0);
      return approximate(number * found.grams(), "1 " + found.measure() + " = " + found.grams() + " g");
    }
    if (same.size() > 1) {
      return unresolved(
          "\"" + amount.measure() + "\" of " + name + " may be "
              + String.join(" or ", same.stream().map(m -> '"' + m.measure() + '"').toList()));
    }
    if (amount.millilitres().isEmpty()) {
      return unresolved("\"" + amount.measure() + "\" of " + name + " has no known weight");
    }
    double millilitres = amount.millilitres().get().doubleValue();
    if (densityGramsPerMillilitre.isPresent()) {
      double density = densityGramsPerMillilitre.getAsDouble();
      return approximate(millilitres * density, "density " + density + " g/ml");
    }
    for (HouseholdMeasure measure : household) {
      Optional<MeasureUnit> unit =
          MeasureUnit.named(unitPart(measure.measure()))
              .filter(u -> u.kind() == MeasureUnit.Kind.VOLUME);
      if (unit.isPresent() && unambiguous(unit.get())) {
        double grams = millilitres * measure.grams() / unit.get().base();
        return approximate(grams, "1 " + measure.measure() + " = " + measure.grams() + " g");
      }
    }
    return unresolved(name + " has neither a household weight nor a density");
  }

  private List<HouseholdMeasure> named(String wanted) {
    List<HouseholdMeasure> exact =
        household.stream().filter(m -> plain(m.measure()).equals(wanted)).limit(1).toList();
    if (!exact.isEmpty()) {
      return exact;
    }
    return household.stream().filter(m -> plain(unitPart(m.measure())).equals(wanted)).toList();
  }

  private boolean unambiguous(MeasureUnit unit) {
    return household.stream()
            .filter(m -> MeasureUnit.named(unitPart(m.measure())).equals(Optional.of(unit)))
            .count()
        == 1;
  }

  private static String unitPart(String measure) {
    return measure.split("[,(]", 2)[0].strip();
  }

  private static String plain(String measure) {
    String word = measure.strip().toLowerCase(Locale.ROOT);
    return MeasureUnit.named(word)
        .map(MeasureUnit::symbol)
        .orElse(word.endsWith("s") && word.length() > 3 ? word.substring(0, word.length() - 1) : word);
  }

  private static Resolved approximate(double grams, String how) {
    return new Resolved(Quantity.known(grams), true, how);
  }

  private static Resolved unresolved(String why) {
    return new Resolved(Quantity.UNKNOWN, true, why);
  }
}
