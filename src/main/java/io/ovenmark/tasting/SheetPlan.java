package io.ovenmark.tasting;

import io.ovenmark.json.Extras;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Draws codes and orders of the sheets from a seed: the same seed always gives the same sheets, and
 * more sheets leave the earlier ones as they are.
 *
 * <pre>{@code
 * List<Sheet> sheets = SheetPlan.draw(TastingKind.TRIANGLE, 2, 12, 20260914);
 * }</pre>
 *
 * <p>Orders come in blocks that are balanced, each block in an order of its own: the six orders of
 * a triangle (AAB, ABA, BAA, BBA, BAB, ABB), else the rows of a {@link WilliamsDesign}. Codes are
 * dealt like cards from all 900 numbers of three digits without a leading zero, so that none stands
 * twice in a tasting; only above 900 plates are they shuffled and dealt again, and then none stands
 * twice on a sheet.
 */
public final class SheetPlan {
  private static final int FIRST_CODE = 100;
  private static final int CODES = 900;
  private static final List<List<Integer>> TRIANGLES =
      List.of(
          List.of(1, 1, 2),
          List.of(1, 2, 1),
          List.of(2, 1, 1),
          List.of(2, 2, 1),
          List.of(2, 1, 2),
          List.of(1, 2, 2));

  /** Of a fixed algorithm that the Java platform specifies, so that a seed never changes sense. */
  private final Random random;

  private final List<List<Integer>> orders;
  private final List<List<Integer>> block = new ArrayList<>();
  private final List<String> cards = new ArrayList<>();

  private SheetPlan(List<List<Integer>> orders, int seed) {
    this.orders = orders;
    this.random = new Random(seed);
  }

  /**
   * Draws sheets without answers.
   *
   * @param kind what the tasters do
   * @param samples how many samples there are
   * @param sheets how many sheets
   * @param seed any number
   * @return sheets numbered from 1
   */
  public static List<Sheet> draw(TastingKind kind, int samples, int sheets, int seed) {
    SheetPlan plan = new SheetPlan(orders(kind, samples), seed);
    List<Sheet> drawn = new ArrayList<>();
    for (int number = 1; number <= sheets; number++) {
      drawn.add(plan.next(number));
    }
    return List.copyOf(drawn);
  }

  /**
   * How many sheets make the orders balanced: that many, or a multiple.
   *
   * @param kind what the tasters do
   * @param samples how many samples there are
   * @return 1 or more
   */
  public static int balancedAt(TastingKind kind, int samples) {
    return orders(kind, samples).size();
  }

  private static List<List<Integer>> orders(TastingKind kind, int samples) {
    return kind == TastingKind.TRIANGLE ? TRIANGLES : WilliamsDesign.orders(samples);
  }

  private Sheet next(int number) {
    if (block.isEmpty()) {
      block.addAll(shuffled(orders));
    }
    Set<String> used = new HashSet<>();
    List<Serving> servings = new ArrayList<>();
    for (int sample : block.remove(0)) {
      String code = code(used);
      used.add(code);
      servings.add(new Serving(code, sample, Extras.NONE));
    }
    return new Sheet(number, Optional.empty(), servings, Optional.empty(), Extras.NONE);
  }

  private String code(Set<String> used) {
    while (true) {
      if (cards.isEmpty()) {
        List<String> all = new ArrayList<>();
        for (int code = FIRST_CODE; code < FIRST_CODE + CODES; code++) {
          all.add(Integer.toString(code));
        }
        cards.addAll(shuffled(all));
      }
      String code = cards.remove(cards.size() - 1);
      if (!used.contains(code)) {
        return code;
      }
    }
  }

  private <T> List<T> shuffled(List<T> items) {
    List<T> shuffled = new ArrayList<>(items);
    for (int i = shuffled.size() - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      T item = shuffled.set(i, shuffled.get(j));
      shuffled.set(j, item);
    }
    return shuffled;
  }
}
