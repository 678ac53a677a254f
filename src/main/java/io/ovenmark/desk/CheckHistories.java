package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.store.StoreException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The revisions that bakes may be of, read once for each formula. */
final class CheckHistories {
  private final Desk desk;
  private final Map<String, Optional<Map<String, List<String>>>> known = new HashMap<>();

  CheckHistories(Desk desk) {
    this.desk = desk;
  }

  /**
   * The addresses of a formula's revisions by their content.
   *
   * @return empty when the history is damaged, which the check of the Git objects tells
   */
  Optional<Map<String, List<String>>> of(String formula) {
    return known.computeIfAbsent(formula, this::read);
  }

  /**
   * The newest revision of a line of history.
   *
   * @return its number, 0 when there is no such line; empty when the history is damaged
   */
  OptionalInt newest(Address line) {
    try {
      boolean there =
          line.variant().isEmpty()
              || desk.notebook().variants(line.formula()).contains(line.variant().get());
      return OptionalInt.of(there ? desk.notebook().nextNumber(line) - 1 : 0);
    } catch (StoreException e) {
      return OptionalInt.empty();
    }
  }

  private Optional<Map<String, List<String>>> read(String formula) {
    try {
      return Optional.of(desk.revisionsByContent(formula));
    } catch (StoreException e) {
      return Optional.empty();
    }
  }
}
