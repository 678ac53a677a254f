package io.ovenmark.publish.story;

import static j2html.TagCreator.tag;

import io.ovenmark.measure.FigureText;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Drawings of a story as SVG: before is hollow, after is filled, a goal is a shaded zone. They say
 * in their titles what they show.
 */
final class StoryCharts {
  private static final int WIDTH = 460;
  private static final int LEFT = 10;
  private static final int BAR_SPACE = 300;
  private static final int ARC_HEIGHT = 176;
  private static final int TOP = 14;
  private static final int BOTTOM = 36;
  private static final int SIDE = 62;

  private StoryCharts() {}

  /** Two bars from zero: hollow before, filled after. */
  static DomContent move(Move move) {
    double most = Math.max(Math.abs(move.from()), Math.abs(move.to()));
    ContainerTag<?> drawing = drawing(WIDTH, 92, move.inOneLine());
    bar(drawing, 6, move.from(), most, "before", move.fromText());
    bar(drawing, 50, move.to(), most, "after", move.toText());
    return drawing;
  }

  private static void bar(
      ContainerTag<?> drawing, int y, double value, double most, String side, String text) {
    double width = most == 0 ? 0 : Math.max(2, Math.abs(value) / most * BAR_SPACE);
    drawing.with(
        shape("rect")
            .attr("class", side)
            .attr("x", number(LEFT))
            .attr("y", number(y))
            .attr("width", number(width))
            .attr("height", "32"));
    drawing.with(text(LEFT + width + 10, y + 22, "start", "value", text));
  }

  /** The way of a figure through the revisions. */
  static DomContent arc(Arc arc) {
    ContainerTag<?> drawing = drawing(WIDTH, ARC_HEIGHT, arc.inWords());
    List<Arc.Point> points = arc.points();
    double low = bounds(arc).min().orElse(0);
    double high = bounds(arc).max().orElse(1);
    double room = high > low ? (high - low) * 0.12 : Math.max(1e-9, Math.abs(high) * 0.1);
    Scale scale = new Scale(points.size(), low - room, high + room);
    goal(drawing, arc, scale);
    lines(drawing, points, scale);
    dots(drawing, points, scale);
    labels(drawing, points, scale);
    return drawing;
  }

  private static DoubleStream bounds(Arc arc) {
    return DoubleStream.concat(
        arc.points().stream().flatMapToDouble(point -> point.value().stream()),
        DoubleStream.concat(arc.atLeast().stream(), arc.atMost().stream()));
  }

  private record Scale(int count, double low, double high) {
    double x(int index) {
      return count == 1
          ? WIDTH / 2.0
          : SIDE + (double) index / (count - 1) * (WIDTH - 2 * SIDE);
    }

    double y(double value) {
      double clamped = Math.max(low, Math.min(high, value));
      return TOP + (high - clamped) / (high - low) * (ARC_HEIGHT - TOP - BOTTOM);
    }
  }

  private static void goal(ContainerTag<?> drawing, Arc arc, Scale scale) {
    if (arc.atLeast().isEmpty() && arc.atMost().isEmpty()) {
      return;
    }
    double top = scale.y(arc.atMost().orElse(scale.high()));
    double bottom = scale.y(arc.atLeast().orElse(scale.low()));
    drawing.with(
        shape("rect")
            .attr("class", "goal")
            .attr("x", number(SIDE - 8))
            .attr("y", number(top))
            .attr("width", number(WIDTH - 2 * SIDE + 16))
            .attr("height", number(bottom - top)));
  }

  /** Neighbours that are both known are joined; over a gap the line is dashed. */
  private static void lines(ContainerTag<?> drawing, List<Arc.Point> points, Scale scale) {
    StringBuilder solid = new StringBuilder();
    StringBuilder dashed = new StringBuilder();
    int last = -1;
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).value().isEmpty()) {
        continue;
      }
      if (last >= 0) {
        (last == i - 1 ? solid : dashed)
            .append('M').append(place(points, scale, last))
            .append('L').append(place(points, scale, i));
      }
      last = i;
    }
    if (solid.length() > 0) {
      drawing.with(shape("path").attr("class", "way").attr("d", solid.toString()));
    }
    if (dashed.length() > 0) {
      drawing.with(shape("path").attr("class", "way gap").attr("d", dashed.toString()));
    }
  }

  private static String place(List<Arc.Point> points, Scale scale, int at) {
    return number(scale.x(at)) + " " + number(scale.y(points.get(at).value().getAsDouble()));
  }

  private static void dots(ContainerTag<?> drawing, List<Arc.Point> points, Scale scale) {
    for (int i = 0; i < points.size(); i++) {
      Arc.Point point = points.get(i);
      if (point.value().isPresent()) {
        drawing.with(
            shape("circle")
                .attr("class", point.told() ? "told" : "between")
                .attr("cx", number(scale.x(i)))
                .attr("cy", number(scale.y(point.value().getAsDouble())))
                .attr("r", point.told() ? "5.5" : "3.5"));
      }
    }
  }

  /** The first and the last told value in words, and the numbers of the told revisions. */
  private static void labels(ContainerTag<?> drawing, List<Arc.Point> points, Scale scale) {
    List<Integer> known = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Arc.Point point = points.get(i);
      if (point.told() && scale.x(i) >= free) {
        drawing.with(
            text(
                scale.x(i), ARC_HEIGHT - 8, "middle", "number", String.valueOf(point.revision())));
        free = scale.x(i) + 24;
      }
      if (point.value().isPresent()) {
        known.add(i);
      }
    }
    if (known.isEmpty()) {
      return;
    }
    value(drawing, points, scale, known.get(0), "end");
    if (known.size() > 1) {
      value(drawing, points, scale, known.get(known.size() - 1), "start");
    }
  }

  private static void value(
      ContainerTag<?> drawing, List<Arc.Point> points, Scale scale, int at, String anchor) {
    double value = points.get(at).value().getAsDouble();
    double x = scale.x(at) + (anchor.equals("end") ? -12 : 12);
    drawing.with(text(x, scale.y(value) + 5, anchor, "value", FigureText.number(value)));
  }

  private static ContainerTag<?> drawing(int width, int height, String title) {
    ContainerTag<?> drawing = shape("svg");
    drawing.attr("viewBox", "0 0 " + width + " " + height).attr("role", "img");
    drawing.attr("aria-label", title);
    drawing.with(shape("title").withText(title));
    return drawing;
  }

  private static ContainerTag<?> shape(String name) {
    return tag(name);
  }

  private static ContainerTag<?> text(
      double x, double y, String anchor, String kind, String words) {
    ContainerTag<?> text = shape("text");
    text.attr("x", number(x)).attr("y", number(y)).attr("text-anchor", anchor);
    return text.attr("class", kind).withText(words);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
