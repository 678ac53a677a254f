/**
 * A formula: what to weigh, what to do, how to bake it, what it yields; immutable records and their
 * canonical JSON. It may use {@code measure} and {@code json} only. Start with {@link
 * io.ovenmark.formula.Formula} and {@link io.ovenmark.formula.FormulaCodec}.
 */
package io.ovenmark.formula;
