package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.Problem;
import io.ovenmark.notebook.index.History;
import io.ovenmark.notebook.index.IndexedHistory;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.TagFacts;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

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
  private final Revisions revisions;
  private final BakeShelf bakes;

  private Notebook(GitStore store) {
    this.store = store;
    this.history = new IndexedHistory(store);
    this.decoder = new Decoder(store);
    this.folders = new Folders(store);
    this.revisions = new Revisions(store, history);
    this.bakes = new BakeShelf(store, folders, decoder, revisions);
  }

  /**
   * Makes a notebook. The folder may be missing, empty, hold files (they are neither changed nor
   * committed) or be a Git repository (the notebook's settings become its next commit on {@code
   * main}).
   *
   * @param folder where
   * @param settings its settings
   * @param by who makes it, and when
   * @return the notebook, open
   * @throws Refusal when there is a notebook already, the folder is a part of one, or the
   *     repository there has no work tree or no branch {@code main}
   */
  public static Notebook create(Path folder, NotebookSettings settings, By by) {
    return new Notebook(NotebookFolder.create(folder, settings, by));
  }

  /**
   * Opens a notebook.
   *
   * @param folder the folder that holds {@code notebook.json}; a link to it or a further work tree
   *     of it will do, a folder inside of it will not
   * @return the notebook
   * @throws Refusal when it is none, or of a newer format than can be read
   * @throws io.ovenmark.json.UnreadableException when its settings are damaged
   */
  public static Notebook open(Path folder) {
    return new Notebook(NotebookFolder.open(folder));
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
   * Where this program keeps files of its own: beside the repository's objects, outside of history
   * and of what is cloned.
   *
   * @return an absolute path; the folder may not exist yet
   */
  public Path ownFolder() {
    return store.gitDirectory().resolve("ovenmark");
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
   * The variants of a formula, also those that were fetched from another notebook and have not been
   * written to here.
   *
   * @param formula slug of the formula
   * @return their names in alphabetical order
   */
  public List<String> variants(String formula) {
    return revisions.variants(formula);
  }

  /**
   * The lines of history of a formula.
   *
   * @param formula its slug
   * @return the main line, whether the formula is on it or not, then the variants
   */
  public List<Address> lines(String formula) {
    return revisions.lines(formula);
  }

  /**
   * Whether there is such a formula, or was one that got deleted.
   *
   * @param formula its slug
   * @return true when it is or was on the main line, or has variants
   */
  public boolean isKnown(String formula) {
    return revisions.isKnown(formula);
  }

  /**
   * The revisions of a line of history.
   *
   * @param line a formula or a variant; its point does not count
   * @return oldest first; a variant's begin with those before its fork
   * @throws Refusal when there is no such formula or variant
   */
  public List<Revision> revisions(Address line) {
    return revisions.all(line);
  }

  /**
   * The newest revision of a line of history.
   *
   * @param line a formula or a variant; its point does not count
   * @return the revision
   * @throws Refusal when there is none, or the formula was deleted
   */
  public Revision newest(Address line) {
    return revisions.required(line);
  }

  /**
   * The newest revision of a line of history, if it has any.
   *
   * @param line a formula or a variant; its point does not count
   * @return the revision; empty when there is none, or the formula was deleted
   */
  public Optional<Revision> newestIfAny(Address line) {
    return revisions.newest(line);
  }

  /**
   * The revision that another one came from.
   *
   * @param revision a revision
   * @return the one before it on its line of history; empty for the first
   */
  public Optional<Revision> before(Revision revision) {
    return revisions.before(revision);
  }

  /**
   * The number of the revision at which a variant left the main line.
   *
   * @param variant a variant
   * @return the number; 0 when the formula did not exist yet
   */
  public int forkNumber(Address variant) {
    return revisions.forkNumber(variant);
  }

  /**
   * Finds a revision.
   *
   * @param address latest, numbered or by commit
   * @return the revision
   * @throws Refusal when there is none
   */
  public Revision revision(Address address) {
    return revisions.find(address);
  }

  /**
   * The commit that an address names.
   *
   * @param address an address by commit
   * @return the full commit id
   * @throws Refusal when there is no such commit
   */
  public CommitId commit(Address address) {
    return revisions.commit(address);
  }

  /**
   * What a commit id alone means: the formula that the commit made or changed, at that commit. Of a
   * commit that carried the main line over to a variant it is the variant's formula.
   *
   * @param hex full or abbreviated commit id, at least 7 digits
   * @return the address by commit; empty when there is no such commit, or when it changed no
   *     formula or several
   * @throws StoreException when several commits begin with these digits
   */
  public Optional<Address> addressOfCommit(String hex) {
    return revisions.addressOfCommit(hex);
  }

  /**
   * The number that the next revision of a line of history gets.
   *
   * @param line a formula or a variant
   * @return 1 for a formula without revisions
   */
  public int nextNumber(Address line) {
    return revisions.nextNumber(line);
  }

  /**
   * The line of history that the files on disk belong to.
   *
   * @param formula slug of the formula
   * @return the checked-out branch as a line of this formula, empty when it is another's variant or
   *     no branch at all
   */
  public Optional<Address> lineOnDisk(String formula) {
    return store.checkedOutBranch().flatMap(branch -> revisions.lineOfBranch(formula, branch));
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
   * The bakes of a formula, of the main line and all variants, as far as their files can be read;
   * see {@link #bakeProblems} for the others.
   *
   * @param formula its slug
   * @return oldest first
   */
  public List<Bake> bakes(String formula) {
    return bakes.bakes(formula);
  }

  /** The names of a formula's bakes on all its lines of history, readable or not. */
  SortedSet<String> bakeIds(String formula) {
    return bakes.ids(formula);
  }

  /**
   * What is wrong with the bakes of a formula whose files cannot be read.
   *
   * @param formula its slug
   * @return mostly nothing
   */
  public List<Problem> bakeProblems(String formula) {
    return bakes.problems(formula);
  }

  /**
   * A photo's bytes.
   *
   * @param formula slug of the formula it belongs to
   * @param path {@code photos/<formula>/<name>}
   * @return the bytes, empty when there is no such file or it is not one of the formula's photos
   */
  public Optional<byte[]> photo(String formula, String path) {
    return keptPhoto(formula, path).map(KeptPhoto::bytes);
  }

  /**
   * A photo, not read yet.
   *
   * @param formula slug of the formula it belongs to
   * @param path {@code photos/<formula>/<name>}
   * @return the photo, empty when there is no such file or it is not one of the formula's photos
   */
  public Optional<KeptPhoto> keptPhoto(String formula, String path) {
    return bakes.photo(formula, path);
  }

  /**
   * A photo as it was at a commit.
   *
   * @param commit the commit
   * @param path {@code photos/<formula>/<name>}
   * @return the photo, empty when the commit has no such file or it is no photo
   */
  public Optional<KeptPhoto> keptPhoto(CommitId commit, String path) {
    return Layout.isPhoto(path)
        ? store.blob(commit, path).map(id -> new KeptPhoto(id, store::read))
        : Optional.empty();
  }

  /**
   * A bake as it was at a commit.
   *
   * @param commit the commit
   * @param formula slug of the formula
   * @param id the bake's name
   * @return the bake, empty when the commit has none of that name
   */
  public Optional<Bake> bake(CommitId commit, String formula, String id) {
    return at(commit).bake(formula, Layout.bakes(formula) + "/" + id + ".json");
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
   * Whether a formula was edited by hand on disk and is not yet a revision; quicker than asking for
   * all.
   *
   * @param formula its slug
   * @return the edit; empty when the file is as it was committed
   */
  public Optional<HandEdit> handEdit(String formula) {
    return store.handEdits(Layout.formula(formula)).stream()
        .filter(edit -> edit.path().equals(Layout.formula(formula)))
        .findFirst();
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
   * The published revisions of a formula and its variants.
   *
   * @param formula its slug
   * @return tag by commit
   */
  public Map<CommitId, TagFacts> published(String formula) {
    Map<CommitId, TagFacts> tags = new LinkedHashMap<>();
    store
        .tags(Layout.PUBLISHED + formula + "/")
        .values()
        .forEach(tag -> tags.put(tag.commit(), tag));
    return tags;
  }

  @Override
  public void close() {
    store.close();
  }

  GitStore store() {
    return store;
  }

  BakeShelf shelf() {
    return bakes;
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

  /** Whether a variant's branch has left the main line at a commit. */
  boolean isFork(Address variant, CommitId commit) {
    return history.fork(variant.branch()).equals(Optional.of(commit));
  }

  /** The newest revision of a line at one of its commits. */
  Revision newestAt(Address line, CommitId commit) {
    return revisions.at(line, commit);
  }
}
