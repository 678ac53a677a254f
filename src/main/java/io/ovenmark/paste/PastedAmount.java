package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import java.util.List;
import java.util.Optional;

/**
 * How much a pasted line asks for: an amount, a range with both its ends, or a bare count such as
 * the 3 of "3 eggs", whose measure only the food can tell.
 *
 * @param number the number, of a range the lower one, such as {@code 1 1/2}
 * @param upTo the higher number of a range; empty when it is none
 * @param measure a unit or household measure; empty for a bare count
 * @param equivalents the same amount in other units, as written beside it
 */
public record PastedAmount(
    String number, Optional<String> upTo, String measure, List<Amount> equivalents) {
  /** Checks that the numbers and the measure make amounts. */
  public PastedAmount {
    requireNonNull(measure, "measure");
    equivalents = List.copyOf(equivalents);
    String unit = measure.isEmpty() ? "piece" : measure;
    Amount.parse(number + " " + unit);
    upTo.ifPresent(most -> Amount.parse(most + " " + unit));
  }

  /**
   * The amount, of a range the lower end.
   *
   * @return empty for a bare count
   */
  public Optional<Amount> least() {
    return isCount() ? Optional.empty() : Optional.of(in(measure));
  }

  /**
   * The higher end of a range.
   *
   * @return empty when it is no range, or one of bare counts
   */
  public Optional<Amount> most() {
    return isCount() ? Optional.empty() : upTo.map(most -> Amount.parse(most + " " + measure));
  }

  /**
   * The number in a measure of one's choice, as for a bare count.
   *
   * @param chosen a unit or household measure, not blank
   * @return the amount, of a range the lower end
   * @throws IllegalArgumentException when the measure is none
   */
  public Amount in(String chosen) {
    return Amount.parse(number + " " + chosen);
  }

  /**
   * Whether both ends of a range were written.
   *
   * @return true for {@code 2-3 tbsp}
   */
  public boolean isRange() {
    return upTo.isPresent();
  }

  /**
   * Whether it is a number without a measure.
   *
   * @return true for the 3 of {@code 3 eggs}
   */
  public boolean isCount() {
    return measure.isEmpty();
  }

  /** The unit of mass or volume, if the measure is one. */
  Optional<MeasureUnit> unit() {
    return isCount() ? Optional.empty() : MeasureUnit.named(measure);
  }

  PastedAmount withEquivalents(List<Amount> next) {
    return new PastedAmount(number, upTo, measure, next);
  }

  /** As it may be written: {@code 2-3 tbsp}. */
  @Override
  public String toString() {
    return (number + upTo.map(most -> "-" + most).orElse("") + " " + measure).strip();
  }
}
