package io.ovenmark.publish.card;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.HouseholdMeasure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The measure of a kitchen that comes nearest to a mass: cups of a quarter, a third, a half and so
 * on, tablespoons, teaspoons down to an eighth, or pieces such as large eggs. Which sizes a kitchen
 * has is common practice, no source; what a measure weighs is the food's own household weight or
 * density.
 *
 * @param text such as {@code 1 1/4 cup} or {@code 1/4 cup + 1 tbsp}
 * @param grams what that weighs
 * @param errorPercent how much it is off the mass, in percent of the mass; above 0 for too much
 */
public record KitchenMeasure(String text, double grams, double errorPercent) {
  /** An error of more than this is said. */
  public static final double WORTH_SAYING_PERCENT = 5;

  /** Errors are told apart in steps of so many percent. */
  private static final double ABOUT_AS_NEAR = 2.5;

  private static final double MOST_CUPS = 12;
  private static final int MOST_PIECES = 48;

  /** Further off than this, a measure helps nobody. */
  private static final double USELESS_PERCENT = 50;

  /** Checks that nothing is null. */
  public KitchenMeasure {
    requireNonNull(text, "text");
  }

  private record Size(double count, String text) {}

  private static final List<Size> CUPS = sizes(MOST_CUPS, 4, 3);
  private static final List<Size> TABLESPOONS = sizes(3, 1);
  private static final List<Size> TEASPOONS = teaspoons();
  private static final List<Size> ADDED_TEASPOONS =
      List.of(new Size(1, "1"), new Size(2, "2"), new Size(0.5, "1/2"));

  /**
   * The nearest measure.
   *
   * @param food the food
   * @param grams its mass, above 0
   * @param words what is said of the ingredient, such as {@code ground fresh}: it decides where the
   *     food has weights for several manners of filling a measure
   * @return the measure; empty when no household weight and no density of the food is known, the
   *     manner is open, or the mass is below what an eighth of a teaspoon tells apart
   */
  public static Optional<KitchenMeasure> nearest(Food food, double grams, String words) {
    if (!(grams > 0)) {
      return Optional.empty();
    }
    Optional<KitchenMeasure> counted = best(pieces(food, grams));
    if (!isFar(counted)) {
      return counted;
    }
    List<KitchenMeasure> found = new ArrayList<>(counted.stream().toList());
    Volumes.of(food, words).ifPresent(volumes -> addVolumes(found, volumes, grams));
    return best(found).filter(each -> Math.abs(each.errorPercent) < USELESS_PERCENT);
  }

  private static void addVolumes(List<KitchenMeasure> found, Volumes volumes, double grams) {
    List<KitchenMeasure> single = new ArrayList<>();
    add(single, volumes, MeasureUnit.CUP, CUPS, grams);
    add(single, volumes, MeasureUnit.TABLESPOON, TABLESPOONS, grams);
    add(single, volumes, MeasureUnit.TEASPOON, TEASPOONS, grams);
    found.addAll(single);
    if (isFar(best(single))) {
      addTogether(found, volumes, grams);
    }
  }

  /**
   * Whether the error is to be said beside it.
   *
   * @return true above {@value #WORTH_SAYING_PERCENT} %
   */
  public boolean isRough() {
    return Math.abs(errorPercent) > WORTH_SAYING_PERCENT;
  }

  /**
   * The measure with its error where that is worth saying.
   *
   * @return such as {@code 1 cup} or {@code 1 tbsp + 1 tsp, −5 %}
   */
  public String inWords() {
    return isRough() ? text + ", " + FigureText.signed(Math.round(errorPercent)) + " %" : text;
  }

  /** The nearest; of those that are about as near the one that came first. */
  private static Optional<KitchenMeasure> best(List<KitchenMeasure> measures) {
    return measures.stream()
        .min(
            Comparator.comparingDouble(
                each -> Math.floor(Math.abs(each.errorPercent) / ABOUT_AS_NEAR)));
  }

  private static boolean isFar(Optional<KitchenMeasure> measure) {
    return measure.map(KitchenMeasure::isRough).orElse(true);
  }

  /** Whole and half pieces, for foods that are counted and have no volume. */
  private static List<KitchenMeasure> pieces(Food food, double grams) {
    List<KitchenMeasure> found = new ArrayList<>();
    for (HouseholdMeasure measure : food.household()) {
      String name = measure.measure();
      String head = name.split("[,(]", 2)[0].strip();
      boolean counted = MeasureUnit.named(head).isEmpty() && isCount(head);
      if (counted) {
        double count = Math.round(grams / measure.grams() * 2) / 2.0;
        if (count >= 0.5 && count <= MOST_PIECES) {
          found.add(of(fraction(count), head, count * measure.grams(), grams));
        }
      }
    }
    return found;
  }

  /** Eggs come by size; other words, such as "slice", depend on who cuts. */
  private static boolean isCount(String head) {
    return switch (head.toLowerCase(Locale.ROOT)) {
      case "large", "medium", "small", "extra large", "jumbo", "egg" -> true;
      default -> false;
    };
  }

  private static void add(
      List<KitchenMeasure> found,
      Volumes volumes,
      MeasureUnit unit,
      List<Size> sizes,
      double grams) {
    for (Size size : sizes) {
      found.add(
          of(
              size.text,
              named(unit, size) + volumes.manner(),
              size.count * volumes.of(unit),
              grams));
    }
  }

  private static void addTogether(
      List<KitchenMeasure> found, Volumes volumes, double grams) {
    double cup = volumes.of(MeasureUnit.CUP);
    double tablespoon = volumes.of(MeasureUnit.TABLESPOON);
    double teaspoon = volumes.of(MeasureUnit.TEASPOON);
    for (Size spoons : TEASPOONS.subList(1, TEASPOONS.size())) {
      double mass = spoons.count * teaspoon + teaspoon / 8;
      String text = spoons.text + " tsp + 1/8 tsp" + volumes.manner();
      found.add(new KitchenMeasure(text, mass, error(mass, grams)));
    }
    for (int spoons = 1; spoons <= 3; spoons++) {
      for (Size cups : CUPS) {
        double mass = cups.count * cup + spoons * tablespoon;
        String text = cups(cups) + " + " + spoons + " tbsp" + volumes.manner();
        found.add(new KitchenMeasure(text, mass, error(mass, grams)));
      }
      for (Size large : CUPS) {
        if (spoons < 3) {
          double mass = large.count * cup + spoons * teaspoon;
          String text = cups(large) + " + " + spoons + " tsp" + volumes.manner();
          found.add(new KitchenMeasure(text, mass, error(mass, grams)));
        }
      }
      for (Size small : ADDED_TEASPOONS) {
        double mass = spoons * tablespoon + small.count * teaspoon;
        String text = spoons + " tbsp + " + small.text + " tsp" + volumes.manner();
        found.add(new KitchenMeasure(text, mass, error(mass, grams)));
      }
    }
  }

  private static String cups(Size size) {
    return size.text + " " + named(MeasureUnit.CUP, size);
  }

  private static String named(MeasureUnit unit, Size size) {
    return unit == MeasureUnit.CUP && size.count > 1 ? "cups" : unit.symbol();
  }

  private static KitchenMeasure of(String count, String unit, double mass, double grams) {
    return new KitchenMeasure(count + " " + unit, mass, error(mass, grams));
  }

  private static double error(double mass, double grams) {
    return (mass - grams) / grams * 100;
  }

  private static List<Size> sizes(double most, int... parts) {
    List<Size> sizes = new ArrayList<>();
    for (int part : parts) {
      for (int i = 1; i <= most * part; i++) {
        double count = (double) i / part;
        if (sizes.stream().noneMatch(size -> size.count == count)) {
          sizes.add(new Size(count, text(i, part)));
        }
      }
    }
    sizes.sort(Comparator.comparingDouble(Size::count));
    return List.copyOf(sizes);
  }

  private static List<Size> teaspoons() {
    List<Size> sizes = new ArrayList<>();
    sizes.add(new Size(0.125, "1/8"));
    sizes.addAll(sizes(3, 4));
    return List.copyOf(sizes);
  }

  private static String fraction(double halves) {
    return text((int) Math.round(halves * 2), 2);
  }

  private static String text(int count, int part) {
    int divisor = BigDecimal.valueOf(count).toBigInteger()
        .gcd(BigDecimal.valueOf(part).toBigInteger()).intValue();
    int over = count / divisor;
    int under = part / divisor;
    int whole = over / under;
    int rest = over % under;
    if (rest == 0) {
      return String.valueOf(whole);
    }
    return (whole > 0 ? whole + " " : "") + rest + "/" + under;
  }
}
