package io.ovenmark.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Fields that Ovenmark does not know. They are kept as they were read and written back after the
 * known ones, so that a newer program's data or a person's own notes survive. A value type: two are
 * equal when they hold the same names and values.
 */
public final class Extras {
  /** No unknown fields. */
  public static final Extras NONE = new Extras(Map.of());

  private final Map<String, JsonValue> members;

  private Extras(Map<String, JsonValue> members) {
    this.members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
  }

  /**
   * Keeps the given fields.
   *
   * @param members name to value in the order to be written
   * @return the extras, {@link #NONE} when empty
   */
  public static Extras of(Map<String, JsonValue> members) {
    return members.isEmpty() ? NONE : new Extras(members);
  }

  /**
   * The names of the fields.
   *
   * @return names in the order read
   */
  public Set<String> names() {
    return members.keySet();
  }

  /**
   * Whether there are none.
   *
   * @return true when empty
   */
  public boolean isEmpty() {
    return members.isEmpty();
  }

  /**
   * A field's value as canonical text, for showing and comparing.
   *
   * @param name the field
   * @return the text, or empty text when there is no such field
   */
  public String text(String name) {
    JsonValue value = members.get(name);
    return value == null ? "" : CanonicalJson.text(value).strip();
  }

  /**
   * Takes one field over from another set, or drops it where the other has none.
   *
   * @param name the field
   * @param other where to take it from
   * @return a new set
   */
  public Extras with(String name, Extras other) {
    Map<String, JsonValue> next = new LinkedHashMap<>(members);
    JsonValue value = other.members.get(name);
    if (value == null) {
      next.remove(name);
    } else {
      next.put(name, value);
    }
    return of(next);
  }

  Map<String, JsonValue> members() {
    return members;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Extras that && members.equals(that.members);
  }

  @Override
  public int hashCode() {
    return members.hashCode();
  }

  @Override
  public String toString() {
    return CanonicalJson.text(new JsonValue.JsonObject(members)).strip();
  }
}
