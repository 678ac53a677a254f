package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds to a bake what is known later: masses after cooling, tasters' scores, findings, a note.
 *
 * <pre>{@code
 * new ChangeBake(desk).call("seeded-lupin-bun", "2026-09-14-1",
 *     new ChangeBake.Changes(List.of("a baked=82g liking=7,8"), List.of(), Optional.empty()), by);
 * }</pre>
 */
public final class ChangeBake {
  private final Desk desk;

  /**
   * What is to be changed.
   *
   * @param pieces pieces as {@link PieceText} reads them; a letter that the bake has changes that
   *     piece, another adds one
   * @param findings findings of the whole tray to be added
   * @param note takes the place of the bake's note; empty to leave it
   */
  public record Changes(List<String> pieces, List<String> findings, Optional<String> note) {
    /** Copies the lists. */
    public Changes {
      pieces = List.copyOf(pieces);
      findings = List.copyOf(findings);
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ChangeBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Changes it.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param changes what to change
   * @param by who commits it, and when
   * @return the bake as it is now
   * @throws Refusal when there is no such bake, nothing changes, a text is not understood, or somebody
   *     changed the bake meanwhile
   */
  public KitchenViews.BakeWritten call(String formula, String id, Changes changes, By by) {
    BakeParts parts = new BakeParts(desk);
    Bake before = parts.bake(formula, id);
    Bake after = changed(before, changes);
    if (after.equals(before)) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          id,
          "The bake says all of that already.",
          "Say what changes, such as --piece \"a baked=82g\".");
    }
    Address line = parts.lineOf(before);
    new RecordWriter(desk.notebook())
        .changeBake(line, before, after, Map.of(), "Notes on the bake " + id, by);
    return parts.written(after, line, List.of());
  }

  private static Bake changed(Bake bake, Changes changes) {
    List<String> findings = new ArrayList<>(bake.findings());
    for (String word : changes.findings()) {
      String finding = FindingVocabulary.of(word).map(FindingVocabulary::word).orElse(word.strip());
      if (!finding.isEmpty() && !findings.contains(finding)) {
        findings.add(finding);
      }
    }
    try {
      return new Bake(
          bake.formula(),
          bake.id(),
          bake.address(),
          bake.blob(),
          bake.time(),
          bake.baker(),
          bake.ambient(),
          changes.note().map(String::strip).or(bake::note).filter(text -> !text.isEmpty()),
          PieceText.read(bake.pieces(), changes.pieces()),
          findings,
          bake.photos(),
          bake.extras());
    } catch (IllegalArgumentException e) {
      throw Refusal.of("piece", e);
    }
  }
}
