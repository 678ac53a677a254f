package io.ovenmark.pantry;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * The files of a downloaded food table, in a folder or a zip file, found by name without regard to
 * case or to the folder inside. Close it after use.
 */
final class FoodFiles implements AutoCloseable {
  private static final int DEEPEST = 3;
  private static final int BUFFER = 1 << 16;

  private final Map<String, Path> paths = new HashMap<>();
  private final Map<String, ZipEntry> entries = new HashMap<>();
  private final ZipFile zip;

  private FoodFiles(ZipFile zip) {
    this.zip = zip;
  }

  static FoodFiles open(Path place) throws IOException {
    if (Files.isDirectory(place)) {
      FoodFiles files = new FoodFiles(null);
      try (Stream<Path> found = Files.walk(place, DEEPEST)) {
        found
            .filter(Files::isRegularFile)
            .sorted()
            .forEach(path -> files.paths.putIfAbsent(lower(path.getFileName().toString()), path));
      } catch (UncheckedIOException e) {
        throw e.getCause();
      }
      return files;
    }
    if (!Files.isRegularFile(place)) {
      throw new IllegalArgumentException(
          "\"" + place + "\" is neither a folder nor a file.\n"
              + "Give the folder or the zip file that was downloaded.");
    }
    try {
      FoodFiles files = new FoodFiles(new ZipFile(place.toFile()));
      files
          .zip
          .stream()
          .filter(entry -> !entry.isDirectory())
          .forEach(entry -> files.entries.putIfAbsent(lower(baseName(entry)), entry));
      return files;
    } catch (ZipException e) {
      throw new IllegalArgumentException(
          "\"" + place + "\" is not a zip file.\n"
              + "Give the zip file as it was downloaded, or the folder it was unpacked to.",
          e);
    }
  }

  boolean has(String name) {
    return paths.containsKey(lower(name)) || entries.containsKey(lower(name));
  }

  /** Size in bytes when unpacked; empty when the zip file does not tell. */
  Optional<Long> size(String name) throws IOException {
    if (zip == null) {
      return Optional.of(Files.size(paths.get(lower(name))));
    }
    long size = entries.get(lower(name)).getSize();
    return size < 0 ? Optional.empty() : Optional.of(size);
  }

  /** Opens a file; the counter is told the bytes read so far, at every refill of the buffer. */
  InputStream read(String name, LongConsumer counter) throws IOException {
    InputStream raw =
        zip == null
            ? Files.newInputStream(paths.get(lower(name)))
            : zip.getInputStream(entries.get(lower(name)));
    return new BufferedInputStream(new Counting(raw, counter), BUFFER);
  }

  @Override
  public void close() throws IOException {
    if (zip != null) {
      zip.close();
    }
  }

  private static String baseName(ZipEntry entry) {
    String name = entry.getName().replace('\\', '/');
    return name.substring(name.lastIndexOf('/') + 1);
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static final class Counting extends FilterInputStream {
    private final LongConsumer counter;
    private long count;

    Counting(InputStream in, LongConsumer counter) {
      super(in);
      this.counter = counter;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int read = super.read(into, offset, length);
      if (read > 0) {
        count += read;
        counter.accept(count);
      }
      return read;
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      if (read >= 0) {
        counter.accept(++count);
      }
      return read;
    }
  }
}
