package io.ovenmark.worksheet;

/**
 * Something that a figure needed and that is not known.
 *
 * @param line id of the line
 * @param nutrient JSON name of the missing figure, {@code mass} for an amount that cannot be
 *     resolved, {@code food} for a food that the pantry does not have
 * @param why in words
 */
public record Unknown(String line, String nutrient, String why) {}
