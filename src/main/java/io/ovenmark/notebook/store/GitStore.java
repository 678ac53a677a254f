package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import org.eclipse.jgit.errors.ConfigInvalidException;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevObject;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.util.SystemReader;

/**
 * A notebook's Git repository: its files at any commit, its branches and tags, and writing.
 *
 * <pre>{@code
 * try (GitStore store = GitStore.open(folder)) {
 *   Optional<CommitId> head = store.head("main");
 *   Write write =
 *       Write.to("main", head, new Author("Bench", "bench@example.org"), time, "Less water")
 *           .put("formulas/seeded-lupin-bun.json", bytes);
 *   WriteOutcome outcome = store.write(write);
 *   if (outcome instanceof WriteOutcome.Written written) {
 *     store.read(store.blob(written.commit(), "formulas/seeded-lupin-bun.json").orElseThrow());
 *   }
 * }
 * }</pre>
 *
 * <p>It may be used by many threads at once, several of it may be open on one repository, in one
 * program or in several, and native Git may work on the repository meanwhile. Every method throws
 * {@link StoreException} if the repository is damaged or the disk fails. Paths use {@code /} and
 * are relative to the notebook; branches are named without {@code refs/heads/}.
 */
public final class GitStore implements AutoCloseable {
  /** The branch of the main line. */
  public static final String MAIN = "main";

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Repository repository;
  private final StoredObjects objects;
  private final Refs refs;
  private final Writer writer;
  private final Path directory;
  private final Duration patience;

  private GitStore(Repository repository, Path directory, Duration patience) {
    this.repository = repository;
    this.directory = directory;
    this.patience = patience;
    this.objects = new StoredObjects(repository);
    this.refs = new Refs(repository, patience);
    this.writer = new Writer(repository, objects, refs, patience);
  }

  /**
   * Makes a repository without a commit, whose branch is {@code main}; one that is there already
   * is opened as it is, except that one without any commit is put on the branch {@code main}.
   *
   * @param directory the notebook's folder; made if it does not exist, its files are kept
   */
  public static GitStore create(Path directory) {
    Path place = directory.toAbsolutePath().normalize();
    RepositoryFolder.create(place);
    return open(place);
  }

  /**
   * Opens the repository of a folder and finishes what a writer left that died at its work.
   *
   * @param directory the notebook's folder, the one that holds {@code .git}
   * @throws StoreException {@code NOT_A_REPOSITORY}, {@code UNSUPPORTED_REPOSITORY} or {@code
   *     CORRUPT}
   */
  public static GitStore open(Path directory) {
    return open(directory, PATIENCE);
  }

  /** As {@link #open(Path)} with the time to wait for locks of others. */
  static GitStore open(Path directory, Duration patience) {
    Path place = directory.toAbsolutePath().normalize();
    Repository repository = RepositoryFolder.open(place);
    boolean done = false;
    try {
      GitStore store = new GitStore(repository, place, patience);
      recoverQuietly(store.writer::recoverIfNeeded);
      done = true;
      return store;
    } finally {
      if (!done) {
        repository.close();
      }
    }
  }

  /** One of the ways to finish what a dead writer left. */
  @FunctionalInterface
  private interface Recovering {
    void run() throws IOException;
  }

  /** A folder that may only be read, or that Git is at work on, can still be opened. */
  private static void recoverQuietly(Recovering recovering) {
    try {
      recovering.run();
    } catch (IOException | StoreException e) {
      return;
    }
  }

  /** The notebook's folder. */
  public Path directory() {
    return directory;
  }

  /** Where Git keeps this repository's data; the same for all its work trees. */
  public Path gitDirectory() {
    return repository.getCommonDirectory().toPath();
  }

  /**
   * JGit's own view, for {@code io.ovenmark.notebook.index} alone; closed with this store.
   *
   * @return the repository, open
   */
  public Repository jgit() {
    return repository;
  }

  /** What a commit that JGit has parsed says, for {@code io.ovenmark.notebook.index} alone. */
  public static CommitFacts facts(RevCommit commit) {
    return StoredObjects.facts(commit);
  }

  /**
   * Who the user said to be in Git's configuration of the repository or of the user.
   *
   * @return empty unless there is a name; the address may be empty
   */
  public Optional<Author> configuredAuthor() {
    return author(repository.getConfig());
  }

  /**
   * Who the user said to be in Git's configuration of the user, for where there is no repository
   * yet.
   *
   * @return empty unless there is a name; the address may be empty
   */
  public static Optional<Author> usersAuthor() {
    JGitEnvironment.install();
    return Faults.guard(
        "Git's configuration of the user",
        () -> {
          try {
            return author(SystemReader.getInstance().getUserConfig());
          } catch (ConfigInvalidException e) {
            return Optional.empty();
          }
        });
  }

  private static Optional<Author> author(Config config) {
    String name = config.getString("user", null, "name");
    String email = config.getString("user", null, "email");
    return name == null || name.isBlank()
        ? Optional.empty()
        : Optional.of(new Author(name, email == null ? "" : email));
  }

  /**
   * The last commit of a branch, empty if there is no such branch or no commit yet. A branch below
   * {@code variant/} that is only known as fetched from another repository is read as it was
   * fetched; the first write to it makes it a branch of this one.
   */
  public Optional<CommitId> head(String branch) {
    String ref = Refs.branchRef(branch);
    return Faults.guard(ref, () -> refs.head(ref));
  }

  /**
   * The branches whose names begin with a prefix, with their last commits; below {@code variant/}
   * also those that are only known as fetched from another repository.
   *
   * @param prefix empty for all, {@code variant/} for the variants
   */
  public SortedMap<String, CommitId> branches(String prefix) {
    return Faults.guard("refs/heads/" + prefix, () -> refs.branches(prefix));
  }

  /** The branch whose files are on disk, born or not; empty if none is (a detached HEAD). */
  public Optional<String> checkedOutBranch() {
    return Faults.guard(Constants.HEAD, refs::checkedOut)
        .filter(ref -> ref.startsWith(Constants.R_HEADS))
        .map(ref -> ref.substring(Constants.R_HEADS.length()));
  }

  /**
   * The commit of a full or abbreviated id.
   *
   * @param id at least four hexadecimal digits
   * @return empty if there is none
   * @throws StoreException {@code AMBIGUOUS} if several commits begin with these digits
   */
  public Optional<CommitId> resolve(String id) {
    return Faults.guard(id, () -> objects.resolve(id));
  }

  /** What a commit says about itself. */
  public CommitFacts facts(CommitId commit) {
    return Faults.guard(commit.hex(), () -> objects.facts(commit));
  }

  /** The content of a file at a commit, empty if it has no such file (a link is none). */
  public Optional<BlobId> blob(CommitId commit, String path) {
    String checked = SafePath.check(path);
    return Faults.guard(commit + ":" + path, () -> objects.blob(commit, checked));
  }

  /**
   * The files below a folder at a commit, with full paths; empty if there is no such folder.
   *
   * @param folder for instance {@code formulas}; the empty string for the whole notebook
   */
  public SortedMap<String, BlobId> list(CommitId commit, String folder) {
    String checked = SafePath.checkFolder(folder);
    return Faults.guard(commit + ":" + folder, () -> objects.list(commit, checked));
  }

  /** An id of all that is below a folder at a commit, the same id for the same files. */
  public Optional<String> treeId(CommitId commit, String folder) {
    String checked = SafePath.checkFolder(folder);
    return Faults.guard(commit + ":" + folder, () -> objects.treeId(commit, checked));
  }

  /**
   * The files that are not the same at two commits, by path. It takes time for the folders that
   * differ, not for those that are the same; links and changes of mode alone are left out.
   *
   * @param from the first commit; empty for an empty notebook
   * @param to the second commit
   */
  public SortedMap<String, Difference> differences(Optional<CommitId> from, CommitId to) {
    return Faults.guard(to.hex(), () -> objects.differences(from, to));
  }

  /** The bytes of a content, checked against its id; a copy. */
  public byte[] read(BlobId blob) {
    return Faults.guard(blob.hex(), () -> objects.read(blob).clone());
  }

  /** The id that a content has or would have; nothing is stored. */
  public BlobId hash(byte[] bytes) {
    return BlobContent.id(bytes);
  }

  /**
   * Makes a commit and moves its branch to it, if the branch still has the head the writer saw.
   *
   * <p>If the branch is checked out, its files and index follow for the written paths, except for
   * files edited by hand, which are reported.
   */
  public WriteOutcome write(Write write) {
    return Faults.guard(write.branch(), () -> writer.write(write));
  }

  /**
   * Makes a branch.
   *
   * @throws StoreException {@code NAME_TAKEN} if it, or one in its way, exists
   */
  public void createBranch(String branch, CommitId at, Author author, OffsetDateTime time) {
    Faults.guard(
        branch,
        () -> {
          writer.createBranch(branch, at, Writer.ident(author, time));
          return branch;
        });
  }

  /**
   * Deletes a branch, not its commits.
   *
   * @param expected the head the caller has seen
   * @return false if the branch has another head or is gone
   * @throws StoreException {@code CHECKED_OUT} if its files are on disk
   */
  public boolean deleteBranch(
      String branch, CommitId expected, Author author, OffsetDateTime time) {
    PersonIdent who = Writer.ident(author, time);
    return Faults.guard(
        branch,
        () -> writer.moveBranch(branch, Optional.of(expected), Optional.empty(), who));
  }

  /**
   * Puts a branch on another commit, a descendant or not.
   *
   * @param expected the head the caller has seen
   * @return false if the branch has another head or is gone
   * @throws StoreException {@code CHECKED_OUT} if its files are on disk
   */
  public boolean moveBranch(
      String branch, CommitId expected, CommitId target, Author author, OffsetDateTime time) {
    PersonIdent who = Writer.ident(author, time);
    return Faults.guard(
        branch,
        () -> writer.moveBranch(branch, Optional.of(expected), Optional.of(target), who));
  }

  /**
   * Makes an annotated tag.
   *
   * @throws StoreException {@code NAME_TAKEN} if it exists
   */
  public TagFacts tag(
      String name, CommitId commit, String message, Author author, OffsetDateTime time) {
    PersonIdent who = Writer.ident(author, time);
    return Faults.guard(
        name,
        () -> {
          ObjectId id = writer.tag(name, commit, message, who);
          try (RevWalk walk = new RevWalk(repository)) {
            return tagFacts(walk, name, id).orElseThrow();
          }
        });
  }

  /** The tags of commits whose names begin with a prefix, by name. */
  public SortedMap<String, TagFacts> tags(String prefix) {
    return Faults.guard(
        Constants.R_TAGS + prefix,
        () -> {
          SortedMap<String, TagFacts> found = new TreeMap<>();
          try (RevWalk walk = new RevWalk(repository)) {
            String start = Constants.R_TAGS + prefix;
            for (Ref ref : repository.getRefDatabase().getRefsByPrefix(start)) {
              String name = ref.getName().substring(Constants.R_TAGS.length());
              tagFacts(walk, name, ref.getObjectId()).ifPresent(tag -> found.put(name, tag));
            }
          }
          return found;
        });
  }

  private static Optional<TagFacts> tagFacts(RevWalk walk, String name, ObjectId id)
      throws IOException {
    RevObject object = walk.parseAny(id);
    if (!(walk.peel(object) instanceof RevCommit commit)) {
      return Optional.empty();
    }
    CommitId target = new CommitId(commit.name());
    if (object instanceof RevTag tag && tag.getTaggerIdent() != null) {
      OffsetDateTime time = StoredObjects.time(tag.getTaggerIdent());
      return Optional.of(new TagFacts(name, target, time, tag.getFullMessage().stripTrailing()));
    }
    walk.parseBody(commit);
    return Optional.of(new TagFacts(name, target, StoredObjects.facts(commit).time(), ""));
  }

  /**
   * The files on disk that differ from the last commit of the checked-out branch, by path; none if
   * no branch is checked out. Files that Git is told to ignore are left out.
   *
   * @param folder for instance {@code formulas}; the empty string for the whole notebook; the path of
   *     a file for that file alone, which takes no walk unless it differs
   */
  public List<HandEdit> handEdits(String folder) {
    String checked = SafePath.checkFolder(folder);
    return Faults.guard(
        folder,
        () -> {
          if (findHandEdits(checked).isEmpty()) {
            return List.of();
          }
          return writer.undisturbed(() -> writer.withoutUnfinished(findHandEdits(checked)));
        });
  }

  private List<HandEdit> findHandEdits(String folder) throws IOException {
    Optional<String> branch = checkedOutBranch();
    return branch.isEmpty()
        ? List.of()
        : HandEdits.find(repository, objects, head(branch.get()), folder);
  }

  /** The newest common ancestor of two commits, empty if they share no history. */
  public Optional<CommitId> mergeBase(CommitId a, CommitId b) {
    return Faults.guard(a + " and " + b, () -> objects.mergeBase(a, b));
  }

  /** Whether a commit is, or is an ancestor of, another one. */
  public boolean isAncestor(CommitId ancestor, CommitId descendant) {
    return Faults.guard(descendant.hex(), () -> objects.isAncestor(ancestor, descendant));
  }

  /**
   * Reads everything that branches and tags lead to and compares it with its id.
   *
   * @param progress told how many objects have been read, now and then
   * @return what is damaged or missing, empty if the notebook is whole
   */
  public List<Damage> verify(LongConsumer progress) {
    return Faults.guard("the notebook", () -> Verification.run(repository, progress));
  }

  /** What takes in a history from elsewhere. */
  Intake intake() {
    Path own = repository.getDirectory().toPath().resolve(Writer.OWN_FOLDER);
    return new Intake(repository, objects, refs, writer, own, patience);
  }

  /** How a branch or tag stands that is to go with a commit. */
  Companion.Standing standing(Companion companion) throws IOException {
    return Companions.standing(repository, refs, companion);
  }

  /** Closes the repository. */
  @Override
  public void close() {
    repository.close();
  }
}
