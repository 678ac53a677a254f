package io.ovenmark.notebook;

import io.ovenmark.change.Merged;
import java.util.List;

/** How an attempt to commit a formula ended. */
public sealed interface ReviseOutcome {
  /**
   * It was committed.
   *
   * @param revision the new revision
   * @param merged whether someone else's revision was merged in by meaning
   * @param foodsAdded slugs of foods that were copied from the built-in table into the pantry
   * @param leftAsEditedByHand files that stay on disk as somebody edited them
   */
  record Saved(
      Revision revision, boolean merged, List<String> foodsAdded, List<String> leftAsEditedByHand)
      implements ReviseOutcome {
    /** Copies the lists. */
    public Saved {
      foodsAdded = List.copyOf(foodsAdded);
      leftAsEditedByHand = List.copyOf(leftAsEditedByHand);
    }
  }

  /**
   * Nothing was committed, because the latest revision says the same already.
   *
   * @param latest that revision
   */
  record SameAsLatest(Revision latest) implements ReviseOutcome {}

  /**
   * Nothing was committed, because both sides changed the same thing.
   *
   * @param latest the revision that came in between
   * @param merge what agrees, and for each disagreement both sides
   */
  record Diverged(Revision latest, Merged.Conflicting merge) implements ReviseOutcome {}
}
