package io.ovenmark.publish.story;

import java.awt.image.BufferedImage;
import java.util.Optional;

/** The first picture: the cover photo to the edges of the sheet, the title, who tells and when. */
final class TitlePicture {
  private static final int PHOTO_FROM = 800;
  private static final double BESIDE_PHOTO = PHOTO_FROM - 64 - PictureCanvas.LEFT;
  private static final double ALONE = 1400;
  private static final double LONGEST_OPENING = 230;

  private TitlePicture() {}

  static void draw(PictureCanvas canvas, Story story, PicturePhotos photos) {
    Optional<BufferedImage> cover =
        story.cover()
            .flatMap(
                photo ->
                    photos.in(
                        photo, PictureCanvas.WIDTH - PHOTO_FROM, PictureCanvas.HEIGHT));
    cover.ifPresent(photo -> canvas.bleeding(photo, PHOTO_FROM, 0));
    double width = cover.isPresent() ? BESIDE_PHOTO : ALONE;
    double large = cover.isPresent() ? 96 : 132;
    PictureText title =
        PictureText.heading(story.title(), TextStyle.bold(large), 52, width, 560);
    PictureText name =
        story.name().equals(story.title())
            ? PictureText.of("", TextStyle.quiet(40), width)
            : PictureText.fitted(story.name(), TextStyle.quiet(42), 30, width, 112);
    TextColumn below = new TextColumn(width);
    story.by().ifPresent(by -> below.paragraph("Told by " + by, TextStyle.plain(38)));
    below.paragraph(story.span(), TextStyle.quiet(34));
    PictureText opening =
        PictureText.of(story.opening().orElse(""), TextStyle.plain(34), width);
    double heads = name.height() + (name.isEmpty() ? 0 : 18) + title.height();
    double tall = heads + 108 + below.height();
    boolean opened =
        !opening.isEmpty()
            && opening.height() <= LONGEST_OPENING
            && tall + 40 + opening.height() <= PictureCanvas.BOTTOM - PictureCanvas.TOP;
    double whole = tall + (opened ? 40 + opening.height() : 0);
    double y =
        PictureCanvas.TOP
            + Math.round((PictureCanvas.BOTTOM - PictureCanvas.TOP - whole) * 0.46);
    if (!name.isEmpty()) {
      y = canvas.text(name, PictureCanvas.LEFT, y) + 18;
    }
    y = canvas.text(title, PictureCanvas.LEFT, y);
    PictureSpine.whole(
        canvas, story.steps().size(), PictureCanvas.LEFT, y + 54, Math.min(width, 560), 15);
    y += 108;
    below.draw(canvas, PictureCanvas.LEFT, y);
    if (opened) {
      canvas.text(opening, PictureCanvas.LEFT, y + below.height() + 40);
    }
  }

  static String alternative(Story story) {
    StringBuilder words = new StringBuilder("Title: ").append(PictureWords.ended(story.title()));
    if (!story.name().equals(story.title())) {
      words.append(' ').append(PictureWords.ended(story.name()));
    }
    story.by().ifPresent(by -> words.append(" Told by ").append(PictureWords.ended(by)));
    words.append(' ').append(PictureWords.ended(story.span()));
    story.opening().ifPresent(text -> words.append(' ').append(PictureWords.ended(text)));
    words.append(
        story.cover()
            .map(photo -> " The photo shows: " + PictureWords.ended(photo.alternative()))
            .orElse(" No photo."));
    return words.toString();
  }
}
