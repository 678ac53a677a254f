/**
 * What changed between two formulas, and how two lines of development are brought together, by the
 * stable ids of lines and oven stages. It may use {@code formula}, {@code measure} and the unknown
 * fields of {@code json}; it knows neither foods nor Git. Start with {@link
 * io.ovenmark.change.FormulaDiff} and {@link io.ovenmark.change.FormulaMerge}.
 */
package io.ovenmark.change;
