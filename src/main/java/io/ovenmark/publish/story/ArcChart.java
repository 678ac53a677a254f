package io.ovenmark.publish.story;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A chart of the way of a figure: what was told as dots, other revisions as small hollow points,
 * the goal as a zone. Where the figure is not known between two revisions the line is dotted.
 */
final class ArcChart {
  private static final double LABEL = 28;
  private static final double AXIS = 42;

  private final Arc arc;
  private final double width;
  private final double height;
  private final double low;
  private final double high;
  private final PictureText heading;
  private final PictureText goal;

  ArcChart(Arc arc, double width, double height) {
    this.arc = arc;
    this.width = width;
    this.height = height;
    List<Double> all = new ArrayList<>();
    arc.points().forEach(point -> point.value().ifPresent(all::add));
    arc.atLeast().ifPresent(all::add);
    arc.atMost().ifPresent(all::add);
    double least = all.stream().mapToDouble(each -> each).min().orElse(0);
    double most = all.stream().mapToDouble(each -> each).max().orElse(0);
    double room = most > least ? (most - least) * 0.08 : Math.max(Math.abs(most) * 0.1, 1);
    low = least - room;
    high = most + room;
    heading =
        PictureText.fitted(
            PictureWords.capital(arc.heading()), TextStyle.bold(34), 26, width, 46);
    goal =
        PictureText.fitted(
            arc.goal().orElse(""), TextStyle.plain(LABEL).in(Palette.GOAL_INK), 26, width, 38);
  }

  static boolean hasGoal(Arc arc) {
    return arc.atLeast().isPresent() || arc.atMost().isPresent();
  }

  private double y(double value, double top) {
    double plot = plot();
    double inside = plot - 2 * (LABEL + 18);
    return top + LABEL + 18 + inside * (1 - (value - low) / (high - low));
  }

  private double heads() {
    return heading.height() + 38 + 8;
  }

  private double plot() {
    return height - heads() - AXIS;
  }

  private double x(int at, double left) {
    int steps = arc.points().size() - 1;
    double inside = width - 2 * 28;
    return left + 28 + (steps == 0 ? inside / 2 : inside * at / steps);
  }

  void draw(PictureCanvas canvas, double left, double upper) {
    canvas.text(heading, left, upper);
    canvas.text(goal, left, upper + heading.height());
    double top = upper + heads();
    double foot = top + plot();
    zone(canvas, left, top, foot);
    canvas.fill(Palette.RULE_STRONG, left, foot - 1, width, 2);
    line(canvas, left, top);
    points(canvas, left, top);
    labels(canvas, left, top);
    revisions(canvas, left, foot + 6);
  }

  private void zone(PictureCanvas canvas, double left, double top, double foot) {
    if (!hasGoal(arc)) {
      return;
    }
    double from = arc.atMost().isPresent() ? y(arc.atMost().getAsDouble(), top) : top;
    double to = arc.atLeast().isPresent() ? y(arc.atLeast().getAsDouble(), top) : foot;
    canvas.fill(Palette.GOAL, left, from, width, Math.max(3, to - from));
  }

  private List<Integer> known() {
    List<Integer> known = new ArrayList<>();
    for (int at = 0; at < arc.points().size(); at++) {
      if (arc.points().get(at).value().isPresent()) {
        known.add(at);
      }
    }
    return known;
  }

  private double value(int at) {
    return arc.points().get(at).value().getAsDouble();
  }

  private void line(PictureCanvas canvas, double left, double top) {
    List<Integer> known = known();
    for (int i = 1; i < known.size(); i++) {
      int from = known.get(i - 1);
      int to = known.get(i);
      Line2D line =
          new Line2D.Double(x(from, left), y(value(from), top), x(to, left), y(value(to), top));
      if (to == from + 1) {
        canvas.outline(Palette.INK, 4, line);
      } else {
        canvas.dashes(Palette.RULE_STRONG, 3, line);
      }
    }
  }

  private void points(PictureCanvas canvas, double left, double top) {
    for (int at : known()) {
      if (!arc.points().get(at).told()) {
        canvas.point(x(at, left), y(value(at), top), 6);
      }
    }
    for (int at : known()) {
      if (arc.points().get(at).told()) {
        canvas.dot(x(at, left), y(value(at), top), 11);
      }
    }
  }

  /** The first and the last that are told, else that are known, on the side away from the line. */
  private void labels(PictureCanvas canvas, double left, double top) {
    List<Integer> known = known();
    List<Integer> told = known.stream().filter(at -> arc.points().get(at).told()).toList();
    List<Integer> named = told.size() > 1 ? told : known;
    int first = named.get(0);
    int last = named.get(named.size() - 1);
    Rectangle2D drawn = label(canvas, first, left, top, null);
    if (last != first) {
      label(canvas, last, left, top, drawn);
    }
  }

  /** A label above the line or below it, whichever is closer to its point and free. */
  private Rectangle2D label(
      PictureCanvas canvas, int at, double left, double top, Rectangle2D other) {
    PictureText text =
        PictureText.fitted(
            arc.points().get(at).text(), TextStyle.bold(LABEL), 26, width * 0.44, 40);
    double across = text.across();
    double from = Math.max(left, Math.min(left + width - across, x(at, left) - across / 2));
    double middle = y(value(at), top);
    double[] reach = reach(from - 8, from + across + 8, middle, left, top);
    double over = reach[0] - 14 - text.height();
    double under = reach[1] + 14;
    boolean nearer = middle - reach[0] <= reach[1] - middle;
    boolean above = over >= top && (nearer || under + text.height() > top + plot());
    Rectangle2D box = box(from, above ? over : under, text);
    if (other != null && other.intersects(box)) {
      box = box(from, above ? under : over, text);
    }
    if (other == null || !other.intersects(box)) {
      canvas.text(text, from, box.getY());
    }
    return box;
  }

  private static Rectangle2D box(double x, double y, PictureText text) {
    return new Rectangle2D.Double(x, y, text.across(), text.height());
  }

  /** How high and how low the line is between two places. */
  private double[] reach(double from, double to, double middle, double left, double top) {
    double highest = middle;
    double lowest = middle;
    List<Integer> known = known();
    for (int i = 0; i < known.size(); i++) {
      double x = x(known.get(i), left);
      double y = y(value(known.get(i)), top);
      List<Double> heights = new ArrayList<>();
      if (x >= from && x <= to) {
        heights.add(y);
      }
      if (i > 0) {
        double x0 = x(known.get(i - 1), left);
        double y0 = y(value(known.get(i - 1)), top);
        for (double edge : new double[] {from, to}) {
          if (edge > x0 && edge < x) {
            heights.add(y0 + (y - y0) * (edge - x0) / (x - x0));
          }
        }
      }
      for (double height : heights) {
        highest = Math.min(highest, height);
        lowest = Math.max(lowest, height);
      }
    }
    return new double[] {highest, lowest};
  }

  /** The numbers of the told revisions that have room; the first and the last always. */
  private void revisions(PictureCanvas canvas, double left, double y) {
    List<Integer> told = new ArrayList<>();
    for (int at = 0; at < arc.points().size(); at++) {
      if (arc.points().get(at).told() || at == 0 || at == arc.points().size() - 1) {
        told.add(at);
      }
    }
    int last = told.get(told.size() - 1);
    double taken = left - 100;
    double end = x(last, left) - number(last).across() / 2;
    for (int at : told) {
      PictureText text = number(at);
      double from = Math.max(left, x(at, left) - text.across() / 2);
      boolean room = from >= taken + 16 && (at == last || from + text.across() + 16 <= end);
      if (room) {
        canvas.text(text, from, y);
        taken = from + text.across();
      }
    }
  }

  private PictureText number(int at) {
    String words = (at == 0 ? "rev. " : "") + arc.points().get(at).revision();
    return PictureText.of(words, TextStyle.quiet(26), 200);
  }
}
