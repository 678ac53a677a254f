package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Optional;

/** Adds to the refusal of an unknown formula the one that was perhaps meant. */
final class NearestName {
  private NearestName() {}

  /** The same refusal, with a name in its hint when one is near. */
  static Refusal added(Refusal refusal, Desk desk) {
    boolean unknown =
        refusal.reason() == Refusal.Reason.NOT_FOUND && Slug.isSlug(refusal.where());
    List<String> formulas = unknown ? desk.notebook().latest().formulas() : List.of();
    if (formulas.isEmpty() || formulas.contains(refusal.where())) {
      return refusal;
    }
    return nearest(refusal.where(), formulas)
        .map(
            name ->
                new Refusal(
                    refusal.reason(),
                    refusal.where(),
                    refusal.getMessage(),
                    "Perhaps you mean \"" + name + "\". " + refusal.hint()))
        .orElse(refusal);
  }

  /** The one name that holds the word, else the one that differs by a slip of the keyboard. */
  static Optional<String> nearest(String word, List<String> names) {
    List<String> holding = names.stream().filter(name -> name.contains(word)).toList();
    if (holding.size() == 1) {
      return Optional.of(holding.get(0));
    }
    String best = null;
    int least = Math.max(1, word.length() / 4) + 1;
    for (String name : names) {
      int distance = distance(word, name);
      if (distance < least) {
        best = name;
        least = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Letters to insert, drop or exchange (Levenshtein's distance). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(exchanged, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
