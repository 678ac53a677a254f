package io.ovenmark.notebook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** The ids of contents and the comparison of files on disk with them. */
final class BlobContent {
  private BlobContent() {}

  /** What a path is on disk, links not followed. */
  enum Kind {
    ABSENT,
    FILE,
    OTHER
  }

  static Kind kind(Path root, Path file) {
    if (SafePath.isBehindLink(root, file)) {
      return Kind.OTHER;
    }
    if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Kind.FILE;
    }
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Kind.OTHER : Kind.ABSENT;
  }

  /** The id Git gives to a content: SHA-1 over {@code blob <length> NUL <bytes>}. */
  static BlobId id(byte[] bytes) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-1");
      digest.update(("blob " + bytes.length + '\0').getBytes(StandardCharsets.US_ASCII));
      digest.update(bytes);
      return new BlobId(HexFormat.of().formatHex(digest.digest()));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-1", e);
    }
  }

  /**
   * Whether bytes read from disk are a stored content.
   *
   * @param crlf whether Git converts line ends on this machine ({@code core.autocrlf}), so that
   *     CR LF on disk counts as LF
   */
  static boolean matches(byte[] bytes, BlobId stored, boolean crlf) {
    return id(bytes).equals(stored) || crlf && id(withoutCarriageReturns(bytes)).equals(stored);
  }

  /** As {@link #matches} for the content of a file; false if it cannot be read. */
  static boolean fileMatches(Path file, Optional<BlobId> stored, boolean crlf)
      throws IOException {
    if (stored.isEmpty()) {
      return false;
    }
    try {
      return matches(Files.readAllBytes(file), stored.get(), crlf);
    } catch (NoSuchFileException | AccessDeniedException e) {
      return false;
    }
  }

  private static byte[] withoutCarriageReturns(byte[] bytes) {
    byte[] kept = new byte[bytes.length];
    int length = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] != '\r' || i + 1 == bytes.length || bytes[i + 1] != '\n') {
        kept[length++] = bytes[i];
      }
    }
    return Arrays.copyOf(kept, length);
  }
}
