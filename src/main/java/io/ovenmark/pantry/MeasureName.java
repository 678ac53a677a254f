package io.ovenmark.pantry;

import io.ovenmark.measure.MeasureUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The name of a household measure taken apart once: the same few names stand in every formula and
 * at every food, and taking one apart costs more than all else of a line.
 *
 * @param key its words for comparing, see {@link HouseholdNames#key}
 * @param withoutRemark the same of the name without what stands in brackets
 * @param head the same of what stands before the first comma or bracket
 * @param volume the unit of volume that it begins with, if it does
 * @param plainUnit whether it is a unit and nothing else but a remark
 */
record MeasureName(
    List<String> key,
    List<String> withoutRemark,
    List<String> head,
    Optional<MeasureUnit> volume,
    boolean plainUnit) {
  /** More names than this are not remembered; the built-in table has some hundred. */
  private static final int MOST = 4096;

  private static final Map<String, MeasureName> KNOWN = new ConcurrentHashMap<>();

  static MeasureName of(String name) {
    MeasureName known = KNOWN.get(name);
    if (known == null) {
      known = takenApart(name);
      if (KNOWN.size() < MOST) {
        KNOWN.put(name, known);
      }
    }
    return known;
  }

  private static MeasureName takenApart(String name) {
    String without = HouseholdNames.withoutRemark(name);
    String head = HouseholdNames.head(name);
    return new MeasureName(
        HouseholdNames.key(name),
        HouseholdNames.key(without),
        HouseholdNames.key(head),
        MeasureUnit.named(head).filter(unit -> unit.kind() == MeasureUnit.Kind.VOLUME),
        MeasureUnit.named(without).isPresent());
  }
}
