package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.Extras;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.SheetPlan;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.TastingKind;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * Sets up a blind tasting: draws codes and orders, and commits its sheets.
 *
 * <pre>{@code
 * PlanTasting.Request request =
 *     new PlanTasting.Request(
 *         "triangle", List.of("lupin-bun@8", "lupin-bun@9"), 12, "", List.of(), "", null);
 * TastingViews.TastingSheet tasting = new PlanTasting(desk).call(request, by);
 * }</pre>
 */
public final class PlanTasting {
  private static final SecureRandom SEEDS = new SecureRandom();

  private final Desk desk;

  /**
   * What is to be tasted.
   *
   * @param kind key of the kind
   * @param samples as {@link Sample.Named} reads them; the tasting is kept under the first one's
   *     formula
   * @param tasters how many sheets, 1 or more
   * @param question what is asked; blank for the kind's own
   * @param attributes what is judged just-about-right
   * @param note for the organiser; blank for none
   * @param seed what codes and orders are drawn from; null for a random one
   */
  public record Request(
      String kind,
      List<String> samples,
      int tasters,
      String question,
      List<String> attributes,
      String note,
      Integer seed) {
    /** Null stands for nothing. */
    public Request {
      kind = kind == null ? "" : kind;
      samples = samples == null ? List.of() : List.copyOf(samples);
      question = question == null ? "" : question.strip();
      attributes =
          attributes == null
              ? List.of()
              : attributes.stream().map(String::strip).filter(each -> !each.isEmpty()).toList();
      note = note == null ? "" : note;
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public PlanTasting(Desk desk) {
    this.desk = desk;
  }

  /**
   * Sets it up under the next free number of its day.
   *
   * @param request what is to be tasted
   * @param by who commits it, and when
   * @return the tasting as its organiser sees it
   * @throws Refusal when a sample is not there, or the kind cannot be done like that
   */
  public TastingViews.TastingSheet call(Request request, By by) {
    TastingKind kind = Asked.read("kind", () -> TastingKind.parse(request.kind()));
    List<Sample> samples = samples(request.samples());
    requireCount(kind, samples, request.tasters());
    String formula = samples.get(0).formula();
    int seed = request.seed() == null ? SEEDS.nextInt(Integer.MAX_VALUE) : request.seed();
    TastingParts parts = new TastingParts(desk);
    while (true) {
      String id = parts.tastings().freeId(formula, by.time().toLocalDate());
      Tasting tasting =
          Asked.read(
              "tasting",
              () ->
                  new Tasting(
                      formula,
                      id,
                      kind,
                      request.question().isEmpty() ? kind.question() : request.question(),
                      by.time(),
                      seed,
                      samples,
                      request.attributes(),
                      Optional.of(request.note()),
                      SheetPlan.draw(kind, samples.size(), request.tasters(), seed),
                      Extras.NONE));
      try {
        parts.tastings().add(tasting, note(tasting), by);
        return new ShowTasting(desk).call(formula, id);
      } catch (Refusal refusal) {
        if (refusal.reason() != Refusal.Reason.EXISTS) {
          throw refusal;
        }
      }
    }
  }

  /**
   * Adds sheets for more tasters; those that there are stay as they are.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @param more how many, 1 or more
   * @param by who commits it, and when
   * @return the tasting as its organiser sees it
   * @throws Refusal when there is no such tasting, or that would be too many
   */
  public TastingViews.TastingSheet more(String formula, String id, int more, By by) {
    TastingParts parts = new TastingParts(desk);
    Tasting before = parts.tasting(formula, id);
    Tasting after = Asked.read("sheets", () -> before.withMore(more));
    parts
        .tastings()
        .change(
            before,
            after,
            "Tasting " + id + " of " + formula + ": " + after.sheets().size() + " sheets",
            by);
    return new ShowTasting(desk).call(formula, id);
  }

  private static String note(Tasting tasting) {
    return "Tasting " + tasting.id() + " of " + tasting.formula() + ": " + tasting.kind().key()
        + ", " + tasting.sheets().size()
        + (tasting.sheets().size() == 1 ? " sheet" : " sheets");
  }

  private static void requireCount(TastingKind kind, List<Sample> samples, int tasters) {
    boolean fits =
        samples.size() >= kind.leastSamples() && samples.size() <= kind.mostSamples();
    if (!fits) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "samples",
          kind.label() + " cannot be done with " + samples.size()
              + (samples.size() == 1 ? " sample." : " samples."),
          kind.leastSamples() == kind.mostSamples()
              ? "Name " + kind.leastSamples() + " samples."
              : "Name " + kind.leastSamples() + " to " + kind.mostSamples() + " samples.");
    }
    if (tasters < 1 || tasters > Tasting.MOST_SHEETS) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "tasters",
          "A tasting cannot have " + tasters + " tasters.",
          "Say how many taste, 1 to " + Tasting.MOST_SHEETS + ".");
    }
  }

  private List<Sample> samples(List<String> texts) {
    List<Sample> samples = new ArrayList<>();
    for (String text : texts) {
      samples.add(sample(text));
    }
    if (new HashSet<>(samples.stream().map(Sample::text).toList()).size() < samples.size()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "samples",
          "A sample stands twice.",
          "Name different revisions, bakes or pieces.");
    }
    return samples;
  }

  private Sample sample(String text) {
    Sample.Named named = Asked.read("samples", () -> Sample.Named.parse(text));
    Address address = desk.address(named.address());
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "A sample is of a revision, and the file on disk is none yet.",
          "Commit it with: ovenmark revise " + address.line());
    }
    Revision revision = desk.notebook().revision(address);
    named.bake().ifPresent(id -> requireBake(revision, id, named.piece()));
    return new Sample(
        revision.address().toString(),
        revision.blob().hex(),
        named.bake(),
        named.piece(),
        Extras.NONE);
  }

  private void requireBake(Revision revision, String id, Optional<String> piece) {
    Bake bake = new BakeParts(desk).bake(revision.address().formula(), id);
    if (!bake.blob().equals(revision.blob().hex())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "bake " + id,
          "The bake " + id + " is of " + bake.address() + ", not of " + revision.address() + ".",
          "Name the revision that was baked, as in " + bake.address() + ":" + id + ".");
    }
    List<String> pieces = bake.pieces().stream().map(Piece::id).toList();
    if (piece.isPresent() && !pieces.contains(piece.get())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "piece " + piece.get(),
          "The bake " + id + " has no piece \"" + piece.get() + "\".",
          pieces.isEmpty()
              ? "Leave the piece out."
              : "Its pieces are " + String.join(", ", pieces) + ".");
    }
  }
}
