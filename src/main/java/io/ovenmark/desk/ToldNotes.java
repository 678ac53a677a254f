package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.Excerpt;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.publish.share.Discretion;

/**
 * Notes as they are shared: without what speaks of other formulas, and, if so chosen, without what
 * others than the sharer wrote. A bake's notes are those of its baker.
 */
final class ToldNotes implements Excerpt.Notes {
  private final Discretion discretion;
  private final Author sharer;
  private final boolean othersNotes;

  ToldNotes(Discretion discretion, Author sharer, boolean othersNotes) {
    this.discretion = discretion;
    this.sharer = sharer;
    this.othersNotes = othersNotes;
  }

  @Override
  public String worded(String note, String otherwise, Author author) {
    return stays(author.name(), author.email())
        ? otherwise + " (the note stays with who wrote it)"
        : discretion.note(note, otherwise);
  }

  @Override
  public Bake told(Bake bake) {
    boolean go = bake.baker().map(name -> !stays(name, "")).orElse(othersNotes);
    return go ? bake : bake.withoutNotes();
  }

  private boolean stays(String name, String email) {
    boolean own =
        name.equals(sharer.name()) || !email.isEmpty() && email.equals(sharer.email());
    return !othersNotes && !own;
  }
}
