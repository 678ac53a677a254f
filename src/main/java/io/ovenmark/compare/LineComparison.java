package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A line on both sides, or on the one that has it.
 *
 * @param id the line's id in the later formula; in the earlier when it was removed
 * @param name the food's name, of the later formula unless removed
 * @param otherName the earlier food's name when it was replaced; else empty
 * @param change what became of it
 * @param before the line of the earlier formula; empty when added
 * @param after the line of the later formula; empty when removed
 * @param delta grams after less grams before; a line that is not there weighs 0
 * @param percentChange the difference in percent of the mass before; empty unless both masses are
 *     known and the one before is above 0
 * @param moved whether it is one of the fewest lines whose moving explains the new order
 */
public record LineComparison(
    String id,
    String name,
    Optional<String> otherName,
    LineChange change,
    Optional<WorksheetLine> before,
    Optional<WorksheetLine> after,
    Quantity delta,
    OptionalDouble percentChange,
    boolean moved) {
  /** Checks that nothing is null and that there is a line. */
  public LineComparison {
    requireNonNull(id, "id");
    requireNonNull(name, "name");
    requireNonNull(otherName, "otherName");
    requireNonNull(change, "change");
    requireNonNull(delta, "delta");
    requireNonNull(percentChange, "percentChange");
    if (before.isEmpty() && after.isEmpty()) {
      throw new IllegalArgumentException("a line must stand on one side at least");
    }
  }

  /**
   * The mass before.
   *
   * @return grams; 0 when the line was not there, unknown when it could not be resolved
   */
  public Quantity from() {
    return before.map(WorksheetLine::grams).orElse(Quantity.ZERO);
  }

  /**
   * The mass after.
   *
   * @return grams; 0 when the line is not there, unknown when it cannot be resolved
   */
  public Quantity to() {
    return after.map(WorksheetLine::grams).orElse(Quantity.ZERO);
  }

  /**
   * What was entered before.
   *
   * @return such as {@code 2 tbsp}; empty when the line was not there
   */
  public Optional<String> fromEntered() {
    return before.map(line -> line.line().amount().toString());
  }

  /**
   * What is entered now.
   *
   * @return such as {@code 2 tbsp}; empty when the line is not there
   */
  public Optional<String> toEntered() {
    return after.map(line -> line.line().amount().toString());
  }

  /**
   * Baker's percentage before.
   *
   * @return percent of the flour; unknown without flour or line
   */
  public Quantity fromBakersPercent() {
    return before.map(WorksheetLine::bakersPercent).orElse(Quantity.UNKNOWN);
  }

  /**
   * Baker's percentage after.
   *
   * @return percent of the flour; unknown without flour or line
   */
  public Quantity toBakersPercent() {
    return after.map(WorksheetLine::bakersPercent).orElse(Quantity.UNKNOWN);
  }

  /**
   * Whether a line that stands on both sides joined or left the flours.
   *
   * @return true when the flour mark differs
   */
  public boolean flourMarkChanged() {
    return onBoth() && before.get().line().flour() != after.get().line().flour();
  }

  /**
   * Whether the note of a line that stands on both sides differs.
   *
   * @return true when it does
   */
  public boolean noteChanged() {
    return onBoth() && !before.get().line().note().equals(after.get().line().note());
  }

  /**
   * Whether what is weighed differs.
   *
   * @return true for added, removed, changed and replaced lines
   */
  public boolean weighsDifferently() {
    return change != LineChange.SAME && change != LineChange.REWRITTEN;
  }

  private boolean onBoth() {
    return before.isPresent() && after.isPresent();
  }
}
