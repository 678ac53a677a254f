package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.worksheet.Worksheet;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * One of the two things compared: a revision, or a file as it lies in the work tree.
 *
 * @param address what people call it, such as {@code seeded-lupin-bun@5}
 * @param time when it came to be; empty when it is not a revision yet
 * @param note the revision's note; empty when there is none
 * @param sheet the formula worked out
 * @param goal the goal held against the sheet; empty when the formula has none
 * @param bakes bakes of exactly this formula, oldest first
 */
public record Side(
    String address,
    Optional<OffsetDateTime> time,
    Optional<String> note,
    Worksheet sheet,
    Optional<GoalCheck> goal,
    List<Bake> bakes) {
  /** Checks that nothing is null and copies the list. */
  public Side {
    requireNonNull(address, "address");
    requireNonNull(time, "time");
    requireNonNull(note, "note");
    requireNonNull(sheet, "sheet");
    requireNonNull(goal, "goal");
    bakes = List.copyOf(bakes);
  }

  /**
   * A side without time, note, goal and bakes.
   *
   * @param address what people call it
   * @param sheet the formula worked out
   * @return the side
   */
  public static Side of(String address, Worksheet sheet) {
    return new Side(
        address, Optional.empty(), Optional.empty(), sheet, Optional.empty(), List.of());
  }

  /**
   * The same side with a goal.
   *
   * @param next the goal held against the sheet, empty for none
   * @return a new side
   */
  public Side withGoal(Optional<GoalCheck> next) {
    return new Side(address, time, note, sheet, next, bakes);
  }

  /**
   * The same side with other bakes.
   *
   * @param next the bakes, oldest first
   * @return a new side
   */
  public Side withBakes(List<Bake> next) {
    return new Side(address, time, note, sheet, goal, next);
  }
}
