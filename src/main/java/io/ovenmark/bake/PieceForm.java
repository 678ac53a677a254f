package io.ovenmark.bake;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A piece as it is typed into a form: texts that may be half typed, empty for what is not known.
 *
 * @param id its letter
 * @param temperature oven temperature
 * @param minutes time in the oven
 * @param rack its place in the oven and on the tray
 * @param dough mass before the oven
 * @param baked mass after cooling
 * @param width width
 * @param height height
 * @param core temperature in the centre
 * @param coreLog temperatures in the centre through the bake
 * @param crust crust from 0 (raw) to 4 (burnt)
 * @param findings faults and merits
 * @param tasters what each taster said, in a fixed order of tasters
 * @param verdict what to do with it
 * @param note anything else
 */
public record PieceForm(
    String id,
    String temperature,
    String minutes,
    String rack,
    String dough,
    String baked,
    String width,
    String height,
    String core,
    String coreLog,
    String crust,
    List<String> findings,
    List<Taster> tasters,
    String verdict,
    String note) {

  /**
   * What one taster said of a piece.
   *
   * @param liking 1 to 9; empty when not said
   * @param attributes scores from −2 to 2 by attribute; empty or absent when not said
   */
  public record Taster(String liking, Map<String, String> attributes) {
    /** Takes what is missing as not said, and copies. */
    public Taster {
      liking = text(liking);
      Map<String, String> said = new TreeMap<>();
      if (attributes != null) {
        attributes.forEach((name, score) -> said.put(name, text(score)));
      }
      attributes = Collections.unmodifiableMap(said);
    }
  }

  /** Takes what is missing as empty, and copies. */
  public PieceForm {
    id = text(id);
    temperature = text(temperature);
    minutes = text(minutes);
    rack = text(rack);
    dough = text(dough);
    baked = text(baked);
    width = text(width);
    height = text(height);
    core = text(core);
    coreLog = text(coreLog);
    crust = text(crust);
    findings = findings == null ? List.of() : List.copyOf(findings);
    tasters = tasters == null ? List.of() : List.copyOf(tasters);
    verdict = text(verdict);
    note = text(note);
  }

  /**
   * A piece whose core was not logged; the parameters are those above.
   *
   * @param id its letter
   * @param temperature oven temperature
   * @param minutes time in the oven
   * @param rack its place
   * @param dough mass before the oven
   * @param baked mass after cooling
   * @param width width
   * @param height height
   * @param core temperature in the centre
   * @param crust crust
   * @param findings faults and merits
   * @param tasters what each taster said
   * @param verdict what to do with it
   * @param note anything else
   */
  public PieceForm(
      String id,
      String temperature,
      String minutes,
      String rack,
      String dough,
      String baked,
      String width,
      String height,
      String core,
      String crust,
      List<String> findings,
      List<Taster> tasters,
      String verdict,
      String note) {
    this(
        id, temperature, minutes, rack, dough, baked, width, height, core, "", crust, findings,
        tasters, verdict, note);
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
