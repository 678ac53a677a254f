package io.ovenmark.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Says in plain words what a panel's answers tell, and what they cannot.
 *
 * @param says what they tell, the most important first
 * @param cannot what they cannot tell
 */
public record ResultSentences(List<String> says, List<String> cannot) {
  private static final String CHANCE = "only 1 time in 20 by chance (α 0.05)";

  /** Copies. */
  public ResultSentences {
    says = List.copyOf(says);
    cannot = List.copyOf(cannot);
  }

  /**
   * Puts results into words.
   *
   * @param results the results
   * @param names what the samples are called, in order
   * @return sentences
   */
  public static ResultSentences of(Results results, List<String> names) {
    List<String> says = new ArrayList<>();
    List<String> cannot = new ArrayList<>();
    int open = results.sheets() - results.answered();
    if (results.answered() == 0) {
      says.add("No sheet is answered yet.");
    }
    results.triangle().ifPresent(triangle -> triangle(triangle, says, cannot));
    results.preference().ifPresent(each -> preference(each, names, says, cannot));
    results.ranking().ifPresent(ranking -> RankedWords.ranking(ranking, names, says, cannot));
    results.liking().ifPresent(liking -> RankedWords.liking(liking, names, says, cannot));
    RankedWords.attributes(results.attributes(), names, says, cannot);
    if (open > 0 && results.answered() > 0) {
      cannot.add(
          count(open, "sheet") + (open == 1 ? " is" : " are")
              + " still open. Stopping as soon as the result pleases makes chance findings more"
              + " likely: decide the number of tasters beforehand and wait for all.");
    }
    return new ResultSentences(says, cannot);
  }

  private static void triangle(Triangle triangle, List<String> says, List<String> cannot) {
    int n = triangle.answered();
    if (n > 0) {
      OptionalInt needed = triangle.leastCorrect();
      String found =
          triangle.correct() + " of " + n + " found the odd sample; guessing alone does as well or"
              + " better with " + p(triangle.p()) + ".";
      if (needed.isPresent() && triangle.correct() >= needed.getAsInt()) {
        says.add("The samples can be told apart. " + found);
        says.add(
            "Most likely " + percent(triangle.discriminators()) + " of people like these notice the"
                + " difference, at least " + percent(triangle.lowest()) + " (95 %).");
      } else {
        says.add("No difference is shown. " + found);
        says.add(
            "At most " + percent(triangle.highest())
                + " of people like these notice a difference (upper 95 % bound); none may.");
      }
      needed.ifPresent(
          least ->
              says.add(
                  "Of " + n + ", at least " + least + " must be right for what comes " + CHANCE
                      + "."));
    }
    if (n > 0 && triangle.visible().isPresent()) {
      cannot.add(
          count(n, "answer") + (n == 1 ? " is" : " are") + " too few to see reliably a difference"
              + " that less than " + percent(triangle.visible()) + " of people notice: it would be"
              + " missed more than 1 time in 5.");
    } else if (n > 0) {
      cannot.add(
          count(n, "answer") + (n == 1 ? " is" : " are") + " too few to show any difference, even"
              + " if all are right: at least 3 are needed.");
    }
    cannot.add(
        "A triangle does not tell which sample is better, or what differs; \"no difference shown\""
            + " is not \"the same\".");
  }

  private static void preference(
      Preference result, List<String> names, List<String> says, List<String> cannot) {
    int deciding = result.first() + result.second();
    if (deciding > 0) {
      boolean first = result.first() >= result.second();
      int majority = Math.max(result.first(), result.second());
      String counted =
          result.first() + " prefer " + names.get(0) + ", " + result.second() + " "
              + names.get(1) + "; a division as uneven comes by chance with " + p(result.p()) + ".";
      OptionalInt needed = result.leastMajority();
      boolean shown = needed.isPresent() && majority >= needed.getAsInt();
      says.add(
          (shown ? names.get(first ? 0 : 1) + " is preferred. " : "No preference is shown. ")
              + counted);
      says.add(
          "Of people like these, between " + percent(result.lowest()) + " and "
              + percent(result.highest()) + " of those who prefer one prefer " + names.get(0)
              + " (95 %).");
      needed.ifPresent(
          least ->
              says.add(
                  "Of " + deciding + ", at least " + least + " must agree for what comes " + CHANCE
                      + "."));
      cannot.add(
          result.visible().isPresent()
              ? deciding + " deciding are too few to see reliably a preference shared by less than "
                  + percent(result.visible()) + " of people."
              : deciding + " deciding are too few to show any preference, even if all agree: at"
                  + " least 6 are needed.");
    }
    if (result.neither() > 0) {
      says.add(
          result.neither() + " preferred neither. They are left out of the test, and the shares"
              + " are of those who prefer one.");
    }
    cannot.add("A preference does not tell how much better a sample is liked, or why.");
  }

  static String p(OptionalDouble p) {
    return p.isEmpty() ? "p unknown" : p(p.getAsDouble());
  }

  static String p(double p) {
    return p < 0.001 ? "p < 0.001" : String.format(Locale.ROOT, "p = %.3f", p);
  }

  static String percent(OptionalDouble share) {
    return share.isEmpty() ? "an unknown share" : Math.round(100 * share.getAsDouble()) + " %";
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value).replace('-', '−');
  }

  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
