package io.ovenmark.pantry;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a food does in a dough that its figures do not show: sets, binds, raises, sweetens, seasons.
 * Told from its allergens and composition where they tell it, else from the words of its name. The
 * words and bounds are our own reading of common practice, no source; a food that is named
 * otherwise is taken to do nothing special.
 */
public enum FoodWork {
  /** Sets as it bakes and binds; whites hold air. */
  EGG("egg", true),
  /** Forms gluten, which holds the gas. */
  GLUTEN("gluten", false),
  /** Gels with a great deal of water at a few percent: psyllium, xanthan, guar, glucomannan. */
  GUM("gum", true),
  /** A seed whose skin gels when wet: flax, chia. */
  GEL_SEED("gelling seed", false),
  /** A powder that is mostly protein. */
  PROTEIN("protein powder", true),
  /** A powder that is mostly fibre. */
  FIBRE("fibre", true),
  /** Starch, which gels in the oven. */
  STARCH("starch", true),
  /** Sweetens. */
  SWEET("sweetening", true),
  /** Sugars that brown and that yeast can live on. */
  BROWNING("browning sugar", false),
  /** A fat that is solid at the bench and holds air when creamed. */
  SOLID_FAT("solid fat", false),
  /** Raises: yeast, powder, soda. */
  LEAVENING("leavening", true),
  /** Sour: sets off soda, firms, keeps. */
  ACID("acid", true),
  /** Salt. */
  SALT("salt", true),
  /** Spices, herbs, cocoa: there for their taste. */
  SEASONING("seasoning", true);

  private static final double MOSTLY_PROTEIN = 55;
  private static final double MOSTLY_FIBRE = 50;
  private static final double STARCHY = 80;
  private static final double NO_PROTEIN = 2;
  private static final double LITTLE_FIBRE = 5;
  private static final double CEREAL_PROTEIN = 5;
  private static final double SWEET_LEAST = 25;
  private static final double SUGARS_LEAST = 20;
  private static final double SALTY_MILLIGRAMS = 20_000;
  private static final double SATURATED_SHARE = 0.3;

  private static final Set<Allergen> GLUTEN_CEREALS =
      EnumSet.of(Allergen.WHEAT, Allergen.RYE, Allergen.BARLEY);
  private static final List<String> GUMS =
      List.of("psyllium", "xanthan", "guar", "glucomannan", "konjac", "carob", "gum");
  private static final List<String> GELLING = List.of("flaxseed", "flax", "linseed", "chia");
  private static final List<String> RAISING = List.of("yeast", "leavening");
  private static final List<String> SOUR = List.of("vinegar", "lemon-juice", "cream-of-tartar");
  private static final List<String> SOLID = List.of("shortening", "margarine", "lard");
  private static final List<String> TASTES =
      List.of(
          "cocoa", "chocolate", "vanilla", "cinnamon", "ginger", "nutmeg", "cardamom", "caraway",
          "fennel", "anise", "clove", "garlic", "onion", "paprika", "pepper", "rosemary", "thyme",
          "oregano", "lemon-peel", "zest", "mustard");

  private final String label;
  private final boolean tellsKind;

  FoodWork(String label, boolean tellsKind) {
    this.label = label;
    this.tellsKind = tellsKind;
  }

  /**
   * The name for people.
   *
   * @return such as {@code egg}
   */
  public String label() {
    return label;
  }

  /**
   * Whether foods that do this work are a kind of their own, so that one stands in for another
   * first. Gluten does not count: a flour with and one without it are both flours.
   *
   * @return true when it tells foods of one {@link FoodKind} apart
   */
  public boolean tellsKind() {
    return tellsKind;
  }

  /**
   * Whether taste or strength decides how much of such a food is taken, so that it cannot make up
   * the mass of a food that does something else.
   *
   * @return true for leavening, acid, salt and seasoning
   */
  public boolean decidesAmount() {
    return this == LEAVENING || this == ACID || this == SALT || this == SEASONING;
  }

  /**
   * What a food does.
   *
   * @param food the food
   * @return its works; empty for one that does nothing special
   */
  public static Set<FoodWork> of(Food food) {
    Set<FoodWork> works = EnumSet.noneOf(FoodWork.class);
    for (FoodWork work : values()) {
      if (work.isDoneBy(food)) {
        works.add(work);
      }
    }
    return works;
  }

  /**
   * Whether two foods are of the same kind: of one {@link FoodKind}, and alike in what makes a kind
   * of its own.
   *
   * @param one a food
   * @param other another
   * @return true when they are
   */
  public static boolean sameKind(Food one, Food other) {
    return one.kind() == other.kind() && telling(one).equals(telling(other));
  }

  private static Set<FoodWork> telling(Food food) {
    Set<FoodWork> works = of(food);
    works.removeIf(work -> !work.tellsKind);
    return works;
  }

  private boolean isDoneBy(Food food) {
    boolean dry = food.kind() == FoodKind.DRY;
    return switch (this) {
      case EGG -> has(food, Allergen.EGGS);
      case GLUTEN ->
          food.allergens().orElse(Set.of()).stream().anyMatch(GLUTEN_CEREALS::contains)
              && least(food, Nutrient.PROTEIN) >= CEREAL_PROTEIN;
      case GUM -> dry && named(food, GUMS);
      case GEL_SEED -> dry && named(food, GELLING);
      case PROTEIN -> dry && least(food, Nutrient.PROTEIN) >= MOSTLY_PROTEIN;
      case FIBRE ->
          dry
              && least(food, Nutrient.FIBRE) >= MOSTLY_FIBRE
              && !named(food, GUMS)
              && !named(food, TASTES);
      case STARCH ->
          dry
              && least(food, Nutrient.CARBOHYDRATE) >= STARCHY
              && food.per100g().get(Nutrient.PROTEIN).high() < NO_PROTEIN
              && food.per100g().get(Nutrient.FIBRE).high() < LITTLE_FIBRE
              && !isSweet(food);
      case SWEET -> isSweet(food);
      case BROWNING -> isSweet(food) && least(food, Nutrient.SUGARS) >= SUGARS_LEAST;
      case SOLID_FAT -> food.kind() == FoodKind.FAT && isSolid(food);
      case LEAVENING ->
          named(food, RAISING) || named(food, List.of("baking-powder", "baking-soda"));
      case ACID -> named(food, SOUR);
      case SALT -> least(food, Nutrient.SODIUM) >= SALTY_MILLIGRAMS && !raises(food);
      case SEASONING -> named(food, TASTES);
    };
  }

  private static boolean raises(Food food) {
    return LEAVENING.isDoneBy(food);
  }

  /** Milk powders hold much lactose, which hardly sweetens. */
  private static boolean isSweet(Food food) {
    double sweet =
        least(food, Nutrient.SUGARS)
            + least(food, Nutrient.POLYOLS)
            + least(food, Nutrient.ALLULOSE);
    double dryMatter = 100 - least(food, Nutrient.WATER);
    boolean allowed = food.kind() == FoodKind.DRY || food.kind() == FoodKind.LIQUID;
    return allowed
        && sweet >= SWEET_LEAST
        && sweet >= dryMatter / 2
        && !has(food, Allergen.MILK);
  }

  private static boolean isSolid(Food food) {
    double fat = least(food, Nutrient.FAT);
    return named(food, SOLID)
        || fat > 0 && least(food, Nutrient.SATURATED_FAT) / fat >= SATURATED_SHARE;
  }

  private static boolean has(Food food, Allergen allergen) {
    return food.allergens().orElse(Set.of()).contains(allergen);
  }

  private static double least(Food food, Nutrient nutrient) {
    return Math.max(0, food.per100g().get(nutrient).low());
  }

  /** Whether words, one or several in a row, stand in the short name or the name. */
  private static boolean named(Food food, List<String> wanted) {
    String name = food.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "-");
    Set<String> texts = new HashSet<>(Arrays.asList("-" + food.slug() + "-", "-" + name + "-"));
    return wanted.stream()
        .anyMatch(words -> texts.stream().anyMatch(text -> text.contains("-" + words + "-")));
  }
}
