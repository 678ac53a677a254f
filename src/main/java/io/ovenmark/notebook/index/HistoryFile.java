package io.ovenmark.notebook.index;

import io.ovenmark.notebook.index.HistoryTable.Columns;
import io.ovenmark.notebook.store.Author;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * A {@link HistoryTable} on disk: a mark with the number of the format, the columns one after the
 * other, and a checksum (CRC-32C) over all of it. A file that is not exactly so counts as none.
 */
final class HistoryFile {
  private static final long MARK = 0x3149534948564fL;
  private static final int SHORTEST = 3 * Long.BYTES;
  private static final String NAME = "history";

  private final Path folder;

  HistoryFile(Path folder) {
    this.folder = folder;
  }

  Path path() {
    return folder.resolve(NAME);
  }

  /**
   * Reads the file.
   *
   * @param fingerprint of that which rows depend on besides their commits
   * @return empty if there is none that can be used
   */
  Optional<HistoryTable> read(long fingerprint) {
    try {
      byte[] bytes = Files.readAllBytes(path());
      ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
      if (bytes.length < SHORTEST) {
        return Optional.empty();
      }
      int end = bytes.length - Long.BYTES;
      boolean whole =
          buffer.getLong() == MARK
              && buffer.getLong() == fingerprint
              && buffer.getLong(end) == checksum(bytes, end);
      return whole ? Optional.of(decode(buffer.limit(end))) : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static HistoryTable decode(ByteBuffer buffer) {
    IdColumn commits = new IdColumn(bytes(buffer));
    Columns c = new Columns();
    c.parent = ints(buffer);
    c.line = ints(buffer);
    c.position = ints(buffer);
    c.flags = ints(buffer);
    c.secondsHigh = ints(buffer);
    c.secondsLow = ints(buffer);
    c.offset = ints(buffer);
    c.author = ints(buffer);
    c.messageEnd = ints(buffer);
    c.changeEnd = ints(buffer);
    c.changeCommit = ints(buffer);
    c.changePath = ints(buffer);
    c.changeFrom = ints(buffer);
    c.lineParent = ints(buffer);
    c.linePosition = ints(buffer);
    c.lineLength = ints(buffer);
    c.blobs = new IdColumn(bytes(buffer));
    c.messages = bytes(buffer);
    List<String> paths = strings(buffer);
    List<String> names = strings(buffer);
    List<Author> authors = new ArrayList<>();
    for (int i = 0; i + 1 < names.size(); i += 2) {
      authors.add(new Author(names.get(i), names.get(i + 1)));
    }
    if (buffer.hasRemaining()
        || c.changeEnd.size() != commits.size()
        || c.blobs.size() != c.changePath.size()) {
      throw new IllegalArgumentException("The columns do not fit together");
    }
    return new HistoryTable(commits, c, paths, authors);
  }

  /** Writes the file anew; somebody who reads meanwhile sees the old one or the new one. */
  void write(HistoryTable table, long fingerprint) throws IOException {
    Columns c = table.columns;
    List<Ints> ints =
        List.of(
            c.parent, c.line, c.position, c.flags, c.secondsHigh, c.secondsLow, c.offset,
            c.author, c.messageEnd, c.changeEnd, c.changeCommit, c.changePath, c.changeFrom,
            c.lineParent, c.linePosition, c.lineLength);
    List<byte[]> paths = encode(table.paths());
    List<String> names = new ArrayList<>();
    table.authors().forEach(author -> names.addAll(List.of(author.name(), author.email())));
    List<byte[]> authors = encode(names);
    long length = SHORTEST + 5L * Integer.BYTES;
    for (Ints column : ints) {
      length += (column.size() + 1L) * Integer.BYTES;
    }
    length += (long) table.commits.bytes().size() + c.blobs.bytes().size() + c.messages.size();
    length += length(paths) + length(authors);
    ByteBuffer buffer =
        ByteBuffer.allocate(Math.toIntExact(length)).order(ByteOrder.LITTLE_ENDIAN);
    buffer.putLong(MARK).putLong(fingerprint);
    put(buffer, table.commits.bytes());
    ints.forEach(column -> put(buffer, column));
    put(buffer, c.blobs.bytes());
    put(buffer, c.messages);
    put(buffer, paths);
    put(buffer, authors);
    buffer.putLong(checksum(buffer.array(), buffer.position()));
    replace(buffer.array());
  }

  private void replace(byte[] bytes) throws IOException {
    Files.createDirectories(folder);
    long mine = ProcessHandle.current().pid();
    Path part = folder.resolve(NAME + "-" + mine + "-" + System.nanoTime() + ".part");
    try {
      Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      Files.move(part, path(), StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
    deletePartsOfTheDead();
  }

  private void deletePartsOfTheDead() throws IOException {
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, NAME + "-*.part")) {
      for (Path part : parts) {
        String[] words = part.getFileName().toString().split("-", -1);
        boolean alive = ProcessHandle.of(Long.parseLong(words[1])).isPresent();
        if (!alive) {
          Files.deleteIfExists(part);
        }
      }
    } catch (NumberFormatException e) {
      return;
    }
  }

  private static long checksum(byte[] bytes, int end) {
    CRC32C checksum = new CRC32C();
    checksum.update(bytes, 0, end);
    return checksum.getValue();
  }

  private static List<byte[]> encode(List<String> texts) {
    return texts.stream().map(text -> text.getBytes(StandardCharsets.UTF_8)).toList();
  }

  private static long length(List<byte[]> texts) {
    return texts.stream().mapToLong(text -> text.length + (long) Integer.BYTES).sum();
  }

  private static void put(ByteBuffer buffer, Ints column) {
    int[] values = column.toArray();
    buffer.putInt(values.length);
    buffer.asIntBuffer().put(values);
    buffer.position(buffer.position() + values.length * Integer.BYTES);
  }

  private static void put(ByteBuffer buffer, Bytes column) {
    buffer.putInt(column.size());
    buffer.put(column.array(), 0, column.size());
  }

  private static void put(ByteBuffer buffer, List<byte[]> texts) {
    buffer.putInt(texts.size());
    texts.forEach(text -> buffer.putInt(text.length).put(text));
  }

  private static Ints ints(ByteBuffer buffer) {
    int[] values = new int[checked(buffer, buffer.getInt(), Integer.BYTES)];
    buffer.asIntBuffer().get(values);
    buffer.position(buffer.position() + values.length * Integer.BYTES);
    return Ints.of(values);
  }

  private static Bytes bytes(ByteBuffer buffer) {
    byte[] values = new byte[checked(buffer, buffer.getInt(), 1)];
    buffer.get(values);
    return Bytes.of(values);
  }

  private static List<String> strings(ByteBuffer buffer) {
    int count = checked(buffer, buffer.getInt(), Integer.BYTES);
    List<String> texts = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      byte[] text = new byte[checked(buffer, buffer.getInt(), 1)];
      buffer.get(text);
      texts.add(new String(text, StandardCharsets.UTF_8));
    }
    return texts;
  }

  private static int checked(ByteBuffer buffer, int count, int width) {
    if (count < 0 || (long) count * width > buffer.remaining()) {
      throw new IllegalArgumentException("A column is longer than the file");
    }
    return count;
  }
}
