package io.ovenmark.goal;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a limit as a person writes it: {@code net_carbohydrate_g <= 4 per piece}, {@code protein >=
 * 8 g}, {@code liquid ratio 0.85 to 0.95}, {@code at most 4 g net carbohydrate per 100 g baked}. A
 * figure may be named by its key or its words; what it is stated for is a piece unless said.
 */
public final class LimitText {
  private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,9})?)";
  private static final String UNIT = "\\s*(g|mg|kcal|%)?";
  private static final Pattern BASIS =
      Pattern.compile("(.*\\S)\\s+(?:per|a|an|each)\\s+(\\S.*)", Pattern.DOTALL);
  private static final Pattern ONE_BOUND =
      Pattern.compile("(.+?)\\s*(<=|>=|≤|≥|=<|=>|at most|at least)\\s*" + NUMBER + UNIT);
  private static final Pattern RANGE =
      Pattern.compile("(.+?)\\s+(?:between\\s+)?" + NUMBER + UNIT + "\\s*(?:to|and|-|–|\\.\\.)\\s*"
          + NUMBER + UNIT);
  private static final Pattern BOTH_IN_WORDS =
      Pattern.compile("at least " + NUMBER + UNIT + " and at most " + NUMBER + UNIT);
  private static final Pattern RANGE_FIRST =
      Pattern.compile(NUMBER + UNIT + "\\s*(?:to|-|–|\\.\\.)\\s*" + NUMBER + UNIT
          + "\\s+([a-z].*)");
  private static final Pattern IN_WORDS =
      Pattern.compile("(at most|at least|up to|no more than|no less than)\\s+" + NUMBER + UNIT
          + "\\s+(\\S.*)");
  private static final String EXAMPLE =
      "Write it as in \"net_carbohydrate_g <= 4 per piece\" or \"protein_g >= 8 per piece\".";

  /** Words that people use for a figure besides its key and label. */
  private static final Map<String, Figure> OTHER_WORDS =
      Map.of(
          "calories", Figure.ENERGY,
          "fiber", Figure.FIBRE,
          "carbs", Figure.CARBOHYDRATE,
          "net carbs", Figure.NET_CARBOHYDRATE,
          "moisture", Figure.DOUGH_MOISTURE,
          "dough", Figure.DOUGH_PER_PIECE,
          "baked", Figure.BAKED_PER_PIECE);

  private LimitText() {}

  /**
   * Reads a limit.
   *
   * @param text such as {@code net_carbohydrate_g <= 4 per piece}
   * @return the limit
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Limit read(String text) {
    String plain = text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    Matcher basis = BASIS.matcher(plain);
    Optional<Basis> stated =
        basis.matches() ? Basis.withLabel(basis.group(2).replace("100g", "100 g")) : Optional.empty();
    if (stated.isPresent()) {
      plain = basis.group(1);
    }
    Matcher both = BOTH_IN_WORDS.matcher(plain);
    if (both.find()) {
      plain = plain.substring(0, both.start()) + range(both, 1) + plain.substring(both.end());
    }
    Matcher first = RANGE_FIRST.matcher(plain);
    if (first.matches()) {
      return range(text, figure(text, first.group(5)), stated, first, 1);
    }
    Matcher range = RANGE.matcher(plain);
    if (range.matches()) {
      return range(text, figure(text, range.group(1)), stated, range, 2);
    }
    Matcher words = IN_WORDS.matcher(plain);
    if (words.matches()) {
      Figure figure = figure(text, words.group(4));
      return oneBound(text, figure, stated, words.group(1), words.group(2), words.group(3));
    }
    Matcher one = ONE_BOUND.matcher(plain);
    if (one.matches()) {
      Figure figure = figure(text, one.group(1));
      return oneBound(text, figure, stated, one.group(2), one.group(3), one.group(4));
    }
    throw bad("The limit " + Quoting.quote(text) + " is not understood.", EXAMPLE);
  }

  /** The two bounds as {@code 3 g to 4 g}. */
  private static String range(Matcher both, int group) {
    String least = both.group(group + 1) == null ? "" : " " + both.group(group + 1);
    String most = both.group(group + 3) == null ? "" : " " + both.group(group + 3);
    return both.group(group) + least + " to " + both.group(group + 2) + most;
  }

  private static Limit range(
      String text, Figure figure, Optional<Basis> basis, Matcher found, int group) {
    String most = found.group(group + 3);
    String least = found.group(group + 1) == null ? most : found.group(group + 1);
    return limit(
        text,
        figure,
        basis,
        number(text, figure, found.group(group), least),
        number(text, figure, found.group(group + 2), most));
  }

  private static Limit oneBound(
      String text,
      Figure figure,
      Optional<Basis> basis,
      String sign,
      String number,
      String unit) {
    OptionalDouble bound = number(text, figure, number, unit);
    boolean least =
        switch (sign) {
          case ">=", "=>", "≥", "at least", "no less than" -> true;
          default -> false;
        };
    return least
        ? limit(text, figure, basis, bound, OptionalDouble.empty())
        : limit(text, figure, basis, OptionalDouble.empty(), bound);
  }

  private static Limit limit(
      String text,
      Figure figure,
      Optional<Basis> basis,
      OptionalDouble least,
      OptionalDouble most) {
    boolean fits =
        figure.isMacro()
            || basis.isEmpty()
            || basis.get() == Basis.PIECE && figure.label().endsWith(" a piece");
    if (!fits) {
      throw bad(
          "The " + figure.label() + " is not stated per " + basis.get().label()
              + ", in the limit " + Quoting.quote(text) + ".",
          "Leave out \"per " + basis.get().label() + "\".");
    }
    return new Limit(figure, basis.orElse(Basis.PIECE), least, most, Extras.NONE);
  }

  private static OptionalDouble number(String text, Figure figure, String number, String unit) {
    BigDecimal value = new BigDecimal(number);
    if (unit == null || unit.equals(figure.unit())) {
      return OptionalDouble.of(value.doubleValue());
    }
    if (unit.equals("g") && figure.unit().equals("mg")) {
      return OptionalDouble.of(value.movePointRight(3).doubleValue());
    }
    if (unit.equals("mg") && figure.unit().equals("g")) {
      return OptionalDouble.of(value.movePointLeft(3).doubleValue());
    }
    throw bad(
        "The " + figure.label() + " is not measured in " + unit + ", in the limit " + Quoting.quote(text)
            + ".",
        figure.unit().isEmpty() ? "Leave out the unit." : "Use " + figure.unit() + ".");
  }

  private static Figure figure(String text, String name) {
    String words = name.replace('_', ' ').replace('-', ' ').strip();
    for (Figure figure : Figure.values()) {
      String key = figure.key().replace('_', ' ');
      String unit = figure.unit().equals("%") ? " percent" : " " + figure.unit();
      boolean named =
          words.equals(key)
              || words.equals(figure.label())
              || key.endsWith(unit) && words.equals(key.substring(0, key.length() - unit.length()));
      if (named) {
        return figure;
      }
    }
    Figure other = OTHER_WORDS.get(words);
    if (other == null) {
      throw bad(
          "\"" + words + "\" is not a figure that a limit can be set on, in the limit "
              + Quoting.quote(text) + ".",
          "Use one of "
              + Arrays.stream(Figure.values()).map(Figure::label).collect(Collectors.joining(", "))
              + ".");
    }
    return other;
  }

  private static IllegalArgumentException bad(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }
}
