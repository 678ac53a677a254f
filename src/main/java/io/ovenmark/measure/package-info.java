/**
 * Units, amounts as people write them, temperatures, and numbers that may be known only in part. It
 * uses nothing of Ovenmark and, outside the JDK, only the units of measurement library. Start with
 * {@link io.ovenmark.measure.Quantity} and {@link io.ovenmark.measure.Amount}.
 */
package io.ovenmark.measure;
