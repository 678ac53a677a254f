package io.ovenmark.formula;

import io.ovenmark.measure.Slug;
import java.util.function.Predicate;

/** Finds names within a formula that are not taken yet. */
final class FreeId {
  private FreeId() {}

  /**
   * The wanted name, else with {@code -2}, {@code -3} and so on, shortened where it would become
   * longer than a slug may be.
   *
   * @param wanted a slug
   * @param taken which names are in use
   * @return a slug that is not in use
   */
  static String of(String wanted, Predicate<String> taken) {
    String id = wanted;
    for (int i = 2; taken.test(id); i++) {
      String ending = "-" + i;
      int room = Math.min(wanted.length(), Slug.LONGEST - ending.length());
      String stem = wanted.substring(0, room);
      id = (stem.endsWith("-") ? stem.substring(0, room - 1) : stem) + ending;
    }
    return id;
  }
}
