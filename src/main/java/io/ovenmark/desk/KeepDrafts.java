package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Draft;
import io.ovenmark.notebook.Drafts;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Keeps formulas that are being edited, half typed as they may be, until they are saved as a
 * revision or thrown away.
 *
 * <pre>{@code
 * KeepDrafts verb = new KeepDrafts(desk);
 * DraftViews.DraftView draft =
 *     verb.begin(Optional.empty(), Optional.of("seeded-lupin-bun@7"), by);
 * verb.keep(draft.id(), draft.version(), new KeepDrafts.Typed(document, "", "Drier"), by);
 * }</pre>
 */
public final class KeepDrafts {
  private static final JsonText NOTHING_TYPED = new JsonText("{\"name\":\"\"}");

  private final Desk desk;
  private final Drafts drafts;

  /**
   * All that was typed.
   *
   * @param document the formula as JSON
   * @param shortName what a new formula shall be filed under; may be empty
   * @param note the note for saving it; may be empty
   */
  public record Typed(JsonText document, String shortName, String note) {
    /** Checks that nothing is null. */
    public Typed {
      requireNonNull(document, "document");
      requireNonNull(shortName, "shortName");
      requireNonNull(note, "note");
    }
  }

  /** A draft that was found, with what it holds. */
  record Found(Draft draft, DraftContent content) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public KeepDrafts(Desk desk) {
    this.desk = desk;
    drafts = new Drafts(desk.notebook());
  }

  /**
   * A new draft.
   *
   * @param document what was typed so far; empty to copy the base, or to begin with nothing
   * @param base address of the revision that it changes, the newest of a line when it names none;
   *     empty for a new formula
   * @param by who types, and when
   * @return the draft
   * @throws Refusal when there is no such revision
   */
  public DraftViews.DraftView begin(Optional<JsonText> document, Optional<String> base, By by) {
    if (base.isEmpty()) {
      JsonText typed = document.orElse(NOTHING_TYPED);
      return view(
          drafts.begin(
              DraftContent.KIND, new DraftContent(null, null, null, null, null, typed).json(), by));
    }
    Address address = desk.address(base.get());
    Revision revision;
    Formula formula;
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      ReviseFormula.Proposal disk = new ReviseFormula(desk).onDisk(address);
      revision = disk.base().orElseThrow(() -> notRevised(address));
      formula = disk.edited();
    } else {
      revision = desk.notebook().revision(address);
      formula = desk.notebook().formula(revision);
    }
    JsonText typed = document.orElseGet(() -> JsonText.of(FormulaCodec.write(formula)));
    DraftContent content =
        new DraftContent(
            revision.address().toString(), revision.commit().hex(), null, null, null, typed);
    return view(drafts.begin(DraftContent.KIND, content.json(), by));
  }

  private static Refusal notRevised(Address address) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        address.toString(),
        "The file of " + address.formula() + " has no revision yet.",
        "Commit it first with: ovenmark revise " + address.formula());
  }

  /**
   * All drafts into which something was typed; a damaged one is left out.
   *
   * @return those kept last first
   */
  public DraftViews.DraftList all() {
    List<DraftViews.DraftEntry> entries = new ArrayList<>();
    for (Draft draft : drafts.all(DraftContent.KIND)) {
      DraftContent.read(draft.content())
          .filter(content -> draft.version() > 1 || !isCopy(content))
          .ifPresent(content -> entries.add(entry(draft, content)));
    }
    return new DraftViews.DraftList(List.copyOf(entries));
  }

  /** Whether it says what its base says: a page was opened, and nothing typed. */
  private boolean isCopy(DraftContent content) {
    if (content.base() == null) {
      return false;
    }
    try {
      return desk.readable(desk.notebook().revision(Address.parse(content.base())))
          .map(formula -> JsonText.of(FormulaCodec.write(formula)).equals(content.document()))
          .orElse(false);
    } catch (Refusal gone) {
      return false;
    }
  }

  private static DraftViews.DraftEntry entry(Draft draft, DraftContent content) {
    Optional<Address> base = Optional.ofNullable(content.base()).map(Address::parse);
    return new DraftViews.DraftEntry(
        draft.id(),
        draft.version(),
        Json.time(draft.time()),
        draft.author(),
        Json.text(content.document().text(), "name"),
        base.map(Address::formula).orElse(null),
        base.flatMap(Address::variant).orElse(null),
        content.base());
  }

  /**
   * A draft.
   *
   * @param id its name
   * @return all that it holds
   * @throws Refusal when there is none, or its file is damaged
   */
  public DraftViews.DraftView show(String id) {
    return view(find(id).draft());
  }

  /**
   * Keeps what was typed.
   *
   * @param id the draft
   * @param version the version that it was typed into
   * @param typed all that it holds now
   * @param by who types, and when
   * @return the version that the next keeping must name
   * @throws Refusal when there is no such draft any more, or it was kept elsewhere since
   */
  public DraftViews.DraftKept keep(String id, long version, Typed typed, By by) {
    DraftContent next =
        find(id).content().with(typed.document(), typed.shortName(), typed.note());
    return kept(drafts.save(id, version, next.json(), by));
  }

  /**
   * Throws a draft away.
   *
   * @param id the draft
   * @param version the version that was looked at
   * @return what it held, so that it can be begun again
   * @throws Refusal when there is no such draft any more, or it was kept elsewhere since
   */
  public DraftViews.DraftView discard(String id, long version) {
    DraftViews.DraftView view = show(id);
    drafts.discard(id, version);
    return view;
  }

  /**
   * How a draft stands to the notebook.
   *
   * @param id its name
   * @return its version, and what came after its base
   * @throws Refusal when there is none
   */
  public DraftViews.DraftState state(String id) {
    Found found = find(id);
    return new DraftViews.DraftState(
        found.draft().version(),
        found.draft().author(),
        base(found.content()).map(this::newer).orElse(List.of()));
  }

  Found find(String id) {
    Draft draft = drafts.find(id).orElseThrow(() -> gone(id));
    DraftContent content = DraftContent.read(draft.content()).orElseThrow(() -> gone(id));
    return new Found(draft, content);
  }

  Draft save(Found found, DraftContent content, By by) {
    return drafts.save(found.draft().id(), found.draft().version(), content.json(), by);
  }

  private static Refusal gone(String id) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        id,
        "There is no such draft any more.",
        "It was saved or thrown away elsewhere; the formula's page shows what became of it.");
  }

  static DraftViews.DraftKept kept(Draft draft) {
    return new DraftViews.DraftKept(draft.id(), draft.version(), Json.time(draft.time()));
  }

  private DraftViews.DraftView view(Draft draft) {
    DraftContent content =
        DraftContent.read(draft.content()).orElseThrow(() -> gone(draft.id()));
    Optional<Revision> base = base(content);
    return new DraftViews.DraftView(
        draft.id(),
        draft.version(),
        Json.time(draft.time()),
        draft.author(),
        base.map(WriteParts::revision).orElse(null),
        Optional.ofNullable(content.shortName()).orElse(""),
        Optional.ofNullable(content.note()).orElse(""),
        content.document(),
        saved(content).map(WriteParts::revision).orElse(null),
        base.map(this::newer).orElse(List.of()));
  }

  /** The revision that a draft began from: the numbered one, while it is at its commit. */
  Optional<Revision> base(DraftContent content) {
    if (content.base() == null) {
      return Optional.empty();
    }
    Address address = Address.parse(content.base());
    Address atCommit =
        Address.parse(address.line() + "@" + requireNonNull(content.baseCommit(), "baseCommit"));
    return Optional.of(desk.notebook().revision(atCommit));
  }

  /** Revisions that came after a base. */
  List<WriteViews.RevisionView> newer(Revision base) {
    return desk.notebook().revisions(WriteParts.line(base.address())).stream()
        .filter(each -> each.number() > base.number())
        .map(WriteParts::revision)
        .toList();
  }

  /** The revision that an attempt to save ended in, when the draft could not be removed after. */
  Optional<Revision> saved(DraftContent content) {
    if (content.saving() == null) {
      return Optional.empty();
    }
    Address line = Address.parse(content.saving().line());
    if (desk.notebook().newestIfAny(line).isEmpty()) {
      return Optional.empty();
    }
    return desk.notebook().revisions(line).stream()
        .filter(
            each ->
                each.note().equals(content.saving().note())
                    && each.time().toEpochSecond() == content.saving().second())
        .findFirst();
  }
}
