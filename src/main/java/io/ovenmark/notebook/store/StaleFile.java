package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Objects;

/** Tells a lock file that nobody works with any more. */
final class StaleFile {
  private StaleFile() {}

  /** Waits; true if the file was there and the same all the time. */
  static boolean staysUnchanged(Path file, Duration patience) throws IOException {
    try {
      BasicFileAttributes first = attributes(file);
      Patience waiting = new Patience(patience);
      while (waiting.waits()) {
        BasicFileAttributes now = attributes(file);
        if (!Objects.equals(now.fileKey(), first.fileKey())
            || !now.lastModifiedTime().equals(first.lastModifiedTime())
            || now.size() != first.size()) {
          return false;
        }
      }
      return !Thread.currentThread().isInterrupted();
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private static BasicFileAttributes attributes(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class);
  }
}
