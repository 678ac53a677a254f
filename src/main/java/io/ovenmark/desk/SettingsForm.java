package io.ovenmark.desk;

import java.util.Map;

/**
 * The notebook's settings as a form says them.
 *
 * @param seen the commit that the form's settings were read at
 * @param title the notebook's title
 * @param temperatureUnit {@code °C} or {@code °F}
 * @param massUnit {@code g} or {@code oz}
 * @param energyRule how energy is worked out
 * @param subtract shares that net carbohydrate leaves out, by name
 * @param variants whether variants whose settings say the same are changed too
 * @param picks {@code mine} or {@code theirs} by name of a setting that both sides changed
 * @param answered the commit of the other side that the picks answer; null when there are none
 */
public record SettingsForm(
    String seen,
    String title,
    String temperatureUnit,
    String massUnit,
    String energyRule,
    Map<String, String> subtract,
    Boolean variants,
    Map<String, String> picks,
    String answered) {
  /** Copies, and takes what is missing as empty. */
  public SettingsForm {
    seen = seen == null ? "" : seen;
    title = title == null ? "" : title.strip();
    temperatureUnit = temperatureUnit == null ? "" : temperatureUnit;
    massUnit = massUnit == null ? "" : massUnit;
    energyRule = energyRule == null ? "" : energyRule;
    subtract = subtract == null ? Map.of() : Map.copyOf(subtract);
    variants = variants == null ? Boolean.TRUE : variants;
    picks = picks == null ? Map.of() : Map.copyOf(picks);
  }
}
