package io.ovenmark.publish.label;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One line of a label's table.
 *
 * @param line which
 * @param amounts the unrounded amounts, for a piece, 100 g of dough and 100 g as baked
 * @param missing what could not be known, in words; empty when the amount in dough is known
 * @param note what else a reader should know of it
 */
public record LabelRow(
    LabelLine line, Map<Basis, Quantity> amounts, List<String> missing, Optional<String> note) {
  /** Copies. */
  public LabelRow {
    amounts = Collections.unmodifiableMap(new EnumMap<>(amounts));
    missing = List.copyOf(missing);
  }

  /**
   * What a label would state.
   *
   * @param basis for what
   * @return the rounded amount; empty unless the amount is known exactly: a bound is never rounded
   *     to a declared figure
   */
  public Optional<Declared> declared(Basis basis) {
    Quantity amount = amounts.get(basis);
    return amount.isKnown()
        ? Optional.of(line.rounding().declare(amount.low()))
        : Optional.empty();
  }

  /**
   * The unrounded amount for people, with as many figures as it takes to see how it is rounded.
   *
   * @param basis for what
   * @return such as {@code 11.47 g}, {@code at least 3.1 g} or {@code unknown}
   */
  public String unrounded(Basis basis) {
    Quantity amount = amounts.get(basis);
    String unit = line.rounding().unit();
    return declared(basis)
        .map(
            declared ->
                Exact.shown(
                        amount.low(), shown -> line.rounding().declare(shown).equals(declared))
                    + " " + unit)
        .orElseGet(() -> FigureText.of(amount, unit));
  }

  /**
   * The unrounded share of the Daily Value.
   *
   * @param basis for what
   * @return percent, possibly known in part; empty where there is no Daily Value, or none that
   *     follows from the amount
   */
  public Optional<Quantity> dailyPercent(Basis basis) {
    return line.dailyValue()
        .filter(value -> value != DailyValue.PROTEIN)
        .map(value -> value.percent(amounts.get(basis)));
  }
}
