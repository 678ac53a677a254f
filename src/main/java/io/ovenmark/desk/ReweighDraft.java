package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaDraft;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.worksheet.Reweigh;
import io.ovenmark.worksheet.Worksheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Changes a draft's amounts so that a wish comes true: a line at a mass, at a percentage of the
 * batch or at a baker's percentage while the other lines stay; or the whole batch scaled. Answers
 * with what must be written, by {@link Reweigh}.
 *
 * <pre>{@code
 * new ReweighDraft(desk)
 *     .call(document, base, new ReweighDraft.Wish(Target.PERCENT_OF_BATCH, 3, "40"));
 * }</pre>
 *
 * <p>Masses are rounded to what a kitchen scale can be asked for: 1 g from 1000 g, 0.1 g from 10 g,
 * 0.01 g below. A scaled measure keeps its measure, with two decimals, large ones with three.
 * Scaling to pieces
 * keeps the dough of a piece; scaling to dough a piece or to a batch keeps the number of pieces
 * where that is stated.
 */
public final class ReweighDraft {
  private static final String DOCUMENT = "draft";

  /** Grams or millilitres from which a unit is given with three decimals: pound, litre. */
  private static final double LARGE_UNIT = 400;

  private final Desk desk;

  /** What is wished for. */
  public enum Target {
    /** The mass of a line. */
    GRAMS,
    /** The share of a line in the batch. */
    PERCENT_OF_BATCH,
    /** The baker's percentage of a line. */
    BAKERS_PERCENT,
    /** The mass of the batch. */
    BATCH,
    /** The number of pieces. */
    PIECES,
    /** The dough mass of a piece. */
    DOUGH_PER_PIECE;

    /**
     * By its name in orders.
     *
     * @param name such as {@code percent_of_batch}
     * @return the target, empty when there is none of that name
     */
    public static Optional<Target> named(String name) {
      for (Target target : values()) {
        if (target.name().toLowerCase(Locale.ROOT).equals(name)) {
          return Optional.of(target);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * A wish.
   *
   * @param target what is wished for
   * @param place index of the line in the document; without meaning for the whole batch
   * @param value how much, as typed: a number, or for a mass also {@code 1.5 kg}; a mass without
   *     unit is in grams
   */
  public record Wish(Target target, int place, String value) {
    /** Checks that nothing is null. */
    public Wish {
      requireNonNull(target, "target");
      requireNonNull(value, "value");
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ReweighDraft(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works out what must be written.
   *
   * @param document the formula as JSON, in which any text may be half typed
   * @param base address of the revision that it began from; empty for a new formula
   * @param wish the wish
   * @return the amounts and the yield that fulfil it
   * @throws Refusal when the wish cannot be read or fulfilled, in one sentence
   */
  public DraftViews.Reweighed call(JsonText document, Optional<String> base, Wish wish) {
    FormulaDraft draft = FormulaCodec.draft(DOCUMENT, document.utf8());
    Address line =
        base.map(text -> WriteParts.line(desk.address(text)))
            .orElseGet(() -> Address.latest(DOCUMENT, Optional.empty()));
    Worksheet sheet = desk.draft(draft.formula(), line, List.of()).worksheet();
    try {
      return switch (wish.target()) {
        case GRAMS -> one(wish, mass(wish.value()));
        case PERCENT_OF_BATCH ->
            one(wish, Reweigh.toPercentOfBatch(sheet, id(draft, wish), number(wish.value())));
        case BAKERS_PERCENT ->
            one(wish, Reweigh.toBakersPercent(sheet, id(draft, wish), number(wish.value())));
        case BATCH ->
            scaled(
                draft,
                Reweigh.factor("The batch mass", sheet.batchGrams(), grams(wish.value())),
                null,
                null);
        case PIECES -> pieces(draft, sheet, wholeNumber(wish.value()));
        case DOUGH_PER_PIECE -> doughPerPiece(draft, sheet, grams(wish.value()));
      };
    } catch (IllegalArgumentException e) {
      throw Refusal.of(wish.target().name().toLowerCase(Locale.ROOT), e);
    }
  }

  private static DraftViews.Reweighed pieces(FormulaDraft draft, Worksheet sheet, int wished) {
    double factor = Reweigh.factor("The number of pieces", sheet.pieces(), wished);
    boolean stated = draft.formula().yield().pieces().isPresent();
    return scaled(draft, factor, stated ? wished : null, null);
  }

  private static DraftViews.Reweighed doughPerPiece(
      FormulaDraft draft, Worksheet sheet, double wished) {
    Yield yield = draft.formula().yield();
    double factor = Reweigh.factor("The dough of a piece", sheet.doughPerPieceGrams(), wished);
    return scaled(draft, factor, null, yield.doughPerPieceGrams().isPresent() ? wished : null);
  }

  private static DraftViews.Reweighed scaled(
      FormulaDraft draft, double factor, Integer pieces, Double doughPerPiece) {
    List<DraftViews.NewAmount> amounts = new ArrayList<>();
    for (int i = 0; i < draft.places().size(); i++) {
      Amount amount = draft.formula().lines().get(i).amount();
      if (!amount.isRead()) {
        throw new IllegalArgumentException(
            "The amount \"" + amount + "\" cannot be read, so it cannot be scaled.\n"
                + "Complete it first.");
      }
      amounts.add(
          new DraftViews.NewAmount(draft.places().get(i), scaled(amount, factor).toString()));
    }
    return new DraftViews.Reweighed(List.copyOf(amounts), pieces, doughPerPiece);
  }

  private static Amount scaled(Amount amount, double factor) {
    BigDecimal number = amount.number().multiply(BigDecimal.valueOf(factor));
    BigDecimal rounded = number.setScale(decimals(amount, number), RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      rounded = number.setScale(4, RoundingMode.HALF_UP);
    }
    return Amount.parse(rounded.stripTrailingZeros().toPlainString() + " " + amount.measure());
  }

  private static int decimals(Amount amount, BigDecimal number) {
    if (amount.unit().equals(Optional.of(MeasureUnit.GRAM))) {
      return decimals(number);
    }
    return amount.unit().filter(unit -> unit.base() > LARGE_UNIT).isPresent() ? 3 : 2;
  }

  /** Decimals of grams that a kitchen scale can be asked for. */
  private static int decimals(BigDecimal grams) {
    double value = grams.doubleValue();
    return value >= 1000 ? 0 : value >= 10 ? 1 : 2;
  }

  private static DraftViews.Reweighed one(Wish wish, double grams) {
    BigDecimal exact = BigDecimal.valueOf(grams);
    return one(wish, Amount.grams(exact.setScale(decimals(exact), RoundingMode.HALF_UP)));
  }

  private static DraftViews.Reweighed one(Wish wish, Amount amount) {
    return new DraftViews.Reweighed(
        List.of(new DraftViews.NewAmount(wish.place(), amount.toString())), null, null);
  }

  private static String id(FormulaDraft draft, Wish wish) {
    int index = draft.places().indexOf(wish.place());
    if (index < 0) {
      throw new IllegalArgumentException(
          "The line is empty.\nChoose a food or write an amount first.");
    }
    return draft.formula().lines().get(index).id();
  }

  private static double number(String typed) {
    String text = typed.strip().replaceFirst(" ?%$", "");
    try {
      return new BigDecimal(text).doubleValue();
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "\"" + typed.strip() + "\" is not a number.\nWrite digits, such as \"62.5\".", e);
    }
  }

  private static int wholeNumber(String typed) {
    double number = number(typed);
    if (number != Math.rint(number) || number < 1 || number > 100_000) {
      throw new IllegalArgumentException(
          "There cannot be " + typed.strip() + " pieces.\nUse a whole number from 1 to 100000.");
    }
    return (int) number;
  }

  private static double grams(String typed) {
    return mass(typed).grams().orElseThrow().doubleValue();
  }

  private static Amount mass(String typed) {
    String text = typed.strip();
    Amount amount = Amount.parse(text.matches("[0-9.,/ ]*") ? text + " g" : text);
    if (amount.grams().isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a mass.\nWrite grams, such as \"150\" or \"1.5 kg\".");
    }
    return amount;
  }
}
