package io.ovenmark.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A design of two-level factors: the full one of 2^k settings, or its half. After Box, Hunter and
 * Hunter, <i>Statistics for Experimenters</i>, and NIST/SEMATECH, <i>e-Handbook of Statistical
 * Methods</i>, 5.3.3.3 and 5.3.3.4: the half takes the product of all other factors as the last, so
 * that each effect is mixed up with exactly one other, its alias.
 *
 * <p>Settings stand in Yates' order of the full design in the factors that vary freely: the first
 * factor changes fastest. A word is a set of factors as bits, factor 0 being the lowest: one factor
 * is a main effect, two or more an interaction.
 */
public final class Factorial {
  /** Most factors of a design. */
  public static final int MOST_FACTORS = 5;

  private final int factors;
  private final boolean half;

  private Factorial(int factors, boolean half) {
    int least = half ? 3 : 1;
    if (factors < least || factors > MOST_FACTORS) {
      throw new IllegalArgumentException(
          "a design has " + least + " to " + MOST_FACTORS + " factors, not " + factors);
    }
    this.factors = factors;
    this.half = half;
  }

  /**
   * The full design.
   *
   * @param factors 1 to {@value #MOST_FACTORS}
   * @return the design of 2^factors settings
   */
  public static Factorial full(int factors) {
    return new Factorial(factors, false);
  }

  /**
   * The half of the full design.
   *
   * @param factors 3 to {@value #MOST_FACTORS}
   * @return the design of 2^(factors − 1) settings
   */
  public static Factorial half(int factors) {
    return new Factorial(factors, true);
  }

  /**
   * The design for so many factors: all settings up to three, else the half.
   *
   * @param factors 1 to {@value #MOST_FACTORS}
   * @return the design
   */
  public static Factorial of(int factors) {
    return factors <= 3 ? full(factors) : half(factors);
  }

  /**
   * How many factors.
   *
   * @return from 1
   */
  public int factors() {
    return factors;
  }

  /**
   * Whether it is the half.
   *
   * @return false for the full design
   */
  public boolean isHalf() {
    return half;
  }

  /**
   * How many settings.
   *
   * @return 2^factors, or half as many
   */
  public int settings() {
    return 1 << (half ? factors - 1 : factors);
  }

  /**
   * The length of the shortest word that is mixed up with the mean: at 3 main effects are mixed up
   * with interactions of two, at 4 with those of three, at 5 with those of four.
   *
   * @return the resolution; empty for the full design, where nothing is mixed up
   */
  public Optional<Integer> resolution() {
    return half ? Optional.of(factors) : Optional.empty();
  }

  /**
   * Whether a factor stands at its second level.
   *
   * @param setting from 0
   * @param factor from 0
   * @return false for the first level
   */
  public boolean isHigh(int setting, int factor) {
    return sign(setting, 1 << factor) > 0;
  }

  /**
   * The sign of a contrast at a setting: the product of its factors' signs.
   *
   * @param setting from 0
   * @param word the factors of the contrast
   * @return 1 or −1
   */
  public int sign(int setting, int word) {
    int free = half ? factors - 1 : factors;
    int sign = 1;
    for (int factor = 0; factor < factors; factor++) {
      if ((word & 1 << factor) != 0) {
        sign *= factor < free ? level(setting, factor) : product(setting, free);
      }
    }
    return sign;
  }

  private static int level(int setting, int factor) {
    return (setting & 1 << factor) != 0 ? 1 : -1;
  }

  private static int product(int setting, int free) {
    int product = 1;
    for (int factor = 0; factor < free; factor++) {
      product *= level(setting, factor);
    }
    return product;
  }

  /**
   * What can be told apart, one word of each alias pair: main effects, then interactions by their
   * number of factors.
   *
   * @return the words, one fewer than settings
   */
  public List<Integer> words() {
    List<Integer> words = new ArrayList<>();
    for (int word = 1; word < 1 << factors; word++) {
      Optional<Integer> alias = alias(word);
      boolean first =
          alias.isEmpty()
              || alias.get() != 0 && ORDER.compare(word, alias.get()) < 0;
      if (first) {
        words.add(word);
      }
    }
    words.sort(ORDER);
    return List.copyOf(words);
  }

  private static final Comparator<Integer> ORDER =
      Comparator.<Integer>comparingInt(Integer::bitCount).thenComparingInt(word -> word);

  /**
   * What a contrast is mixed up with.
   *
   * @param word the factors of the contrast
   * @return the other word, 0 for the mean; empty for the full design
   */
  public Optional<Integer> alias(int word) {
    return half ? Optional.of(word ^ (1 << factors) - 1) : Optional.empty();
  }

  /**
   * The effect of a contrast: the mean where its sign is plus, less the mean where it is minus.
   *
   * @param word the factors of the contrast, at least one
   * @param responses one for each setting in order
   * @return the effect, in the unit of the responses
   * @throws IllegalArgumentException when there are more or fewer responses than settings
   */
  public double effect(int word, List<Double> responses) {
    if (responses.size() != settings()) {
      throw new IllegalArgumentException(
          settings() + " responses are needed, not " + responses.size());
    }
    double sum = 0;
    for (int setting = 0; setting < responses.size(); setting++) {
      sum += sign(setting, word) * responses.get(setting);
    }
    return 2 * sum / settings();
  }
}
