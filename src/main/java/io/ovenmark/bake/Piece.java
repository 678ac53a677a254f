package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Range;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * One unit of a bake. Whatever was not measured is empty, which is unknown, never zero.
 *
 * @param id letter or short name within the bake, such as {@code a}
 * @param temperature oven temperature
 * @param minutes time in the oven, from 0 to two days
 * @param rack position in the oven
 * @param doughGrams mass before the oven, 0.01 to 1 000 000
 * @param bakedGrams mass after cooling, 0.01 to 1 000 000
 * @param widthMillimetres width, 0.1 to 10 000
 * @param heightMillimetres height, 0.1 to 10 000
 * @param core temperature in the centre when taken out
 * @param coreLog temperatures in the centre through the bake, in the order of time; empty when
 *     they were not logged
 * @param crustShade crust on the notebook's scale from 0 (raw) to 4 (burnt); common practice, no
 *     source
 * @param findings faults and merits, from {@link FindingVocabulary} or in free words
 * @param liking each taster's liking, 1 (dislike extremely) to 9 (like extremely), the nine-point
 *     hedonic scale (Peryam and Pilgrim 1957)
 * @param attributes just-about-right scores by attribute
 * @param verdict what to do with it or what it taught; empty when there is none
 * @param note anything else; empty when there is none
 * @param extras unknown fields
 */
public record Piece(
    String id,
    Optional<Temperature> temperature,
    OptionalDouble minutes,
    Optional<String> rack,
    OptionalDouble doughGrams,
    OptionalDouble bakedGrams,
    OptionalDouble widthMillimetres,
    OptionalDouble heightMillimetres,
    Optional<Temperature> core,
    List<CorePoint> coreLog,
    OptionalDouble crustShade,
    List<String> findings,
    List<Double> liking,
    List<Attribute> attributes,
    Optional<String> verdict,
    Optional<String> note,
    Extras extras) {

  /**
   * How an attribute was scored.
   *
   * @param name such as {@code sweet}
   * @param scores each taster's score from −2 (much too little) over 0 (just about right) to 2
   *     (much too much)
   * @param extras unknown fields
   */
  public record Attribute(String name, List<Double> scores, Extras extras) {
    /** From much too little to much too much. */
    static final Range SCORE = new Range(-2, 2);

    /** Checks and copies the scores. */
    public Attribute {
      if (name.isBlank()) {
        throw new IllegalArgumentException("A scored attribute needs a name.\nGive it one.");
      }
      scores = List.copyOf(scores);
      scores.forEach(score -> SCORE.check("The score", score));
      requireNonNull(extras, "extras");
    }

    /**
     * An attribute without unknown fields.
     *
     * @param name such as {@code sweet}
     * @param scores each taster's score from −2 to 2
     */
    public Attribute(String name, List<Double> scores) {
      this(name, scores, Extras.NONE);
    }
  }

  /** Minutes in the oven, up to two days. */
  static final Range MINUTES = new Range(0, 2880);

  /** A mass in grams, up to a tonne. */
  static final Range GRAMS = new Range(0.01, 1_000_000);

  /** A length in millimetres, up to ten metres. */
  static final Range MILLIMETRES = new Range(0.1, 10_000);

  /** Crust from raw to burnt. */
  static final Range CRUST = new Range(0, 4);

  /** The nine-point hedonic scale. */
  static final Range LIKING = new Range(1, 9);

  private static final Pattern ID = Pattern.compile("[a-z0-9]{1,12}");

  /** Checks and copies. */
  public Piece {
    checkedId(id);
    requireNonNull(temperature, "temperature");
    MINUTES.check("The baking time", minutes);
    requireNonNull(rack, "rack");
    GRAMS.check("The dough mass", doughGrams);
    GRAMS.check("The baked mass", bakedGrams);
    MILLIMETRES.check("The width", widthMillimetres);
    MILLIMETRES.check("The height", heightMillimetres);
    requireNonNull(core, "core");
    coreLog = List.copyOf(coreLog);
    CoreLog.checkOrder(coreLog);
    CRUST.check("The crust shade", crustShade);
    findings = List.copyOf(findings);
    liking = List.copyOf(liking);
    liking.forEach(rating -> LIKING.check("The liking", rating));
    attributes = List.copyOf(attributes);
    requireNonNull(verdict, "verdict");
    requireNonNull(note, "note");
    requireNonNull(extras, "extras");
  }

  /**
   * A piece whose core was not logged through the bake; the parameters are those above.
   *
   * @param id letter or short name within the bake
   * @param temperature oven temperature
   * @param minutes time in the oven
   * @param rack position in the oven
   * @param doughGrams mass before the oven
   * @param bakedGrams mass after cooling
   * @param widthMillimetres width
   * @param heightMillimetres height
   * @param core temperature in the centre when taken out
   * @param crustShade crust from 0 to 4
   * @param findings faults and merits
   * @param liking each taster's liking
   * @param attributes just-about-right scores
   * @param verdict what to do with it
   * @param note anything else
   * @param extras unknown fields
   */
  public Piece(
      String id,
      Optional<Temperature> temperature,
      OptionalDouble minutes,
      Optional<String> rack,
      OptionalDouble doughGrams,
      OptionalDouble bakedGrams,
      OptionalDouble widthMillimetres,
      OptionalDouble heightMillimetres,
      Optional<Temperature> core,
      OptionalDouble crustShade,
      List<String> findings,
      List<Double> liking,
      List<Attribute> attributes,
      Optional<String> verdict,
      Optional<String> note,
      Extras extras) {
    this(
        id, temperature, minutes, rack, doughGrams, bakedGrams, widthMillimetres,
        heightMillimetres, core, List.of(), crustShade, findings, liking, attributes, verdict, note,
        extras);
  }

  /**
   * Checks a piece's id.
   *
   * @param id the id
   * @return the same id
   * @throws IllegalArgumentException with a sentence and a remedy
   */
  static String checkedId(String id) {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          Quoting.quote(id)
              + " cannot name a piece.\nUse up to 12 lower-case letters a-z and digits.");
    }
    return id;
  }

  /**
   * A piece of which nothing is known yet.
   *
   * @param id its letter
   * @return the piece
   */
  public static Piece named(String id) {
    OptionalDouble unknown = OptionalDouble.empty();
    return new Piece(
        id,
        Optional.empty(),
        unknown,
        Optional.empty(),
        unknown,
        unknown,
        unknown,
        unknown,
        Optional.empty(),
        List.of(),
        unknown,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * Share of the dough mass that the piece lost in the oven.
   *
   * @return percent, negative when it gained, as by a glaze; empty unless both masses were measured
   */
  public OptionalDouble lossPercent() {
    return doughGrams.isPresent() && bakedGrams.isPresent()
        ? OptionalDouble.of(100 * (1 - bakedGrams.getAsDouble() / doughGrams.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * Width divided by height; grows when the dough flows. After AACC International method 10-50,
   * which takes six stacked cookies (from memory).
   *
   * @return the spread factor; empty unless both were measured
   */
  public OptionalDouble spreadFactor() {
    return widthMillimetres.isPresent() && heightMillimetres.isPresent()
        ? OptionalDouble.of(widthMillimetres.getAsDouble() / heightMillimetres.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * Mean liking of the tasters.
   *
   * @return 1 to 9; empty when nobody rated it
   */
  public OptionalDouble meanLiking() {
    return liking.stream().mapToDouble(Double::doubleValue).average();
  }

  /** The same piece without a verdict and a note. */
  Piece withoutNotes() {
    return new Piece(
        id,
        temperature,
        minutes,
        rack,
        doughGrams,
        bakedGrams,
        widthMillimetres,
        heightMillimetres,
        core,
        coreLog,
        crustShade,
        findings,
        liking,
        attributes,
        Optional.empty(),
        Optional.empty(),
        extras);
  }
}
