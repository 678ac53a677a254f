package io.ovenmark.publish.story;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;

/**
 * The picture of a step: before and after side by side, the figure that moved, what changed and
 * what was seen. The largest type that lets all of it stand is taken; when even the smallest does
 * not, a text ends with the word that it goes on.
 */
final class StepPicture {
  private static final double[] SIZES = {38, 36, 34, 32, 30, 28};
  private static final double HEAD = 44;
  private static final double BETWEEN = 32;
  private static final double COLUMNS_APART = 64;
  private static final double MARK = 40;
  private static final int TALLEST = 460;
  private static final int LEAST = 288;
  private static final int STEP = 24;

  private final Story story;
  private final Story.Step step;
  private final Optional<Story.Step> before;
  private final PicturePhotos photos;
  private final PictureText heading;
  private final double top;

  /** How a picture is laid out: the size of its words, the height of its photos, and the words. */
  private record Plan(
      double size, int photo, PictureText lead, double captions, TextColumn left,
      TextColumn right, double middle, boolean fits) {}

  StepPicture(Story story, Story.Step step, PicturePhotos photos) {
    this.story = story;
    this.step = step;
    this.before = story.before(step);
    this.photos = photos;
    this.heading =
        PictureText.fitted(
            step.heading(), TextStyle.bold(64), 44, PictureCanvas.ACROSS, 156);
    this.top = PictureCanvas.TOP + HEAD + 12 + heading.height();
  }

  void draw(PictureCanvas canvas) {
    PictureText place =
        PictureText.fitted(
            "Step " + step.number() + " of " + story.steps().size() + " · " + story.name(),
            TextStyle.quiet(30),
            26,
            PictureCanvas.ACROSS * 0.5,
            HEAD);
    canvas.text(place, PictureCanvas.LEFT, PictureCanvas.TOP);
    PictureSpine.at(
        canvas,
        story.steps().size(),
        step.number(),
        PictureCanvas.RIGHT,
        PictureCanvas.TOP + 20,
        PictureCanvas.ACROSS * 0.46);
    canvas.text(heading, PictureCanvas.LEFT, PictureCanvas.TOP + HEAD + 12);
    if (before.isEmpty()) {
      first(canvas);
    } else {
      compared(canvas, before.get());
    }
  }

  // ── the first step: one photo, the words beside it ──

  private void first(PictureCanvas canvas) {
    double room = PictureCanvas.BOTTOM - top - 28;
    boolean shown = photos.has(step.photo());
    PictureText caption = caption(step, 900);
    int high = (int) (shown ? Math.min(690, room - MARK - caption.height() - 14) : 300);
    int wide = shown ? (int) Math.round(high * 4 / 3.0) : 520;
    double y = top + 28;
    photo(canvas, step, true, PictureCanvas.LEFT, y, wide, high);
    double left = PictureCanvas.LEFT + wide + COLUMNS_APART;
    double width = PictureCanvas.RIGHT - left;
    TextColumn column = beside(SIZES[SIZES.length - 1], width);
    for (double size : SIZES) {
      TextColumn tried = beside(size, width);
      if (tried.height() <= room - MARK) {
        column = tried;
        break;
      }
    }
    column.within(room - MARK).draw(canvas, left, y + MARK);
  }

  private TextColumn beside(double size, double width) {
    TextColumn column = new TextColumn(width);
    step.words().ifPresent(words -> column.paragraph(words, TextStyle.plain(size + 2)));
    section(column, "What changed", step.changed(), size);
    step.credit().ifPresent(text -> column.barred(text, TextStyle.plain(size), Palette.WARN));
    section(column, "What was seen", step.seen(), size);
    return column;
  }

  // ── every other step: before and after ──

  private void compared(PictureCanvas canvas, Story.Step earlier) {
    boolean shown = photos.has(step.photo()) || photos.has(earlier.photo());
    Plan plan = shown ? withPhotos(earlier) : withoutPhotos();
    double y = top;
    if (!plan.lead.isEmpty()) {
      y = canvas.text(plan.lead, PictureCanvas.LEFT, y + 14);
    }
    y += 26;
    if (shown) {
      int wide = across(plan.photo);
      double second = PictureCanvas.LEFT + wide + BETWEEN;
      photo(canvas, earlier, false, PictureCanvas.LEFT, y, wide, plan.photo);
      photo(canvas, step, true, second, y, wide, plan.photo);
      double left = second + wide + 56;
      figure(canvas, left, y + MARK, PictureCanvas.RIGHT - left);
    } else {
      double half = (PictureCanvas.ACROSS - COLUMNS_APART) / 2;
      mark(canvas, earlier, false, PictureCanvas.LEFT, y, half);
      mark(canvas, step, true, PictureCanvas.LEFT + half + COLUMNS_APART, y, half);
      PictureText none =
          PictureText.of("No photo of either bake.", TextStyle.quiet(30), PictureCanvas.ACROSS);
      double under = canvas.text(none, PictureCanvas.LEFT, y + MARK + 8);
      figure(canvas, PictureCanvas.LEFT, under + 28, PictureCanvas.ACROSS * 0.72);
    }
    y += plan.middle + 30;
    plan.left.draw(canvas, PictureCanvas.LEFT, y);
    plan.right.draw(canvas, secondColumn(plan), y);
  }

  private static double secondColumn(Plan plan) {
    return plan.left.isEmpty()
        ? PictureCanvas.LEFT
        : PictureCanvas.LEFT + plan.left.width() + COLUMNS_APART;
  }

  private Plan withPhotos(Story.Step earlier) {
    Plan last = null;
    for (double size : SIZES) {
      int least = size > 34 ? 384 : size > 30 ? 336 : LEAST;
      for (int photo = TALLEST; photo >= least; photo -= STEP) {
        double captions =
            Math.max(
                caption(earlier, across(photo)).height(), caption(step, across(photo)).height());
        double beside = besides(photo);
        double figure =
            step.move().map(move -> new MoveFigure(move, beside).height()).orElse(0.0);
        double middle =
            MARK + Math.max(photo + (captions > 0 ? 10 + captions : 0), figure);
        last = plan(size, photo, captions, middle);
        if (last.fits) {
          return last;
        }
      }
    }
    return cut(last);
  }

  private Plan withoutPhotos() {
    double figure =
        step.move()
            .map(move -> new MoveFigure(move, PictureCanvas.ACROSS * 0.72).height())
            .orElse(44.0);
    Plan last = null;
    for (double size : SIZES) {
      last = plan(size, 0, 0, MARK + 8 + 40 + 28 + figure);
      if (last.fits) {
        return last;
      }
    }
    return cut(last);
  }

  private Plan plan(double size, int photo, double captions, double middle) {
    PictureText lead =
        PictureText.of(
            step.words().orElse(""), TextStyle.plain(size), PictureCanvas.ACROSS - 120);
    double width = (PictureCanvas.ACROSS - COLUMNS_APART) / 2;
    boolean one = step.changed().isEmpty() && step.credit().isEmpty();
    TextColumn left = new TextColumn(width);
    section(left, "What changed", step.changed(), size);
    step.credit().ifPresent(text -> left.barred(text, TextStyle.plain(size), Palette.WARN));
    TextColumn right = new TextColumn(one ? PictureCanvas.ACROSS : width);
    section(right, "What was seen", step.seen(), size);
    double room = room(lead, middle);
    boolean fits = left.height() <= room && right.height() <= room;
    return new Plan(size, photo, lead, captions, left, right, middle, fits);
  }

  private double room(PictureText lead, double middle) {
    return PictureCanvas.BOTTOM
        - top
        - (lead.isEmpty() ? 0 : 14 + lead.height())
        - 26
        - middle
        - 30;
  }

  /** The words that fit: at most three lines of the author's, then what is left for the others. */
  private Plan cut(Plan full) {
    PictureText lead =
        full.lead.rows().size() <= 3
            ? full.lead
            : PictureText.fitted(
                step.words().orElse(""),
                TextStyle.plain(full.size),
                full.size,
                full.lead.width(),
                3 * full.lead.style().leading());
    double room = room(lead, full.middle);
    return new Plan(
        full.size,
        full.photo,
        lead,
        full.captions,
        full.left.within(room),
        full.right.within(room),
        full.middle,
        true);
  }

  private static void section(
      TextColumn column, String heading, List<String> sentences, double size) {
    if (!sentences.isEmpty()) {
      column.heading(heading, TextStyle.bold(size));
      column.paragraphs(sentences, TextStyle.plain(size));
    }
  }

  private static int across(int high) {
    return (int) Math.round(high * 4 / 3.0);
  }

  private static double besides(int photo) {
    return PictureCanvas.ACROSS - 2 * across(photo) - BETWEEN - 56;
  }

  private void figure(PictureCanvas canvas, double x, double y, double width) {
    if (step.move().isPresent()) {
      new MoveFigure(step.move().get(), width).draw(canvas, x, y);
    } else {
      canvas.text(
          PictureText.of("No figure is known both before and after.", TextStyle.quiet(32), width),
          x,
          y);
    }
  }

  // ── a photo with its mark above and its caption below ──

  private void photo(
      PictureCanvas canvas,
      Story.Step of,
      boolean after,
      double x,
      double y,
      int wide,
      int high) {
    mark(canvas, of, after, x, y, wide);
    int left = (int) x;
    int upper = (int) (y + MARK + 6);
    Optional<BufferedImage> photo =
        of.photo().flatMap(each -> photos.in(each, wide, high - 6));
    if (photo.isPresent()) {
      canvas.photo(photo.get(), left, upper);
      canvas.text(caption(of, wide), x, upper + high - 6 + 10);
    } else {
      canvas.fill(Palette.BENCH, left, upper, wide, high - 6);
      PictureText words =
          PictureText.of("No photo of this bake", TextStyle.quiet(34), wide - 40);
      canvas.textInMiddle(
          words, left + 20, upper + (high - 6 - words.height()) / 2);
    }
  }

  private static PictureText caption(Story.Step of, double width) {
    return PictureText.fitted(
        of.photo().flatMap(StoryPhoto::caption).orElse(""),
        TextStyle.quiet(28),
        26,
        width,
        75);
  }

  private void mark(
      PictureCanvas canvas, Story.Step of, boolean after, double x, double y, double width) {
    double middle = y + MARK / 2 - 2;
    if (after) {
      canvas.dot(x + 13, middle, 13);
    } else {
      canvas.ring(x + 13, middle, 13);
    }
    Color colour = after ? Palette.AFTER : Palette.BEFORE;
    String words = of.address() + " · " + of.date();
    PictureText text =
        PictureText.fitted(
            words, TextStyle.bold(30).in(colour), 22, width - 40, MARK);
    canvas.text(text, x + 40, middle - text.height() / 2);
  }

  // ── in words ──

  static String alternative(Story story, Story.Step step) {
    StringBuilder words = new StringBuilder();
    words
        .append("Step ")
        .append(step.number())
        .append(" of ")
        .append(story.steps().size())
        .append(": ")
        .append(PictureWords.ended(step.heading()));
    step.words().ifPresent(text -> words.append(' ').append(PictureWords.ended(text)));
    story.before(step).ifPresent(earlier -> words.append(shown("Before", earlier)));
    words.append(shown(step.number() == 1 ? "At the start" : "After", step));
    step.move()
        .ifPresent(
            move ->
                words.append(' ').append(PictureWords.ended(PictureWords.capital(move.inOneLine()))));
    said(words, "What changed", step.changed());
    step.credit().ifPresent(text -> words.append(' ').append(PictureWords.ended(text)));
    said(words, "What was seen", step.seen());
    return words.toString();
  }

  private static String shown(String when, Story.Step step) {
    return " "
        + when
        + ", "
        + step.address()
        + " of "
        + step.date()
        + ": "
        + step.photo()
            .map(photo -> PictureWords.ended(photo.alternative()))
            .orElse("no photo of this bake.");
  }

  private static void said(StringBuilder words, String what, List<String> sentences) {
    if (!sentences.isEmpty()) {
      words.append(' ').append(what).append(':');
      sentences.forEach(sentence -> words.append(' ').append(PictureWords.ended(sentence)));
    }
  }
}
