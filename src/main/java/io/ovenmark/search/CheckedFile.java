package io.ovenmark.search;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.CRC32C;

/**
 * A file of what can be made anew at any time: a mark with the number of its format, a body, and a
 * checksum (CRC-32C) over both. A file that is not exactly so counts as none. It is replaced at
 * once, so that somebody who reads meanwhile sees the old one or the new one.
 */
public final class CheckedFile {
  private static final Duration LONGEST_WRITE = Duration.ofHours(1);

  private final Path folder;
  private final String name;
  private final long mark;

  /** Reads a body to its end. */
  @FunctionalInterface
  public interface Reader<T> {
    /**
     * Reads.
     *
     * @param in the body
     * @return what it says
     * @throws IOException when it is cut off
     */
    T read(DataInputStream in) throws IOException;
  }

  /** Writes a body. */
  @FunctionalInterface
  public interface Writer {
    /**
     * Writes.
     *
     * @param out where to
     * @throws IOException never
     */
    void write(DataOutputStream out) throws IOException;
  }

  /**
   * A file.
   *
   * @param folder where it is; made when it is written
   * @param name its name there
   * @param mark what it begins with, other for each format
   */
  public CheckedFile(Path folder, String name, long mark) {
    this.folder = folder;
    this.name = name;
    this.mark = mark;
  }

  /**
   * Where it is.
   *
   * @return the file, which may be missing
   */
  public Path path() {
    return folder.resolve(name);
  }

  /**
   * Reads it.
   *
   * @param reader reads the body
   * @param <T> what the body says
   * @return empty when there is none that can be used
   */
  public <T> Optional<T> read(Reader<T> reader) {
    try {
      byte[] bytes = Files.readAllBytes(path());
      int end = bytes.length - Long.BYTES;
      if (end < Long.BYTES || ByteBuffer.wrap(bytes).getLong(end) != checksum(bytes, end)) {
        return Optional.empty();
      }
      DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes, 0, end));
      if (in.readLong() != mark) {
        return Optional.empty();
      }
      T read = reader.read(in);
      return in.read() < 0 ? Optional.of(read) : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /**
   * Writes it anew.
   *
   * @param writer writes the body
   * @throws IOException when the folder cannot be written
   */
  public void write(Writer writer) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeLong(mark);
    writer.write(out);
    byte[] body = bytes.toByteArray();
    out.writeLong(checksum(body, body.length));
    replace(bytes.toByteArray());
  }

  private void replace(byte[] bytes) throws IOException {
    Files.createDirectories(folder);
    Path part = folder.resolve(name + "-" + UUID.randomUUID() + ".part");
    try {
      Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      deletePartsBefore(part);
      Files.move(part, path(), StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** What a writer left that died at its work: nobody takes so long to write a part. */
  private void deletePartsBefore(Path mine) throws IOException {
    Instant longAgo = Files.getLastModifiedTime(mine).toInstant().minus(LONGEST_WRITE);
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, name + "-*.part")) {
      for (Path part : parts) {
        if (Files.getLastModifiedTime(part).toInstant().isBefore(longAgo)) {
          Files.deleteIfExists(part);
        }
      }
    }
  }

  private static long checksum(byte[] bytes, int end) {
    CRC32C checksum = new CRC32C();
    checksum.update(bytes, 0, end);
    return checksum.getValue();
  }
}
