/**
 * Why a finding came or went: likely causes held against the formula's own figures, what changed
 * between the bakes without and with it, and the plan of bakes that tells confounded changes apart.
 * It may use {@code compare}, {@code worksheet}, {@code goal} and what lies below them; it knows
 * neither Git nor JSON nor how it is shown. Start with {@link io.ovenmark.cause.Inquiry}.
 */
package io.ovenmark.cause;
