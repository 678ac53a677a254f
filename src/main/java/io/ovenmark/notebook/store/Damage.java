package io.ovenmark.notebook.store;

/**
 * A Git object that cannot be read or is not what its id says.
 *
 * @param object its id, forty hexadecimal digits
 * @param message one sentence
 */
public record Damage(String object, String message) {}
