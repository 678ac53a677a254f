package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Deletes folders that this program made for its work. */
final class Trash {
  private Trash() {}

  /** Deletes a folder with everything in it; links are deleted, not followed. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> files = Files.walk(folder)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      Files.deleteIfExists(file);
    }
  }
}
