package io.ovenmark.publish.story;

import io.ovenmark.publish.card.Card;

/** The head of the last picture: which revision, the name, and what it yields. */
final class CardHead {
  private final PictureText place;
  private final PictureText name;
  private final PictureText yield;
  private final int steps;

  /**
   * Sets its words.
   *
   * @param story the story
   * @param part which of several pictures it is, such as {@code 1 of 2}; empty for the only one
   * @param small whether it is the head of a further picture
   */
  CardHead(Story story, String part, boolean small) {
    Card card = story.card();
    steps = story.steps().size();
    place =
        PictureText.fitted(
            revision(card) + (part.isEmpty() ? "" : " · " + part),
            TextStyle.quiet(30),
            26,
            PictureCanvas.ACROSS * 0.66,
            44);
    name =
        PictureText.heading(
            card.name(),
            TextStyle.bold(small ? 56 : 72),
            44,
            PictureCanvas.ACROSS,
            small ? 108 : 172);
    yield =
        PictureText.fitted(
            small ? "" : card.yield(), TextStyle.plain(36), 28, PictureCanvas.ACROSS, 96);
  }

  static String revision(Card card) {
    return "Revision "
        + card.address()
        + card.date().map(date -> " of " + date).orElse(", not yet dated");
  }

  /** Where it ends. */
  double height() {
    return PictureCanvas.TOP + 54 + name.height() + 8 + yield.height() + 36;
  }

  void draw(PictureCanvas canvas) {
    canvas.text(place, PictureCanvas.LEFT, PictureCanvas.TOP);
    PictureSpine.at(
        canvas,
        steps,
        steps,
        PictureCanvas.RIGHT,
        PictureCanvas.TOP + 20,
        PictureCanvas.ACROSS * 0.3);
    double y = canvas.text(name, PictureCanvas.LEFT, PictureCanvas.TOP + 54);
    canvas.text(yield, PictureCanvas.LEFT, y + 8);
  }
}
