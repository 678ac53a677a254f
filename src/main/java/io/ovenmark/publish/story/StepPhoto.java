package io.ovenmark.publish.story;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** The photo of a step with its mark above and its caption below; a quiet panel where none is. */
final class StepPhoto {
  /** Height of the line with the mark. */
  static final double MARK = 46;

  private static final double CAPTION = 74;
  private static final double RADIUS = 13;

  /** Which side of a comparison a photo stands on. */
  enum Side {
    BEFORE("Before", Palette.BEFORE),
    AFTER("After", Palette.AFTER),
    START("The start", Palette.AFTER);

    private final String words;
    private final Color colour;

    Side(String words, Color colour) {
      this.words = words;
      this.colour = colour;
    }
  }

  private StepPhoto() {}

  /** Draws it from its upper left corner; the photo begins {@value #MARK} below. */
  static void draw(
      PictureCanvas canvas, Story.Step step, Side side, PicturePhotos photos, double x, double y,
      int wide, int high) {
    mark(canvas, side, step, false, x, y, wide);
    int left = (int) Math.round(x);
    int upper = (int) Math.round(y + MARK);
    Optional<BufferedImage> photo = step.photo().flatMap(each -> photos.in(each, wide, high));
    if (photo.isPresent()) {
      canvas.photo(photo.get(), left, upper);
    } else {
      canvas.fill(Palette.BENCH, left, upper, wide, high);
      String why =
          step.photo().isPresent() ? "This photo cannot be read" : "No photo of this bake";
      PictureText words = PictureText.of(why, TextStyle.quiet(34), wide - 40);
      canvas.textInMiddle(words, left + 20, upper + (high - words.height()) / 2);
    }
    canvas.text(caption(step, wide), left, upper + high + 8);
  }

  /** The height of all of it. */
  static double height(Story.Step step, int wide, int high) {
    return MARK + high + 8 + caption(step, wide).height();
  }

  /** A mark with the words that belong to it: which revision, and the day if that is wanted. */
  static void mark(
      PictureCanvas canvas, Side side, Story.Step step, boolean dated, double x, double y,
      double width) {
    double middle = y + MARK / 2 - 3;
    if (side == Side.BEFORE) {
      canvas.ring(x + RADIUS, middle, RADIUS);
    } else {
      canvas.dot(x + RADIUS, middle, RADIUS);
    }
    double beside = 2 * RADIUS + 14;
    String day = dated ? " · " + step.date() : "";
    TextStyle style = TextStyle.bold(30).in(side.colour);
    PictureText text =
        PictureText.of(
            side.words + " · " + StepWords.revision(step) + day, style, width - beside);
    if (text.rows().size() > 1) {
      text =
          PictureText.fitted(
              side.words + " · " + StepWords.number(step) + day, style, 26, width - beside, MARK);
    }
    canvas.text(text, x + beside, middle - text.height() / 2);
  }

  private static PictureText caption(Story.Step step, int wide) {
    String caption =
        step.photo().flatMap(StoryPhoto::caption).map(text -> " · " + text).orElse("");
    return PictureText.fitted(step.date() + caption, TextStyle.quiet(28), 26, wide, CAPTION);
  }
}
