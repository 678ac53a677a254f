package io.ovenmark.json;

import java.math.BigDecimal;

/** Words and comparisons that the messages of {@link Fields} share. */
final class Wording {
  private Wording() {}

  /** What a value is, as a person sees it in the file. */
  static String inWords(JsonValue value) {
    if (value instanceof JsonValue.JsonObject) {
      return "an object in { }";
    } else if (value instanceof JsonValue.JsonArray) {
      return "a list in [ ]";
    } else if (value instanceof JsonValue.JsonString) {
      return "a text in quotes";
    } else if (value instanceof JsonValue.JsonNumber number) {
      return "the number " + CanonicalJson.number(number.value());
    }
    return "the word " + CanonicalJson.text(value).strip();
  }

  /** Whether a number lies between two limits, both included; compared exactly. */
  static boolean within(BigDecimal number, double least, double most) {
    return number.compareTo(Members.decimal(least)) >= 0
        && number.compareTo(Members.decimal(most)) <= 0;
  }

  /** Says that a number is outside its limits. */
  static String outOfRange(BigDecimal number) {
    return "The number " + CanonicalJson.number(number) + " is out of range.";
  }

  /** Says which numbers are possible. */
  static String range(double least, double most) {
    return "Use a number from "
        + CanonicalJson.number(Members.decimal(least))
        + " to "
        + CanonicalJson.number(Members.decimal(most))
        + ".";
  }
}
