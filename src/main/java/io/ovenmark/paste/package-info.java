/**
 * Reads ingredient lines, whole blocks and schema.org recipes as people paste them and proposes a
 * formula; what is doubtful is said, never guessed. It may use {@code formula}, {@code pantry},
 * {@code measure} and {@code json} only. Start with {@link io.ovenmark.paste.PastedFormula}.
 */
package io.ovenmark.paste;
