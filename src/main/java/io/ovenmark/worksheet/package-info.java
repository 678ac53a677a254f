/**
 * A formula worked out with its foods: grams, percentages, ratios, macros, and what could not be
 * known. It may use {@code formula}, {@code bake}, {@code pantry} and {@code measure}; it knows
 * neither files nor Git. Start with {@link io.ovenmark.worksheet.Worksheet}.
 */
package io.ovenmark.worksheet;
