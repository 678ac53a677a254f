package io.ovenmark.change;

import io.ovenmark.formula.Yield;
import java.util.Optional;
import java.util.function.Function;

/** A field of a yield, in the order in which changes are told. */
public enum YieldField {
  /** Number of pieces. */
  PIECES("pieces", yield -> yield.pieces().map(count -> Integer.toString(count))),
  /** Dough mass of a piece in grams. */
  DOUGH_PER_PIECE("dough_per_piece_g", yield -> Texts.plain(yield.doughPerPieceGrams())),
  /** Share of the batch that stays in the bowl, in percent. */
  HANDLING_LOSS("handling_loss_percent", yield -> Texts.plain(yield.handlingLossPercent()));

  private final String key;
  private final Function<Yield, Optional<String>> text;

  YieldField(String key, Function<Yield, Optional<String>> text) {
    this.key = key;
    this.text = text;
  }

  /**
   * The name of the field in the formula's file.
   *
   * @return such as {@code pieces}
   */
  public String key() {
    return key;
  }

  /**
   * Reads the field as a plain number without a unit.
   *
   * @param yield a yield
   * @return the number's text; empty when not stated
   */
  public Optional<String> text(Yield yield) {
    return text.apply(yield);
  }
}
