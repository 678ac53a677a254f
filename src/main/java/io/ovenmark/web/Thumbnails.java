package io.ovenmark.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Pictures that were made smaller, each once: kept in memory, where the least recently used make
 * room, and on disk, where the oldest do. A content always has the same smaller pictures, so that
 * nothing here is ever out of date; all of it may be deleted at any time.
 */
final class Thumbnails {
  /** Bytes kept on disk at most. */
  static final long MOST_ON_DISK = 256L << 20;

  private static final long MOST_IN_MEMORY = 32L << 20;

  /** How many are made at a time; each takes some 40 MB. */
  private static final int AT_WORK = 2;

  private static final String ENDING = ".jpg";

  private final Path folder;
  private final long mostOnDisk;
  private final Semaphore atWork = new Semaphore(AT_WORK, true);
  private final Map<String, byte[]> known = new LinkedHashMap<>(64, 0.75f, true);
  private final Deque<Kept> onDisk = new ArrayDeque<>();
  private long bytesInMemory;
  private long bytesOnDisk = -1;

  private record Kept(Path file, long bytes, long since) {}

  /**
   * Keeps them in a folder.
   *
   * @param folder where; made when the first is kept
   * @param mostOnDisk bytes kept there at most
   */
  Thumbnails(Path folder, long mostOnDisk) {
    this.folder = folder;
    this.mostOnDisk = mostOnDisk;
  }

  /**
   * A smaller picture.
   *
   * @param content names the content of the picture, in hexadecimal digits
   * @param width its greatest width
   * @param make makes it; not asked when it was made before
   * @return a JPEG
   */
  byte[] get(String content, int width, Supplier<byte[]> make) {
    String name = content + "-" + width;
    return remembered(name)
        .or(() -> read(name))
        .orElseGet(() -> made(name, make));
  }

  private byte[] made(String name, Supplier<byte[]> make) {
    atWork.acquireUninterruptibly();
    try {
      return remembered(name)
          .orElseGet(
              () -> {
                byte[] picture = make.get();
                keep(name, picture);
                remember(name, picture);
                return picture;
              });
    } finally {
      atWork.release();
    }
  }

  private synchronized Optional<byte[]> remembered(String name) {
    return Optional.ofNullable(known.get(name));
  }

  private synchronized void remember(String name, byte[] picture) {
    if (known.put(name, picture) == null) {
      bytesInMemory += picture.length;
    }
    var eldest = known.entrySet().iterator();
    while (bytesInMemory > MOST_IN_MEMORY && eldest.hasNext()) {
      bytesInMemory -= eldest.next().getValue().length;
      eldest.remove();
    }
  }

  /** {@code ab/cdef…-400.jpg}: folders of some hundred files each. */
  private Path file(String name) {
    return folder.resolve(name.substring(0, 2)).resolve(name.substring(2) + ENDING);
  }

  private Optional<byte[]> read(String name) {
    try {
      byte[] picture = Files.readAllBytes(file(name));
      if (isWhole(picture)) {
        remember(name, picture);
        return Optional.of(picture);
      }
    } catch (IOException notThere) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  /** From its beginning to its end (ITU-T T.81, B.1.1.3: SOI and EOI). */
  private static boolean isWhole(byte[] jpeg) {
    int n = jpeg.length;
    return n > 4
        && (jpeg[0] & 0xff) == 0xff
        && (jpeg[1] & 0xff) == 0xd8
        && (jpeg[n - 2] & 0xff) == 0xff
        && (jpeg[n - 1] & 0xff) == 0xd9;
  }

  /** Writes it, if the disk lets us: without it the picture is made again next time. */
  private synchronized void keep(String name, byte[] picture) {
    try {
      Path file = file(name);
      Files.createDirectories(file.getParent());
      if (bytesOnDisk < 0) {
        count();
      }
      Path part = Files.createTempFile(file.getParent(), "part", ".part");
      try {
        Files.write(part, picture);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(part);
      }
      onDisk.addLast(new Kept(file, picture.length, Long.MAX_VALUE));
      bytesOnDisk += picture.length;
      while (bytesOnDisk > mostOnDisk && onDisk.size() > 1) {
        Kept oldest = onDisk.removeFirst();
        Files.deleteIfExists(oldest.file());
        bytesOnDisk -= oldest.bytes();
      }
    } catch (IOException | UncheckedIOException e) {
      bytesOnDisk = -1;
    }
  }

  /** Looks at what there is, once. */
  private void count() throws IOException {
    List<Kept> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder, 2)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        BasicFileAttributes facts = Files.readAttributes(file, BasicFileAttributes.class);
        if (facts.isRegularFile()) {
          found.add(new Kept(file, facts.size(), facts.lastModifiedTime().toMillis()));
        }
      }
    }
    found.sort(Comparator.comparingLong(Kept::since));
    onDisk.clear();
    onDisk.addAll(found);
    bytesOnDisk = found.stream().mapToLong(Kept::bytes).sum();
  }
}
