package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Takes pictures in. A picture comes over the network at its own pace into a file, which is gone
 * when the request is; only then it takes its turn to be unfolded in memory, {@value #AT_WORK} at a
 * time. When too many come at once, further ones are refused, to be sent again a little later.
 */
final class Uploads {
  /** How many are unfolded in memory at a time; each takes some 300 MB at most. */
  static final int AT_WORK = 2;

  /** How many may come in or wait for their turn at a time. */
  static final int ON_THE_WAY = 8;

  private static final int CHUNK = 64 << 10;
  private static final long PATIENCE_SECONDS = 60;

  private final Semaphore onTheWay = new Semaphore(ON_THE_WAY);
  private final Semaphore atWork = new Semaphore(AT_WORK, true);

  /**
   * Receives the picture that a request carries.
   *
   * @param context the request; how much it carries is known to be allowed
   * @param work what is done with the bytes, one of few at a time
   * @return what the work gave
   * @throws Denied when there are too many at once, or the request was broken off
   */
  <T> T receive(Context context, Function<byte[], T> work) {
    if (!onTheWay.tryAcquire()) {
      throw busy();
    }
    try {
      return received(context, work);
    } finally {
      onTheWay.release();
    }
  }

  private <T> T received(Context context, Function<byte[], T> work) {
    try {
      Path file = Files.createTempFile("ovenmark", ".upload");
      try (FileChannel channel =
          FileChannel.open(
              file,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE)) {
        requireAll(context, copy(context, channel));
        return inTurn(channel, work);
      }
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.NOT_WRITABLE,
          "photo",
          "The picture cannot be taken in (" + e.getClass().getSimpleName() + ").",
          "See whether the disk is full or may not be written to.");
    }
  }

  private static long copy(Context context, FileChannel channel) throws IOException {
    byte[] chunk = new byte[CHUNK];
    long most = context.contentLength();
    long copied = 0;
    InputStream in = context.bodyInputStream();
    while (copied < most) {
      int read = read(in, chunk, (int) Math.min(CHUNK, most - copied));
      if (read < 0) {
        break;
      }
      ByteBuffer rest = ByteBuffer.wrap(chunk, 0, read);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      copied += read;
    }
    return copied;
  }

  private static int read(InputStream in, byte[] chunk, int most) {
    try {
      return in.read(chunk, 0, most);
    } catch (IOException brokenOff) {
      return -1;
    }
  }

  private static void requireAll(Context context, long copied) {
    if (copied < context.contentLength()) {
      throw new Denied(
          400, "cut_off", "The picture did not come in whole.", "Send it again.");
    }
  }

  private <T> T inTurn(FileChannel channel, Function<byte[], T> work)
      throws IOException {
    boolean turn;
    try {
      turn = atWork.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw busy();
    }
    if (!turn) {
      throw busy();
    }
    try {
      ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
      channel.position(0);
      while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
        continue;
      }
      return work.apply(bytes.array());
    } finally {
      atWork.release();
    }
  }

  /**
   * Reads what is still on its way and forgets it, so that the answer to a picture that is not wanted
   * is not lost in a broken connection.
   *
   * @param context the request; how much it carries is known to be allowed
   */
  static void drain(Context context) {
    byte[] chunk = new byte[CHUNK];
    InputStream in = context.bodyInputStream();
    while (read(in, chunk, CHUNK) >= 0) {
      continue;
    }
  }

  private static Denied busy() {
    return new Denied(
        503,
        "busy",
        "Other pictures are being made ready just now.",
        "Wait a moment, then send it again.");
  }
}
