package io.ovenmark.json;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * An immutable JSON value (RFC 8259) that remembers where it was read. Two values are equal when
 * their contents are; the position does not count, and numbers compare by value ({@code 1.0} equals
 * {@code 1}).
 */
public sealed interface JsonValue {
  /**
   * Where the value begins.
   *
   * @return the position, {@link Position#NONE} when made in memory
   */
  Position at();

  /**
   * What kind of value this is, in the words of RFC 8259.
   *
   * @return {@code object}, {@code array}, {@code string}, {@code number}, {@code boolean} or
   *     {@code null}
   */
  String kind();

  /**
   * An object; its members keep the order in which they were read.
   *
   * @param members name to value, copied
   * @param at where it begins
   */
  record JsonObject(Map<String, JsonValue> members, Position at) implements JsonValue {
    /** Copies the members. */
    public JsonObject {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    /**
     * Makes an object in memory.
     *
     * @param members name to value, copied
     */
    public JsonObject(Map<String, JsonValue> members) {
      this(members, Position.NONE);
    }

    @Override
    public String kind() {
      return "object";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonObject that && members.equals(that.members);
    }

    @Override
    public int hashCode() {
      return members.hashCode();
    }
  }

  /**
   * An array.
   *
   * @param items the values in order, copied
   * @param at where it begins
   */
  record JsonArray(List<JsonValue> items, Position at) implements JsonValue {
    /** Copies the items. */
    public JsonArray {
      items = List.copyOf(items);
    }

    /**
     * Makes an array in memory.
     *
     * @param items the values in order, copied
     */
    public JsonArray(List<JsonValue> items) {
      this(items, Position.NONE);
    }

    @Override
    public String kind() {
      return "array";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonArray that && items.equals(that.items);
    }

    @Override
    public int hashCode() {
      return items.hashCode();
    }
  }

  /**
   * A string.
   *
   * @param value the text, not null
   * @param at where it begins
   */
  record JsonString(String value, Position at) implements JsonValue {
    /**
     * Makes a string in memory.
     *
     * @param value the text, not null
     */
    public JsonString(String value) {
      this(value, Position.NONE);
    }

    @Override
    public String kind() {
      return "string";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonString that && value.equals(that.value);
    }

    @Override
    public int hashCode() {
      return value.hashCode();
    }
  }

  /**
   * A number, exact.
   *
   * @param value the number, not null
   * @param at where it begins
   */
  record JsonNumber(BigDecimal value, Position at) implements JsonValue {
    /**
     * Makes a number in memory.
     *
     * @param value the number, not null
     */
    public JsonNumber(BigDecimal value) {
      this(value, Position.NONE);
    }

    @Override
    public String kind() {
      return "number";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonNumber that && value.compareTo(that.value) == 0;
    }

    @Override
    public int hashCode() {
      return value.stripTrailingZeros().hashCode();
    }
  }

  /**
   * True or false.
   *
   * @param value the truth
   * @param at where it begins
   */
  record JsonBoolean(boolean value, Position at) implements JsonValue {
    /**
     * Makes a boolean in memory.
     *
     * @param value the truth
     */
    public JsonBoolean(boolean value) {
      this(value, Position.NONE);
    }

    @Override
    public String kind() {
      return "boolean";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonBoolean that && value == that.value;
    }

    @Override
    public int hashCode() {
      return Objects.hash(value);
    }
  }

  /**
   * The null literal; Ovenmark reads it as "unknown" or "absent".
   *
   * @param at where it begins
   */
  record JsonNull(Position at) implements JsonValue {
    @Override
    public String kind() {
      return "null";
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof JsonNull;
    }

    @Override
    public int hashCode() {
      return 0;
    }
  }
}
