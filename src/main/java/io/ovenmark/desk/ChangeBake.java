package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.BakeFormReader;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.PieceText;
import io.ovenmark.change.BakeMerge;
import io.ovenmark.change.Choice;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds to a bake what is known later: masses after cooling, tasters' scores, findings, a note; or
 * takes the whole bake as somebody left it in a form, joined with what others changed meanwhile.
 *
 * <pre>{@code
 * new ChangeBake(desk).call("seeded-lupin-bun", "2026-09-14-1",
 *     new ChangeBake.Changes(List.of("a baked=82g liking=7,8"), List.of(), Optional.empty()), by);
 * }</pre>
 */
public final class ChangeBake {
  private static final int MOST_TRIES = 8;

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
   * A bake as it was left in a form.
   *
   * @param base the bake that the form was filled with, as {@link StartBake#filled} gave it
   * @param form the form
   * @param choices which side to take where somebody else changed the same, by field
   * @param against the bake that the choices were made against, as the conflict gave it; empty for
   *     none
   */
  public record Typed(
      String base, BakeForm form, Map<String, Choice> choices, Optional<String> against) {
    /** Copies the choices. */
    public Typed {
      requireNonNull(base, "base");
      requireNonNull(form, "form");
      choices = Map.copyOf(choices);
      requireNonNull(against, "against");
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
   * @throws Refusal when there is no such bake, nothing changes, a text is not understood, or
   *     somebody changed the bake meanwhile
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

  /**
   * Takes a bake as it was left in a form.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param typed the form, and what it was filled with
   * @param by who commits it, and when
   * @return changed, unchanged, or both sides of what somebody else changed meanwhile
   * @throws Refusal when there is no such bake or a field is not understood
   */
  public BakeFormViews.BakeChanged call(String formula, String id, Typed typed, By by) {
    BakeParts parts = new BakeParts(desk);
    Asked.slug("formula", formula);
    Bake base = base(formula, id, typed.base());
    Bake ours = left(base, typed.form(), by);
    for (int i = 1; ; i++) {
      Bake now = parts.bake(formula, id);
      String against = StartBake.text(now);
      Map<String, Choice> choices =
          typed.against().filter(against::equals).isPresent() ? typed.choices() : Map.of();
      BakeMerge.Outcome merged = BakeMerge.merge(base, ours, now, choices);
      Address line = parts.lineOf(now);
      boolean moved = !now.equals(base);
      if (!merged.isSettled()) {
        return new BakeFormViews.BakeChanged(
            "conflict",
            parts.view(now),
            moved,
            against,
            WriteParts.conflicts(merged.conflicts()),
            List.of());
      }
      if (merged.bake().equals(now)) {
        return outcome("unchanged", parts.written(now, line, List.of()), moved, against);
      }
      try {
        new RecordWriter(desk.notebook())
            .changeBake(line, now, merged.bake(), Map.of(), "Notes on the bake " + id, by);
        return outcome("changed", parts.written(merged.bake(), line, List.of()), moved, against);
      } catch (Refusal refusal) {
        if (refusal.reason() != Refusal.Reason.CONFLICT || i == MOST_TRIES) {
          throw refusal;
        }
      }
    }
  }

  private static BakeFormViews.BakeChanged outcome(
      String outcome, KitchenViews.BakeWritten written, boolean merged, String against) {
    return new BakeFormViews.BakeChanged(
        outcome, written.bake(), merged, against, List.of(), written.remarks());
  }

  /** The bake that a form was filled with. */
  static Bake base(String formula, String id, String text) {
    try {
      return BakeCodec.read("base", formula, id, text.getBytes(StandardCharsets.UTF_8));
    } catch (UnreadableException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "base",
          "What the form was filled with is not understood.",
          "Reload the page and try again.");
    }
  }

  private static Bake left(Bake base, BakeForm form, By by) {
    By there = new By(by.author(), by.time().withOffsetSameInstant(base.time().getOffset()));
    BakeFormReader.Reading read =
        BakeFormReader.read(form, Optional.of(base), WorkOutBake.clock(there));
    RecordTypedBake.refuseFaults(read);
    if (read.time().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "time",
          "A bake needs the time when it went into the oven.",
          "Write it as in \"2026-09-14 10:30\".");
    }
    try {
      return new Bake(
          base.formula(),
          base.id(),
          base.address(),
          base.blob(),
          read.time().get(),
          read.baker(),
          read.ambient(),
          read.note(),
          read.pieces(),
          read.findings(),
          base.photos(),
          base.extras());
    } catch (IllegalArgumentException e) {
      throw Refusal.of("bake", e);
    }
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
