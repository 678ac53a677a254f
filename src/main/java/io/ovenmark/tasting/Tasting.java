package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Slug;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A blind tasting: what is tasted, what is asked, each taster's sheet with codes and order, and the
 * answers so far.
 *
 * @param formula slug of the formula that it belongs to
 * @param id name within the formula, {@code <date>-<n>}, such as {@code 2026-09-14-1}
 * @param kind what the tasters do
 * @param question what they are asked, not blank
 * @param time when it was set up
 * @param seed what codes and orders were drawn from, 0 or more
 * @param samples what is tasted, as many as the kind allows
 * @param attributes what is judged just-about-right, unique; only with that kind
 * @param note anything else, for the organiser; empty when there is none
 * @param sheets one for each taster, numbered from 1
 * @param extras unknown fields
 */
public record Tasting(
    String formula,
    String id,
    TastingKind kind,
    String question,
    OffsetDateTime time,
    int seed,
    List<Sample> samples,
    List<String> attributes,
    Optional<String> note,
    List<Sheet> sheets,
    Extras extras) {
  /** The most sheets of one tasting. */
  public static final int MOST_SHEETS = 1000;

  private static final int MOST_ATTRIBUTES = 12;
  private static final int LONGEST_QUESTION = 500;
  private static final int TRIANGLE_PLATES = 3;
  private static final Pattern ID = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}-[0-9]{1,4}");

  /** Checks that everything fits together. */
  public Tasting {
    Slug.check(formula);
    checkId(id);
    requireNonNull(time, "time");
    Faults.require(
        !question.isBlank() && question.length() <= LONGEST_QUESTION,
        "The question is empty or longer than " + LONGEST_QUESTION + " characters.",
        "Ask one short question, such as \"" + kind.question() + "\"");
    Faults.require(
        seed >= 0, "The seed is negative.", "Use a whole number from 0 to 2147483647.");
    samples = List.copyOf(samples);
    Faults.require(
        samples.size() >= kind.leastSamples() && samples.size() <= kind.mostSamples(),
        kind.label() + " cannot be done with " + samples.size() + " samples.",
        kind.leastSamples() == kind.mostSamples()
            ? "Name " + kind.leastSamples() + " samples."
            : "Name " + kind.leastSamples() + " to " + kind.mostSamples() + " samples.");
    attributes = checkedAttributes(kind, attributes);
    note = note.map(String::strip).filter(text -> !text.isEmpty());
    sheets = List.copyOf(sheets);
    Faults.require(
        !sheets.isEmpty() && sheets.size() <= MOST_SHEETS,
        "A tasting has 1 to " + MOST_SHEETS + " sheets.",
        "Say how many people taste.");
    for (int i = 0; i < sheets.size(); i++) {
      checkSheet(sheets.get(i), i + 1, kind, samples.size());
      int number = i + 1;
      List<String> asked = attributes;
      Sheet sheet = sheets.get(i);
      sheet.answer().ifPresent(answer -> AnswerRules.check(kind, asked, sheet, answer, number));
    }
    requireNonNull(extras, "extras");
  }

  private static List<String> checkedAttributes(TastingKind kind, List<String> attributes) {
    List<String> names = attributes.stream().map(String::strip).toList();
    boolean wanted = kind == TastingKind.JUST_ABOUT_RIGHT;
    Faults.require(
        wanted || names.isEmpty(),
        "Only a just-about-right tasting has attributes.",
        "Leave them out, or choose that kind.");
    Faults.require(
        !wanted || !names.isEmpty() && names.size() <= MOST_ATTRIBUTES,
        "A just-about-right tasting asks about 1 to " + MOST_ATTRIBUTES + " attributes.",
        "Name what may be too little or too much, such as sweet, salty, moist.");
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      Faults.require(
          !name.isEmpty() && name.length() <= 40 && seen.add(name),
          "The attribute " + Quoting.quote(name) + " is empty, too long or stands twice.",
          "Name each attribute once, in at most 40 characters.");
    }
    return names;
  }

  private static void checkSheet(Sheet sheet, int number, TastingKind kind, int samples) {
    Faults.require(
        sheet.number() == number,
        "The sheet " + sheet.number() + " stands at place " + number + ".",
        "Number the sheets from 1 in order.");
    Set<Integer> served = new HashSet<>();
    sheet.servings().forEach(serving -> served.add(serving.sample()));
    int plates = kind == TastingKind.TRIANGLE ? TRIANGLE_PLATES : samples;
    boolean known = served.stream().allMatch(sample -> sample <= samples);
    Faults.require(
        known && served.size() == samples && sheet.servings().size() == plates,
        "The plates of sheet " + number + " do not fit " + kind.label() + " with " + samples
            + " samples.",
        kind == TastingKind.TRIANGLE
            ? "Serve three plates, one sample twice and the other once."
            : "Serve every sample once.");
  }

  private static void checkId(String id) {
    boolean fits = ID.matcher(id).matches();
    if (fits) {
      try {
        LocalDate.parse(id.substring(0, 10));
      } catch (DateTimeException e) {
        fits = false;
      }
    }
    Faults.require(
        fits,
        Quoting.quote(id) + " cannot name a tasting.",
        "Use the date and a number, such as 2026-09-14-1.");
  }

  /**
   * Where the tasting is kept in the notebook.
   *
   * @return {@code tastings/<formula>/<id>.json}
   */
  public String path() {
    return "tastings/" + formula + "/" + id + ".json";
  }

  /**
   * A sheet by its number.
   *
   * @param number from 1
   * @return the sheet; empty when there is none
   */
  public Optional<Sheet> sheet(int number) {
    return number >= 1 && number <= sheets.size()
        ? Optional.of(sheets.get(number - 1))
        : Optional.empty();
  }

  /**
   * The same tasting with another state of one sheet.
   *
   * @param sheet takes the place of the sheet of its number
   * @return a new tasting
   * @throws IllegalArgumentException when the answer does not fit
   */
  public Tasting with(Sheet sheet) {
    List<Sheet> next = new ArrayList<>(sheets);
    next.set(sheet.number() - 1, sheet);
    return withSheets(next);
  }

  /**
   * The same tasting with more sheets, which continue codes and orders where they stopped.
   *
   * @param more how many, 1 or more
   * @return a new tasting
   * @throws IllegalArgumentException when that would be too many
   */
  public Tasting withMore(int more) {
    int all = sheets.size() + more;
    Faults.require(
        more >= 1 && all <= MOST_SHEETS,
        "The tasting cannot get " + more + " more sheets.",
        "Add 1 or more, up to " + MOST_SHEETS + " in all.");
    List<Sheet> planned = SheetPlan.draw(kind, samples.size(), all, seed);
    List<Sheet> next = new ArrayList<>(sheets);
    next.addAll(planned.subList(sheets.size(), all));
    return withSheets(next);
  }

  private Tasting withSheets(List<Sheet> next) {
    return new Tasting(
        formula, id, kind, question, time, seed, samples, attributes, note, next, extras);
  }

  /**
   * How many sheets have an answer.
   *
   * @return 0 or more
   */
  public int answered() {
    return (int) sheets.stream().filter(sheet -> sheet.answer().isPresent()).count();
  }
}
