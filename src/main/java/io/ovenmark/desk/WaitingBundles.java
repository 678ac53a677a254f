package io.ovenmark.desk;

import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Bundles that were sent and wait until somebody decides what of them is taken in. They are kept
 * beside Git's data, named after their content; only the newest few are kept.
 *
 * <pre>{@code
 * WaitingBundles waiting = new WaitingBundles(desk);
 * String id = waiting.put(stream, length);
 * new TakeIn(desk).look(waiting.file(id), TakeIn.Choice.NONE, Progress.UNWATCHED);
 * }</pre>
 */
public final class WaitingBundles {
  /** How many are kept. */
  public static final int MOST = 4;

  private static final Pattern ID = Pattern.compile("[0-9a-f]{40}");
  private static final String END = ".bundle";

  private final Path folder;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public WaitingBundles(Desk desk) {
    this.folder = desk.notebook().ownFolder().resolve("waiting-bundles");
  }

  /**
   * Keeps a bundle as it comes in.
   *
   * @param in what comes in
   * @param length how many bytes there are to be
   * @return its name
   * @throws Refusal when it ends too early or cannot be kept
   */
  public String put(InputStream in, long length) {
    try {
      Files.createDirectories(folder);
      Path part = Files.createTempFile(folder, "coming-", ".part");
      try {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        long copied;
        try (OutputStream out = Files.newOutputStream(part)) {
          copied = copy(new DigestInputStream(in, digest), out, length);
        }
        if (copied < length) {
          throw new Refusal(
              Refusal.Reason.INVALID,
              "bundle",
              "The bundle did not come in whole.",
              "Send it again.");
        }
        String id = HexFormat.of().formatHex(digest.digest(), 0, 20);
        Files.move(part, folder.resolve(id + END), StandardCopyOption.ATOMIC_MOVE);
        keepNewest(folder.resolve(id + END));
        return id;
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.NOT_WRITABLE,
          "bundle",
          "The bundle cannot be kept (" + e.getClass().getSimpleName() + ").",
          "See whether the disk is full or may not be written to.");
    }
  }

  private static long copy(InputStream in, OutputStream out, long length) throws IOException {
    byte[] chunk = new byte[1 << 16];
    long copied = 0;
    while (copied < length) {
      int read;
      try {
        read = in.read(chunk, 0, (int) Math.min(chunk.length, length - copied));
      } catch (IOException brokenOff) {
        return copied;
      }
      if (read < 0) {
        return copied;
      }
      out.write(chunk, 0, read);
      copied += read;
    }
    return copied;
  }

  private void keepNewest(Path newest) throws IOException {
    record Aged(Path file, FileTime time) {}

    List<Aged> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(each -> each.toString().endsWith(END)).toList()) {
        all.add(new Aged(file, Files.getLastModifiedTime(file)));
      }
    }
    all.sort(Comparator.comparing(Aged::time).reversed());
    int kept = 1;
    for (Aged each : all) {
      if (!each.file().equals(newest) && ++kept > MOST) {
        Files.deleteIfExists(each.file());
      }
    }
  }

  /**
   * The file of a bundle.
   *
   * @param id its name
   * @return the file
   * @throws Refusal when it does not wait any more
   */
  public Path file(String id) {
    if (ID.matcher(id).matches() && Files.isRegularFile(folder.resolve(id + END))) {
      return folder.resolve(id + END);
    }
    throw new Refusal(
        Refusal.Reason.NOT_FOUND,
        "bundle",
        "This bundle does not wait any more.",
        "Send it again.");
  }

  /**
   * Throws a bundle away.
   *
   * @param id its name
   */
  public void forget(String id) {
    try {
      Files.deleteIfExists(file(id));
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.NOT_WRITABLE, "bundle", "The bundle cannot be deleted.", "Try again.");
    }
  }
}
