package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import java.util.regex.Pattern;

/**
 * One plate on a sheet.
 *
 * @param code the three digits that the taster sees, the first not zero
 * @param sample which of the tasting's samples is on it, from 1
 * @param extras unknown fields
 */
public record Serving(String code, int sample, Extras extras) {
  private static final Pattern CODE = Pattern.compile("[1-9][0-9]{2}");

  /** Checks the code. */
  public Serving {
    checkedCode(code);
    Faults.require(sample >= 1, "Samples are counted from 1.", "Write the sample's place.");
    requireNonNull(extras, "extras");
  }

  static String checkedCode(String code) {
    Faults.require(
        CODE.matcher(code).matches(),
        Quoting.quote(code) + " is not a code.",
        "Use three digits, the first not zero, such as \"417\".");
    return code;
  }
}
