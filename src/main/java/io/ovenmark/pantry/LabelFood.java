package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What stands on a package: figures per serving or per 100 g, in the manner of the United States
 * (carbohydrate includes fibre; 21 CFR 101.9) or of the European Union (carbohydrate without fibre,
 * salt for sodium; Regulation (EU) No 1169/2011). A figure that is not on the label stays unknown.
 *
 * <pre>{@code
 * Food food = LabelFood.perServing("lupin flour", FoodKind.DRY, Panel.UNITED_STATES, 30)
 *     .with(Figure.PROTEIN, 12).with(Figure.FAT, 3)
 *     .food("my-lupin-flour");
 * }</pre>
 *
 * @param name the food's name for people
 * @param kind the part it plays in a dough
 * @param panel whose rules the label follows
 * @param servingGrams what the figures are for, in grams; 100 for figures per 100 g
 * @param figures the figures as printed, for one serving
 */
public record LabelFood(
    String name, FoodKind kind, Panel panel, double servingGrams, Map<Figure, Double> figures) {

  /** Salt is sodium times 2.5 (Regulation (EU) No 1169/2011, Annex I). */
  private static final double SALT_PER_SODIUM = 2.5;

  private static final double KILOJOULES_PER_KILOCALORIE = 4.184;

  /** Whose rules a label follows. */
  public enum Panel {
    /** United States: total carbohydrate includes fibre; sodium in milligrams. */
    UNITED_STATES("US"),
    /** European Union: carbohydrate without fibre; salt in grams; kilojoules. */
    EUROPEAN_UNION("EU");

    private final String key;

    Panel(String key) {
      this.key = key;
    }

    /**
     * The short name.
     *
     * @return {@code US} or {@code EU}
     */
    public String key() {
      return key;
    }
  }

  /** A figure that a label may print. */
  public enum Figure {
    /** Energy in kilocalories. */
    ENERGY_KCAL("energy_kcal", Nutrient.ENERGY),
    /** Energy in kilojoules; used where there are no kilocalories. */
    ENERGY_KJ("energy_kj", null),
    /** Protein. */
    PROTEIN("protein_g", Nutrient.PROTEIN),
    /** Total fat. */
    FAT("fat_g", Nutrient.FAT),
    /** Saturated fat. */
    SATURATED_FAT("saturated_fat_g", Nutrient.SATURATED_FAT),
    /** Trans fat. */
    TRANS_FAT("trans_fat_g", Nutrient.TRANS_FAT),
    /** Carbohydrate as the panel defines it. */
    CARBOHYDRATE("carbohydrate_g", null),
    /** Fibre. */
    FIBRE("fibre_g", Nutrient.FIBRE),
    /** Soluble fibre. */
    SOLUBLE_FIBRE("soluble_fibre_g", Nutrient.SOLUBLE_FIBRE),
    /** Total sugars. */
    SUGARS("sugars_g", Nutrient.SUGARS),
    /** Added sugars. */
    ADDED_SUGARS("added_sugars_g", Nutrient.ADDED_SUGARS),
    /** Sugar alcohols. */
    POLYOLS("polyols_g", Nutrient.POLYOLS),
    /** Allulose. */
    ALLULOSE("allulose_g", Nutrient.ALLULOSE),
    /** Alcohol. */
    ALCOHOL("alcohol_g", Nutrient.ALCOHOL),
    /** Salt in grams. */
    SALT("salt_g", null),
    /** Sodium in milligrams. */
    SODIUM("sodium_mg", Nutrient.SODIUM),
    /** Cholesterol in milligrams. */
    CHOLESTEROL("cholesterol_mg", Nutrient.CHOLESTEROL),
    /** Potassium in milligrams. */
    POTASSIUM("potassium_mg", Nutrient.POTASSIUM),
    /** Calcium in milligrams. */
    CALCIUM("calcium_mg", Nutrient.CALCIUM),
    /** Iron in milligrams. */
    IRON("iron_mg", Nutrient.IRON),
    /** Vitamin D in micrograms. */
    VITAMIN_D("vitamin_d_ug", Nutrient.VITAMIN_D);

    private final String key;
    private final Nutrient nutrient;

    Figure(String key, Nutrient nutrient) {
      this.key = key;
      this.nutrient = nutrient;
    }

    /**
     * The name with its unit.
     *
     * @return such as {@code protein_g}
     */
    public String key() {
      return key;
    }

    /**
     * Finds a figure by its name.
     *
     * @param key such as {@code salt_g}
     * @return the figure, empty when there is none
     */
    public static Optional<Figure> withKey(String key) {
      for (Figure figure : values()) {
        if (figure.key.equals(key)) {
          return Optional.of(figure);
        }
      }
      return Optional.empty();
    }
  }

  /** Copies the figures; what they say is checked by {@link #problems} and {@link #food}. */
  public LabelFood {
    requireNonNull(name, "name");
    requireNonNull(kind, "kind");
    requireNonNull(panel, "panel");
    Map<Figure, Double> copy = new EnumMap<>(Figure.class);
    copy.putAll(figures);
    figures = Collections.unmodifiableMap(copy);
  }

  /**
   * A label with figures per 100 g.
   *
   * @param name the food's name
   * @param kind the part it plays in a dough
   * @param panel whose rules the label follows
   * @return a label without figures
   */
  public static LabelFood per100Grams(String name, FoodKind kind, Panel panel) {
    return perServing(name, kind, panel, 100);
  }

  /**
   * A label with figures per serving.
   *
   * @param name the food's name
   * @param kind the part it plays in a dough
   * @param panel whose rules the label follows
   * @param grams what a serving weighs
   * @return a label without figures
   */
  public static LabelFood perServing(String name, FoodKind kind, Panel panel, double grams) {
    return new LabelFood(name, kind, panel, grams, Map.of());
  }

  /**
   * Adds or replaces a figure.
   *
   * @param figure which
   * @param value as printed, for one serving
   * @return a new label
   */
  public LabelFood with(Figure figure, double value) {
    Map<Figure, Double> next = new EnumMap<>(Figure.class);
    next.putAll(figures);
    next.put(figure, value);
    return new LabelFood(name, kind, panel, servingGrams, next);
  }

  /**
   * What cannot be right on this label; empty when nothing is suspect. Printed figures are rounded,
   * so the checks leave room for that.
   *
   * @return the problems, each naming its figure
   */
  public List<Problem> problems() {
    return LabelChecks.of(this);
  }

  /**
   * Makes the food. Further facts (household weights, density, allergens, price) are unknown in it;
   * a serving becomes a household measure.
   *
   * @param slug the short name to file it under
   * @return the food, composition per 100 g, source {@link Source.Kind#LABEL}
   * @throws UnreadableException with everything that cannot be right
   */
  public Food food(String slug) {
    List<Problem> problems = problems();
    if (!problems.isEmpty()) {
      throw new UnreadableException(problems);
    }
    Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
    for (Figure figure : figures.keySet()) {
      if (figure.nutrient != null) {
        known.put(figure.nutrient, per100(figure.nutrient, figures.get(figure)));
      }
    }
    if (!figures.containsKey(Figure.ENERGY_KCAL) && figures.containsKey(Figure.ENERGY_KJ)) {
      double kilocalories = figures.get(Figure.ENERGY_KJ) / KILOJOULES_PER_KILOCALORIE;
      known.put(Nutrient.ENERGY, per100(Nutrient.ENERGY, kilocalories));
    }
    if (!figures.containsKey(Figure.SODIUM) && figures.containsKey(Figure.SALT)) {
      double sodium = figures.get(Figure.SALT) / SALT_PER_SODIUM * 1000;
      known.put(Nutrient.SODIUM, per100(Nutrient.SODIUM, sodium));
    }
    OptionalDouble carbohydrate = carbohydrateByDifference();
    if (carbohydrate.isPresent()) {
      known.put(
          Nutrient.CARBOHYDRATE, per100(Nutrient.CARBOHYDRATE, carbohydrate.getAsDouble()));
    }
    return new Food(
        slug,
        name,
        kind,
        new Source(Source.Kind.LABEL, Optional.empty(), Optional.of(note())),
        Nutrients.of(known),
        servingGrams == 100
            ? List.of()
            : List.of(new HouseholdMeasure("serving", servingGrams)),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * Carbohydrate with fibre, for one serving.
   *
   * @return grams; empty when not on the label, or when the panel leaves fibre out and does not
   *     state it
   */
  OptionalDouble carbohydrateByDifference() {
    Double printed = figures.get(Figure.CARBOHYDRATE);
    if (printed == null) {
      return OptionalDouble.empty();
    }
    if (panel == Panel.UNITED_STATES) {
      return OptionalDouble.of(printed);
    }
    Double fibre = figures.get(Figure.FIBRE);
    return fibre == null ? OptionalDouble.empty() : OptionalDouble.of(printed + fibre);
  }

  private Quantity per100(Nutrient nutrient, double perServing) {
    double figure =
        BigDecimal.valueOf(perServing)
            .multiply(BigDecimal.valueOf(100))
            .divide(BigDecimal.valueOf(servingGrams), new MathContext(6))
            .doubleValue();
    return Quantity.known(nutrient.unit().equals("g") ? Math.min(100, figure) : figure);
  }

  private String note() {
    List<String> parts = new ArrayList<>();
    parts.add(
        servingGrams == 100
            ? panel.key() + " label, per 100 g; printed figures are rounded."
            : panel.key() + " label, per serving of " + HouseholdNames.number(servingGrams)
                + " g; printed figures are rounded.");
    if (figures.containsKey(Figure.CARBOHYDRATE) && carbohydrateByDifference().isEmpty()) {
      parts.add(
          "It states "
              + HouseholdNames.number(figures.get(Figure.CARBOHYDRATE))
              + " g carbohydrate without fibre, and no fibre: carbohydrate with fibre is unknown.");
    }
    return String.join(" ", parts);
  }

  /** A problem of one figure of this label. */
  static Problem problem(String field, String message, String hint) {
    return new Problem("label", Position.NONE, field, message, hint);
  }
}
