package io.ovenmark.cause;

/**
 * How much is baked of each setting.
 *
 * @param pieces pieces of each setting, 1 to {@value #MOST_PIECES}; two or more show how much
 *     pieces of one setting differ by chance
 * @param perTray pieces that a tray takes, 1 to {@value #MOST_PER_TRAY}
 */
public record PlanSize(int pieces, int perTray) {
  /** Most pieces of one setting. */
  public static final int MOST_PIECES = 24;

  /** Most pieces of a tray. */
  public static final int MOST_PER_TRAY = 200;

  /** Pieces of a setting when nothing is said; common practice, no source. */
  public static final int USUAL_PIECES = 2;

  /** Checks the numbers. */
  public PlanSize {
    check("pieces of a setting", pieces, MOST_PIECES);
    check("pieces of a tray", perTray, MOST_PER_TRAY);
  }

  private static void check(String what, int number, int most) {
    if (number < 1 || number > most) {
      throw new IllegalArgumentException(
          "The " + what + " cannot be " + number + ".\nUse a number from 1 to " + most + ".");
    }
  }
}
