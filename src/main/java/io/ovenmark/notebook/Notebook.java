package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.index.Entry;
import io.ovenmark.notebook.index.History;
import io.ovenmark.notebook.index.IndexedHistory;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.notebook.store.Write;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A notebook, open: its formulas, their histories, and what belongs to them.
 *
 * <pre>{@code
 * try (Notebook notebook = Notebook.open(folder)) {
 *   Revision latest = notebook.revision(Address.parse("seeded-lupin-bun"));
 *   Formula formula = notebook.formula(latest);
 *   new FormulaWriter(notebook).revise(latest, formula, "Drier dough", by);
 * }
 * }</pre>
 *
 * <p>It may be used by many threads, and other programs may write to the same folder meanwhile.
 * Methods throw {@link Refusal} for what a person can mend, {@link StoreException} for what the
 * repository refuses and {@link io.ovenmark.json.UnreadableException} for a damaged file.
 */
public final class Notebook implements AutoCloseable {
  private final GitStore store;
  private final History history;
  private final Decoder decoder;
  private final Folders folders;

  private Notebook(GitStore store) {
    this.store = store;
    this.history = new IndexedHistory(store);
    this.decoder = new Decoder(store);
    this.folders = new Folders(store);
  }

  /**
   * Makes a notebook in a folder that is empty or does not exist.
   *
   * @param folder where
   * @param settings its settings
   * @param by who makes it, and when
   * @return the notebook, open
   * @throws Refusal when there is a notebook already
   */
  public static Notebook create(Path folder, NotebookSettings settings, By by) {
    GitStore store = GitStore.create(folder);
    boolean made = false;
    try {
      Optional<CommitId> head = store.head(Layout.MAIN);
      if (head.isPresent() && store.blob(head.get(), Layout.SETTINGS).isPresent()) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            folder.toString(),
            "There is a notebook in this folder already.",
            "Choose another folder, or leave out the creation.");
      }
      store.write(
          Write.to(Layout.MAIN, head, by.author(), by.time(), "Begin the notebook")
              .put(Layout.SETTINGS, settings.write()));
      made = true;
      return new Notebook(store);
    } finally {
      if (!made) {
        store.close();
      }
    }
  }

  /**
   * Opens a notebook.
   *
   * @param folder the folder that holds {@code notebook.json}
   * @return the notebook
   * @throws Refusal when it is none, or of a newer format than can be read
   */
  public static Notebook open(Path folder) {
    GitStore store = openStore(folder);
    boolean opened = false;
    try {
      Optional<CommitId> head = store.head(Layout.MAIN);
      if (head.isEmpty() || store.blob(head.get(), Layout.SETTINGS).isEmpty()) {
        throw new Refusal(
            Refusal.Reason.NOT_A_NOTEBOOK,
            folder.toString(),
            "This Git repository has no notebook.json on its branch main.",
            "Make it a notebook with: ovenmark new --notebook " + folder);
      }
      Notebook notebook = new Notebook(store);
      int format = notebook.latest().settings().format();
      if (format > NotebookSettings.FORMAT) {
        throw new Refusal(
            Refusal.Reason.NOT_A_NOTEBOOK,
            Layout.SETTINGS,
            "The notebook is of format " + format + ", this program reads up to "
                + NotebookSettings.FORMAT + ".",
            "Use a newer Ovenmark.");
      }
      opened = true;
      return notebook;
    } finally {
      if (!opened) {
        store.close();
      }
    }
  }

  private static GitStore openStore(Path folder) {
    try {
      return GitStore.open(folder);
    } catch (StoreException e) {
      if (e.reason() == StoreException.Reason.NOT_A_REPOSITORY) {
        throw new Refusal(
            Refusal.Reason.NOT_A_NOTEBOOK,
            folder.toString(),
            "There is no notebook in this folder.",
            "Make one with: ovenmark new --notebook " + folder);
      }
      throw e;
    }
  }

  /**
   * The notebook's folder.
   *
   * @return an absolute path
   */
  public Path folder() {
    return store.directory();
  }

  /**
   * What the main line holds now.
   *
   * @return the contents at its newest commit
   */
  public Contents latest() {
    return at(head(Layout.MAIN));
  }

  /**
   * What the notebook held at a commit.
   *
   * @param commit the commit
   * @return its contents
   */
  public Contents at(CommitId commit) {
    return new Contents(folders, decoder, commit);
  }

  /**
   * What the branch of a line of history holds now.
   *
   * @param line a formula or a variant
   * @return the contents at the branch's newest commit
   */
  public Contents latest(Address line) {
    return at(head(line.branch()));
  }

  /**
   * The variants of a formula.
   *
   * @param formula slug of the formula
   * @return their names in alphabetical order
   */
  public List<String> variants(String formula) {
    String prefix = Layout.VARIANTS + formula + "/";
    return store.branches(prefix).keySet().stream()
        .map(branch -> branch.substring(prefix.length()))
        .toList();
  }

  /**
   * The revisions of a line of history.
   *
   * @param line a formula or a variant; its point does not count
   * @return oldest first; a variant's begin with those before its fork
   * @throws Refusal when there is no such formula or variant
   */
  public List<Revision> revisions(Address line) {
    requireVariant(line);
    List<Entry> entries = history.formula(line.branch(), Layout.formula(line.formula()));
    if (entries.isEmpty()) {
      throw noFormula(line.formula());
    }
    return entries.stream().filter(entry -> !entry.isDeletion()).map(e -> revision(line, e)).toList();
  }

  /**
   * The newest revision of a line of history.
   *
   * @param line a formula or a variant; its point does not count
   * @return the revision
   * @throws Refusal when there is none, or the formula was deleted
   */
  public Revision newest(Address line) {
    requireVariant(line);
    return history
        .latest(line.branch(), Layout.formula(line.formula()))
        .filter(entry -> !entry.isDeletion())
        .map(entry -> revision(line, entry))
        .orElseThrow(() -> noFormula(line.formula()));
  }

  /**
   * The number of the revision at which a variant left the main line.
   *
   * @param variant a variant
   * @return the number; 0 when the formula did not exist yet
   */
  public int forkNumber(Address variant) {
    return history
        .fork(variant.branch())
        .map(commit -> history.formulaAt(commit, Layout.formula(variant.formula())))
        .filter(entries -> !entries.isEmpty())
        .map(entries -> entries.get(entries.size() - 1).number())
        .orElse(0);
  }

  /**
   * Finds a revision.
   *
   * @param address latest, numbered or by commit
   * @return the revision
   * @throws Refusal when there is none
   */
  public Revision revision(Address address) {
    return switch (address.point().kind()) {
      case LATEST, EDITED -> newest(address);
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

  /**
   * The commit that an address names.
   *
   * @param address an address by commit
   * @return the full commit id
   * @throws Refusal when there is no such commit
   */
  public CommitId commit(Address address) {
    return store.resolve(address.point().commit()).orElseThrow(() -> noRevision(address));
  }

  private Revision atCommit(Address address) {
    CommitId commit = commit(address);
    List<Entry> entries = history.formulaAt(commit, Layout.formula(address.formula()));
    if (entries.isEmpty() || entries.get(entries.size() - 1).isDeletion()) {
      throw noRevision(address);
    }
    Entry entry = entries.get(entries.size() - 1);
    Address line = lineOf(address, entry);
    return revision(line, entry);
  }

  /** The line of history that the entry stands on: the asked one, the main line, or a variant's. */
  private Address lineOf(Address address, Entry entry) {
    List<Address> lines = new ArrayList<>();
    if (address.variant().isPresent()) {
      lines.add(Address.latest(address.formula(), address.variant()));
    }
    lines.addAll(lines(address.formula()));
    for (Address line : lines) {
      boolean stands =
          history
              .at(line.branch(), Layout.formula(line.formula()), entry.number())
              .filter(found -> found.commit().equals(entry.commit()))
              .isPresent();
      if (stands) {
        return line;
      }
    }
    return address;
  }

  /**
   * The lines of history of a formula.
   *
   * @param formula its slug
   * @return the main line, if the formula is on it, then the variants
   */
  public List<Address> lines(String formula) {
    List<Address> lines = new ArrayList<>();
    lines.add(Address.latest(formula, Optional.empty()));
    variants(formula).forEach(name -> lines.add(Address.latest(formula, Optional.of(name))));
    return lines;
  }

  /**
   * A revision's formula.
   *
   * @param revision the revision
   * @return the formula
   * @throws io.ovenmark.json.UnreadableException when that content is damaged
   */
  public Formula formula(Revision revision) {
    return decoder.formula(revision.path(), revision.blob());
  }

  /**
   * The bakes of a formula, of the main line and all variants.
   *
   * @param formula its slug
   * @return oldest first
   */
  public List<Bake> bakes(String formula) {
    Map<String, Bake> bakes = new LinkedHashMap<>();
    for (Address line : lines(formula)) {
      Optional<CommitId> head = store.head(line.branch());
      if (head.isPresent()) {
        bakeFiles(head.get(), formula)
            .forEach((path, blob) -> bakes.putIfAbsent(path, decoder.bake(formula, path, blob)));
      }
    }
    List<Bake> sorted = new ArrayList<>(bakes.values());
    sorted.sort(Comparator.comparing(Bake::time).thenComparing(Bake::id));
    return sorted;
  }

  /** The names of a formula's bakes on all its lines of history, readable or not. */
  SortedSet<String> bakeIds(String formula) {
    SortedSet<String> ids = new TreeSet<>();
    for (Address line : lines(formula)) {
      store
          .head(line.branch())
          .ifPresent(
              head ->
                  bakeFiles(head, formula).keySet().forEach(path -> ids.add(Layout.bakeId(path))));
    }
    return ids;
  }

  private SortedMap<String, BlobId> bakeFiles(CommitId commit, String formula) {
    SortedMap<String, BlobId> files = new TreeMap<>(folders.list(commit, Layout.bakes(formula)));
    files.keySet().removeIf(path -> !path.matches("bakes/[^/]+/\\d{4}-\\d\\d-\\d\\d-\\d{1,4}\\.json"));
    return files;
  }

  /**
   * A photo's bytes.
   *
   * @param formula slug of the formula it belongs to
   * @param path {@code photos/<formula>/<name>}
   * @return the bytes, empty when there is no such file
   */
  public Optional<byte[]> photo(String formula, String path) {
    for (Address line : lines(formula)) {
      Optional<BlobId> blob =
          store.head(line.branch()).flatMap(head -> store.blob(head, path));
      if (blob.isPresent()) {
        return blob.map(store::read);
      }
    }
    return Optional.empty();
  }

  /**
   * The formulas that were edited by hand on disk and are not yet revisions.
   *
   * @return by slug; the bytes on disk, empty when the file was deleted
   */
  public SortedMap<String, HandEdit> handEdits() {
    SortedMap<String, HandEdit> edits = new TreeMap<>();
    for (HandEdit edit : store.handEdits(Layout.FORMULAS)) {
      Layout.slugIn(Layout.FORMULAS, edit.path()).ifPresent(slug -> edits.put(slug, edit));
    }
    return edits;
  }

  /**
   * The id that Git gives a content.
   *
   * @param bytes the content
   * @return its blob id; nothing is written
   */
  public BlobId blobOf(byte[] bytes) {
    return store.hash(bytes);
  }

  /**
   * The number that the next revision of a line of history gets.
   *
   * @param line a formula or a variant
   * @return 1 for a formula without revisions
   */
  public int nextNumber(Address line) {
    return history
        .latest(line.branch(), Layout.formula(line.formula()))
        .map(entry -> entry.number() + 1)
        .orElse(1);
  }

  /**
   * The line of history that the files on disk belong to.
   *
   * @param formula slug of the formula
   * @return the checked-out branch as a line of this formula, empty when it is another's variant or
   *     no branch at all
   */
  public Optional<Address> lineOnDisk(String formula) {
    return store
        .checkedOutBranch()
        .flatMap(
            branch ->
                lines(formula).stream().filter(line -> line.branch().equals(branch)).findFirst());
  }

  /**
   * The published revisions of a formula and its variants.
   *
   * @param formula its slug
   * @return tag by commit
   */
  public Map<CommitId, TagFacts> published(String formula) {
    Map<CommitId, TagFacts> tags = new LinkedHashMap<>();
    store.tags(Layout.PUBLISHED + formula + "/").values().forEach(tag -> tags.put(tag.commit(), tag));
    return tags;
  }

  @Override
  public void close() {
    store.close();
  }

  GitStore store() {
    return store;
  }

  History history() {
    return history;
  }

  CommitId head(String branch) {
    return store
        .head(branch)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    branch,
                    "The notebook has no branch " + branch + ".",
                    "List what there is with: ovenmark list"));
  }

  Revision revision(Address line, Entry entry) {
    return new Revision(
        Address.latest(line.formula(), line.variant()).at(entry.number()),
        entry.commit(),
        entry.path(),
        entry.blob().orElseThrow(),
        entry.time(),
        entry.author(),
        entry.subject(),
        entry.body(),
        entry.trailers(),
        entry.merge());
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

  private Refusal noFormula(String slug) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        slug,
        "There is no formula \"" + slug + "\" in this notebook.",
        "List what there is with: ovenmark list");
  }

  private Refusal noRevision(Address address) {
    String hint;
    try {
      List<Revision> all = revisions(address);
      hint =
          "Its revisions are " + all.get(0).number() + " to " + all.get(all.size() - 1).number()
              + "; see: ovenmark timeline " + address.line();
    } catch (Refusal refusal) {
      return refusal;
    }
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        address.toString(),
        "There is no revision " + address + ".",
        hint);
  }
}
