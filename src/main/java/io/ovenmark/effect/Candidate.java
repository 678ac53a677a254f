package io.ovenmark.effect;

import java.util.Arrays;

/**
 * Something that differed between pieces and so may have mattered.
 *
 * @param key name for programs, such as {@code line.water}
 * @param kind its sort
 * @param label in words, such as {@code psyllium husk}
 * @param values one for each piece of the history; not a number where it is unknown; 0 or 1 for
 *     something that is so or not
 */
record Candidate(String key, Kind kind, String label, double[] values) {

  /** Sorts of candidates; a group of them is led by the first sort in this order. */
  enum Kind {
    /** Liquids divided by dry foods. */
    LIQUID_RATIO(0.05, "", 0.004),
    /** Grams of a line, the batch brought to one size. */
    LINE(10, "g", 0.05),
    /** The temperature of the oven. */
    OVEN_TEMPERATURE(10, "°C", 5),
    /** The time in the oven. */
    OVEN_TIME(2, "min", 1),
    /** The dough mass of a piece. */
    DOUGH_PER_PIECE(5, "g", 2.5),
    /** Water in the dough, percent. */
    DOUGH_MOISTURE(1, "%", 0.15),
    /** Another food in a line. */
    FOOD(1, "", 0.5),
    /** A step of the method. */
    METHOD(1, "", 0.5),
    /** Rack, steam, vessel, a further stage. */
    OVEN(1, "", 0.5),
    /** Grams of a line that is all but water, which counts by the liquid ratio. */
    WATERY_LINE(10, "g", 0.05),
    /** How the batch is divided, which counts by the dough a piece. */
    DIVIDING(1, "", 0.5);

    private final double step;
    private final String unit;
    private final double least;

    Kind(double step, String unit, double least) {
      this.step = step;
      this.unit = unit;
      this.least = least;
    }

    /** A change that is natural to speak of, in {@link #unit}. */
    double step() {
      return step;
    }

    /** The unit; empty for a ratio or for something that is so or not. */
    String unit() {
      return unit;
    }

    /** What differs by no more than this is the same. */
    double least() {
      return least;
    }

    /** Whether somebody changes it as such; others follow from what was changed. */
    boolean isEntered() {
      return this != LIQUID_RATIO && this != DOUGH_MOISTURE && this != DOUGH_PER_PIECE;
    }

    /** Whether it has an effect of its own; others count by what follows from them. */
    boolean isModelled() {
      return this != WATERY_LINE && this != DIVIDING;
    }

    /** Whether it is so or not, rather than more or less. */
    boolean isEitherOr() {
      return this == FOOD || this == METHOD || this == OVEN || this == DIVIDING;
    }
  }

  /** Whether two pieces differ in it. */
  boolean differs(int one, int other) {
    return Math.abs(values[one] - values[other]) > kind.least();
  }

  /** The same candidate for some pieces. */
  Candidate of(int[] pieces) {
    return new Candidate(key, kind, label, Arrays.stream(pieces).mapToDouble(i -> values[i])
        .toArray());
  }

  double least() {
    return Arrays.stream(values).min().orElse(0);
  }

  double most() {
    return Arrays.stream(values).max().orElse(0);
  }

  /** Whether it differs between any two pieces. */
  boolean varies() {
    return most() - least() > kind.least();
  }
}
