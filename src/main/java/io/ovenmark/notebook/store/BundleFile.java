package io.ovenmark.notebook.store;

import io.ovenmark.notebook.store.StoreException.Reason;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheCheckout;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.NullProgressMonitor;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.pack.PackConfig;
import org.eclipse.jgit.transport.BundleWriter;

/**
 * A history in a file of its own, the Git bundle, or in a folder of its own.
 *
 * <pre>{@code
 * BundleFile.write(file, chronicle, store::read, scratch, done -> {});
 * BundleFile.read(file, scratch, "notebook.json", name -> true, done -> {});
 * }</pre>
 *
 * <p>A bundle holds everything that its branches lead to, has {@code main} as its {@code HEAD}, and
 * is cloned by native Git as it is.
 */
public final class BundleFile {
  /** The largest bundle that is read. */
  public static final long MOST_BYTES = 256L << 20;

  private BundleFile() {}

  /**
   * Writes a bundle. The file is there whole or not at all; one of that name is replaced.
   *
   * @param file where
   * @param chronicle the history, with a branch {@code main}
   * @param contents where contents are read
   * @param scratch a folder that does not exist yet, for the work; it is deleted afterwards
   * @param progress told how many steps are done
   */
  public static void write(
      Path file,
      Chronicle chronicle,
      Function<BlobId, byte[]> contents,
      Path scratch,
      LongConsumer progress) {
    Path part = file.resolveSibling(file.getFileName() + ".part");
    Faults.guard(
        file.toString(),
        () -> {
          try (GitStore store = GitStore.create(scratch)) {
            Repository repository = store.jgit();
            ChronicleWriter.Written written =
                new ChronicleWriter(repository, contents, progress)
                    .write(chronicle, Optional.empty());
            BundleWriter bundle = new BundleWriter(repository);
            PackConfig config = new PackConfig(repository);
            config.setThreads(1);
            bundle.setPackConfig(config);
            int main = chronicle.branches().get(GitStore.MAIN);
            bundle.include(Constants.HEAD, written.commits().get(main));
            for (Map.Entry<String, Integer> each : chronicle.branches().entrySet()) {
              bundle.include(
                  Refs.branchRef(each.getKey()), written.commits().get(each.getValue()));
            }
            for (int i = 0; i < chronicle.labels().size(); i++) {
              bundle.include(
                  Refs.tagRef(chronicle.labels().get(i).name()), written.labels().get(i));
            }
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
              bundle.writeBundle(NullProgressMonitor.INSTANCE, out);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return file;
          } finally {
            Files.deleteIfExists(part);
            Trash.delete(scratch);
          }
        });
  }

  /**
   * Writes a repository with its files. The folder is there whole or not at all.
   *
   * @param folder where; missing or empty
   * @param chronicle the history, with a branch {@code main}
   * @param contents where contents are read
   * @param progress told how many steps are done
   * @throws StoreException {@code NAME_TAKEN} when there is something
   */
  public static void unfold(
      Path folder,
      Chronicle chronicle,
      Function<BlobId, byte[]> contents,
      LongConsumer progress) {
    Path place = folder.toAbsolutePath().normalize();
    Faults.guard(
        folder.toString(),
        () -> {
          refuseFull(place);
          Files.createDirectories(place.getParent());
          Path part = Files.createTempDirectory(place.getParent(), ".ovenmark-share-");
          try {
            fill(part, chronicle, contents, progress);
            Files.deleteIfExists(place);
            Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
            return place;
          } finally {
            Trash.delete(part);
          }
        });
  }

  private static void refuseFull(Path place) throws IOException {
    if (!Files.exists(place)) {
      return;
    }
    if (Files.isDirectory(place)) {
      try (var files = Files.list(place)) {
        if (files.findAny().isEmpty()) {
          return;
        }
      }
    }
    throw new StoreException(
        Reason.NAME_TAKEN,
        place.toString(),
        "There is something in " + place + " already: name a new or empty folder.");
  }

  private static void fill(
      Path part, Chronicle chronicle, Function<BlobId, byte[]> contents, LongConsumer progress)
      throws IOException {
    try (GitStore store = GitStore.create(part)) {
      Repository repository = store.jgit();
      ChronicleWriter.Written written =
          new ChronicleWriter(repository, contents, progress).write(chronicle, Optional.empty());
      for (Map.Entry<String, Integer> each : chronicle.branches().entrySet()) {
        makeRef(
            repository, Refs.branchRef(each.getKey()), written.commits().get(each.getValue()));
      }
      for (int i = 0; i < chronicle.labels().size(); i++) {
        makeRef(
            repository,
            Refs.tagRef(chronicle.labels().get(i).name()),
            written.labels().get(i));
      }
      CommitId main = written.commit(chronicle.branches().get(GitStore.MAIN));
      ObjectId tree = ObjectId.fromString(store.treeId(main, "").orElseThrow());
      DirCache index = repository.lockDirCache();
      try {
        new DirCacheCheckout(repository, index, tree).checkout();
      } finally {
        index.unlock();
      }
    }
  }

  /** Without a log, which would name whoever shares. */
  static void makeRef(Repository repository, String ref, ObjectId target) throws IOException {
    RefUpdate update = repository.updateRef(ref);
    update.setExpectedOldObjectId(ObjectId.zeroId());
    update.setNewObjectId(target);
    update.disableRefLog();
    RefUpdate.Result result = update.update();
    if (result != RefUpdate.Result.NEW) {
      throw new StoreException(
          Reason.REFUSED, ref, "Git refused to make " + ref + " (" + result + ").");
    }
  }

  /**
   * Reads a bundle into a repository of its own, checks every object, and sees that nothing is
   * missing. Branches and tags that a notebook does not use are left out.
   *
   * @param file the bundle
   * @param scratch a folder that does not exist yet, for the repository; the caller deletes it with
   *     {@link #forget}
   * @param mark a file that its main line must have
   * @param belongs whether what lies at the top belongs there; folders end in a slash
   * @param progress told how many objects are read
   * @throws StoreException {@code BAD_BUNDLE} with what is wrong
   */
  public static void read(
      Path file,
      Path scratch,
      String mark,
      Predicate<String> belongs,
      LongConsumer progress) {
    boolean done = false;
    try {
      new BundleReader(file, scratch, mark, belongs, progress).read();
      done = true;
    } finally {
      if (!done) {
        forget(scratch);
      }
    }
  }

  /**
   * Deletes what {@link #read} made.
   *
   * @param scratch the folder
   */
  public static void forget(Path scratch) {
    Faults.guard(
        scratch.toString(),
        () -> {
          Trash.delete(scratch);
          return scratch;
        });
  }
}
