package io.ovenmark.publish.story;

/**
 * The steps of a story as points on a line: which one is told, and which one it is compared with.
 */
final class PictureSpine {
  private PictureSpine() {}

  /** The line of the whole story: a ring where it begins, a dot where it ends. */
  static void whole(
      PictureCanvas canvas, int steps, double x, double y, double width, double radius) {
    canvas.line(Palette.RULE_STRONG, 4, x + radius, y, x + width - radius, y);
    for (int at = 1; at < steps - 1; at++) {
      canvas.point(x + radius + (width - 2 * radius) * at / (steps - 1), y, radius * 0.5);
    }
    if (steps > 1) {
      canvas.ring(x + radius, y, radius);
    }
    canvas.dot(x + width - radius, y, radius);
  }

  /**
   * The same while a step is told, ending at the right.
   *
   * @param steps how many there are
   * @param number of the step, from 1
   */
  static void at(
      PictureCanvas canvas, int steps, int number, double right, double y, double widest) {
    if (steps < 2) {
      return;
    }
    double radius = 14;
    double apart = Math.min(56, (widest - 2 * radius) / (steps - 1));
    double small = Math.min(7, apart * 0.3);
    double first = right - radius - apart * (steps - 1);
    canvas.line(Palette.RULE_STRONG, 3, first, y, right - radius, y);
    for (int step = 1; step <= steps; step++) {
      if (step != number && step != number - 1) {
        canvas.point(first + apart * (step - 1), y, small);
      }
    }
    double marks = Math.min(radius, apart * 0.48);
    if (number > 1) {
      canvas.ring(first + apart * (number - 2), y, marks);
    }
    canvas.dot(first + apart * (number - 1), y, marks);
  }
}
