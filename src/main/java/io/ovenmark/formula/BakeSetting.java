package io.ovenmark.formula;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Range;
import io.ovenmark.measure.Slug;
import io.ovenmark.measure.Temperature;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One stage in the oven, as the formula prescribes it; what was done in truth stands in a bake.
 *
 * @param id stable name of the stage, by default {@code bake}, then {@code bake-2}
 * @param temperature oven temperature; empty when not stated
 * @param minutes time, from 0 to two days; empty when not stated
 * @param rack position in the oven, such as "middle"; empty when not stated
 * @param steam such as "none" or "10 s at loading"; empty when not stated
 * @param vessel what it is baked in or on; empty when not stated
 * @param note anything else; empty when there is none
 * @param extras unknown fields
 */
public record BakeSetting(
    String id,
    Optional<Temperature> temperature,
    OptionalDouble minutes,
    Optional<String> rack,
    Optional<String> steam,
    Optional<String> vessel,
    Optional<String> note,
    Extras extras) {
  /** Minutes that a stage may take, up to two days. */
  static final Range MINUTES = new Range(0, 2880);

  /** Checks that nothing is null, that the id is a slug and that the time is a possible one. */
  public BakeSetting {
    Slug.check(id);
    requireNonNull(temperature, "temperature");
    MINUTES.check("The baking time", requireNonNull(minutes, "minutes"));
    requireNonNull(rack, "rack");
    requireNonNull(steam, "steam");
    requireNonNull(vessel, "vessel");
    requireNonNull(note, "note");
    requireNonNull(extras, "extras");
  }

  /**
   * A stage of which nothing but its name is stated.
   *
   * @param id the name
   * @return the stage
   */
  public static BakeSetting named(String id) {
    return new BakeSetting(
        id,
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /**
   * The same stage under another id.
   *
   * @param next the id
   * @return a new stage
   */
  BakeSetting withId(String next) {
    return new BakeSetting(next, temperature, minutes, rack, steam, vessel, note, extras);
  }

  /**
   * The same stage at another temperature.
   *
   * @param next the temperature, empty for not stated
   * @return a new stage
   */
  public BakeSetting withTemperature(Optional<Temperature> next) {
    return new BakeSetting(id, next, minutes, rack, steam, vessel, note, extras);
  }

  /**
   * The same stage for another time.
   *
   * @param next minutes, empty for not stated
   * @return a new stage
   */
  public BakeSetting withMinutes(OptionalDouble next) {
    return new BakeSetting(id, temperature, next, rack, steam, vessel, note, extras);
  }

  /**
   * The same stage on another rack.
   *
   * @param next the rack, empty for not stated
   * @return a new stage
   */
  public BakeSetting withRack(Optional<String> next) {
    return new BakeSetting(id, temperature, minutes, next, steam, vessel, note, extras);
  }

  /**
   * The same stage with other steam.
   *
   * @param next the steam, empty for not stated
   * @return a new stage
   */
  public BakeSetting withSteam(Optional<String> next) {
    return new BakeSetting(id, temperature, minutes, rack, next, vessel, note, extras);
  }

  /**
   * The same stage in another vessel.
   *
   * @param next the vessel, empty for not stated
   * @return a new stage
   */
  public BakeSetting withVessel(Optional<String> next) {
    return new BakeSetting(id, temperature, minutes, rack, steam, next, note, extras);
  }

  /**
   * The same stage with another note.
   *
   * @param next the note, empty for none
   * @return a new stage
   */
  public BakeSetting withNote(Optional<String> next) {
    return new BakeSetting(id, temperature, minutes, rack, steam, vessel, next, extras);
  }

  /**
   * The same stage with other unknown fields.
   *
   * @param next the fields
   * @return a new stage
   */
  public BakeSetting withExtras(Extras next) {
    return new BakeSetting(id, temperature, minutes, rack, steam, vessel, note, next);
  }
}
