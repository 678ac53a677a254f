package io.ovenmark.paste;

import io.ovenmark.measure.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes one ingredient line apart. */
final class LineReader {
  private static final Pattern BRACKET = Pattern.compile("\\(([^()]*)\\)|\\[([^\\[\\]]*)\\]");
  private static final Pattern PARTS =
      Pattern.compile("\\s*(?:(?<!\\d),|,(?!\\d)|;)\\s*|\\s+" + Numbers.DASH + "\\s+");
  private static final Pattern OPTIONAL =
      Pattern.compile("\\s*\\boptional(?:ly)?\\b\\s*:?", Pattern.CASE_INSENSITIVE);
  private static final Pattern LEADING_OPTIONAL =
      Pattern.compile("^optional\\s*[:,-]\\s*(?=\\S)", Pattern.CASE_INSENSITIVE);
  private static final Pattern OR =
      Pattern.compile("\\s+(?:and/)?or\\s+|\\s+/\\s+|(?<=\\p{L}{3})/(?=\\p{L}{3})",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern LEADING_OR =
      Pattern.compile("^(?:and/)?or\\s+", Pattern.CASE_INSENSITIVE);
  private static final Pattern TAIL =
      Pattern.compile(
          "\\s+(to taste|as (?:needed|required|desired)|if (?:needed|desired|you like)"
              + "|for (?:dusting|greasing|rolling|brushing|sprinkling|frying|garnish|serving"
              + "|the)\\b.*|at room temp(?:erature|\\.)?|room temperature|plus\\s.*"
              + "|such as .*|divided)$",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MORE =
      Pattern.compile("^(?:plus|and|\\+)\\b.*[\\d" + Numbers.SIGNS + "]", Pattern.CASE_INSENSITIVE);
  private static final Pattern FOOTNOTE = Pattern.compile("[*†‡]+$");
  private static final Pattern SEPARATORS = Pattern.compile("[\\s,:;=.…-]+$|\\s+[x×]\\s*$");
  private static final Pattern BARE_COUNT =
      Pattern.compile("(.*\\p{L}\\)?)\\s*(?:[:=]|\\s[x×])\\s*([\\d" + Numbers.SIGNS + "].*)");

  private final String text;
  private final List<String> remarks = new ArrayList<>();
  private final List<String> alternatives = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<String> preparation = new ArrayList<>();
  private Optional<PastedAmount> amount = Optional.empty();
  private boolean optional;

  LineReader(String text) {
    this.text = text;
  }

  IngredientLine read() {
    if (text.length() > PasteText.LONGEST_LINE) {
      doubts.add(
          Doubt.line(
              "The line is too long for an ingredient.",
              "Give each ingredient a line of its own, of at most " + PasteText.LONGEST_LINE
                  + " characters."));
      return done(false, "");
    }
    String line = PasteText.withoutNumber(PasteText.tidy(text));
    if (line.endsWith(":") && line.length() > 1) {
      return done(true, line.substring(0, line.length() - 1).strip());
    }
    Matcher leading = LEADING_OPTIONAL.matcher(line);
    if (leading.find()) {
      optional = true;
      line = line.substring(leading.end());
    }
    String rest = line;
    Optional<AmountReader.Found> found = AmountReader.read(line);
    if (found.isPresent() && !isPartOfWord(line, found.get().end())) {
      take(found.get());
      rest = line.substring(found.get().end());
    }
    return done(false, food(rest));
  }

  private static boolean isPartOfWord(String line, int end) {
    return end < line.length()
        && Character.isLetter(line.charAt(end))
        && Character.isLetter(line.charAt(end - 1));
  }

  private IngredientLine done(boolean heading, String food) {
    if (!heading && doubts.isEmpty() && food.isEmpty()) {
      doubts.add(
          Doubt.line(
              text.isBlank() ? "The line is empty." : "The line names no food.",
              "Write an amount and a food, such as \"120 g water\"."));
    }
    return new IngredientLine(
        text,
        heading,
        amount,
        food,
        preparation.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", preparation)),
        remarks,
        alternatives,
        optional,
        doubts);
  }

  private void take(AmountReader.Found found) {
    amount = found.amount();
    remarks.addAll(found.remarks());
    doubts.addAll(found.doubts());
  }

  /** Sorts out what is not the amount, and gives the words for the food. */
  private String food(String rest) {
    String plain = brackets(rest);
    if (OPTIONAL.matcher(plain).find()) {
      optional = true;
      plain = OPTIONAL.matcher(plain).replaceAll(" ");
    }
    List<String> parts = new ArrayList<>();
    Arrays.stream(PARTS.split(plain.strip()))
        .map(part -> FOOTNOTE.matcher(part.strip()).replaceFirst("").strip())
        .filter(part -> part.chars().anyMatch(Character::isLetterOrDigit))
        .forEach(parts::add);
    if (parts.isEmpty()) {
      return "";
    }
    String food = amountBehind(parts);
    int last = 1;
    while (last < parts.size() && FoodWords.onlyDescribes(food)) {
      food = food + ", " + parts.get(last++);
    }
    Matcher tail = TAIL.matcher(food);
    if (tail.find()) {
      preparation.add(tail.group(1));
      food = food.substring(0, tail.start());
    }
    for (String part : parts.subList(last, parts.size())) {
      if (LEADING_OR.matcher(part).find()) {
        alternatives.add(LEADING_OR.matcher(part).replaceFirst(""));
      } else {
        preparation.add(part);
      }
    }
    preparation.stream().filter(MORE.asPredicate()).findFirst().ifPresent(this::more);
    String[] choices = OR.split(food.strip());
    alternatives.addAll(0, Arrays.asList(choices).subList(Math.min(1, choices.length),
        choices.length));
    return choices.length == 0 ? "" : choices[0].replaceFirst("\\.$", "").strip();
  }

  private void more(String part) {
    doubts.add(
        Doubt.amount(
            "A further amount stands behind the first: \"" + part + "\".",
            "Give it a line of its own."));
  }

  private String brackets(String rest) {
    String plain = rest;
    for (Matcher found = BRACKET.matcher(plain); found.find(); found = BRACKET.matcher(plain)) {
      String inside = found.group(1) == null ? found.group(2) : found.group(1);
      plain = plain.substring(0, found.start()) + " " + plain.substring(found.end());
      remark(inside.strip());
    }
    return plain.replaceAll("[()\\[\\]]", " ").replaceAll("\\s+", " ");
  }

  private void remark(String inside) {
    Optional<AmountReader.Found> found = AmountReader.read(inside);
    if (inside.toLowerCase(Locale.ROOT).matches("optional")) {
      optional = true;
    } else if (LEADING_OR.matcher(inside).find()) {
      alternatives.add(LEADING_OR.matcher(inside).replaceFirst(""));
    } else if (isWhole(found, inside)) {
      if (amount.isEmpty() && doubts.isEmpty()) {
        take(found.get());
      } else if (amount.filter(own -> !own.isRange()).isPresent()) {
        beside(inside);
      } else {
        remarks.add(inside);
      }
    } else if (!inside.isEmpty()) {
      remarks.add(inside);
    }
  }

  /** An amount in brackets behind the food: the same amount in another unit. */
  private void beside(String inside) {
    PastedAmount own = amount.orElseThrow();
    Optional<AmountReader.Found> both =
        AmountReader.read(
            (own.number() + " " + (own.isCount() ? "piece" : own.measure()) + " (" + inside
                + ") x"));
    List<Amount> equivalents =
        both.flatMap(AmountReader.Found::amount)
            .map(PastedAmount::equivalents)
            .orElse(List.of());
    if (equivalents.isEmpty()) {
      remarks.add(inside);
      return;
    }
    List<Amount> all = new ArrayList<>(own.equivalents());
    all.addAll(equivalents);
    amount = Optional.of(own.withEquivalents(all));
    both.get().doubts().stream().filter(doubt -> !doubts.contains(doubt)).forEach(doubts::add);
  }

  /** Finds an amount behind the food, as in "water 120 g", "flour, 200 g" or "eggs x 3". */
  private String amountBehind(List<String> parts) {
    String food = parts.get(0);
    if (amount.isPresent() || !doubts.isEmpty()) {
      return food;
    }
    for (int start : Numbers.starts(food)) {
      Optional<AmountReader.Found> found = AmountReader.read(food.substring(start));
      if (isWhole(found, food.substring(start))) {
        String before = SEPARATORS.matcher(food.substring(0, start)).replaceFirst("");
        boolean count = BARE_COUNT.matcher(food).matches();
        boolean measured = found.get().amount().filter(PastedAmount::isCount).isEmpty();
        if (!before.isEmpty() && (measured || count)) {
          take(found.get());
          return before;
        }
      }
    }
    for (int i = 1; i < parts.size(); i++) {
      Optional<AmountReader.Found> found = AmountReader.read(parts.get(i));
      if (isWhole(found, parts.get(i))) {
        take(found.get());
        parts.remove(i);
        return food;
      }
    }
    return food;
  }

  private static boolean isWhole(Optional<AmountReader.Found> found, String all) {
    return found.isPresent()
        && all.substring(found.get().end()).isBlank()
        && found.get().amount().isPresent();
  }
}
