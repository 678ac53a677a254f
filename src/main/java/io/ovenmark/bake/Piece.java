package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One unit of a bake. Whatever was not measured is empty, which is unknown, never zero.
 *
 * @param id letter or short name within the bake, such as {@code a}
 * @param temperature oven temperature
 * @param minutes time in the oven, 0 or more
 * @param rack position in the oven
 * @param doughGrams mass before the oven, above 0
 * @param bakedGrams mass after cooling, above 0
 * @param widthMillimetres width, above 0
 * @param heightMillimetres height, above 0
 * @param core temperature in the centre when taken out
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
   * @param scores each taster's score from −2 (much too little) over 0 (just about right) to 2 (much
   *     too much)
   */
  public record Attribute(String name, List<Double> scores) {
    /** Copies the scores. */
    public Attribute {
      requireNonNull(name, "name");
      scores = List.copyOf(scores);
    }
  }

  /** Checks and copies. */
  public Piece {
    requireNonNull(temperature, "temperature");
    requireNonNull(minutes, "minutes");
    requireNonNull(rack, "rack");
    requireNonNull(doughGrams, "doughGrams");
    requireNonNull(bakedGrams, "bakedGrams");
    requireNonNull(widthMillimetres, "widthMillimetres");
    requireNonNull(heightMillimetres, "heightMillimetres");
    requireNonNull(core, "core");
    requireNonNull(crustShade, "crustShade");
    findings = List.copyOf(findings);
    liking = List.copyOf(liking);
    attributes = List.copyOf(attributes);
    requireNonNull(verdict, "verdict");
    requireNonNull(note, "note");
    requireNonNull(extras, "extras");
    if (!id.matches("[a-z0-9]{1,12}")) {
      throw new IllegalArgumentException(
          "\"" + id + "\" cannot name a piece.\nUse a lower-case letter or a short word.");
    }
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
   * @return percent; empty unless both masses were measured
   */
  public OptionalDouble lossPercent() {
    return doughGrams.isPresent() && bakedGrams.isPresent()
        ? OptionalDouble.of(100 * (1 - bakedGrams.getAsDouble() / doughGrams.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * Width divided by height; grows when the dough flows. After AACC International method 10-50, which
   * takes six stacked cookies (from memory).
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
}
