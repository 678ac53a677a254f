package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * Holds Git's {@code index.lock}, so that no native Git changes the index meanwhile.
 *
 * <p>The lock file is a second name (a hard link) of a token of our own. A lock file found after a
 * sudden death is therefore known for certain as ours or not ours. Where the disk has no hard
 * links, ours is the one that stays empty and unchanged while one waits.
 */
final class IndexLock implements AutoCloseable {
  private static final byte[] WITHOUT_LINK = "plain\n".getBytes(StandardCharsets.US_ASCII);

  private final Path lock;
  private final Path token;

  private IndexLock(Path lock, Path token) {
    this.lock = lock;
    this.token = token;
  }

  /**
   * Waits for the lock.
   *
   * @throws StoreException {@code LOCKED}, naming the file, if it is not free in time
   */
  static IndexLock take(Path gitDirectory, Path folder, Duration patience) throws IOException {
    Path lock = gitDirectory.resolve("index.lock");
    Path token = folder.resolve("index.token");
    Patience waiting = new Patience(patience);
    Files.deleteIfExists(token);
    Files.createFile(token);
    while (true) {
      try {
        link(lock, token);
        return new IndexLock(lock, token);
      } catch (FileAlreadyExistsException e) {
        if (!waiting.waits()) {
          throw new StoreException(
              StoreException.Reason.LOCKED,
              lock.toString(),
              "Git is at work on this notebook and holds " + lock
                  + ": wait for it, or delete that file if no Git is running.",
              e);
        }
      }
    }
  }

  private static void link(Path lock, Path token) throws IOException {
    try {
      Files.createLink(lock, token);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (UnsupportedOperationException | FileSystemException e) {
      Files.write(token, WITHOUT_LINK);
      Files.createFile(lock);
    }
  }

  /** Whether a holder of this work tree's index died. */
  static boolean isLeft(Path folder) {
    return Files.exists(folder.resolve("index.token"));
  }

  /** Takes away the lock file of a holder that died, and only that. */
  static void releaseAbandoned(Path gitDirectory, Path folder, Duration patience)
      throws IOException {
    Path lock = gitDirectory.resolve("index.lock");
    Path token = folder.resolve("index.token");
    if (!Files.exists(token)) {
      return;
    }
    if (Files.exists(lock)) {
      boolean ours = Files.isSameFile(lock, token);
      if (!ours && Files.size(token) > 0 && Files.size(lock) == 0) {
        ours = StaleFile.staysUnchanged(lock, patience);
      }
      if (ours) {
        Files.deleteIfExists(lock);
      }
    }
    Files.deleteIfExists(token);
  }

  /** Gives the lock back. */
  @Override
  public void close() throws IOException {
    Files.deleteIfExists(lock);
    Files.deleteIfExists(token);
  }
}
