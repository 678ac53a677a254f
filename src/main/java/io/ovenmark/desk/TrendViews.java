package io.ovenmark.desk;

import java.util.List;

/** How figures went along a line of history; see {@link Views} for how they are written. */
public final class TrendViews {
  private TrendViews() {}

  /**
   * Figures along a line of history.
   *
   * @param formula short name
   * @param variant name of the variant, or null for the main line
   * @param figures what was asked for, in that order
   * @param points the revisions, oldest first
   * @param from the revision to compare from, also when it is not on the line; null when not asked
   * @param to the revision to compare to, likewise
   * @param choices all figures that can be asked for
   */
  public record Trends(
      String formula,
      String variant,
      List<TrendFigureView> figures,
      List<Point> points,
      Point from,
      Point to,
      List<Choice> choices) {}

  /**
   * A figure.
   *
   * @param key what to ask for, such as {@code net_carbohydrate_g.per_piece}
   * @param label name for people
   * @param unit unit of its values; empty for a ratio or count
   * @param measured whether it comes from bakes
   * @param limit what the goal of the newest revision demands of it, or null
   */
  public record TrendFigureView(
      String key, String label, String unit, boolean measured, Views.LimitView limit) {}

  /**
   * A figure that can be asked for.
   *
   * @param key what to ask for
   * @param label name for people
   * @param group what it belongs to, such as {@code a piece}
   */
  public record Choice(String key, String label, String group) {}

  /**
   * A revision.
   *
   * @param address its address
   * @param revision its number; null for a file edited by hand
   * @param variant name of the variant, or null
   * @param commit commit id; null for a file edited by hand
   * @param time when it was committed; null for a file edited by hand
   * @param bakes how many bakes of its content there are
   * @param values for each figure
   */
  public record Point(
      String address,
      Integer revision,
      String variant,
      String commit,
      String time,
      int bakes,
      List<Value> values) {}

  /**
   * A value.
   *
   * @param value the number, or null when it is not exactly known
   * @param atLeast what it is at least, or null; null when it is exactly known
   * @param atMost what it is at most, or null; null when it is exactly known
   * @param count how many measurements or scores it rests on; null when it is worked out
   * @param text the value in words
   */
  public record Value(Double value, Double atLeast, Double atMost, Integer count, String text) {}
}
