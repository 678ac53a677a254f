/**
 * What changed between two formulas, and how two lines of development are brought together, by the
 * stable ids of lines and oven stages. Bakes and the forms that they are typed into are merged in
 * the same manner. It may use {@code formula}, {@code bake}, {@code measure} and {@code json}; it
 * knows neither foods nor Git. Start with {@link io.ovenmark.change.FormulaDiff}, {@link
 * io.ovenmark.change.FormulaMerge} and {@link io.ovenmark.change.BakeMerge}.
 */
package io.ovenmark.change;
