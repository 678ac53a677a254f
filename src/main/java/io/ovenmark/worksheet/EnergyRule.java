package io.ovenmark.worksheet;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How energy is worked out. Which rule was used is always named beside the figure.
 *
 * <p>US factors, 21 CFR 101.9(c)(1)(i)(C) and (F): protein 4, fat 9, carbohydrate less
 * non-digestible carbohydrate and sugar alcohols 4, soluble non-digestible carbohydrate 2,
 * insoluble 0, sugar alcohols by kind (isomalt, lactitol 2.0, xylitol 2.4, maltitol 2.1, sorbitol
 * 2.6, hydrogenated starch hydrolysates 3.0, mannitol 1.6, erythritol 0); allulose 0.4 (FDA
 * guidance, 2020). EU factors, Regulation (EU) No 1169/2011, Annex XIV: protein 4, fat 9,
 * carbohydrate without fibre and polyols 4, polyols 2.4, erythritol 0, fibre 2, alcohol 7;
 * allulose, which the annex does not name, counts as carbohydrate. Where the kind of a polyol or
 * the soluble share of the fibre is unknown, the result lies between the bounds they allow.
 */
public enum EnergyRule {
  /** The foods' own stated energy. */
  FOODS("foods"),
  /** Factors of the United States. */
  US_FACTORS("US factors"),
  /** Factors of the European Union. */
  EU_FACTORS("EU factors");

  private static final double PROTEIN = 4;
  private static final double FAT = 9;
  private static final double CARBOHYDRATE = 4;
  private static final double ALCOHOL = 7;
  private static final double SOLUBLE_FIBRE_US = 2;
  private static final double ALLULOSE_US = 0.4;
  private static final double GREATEST_POLYOL_US = 3.0;
  private static final String ERYTHRITOL = "erythritol";
  private static final Map<String, Double> POLYOLS_US =
      Map.of(
          "isomalt", 2.0,
          "lactitol", 2.0,
          "xylitol", 2.4,
          "maltitol", 2.1,
          "sorbitol", 2.6,
          "hydrogenated starch hydrolysates", 3.0,
          "mannitol", 1.6,
          ERYTHRITOL, 0.0);

  /** What carbohydrate by difference leaves open when the proximates nearly sum to 100 g. */
  private static final double BALANCE_ROUNDING_GRAMS = 0.1;

  /** Kilojoules of a kilocalorie; Regulation (EU) No 1169/2011 keeps sums of their own instead. */
  private static final double KILOJOULES = 4.184;

  /** Annex XIV of Regulation (EU) No 1169/2011, for a gram. */
  private record European(
      double protein,
      double fat,
      double carbohydrate,
      double alcohol,
      double fibre,
      double polyol) {
    static final European KILOCALORIES = new European(4, 9, 4, 7, 2, 2.4);
    static final European KILOJOULES = new European(17, 37, 17, 29, 8, 10);
  }

  private final String key;

  EnergyRule(String key) {
    this.key = key;
  }

  /**
   * The name in JSON and for people.
   *
   * @return such as {@code US factors}
   */
  public String key() {
    return key;
  }

  /**
   * Finds a rule by its name.
   *
   * @param key such as {@code foods}
   * @return the rule, empty when there is none
   */
  public static Optional<EnergyRule> withKey(String key) {
    for (EnergyRule rule : values()) {
      if (rule.key.equals(key)) {
        return Optional.of(rule);
      }
    }
    return Optional.empty();
  }

  /**
   * The sugar alcohols that have a factor of their own.
   *
   * @return their names in alphabetical order
   */
  public static List<String> polyols() {
    return POLYOLS_US.keySet().stream().sorted().toList();
  }

  /**
   * Energy of 100 g of a food.
   *
   * @param food the food
   * @return kcal, possibly bounded or unknown
   */
  public Quantity energyPer100g(Food food) {
    Nutrients n = food.per100g();
    if (this == FOODS) {
      return n.get(Nutrient.ENERGY);
    }
    if (this == EU_FACTORS) {
      return european(food, European.KILOCALORIES);
    }
    Quantity carbohydrate = n.get(Nutrient.CARBOHYDRATE);
    return n.get(Nutrient.PROTEIN)
        .times(PROTEIN)
        .plus(n.get(Nutrient.FAT).times(FAT))
        .plus(alcohol(n).times(ALCOHOL))
        .plus(
            us(
                food,
                carbohydrate,
                n.get(Nutrient.FIBRE).noMoreThan(carbohydrate),
                n.get(Nutrient.POLYOLS).noMoreThan(carbohydrate),
                n.get(Nutrient.ALLULOSE).noMoreThan(carbohydrate)))
        .notNegative();
  }

  /**
   * Energy of 100 g of a food in kilojoules. By the EU factors it is a sum of its own (protein 17,
   * fat 37, carbohydrate 17, polyols 10, erythritol 0, fibre 8, alcohol 29), never converted; by
   * the other rules it is 4.184 times the kilocalories.
   *
   * @param food the food
   * @return kJ, possibly bounded or unknown
   */
  public Quantity kilojoulesPer100g(Food food) {
    return this == EU_FACTORS
        ? european(food, European.KILOJOULES)
        : energyPer100g(food).times(KILOJOULES);
  }

  /** Carbohydrate at 4 less what each special part falls short of 4; keeps the bounds tight. */
  private static Quantity us(
      Food food, Quantity carbohydrate, Quantity fibre, Quantity polyols, Quantity allulose) {
    Quantity atMost = carbohydrate.times(CARBOHYDRATE);
    return atMost
        .minus(fibreShortfall(fibre, food.per100g().get(Nutrient.SOLUBLE_FIBRE)))
        .minus(polyols.times(polyolShortfall(food)))
        .minus(allulose.times(CARBOHYDRATE - ALLULOSE_US))
        .notNegative()
        .noMoreThan(atMost);
  }

  /** Insoluble fibre falls short by 4, soluble by 2; of an unknown share each gram by 2 to 4. */
  private static Quantity fibreShortfall(Quantity fibre, Quantity soluble) {
    return soluble.isKnown()
        ? fibre
            .times(CARBOHYDRATE)
            .minus(soluble.noMoreThan(fibre).times(CARBOHYDRATE - SOLUBLE_FIBRE_US))
            .notNegative()
        : fibre.times(Quantity.between(CARBOHYDRATE - SOLUBLE_FIBRE_US, CARBOHYDRATE));
  }

  private static Quantity european(Food food, European factors) {
    Nutrients n = food.per100g();
    Quantity carbohydrate = n.get(Nutrient.CARBOHYDRATE);
    Quantity fibre = n.get(Nutrient.FIBRE).noMoreThan(carbohydrate);
    Quantity polyols = n.get(Nutrient.POLYOLS).noMoreThan(carbohydrate);
    Optional<String> kind = polyol(food);
    double full = factors.carbohydrate();
    Quantity shortfall =
        kind.isPresent()
            ? Quantity.known(full - (kind.get().equals(ERYTHRITOL) ? 0 : factors.polyol()))
            : Quantity.between(full - factors.polyol(), full);
    Quantity rest =
        carbohydrate
            .times(full)
            .minus(fibre.times(full - factors.fibre()))
            .minus(polyols.times(shortfall))
            .notNegative();
    return n.get(Nutrient.PROTEIN)
        .times(factors.protein())
        .plus(n.get(Nutrient.FAT).times(factors.fat()))
        .plus(alcohol(n).times(factors.alcohol()))
        .plus(rest)
        .notNegative();
  }

  private static Quantity polyolShortfall(Food food) {
    return polyol(food)
        .map(kind -> Quantity.known(CARBOHYDRATE - POLYOLS_US.get(kind)))
        .orElse(Quantity.between(CARBOHYDRATE - GREATEST_POLYOL_US, CARBOHYDRATE));
  }

  /** The kind of polyol when it is one that has a factor; a blend or another word is unknown. */
  private static Optional<String> polyol(Food food) {
    return food.polyol()
        .map(kind -> kind.strip().toLowerCase(Locale.ROOT))
        .filter(POLYOLS_US::containsKey);
  }

  /** Unknown alcohol cannot be more than what the other parts leave of 100 g. */
  private static Quantity alcohol(Nutrients n) {
    Quantity alcohol = n.get(Nutrient.ALCOHOL);
    if (alcohol.isKnown()) {
      return alcohol;
    }
    double others =
        n.get(Nutrient.WATER).low()
            + n.get(Nutrient.PROTEIN).low()
            + n.get(Nutrient.FAT).low()
            + n.get(Nutrient.CARBOHYDRATE).low()
            + n.get(Nutrient.ASH).low();
    double left = Math.max(0, 100 - others);
    return left <= BALANCE_ROUNDING_GRAMS
        ? Quantity.ZERO
        : alcohol.noMoreThan(Quantity.known(left));
  }
}
