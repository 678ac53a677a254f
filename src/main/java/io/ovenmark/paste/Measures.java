package io.ovenmark.paste;

import io.ovenmark.measure.MeasureUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the measure after a number: a unit of {@link MeasureUnit}, or a word for a household
 * measure, whose weight is the food's affair.
 */
final class Measures {
  private static final Pattern TWO_WORDS =
      Pattern.compile("\\s*-?\\s*((?:fl|fluid)\\.?\\s?(?:oz|ounces?))(?!\\p{L})\\.?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern WORD =
      Pattern.compile("\\s*(?:-(?=\\p{L}))?(\\p{L}+)\\.?(?!\\p{L})");
  private static final Pattern SIZE =
      Pattern.compile(
          "\\s*-?(extra[- ]large|x-large|xl|large|lg|lge|medium|med|small|sm|jumbo)\\b\\.?",
          Pattern.CASE_INSENSITIVE);
  private static final String NOUNS =
      "pinch(?:es)?|dash(?:es)?|handfuls?|cloves?|sticks?|slices?|packets?|sachets?|envelopes?"
          + "|scoops?|drops?|knobs?|sprigs?|bunch(?:es)?|heads?|blocks?|cubes?|bars?|sheets?"
          + "|leaf|leaves|pieces?|splash(?:es)?|drizzles?|pats?|wedges?|spoonfuls?|stalks?"
          + "|squares?";
  private static final String CONTAINERS =
      "cans?|tins?|jars?|packages?|pkgs?|packs?|containers?|bags?|box(?:es)?|bottles?|cartons?"
          + "|pots?|tubs?|tubes?";
  private static final Pattern NOUN =
      Pattern.compile("\\s*-?(" + NOUNS + "|" + CONTAINERS + ")\\b\\.?", Pattern.CASE_INSENSITIVE);
  private static final Pattern CONTAINER =
      Pattern.compile("\\s*(" + CONTAINERS + ")\\b\\.?", Pattern.CASE_INSENSITIVE);
  private static final Pattern CUP_OR_TEASPOON =
      Pattern.compile("\\s*([tcC])\\b\\.?(?=\\s)");
  private static final Pattern MANNER =
      Pattern.compile(
          "\\s*(heaped|heaping|rounded|generous|scant|level|packed|good|big)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Manners that leave the amount open. */
  private static final List<String> LOOSE = List.of("heaped", "heaping", "rounded", "generous",
      "scant", "good", "big");

  private Measures() {}

  /**
   * Reads a measure here.
   *
   * @param remarks takes words such as "heaped" or a size beside another measure
   * @param doubts takes what leaves the amount open
   * @return the measure as it may be written after a number; empty when there is none
   */
  static Optional<String> read(Scan in, List<String> remarks, List<Doubt> doubts) {
    int start = in.at();
    Optional<String> manner =
        in.eat(MANNER) ? in.group(1).map(word -> word.toLowerCase(Locale.ROOT)) : Optional.empty();
    Optional<String> unit = unit(in).or(() -> household(in, remarks));
    if (unit.isEmpty() && in.eat(CUP_OR_TEASPOON)) {
      String letter = in.group(1).orElseThrow();
      doubts.add(
          Doubt.ambiguous(
              "The unit \"" + letter + "\" may be "
                  + (letter.equals("t") ? "a teaspoon or a tablespoon." : "a cup or a centilitre."),
              letter.equals("t") ? "Write tsp or tbsp." : "Write cup or cl."));
      return Optional.empty();
    }
    if (unit.isEmpty()) {
      in.back(start);
      return unit;
    }
    manner.ifPresent(remarks::add);
    if (manner.filter(LOOSE::contains).isPresent()) {
      doubts.add(
          Doubt.amount(
              "How much is in a " + manner.get() + " measure is anybody's guess.",
              "Write a level measure or, better, grams."));
    }
    return unit;
  }

  /** Reads a unit of mass or volume here. */
  static Optional<String> unit(Scan in) {
    int start = in.at();
    if (in.eat(TWO_WORDS)) {
      return Optional.of("fl oz");
    }
    if (in.eat(WORD)) {
      Optional<String> unit = in.group(1).flatMap(Measures::unit);
      if (unit.isPresent()) {
        return unit;
      }
    }
    in.back(start);
    return Optional.empty();
  }

  private static Optional<String> unit(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (word.equals("T")) {
      return Optional.of("tbsp");
    }
    return Optional.of(lower)
        .filter(name -> MeasureUnit.named(name).isPresent())
        .or(() -> Optional.of(lower.replaceFirst("fuls?$|s$", ""))
            .filter(name -> name.length() > 2 && MeasureUnit.named(name).isPresent()));
  }

  /** Reads a household measure here: a size, or a noun that more words follow. */
  private static Optional<String> household(Scan in, List<String> remarks) {
    int start = in.at();
    Optional<String> size = in.eat(SIZE) ? in.group(1).map(Measures::size) : Optional.empty();
    int afterSize = in.at();
    if (in.eat(NOUN) && !in.atEnd() && !in.rest().startsWith(",")) {
      String noun = in.group(1).orElseThrow().toLowerCase(Locale.ROOT);
      size.ifPresent(remarks::add);
      return Optional.of(noun);
    }
    in.back(size.isPresent() ? afterSize : start);
    return size;
  }

  private static String size(String word) {
    return switch (word.toLowerCase(Locale.ROOT).replace(' ', '-')) {
      case "extra-large", "x-large", "xl" -> "extra large";
      case "lg", "lge" -> "large";
      case "med" -> "medium";
      case "sm" -> "small";
      default -> word.toLowerCase(Locale.ROOT);
    };
  }

  /** Reads the name of a package here, such as "can". */
  static Optional<String> container(Scan in) {
    return in.eat(CONTAINER)
        ? in.group(1).map(word -> word.toLowerCase(Locale.ROOT))
        : Optional.empty();
  }

  /** Whether a measure is a package. */
  static boolean isContainer(String measure) {
    return measure.matches(CONTAINERS);
  }
}
