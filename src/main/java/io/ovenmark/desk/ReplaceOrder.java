package io.ovenmark.desk;

/**
 * A question about replacing as it is typed or sent. Every part but the line may be null.
 *
 * @param line id of the line to replace
 * @param keep {@code protein}, {@code dry}, {@code fat}, {@code water} or {@code mass}; null for
 *     what is usual for its food
 * @param goal short name of the goal that it is held to; null for the formula's own, {@code none}
 *     for no goal
 * @param with short name of a food to ask about alone, or null for all
 * @param readable what the scale can show, such as {@code 1 g} or {@code exact}; null for 0.1 g
 */
public record ReplaceOrder(
    String line, String keep, String goal, String with, String readable) {
  /**
   * A question with everything as usual.
   *
   * @param line id of the line to replace
   * @return the question
   */
  public static ReplaceOrder of(String line) {
    return new ReplaceOrder(line, null, null, null, null);
  }

  /**
   * The same question about one food alone.
   *
   * @param food its short name
   * @return a new question
   */
  public ReplaceOrder asking(String food) {
    return new ReplaceOrder(line, keep, goal, food, readable);
  }
}
