package io.ovenmark.publish.story;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The ways of the key figures: up to six charts of one size on a picture. */
final class ArcPicture {
  private static final int MOST = 6;
  private static final double APART = 64;
  private static final double LEGEND = 44;

  /** The room of the closing words: two lines. */
  private static final double CLOSING = 92;

  private final List<Arc> arcs;
  private final List<Arc> unknown;
  private final String closing;
  private final int page;
  private final int pages;

  private ArcPicture(
      List<Arc> arcs, List<Arc> unknown, String closing, int page, int pages) {
    this.arcs = arcs;
    this.closing = closing;
    this.unknown = unknown;
    this.page = page;
    this.pages = pages;
  }

  /** The pictures that it takes; none when no way can be drawn. */
  static List<ArcPicture> of(Story story) {
    List<Arc> drawn = story.arcs().stream().filter(Arc::isDrawable).toList();
    List<Arc> unknown = story.arcs().stream().filter(arc -> !arc.isDrawable()).toList();
    int pages = (drawn.size() + MOST - 1) / MOST;
    List<ArcPicture> pictures = new ArrayList<>();
    for (int page = 0; page < pages; page++) {
      int to = Math.min(drawn.size(), (page + 1) * MOST);
      pictures.add(
          new ArcPicture(
              drawn.subList(page * MOST, to),
              page == pages - 1 ? unknown : List.of(),
              page == pages - 1 ? story.closing().orElse("") : "",
              page,
              pages));
    }
    return List.copyOf(pictures);
  }

  void draw(PictureCanvas canvas) {
    PictureText heading =
        PictureText.fitted(heading(), TextStyle.bold(64), 56, PictureCanvas.ACROSS, 90);
    double y = canvas.text(heading, PictureCanvas.LEFT, PictureCanvas.TOP);
    if (!closing.isEmpty()) {
      TextColumn words = new TextColumn(PictureCanvas.ACROSS);
      words.paragraph(closing, TextStyle.plain(34));
      TextColumn begun = words.within(CLOSING);
      begun.draw(canvas, PictureCanvas.LEFT, y + 10);
      y += 10 + begun.height();
    }
    y += 24;
    PictureText note =
        PictureText.fitted(note(), TextStyle.quiet(28), 26, PictureCanvas.ACROSS, 76);
    double bottom = PictureCanvas.BOTTOM - LEGEND;
    legend(canvas, bottom + 6);
    if (!note.isEmpty()) {
      bottom -= note.height() + 4;
      canvas.text(note, PictureCanvas.LEFT, bottom);
    }
    int across = arcs.size() == 1 ? 1 : arcs.size() <= 4 ? 2 : 3;
    int down = (arcs.size() + across - 1) / across;
    double width = (PictureCanvas.ACROSS - APART * (across - 1)) / across;
    double height = (bottom - 22 - y - 36 * (down - 1)) / down;
    for (int at = 0; at < arcs.size(); at++) {
      new ArcChart(arcs.get(at), width, height)
          .draw(
              canvas,
              PictureCanvas.LEFT + (at % across) * (width + APART),
              y + (at / across) * (height + 36));
    }
  }

  private String heading() {
    return "How the figures went" + (pages > 1 ? ", " + (page + 1) + " of " + pages : "");
  }

  private String note() {
    return unknown.isEmpty()
        ? ""
        : "Known at fewer than two revisions: "
            + unknown.stream().map(Arc::label).collect(Collectors.joining(", "))
            + ".";
  }

  private void legend(PictureCanvas canvas, double y) {
    double middle = y + 18;
    double x = PictureCanvas.LEFT;
    canvas.dot(x + 11, middle, 11);
    x = legendWords(canvas, "told here", x + 34, y);
    if (points().anyMatch(point -> !point.told() && point.value().isPresent())) {
      canvas.point(x + 8, middle, 7);
      x = legendWords(canvas, "other revisions", x + 28, y);
    }
    if (points().anyMatch(point -> point.value().isEmpty())) {
      canvas.dashes(Palette.RULE_STRONG, 3, new Line2D.Double(x, middle, x + 48, middle));
      x = legendWords(canvas, "not known between", x + 62, y);
    }
    if (arcs.stream().anyMatch(ArcChart::hasGoal)) {
      canvas.fill(Palette.GOAL, x, middle - 13, 40, 26);
      legendWords(canvas, "within the goal", x + 54, y);
    }
  }

  private Stream<Arc.Point> points() {
    return arcs.stream().flatMap(arc -> arc.points().stream());
  }

  private static double legendWords(PictureCanvas canvas, String words, double x, double y) {
    PictureText text = PictureText.of(words, TextStyle.quiet(28), 600);
    canvas.text(text, x, y);
    return x + text.across() + 48;
  }

  String alternative() {
    StringBuilder words = new StringBuilder(heading()).append('.');
    for (Arc arc : arcs) {
      words.append(' ').append(PictureWords.capital(arc.inWords()));
    }
    if (!closing.isEmpty()) {
      words.append(' ').append(PictureWords.ended(closing));
    }
    if (!note().isEmpty()) {
      words.append(' ').append(note());
    }
    return words.toString();
  }
}
