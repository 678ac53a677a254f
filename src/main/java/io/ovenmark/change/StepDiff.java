package io.ovenmark.change;

import java.util.List;

/** What became of one step of a method. Numbers count from 1, as people number steps. */
public sealed interface StepDiff {
  /**
   * The step is in both methods, in the same words.
   *
   * @param fromNumber its number before
   * @param toNumber its number after
   * @param text the step
   */
  record Kept(int fromNumber, int toNumber, String text) implements StepDiff {}

  /**
   * The step is only in the later method.
   *
   * @param toNumber its number after
   * @param text the step
   */
  record Added(int toNumber, String text) implements StepDiff {}

  /**
   * The step is only in the earlier method.
   *
   * @param fromNumber its number before
   * @param text the step
   */
  record Removed(int fromNumber, String text) implements StepDiff {}

  /**
   * The step was reworded: enough words stayed to take the two for one step.
   *
   * @param fromNumber its number before
   * @param toNumber its number after
   * @param words its words, removed ones before the ones added in their place
   */
  record Changed(int fromNumber, int toNumber, List<TextRun> words) implements StepDiff {
    /** Copies the list. */
    public Changed {
      words = List.copyOf(words);
    }
  }
}
