package io.ovenmark.bake;

import java.util.List;

/**
 * A bake as it is typed into a form: texts that may be half typed, empty for what is not known.
 *
 * @param units what numbers without a unit mean
 * @param time when it went into the oven; empty for when it is recorded
 * @param baker who baked
 * @param ambient remarks on room and oven
 * @param note anything else
 * @param findings faults and merits of the whole tray
 * @param pieces the pieces
 */
public record BakeForm(
    TypedUnits units,
    String time,
    String baker,
    String ambient,
    String note,
    List<String> findings,
    List<PieceForm> pieces) {

  /** Takes what is missing as empty, and copies. */
  public BakeForm {
    units = units == null ? TypedUnits.METRIC : units;
    time = time == null ? "" : time;
    baker = baker == null ? "" : baker;
    ambient = ambient == null ? "" : ambient;
    note = note == null ? "" : note;
    findings = findings == null ? List.of() : List.copyOf(findings);
    pieces = pieces == null ? List.of() : List.copyOf(pieces);
  }
}
