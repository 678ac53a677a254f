package io.ovenmark.cli;

import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a file that was named on the command line; {@code -} is the standard input. */
final class InputFile {
  private static final int GREATEST = 8 * 1024 * 1024;

  private InputFile() {}

  /** Its bytes. */
  static byte[] read(Surroundings surroundings, String name) {
    try {
      if (name.equals("-")) {
        byte[] bytes = surroundings.in().readNBytes(GREATEST + 1);
        return checked(name, bytes);
      }
      Path file = checkedPath(surroundings, name);
      if (Files.size(file) > GREATEST) {
        throw tooLarge(name);
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new Refusal(
          Refusal.Reason.INVALID, name, "There is no such file.", "Check the name and the folder.");
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          name,
          "The file cannot be read (" + e.getClass().getSimpleName() + ").",
          "Check that it is a file and that you may read it.");
    }
  }

  /** The name for messages about its content. */
  static String shown(String name) {
    return name.equals("-") ? "standard input" : name;
  }

  private static Path checkedPath(Surroundings surroundings, String name) throws IOException {
    Path file = Verb.checked("file", () -> surroundings.folder().resolve(name)).normalize();
    if (Files.isDirectory(file)) {
      throw new Refusal(
          Refusal.Reason.INVALID, name, "This is a folder, not a file.", "Name a file in it.");
    }
    return file;
  }

  private static byte[] checked(String name, byte[] bytes) {
    if (bytes.length > GREATEST) {
      throw tooLarge(name);
    }
    return bytes;
  }

  private static Refusal tooLarge(String name) {
    return new Refusal(
        Refusal.Reason.INVALID,
        shown(name),
        "The file is larger than 8 MB, far more than a formula.",
        "Check that it is the file you mean.");
  }
}
