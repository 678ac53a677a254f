package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Yield;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a pasted text says that a batch gives.
 *
 * @param text as it was written
 * @param pieces how many pieces that is; empty when it cannot be said for certain
 * @param perhaps a number that may be the pieces, as of "Serves 6"; empty when there is none
 * @param remark what is open, one sentence; empty when the pieces are certain
 */
public record PastedYield(
    String text, Optional<Integer> pieces, Optional<Integer> perhaps, Optional<String> remark) {
  private static final Pattern SAID =
      Pattern.compile(
          "(makes|yields?|yield of|serves|servings?|portions?|recipe yield)\\b\\s*[:=]?\\s*(.+)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern COUNTED =
      Pattern.compile(
          "(?:about |approx(?:imately|\\.)? |around |~ ?)?(\\d{1,6})"
              + "(?:\\s*(?:" + Numbers.DASH + "|to|or)\\s*(\\d{1,6}))?( dozen)?"
              + "(?:\\s+([\\p{L}][\\p{L} '’-]*))?\\.?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SERVED =
      Pattern.compile("(?:servings?|portions?|people|persons?|serves)\\b.*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MEASURED =
      Pattern.compile("(?:g|kg|oz|lb|lbs|ml|l|cups?|grams?|litres?|liters?|pounds?|ounces?"
              + "|tbsp|tsp|dl|cl|minutes?|hours?)\\b.*",
          Pattern.CASE_INSENSITIVE);
  private static final int LONGEST = 80;

  /** Checks that nothing is null. */
  public PastedYield {
    requireNonNull(text, "text");
    requireNonNull(pieces, "pieces");
    requireNonNull(perhaps, "perhaps");
    requireNonNull(remark, "remark");
  }

  /**
   * Reads a line that says what a batch gives, such as "Makes 12 buns" or "8 servings".
   *
   * @param line a line of text
   * @return what it says; empty when it is another kind of line
   */
  public static Optional<PastedYield> read(String line) {
    if (line.length() > LONGEST) {
      return Optional.empty();
    }
    String tidy = PasteText.withoutBullet(PasteText.tidy(line));
    Matcher said = SAID.matcher(tidy);
    if (said.matches()) {
      boolean served = !said.group(1).toLowerCase(Locale.ROOT).matches("makes|.*yield.*");
      return Optional.of(said(tidy, said.group(2), served));
    }
    Matcher counted = COUNTED.matcher(tidy);
    boolean servings =
        counted.matches() && counted.group(4) != null && SERVED.matcher(counted.group(4)).matches();
    return servings ? Optional.of(said(tidy, tidy, true)) : Optional.empty();
  }

  /**
   * Reads what is known to be a yield, such as the "12 buns" of a list of properties.
   *
   * @param text the yield alone; a number without a word leaves open whether it counts pieces
   * @return what it says
   */
  static PastedYield of(String text) {
    String tidy = PasteText.tidy(text);
    return read(tidy).orElseGet(() -> said(tidy, tidy, tidy.matches("\\d+")));
  }

  private static PastedYield said(String text, String number, boolean served) {
    Matcher counted = COUNTED.matcher(number.strip());
    if (!counted.matches() || counted.group(4) != null
        && MEASURED.matcher(counted.group(4)).matches()) {
      return open(text, Optional.empty(), "The yield \"" + text + "\" is no number of pieces.");
    }
    int times = counted.group(3) == null ? 1 : 12;
    Optional<Integer> count =
        Optional.of(Integer.parseInt(counted.group(1)) * times).filter(PastedYield::isPossible);
    if (count.isEmpty()) {
      return open(text, count, "The yield \"" + text + "\" is no possible number of pieces.");
    }
    if (counted.group(2) != null) {
      return open(text, count, "The yield \"" + text + "\" is a range.");
    }
    if (served || counted.group(4) != null && SERVED.matcher(counted.group(4)).matches()) {
      return open(text, count, "The yield \"" + text + "\" may count servings, not pieces.");
    }
    return new PastedYield(text, count, count, Optional.empty());
  }

  private static boolean isPossible(int pieces) {
    try {
      Yield.ofPieces(pieces);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static PastedYield open(String text, Optional<Integer> perhaps, String remark) {
    return new PastedYield(
        text, Optional.empty(), perhaps, Optional.of(remark + " State the pieces yourself."));
  }
}
