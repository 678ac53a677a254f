package io.ovenmark.cli;

import io.ovenmark.bake.Photo;
import io.ovenmark.desk.NewPhoto;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.PhotoNormaliser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a picture that was named on the command line. */
final class PhotoFile {
  private PhotoFile() {}

  /** The picture with what is said of it. */
  static NewPhoto read(Path file, Optional<String> caption, List<Photo.Mark> marks) {
    return new NewPhoto(bytes(file), file.getFileName().toString(), caption, marks);
  }

  private static byte[] bytes(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw refused(file, "This is a folder, not a picture.", "Name a file in it.");
      }
      if (Files.size(file) > PhotoNormaliser.MOST_BYTES) {
        throw refused(
            file,
            "The file is larger than " + (PhotoNormaliser.MOST_BYTES >> 20) + " MB.",
            "Save the picture smaller.");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw refused(file, "There is no such file.", "Check the name and the folder.");
    } catch (IOException e) {
      throw refused(
          file,
          "The file cannot be read (" + e.getClass().getSimpleName() + ").",
          "Check that it is a file and that you may read it.");
    }
  }

  private static Refusal refused(Path file, String sentence, String hint) {
    return new Refusal(Refusal.Reason.INVALID, file.toString(), sentence, hint);
  }
}
