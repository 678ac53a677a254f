package io.ovenmark.paste;

import io.ovenmark.measure.Amount;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one number as people write it: whole, decimal with point or comma, fraction, mixed number,
 * fraction sign, or a word. It is rewritten in the form that {@link Amount#parse} reads.
 */
final class Numbers {
  static final String SIGNS = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐⅑⅒";

  /** Hyphens, dashes and the minus sign. */
  static final String DASH = "[-\u2010-\u2015\u2212]";

  private static final Map<String, String> RARE_SIGNS =
      Map.of("⅐", "1/7", "⅑", "1/9", "⅒", "1/10");

  private static final String END = "(?![\\d" + SIGNS + "])(?!\\s*[%°º℃℉′″\"'])";
  private static final Pattern MIXED =
      Pattern.compile(
          "(\\d{1,15}+)(?:\\s+and\\s+|\\s*" + DASH + "\\s*|\\s+)(\\d{1,6}+\\s*[/⁄∕]\\s*\\d{1,6}+)"
              + "(?![.,]\\d)" + END);
  private static final Pattern WITH_SIGN =
      Pattern.compile(
          "(\\d{1,15}+)\\s*(?:and\\s+|" + DASH + ")?([" + SIGNS + "])" + END);
  private static final Pattern FRACTION =
      Pattern.compile("(\\d{1,6}+\\s*[/⁄∕]\\s*\\d{1,6}+)(?![.,]\\d)" + END);
  private static final Pattern SIGN = Pattern.compile("([" + SIGNS + "])" + END);
  private static final Pattern THOUSANDS =
      Pattern.compile("(\\d{1,3}(?:,\\d{3}){2,4}|\\d{1,3},\\d{3}(?=\\.\\d))(\\.\\d{1,9}+)?" + END);
  private static final Pattern DECIMAL =
      Pattern.compile("(\\d{0,30}+)([.,])(\\d{1,30}+)" + END);
  private static final Pattern WHOLE = Pattern.compile("(\\d{1,30}+)" + END);
  private static final Pattern WORD =
      Pattern.compile(
          "(half an?|a half|half|a quarter of an?|a quarter|quarter|three quarters|a dozen|dozen|"
              + "an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern NO_NUMBER =
      Pattern.compile(
          "half[ -]and[ -]half\\b|an? (?:little|few|bit|lot|touch|couple)\\b",
          Pattern.CASE_INSENSITIVE);
  private static final List<String> COUNTED =
      List.of(
          "", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private Numbers() {}

  /** Reads a number in digits or signs here, noting what is ambiguous about it. */
  static Optional<String> digits(Scan in, List<Doubt> doubts) {
    if (in.eat(MIXED)) {
      return Optional.of(in.group(1).orElseThrow() + " " + fraction(in.group(2).orElseThrow()));
    }
    if (in.eat(WITH_SIGN)) {
      String sign = in.group(2).orElseThrow();
      String whole = in.group(1).orElseThrow();
      return Optional.of(
          RARE_SIGNS.containsKey(sign) ? whole + " " + RARE_SIGNS.get(sign) : whole + sign);
    }
    if (in.eat(FRACTION)) {
      return in.group(1).map(Numbers::fraction);
    }
    if (in.eat(SIGN)) {
      return in.group(1).map(sign -> RARE_SIGNS.getOrDefault(sign, sign));
    }
    if (in.eat(THOUSANDS)) {
      return Optional.of(in.group(1).orElseThrow().replace(",", "") + in.group(2).orElse(""));
    }
    if (in.eat(DECIMAL)) {
      return Optional.of(decimal(in, doubts));
    }
    return in.eat(WHOLE) ? in.group(1) : Optional.empty();
  }

  /** Reads a number in digits, signs or words here. */
  static Optional<String> any(Scan in, List<Doubt> doubts) {
    Optional<String> digits = digits(in, doubts);
    int start = in.at();
    if (digits.isPresent() || in.eat(NO_NUMBER)) {
      in.back(digits.isPresent() ? in.at() : start);
      return digits;
    }
    return in.eat(WORD) ? in.group(1).map(Numbers::counted) : Optional.empty();
  }

  private static String decimal(Scan in, List<Doubt> doubts) {
    String whole = in.group(1).orElseThrow();
    boolean comma = in.group(2).orElseThrow().equals(",");
    String part = in.group(3).orElseThrow();
    boolean grouped = part.length() == 3 && !whole.isEmpty() && !whole.matches("0+");
    if (comma && grouped) {
      doubts.add(
          Doubt.ambiguous(
              "The number \"" + whole + "," + part + "\" may be " + whole + part + " or " + whole
                  + "." + part + ".",
              "Write it without a comma."));
    }
    return (whole.isEmpty() ? "0" : whole) + "." + part;
  }

  private static String fraction(String text) {
    return text.replaceAll("\\s+", "").replace('⁄', '/').replace('∕', '/');
  }

  private static String counted(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    if (word.endsWith("dozen")) {
      return "12";
    }
    if (word.startsWith("half") || word.equals("a half")) {
      return "1/2";
    }
    if (word.contains("quarter")) {
      return word.startsWith("three") ? "3/4" : "1/4";
    }
    int count = COUNTED.indexOf(word);
    return String.valueOf(count < 1 ? 1 : count);
  }

  /** The value of a number that was read here; empty when it is absurd or divides by zero. */
  static Optional<BigDecimal> value(String number) {
    try {
      return Optional.of(Amount.parse(number + " g").number());
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** All whole numbers and fractions in a text, for finding an amount at its end. */
  static List<Integer> starts(String text) {
    List<Integer> starts = new ArrayList<>();
    Matcher matcher = Pattern.compile("(?<![\\p{L}\\d.,/" + SIGNS + "])[\\d" + SIGNS + "]")
        .matcher(text);
    while (matcher.find() && starts.size() < 8) {
      starts.add(matcher.start());
    }
    return starts;
  }
}
