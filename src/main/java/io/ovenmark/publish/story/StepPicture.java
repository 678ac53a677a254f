package io.ovenmark.publish.story;

import java.util.List;
import java.util.Optional;

/**
 * The picture of a step: before and after side by side, the figure that moved, what changed and
 * what was seen. The largest type that lets all of it stand is taken; when even the smallest does
 * not, a text ends with the word that it goes on.
 */
final class StepPicture {
  private static final double HEAD = 56;
  private static final double GAP = 28;
  private static final double BETWEEN = 32;
  private static final double BESIDE = 56;
  private static final double COLUMNS_APART = 64;
  private static final double HALF = (PictureCanvas.ACROSS - COLUMNS_APART) / 2;
  private static final double[] SIZES = {48, 44, 40, 38, 36, 34, 32, 30, 28};
  private static final int HIGHEST_START = 690;

  /** The words of a comparison, and how low its photos may be with them. */
  private static final double[][] SIZES_AND_PHOTOS = {
    {36, 440}, {34, 416}, {32, 384}, {30, 336}, {28, 288}
  };

  private static final double[][] SIZES_AND_PHOTOS_ALONE = {
    {36, 560}, {34, 528}, {32, 480}, {30, 400}, {28, 288}
  };

  private static final int HIGHEST = 464;
  private static final int HIGHEST_WITHOUT_FIGURE = 608;
  private static final int STEP = 16;

  private final Story story;
  private final Story.Step step;
  private final PicturePhotos photos;
  private final PictureText heading;
  private final double top;

  StepPicture(Story story, Story.Step step, PicturePhotos photos) {
    this.story = story;
    this.step = step;
    this.photos = photos;
    this.heading =
        PictureText.heading(step.heading(), TextStyle.bold(64), 44, PictureCanvas.ACROSS, 156);
    this.top = PictureCanvas.TOP + HEAD + heading.height();
  }

  void draw(PictureCanvas canvas) {
    PictureText place =
        PictureText.fitted(
            "Step " + step.number() + " of " + story.steps().size() + " · " + story.name(),
            TextStyle.quiet(30),
            26,
            PictureCanvas.ACROSS * 0.5,
            44);
    canvas.text(place, PictureCanvas.LEFT, PictureCanvas.TOP);
    PictureSpine.at(
        canvas,
        story.steps().size(),
        step.number(),
        PictureCanvas.RIGHT,
        PictureCanvas.TOP + 20,
        PictureCanvas.ACROSS * 0.46);
    canvas.text(heading, PictureCanvas.LEFT, PictureCanvas.TOP + HEAD);
    Optional<Story.Step> before = story.before(step);
    boolean shown = photos.has(step.photo()) || photos.has(before.flatMap(Story.Step::photo));
    if (!shown) {
      withoutPhotos(canvas, before);
    } else if (before.isPresent()) {
      compared(canvas, before.get());
    } else {
      start(canvas);
    }
  }

  // ── the first step: one photo, the words beside it ──

  private void start(PictureCanvas canvas) {
    double y = top + GAP;
    int high = HIGHEST_START;
    while (y + StepPhoto.height(step, photos, across(high), high) > PictureCanvas.BOTTOM) {
      high -= 2;
    }
    int wide = across(high);
    StepPhoto.draw(
        canvas, step, StepPhoto.Side.START, photos, PictureCanvas.LEFT, y, wide, high);
    double left = PictureCanvas.LEFT + wide + COLUMNS_APART;
    double upper = y + StepPhoto.MARK - 8;
    double room = PictureCanvas.BOTTOM - upper;
    fitted(PictureCanvas.RIGHT - left, room, true).draw(canvas, left, upper);
  }

  /** All words in one column, in the largest type that fits. */
  private TextColumn fitted(double width, double room, boolean lead) {
    TextColumn column = null;
    for (double size : SIZES) {
      column = new TextColumn(width);
      if (lead && step.words().isPresent()) {
        column.paragraph(step.words().get(), TextStyle.plain(size));
      }
      changed(column, size);
      seen(column, size);
      if (column.height() <= room) {
        return column;
      }
    }
    return column.within(room);
  }

  // ── before and after, with a photo of at least one of them ──

  private void compared(PictureCanvas canvas, Story.Step before) {
    Plan plan = plan(before);
    plan.lead.draw(canvas, PictureCanvas.LEFT, top + 12);
    double y = top + heightOf(plan.lead) + GAP;
    int wide = across(plan.photo);
    double second = PictureCanvas.LEFT + wide + BETWEEN;
    StepPhoto.draw(
        canvas,
        before,
        StepPhoto.Side.BEFORE,
        photos,
        PictureCanvas.LEFT,
        y,
        wide,
        plan.photo);
    StepPhoto.draw(
        canvas, step, StepPhoto.Side.AFTER, photos, second, y, wide, plan.photo);
    step.move()
        .map(move -> figure(move, plan.photo))
        .ifPresent(
            figure -> figure.draw(canvas, second + wide + BESIDE, y + StepPhoto.MARK - 8));
    double under = y + plan.middle + GAP;
    plan.left.draw(canvas, PictureCanvas.LEFT, under);
    double right = plan.left.isEmpty() ? 0 : HALF + COLUMNS_APART;
    plan.right.draw(canvas, PictureCanvas.LEFT + right, under);
  }

  /** The height of the photos and of what stands beside them, and the words. */
  private record Plan(
      int photo, double middle, TextColumn lead, TextColumn left, TextColumn right) {}

  private Plan plan(Story.Step before) {
    boolean figure = step.move().isPresent();
    int highest = figure ? HIGHEST : HIGHEST_WITHOUT_FIGURE;
    for (double[] tried : figure ? SIZES_AND_PHOTOS : SIZES_AND_PHOTOS_ALONE) {
      TextColumn lead = lead(tried[0]);
      TextColumn left = left(tried[0]);
      TextColumn right = right(tried[0], left.isEmpty());
      double words = heightOf(lead) + Math.max(left.height(), right.height());
      if (words > room(0, tried[1])) {
        continue;
      }
      for (int photo = highest; photo >= tried[1]; photo -= STEP) {
        double middle = middle(before, photo);
        if (words <= room(0, middle)) {
          return new Plan(photo, middle, lead, left, right);
        }
      }
    }
    return cut(before);
  }

  /** Everything at its smallest, the author's words at most in three lines. */
  private Plan cut(Story.Step before) {
    double[] least = SIZES_AND_PHOTOS[SIZES_AND_PHOTOS.length - 1];
    TextStyle style = TextStyle.plain(least[0]);
    int photo = (int) least[1];
    double middle = middle(before, photo);
    TextColumn lead = lead(least[0]).within(3 * style.leading() + 8);
    TextColumn left = left(least[0]);
    TextColumn right = right(least[0], left.isEmpty());
    double room = room(heightOf(lead), middle);
    return new Plan(photo, middle, lead, left.within(room), right.within(room));
  }

  private double room(double lead, double middle) {
    return PictureCanvas.BOTTOM - top - lead - GAP - middle - GAP;
  }

  private static double heightOf(TextColumn lead) {
    return lead.isEmpty() ? 0 : 12 + lead.height();
  }

  private double middle(Story.Step before, int photo) {
    int wide = across(photo);
    double figure =
        step.move()
            .map(move -> StepPhoto.MARK - 8 + figure(move, photo).height())
            .orElse(0.0);
    double after = StepPhoto.height(step, photos, wide, photo);
    return Math.max(
        figure, Math.max(StepPhoto.height(before, photos, wide, photo), after));
  }

  private static MoveFigure figure(Move move, int photo) {
    double width = PictureCanvas.ACROSS - 2 * across(photo) - BETWEEN - BESIDE;
    return MoveFigure.fitted(move, width, photo + 40);
  }

  private static int across(int high) {
    return (int) Math.round(high * 4 / 3.0);
  }

  // ── no photo at all: the figure or nothing at the left, larger words ──

  private void withoutPhotos(PictureCanvas canvas, Optional<Story.Step> before) {
    double y = top + GAP;
    double left = PictureCanvas.LEFT;
    if (before.isPresent()) {
      StepPhoto.mark(
          canvas, StepPhoto.Side.BEFORE, before.get(), true, left, y, HALF);
      StepPhoto.mark(
          canvas, StepPhoto.Side.AFTER, step, true, left + HALF + COLUMNS_APART, y, HALF);
    } else {
      StepPhoto.mark(
          canvas, StepPhoto.Side.START, step, true, left, y, PictureCanvas.ACROSS);
    }
    y = canvas.text(
        PictureText.of(without(before), TextStyle.quiet(30), PictureCanvas.ACROSS),
        left,
        y + StepPhoto.MARK + 4);
    if (step.move().isPresent()) {
      y += 40;
      MoveFigure figure =
          MoveFigure.fitted(step.move().get(), HALF, PictureCanvas.BOTTOM - y);
      figure.draw(canvas, left, y);
      double room = PictureCanvas.BOTTOM - y;
      fitted(HALF, room, true).draw(canvas, left + HALF + COLUMNS_APART, y);
    } else {
      wordsAlone(canvas, y + 24);
    }
  }

  private String without(Optional<Story.Step> before) {
    if (step.photo().or(() -> before.flatMap(Story.Step::photo)).isPresent()) {
      return "No photo that can be read.";
    }
    return before.isPresent() ? "No photo of either bake." : "No photo of this bake.";
  }

  private void wordsAlone(PictureCanvas canvas, double y) {
    double room = PictureCanvas.BOTTOM - y;
    for (double size : SIZES) {
      TextColumn lead = lead(size);
      TextColumn left = left(size);
      TextColumn right = right(size, left.isEmpty());
      double words = Math.max(left.height(), right.height());
      boolean last = size == SIZES[SIZES.length - 1];
      if (last) {
        lead = lead.within(room * 0.4);
      }
      double under = lead.isEmpty() ? 0 : lead.height() + 36;
      if (last || under + words <= room) {
        lead.draw(canvas, PictureCanvas.LEFT, y);
        left.within(room - under).draw(canvas, PictureCanvas.LEFT, y + under);
        double beside = left.isEmpty() ? 0 : HALF + COLUMNS_APART;
        right.within(room - under).draw(canvas, PictureCanvas.LEFT + beside, y + under);
        return;
      }
    }
  }

  // ── the words ──

  private TextColumn lead(double size) {
    TextColumn column = new TextColumn(PictureCanvas.ACROSS);
    step.words().ifPresent(words -> column.paragraph(words, TextStyle.plain(size)));
    return column;
  }

  private TextColumn left(double size) {
    TextColumn column = new TextColumn(HALF);
    changed(column, size);
    return column;
  }

  private TextColumn right(double size, boolean alone) {
    TextColumn column = new TextColumn(alone ? PictureCanvas.ACROSS : HALF);
    seen(column, size);
    return column;
  }

  private void changed(TextColumn column, double size) {
    section(column, "What changed", step.changed(), size);
    step.credit().ifPresent(text -> column.barred(text, TextStyle.plain(size), Palette.WARN));
  }

  private void seen(TextColumn column, double size) {
    section(column, "What was seen", step.seen(), size);
    if (step.move().isEmpty() && step.number() > 1) {
      column.paragraph("No figure is known both before and after.", TextStyle.quiet(size));
    }
  }

  private static void section(
      TextColumn column, String heading, List<String> sentences, double size) {
    if (!sentences.isEmpty()) {
      column.heading(heading, TextStyle.bold(size));
      column.paragraphs(sentences, TextStyle.plain(size));
    }
  }
}
