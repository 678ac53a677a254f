package io.ovenmark.tasting;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads an answer as the organiser types it from a sheet:
 *
 * <pre>{@code
 * 417                              triangle: the odd one; preference: the preferred one, or none
 * 417 233 871                      ranking, the best first
 * 417=7 233=5.5                    liking
 * 417=7,sweet=-1,moist=0 233=5     just about right: liking, then attributes from -2 to 2
 * }</pre>
 */
public final class AnswerText {
  private AnswerText() {}

  /**
   * Reads it.
   *
   * @param kind the tasting's kind
   * @param text the text
   * @return the answer, not yet checked against a sheet
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Answer read(TastingKind kind, String text) {
    List<String> words =
        Arrays.stream(text.strip().split(kind == TastingKind.RANKING ? "[\\s,>]+" : "\\s+"))
            .filter(word -> !word.isEmpty())
            .toList();
    Faults.require(!words.isEmpty(), "The answer is empty.", example(kind));
    return switch (kind) {
      case TRIANGLE, PREFERENCE -> {
        Faults.require(
            words.size() == 1, Quoting.quote(text) + " is not one code.", example(kind));
        yield answer(Optional.of(words.get(0).toLowerCase(Locale.ROOT)), List.of(), List.of());
      }
      case RANKING -> answer(Optional.empty(), words, List.of());
      case LIKING, JUST_ABOUT_RIGHT ->
          answer(
              Optional.empty(),
              List.of(),
              words.stream().map(word -> score(word, kind)).toList());
    };
  }

  private static Answer answer(
      Optional<String> choice, List<String> ranking, List<Score> scores) {
    return new Answer(
        choice, ranking, scores, Optional.empty(), Optional.empty(), Extras.NONE);
  }

  private static Score score(String word, TastingKind kind) {
    String[] parts = word.split(",", -1);
    String[] head = parts[0].split("=", -1);
    Faults.require(
        head.length == 2, Quoting.quote(word) + " does not score a sample.", example(kind));
    OptionalDouble liking =
        head[1].isEmpty() || head[1].equals("-")
            ? OptionalDouble.empty()
            : OptionalDouble.of(number(head[1], kind));
    List<Score.Attribute> attributes = new ArrayList<>();
    for (String part : Arrays.asList(parts).subList(1, parts.length)) {
      int equals = part.indexOf('=');
      Faults.require(
          equals > 0, Quoting.quote(part) + " does not score an attribute.", example(kind));
      double score = number(part.substring(equals + 1), kind);
      Faults.require(
          score == Math.rint(score), Quoting.quote(part) + " is not whole.", example(kind));
      attributes.add(
          new Score.Attribute(
              part.substring(0, equals).replace('_', ' '), (int) score, Extras.NONE));
    }
    return new Score(head[0], liking, attributes, Extras.NONE);
  }

  private static double number(String text, TastingKind kind) {
    try {
      double value = Double.parseDouble(text.replace('−', '-'));
      Faults.require(
          Double.isFinite(value), Quoting.quote(text) + " is not a number.", example(kind));
      return value;
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          Quoting.quote(text) + " is not a number.\n" + example(kind), e);
    }
  }

  private static String example(TastingKind kind) {
    return switch (kind) {
      case TRIANGLE -> "Write the code of the odd sample, such as 417.";
      case PREFERENCE -> "Write the code of the preferred sample, such as 417, or none.";
      case RANKING -> "Write all codes, the best first, such as 417 233 871.";
      case LIKING -> "Write the liking of each sample, such as 417=7 233=5.";
      case JUST_ABOUT_RIGHT ->
          "Write liking and attributes of each sample, such as 417=7,sweet=-1,moist=0 233=5.";
    };
  }
}
