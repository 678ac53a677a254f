package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.goal.GoalCodec;
import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.Members;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.NetCarbohydrate;
import io.ovenmark.worksheet.Policy;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a notebook's own file {@code notebook.json} says.
 *
 * @param format number of the file format; a notebook with a greater one than {@link #FORMAT}
 *     is not opened
 * @param title the notebook's title
 * @param temperatureUnit {@code °C} or {@code °F}, for showing
 * @param massUnit {@code g} or {@code oz}, for showing
 * @param policy how energy and net carbohydrate are worked out
 * @param extras unknown fields
 */
public record NotebookSettings(
    int format,
    String title,
    String temperatureUnit,
    String massUnit,
    Policy policy,
    Extras extras) {
  /** The format that this program writes. */
  public static final int FORMAT = 1;

  private static final int GREATEST_FORMAT = 1_000_000;

  /** Checks that nothing is null. */
  public NotebookSettings {
    requireNonNull(title, "title");
    requireNonNull(temperatureUnit, "temperatureUnit");
    requireNonNull(massUnit, "massUnit");
    requireNonNull(policy, "policy");
    requireNonNull(extras, "extras");
  }

  /**
   * The usual settings.
   *
   * @param title the notebook's title
   * @return °C, g, the foods' own energy, everything subtracted for net carbohydrate
   */
  public static NotebookSettings titled(String title) {
    return new NotebookSettings(FORMAT, title, "°C", "g", Policy.USUAL, Extras.NONE);
  }

  /**
   * Reads the number of the format and nothing else, since a newer format may say the rest
   * differently.
   *
   * @param file the name used in messages
   * @param utf8 the file's bytes
   * @return the number; empty when it is not stated
   * @throws io.ovenmark.json.UnreadableException when it is no JSON object
   */
  static Optional<Integer> readFormat(String file, byte[] utf8) {
    return Fields.of(file, utf8).whole("format", 1, GREATEST_FORMAT);
  }

  /**
   * Reads the file.
   *
   * @param file the name used in messages
   * @param utf8 the file's bytes
   * @return the settings
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  static NotebookSettings read(String file, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<Integer> format = fields.whole("format", 1, GREATEST_FORMAT);
    if (format.isEmpty() && !fields.has("format")) {
      fields.problem("format", "The format number is missing.", "Add \"format\": 1.");
    }
    String title = fields.text("title").orElse("Notebook");
    Optional<Fields> units = fields.object("units");
    String temperature = units.flatMap(u -> u.parsed("temperature", t -> one(t, "°C", "°F")))
        .orElse("°C");
    String mass = units.flatMap(u -> u.parsed("mass", m -> one(m, "g", "oz"))).orElse("g");
    EnergyRule energy =
        fields.parsed("energy", NotebookSettings::energy).orElse(EnergyRule.FOODS);
    NetCarbohydrate net =
        fields.object("net_carbohydrate").map(GoalCodec::policy).orElse(NetCarbohydrate.ALL);
    Extras extras = fields.extras();
    fields.finish();
    return new NotebookSettings(
        format.orElseThrow(), title, temperature, mass, new Policy(energy, net), extras);
  }

  /**
   * Writes the file in canonical form.
   *
   * @return UTF-8 JSON with a final newline
   */
  byte[] write() {
    return CanonicalJson.write(
        new Members()
            .number("format", BigDecimal.valueOf(format))
            .text("title", title)
            .value(
                "units",
                new Members().text("temperature", temperatureUnit).text("mass", massUnit).object())
            .text("energy", policy.energy().key())
            .value("net_carbohydrate", GoalCodec.toJson(policy.netCarbohydrate()))
            .extras(extras)
            .object());
  }

  private static String one(String word, String first, String second) {
    if (word.equals(first) || word.equals(second)) {
      return word;
    }
    throw new IllegalArgumentException(
        "\"" + word + "\" is not a unit that can be chosen.\nUse " + first + " or " + second + ".");
  }

  private static EnergyRule energy(String key) {
    return EnergyRule.withKey(key)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + key + "\" is not a rule for energy.\n"
                        + "Use foods, US factors or EU factors."));
  }
}
