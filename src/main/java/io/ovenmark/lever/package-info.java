/**
 * What to change so that a figure comes to a wanted value, and how much to weigh for another size
 * or another amount at hand. It may use {@code worksheet}, {@code goal} and below and is the only
 * package that knows the solver; it knows neither files nor Git. Start with {@link
 * io.ovenmark.lever.Levers} and {@link io.ovenmark.lever.Scaling}.
 */
package io.ovenmark.lever;
