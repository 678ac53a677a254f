package io.ovenmark.publish.story;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the picture of a step says, for whoever does not see it; and the words of its marks. */
final class StepWords {
  private static final Pattern ADDRESS = Pattern.compile("[^/@]+(?:/([^@]+))?@(\\d+)");

  private StepWords() {}

  /**
   * The revision of a step.
   *
   * @return such as {@code revision 5} or {@code egg-free, revision 10}
   */
  static String revision(Story.Step step) {
    Matcher address = ADDRESS.matcher(step.address());
    boolean variant = address.matches() && address.group(1) != null;
    return (variant ? address.group(1) + ", " : "") + number(step);
  }

  /**
   * The revision of a step without its variant.
   *
   * @return such as {@code revision 10}
   */
  static String number(Story.Step step) {
    Matcher address = ADDRESS.matcher(step.address());
    return address.matches() ? "revision " + address.group(2) : step.address();
  }

  /**
   * All that a picture shows.
   *
   * @param part which of its pictures, from 1
   * @param parts how many there are
   * @param seenFirst whether the first of two says what was seen
   */
  static String alternative(
      Story story, Story.Step step, int part, int parts, boolean seenFirst) {
    StringBuilder words = new StringBuilder();
    words
        .append("Step ")
        .append(step.number())
        .append(" of ")
        .append(story.steps().size())
        .append(parts > 1 ? ", " + part + " of " + parts : "")
        .append(": ")
        .append(PictureWords.ended(step.heading()));
    if (part == 1) {
      step.words().ifPresent(text -> words.append(' ').append(PictureWords.ended(text)));
      story.before(step).ifPresent(earlier -> words.append(shown("Before", earlier)));
      words.append(shown(step.number() == 1 ? "At the start" : "After", step));
      step.move()
          .map(move -> PictureWords.ended(PictureWords.capital(move.inOneLine())))
          .ifPresent(text -> words.append(' ').append(text));
    }
    if (part == parts) {
      said(words, "What changed", step.changed());
      step.credit().ifPresent(text -> words.append(' ').append(PictureWords.ended(text)));
    }
    if (parts == 1 || seenFirst == (part == 1)) {
      said(words, "What was seen", step.seen());
    }
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
