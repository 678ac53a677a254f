package io.ovenmark.notebook;

import io.ovenmark.change.Merged;
import java.util.List;

/** How carrying the main line's improvements into a variant ended. */
public sealed interface CarryOutcome {
  /**
   * They were carried over, as a merge commit.
   *
   * @param revision the variant's newest revision; its number did not grow when the formula itself
   *     did not change
   * @param keptAsInVariant files that both sides had changed and that stay as the variant has them
   */
  record Carried(Revision revision, List<String> keptAsInVariant) implements CarryOutcome {
    /** Copies the list. */
    public Carried {
      keptAsInVariant = List.copyOf(keptAsInVariant);
    }
  }

  /**
   * The variant holds everything of the main line already.
   *
   * @param newest the variant's newest revision
   */
  record NothingToCarry(Revision newest) implements CarryOutcome {}

  /**
   * Nothing was written, because both sides changed the same thing.
   *
   * @param merge what agrees, and for each disagreement both sides
   */
  record Undecided(Merged.Conflicting merge) implements CarryOutcome {}
}
