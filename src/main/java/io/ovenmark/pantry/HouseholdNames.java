package io.ovenmark.pantry;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Members;
import io.ovenmark.measure.MeasureUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names of household measures: {@code unit, manner (remark)}, such as {@code cup, whole} or
 * {@code cup (4.86 large eggs)}.
 */
final class HouseholdNames {
  private static final Pattern COUNT = Pattern.compile("^(\\d+(?:\\.\\d+)?)\\s+(?=\\p{L})");
  private static final Pattern HEAD_END = Pattern.compile("[,(]");
  private static final Pattern REMARK = Pattern.compile("\\s*\\([^)]*\\)?");
  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final double THIRD = 0.333;

  private HouseholdNames() {}

  /** What stands before the first comma or bracket. */
  static String head(String measure) {
    return HEAD_END.split(measure, 2)[0].strip();
  }

  /** The name without what stands in brackets. */
  static String withoutRemark(String measure) {
    return REMARK.matcher(measure).replaceAll("").strip();
  }

  /** The words of a name, singular and with a unit's symbol for a unit, sorted: for comparing. */
  static List<String> key(String measure) {
    String text = measure.toLowerCase(Locale.ROOT).replace(',', ' ').strip();
    List<String> words = new ArrayList<>();
    Optional<MeasureUnit> whole = unit(SPACE.matcher(text).replaceAll(" "));
    if (whole.isPresent()) {
      return List.of(whole.get().symbol());
    }
    for (String word : SPACE.split(text)) {
      words.add(unit(word).map(MeasureUnit::symbol).orElseGet(() -> Words.singular(word)));
    }
    words.sort(null);
    return words;
  }

  /**
   * Reads a published household weight, such as 0.333 of "cup" weighing 27 g, as the weight of one.
   *
   * @param count how many of the measure were weighed
   * @param text the measure in the words of the source
   * @param grams what they weigh
   * @return the measure; empty for a unit of mass and for figures without use
   */
  static Optional<HouseholdMeasure> read(double count, String text, double grams) {
    String name = text.strip().replaceAll("\\s+", " ");
    double times = count;
    Matcher counted = COUNT.matcher(name);
    if (counted.find()) {
      times *= Double.parseDouble(counted.group(1));
      name = name.substring(counted.end());
    }
    if (name.isEmpty() || !(times > 0) || !(grams > 0)) {
      return Optional.empty();
    }
    String[] parts = name.split(" ", 2);
    Optional<MeasureUnit> unit = unit(strip(parts[0]));
    String rest = parts.length > 1 ? parts[1] : "";
    if (name.toLowerCase(Locale.ROOT).startsWith("fl oz") || fluidOunce(name)) {
      unit = Optional.of(MeasureUnit.FLUID_OUNCE);
      rest = name.replaceFirst("(?i)^(fl oz|fluid ounces?)", "").strip();
    }
    if (unit.isPresent() && unit.get().kind() == MeasureUnit.Kind.MASS) {
      return Optional.empty();
    }
    if (unit.isPresent()) {
      String manner = rest.replaceFirst("^,\\s*", "");
      String between = manner.isEmpty() ? "" : manner.startsWith("(") ? " " : ", ";
      name = unit.get().symbol() + between + manner;
    } else if (times > 1) {
      name = singularHead(name);
    }
    double one = grams / (Math.abs(times - THIRD) < 1e-9 ? 1.0 / 3 : times);
    double rounded = Math.round(one * 10_000) / 10_000.0;
    return rounded >= 0.001 && rounded <= 1_000_000
        ? Optional.of(new HouseholdMeasure(name, rounded))
        : Optional.empty();
  }

  /** A number as people write it. */
  static String number(double value) {
    return CanonicalJson.number(Members.decimal(value));
  }

  private static boolean fluidOunce(String name) {
    return name.toLowerCase(Locale.ROOT).startsWith("fluid ounce");
  }

  private static String singularHead(String name) {
    int end = name.split("[ ,(]", 2)[0].length();
    return Words.singular(name.substring(0, end)) + name.substring(end);
  }

  private static String strip(String word) {
    return word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
  }

  private static Optional<MeasureUnit> unit(String word) {
    return MeasureUnit.named(word);
  }
}
