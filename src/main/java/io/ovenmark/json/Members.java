package io.ovenmark.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Builds a {@link JsonValue.JsonObject} member by member; the counterpart of {@link Fields}. Absent
 * values are left out rather than written as null.
 */
public final class Members {
  /** Decimals of so many digits are told apart by every double. */
  private static final int SURELY_SHORTEST = 15;

  private final Map<String, JsonValue> members = new LinkedHashMap<>();

  /**
   * Adds a text.
   *
   * @param name the member
   * @param value the text, not null
   * @return this
   */
  public Members text(String name, String value) {
    members.put(name, new JsonValue.JsonString(value));
    return this;
  }

  /**
   * Adds a text when there is one.
   *
   * @param name the member
   * @param value the text; empty is left out
   * @return this
   */
  public Members text(String name, Optional<String> value) {
    value.ifPresent(text -> text(name, text));
    return this;
  }

  /**
   * Adds a number.
   *
   * @param name the member
   * @param value the number, not null
   * @return this
   */
  public Members number(String name, BigDecimal value) {
    members.put(name, new JsonValue.JsonNumber(value));
    return this;
  }

  /**
   * Adds a number when there is one.
   *
   * @param name the member
   * @param value the number; empty is left out
   * @return this
   */
  public Members number(String name, OptionalDouble value) {
    if (value.isPresent()) {
      number(name, decimal(value.getAsDouble()));
    }
    return this;
  }

  /**
   * Adds a truth.
   *
   * @param name the member
   * @param value the truth
   * @return this
   */
  public Members flag(String name, boolean value) {
    members.put(name, new JsonValue.JsonBoolean(value));
    return this;
  }

  /**
   * Adds any value.
   *
   * @param name the member
   * @param value the value, not null
   * @return this
   */
  public Members value(String name, JsonValue value) {
    members.put(name, value);
    return this;
  }

  /**
   * Adds a list of texts.
   *
   * @param name the member
   * @param values the texts
   * @return this
   */
  public Members texts(String name, Collection<String> values) {
    return list(name, List.copyOf(values), JsonValue.JsonString::new);
  }

  /**
   * Adds a list.
   *
   * @param <T> type of the items
   * @param name the member
   * @param items the items
   * @param toJson how one is written
   * @return this
   */
  public <T> Members list(String name, List<T> items, Function<T, JsonValue> toJson) {
    members.put(name, new JsonValue.JsonArray(items.stream().map(toJson).toList()));
    return this;
  }

  /**
   * Adds the unknown fields that were kept; a known member of the same name wins, and two objects
   * of the same name are joined by the same rule.
   *
   * @param extras the fields
   * @return this
   */
  public Members extras(Extras extras) {
    extras.members().forEach((name, value) -> members.merge(name, value, Members::join));
    return this;
  }

  private static JsonValue join(JsonValue known, JsonValue kept) {
    if (known instanceof JsonValue.JsonObject object && kept instanceof JsonValue.JsonObject more) {
      Map<String, JsonValue> joined = new LinkedHashMap<>(object.members());
      more.members().forEach((name, value) -> joined.merge(name, value, Members::join));
      return new JsonValue.JsonObject(joined);
    }
    return known;
  }

  /**
   * The finished object.
   *
   * @return an object with the members in the order they were added
   */
  public JsonValue.JsonObject object() {
    return new JsonValue.JsonObject(members);
  }

  /**
   * The shortest decimal that reads back as the same double, alike on every version of Java (whose
   * own text of a double sometimes had a digit too many before JDK 19).
   *
   * @param value a finite number
   * @return its decimal
   * @throws NumberFormatException when the value is not finite
   */
  public static BigDecimal decimal(double value) {
    BigDecimal decimal = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    if (decimal.precision() <= SURELY_SHORTEST) {
      return decimal;
    }
    BigDecimal exact = new BigDecimal(value);
    for (int digits = SURELY_SHORTEST; digits < decimal.precision(); digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits));
      if (rounded.doubleValue() == value) {
        return rounded.stripTrailingZeros();
      }
    }
    BigDecimal closest = exact.round(new MathContext(decimal.precision()));
    return closest.doubleValue() == value ? closest.stripTrailingZeros() : decimal;
  }
}
