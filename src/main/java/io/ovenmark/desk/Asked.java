package io.ovenmark.desk;

import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.Refusal;
import java.util.function.Supplier;

/** Takes what a person asked for, turning what value types refuse into refusals. */
final class Asked {
  private Asked() {}

  /** A short name. */
  static String slug(String where, String text) {
    return read(where, () -> Slug.check(text));
  }

  static <T> T read(String where, Supplier<T> read) {
    try {
      return read.get();
    } catch (IllegalArgumentException e) {
      throw Refusal.of(where, e);
    }
  }
}
