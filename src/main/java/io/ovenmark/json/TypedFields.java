package io.ovenmark.json;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads the fields of an object that somebody is still typing into a form: blanks at the ends of a
 * text do not count, a text of blanks is absent, and a number may be written as a text. Everything
 * else, and what is reported, is as {@link Fields} has it.
 *
 * <pre>{@code
 * TypedFields typed = new TypedFields(fields);
 * OptionalDouble minutes = typed.number("minutes", 0, 2880);
 * }</pre>
 */
public final class TypedFields {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,20}(?:\\.[0-9]{1,20})?");

  private final Fields fields;

  /**
   * Reads fields.
   *
   * @param fields what is typed into
   */
  public TypedFields(Fields fields) {
    this.fields = fields;
  }

  /**
   * An optional text.
   *
   * @param name the field
   * @return the text without blanks at its ends; empty when absent, null, blank or of the wrong
   *     type (reported)
   */
  public Optional<String> text(String name) {
    return fields.text(name).map(String::strip).filter(text -> !text.isEmpty());
  }

  /**
   * An optional number within limits.
   *
   * @param name the field
   * @param least least value allowed
   * @param most greatest value allowed
   * @return the number; empty when absent, null, blank or faulty (reported)
   */
  public OptionalDouble number(String name, double least, double most) {
    return fields
        .within(name, decimal(name), least, most)
        .map(number -> OptionalDouble.of(number.doubleValue()))
        .orElseGet(OptionalDouble::empty);
  }

  /**
   * An optional whole number within limits.
   *
   * @param name the field
   * @param least least value allowed
   * @param most greatest value allowed
   * @return the number; empty when absent, null, blank or faulty (reported)
   */
  public Optional<Integer> whole(String name, int least, int most) {
    return fields.whole(name, decimal(name), least, most);
  }

  /**
   * Whether nothing is typed into a field: it is absent, null, or a text of blanks.
   *
   * @param name the field
   * @return false when it has a value, be it of the wrong type
   */
  public boolean isBlank(String name) {
    return !fields.has(name) || fields.isText(name) && text(name).isEmpty();
  }

  private Optional<BigDecimal> decimal(String name) {
    if (!fields.isText(name)) {
      return fields.decimal(name);
    }
    Optional<String> typed = text(name);
    if (typed.isPresent() && !NUMBER.matcher(typed.get()).matches()) {
      fields.problem(
          name,
          "\"" + typed.get() + "\" is not a number.",
          typed.get().indexOf(',') > 0
              ? "Write decimals with a point, such as \"1.5\"."
              : "Write digits, such as \"12\" or \"1.5\".");
      return Optional.empty();
    }
    return typed.map(BigDecimal::new);
  }
}
