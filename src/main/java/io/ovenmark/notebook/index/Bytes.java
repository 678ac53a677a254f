package io.ovenmark.notebook.index;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A list of bytes that grows. */
final class Bytes {
  private byte[] values;
  private int size;

  Bytes() {
    this(new byte[256], 0);
  }

  private Bytes(byte[] values, int size) {
    this.values = values;
    this.size = size;
  }

  /** Takes over an array. */
  static Bytes of(byte[] values) {
    return new Bytes(values, values.length);
  }

  void add(byte[] more) {
    int needed = Math.addExact(size, more.length);
    if (needed > values.length) {
      values = Arrays.copyOf(values, (int) Math.min(Integer.MAX_VALUE - 8, 2L * needed));
    }
    System.arraycopy(more, 0, values, size, more.length);
    size = needed;
  }

  int size() {
    return size;
  }

  /** The bytes themselves; only the first {@link #size} count. */
  byte[] array() {
    return values;
  }

  String text(int from, int to) {
    if (from < 0 || from > to || to > size) {
      throw new IndexOutOfBoundsException(from + " to " + to + " of " + size);
    }
    return new String(values, from, to - from, StandardCharsets.UTF_8);
  }
}
