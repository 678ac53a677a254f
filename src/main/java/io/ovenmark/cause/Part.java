package io.ovenmark.cause;

import java.util.function.UnaryOperator;

/**
 * One thing that changed and that can be set either way.
 *
 * @param sort where it belongs
 * @param name in words, such as {@code water} or {@code oven time}
 * @param from what it was before, in words
 * @param to what it was after, in words
 * @param back makes a recipe with it after one with it before
 */
record Part(Sort sort, String name, String from, String to, UnaryOperator<Recipe> back) {
  /** Where a part belongs, when parts are bundled. */
  enum Sort {
    /** Lines of liquids. */
    LIQUID("liquids", true),
    /** Lines of dry foods. */
    DRY("dry foods", true),
    /** Other lines. */
    OTHER("fats and other foods", true),
    /** The steps. */
    METHOD("method", true),
    /** How large a piece is. */
    DIVISION("dough a piece", true),
    /** Heat, time, rack, tray and steam. */
    OVEN("oven", false);

    private final String label;
    private final boolean dough;

    Sort(String label, boolean dough) {
      this.label = label;
      this.dough = dough;
    }

    String label() {
      return label;
    }

    /** Whether it belongs to the dough rather than to the oven. */
    boolean isDough() {
      return dough;
    }
  }
}
