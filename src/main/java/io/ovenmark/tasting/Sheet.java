package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One taster's sheet.
 *
 * @param number from 1
 * @param initials who tastes, at most 12 characters; empty when not noted
 * @param servings the plates in the order of tasting, codes unique
 * @param answer what was answered; empty as long as nothing is known
 * @param extras unknown fields
 */
public record Sheet(
    int number,
    Optional<String> initials,
    List<Serving> servings,
    Optional<Answer> answer,
    Extras extras) {
  private static final int LONGEST_INITIALS = 12;

  /** Checks and copies. */
  public Sheet {
    Faults.require(number >= 1, "Sheets are counted from 1.", "Number the sheet from 1.");
    initials = initials.map(String::strip).filter(text -> !text.isEmpty());
    Faults.require(
        initials.map(String::length).orElse(0) <= LONGEST_INITIALS,
        "The initials are longer than " + LONGEST_INITIALS + " characters.",
        "Use initials; no more is needed to tell the sheets apart.");
    servings = List.copyOf(servings);
    Faults.require(!servings.isEmpty(), "The sheet has no plates.", "Give it at least one.");
    Set<String> codes = new HashSet<>();
    for (Serving serving : servings) {
      Faults.require(
          codes.add(serving.code()),
          "The code " + serving.code() + " stands twice on the sheet.",
          "Give every plate of a sheet its own code.");
    }
    requireNonNull(answer, "answer");
    requireNonNull(extras, "extras");
  }

  /**
   * The codes in the order of tasting.
   *
   * @return three digits each
   */
  public List<String> codes() {
    return servings.stream().map(Serving::code).toList();
  }

  /**
   * The same sheet with an answer.
   *
   * @param next the answer
   * @param who initials; empty keeps those that it has
   * @return a new sheet
   */
  public Sheet answered(Answer next, Optional<String> who) {
    return new Sheet(
        number,
        who.filter(text -> !text.isBlank()).or(() -> initials),
        servings,
        Optional.of(next),
        extras);
  }

  /** The sample behind a code, from 1; 0 when no plate has it. */
  int sample(String code) {
    return servings.stream()
        .filter(serving -> serving.code().equals(code))
        .mapToInt(Serving::sample)
        .findFirst()
        .orElse(0);
  }
}
