package io.ovenmark.pantry;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quoting;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads the facts of a food as a person writes them. */
public final class FoodText {
  /** With a point, or with a comma where that cannot be a mark of thousands. */
  private static final String NUMBER =
      "(\\d{1,9}(?:\\.\\d{1,9}|,\\d{1,2}|,\\d{4,9}|(?<=\\b0),\\d{3})?)";

  private static final Pattern PRICE =
      Pattern.compile(
          NUMBER + "\\s*([A-Za-z]{3})\\s*(?:for|per|/)\\s*(\\S.*?)(?:\\s+on\\s+(\\S+))?");
  private static final Pattern DENSITY =
      Pattern.compile(NUMBER + "\\s*(?:(?:g\\s*/\\s*(?:ml|mL|cm3))|(?:kg\\s*/\\s*[lL]))?");
  private static final Pattern FIGURE = Pattern.compile(NUMBER + "\\s*([a-zA-Zµμ]*)");
  private static final double UNITS_PER_MICROGRAM = 40;

  private FoodText() {}

  /**
   * A figure of a package label with its name.
   *
   * @param figure which
   * @param value as printed
   */
  public record LabelValue(LabelFood.Figure figure, double value) {}

  /**
   * Reads a figure of a package label.
   *
   * @param name key of the figure with or without its unit, such as {@code protein} or {@code
   *     salt_g}
   * @param value number, with or without a unit
   * @return the figure; empty when a label has none of that name
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Optional<LabelValue> label(String name, String value) {
    String key = name.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace("fiber", "fibre");
    if (key.equals("energy")) {
      String unit = value.strip().replaceFirst("^[0-9.]*\\s*", "");
      key = unit.equalsIgnoreCase("kJ") ? "energy_kj" : "energy_kcal";
    }
    for (LabelFood.Figure figure : LabelFood.Figure.values()) {
      String unit = figure.key().substring(figure.key().lastIndexOf('_') + 1);
      String plain = figure.key().substring(0, figure.key().lastIndexOf('_'));
      boolean energy = plain.equals("energy");
      if (key.equals(figure.key()) || key.equals(plain) && !energy) {
        return Optional.of(new LabelValue(figure, number(name, value, unit)));
      }
    }
    return Optional.empty();
  }

  /**
   * Reads a fact that may be a figure of a package label.
   *
   * @param text such as {@code protein=12} or {@code price=3 EUR for 500 g}
   * @return the figure; empty when it is another fact
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Optional<LabelValue> labelFact(String text) {
    Map.Entry<String, String> fact = assignment(text);
    Optional<LabelValue> figure = label(fact.getKey(), fact.getValue());
    if (figure.isEmpty() && nutrient(fact.getKey()).isPresent()) {
      throw bad(
          "A label does not state " + Quoting.quote(fact.getKey()) + ".",
          "Use " + labelNames() + "; set other figures per 100 g afterwards.");
    }
    return figure;
  }

  /**
   * The names of the figures that a label may have.
   *
   * @return such as {@code energy, protein, fat}
   */
  public static String labelNames() {
    return Arrays.stream(LabelFood.Figure.values())
        .map(figure -> figure.key().substring(0, figure.key().lastIndexOf('_')))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /**
   * Finds a component by its name.
   *
   * @param name key with or without its unit, such as {@code protein} or {@code sodium_mg}
   * @return the component; empty when there is none of that name
   */
  public static Optional<Nutrient> nutrient(String name) {
    String key = name.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace("fiber", "fibre");
    return Arrays.stream(Nutrient.values())
        .filter(
            nutrient ->
                key.equals(nutrient.key())
                    || key.equals(nutrient.key().substring(0, nutrient.key().lastIndexOf('_'))))
        .findFirst();
  }

  /**
   * Reads a number whose unit, if it has one, must be the one that is kept, or gram for milligram.
   *
   * @param name what it is of, for messages
   * @param value such as {@code 12}, {@code 12 g} or {@code 0.3g}
   * @param unit the unit that is kept: g, mg, µg, kcal or kj
   * @return the number in that unit
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  static double number(String name, String value, String unit) {
    return unit.equals("µg") || unit.equals("ug")
        ? micrograms(name, value)
        : plainNumber(name, value, unit);
  }

  /** Micrograms of vitamin D; 40 international units are 1 µg (21 CFR 101.9(c)(8)(iv)). */
  private static double micrograms(String name, String value) {
    Matcher matcher = FIGURE.matcher(value.strip());
    String written = matcher.matches() ? matcher.group(2).toLowerCase(Locale.ROOT) : "";
    return switch (written) {
      case "iu" -> decimal(matcher.group(1)).doubleValue() / UNITS_PER_MICROGRAM;
      case "mg" -> decimal(matcher.group(1)).movePointRight(3).doubleValue();
      case "µg", "μg", "mcg", "ug" -> decimal(matcher.group(1)).doubleValue();
      default -> plainNumber(name, value, "µg");
    };
  }

  private static double plainNumber(String name, String value, String unit) {
    Matcher matcher = FIGURE.matcher(value.strip());
    if (value.strip().startsWith("<")) {
      throw bad(
          Quoting.quote(value) + " is no figure but a bound on " + words(name) + ".",
          "Leave it out to keep it unknown, or write 0 where the label counts it as nothing.");
    }
    if (!matcher.matches()) {
      throw bad(
          capital(words(name)) + " needs a number, not " + Quoting.quote(value) + ".",
          value.matches(".*\\d,\\d{3}.*")
              ? "The comma may be a decimal sign or a mark of thousands: write 1500 or 1.5."
              : "Write it as in 12 or 12.5 " + unit + ".");
    }
    BigDecimal number = decimal(matcher.group(1));
    String written = matcher.group(2).toLowerCase(Locale.ROOT);
    if (written.isEmpty() || written.equals(unit)) {
      return number.doubleValue();
    }
    if (written.equals("g") && unit.equals("mg")) {
      return number.movePointRight(3).doubleValue();
    }
    if (written.equals("mg") && unit.equals("g")) {
      return number.movePointLeft(3).doubleValue();
    }
    throw bad(
        capital(words(name)) + " is kept in " + unit + ", not in " + written + ".", "Convert it.");
  }

  private static BigDecimal decimal(String number) {
    return new BigDecimal(number.replace(',', '.'));
  }

  /** A figure's name as people say it: {@code saturated_fat_g} is saturated fat. */
  private static String words(String name) {
    return name.strip().replaceFirst("_(?:g|mg|ug|kcal|kj)$", "").replace('_', ' ');
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /**
   * Reads what a household measure weighs.
   *
   * @param measure its name, such as {@code tbsp} or {@code large}
   * @param weight such as {@code 9 g} or {@code 1 oz}
   * @return the measure
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static HouseholdMeasure household(String measure, String weight) {
    return new HouseholdMeasure(measure.strip(), grams("the weight of a " + measure, weight));
  }

  /**
   * Reads a density.
   *
   * @param text such as {@code 0.55 g/ml}, {@code 1.03 kg/l} or {@code 0.55}
   * @return grams a millilitre
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static double density(String text) {
    Matcher matcher = DENSITY.matcher(text.strip());
    double density = matcher.matches() ? decimal(matcher.group(1)).doubleValue() : 0;
    if (!(density >= 0.01 && density <= 25)) {
      throw bad(
          "The density " + Quoting.quote(text) + " is not understood or out of range.",
          "Write grams a millilitre from 0.01 to 25, as in 0.55 g/ml.");
    }
    return density;
  }

  /**
   * Reads a price.
   *
   * @param text such as {@code 3.20 EUR for 1000 g}, {@code 4 USD / 2 lb} or {@code 3.20 EUR for
   *     1000 g on 2026-10-03}
   * @return the price
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Price price(String text) {
    Matcher matcher = PRICE.matcher(text.strip());
    if (!matcher.matches()) {
      throw bad(
          "The price " + Quoting.quote(text) + " is not understood.",
          "Write amount, currency and what it buys, as in \"3.20 EUR for 1000 g\"; a day may"
              + " follow, as in \"on 2026-10-03\".");
    }
    String content = matcher.group(3).strip();
    return new Price(
        decimal(matcher.group(1)),
        matcher.group(2).toUpperCase(Locale.ROOT),
        grams("what the price buys", Character.isLetter(content.charAt(0)) ? "1 " + content : content),
        Optional.ofNullable(matcher.group(4)).map(FoodText::day));
  }

  /**
   * Reads a day.
   *
   * @param text such as {@code 2026-10-03}
   * @return the day
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw bad(Quoting.quote(text) + " is not a day.", "Write year, month and day: 2026-10-03.");
    }
  }

  /**
   * Reads allergens.
   *
   * @param text names with commas between, {@code none} or {@code unknown}; {@code gluten} stands
   *     for no single allergen and is refused
   * @return the allergens; empty set for none; empty optional for unknown
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Optional<Set<Allergen>> allergens(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (plain.equals("unknown") || plain.isEmpty()) {
      return Optional.empty();
    }
    Set<Allergen> found = new TreeSet<>();
    if (plain.equals("none")) {
      return Optional.of(found);
    }
    for (String word : plain.split(",", -1)) {
      String wanted = Words.singular(word.strip().replace('-', ' ').replace('_', ' '));
      found.add(
          Arrays.stream(Allergen.values())
              .filter(allergen -> Words.singular(allergen.key()).equals(wanted))
              .findFirst()
              .orElseThrow(
                  () ->
                      bad(
                          Quoting.quote(word) + " is not an allergen that is known here.",
                          "Use none, unknown, or one of "
                              + Arrays.stream(Allergen.values())
                                  .map(Allergen::key)
                                  .collect(Collectors.joining(", "))
                              + ".")));
    }
    return Optional.of(found);
  }

  /**
   * Reads a kind of food.
   *
   * @param text such as {@code dry} or {@code dairy solid}
   * @return the kind
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static FoodKind kind(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    return FoodKind.withKey(wanted)
        .orElseThrow(
            () ->
                bad(
                    Quoting.quote(text) + " is not a kind of food.",
                    "Use one of "
                        + Arrays.stream(FoodKind.values())
                            .map(FoodKind::key)
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  /**
   * Reads a mass.
   *
   * @param what what it is of, for messages
   * @param text such as {@code 30 g} or {@code 1 oz}
   * @return grams, above 0
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static double grams(String what, String text) {
    return Amount.parse(text)
        .grams()
        .filter(mass -> mass.signum() > 0)
        .map(BigDecimal::doubleValue)
        .orElseThrow(
            () -> bad(Quoting.quote(text) + " cannot be " + what + ".", "Write a mass, such as 30 g."));
  }

  /** A name and its value, written {@code name=value}. */
  static Map.Entry<String, String> assignment(String text) {
    int sign = text.indexOf('=');
    if (sign < 1) {
      throw bad(
          Quoting.quote(text) + " is not understood.", "Write a name and a value, as in protein=12.");
    }
    return Map.entry(text.substring(0, sign).strip(), text.substring(sign + 1).strip());
  }

  static IllegalArgumentException bad(String sentence, String remedy) {
    return new IllegalArgumentException(sentence + "\n" + remedy);
  }
}
