package io.ovenmark.bake;

/**
 * What a number without a unit means in a form: the units that stood beside its fields when it was
 * typed. They belong to what was typed and never change afterwards, whatever a reader prefers.
 *
 * @param mass {@code g} or {@code oz}
 * @param temperature {@code C} or {@code F}
 */
public record TypedUnits(String mass, String temperature) {
  /** Grams and degrees Celsius. */
  public static final TypedUnits METRIC = new TypedUnits("g", "C");

  /** Takes grams and degrees Celsius for what is not one of the units. */
  public TypedUnits {
    mass = "oz".equals(mass) ? "oz" : "g";
    temperature = "F".equals(temperature) ? "F" : "C";
  }
}
