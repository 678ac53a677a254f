package io.ovenmark.effect;

import java.util.List;

/**
 * What a change, or several that cannot be told apart, went together with in one outcome.
 *
 * @param key name for programs of the change that leads, such as {@code line.psyllium-husk}
 * @param kind its sort: {@code liquid_ratio}, {@code line}, {@code oven_temperature}, …
 * @param label in words, such as {@code psyllium husk}
 * @param with labels of the changes that always went along, such as {@code less lupin flour}; all
 *     of them share the effect
 * @param perAmount the change that the effect is stated for, such as 10
 * @param perUnit its unit, such as {@code g}; empty for a ratio or for something that is so or not
 * @param eitherOr whether it is so or not, rather than more or less
 * @param least the least of it that was tried
 * @param most the most
 * @param together the effect, all others looked at with it
 * @param byItself the effect as if nothing else had changed but by chance
 * @param steps where it was changed, from bake to bake and within a tray, oldest first
 * @param companions what else moved in those steps, the most frequent first
 */
public record Effect(
    String key,
    String kind,
    String label,
    List<String> with,
    double perAmount,
    String perUnit,
    boolean eitherOr,
    double least,
    double most,
    Size together,
    Size byItself,
    List<Step> steps,
    List<Companion> companions) {

  /**
   * An effect on the outcome, in its unit.
   *
   * @param value what is expected
   * @param low the lower end of the interval that holds it with 90 % probability
   * @param high the upper end
   * @param sureOfSign probability, 0.5 to 1, that the effect has the sign of the value
   */
  public record Size(double value, double low, double high, double sureOfSign) {
    /**
     * Whether the interval leaves no change out.
     *
     * @return true when zero lies outside
     */
    public boolean standsOut() {
      return low > 0 || high < 0;
    }
  }

  /**
   * Two bakes one after the other, or one tray, in which the change moved.
   *
   * @param fromAddress the revision that was baked before
   * @param toAddress the one after; the same for one tray
   * @param fromBake the bake before
   * @param toBake the bake after; the same for one tray
   * @param alone whether two of its pieces differ in nothing else that was changed
   */
  public record Step(
      String fromAddress, String toAddress, String fromBake, String toBake, boolean alone) {
    /**
     * Whether it is one tray.
     *
     * @return true when its pieces were baked together
     */
    public boolean oneTray() {
      return fromBake.equals(toBake);
    }
  }

  /**
   * Something that moved along.
   *
   * @param label in words
   * @param times in how many of the steps
   */
  public record Companion(String label, int times) {}

  /** How surely it can be spoken of. */
  public enum Standing {
    /** It shows even with all other changes looked at beside it. */
    CLEAR,
    /** It shows by itself, but not apart from what else was changed. */
    ALONG,
    /** It cannot be told from chance. */
    OPEN
  }

  /** Copies the lists. */
  public Effect {
    with = List.copyOf(with);
    steps = List.copyOf(steps);
    companions = List.copyOf(companions);
  }

  /**
   * How surely it can be spoken of.
   *
   * @return by which of its intervals leave zero out
   */
  public Standing standing() {
    if (together.standsOut()) {
      return Standing.CLEAR;
    }
    return byItself.standsOut() ? Standing.ALONG : Standing.OPEN;
  }

  /**
   * How often it was changed with nothing else.
   *
   * @return the number of steps
   */
  public int alone() {
    return (int) steps.stream().filter(Step::alone).count();
  }
}
