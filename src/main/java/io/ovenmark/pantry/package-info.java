/**
 * Foods: their composition per 100 g, household weights, density, allergens and price, the built-in
 * table, and the reading of published food tables and package labels. It may use {@code measure}
 * and {@code json} only. Start with {@link io.ovenmark.pantry.Food}.
 */
package io.ovenmark.pantry;
