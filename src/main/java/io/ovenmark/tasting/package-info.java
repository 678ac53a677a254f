/**
 * Blind tastings: codes and orders of serving, the file of a tasting, and what its answers can and
 * cannot tell. It may use {@code measure}, {@code json} and the records of formulas, bakes and
 * foods, and is the package that knows the statistics library's tests; it knows neither files nor Git.
 * Start with {@link io.ovenmark.tasting.Tasting}, {@link io.ovenmark.tasting.SheetPlan} and {@link
 * io.ovenmark.tasting.Results}.
 */
package io.ovenmark.tasting;
