package io.ovenmark.notebook.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.lib.ObjectChecker;

/** Which paths may be stored, and where they are on disk. */
final class SafePath {
  private SafePath() {}

  /**
   * Checks the path of a file that is to be written.
   *
   * @return the path
   * @throws StoreException {@code PATH_OUTSIDE} if it is not relative, has empty segments, dots,
   *     backslashes or control characters, or touches Git's own folder under any of its names
   */
  static String check(String path) {
    boolean odd = path.chars().anyMatch(c -> c == '\\' || Character.isISOControl(c));
    if (odd || path.isEmpty() || path.matches("[A-Za-z]:.*") || hasLoneSurrogate(path)) {
      throw outside(path);
    }
    try {
      new ObjectChecker().setSafeForMacOS(true).checkPath(path);
    } catch (CorruptObjectException e) {
      throw outside(path);
    }
    for (String segment : path.split("/", -1)) {
      String name = segment.toLowerCase(Locale.ROOT).replaceAll("[ .]+$", "");
      if (name.isEmpty() || name.equals(".git") || name.startsWith(".git:")) {
        throw outside(path);
      }
    }
    return path;
  }

  /** Checks the path of a folder to be read; the empty path is the whole notebook. */
  static String checkFolder(String folder) {
    String bare = folder.endsWith("/") ? folder.substring(0, folder.length() - 1) : folder;
    return bare.isEmpty() && folder.isEmpty() ? "" : check(bare);
  }

  /**
   * Where a file of the notebook is on disk.
   *
   * @throws StoreException {@code PATH_OUTSIDE} if this machine has no such file name
   */
  static Path onDisk(Path root, String path) {
    try {
      return root.resolve(path);
    } catch (InvalidPathException e) {
      throw new StoreException(
          StoreException.Reason.PATH_OUTSIDE,
          path,
          "The file name " + path + " cannot be written here: start with a UTF-8 locale.",
          e);
    }
  }

  /** Whether this machine can name the file. */
  static boolean isRepresentable(Path root, String path) {
    try {
      root.resolve(path);
      return true;
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** Whether a folder between the root and the file is a link or a file. */
  static boolean isBehindLink(Path root, Path file) {
    Path folder = file.getParent();
    while (folder != null && !folder.equals(root)) {
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
          && !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        return true;
      }
      folder = folder.getParent();
    }
    return false;
  }

  private static boolean hasLoneSurrogate(String path) {
    return path.codePoints().anyMatch(c -> c >= 0xD800 && c <= 0xDFFF);
  }

  private static StoreException outside(String path) {
    return new StoreException(
        StoreException.Reason.PATH_OUTSIDE,
        path,
        "The path \"" + path + "\" leads outside the notebook or cannot be a file in it.");
  }
}
