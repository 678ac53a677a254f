package io.ovenmark.worksheet;

import io.ovenmark.measure.Quantity;
import java.util.OptionalDouble;

/**
 * Which mass makes a wish come true while the other lines stay as they are. With <i>g</i> the mass
 * of the line, <i>o</i> the sum of the others, <i>f</i> the flour and <i>p</i> the wished percent:
 *
 * <ul>
 *   <li>percent of the batch: <i>p</i> = 100 <i>g</i> ÷ (<i>g</i> + <i>o</i>), hence <i>g</i> =
 *       <i>p</i> ÷ (100 − <i>p</i>) × <i>o</i>;
 *   <li>baker's percentage of a line that is not flour: <i>g</i> = <i>p</i> ÷ 100 × <i>f</i>;
 *   <li>baker's percentage of a flour line: <i>g</i> = <i>p</i> ÷ (100 − <i>p</i>) × the other
 *       flours.
 * </ul>
 *
 * <p>The definitions are those of {@link WorksheetLine}; solved here by algebra. Nothing is rounded.
 *
 * <pre>{@code
 * double grams = Reweigh.toPercentOfBatch(worksheet, "water", 40);
 * }</pre>
 */
public final class Reweigh {
  private Reweigh() {}

  /**
   * The mass of a line for a share of the batch.
   *
   * @param sheet the formula worked out
   * @param id the line
   * @param percent the wished share, 0 or more
   * @return grams
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when no
   *     mass fulfils the wish or another line's mass is not known
   */
  public static double toPercentOfBatch(Worksheet sheet, String id, double percent) {
    WorksheetLine line = line(sheet, id);
    notNegative(percent);
    Quantity others = Quantity.ZERO;
    for (WorksheetLine each : sheet.lines()) {
      if (each != line) {
        others = others.plus(known(each, "share of the batch"));
      }
    }
    return share(percent, others.low(), "the batch", "another line");
  }

  /**
   * The mass of a line for a baker's percentage.
   *
   * @param sheet the formula worked out
   * @param id the line
   * @param percent the wished percentage, 0 or more
   * @return grams
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when no
   *     line is marked as flour, no mass fulfils the wish, or the mass of a flour is not known
   */
  public static double toBakersPercent(Worksheet sheet, String id, double percent) {
    WorksheetLine line = line(sheet, id);
    notNegative(percent);
    if (sheet.lines().stream().noneMatch(each -> each.line().flour())) {
      throw refused(
          "No line is marked as flour, so there is no baker's percentage.",
          "Mark the flour first.");
    }
    Quantity flour = Quantity.ZERO;
    for (WorksheetLine each : sheet.lines()) {
      if (each != line && each.line().flour()) {
        flour = flour.plus(known(each, "baker's percentage"));
      }
    }
    if (line.line().flour()) {
      return share(percent, flour.low(), "the flour", "another flour");
    }
    if (flour.low() == 0) {
      throw refused("The flour weighs nothing.", "Weigh the flour first.");
    }
    return percent / 100 * flour.low();
  }

  /**
   * By which number every amount is multiplied so that a mass or a count becomes another.
   *
   * @param what what is scaled, for messages, such as {@code The batch mass}
   * @param now what it is now
   * @param wished what it shall be
   * @return the factor, above 0
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when it is
   *     not known what it is now, it is nothing, or the wish is not above 0
   */
  public static double factor(String what, Quantity now, double wished) {
    if (!(wished > 0) || Double.isInfinite(wished)) {
      throw refused(what + " cannot become " + plain(wished) + ".", "Use a number above 0.");
    }
    OptionalDouble known = now.value();
    if (known.isEmpty()) {
      throw refused(
          what + " is not known, so nothing can be scaled to it.",
          "Complete the amounts and the yield first.");
    }
    if (known.getAsDouble() <= 0) {
      throw refused(what + " is nothing yet.", "Weigh at least one line first.");
    }
    return wished / known.getAsDouble();
  }

  private static double share(double percent, double others, String whole, String other) {
    if (others == 0) {
      throw refused(
          "The line is all of " + whole + ", so its share is always 100 %.",
          "Weigh " + other + " first.");
    }
    if (percent >= 100) {
      throw refused(
          "No mass of one line makes " + plain(percent) + " % of " + whole + " beside others.",
          "Use less than 100 %.");
    }
    return percent / (100 - percent) * others;
  }

  private static WorksheetLine line(Worksheet sheet, String id) {
    return sheet
        .line(id)
        .orElseThrow(
            () -> refused("There is no line \"" + id + "\".", "Choose one of the lines."));
  }

  private static Quantity known(WorksheetLine line, String what) {
    if (!line.grams().isKnown()) {
      throw refused(
          "How much " + line.name() + " weighs is not known, so no " + what + " can be reached.",
          "Give it in grams.");
    }
    return line.grams();
  }

  private static void notNegative(double percent) {
    if (!(percent >= 0) || Double.isInfinite(percent)) {
      throw refused(plain(percent) + " % is no share.", "Use 0 % or more.");
    }
  }

  private static String plain(double number) {
    String text = Double.toString(number);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static IllegalArgumentException refused(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }
}
