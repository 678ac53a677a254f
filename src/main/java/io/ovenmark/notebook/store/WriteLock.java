package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one writer at a time into a repository, over all threads and processes.
 *
 * <p>The operating system gives the lock back when a process dies. While it is held the lock file
 * has a content; whoever finds a content in a file that it could lock knows that the holder before
 * died at its work.
 */
final class WriteLock implements AutoCloseable {
  private static final ConcurrentHashMap<Path, ReentrantLock> IN_THIS_PROGRAM =
      new ConcurrentHashMap<>();
  private static final byte[] HELD = "held\n".getBytes(StandardCharsets.US_ASCII);

  private final ReentrantLock threads;
  private final FileChannel channel;
  private final FileLock processes;
  private final boolean abandoned;
  private final Path file;

  private WriteLock(
      Path file,
      ReentrantLock threads,
      FileChannel channel,
      FileLock processes,
      boolean abandoned) {
    this.file = file;
    this.threads = threads;
    this.channel = channel;
    this.processes = processes;
    this.abandoned = abandoned;
  }

  /**
   * Waits for the lock.
   *
   * @param folder where the lock file is; made if it does not exist
   * @throws StoreException {@code LOCKED} if it is not free in time
   */
  static WriteLock take(Path folder, Duration patience) throws IOException {
    Files.createDirectories(folder);
    Path file = folder.toRealPath().resolve("write.lock");
    Patience waiting = new Patience(patience);
    ReentrantLock threads = IN_THIS_PROGRAM.computeIfAbsent(file, f -> new ReentrantLock(true));
    try {
      if (!threads.tryLock(waiting.left(), TimeUnit.NANOSECONDS)) {
        throw busy(file);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw busy(file);
    }
    FileChannel channel = null;
    boolean done = false;
    try {
      if (threads.getHoldCount() > 1) {
        throw new IllegalStateException("This thread is already writing to " + folder);
      }
      channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock processes = channel.tryLock();
      while (processes == null && waiting.waits()) {
        processes = channel.tryLock();
      }
      if (processes == null) {
        throw busy(file);
      }
      boolean abandoned = channel.size() > 0;
      channel.write(ByteBuffer.wrap(HELD), 0);
      done = true;
      return new WriteLock(file, threads, channel, processes, abandoned);
    } finally {
      if (!done) {
        try {
          if (channel != null) {
            channel.close();
          }
        } finally {
          threads.unlock();
        }
      }
    }
  }

  /** Whether the file shows a holder, alive or dead; asked without taking the lock. */
  static boolean looksHeld(Path folder) {
    try {
      return Files.size(folder.resolve("write.lock")) > 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** Whether the holder before died at its work. */
  boolean wasAbandoned() {
    return abandoned;
  }

  /** When it was taken, by the clock of the disk. */
  FileTime time() throws IOException {
    return Files.getLastModifiedTime(file);
  }

  /** Gives the lock back. */
  @Override
  public void close() throws IOException {
    try {
      channel.truncate(0);
      processes.release();
    } finally {
      try {
        channel.close();
      } finally {
        threads.unlock();
      }
    }
  }

  private static StoreException busy(Path file) {
    return new StoreException(
        StoreException.Reason.LOCKED,
        file.toString(),
        "The notebook is being written to by someone else (" + file + "): try again.");
  }
}
