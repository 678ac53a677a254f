/**
 * A notebook: formulas with their revisions and variants, bakes, photos, foods and goals, kept in a
 * Git repository. It may use everything below it and reaches Git through {@code notebook.store} and
 * {@code notebook.index} only; it knows neither console nor HTTP. Start with {@link
 * io.ovenmark.notebook.Notebook} and {@link io.ovenmark.notebook.Address}.
 */
package io.ovenmark.notebook;
