package io.ovenmark.publish.story;

import java.util.List;
import java.util.Optional;

/**
 * The picture of a step: before and after side by side, the figure that moved, what changed and
 * what was seen. The largest type that lets all of it stand is taken; when that would make the
 * photos small, the words stand on a second picture. Only what not even that holds ends with the
 * word that it goes on.
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
    {36, 440}, {34, 416}, {32, 384}, {30, 352}, {28, 336}
  };

  private static final double[][] SIZES_AND_PHOTOS_ALONE = {
    {36, 560}, {34, 528}, {32, 480}, {30, 400}, {28, 352}
  };

  /** What share of the width the left column may have. */
  private static final double[] SHARES = {0.5, 0.6, 0.4, 0.68, 0.32};

  private static final int LOWEST = 288;
  private static final int LEAST_WITH_SEEN = 384;
  private static final int HIGHEST = 464;
  private static final int HIGHEST_WITHOUT_FIGURE = 608;
  private static final int STEP = 16;

  private final Story story;
  private final Story.Step step;
  private final PicturePhotos photos;
  private final Optional<Story.Step> before;
  private final PictureText heading;
  private final double top;

  StepPicture(Story story, Story.Step step, PicturePhotos photos) {
    this.story = story;
    this.step = step;
    this.photos = photos;
    this.before = story.before(step);
    this.heading =
        PictureText.heading(step.heading(), TextStyle.bold(64), 44, PictureCanvas.ACROSS, 156);
    this.top = PictureCanvas.TOP + HEAD + heading.height();
  }

  /** How many pictures it takes: two when the words would make the photos small. */
  int parts() {
    return shown() && before.isPresent() && plan(before.get()).isEmpty() ? 2 : 1;
  }

  private boolean shown() {
    return step.photo().or(() -> before.flatMap(Story.Step::photo)).isPresent();
  }

  /**
   * Draws one of its pictures.
   *
   * @param part from 1
   * @param parts how many there are
   */
  void draw(PictureCanvas canvas, int part, int parts) {
    head(canvas, parts > 1 ? " · " + part + " of " + parts : "");
    if (!shown()) {
      withoutPhotos(canvas);
    } else if (before.isEmpty()) {
      start(canvas);
    } else if (parts == 1) {
      compared(canvas, before.get(), plan(before.get()).orElseThrow());
    } else if (part == 1) {
      compared(canvas, before.get(), shownFirst(before.get()));
    } else {
      wordsAlone(canvas, Optional.empty(), marks(canvas, top + GAP) + 24, !seenFirst());
    }
  }

  private void head(PictureCanvas canvas, String part) {
    PictureText place =
        PictureText.fitted(
            "Step " + step.number() + " of " + story.steps().size() + part + " · " + story.name(),
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
  }

  // ── the first step: one photo, the words beside it ──

  private void start(PictureCanvas canvas) {
    double y = top + GAP;
    int high = HIGHEST_START;
    while (y + StepPhoto.height(step, across(high), high) > PictureCanvas.BOTTOM) {
      high -= 2;
    }
    int wide = across(high);
    StepPhoto.draw(
        canvas, step, StepPhoto.Side.START, photos, PictureCanvas.LEFT, y, wide, high);
    double left = PictureCanvas.LEFT + wide + COLUMNS_APART;
    double upper = y + StepPhoto.MARK - 8;
    double room = PictureCanvas.BOTTOM - upper;
    fitted(PictureCanvas.RIGHT - left, room).draw(canvas, left, upper);
  }

  /** All words in one column, in the largest type that fits. */
  private TextColumn fitted(double width, double room) {
    TextColumn column = null;
    for (double size : SIZES) {
      column = new TextColumn(width);
      if (step.words().isPresent()) {
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

  private void compared(PictureCanvas canvas, Story.Step before, Plan plan) {
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
    plan.words.draw(canvas, under);
  }

  /** The height of the photos and of what stands beside them, and the words. */
  private record Plan(int photo, double middle, TextColumn lead, Columns words) {}

  /** What changed, and what was seen beside it. */
  private record Columns(TextColumn left, TextColumn right) {
    double height() {
      return Math.max(left.height(), right.height());
    }

    Columns within(double room) {
      return new Columns(left.within(room), right.within(room));
    }

    void draw(PictureCanvas canvas, double y) {
      left.draw(canvas, PictureCanvas.LEFT, y);
      double beside = left.isEmpty() ? 0 : left.width() + COLUMNS_APART;
      right.draw(canvas, PictureCanvas.LEFT + beside, y);
    }
  }

  /** All on one picture; empty when it would make the photos small. */
  private Optional<Plan> plan(Story.Step before) {
    boolean figure = step.move().isPresent();
    int highest = figure ? HIGHEST : HIGHEST_WITHOUT_FIGURE;
    for (double[] tried : figure ? SIZES_AND_PHOTOS : SIZES_AND_PHOTOS_ALONE) {
      TextColumn lead = lead(tried[0]);
      Columns columns = columns(tried[0]);
      double words = heightOf(lead) + columns.height();
      if (words > room(0, tried[1])) {
        continue;
      }
      for (int photo = highest; photo >= tried[1]; photo -= STEP) {
        double middle = middle(before, photo);
        if (words <= room(0, middle)) {
          return Optional.of(new Plan(photo, middle, lead, columns));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether what was seen stands on the first of two pictures. */
  boolean seenFirst() {
    return before.flatMap(this::withSeen).isPresent();
  }

  /** The first of two pictures: photos, figure, the author's words, and what was seen if it can. */
  private Plan shownFirst(Story.Step before) {
    return withSeen(before).orElseGet(() -> withoutWords(before));
  }

  private Optional<Plan> withSeen(Story.Step before) {
    for (double size : new double[] {34, 32, 30}) {
      TextColumn lead = lead(size);
      Columns columns = new Columns(changed(0), seen(size));
      for (int photo = HIGHEST; photo >= LEAST_WITH_SEEN; photo -= STEP) {
        double middle = middle(before, photo);
        if (heightOf(lead) + columns.height() <= room(0, middle)) {
          return Optional.of(new Plan(photo, middle, lead, columns));
        }
      }
    }
    return Optional.empty();
  }

  private Plan withoutWords(Story.Step before) {
    Columns none = new Columns(changed(0), seen(0));
    for (double size : new double[] {38, 34, 30}) {
      TextColumn lead = lead(size);
      for (int photo = HIGHEST; photo >= LOWEST; photo -= STEP) {
        double middle = middle(before, photo);
        if (heightOf(lead) <= room(0, middle) + GAP) {
          return new Plan(photo, middle, lead, none);
        }
      }
    }
    int photo = (HIGHEST + LOWEST) / 2;
    double middle = middle(before, photo);
    TextColumn lead = lead(30).within(room(0, middle) + GAP - 12);
    return new Plan(photo, middle, lead, none);
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
    double after = StepPhoto.height(step, wide, photo);
    return Math.max(
        figure, Math.max(StepPhoto.height(before, wide, photo), after));
  }

  private static MoveFigure figure(Move move, int photo) {
    double width = PictureCanvas.ACROSS - 2 * across(photo) - BETWEEN - BESIDE;
    return MoveFigure.fitted(move, width, photo + 40);
  }

  private static int across(int high) {
    return (int) Math.round(high * 4 / 3.0);
  }

  // ── no photo at all: the figure or nothing at the left, larger words ──

  private void withoutPhotos(PictureCanvas canvas) {
    double left = PictureCanvas.LEFT;
    String none = before.isPresent() ? "No photo of either bake." : "No photo of this bake.";
    double y =
        canvas.text(
            PictureText.of(none, TextStyle.quiet(30), PictureCanvas.ACROSS),
            left,
            marks(canvas, top + GAP) + 4);
    if (step.move().isPresent()) {
      y += 40;
      double room = PictureCanvas.BOTTOM - y;
      MoveFigure.fitted(step.move().get(), HALF, room).draw(canvas, left, y);
      fitted(HALF, room).draw(canvas, left + HALF + COLUMNS_APART, y);
    } else {
      wordsAlone(canvas, step.words(), y + 24, true);
    }
  }

  /** The marks of before and after where no photo has them. */
  private double marks(PictureCanvas canvas, double y) {
    double left = PictureCanvas.LEFT;
    if (before.isPresent()) {
      StepPhoto.mark(canvas, StepPhoto.Side.BEFORE, before.get(), true, left, y, HALF);
      StepPhoto.mark(
          canvas, StepPhoto.Side.AFTER, step, true, left + HALF + COLUMNS_APART, y, HALF);
    } else {
      StepPhoto.mark(
          canvas, StepPhoto.Side.START, step, true, left, y, PictureCanvas.ACROSS);
    }
    return y + StepPhoto.MARK;
  }

  private void wordsAlone(
      PictureCanvas canvas, Optional<String> words, double y, boolean seen) {
    double room = PictureCanvas.BOTTOM - y;
    for (double size : SIZES) {
      boolean last = size == SIZES[SIZES.length - 1];
      TextColumn whole = new TextColumn(PictureCanvas.ACROSS);
      words.ifPresent(text -> whole.paragraph(text, TextStyle.plain(size)));
      TextColumn lead = last ? whole.within(room * 0.4) : whole;
      Columns columns = seen ? columns(size) : new Columns(changed(size), seen(0));
      double under = lead.isEmpty() ? 0 : lead.height() + 36;
      if (last || under + columns.height() <= room) {
        lead.draw(canvas, PictureCanvas.LEFT, y);
        columns.within(room - under).draw(canvas, y + under);
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

  /** What changed and what was seen, in columns so wide that they are the least high. */
  private Columns columns(double size) {
    Columns best = null;
    for (double share : SHARES) {
      double wide = Math.round((PictureCanvas.ACROSS - COLUMNS_APART) * share);
      TextColumn left = new TextColumn(wide);
      changed(left, size);
      double rest =
          left.isEmpty() ? PictureCanvas.ACROSS : PictureCanvas.ACROSS - COLUMNS_APART - wide;
      TextColumn right = new TextColumn(rest);
      seen(right, size);
      Columns columns = new Columns(left, right);
      if (best == null || columns.height() < best.height() - size) {
        best = columns;
      }
    }
    return best;
  }

  /** What changed, over the whole width; nothing for a size of 0. */
  private TextColumn changed(double size) {
    TextColumn column = new TextColumn(PictureCanvas.ACROSS);
    if (size > 0) {
      changed(column, size);
    }
    return column;
  }

  /** What was seen, over the whole width; nothing for a size of 0. */
  private TextColumn seen(double size) {
    TextColumn column = new TextColumn(PictureCanvas.ACROSS);
    if (size > 0) {
      seen(column, size);
    }
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
