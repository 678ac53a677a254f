package io.ovenmark.lever;

/**
 * What a tin takes of a dough.
 *
 * @param tin the tin
 * @param doughGrams dough for one tin
 * @param gramsPerMillilitre dough for a millilitre of the tin
 * @param because where that comes from, in words
 */
public record TinFill(Tin tin, double doughGrams, double gramsPerMillilitre, String because) {}
