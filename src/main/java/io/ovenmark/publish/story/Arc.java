package io.ovenmark.publish.story;

import io.ovenmark.measure.FigureText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The way of a figure from the first step to the last, through the revisions between as well.
 *
 * @param key its key, such as {@code mean_liking}
 * @param label its name
 * @param unit its unit; empty for none
 * @param atLeast what the goal demands at least; empty for nothing
 * @param atMost what it demands at most; empty for nothing
 * @param points a point for each revision, in their order
 */
public record Arc(
    String key,
    String label,
    String unit,
    OptionalDouble atLeast,
    OptionalDouble atMost,
    List<Point> points) {
  /** Copies the list. */
  public Arc {
    points = List.copyOf(points);
  }

  /**
   * A revision.
   *
   * @param revision its number
   * @param told whether the story tells of it
   * @param value the figure; empty when it is not exactly known
   * @param text the figure in words, such as {@code at least 3.1 g} or {@code not baked}
   */
  public record Point(int revision, boolean told, OptionalDouble value, String text) {}

  /**
   * Whether there is a way to draw.
   *
   * @return true when the figure is known at two revisions or more
   */
  public boolean isDrawable() {
    return points.stream().filter(point -> point.value().isPresent()).count() > 1;
  }

  /**
   * With its unit.
   *
   * @return such as {@code best height, mm}
   */
  public String heading() {
    return unit.isEmpty() ? label : label + ", " + unit;
  }

  /**
   * What the goal demands of it.
   *
   * @return such as {@code goal at most 4}; empty when it demands nothing
   */
  public Optional<String> goal() {
    if (atLeast.isPresent() && atMost.isPresent()) {
      return Optional.of(
          "goal " + FigureText.number(atLeast.getAsDouble()) + " to "
              + FigureText.number(atMost.getAsDouble()));
    }
    if (atLeast.isPresent()) {
      return Optional.of("goal at least " + FigureText.number(atLeast.getAsDouble()));
    }
    return atMost.isPresent()
        ? Optional.of("goal at most " + FigureText.number(atMost.getAsDouble()))
        : Optional.empty();
  }

  /**
   * In a sentence, for whoever does not see it.
   *
   * @return such as {@code best height: revision 1 31 mm, revision 5 38 mm; goal at least 40.}
   */
  public String inWords() {
    StringBuilder words = new StringBuilder(label).append(':');
    String comma = " ";
    for (Point point : points) {
      if (point.told()) {
        words.append(comma).append("revision ").append(point.revision()).append(' ')
            .append(point.text());
        comma = ", ";
      }
    }
    goal().ifPresent(goal -> words.append("; ").append(goal));
    return words.append('.').toString();
  }
}
