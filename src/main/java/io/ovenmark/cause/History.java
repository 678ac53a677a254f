package io.ovenmark.cause;

import io.ovenmark.measure.ShownUnits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What became of one finding over the bakes of a line of history.
 *
 * @param finding the word
 * @param bakes the judged bakes, oldest first
 * @param unjudged bakes on which nothing was found or noted at all, which tell nothing
 * @param turns where it came or went, oldest first
 */
public record History(String finding, List<Baked> bakes, int unjudged, List<Turn> turns) {

  /** How a finding stands. */
  public enum Standing {
    /** There is no judged bake. */
    NOT_BAKED,
    /** No bake has it. */
    NEVER,
    /** Every bake has it. */
    ALWAYS,
    /** The newest bake has it, some earlier one has not. */
    PRESENT,
    /** The newest bake has it not, some earlier one had. */
    GONE
  }

  /** Copies the lists. */
  public History {
    bakes = List.copyOf(bakes);
    turns = List.copyOf(turns);
  }

  /**
   * Follows a finding.
   *
   * @param finding its word
   * @param all all bakes, oldest first
   * @param units how sentences state masses and temperatures
   * @return what became of it
   */
  public static History of(String finding, List<Baked> all, ShownUnits units) {
    List<Baked> judged = all.stream().filter(Baked::isJudged).toList();
    List<Turn> turns = new ArrayList<>();
    for (int i = 1; i < judged.size(); i++) {
      if (judged.get(i).has(finding) != judged.get(i - 1).has(finding)) {
        turns.add(Turn.between(finding, judged.get(i - 1), judged.get(i), units));
      }
    }
    return new History(finding, judged, all.size() - judged.size(), turns);
  }

  /**
   * All findings of some bakes.
   *
   * @param all bakes, oldest first
   * @return the words, those of the newest bake first
   */
  public static List<String> findings(List<Baked> all) {
    List<Baked> newest = new ArrayList<>(all);
    Collections.reverse(newest);
    Set<String> words = new LinkedHashSet<>();
    newest.forEach(baked -> words.addAll(baked.findings()));
    return List.copyOf(words);
  }

  /**
   * How the finding stands.
   *
   * @return by the judged bakes
   */
  public Standing standing() {
    if (bakes.isEmpty()) {
      return Standing.NOT_BAKED;
    }
    long with = bakes.stream().filter(baked -> baked.has(finding)).count();
    if (with == 0) {
      return Standing.NEVER;
    }
    if (with == bakes.size()) {
      return Standing.ALWAYS;
    }
    return bakes.get(bakes.size() - 1).has(finding) ? Standing.PRESENT : Standing.GONE;
  }

  /**
   * The last turn of a sort.
   *
   * @param came whether it came or went
   * @return the turn; empty when there was none
   */
  public Optional<Turn> last(boolean came) {
    return turns.stream().filter(turn -> turn.came() == came).reduce((a, b) -> b);
  }

  /**
   * Judged bakes of which some pieces have the finding and others have not.
   *
   * @return the bakes, oldest first
   */
  public List<Baked> divided() {
    return bakes.stream()
        .filter(baked -> !baked.with(finding).isEmpty() && !baked.without(finding).isEmpty())
        .toList();
  }
}
