package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.Pending.FileChange;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;

/**
 * Brings the work tree and Git's index after a commit, for just the files of that commit.
 *
 * <p>A file is replaced only if it holds exactly the content of the commit before; anything else
 * was edited by hand and is left. Links are never followed. The same steps, done again after a
 * sudden death, finish what was begun.
 */
final class Checkout implements AutoCloseable {
  private static final String BESIDE = ".ovenmark-part";

  private final Path root;
  private final Path folder;
  private final Path indexFile;
  private final Repository repository;
  private final boolean crlf;
  private final IndexLock lock;
  private final DirCache index;

  private Checkout(Repository repository, Path folder, IndexLock lock) throws IOException {
    this.repository = repository;
    this.root = repository.getWorkTree().toPath();
    this.folder = folder;
    this.indexFile = repository.getIndexFile().toPath();
    this.crlf = convertsLineEnds(repository);
    this.lock = lock;
    this.index = DirCache.read(indexFile.toFile(), repository.getFS());
  }

  /** Locks and reads the index, before anything is moved. */
  static Checkout begin(Repository repository, Path folder, Duration patience)
      throws IOException {
    IndexLock lock = IndexLock.take(repository.getDirectory().toPath(), folder, patience);
    boolean done = false;
    try {
      Checkout checkout = new Checkout(repository, folder, lock);
      done = true;
      return checkout;
    } finally {
      if (!done) {
        lock.close();
      }
    }
  }

  static boolean convertsLineEnds(Repository repository) {
    String value = repository.getConfig().getString("core", null, "autocrlf");
    return value != null && !value.equalsIgnoreCase("false");
  }

  /**
   * Follows a commit.
   *
   * @param content gives the bytes of a blob
   * @return the paths left as edited by hand, sorted
   */
  List<String> follow(List<FileChange> files, Function<BlobId, byte[]> content)
      throws IOException {
    Map<String, FileChange> changes = new HashMap<>();
    files.forEach(file -> changes.put(file.path(), file));
    Map<String, DirCacheEntry> known = new HashMap<>();
    TreeSet<String> left = new TreeSet<>();
    List<DirCacheEntry> entries = new ArrayList<>();
    for (int i = 0; i < index.getEntryCount(); i++) {
      DirCacheEntry entry = index.getEntry(i);
      FileChange change = changes.get(entry.getPathString());
      if (change == null) {
        entries.add(entry);
      } else if (isStagedByHand(entry, change)) {
        entries.add(entry);
        left.add(change.path());
      } else {
        known.put(change.path(), entry);
      }
    }
    for (FileChange file : files) {
      boolean stagedByHand =
          left.contains(file.path()) || isUnstagedByHand(known.get(file.path()), file);
      Optional<DirCacheEntry> entry = follow(file, known.get(file.path()), content, left);
      if (stagedByHand) {
        left.add(file.path());
      } else {
        entry.ifPresent(entries::add);
      }
    }
    writeIndex(entries);
    return List.copyOf(left);
  }

  /** Whether the index holds another content than the commit before and the commit. */
  private static boolean isStagedByHand(DirCacheEntry entry, FileChange change) {
    if (entry.getStage() != DirCacheEntry.STAGE_0) {
      return true;
    }
    BlobId staged = new BlobId(entry.getObjectId().name());
    boolean expected =
        change.before().isPresent() && change.before().get().equals(staged)
            || change.after().isPresent() && change.after().get().equals(staged)
            || entry.isIntentToAdd();
    return !expected;
  }

  /** Whether the index has lost a file that the commit before and the commit have. */
  private static boolean isUnstagedByHand(DirCacheEntry entry, FileChange change) {
    return entry == null && change.before().isPresent() && change.after().isPresent();
  }

  private Optional<DirCacheEntry> follow(
      FileChange file,
      DirCacheEntry known,
      Function<BlobId, byte[]> content,
      TreeSet<String> left)
      throws IOException {
    boolean sparse = known != null && known.isSkipWorkTree();
    Brought brought = sparse ? Brought.NOTHING : bring(file, known, content);
    if (!brought.asCommitted()) {
      left.add(file.path());
    }
    if (file.after().isEmpty()) {
      return Optional.empty();
    }
    DirCacheEntry entry;
    if (known != null && !known.isIntentToAdd()) {
      entry = known;
    } else {
      entry = new DirCacheEntry(file.path());
      entry.setFileMode(FileMode.REGULAR_FILE);
    }
    entry.setObjectId(ObjectId.fromString(file.after().get().hex()));
    entry.setLength(brought.size());
    entry.setLastModified(brought.modified());
    return Optional.of(entry);
  }

  /**
   * How a file is on disk in the end.
   *
   * @param size in bytes, taken before the content was compared, so that an edit in between shows
   */
  private record Brought(boolean asCommitted, long size, Instant modified) {
    static final Brought NOTHING = new Brought(true, 0, Instant.EPOCH);
    static final Brought LEFT = new Brought(false, 0, Instant.EPOCH);

    static Brought stamp(Path path) throws IOException {
      BasicFileAttributes now =
          Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return new Brought(true, now.size(), now.lastModifiedTime().toInstant());
    }
  }

  /** Replaces or deletes a file if nobody edited it. */
  private Brought bring(
      FileChange file, DirCacheEntry known, Function<BlobId, byte[]> content)
      throws IOException {
    Path path = SafePath.onDisk(root, file.path());
    BlobContent.Kind kind = BlobContent.kind(root, path);
    if (kind == BlobContent.Kind.OTHER) {
      return Brought.LEFT;
    }
    boolean absent = kind == BlobContent.Kind.ABSENT;
    if (file.after().isEmpty()) {
      if (!absent && BlobContent.fileMatches(path, file.before(), crlf)) {
        delete(path);
        return Brought.NOTHING;
      }
      return absent ? Brought.NOTHING : Brought.LEFT;
    }
    if (!absent) {
      Brought stamp = Brought.stamp(path);
      if (BlobContent.fileMatches(path, file.after(), crlf)) {
        return stamp;
      }
    }
    boolean untouched =
        absent ? file.before().isEmpty() : BlobContent.fileMatches(path, file.before(), crlf);
    if (!untouched) {
      return Brought.LEFT;
    }
    boolean executable = known != null && known.getFileMode() == FileMode.EXECUTABLE_FILE;
    return replace(path, content.apply(file.after().get()), executable);
  }

  private Brought replace(Path path, byte[] bytes, boolean executable) throws IOException {
    Files.createDirectories(path.getParent());
    Path part = folder.resolve("work.part");
    writePart(part, bytes, executable);
    Brought stamp = Brought.stamp(part);
    try {
      Files.move(part, path, StandardCopyOption.ATOMIC_MOVE);
      return stamp;
    } catch (AtomicMoveNotSupportedException e) {
      Files.delete(part);
      Path beside = path.resolveSibling(BESIDE);
      writePart(beside, bytes, executable);
      stamp = Brought.stamp(beside);
      Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE);
      return stamp;
    }
  }

  private static void writePart(Path part, byte[] bytes, boolean executable) throws IOException {
    Files.deleteIfExists(part);
    Files.write(part, bytes);
    if (executable && !part.toFile().setExecutable(true, false)) {
      throw new IOException("Cannot make " + part + " executable");
    }
  }

  private void delete(Path path) throws IOException {
    Files.delete(path);
    Path parent = path.getParent();
    while (parent != null && !parent.equals(root) && parent.startsWith(root)) {
      try {
        Files.delete(parent);
      } catch (DirectoryNotEmptyException e) {
        return;
      }
      parent = parent.getParent();
    }
  }

  private void writeIndex(List<DirCacheEntry> entries) throws IOException {
    Path part = folder.resolve("index.part");
    Files.deleteIfExists(part);
    Files.deleteIfExists(folder.resolve("index.part.lock"));
    DirCache next = new DirCache(part.toFile(), repository.getFS());
    if (!next.lock()) {
      throw new IOException("Cannot write " + part);
    }
    try {
      DirCacheBuilder builder = next.builder();
      entries.forEach(builder::add);
      builder.finish();
      next.write();
      if (!next.commit()) {
        throw new IOException("Cannot write " + part);
      }
    } finally {
      next.unlock();
    }
    try {
      Files.move(part, indexFile, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, indexFile, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Takes away the parts that a sudden death left beside the given files. */
  static void sweep(Path root, List<FileChange> files) throws IOException {
    for (FileChange file : files) {
      if (SafePath.isRepresentable(root, file.path())) {
        Path path = root.resolve(file.path());
        if (!SafePath.isBehindLink(root, path)) {
          Files.deleteIfExists(path.resolveSibling(BESIDE));
        }
      }
    }
  }

  /** Unlocks the index. */
  @Override
  public void close() throws IOException {
    lock.close();
  }
}
