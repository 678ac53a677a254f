package io.ovenmark.notebook;

import io.ovenmark.notebook.store.BundleFile;
import io.ovenmark.notebook.store.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

/** Folders beside the repository's objects in which a history is taken apart or put together. */
final class ScratchFolder {
  private static final String FOLDER = "sharing";
  private static final String WORK = "work-";

  /** What was left so long ago belongs to nobody who is still at work. */
  private static final Duration FORGOTTEN = Duration.ofHours(6);

  private ScratchFolder() {}

  /** A name for a new one; what a killed program left some hours ago is deleted. */
  static Path in(Path ownFolder) {
    try {
      Path folder = Files.createDirectories(ownFolder.resolve(FOLDER));
      Path fresh = Files.createTempDirectory(folder, WORK);
      FileTime now = Files.getLastModifiedTime(fresh);
      List<Path> others;
      try (Stream<Path> found = Files.list(folder)) {
        others = found.filter(each -> !each.equals(fresh)).toList();
      }
      for (Path other : others) {
        if (other.getFileName().toString().startsWith(WORK)
            && Duration.between(Files.getLastModifiedTime(other).toInstant(), now.toInstant())
                    .compareTo(FORGOTTEN)
                > 0) {
          BundleFile.forget(other);
        }
      }
      return fresh;
    } catch (IOException e) {
      throw new StoreException(
          StoreException.Reason.DISK,
          ownFolder.toString(),
          "Nothing can be written to " + ownFolder + " (" + e.getClass().getSimpleName() + ").",
          e);
    }
  }
}
