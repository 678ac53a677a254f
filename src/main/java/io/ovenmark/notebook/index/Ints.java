package io.ovenmark.notebook.index;

import java.util.Arrays;

/** A list of ints that grows. */
final class Ints {
  private int[] values;
  private int size;

  Ints() {
    this(new int[8], 0);
  }

  private Ints(int[] values, int size) {
    this.values = values;
    this.size = size;
  }

  /** Takes over an array. */
  static Ints of(int[] values) {
    return new Ints(values, values.length);
  }

  void add(int value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, Math.max(8, size * 2));
    }
    values[size++] = value;
  }

  void set(int index, int value) {
    if (index >= size) {
      throw new IndexOutOfBoundsException(index);
    }
    values[index] = value;
  }

  int get(int index) {
    if (index >= size) {
      throw new IndexOutOfBoundsException(index);
    }
    return values[index];
  }

  int size() {
    return size;
  }

  int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
