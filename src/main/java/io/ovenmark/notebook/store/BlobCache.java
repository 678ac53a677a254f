package io.ovenmark.notebook.store;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps the contents that were read last, up to a sum of bytes. */
final class BlobCache {
  private static final long MOST_BYTES = 32L << 20;
  private static final int LARGEST_BLOB = 1 << 20;
  private static final int OVERHEAD = 100;

  private final Map<BlobId, byte[]> contents = new LinkedHashMap<>(16, 0.75f, true);
  private long bytes;

  synchronized byte[] get(BlobId id) {
    return contents.get(id);
  }

  synchronized void put(BlobId id, byte[] content) {
    if (content.length > LARGEST_BLOB || contents.put(id, content) != null) {
      return;
    }
    bytes += content.length + OVERHEAD;
    Iterator<byte[]> oldest = contents.values().iterator();
    while (bytes > MOST_BYTES) {
      bytes -= oldest.next().length + OVERHEAD;
      oldest.remove();
    }
  }
}
