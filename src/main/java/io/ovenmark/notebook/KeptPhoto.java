package io.ovenmark.notebook;

import io.ovenmark.notebook.store.BlobId;
import java.util.function.Function;

/** A photo as the notebook keeps it. What it is can be told without reading it. */
public final class KeptPhoto {
  private final BlobId id;
  private final Function<BlobId, byte[]> reader;

  KeptPhoto(BlobId id, Function<BlobId, byte[]> reader) {
    this.id = id;
    this.reader = reader;
  }

  /**
   * Names its content: equal ids mean equal bytes.
   *
   * @return the id that Git gives it
   */
  public BlobId id() {
    return id;
  }

  /**
   * Reads it.
   *
   * @return the bytes
   */
  public byte[] bytes() {
    return reader.apply(id);
  }
}
