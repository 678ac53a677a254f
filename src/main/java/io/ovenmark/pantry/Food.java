package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;

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
 * @param allergens the allergens it contains; empty set for none of them, empty optional for
 *     unknown
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

  /** Densities of two measures that differ by no more than this factor are taken for the same. */
  private static final double SAME_DENSITY = 1.1;

  private static final Pattern TAIL = Pattern.compile("[\\s,]+$");

  /** Checks and copies. */
  public Food {
    Slug.check(slug);
    requireNonNull(name, "name");
    requireNonNull(kind, "kind");
    requireNonNull(source, "source");
    requireNonNull(per100g, "per100g");
    household = List.copyOf(household);
    requireNonNull(densityGramsPerMillilitre, "densityGramsPerMillilitre");
    allergens = allergens.map(set -> Collections.unmodifiableSet(new TreeSet<>(set)));
    requireNonNull(polyol, "polyol");
    requireNonNull(price, "price");
    requireNonNull(extras, "extras");
  }

  /**
   * The food without what concerns only its owner: its price, and fields of its file that this
   * program does not know. No figure rests on them.
   *
   * @return a food with the same figures
   */
  public Food withoutPrivate() {
    return new Food(
        slug,
        name,
        kind,
        source,
        per100g,
        household.stream()
            .map(each -> new HouseholdMeasure(each.measure(), each.grams(), Extras.NONE))
            .toList(),
        densityGramsPerMillilitre,
        allergens,
        polyol,
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * Turns an amount of this food into mass. A mass is exact. A household measure of the same name
   * is taken from the food's weights (plural, order of words and remarks in brackets do not count);
   * a volume else from the density, else from the density that the weight of another volume
   * implies, of the largest where several are given. Where measures differ in manner, such as
   * sliced and ground, and none was named, the amount is unresolved, never guessed.
   *
   * @param amount what was written
   * @return the mass or why there is none
   */
  public Resolved resolve(Amount amount) {
    if (!amount.isRead()) {
      return Resolved.unread(amount);
    }
    if (amount.grams().isPresent()) {
      return new Resolved(
          Quantity.known(amount.grams().get().doubleValue()), false, "weighed");
    }
    String shown = "\"" + amount.measure() + "\" of " + name;
    List<HouseholdMeasure> same = named(amount.measure());
    if (same.size() == 1) {
      HouseholdMeasure found = same.get(0);
      return approximate(amount.number().doubleValue() * found.grams(), weight(found));
    }
    if (same.size() > 1) {
      return unresolved(
          shown + " may be " + String.join(" or ", same.stream().map(Food::typed).toList()));
    }
    if (amount.millilitres().isPresent()) {
      return byVolume(amount.millilitres().get().doubleValue());
    }
    Optional<Amount> shorter = withoutOwnName(amount);
    if (shorter.isPresent()) {
      return resolve(shorter.get());
    }
    String known = String.join(", ", household.stream().map(Food::typed).distinct().toList());
    return unresolved(
        shown + " has no known weight" + (known.isEmpty() ? "" : "; known are " + known));
  }

  private Resolved byVolume(double millilitres) {
    if (densityGramsPerMillilitre.isPresent()) {
      double density = densityGramsPerMillilitre.getAsDouble();
      return approximate(
          millilitres * density, "density " + HouseholdNames.number(density) + " g/ml");
    }
    List<HouseholdMeasure> volumes =
        household.stream().filter(m -> MeasureName.of(m.measure()).volume().isPresent()).toList();
    List<HouseholdMeasure> plain =
        volumes.stream().filter(m -> MeasureName.of(m.measure()).plainUnit()).toList();
    List<HouseholdMeasure> candidates = plain.isEmpty() ? volumes : plain;
    if (candidates.isEmpty()) {
      return unresolved(name + " has neither a household weight nor a density");
    }
    HouseholdMeasure largest = candidates.get(0);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (HouseholdMeasure measure : candidates) {
      least = Math.min(least, measure.grams() / millilitres(measure));
      most = Math.max(most, measure.grams() / millilitres(measure));
      largest = millilitres(measure) > millilitres(largest) ? measure : largest;
    }
    if (plain.isEmpty() && most > least * SAME_DENSITY) {
      return unresolved(
          "a volume of " + name + " may be measured as "
              + String.join(" or ", candidates.stream().map(Food::typed).toList()));
    }
    return approximate(
        millilitres * largest.grams() / millilitres(largest), weight(largest));
  }

  private List<HouseholdMeasure> named(String wanted) {
    List<String> key = MeasureName.of(wanted).key();
    List<HouseholdMeasure> found = withKey(key, MeasureName::key);
    if (found.isEmpty()) {
      found = withKey(key, MeasureName::withoutRemark);
    }
    return found.isEmpty() ? withKey(key, MeasureName::head) : found;
  }

  private List<HouseholdMeasure> withKey(
      List<String> key, Function<MeasureName, List<String>> part) {
    return household.stream()
        .filter(m -> part.apply(MeasureName.of(m.measure())).equals(key))
        .toList();
  }

  /** Reads "2 large eggs" as "2 large" for a food whose own name has the word. */
  private Optional<Amount> withoutOwnName(Amount amount) {
    List<String> own = new ArrayList<>();
    for (String word : Words.of(name + " " + slug)) {
      own.add(Words.singular(word));
    }
    List<String> left = new ArrayList<>(List.of(amount.measure().split(" ")));
    while (left.size() > 1) {
      List<String> last = Words.of(left.get(left.size() - 1));
      if (last.size() != 1 || !own.contains(Words.singular(last.get(0)))) {
        break;
      }
      left.remove(left.size() - 1);
    }
    String shorter = TAIL.matcher(String.join(" ", left)).replaceAll("");
    if (shorter.equals(amount.measure())) {
      return Optional.empty();
    }
    BigDecimal number = amount.number().setScale(12, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return Optional.of(Amount.parse(number.toPlainString() + " " + shorter));
  }

  private static double millilitres(HouseholdMeasure measure) {
    return MeasureName.of(measure.measure()).volume().orElseThrow().base();
  }

  private static String weight(HouseholdMeasure measure) {
    return "1 " + measure.measure() + " = " + HouseholdNames.number(measure.grams()) + " g";
  }

  private static String typed(HouseholdMeasure measure) {
    return '"' + HouseholdNames.withoutRemark(measure.measure()) + '"';
  }

  private static Resolved approximate(double grams, String how) {
    return new Resolved(Quantity.known(grams), true, how);
  }

  private static Resolved unresolved(String why) {
    return new Resolved(Quantity.UNKNOWN, true, why);
  }
}
