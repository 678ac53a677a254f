package io.ovenmark.lever;

import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodWork;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a replacement does to the work of a dough that figures do not show, in the trade's words.
 * All of it is common practice, no source; only a bake shows what comes of it.
 */
public final class Structure {
  private static final String MARK = " (common practice, no source)";

  private static final Map<FoodWork, String> MISSED = new EnumMap<>(FoodWork.class);
  private static final Map<FoodWork, String> BROUGHT = new EnumMap<>(FoodWork.class);

  static {
    MISSED.put(
        FoodWork.EGG,
        "Egg sets the crumb in the oven, binds, and the white holds air; no figure here shows that."
            + " Something else has to bind");
    MISSED.put(
        FoodWork.GLUTEN,
        "Gluten holds the gas and lets the dough be kneaded and shaped; without it a gum or egg has"
            + " to, and the dough is spooned or moulded");
    MISSED.put(
        FoodWork.GUM,
        "A gum ties water and stands in for gluten; without it the dough may run and the crumb"
            + " crumble");
    MISSED.put(
        FoodWork.GEL_SEED,
        "Ground flax and chia gel and bind; the dough may be looser without");
    MISSED.put(
        FoodWork.STARCH, "Starch gels in the oven and sets the crumb; the crumb may stay soft");
    MISSED.put(
        FoodWork.BROWNING,
        "Sugar browns the crust, keeps the crumb soft, and feeds yeast; sweeteners do little of"
            + " that");
    MISSED.put(
        FoodWork.SOLID_FAT,
        "A fat that is solid at the bench holds air when creamed and shortens in layers; oil only"
            + " softens");
    MISSED.put(FoodWork.LEAVENING, "Without it something else has to raise the dough");
    MISSED.put(
        FoodWork.ACID,
        "The acid sets off baking soda and firms the crumb; soda without acid tastes of soap");
    MISSED.put(FoodWork.SALT, "Salt seasons, and slows yeast");
    BROUGHT.put(
        FoodWork.EGG, "Egg sets the crumb and dries it; more of it bakes firm and tastes of egg");
    BROUGHT.put(
        FoodWork.GLUTEN, "Gluten makes the dough elastic; it needs more water and some kneading");
    BROUGHT.put(
        FoodWork.GUM,
        "A gum ties many times its mass of water, more than its figures show; begin with far less"
            + " and let the dough rest");
    BROUGHT.put(
        FoodWork.GEL_SEED, "Ground flax and chia gel slowly; rest the dough before judging it");
    BROUGHT.put(
        FoodWork.FIBRE, "A fibre powder drinks water at once; the dough stiffens more than its"
            + " liquid ratio says");
    BROUGHT.put(
        FoodWork.PROTEIN,
        "A protein powder dries and toughens the crumb when there is much of it, and browns fast");
    BROUGHT.put(FoodWork.SWEET, "It sweetens, which the dough may not want");
    BROUGHT.put(
        FoodWork.LEAVENING, "It raises; how much follows from its strength, not from its mass");
    BROUGHT.put(FoodWork.ACID, "The acid sets off any soda and slows yeast");
    BROUGHT.put(FoodWork.SALT, "It salts the dough; taste decides the amount");
    BROUGHT.put(FoodWork.SEASONING, "It is there for its taste, which decides the amount");
  }

  private Structure() {}

  /**
   * What changes when foods give way to others.
   *
   * @param from the foods before
   * @param to the foods after
   * @return a sentence or two for each work that is no longer done, or newly
   */
  public static List<String> between(Collection<Food> from, Collection<Food> to) {
    Set<FoodWork> before = works(from);
    Set<FoodWork> after = works(to);
    List<String> words = new ArrayList<>();
    for (FoodWork work : minus(before, after)) {
      if (MISSED.containsKey(work)) {
        words.add(MISSED.get(work) + MARK + ".");
      }
    }
    for (FoodWork work : minus(after, before)) {
      if (BROUGHT.containsKey(work)) {
        words.add(BROUGHT.get(work) + MARK + ".");
      }
    }
    return List.copyOf(words);
  }

  /**
   * What a food does that no other may do in its place.
   *
   * @param food the food
   * @return a sentence for each such work
   */
  public static List<String> doneBy(Food food) {
    return FoodWork.of(food).stream()
        .filter(MISSED::containsKey)
        .map(work -> MISSED.get(work) + MARK + ".")
        .toList();
  }

  private static Set<FoodWork> works(Collection<Food> foods) {
    Set<FoodWork> works = EnumSet.noneOf(FoodWork.class);
    foods.forEach(food -> works.addAll(FoodWork.of(food)));
    return works;
  }

  /** What changes when one food stands in for another, also where both do the same work. */
  static List<String> of(Food from, Food to) {
    Set<FoodWork> before = FoodWork.of(from);
    Set<FoodWork> after = FoodWork.of(to);
    List<String> words = new ArrayList<>(between(List.of(from), List.of(to)));
    both(FoodWork.GUM, before, after, words,
        "Gums differ many times over in how much water they tie: xanthan and glucomannan are used"
            + " at a fraction of the mass of psyllium");
    both(FoodWork.LEAVENING, before, after, words,
        "Leavenings differ in strength and in what they need: yeast wants time, soda an acid,"
            + " powder neither");
    both(FoodWork.EGG, before, after, words,
        "White holds air and dries, yolk softens; a dried egg needs its water back");
    both(FoodWork.SWEET, before, after, words,
        "Sweeteners differ in how sweet they are for their mass; taste decides the amount");
    both(FoodWork.GLUTEN, before, after, words,
        "Flours with gluten differ in strength and thirst; hold some of the water back");
    return List.copyOf(words);
  }

  private static void both(
      FoodWork work, Set<FoodWork> before, Set<FoodWork> after, List<String> words, String text) {
    if (before.contains(work) && after.contains(work)) {
      words.add(text + MARK + ".");
    }
  }

  private static Set<FoodWork> minus(Set<FoodWork> all, Set<FoodWork> without) {
    Set<FoodWork> left = EnumSet.noneOf(FoodWork.class);
    left.addAll(all);
    left.removeAll(without);
    return left;
  }
}
