package io.ovenmark.notebook;

import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.GitStore;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** Contents that are read from a notebook, some of them made anew on the way. */
final class MadeContents {
  private final GitStore source;
  private final Function<byte[], Optional<byte[]>> pictures;
  private final Map<BlobId, byte[]> made = new HashMap<>();
  private final Map<BlobId, Optional<BlobId>> cleaned = new HashMap<>();
  private final Map<BlobId, BlobId> originals = new HashMap<>();
  private final SortedSet<String> stripped = new TreeSet<>();

  /**
   * Begins.
   *
   * @param source where contents are read
   * @param pictures a picture without what it tells beside what it shows; empty when it is none
   */
  MadeContents(GitStore source, Function<byte[], Optional<byte[]>> pictures) {
    this.source = source;
    this.pictures = pictures;
  }

  /** Keeps bytes that are nowhere yet. */
  BlobId put(byte[] bytes) {
    BlobId id = source.hash(bytes);
    made.putIfAbsent(id, bytes);
    return id;
  }

  /** A picture without what it tells beside what it shows; empty when it is none. */
  Optional<BlobId> picture(String path, BlobId blob) {
    Optional<BlobId> known = cleaned.get(blob);
    if (known == null) {
      byte[] bytes = source.read(blob);
      known = pictures.apply(bytes).map(source::hash);
      cleaned.put(blob, known);
      known.filter(id -> !id.equals(blob)).ifPresent(id -> originals.put(id, blob));
    }
    if (known.filter(id -> !id.equals(blob)).isPresent()) {
      stripped.add(path);
    }
    return known;
  }

  /** Those of these files that are no picture although they are called so. */
  List<String> unreadable(SortedMap<String, BlobId> files) {
    return files.keySet().stream()
        .filter(Layout::isPhoto)
        .filter(path -> picture(path, files.get(path)).isEmpty())
        .toList();
  }

  /** Pictures that were written anew. */
  SortedSet<String> stripped() {
    return stripped;
  }

  /** The bytes of a content. */
  byte[] read(BlobId blob) {
    byte[] own = made.get(blob);
    if (own != null) {
      return own;
    }
    BlobId original = originals.get(blob);
    return original == null
        ? source.read(blob)
        : pictures.apply(source.read(original)).orElseThrow();
  }
}
