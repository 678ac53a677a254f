package io.ovenmark.effect;

import java.util.List;
import java.util.Optional;

/**
 * What moved together with one outcome.
 *
 * @param outcome the outcome
 * @param bakes bakes of which it is known
 * @param pieces pieces of which it is known
 * @param unknown pieces of which it is not known, which are left out
 * @param set pieces left out because a change is not known of them
 * @param missing what is missing before anything can be said; empty when something can
 * @param mean mean over the pieces
 * @param pieceDeviation how much pieces of one tray differ by chance, a standard deviation
 * @param bakeDeviation how much bakes differ by chance or by what was not noted
 * @param leftOut how many changes are known of too few pieces, or moved too rarely to be among
 *     those that are looked at
 * @param effects the changes that were looked at: those that stand out first, by how sure their
 *     direction is
 */
public record OutcomeEffects(
    Outcome outcome,
    int bakes,
    int pieces,
    int unknown,
    int set,
    Optional<String> missing,
    double mean,
    double pieceDeviation,
    double bakeDeviation,
    int leftOut,
    List<Effect> effects) {
  /** Copies the list. */
  public OutcomeEffects {
    effects = List.copyOf(effects);
  }
}
