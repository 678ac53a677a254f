package io.ovenmark.tasting;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a triangle test shows: how many found the odd sample, where one in three does by guessing.
 * The probability is the exact binomial one (the method of ISO 4120, by computation, not from its
 * tables). A discriminator tells the samples apart; everybody else guesses.
 *
 * @param answered how many answered
 * @param correct how many of them were right
 * @param p probability of at least so many right answers by guessing alone; empty without answers
 * @param leastCorrect right answers needed to say at α 0.05 that the samples differ; empty when
 *     even all would not do
 * @param discriminators most likely share of discriminators, 0 to 1; empty without answers
 * @param lowest lower one-sided 95 % bound of that share; empty without answers
 * @param highest upper one-sided 95 % bound of that share; empty without answers
 * @param visible the share of discriminators that this many answers show at α 0.05 four times in
 *     five; empty when no share is large enough
 */
public record Triangle(
    int answered,
    int correct,
    OptionalDouble p,
    OptionalInt leastCorrect,
    OptionalDouble discriminators,
    OptionalDouble lowest,
    OptionalDouble highest,
    OptionalDouble visible) {
  private static final double GUESSED = 1.0 / 3;
  private static final int MOST_TASTERS = 1000;

  /**
   * Works it out.
   *
   * @param answered how many answered
   * @param correct how many of them were right
   * @return the result
   * @throws IllegalArgumentException when more were right than answered
   */
  public static Triangle of(int answered, int correct) {
    Faults.require(
        correct >= 0 && correct <= answered,
        correct + " of " + answered + " cannot be right.",
        "Count again.");
    OptionalInt needed = leastCorrect(answered, Chance.ALPHA);
    if (answered == 0) {
      OptionalDouble unknown = OptionalDouble.empty();
      return new Triangle(0, 0, unknown, needed, unknown, unknown, unknown, unknown);
    }
    return new Triangle(
        answered,
        correct,
        OptionalDouble.of(Chance.atLeast(correct, answered, GUESSED)),
        needed,
        OptionalDouble.of(discriminators((double) correct / answered)),
        OptionalDouble.of(discriminators(Chance.lowerBound(correct, answered, Chance.ALPHA))),
        OptionalDouble.of(discriminators(Chance.upperBound(correct, answered, Chance.ALPHA))),
        visible(answered));
  }

  /**
   * The least number of right answers that shows a difference.
   *
   * @param answered how many answer
   * @param alpha how often guessing alone may do as well
   * @return the number; empty when even all would not do
   */
  public static OptionalInt leastCorrect(int answered, double alpha) {
    for (int correct = 1; correct <= answered; correct++) {
      if (Chance.atLeast(correct, answered, GUESSED) <= alpha) {
        return OptionalInt.of(correct);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * How often a panel shows a difference.
   *
   * @param answered how many answer
   * @param share the true share of discriminators, 0 to 1
   * @return the probability that enough are right at α 0.05
   */
  public static double power(int answered, double share) {
    OptionalInt needed = leastCorrect(answered, Chance.ALPHA);
    double right = share + (1 - share) * GUESSED;
    return needed.isPresent() ? Chance.atLeast(needed.getAsInt(), answered, right) : 0;
  }

  /**
   * The smallest share of discriminators that a panel shows at α 0.05 four times in five.
   *
   * @param answered how many answer
   * @return the share, 0 to 1; empty when the panel cannot show any difference
   */
  public static OptionalDouble visible(int answered) {
    OptionalInt needed = leastCorrect(answered, Chance.ALPHA);
    return needed.isPresent()
        ? OptionalDouble.of(
            discriminators(
                Chance.shareForAtLeast(needed.getAsInt(), answered, Chance.POWER)))
        : OptionalDouble.empty();
  }

  /**
   * How many tasters show a share of discriminators at α 0.05 four times in five.
   *
   * @param share the share, above 0, up to 1
   * @return the number; empty when it takes more than a thousand
   */
  public static OptionalInt tastersFor(double share) {
    for (int tasters = 3; tasters <= MOST_TASTERS; tasters++) {
      if (power(tasters, share) >= Chance.POWER) {
        return OptionalInt.of(tasters);
      }
    }
    return OptionalInt.empty();
  }

  /** Of the share of right answers, those that were not guessed; never below none. */
  private static double discriminators(double right) {
    return Math.max(0, (right - GUESSED) / (1 - GUESSED));
  }
}
