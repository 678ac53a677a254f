package io.ovenmark.desk;

import io.ovenmark.notebook.Refusal;
import io.ovenmark.publish.story.StoryFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Puts the files of a story into a folder or an archive. */
public final class StoryFolder {
  /** The first moment that an archive can name; the same files give the same archive. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private StoryFolder() {}

  /**
   * Writes them into a folder; each is there whole or not at all.
   *
   * @param folder where; made when it is missing
   * @param files the files
   * @param replace whether files of the same names may be replaced
   * @throws Refusal when there is a file of one of the names that may not be replaced, before
   *     anything is written, or when the folder cannot be written to
   */
  public static void write(Path folder, List<StoryFile> files, boolean replace) {
    for (StoryFile file : files) {
      if (!replace && Files.exists(folder.resolve(file.name()))) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            folder.resolve(file.name()).toString(),
            "There is a file " + file.name() + " in " + folder + " already.",
            "Name another folder, or add --replace.");
      }
    }
    try {
      Files.createDirectories(folder);
      for (StoryFile file : files) {
        Path part = folder.resolve("." + file.name() + "." + UUID.randomUUID() + ".part");
        try {
          Files.write(part, file.content(), StandardOpenOption.CREATE_NEW);
          Files.move(
              part, folder.resolve(file.name()), StandardCopyOption.REPLACE_EXISTING);
        } finally {
          Files.deleteIfExists(part);
        }
      }
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          folder.toString(),
          "The folder " + folder + " cannot be written to.",
          "Name a folder in which you may write.");
    }
  }

  /**
   * Packs them into a zip archive.
   *
   * @param files the files
   * @return the archive's bytes; the same for the same files
   */
  public static byte[] zip(List<StoryFile> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (StoryFile file : files) {
        ZipEntry entry = new ZipEntry(file.name());
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(file.content());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
