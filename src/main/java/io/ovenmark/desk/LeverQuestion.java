package io.ovenmark.desk;

import io.ovenmark.goal.Limit;
import io.ovenmark.lever.LineLimit;
import io.ovenmark.lever.LineNames;
import io.ovenmark.lever.Question;
import io.ovenmark.lever.Readings;
import io.ovenmark.lever.Wish;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Resolved;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A question about levers that was read.
 *
 * @param question the question
 * @param reading what the scale can show in grams, 0 for exact
 * @param limits limits on lines in words
 */
record LeverQuestion(Question question, double reading, List<String> limits) {
  private static final Pattern PERCENT = Pattern.compile("±? ?(\\d{1,4}(?:\\.\\d{1,3})?) ?%?");
  private static final String GOAL = "goal";
  private static final String ALL = "all";

  /** A line and what was written about it. */
  private record Pair(String line, String value) {}

  static LeverQuestion read(LeverOrder order, Desk.Sheet sheet, ShownUnits units) {
    Worksheet worksheet = sheet.worksheet();
    List<Wish> wishes = wishes(order, sheet);
    Set<String> keep = new LinkedHashSet<>();
    order.keep().forEach(line -> keep.add(line(worksheet, line.strip()).line().id()));
    List<LineLimit> limits = new ArrayList<>();
    for (String text : order.atLeast()) {
      Pair pair = pair("at least", text);
      limits.add(LineLimit.atLeast(pair.line(), grams(worksheet, text, pair)));
    }
    for (String text : order.atMost()) {
      Pair pair = pair("at most", text);
      limits.add(LineLimit.atMost(pair.line(), grams(worksheet, text, pair)));
    }
    List<String> names = LineNames.of(worksheet);
    List<String> words = new ArrayList<>();
    for (LineLimit limit : limits) {
      words.add(limit.inWords(name(worksheet, names, limit.line()), units));
    }
    for (String text : order.within()) {
      words.add(within(worksheet, text, limits));
    }
    boolean stated = worksheet.formula().yield().doughPerPieceGrams().isEmpty();
    boolean piecesFixed = choice("pieces", order.pieces(), stated);
    boolean batchFixed = choice("batch", order.batch(), false);
    double reading =
        order.readable() == null
            ? Readings.FINE
            : Asked.read("readable", () -> Readings.read(order.readable()));
    Question question =
        Asked.read("want", () -> new Question(wishes, keep, limits, batchFixed, piecesFixed));
    return new LeverQuestion(question, reading, List.copyOf(words));
  }

  private static String name(Worksheet sheet, List<String> names, String line) {
    return names.get(sheet.lines().indexOf(line(sheet, line)));
  }

  private static List<Wish> wishes(LeverOrder order, Desk.Sheet sheet) {
    List<Wish> wishes = new ArrayList<>();
    for (String text : order.want()) {
      if (text.strip().equals(GOAL)) {
        List<Limit> limits = sheet.goal().map(check -> check.goal().limits()).orElse(List.of());
        if (limits.isEmpty()) {
          throw new Refusal(
              Refusal.Reason.INVALID,
              text,
              "The formula has no goal with limits on figures.",
              "Name a figure, such as \"net carbohydrate a piece at most 3 g\".");
        }
        limits.forEach(limit -> wishes.add(new Wish(limit)));
      } else {
        wishes.add(Asked.read(text, () -> Wish.read(text)));
      }
    }
    return wishes;
  }

  private static boolean choice(String what, String text, boolean otherwise) {
    return switch (text == null ? "" : text) {
      case "fixed" -> true;
      case "free" -> false;
      case "" -> otherwise;
      default ->
          throw new Refusal(
              Refusal.Reason.INVALID,
              what,
              "The " + what + " can be free or fixed, not \"" + text + "\".",
              "Write free or fixed.");
    };
  }

  private static Pair pair(String what, String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          text,
          "A limit names a line and an amount.",
          "Write the line, an equals sign and what it may be " + what
              + ", such as \"water=180 g\".");
    }
    return new Pair(text.substring(0, equals).strip(), text.substring(equals + 1).strip());
  }

  private static WorksheetLine line(Worksheet sheet, String id) {
    return sheet.line(id)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    id,
                    "There is no line \"" + id + "\" in this formula.",
                    "Its lines are "
                        + String.join(
                            ", ", sheet.lines().stream().map(each -> each.line().id()).toList())
                        + "."));
  }

  private static double grams(Worksheet sheet, String text, Pair pair) {
    WorksheetLine line = line(sheet, pair.line());
    Amount amount = Asked.read(text, () -> Amount.parse(pair.value()));
    Optional<Food> food = line.food();
    Optional<Quantity> grams =
        food.map(each -> each.resolve(amount))
            .map(Resolved::grams)
            .or(() -> amount.grams().map(mass -> Quantity.known(mass.doubleValue())));
    return grams
        .filter(Quantity::isKnown)
        .map(Quantity::low)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    text,
                    "What \"" + pair.value() + "\" of " + line.name() + " weighs is not known.",
                    "Give the limit in grams."));
  }

  /** Adds the limits and says them in words. */
  private static String within(Worksheet sheet, String text, List<LineLimit> limits) {
    int equals = text.indexOf('=');
    String value = text.substring(equals + 1).strip();
    String which = equals < 0 ? ALL : text.substring(0, equals).strip();
    Matcher percent = PERCENT.matcher(value);
    if (!percent.matches()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          text,
          "How far a line may change is a percentage.",
          "Write it as \"water=10 %\", or \"20 %\" for all lines.");
    }
    double span = Double.parseDouble(percent.group(1));
    if (which.equals(ALL)) {
      sheet.lines().stream()
          .filter(line -> line.grams().isKnown() && line.grams().low() > 0)
          .forEach(
              line ->
                  limits.add(LineLimit.within(line.line().id(), line.grams().low(), span)));
      return "every line within ± " + percent.group(1) + " %";
    }
    WorksheetLine line = line(sheet, which);
    if (!line.grams().isKnown()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          text,
          "The mass of " + line.name() + " is not known.",
          "Give that line in grams, or its food a household weight.");
    }
    limits.add(LineLimit.within(which, line.grams().low(), span));
    return name(sheet, LineNames.of(sheet), which) + " within ± " + percent.group(1) + " %";
  }
}
