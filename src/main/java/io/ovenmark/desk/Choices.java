package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.change.Choice;
import io.ovenmark.change.Conflict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which side a person takes where two sides contradict each other.
 *
 * @param fields by field, such as {@code lines.water.amount}; the word {@code lines.} may be left
 *     out
 * @param rest the side for every other field; empty to leave them open
 */
public record Choices(Map<String, Choice> fields, Optional<Choice> rest) {
  /** Nothing is chosen. */
  public static final Choices NONE = new Choices(Map.of(), Optional.empty());

  /** Copies the map. */
  public Choices {
    fields = Map.copyOf(fields);
    requireNonNull(rest, "rest");
  }

  /** Whether nothing is chosen. */
  boolean isEmpty() {
    return fields.isEmpty() && rest.isEmpty();
  }

  /**
   * The choices for conflicts at hand.
   *
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy, when a
   *     field is none of them
   */
  Map<String, Choice> among(List<Conflict> conflicts) {
    List<String> open = conflicts.stream().map(Conflict::path).toList();
    Map<String, Choice> chosen = new TreeMap<>();
    rest.ifPresent(choice -> open.forEach(path -> chosen.put(path, choice)));
    List<String> unknown = new ArrayList<>();
    new TreeMap<>(fields)
        .forEach(
            (field, choice) -> {
              if (open.contains(field)) {
                chosen.put(field, choice);
              } else if (open.contains("lines." + field)) {
                chosen.put("lines." + field, choice);
              } else {
                unknown.add(field);
              }
            });
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(
          "Nothing is to be chosen at \""
              + unknown.get(0)
              + "\".\n"
              + (open.isEmpty()
                  ? "There is no conflict."
                  : "Choose for " + String.join(", ", open) + "."));
    }
    return chosen;
  }
}
