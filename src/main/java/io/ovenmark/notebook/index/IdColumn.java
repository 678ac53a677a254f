package io.ovenmark.notebook.index;

import java.util.Arrays;
import java.util.HexFormat;

/** Git ids as twenty bytes each, one after the other, found again by a hash table. */
final class IdColumn {
  static final int WIDTH = 20;
  static final byte[] NONE = new byte[WIDTH];
  private static final HexFormat HEX = HexFormat.of();

  private final Bytes bytes;
  private int[] slots;

  IdColumn(Bytes bytes) {
    this.bytes = bytes;
  }

  int size() {
    return bytes.size() / WIDTH;
  }

  void add(byte[] id) {
    bytes.add(id);
    if (slots != null) {
      if (size() * 2 > slots.length) {
        slots = null;
      } else {
        enter(size() - 1);
      }
    }
  }

  /** The digits of the id at an index, null if it is {@link #NONE}. */
  String hex(int index) {
    int from = index * WIDTH;
    byte[] id = Arrays.copyOfRange(bytes.array(), from, from + WIDTH);
    return Arrays.equals(id, NONE) ? null : HEX.formatHex(id);
  }

  static byte[] parse(String hex) {
    return HEX.parseHex(hex);
  }

  /** The index of an id, -1 if it is not there. */
  int find(byte[] id) {
    if (slots == null) {
      slots = new int[Math.max(64, Integer.highestOneBit(Math.max(1, size())) * 4)];
      for (int i = 0; i < size(); i++) {
        enter(i);
      }
    }
    int mask = slots.length - 1;
    for (int slot = hash(id, 0) & mask; slots[slot] != 0; slot = slot + 1 & mask) {
      int index = slots[slot] - 1;
      int from = index * WIDTH;
      if (Arrays.equals(bytes.array(), from, from + WIDTH, id, 0, WIDTH)) {
        return index;
      }
    }
    return -1;
  }

  Bytes bytes() {
    return bytes;
  }

  private void enter(int index) {
    int mask = slots.length - 1;
    int slot = hash(bytes.array(), index * WIDTH) & mask;
    while (slots[slot] != 0) {
      slot = slot + 1 & mask;
    }
    slots[slot] = index + 1;
  }

  private static int hash(byte[] array, int at) {
    return (array[at] & 0xff) << 24
        | (array[at + 1] & 0xff) << 16
        | (array[at + 2] & 0xff) << 8
        | array[at + 3] & 0xff;
  }
}
