package io.ovenmark.lever;

/**
 * An ingredient of which only so much is at hand.
 *
 * @param food its name for people
 * @param haveGrams what is at hand
 * @param usedGrams what the scaled formula takes of it, before measuring
 * @param scarcest whether it decides how much can be made
 */
public record AtHand(String food, double haveGrams, double usedGrams, boolean scarcest) {}
