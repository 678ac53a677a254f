package io.ovenmark.change;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.Temperature;
import java.util.Optional;
import java.util.function.Function;

/** A field of a stage in the oven, in the order in which changes are told. */
public enum BakeField {
  /** Oven temperature, as entered, with its scale. */
  TEMPERATURE("temperature", setting -> setting.temperature().map(Temperature::toString)),
  /** Time in minutes, a plain number. */
  MINUTES("minutes", setting -> Texts.plain(setting.minutes())),
  /** Position in the oven. */
  RACK("rack", BakeSetting::rack),
  /** Steam. */
  STEAM("steam", BakeSetting::steam),
  /** What it is baked in or on. */
  VESSEL("vessel", BakeSetting::vessel),
  /** Anything else. */
  NOTE("note", BakeSetting::note);

  private final String key;
  private final Function<BakeSetting, Optional<String>> text;

  BakeField(String key, Function<BakeSetting, Optional<String>> text) {
    this.key = key;
    this.text = text;
  }

  /**
   * The name of the field in the formula's file.
   *
   * @return such as {@code temperature}
   */
  public String key() {
    return key;
  }

  /**
   * Reads the field as text.
   *
   * @param setting a stage
   * @return the text that would read back as the same value; empty when not stated
   */
  public Optional<String> text(BakeSetting setting) {
    return text.apply(setting);
  }
}
