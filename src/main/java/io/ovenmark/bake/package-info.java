/**
 * Bakes: one tray of pieces of one revision, what was measured, found, rated and photographed;
 * immutable records and their canonical JSON. It may use {@code measure} and {@code json} only. Start
 * with {@link io.ovenmark.bake.Bake}.
 */
package io.ovenmark.bake;
