package io.ovenmark.notebook;

import io.ovenmark.notebook.index.Entry;
import io.ovenmark.notebook.index.History;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Difference;
import io.ovenmark.notebook.store.GitStore;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Finds the revisions of formulas: by address, by commit, along their lines of history. */
final class Revisions {
  private static final Pattern COMMIT = Pattern.compile("[0-9a-f]{7,40}");

  /** Trailers that are read by this program and not shown as a part of the note. */
  static final Set<String> OWN_TRAILERS =
      Set.of(
          FormulaWriter.RESTORES,
          VariantWriter.CARRIES,
          RecordWriter.UNDOES,
          IncomingFormula.TAKES_IN,
          TakenAlong.TAKES_IN_WITH);

  private final GitStore store;
  private final History history;

  Revisions(GitStore store, History history) {
    this.store = store;
    this.history = history;
  }

  List<String> variants(String formula) {
    String prefix = Layout.VARIANTS + formula + "/";
    return store.branches(prefix).keySet().stream()
        .map(branch -> branch.substring(prefix.length()))
        .filter(Address::isVariant)
        .toList();
  }

  List<Address> lines(String formula) {
    List<Address> lines = new ArrayList<>();
    lines.add(Address.latest(formula, Optional.empty()));
    variants(formula).forEach(name -> lines.add(Address.latest(formula, Optional.of(name))));
    return lines;
  }

  Optional<Address> lineOfBranch(String formula, String branch) {
    return lines(formula).stream().filter(line -> line.branch().equals(branch)).findFirst();
  }

  List<Revision> all(Address line) {
    requireVariant(line);
    List<Revision> revisions =
        revisions(line, history.formula(line.branch(), Layout.formula(line.formula())));
    if (revisions.isEmpty()) {
      throw noFormula(line.formula());
    }
    return revisions;
  }

  private static List<Revision> revisions(Address line, List<Entry> entries) {
    return entries.stream()
        .filter(entry -> !entry.isDeletion())
        .map(entry -> revision(line, entry))
        .toList();
  }

  Optional<Revision> newest(Address line) {
    return history
        .latest(line.branch(), Layout.formula(line.formula()))
        .filter(entry -> !entry.isDeletion())
        .map(entry -> revision(line, entry));
  }

  Revision required(Address line) {
    requireVariant(line);
    return newest(line).orElseThrow(() -> noFormula(line.formula()));
  }

  /** The newest revision of a line at one of its commits. */
  Revision at(Address line, CommitId commit) {
    List<Revision> revisions =
        revisions(line, history.formulaAt(commit, Layout.formula(line.formula())));
    if (revisions.isEmpty()) {
      throw noFormula(line.formula());
    }
    return revisions.get(revisions.size() - 1);
  }

  int forkNumber(Address variant) {
    return history
        .fork(variant.branch())
        .flatMap(commit -> history.latestAt(commit, Layout.formula(variant.formula())))
        .map(Entry::number)
        .orElse(0);
  }

  int nextNumber(Address line) {
    return history
        .latest(line.branch(), Layout.formula(line.formula()))
        .map(entry -> entry.number() + 1)
        .orElse(1);
  }

  Revision find(Address address) {
    return switch (address.point().kind()) {
      case LATEST, EDITED -> required(address);
      case NUMBERED -> {
        requireVariant(address);
        yield history
            .at(address.branch(), Layout.formula(address.formula()), address.point().number())
            .filter(entry -> !entry.isDeletion())
            .map(entry -> revision(address, entry))
            .orElseThrow(() -> noRevision(address));
      }
      case COMMIT -> atCommit(address);
    };
  }

  CommitId commit(Address address) {
    return store.resolve(address.point().commit()).orElseThrow(() -> noRevision(address));
  }

  private Revision atCommit(Address address) {
    requireVariant(address);
    CommitId commit = commit(address);
    List<Entry> entries = history.formulaAt(commit, Layout.formula(address.formula()));
    if (entries.isEmpty() || entries.get(entries.size() - 1).isDeletion()) {
      throw noRevision(address);
    }
    return placed(address, entries.get(entries.size() - 1));
  }

  /** A revision under the first line of history that it stands on, else under its commit. */
  private Revision placed(Address asked, Entry entry) {
    List<Address> lines = new ArrayList<>();
    if (asked.variant().isPresent()) {
      lines.add(asked);
    }
    lines.addAll(lines(asked.formula()));
    for (Address line : lines) {
      boolean stands =
          history
              .at(line.branch(), Layout.formula(line.formula()), entry.number())
              .filter(found -> found.commit().equals(entry.commit()))
              .isPresent();
      if (stands) {
        return revision(line, entry);
      }
    }
    Address alone = Address.latest(asked.formula(), Optional.empty());
    return revision(alone.atCommit(entry.commit().hex()), entry.number(), entry);
  }

  Optional<Revision> before(Revision revision) {
    List<Entry> entries = history.formulaAt(revision.commit(), revision.path());
    for (int i = entries.size() - 2; i >= 0; i--) {
      if (!entries.get(i).isDeletion()) {
        Entry entry = entries.get(i);
        boolean numbered = revision.address().point().kind() == Address.Point.Kind.NUMBERED;
        return Optional.of(
            numbered ? revision(revision.address(), entry) : placed(revision.address(), entry));
      }
    }
    return Optional.empty();
  }

  Optional<Address> addressOfCommit(String text) {
    String hex = text.strip().toLowerCase(Locale.ROOT);
    if (!COMMIT.matcher(hex).matches()) {
      return Optional.empty();
    }
    return store.resolve(hex).flatMap(this::changedFormula).map(slug -> named(slug, hex));
  }

  private Address named(String slug, String hex) {
    Address address = Address.latest(slug, Optional.empty()).atCommit(hex);
    return Address.latest(slug, find(address).address().variant()).atCommit(hex);
  }

  /** The one formula that a commit made or changed; of a carrying over the one it was for. */
  private Optional<String> changedFormula(CommitId commit) {
    CommitFacts facts = store.facts(commit);
    SortedMap<String, Difference> files =
        store.differences(facts.parents().stream().findFirst(), commit);
    Set<String> changed = new TreeSet<>();
    files.forEach(
        (path, difference) -> {
          if (difference.to().isPresent()) {
            Layout.slugIn(Layout.FORMULAS, path).ifPresent(changed::add);
          }
        });
    String carried = facts.trailers().get(VariantWriter.CARRIES);
    if (carried != null && changed.contains(carried.split("[@/ ]", 2)[0])) {
      return Optional.of(carried.split("[@/ ]", 2)[0]);
    }
    return changed.size() == 1 ? changed.stream().findFirst() : Optional.empty();
  }

  /** Whether a formula is, or ever was, on the main line or a variant. */
  boolean isKnown(String formula) {
    return nextNumber(Address.latest(formula, Optional.empty())) > 1
        || !variants(formula).isEmpty();
  }

  static Revision revision(Address line, Entry entry) {
    Address address = Address.latest(line.formula(), line.variant()).at(entry.number());
    return revision(address, entry.number(), entry);
  }

  private static Revision revision(Address address, int number, Entry entry) {
    return new Revision(
        address,
        number,
        entry.commit(),
        entry.path(),
        entry.blob().orElseThrow(),
        entry.time(),
        entry.author(),
        entry.subject(),
        details(entry),
        entry.trailers(),
        entry.merge());
  }

  /** What a person wrote in the form of trailers belongs to the note. */
  private static String details(Entry entry) {
    StringBuilder details = new StringBuilder(entry.body());
    String between = details.isEmpty() ? "" : "\n\n";
    for (Map.Entry<String, String> trailer : entry.trailers().entrySet()) {
      if (!OWN_TRAILERS.contains(trailer.getKey())) {
        details.append(between).append(trailer.getKey()).append(": ").append(trailer.getValue());
        between = "\n";
      }
    }
    return details.toString();
  }

  private void requireVariant(Address line) {
    if (line.variant().isPresent() && store.head(line.branch()).isEmpty()) {
      List<String> variants = variants(line.formula());
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          line.line(),
          "There is no variant \"" + line.variant().get() + "\" of " + line.formula() + ".",
          variants.isEmpty()
              ? "It has no variants yet."
              : "Its variants are " + String.join(", ", variants) + ".");
    }
  }

  private static Refusal noFormula(String slug) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        slug,
        "There is no formula \"" + slug + "\" in this notebook.",
        "List what there is with: ovenmark list");
  }

  private Refusal noRevision(Address address) {
    List<Revision> all;
    try {
      all = all(address);
    } catch (Refusal refusal) {
      return refusal;
    }
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        address.toString(),
        "There is no revision " + address + ".",
        "Its revisions are " + all.get(0).number() + " to " + all.get(all.size() - 1).number()
            + "; see: ovenmark timeline " + address.line());
  }
}
