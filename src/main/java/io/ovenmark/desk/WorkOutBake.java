package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.BakeFormReader;
import io.ovenmark.bake.BakeGrid;
import io.ovenmark.bake.Piece;
import io.ovenmark.bake.TypedUnits;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Worksheet;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Works a bake out that is not recorded yet: loss on baking, spread factor, composition as baked,
 * what to mind, and what is wrong with the fields so far. Writes nothing.
 *
 * <pre>{@code
 * BakeFormViews.BakeFigures figures =
 *     new WorkOutBake(desk).call(Address.parse("seeded-lupin-bun@5"), form, by);
 * }</pre>
 */
public final class WorkOutBake {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public WorkOutBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works it out.
   *
   * @param address the revision that is baked
   * @param form what was typed so far
   * @param by who types, and when
   * @return the figures; unknown where nothing was measured
   * @throws io.ovenmark.notebook.Refusal when there is no such revision
   */
  public BakeFormViews.BakeFigures call(Address address, BakeForm form, By by) {
    requireNonNull(form, "form");
    return figures(desk.notebook().revision(address), form, Optional.empty(), by);
  }

  /**
   * Works changes of a recorded bake out.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param typed the form, and what it was filled with
   * @param by who types, and when
   * @return the figures; unknown where nothing was measured
   * @throws io.ovenmark.notebook.Refusal when the content that was baked is on no line of history
   */
  public BakeFormViews.BakeFigures call(
      String formula, String id, ChangeBake.Typed typed, By by) {
    Bake before = ChangeBake.base(Asked.slug("formula", formula), id, typed.base());
    BakeForm form = typed.form();
    return figures(new BakeParts(desk).baked(before), form, Optional.of(before), by);
  }

  private BakeFormViews.BakeFigures figures(
      Revision revision, BakeForm form, Optional<Bake> before, By by) {
    Worksheet raw = desk.sheet(revision, List.of()).worksheet();
    BakeFormReader.Reading read = BakeFormReader.read(form, before, clock(by));
    List<Piece> pieces = read.pieces();
    Worksheet sheet = raw.with(BakedYield.measuredOf(pieces));
    Quantity share = sheet.bakedYield().share();
    return new BakeFormViews.BakeFigures(
        pieces.stream().map(BakeViews::piece).toList(),
        pieces.stream().map(WorkOutBake::missing).toList(),
        BakeViews.summary(pieces),
        sheet.bakedYield().pieces(),
        FigureSet.number(share.times(100)),
        share.isKnown() ? null : "No piece has both its dough mass and its baked mass yet.",
        FigureSet.of(sheet.macros().get(Basis.PIECE)),
        FigureSet.of(sheet.macros().get(Basis.BAKED_100_G)),
        pieces.stream().map(piece -> weighed(sheet, piece)).toList(),
        BakeRemarks.of(pieces, sheet.allergens().contains(Allergen.EGGS), desk.units()),
        Cautions.of(sheet),
        problems(read));
  }

  /** The clock of a moment, in its zone. */
  static Clock clock(By by) {
    return Clock.fixed(by.time().toInstant(), by.time().getOffset());
  }

  static List<BakeFormViews.FieldProblem> problems(BakeFormReader.Reading read) {
    return read.faults().stream()
        .map(
            fault ->
                new BakeFormViews.FieldProblem(fault.field(), fault.sentence(), fault.remedy()))
        .toList();
  }

  private static FigureSet weighed(Worksheet sheet, Piece piece) {
    return FigureSet.of(
        sheet.weighedPiece(Quantity.of(piece.doughGrams()), Quantity.of(piece.bakedGrams())));
  }

  private static BakeFormViews.Missing missing(Piece piece) {
    return new BakeFormViews.Missing(
        lacks("weighed", piece.doughGrams(), "dough mass", piece.bakedGrams(), "baked mass"),
        lacks("measured", piece.widthMillimetres(), "width", piece.heightMillimetres(), "height"));
  }

  private static String lacks(
      String done,
      OptionalDouble one,
      String nameOfOne,
      OptionalDouble other,
      String nameOfOther) {
    if (one.isEmpty() && other.isEmpty()) {
      return "not " + done;
    }
    if (one.isEmpty()) {
      return "no " + nameOfOne;
    }
    return other.isEmpty() ? "no " + nameOfOther : null;
  }

  /**
   * Reads a grid of oven settings.
   *
   * @param text temperatures and times, as {@link BakeGrid} reads them
   * @param units the units beside its field
   * @return the pieces, or what is wrong
   */
  public static BakeFormViews.GridRead grid(String text, TypedUnits units) {
    try {
      return new BakeFormViews.GridRead(
          BakeGrid.read(text, units).stream()
              .map(
                  piece ->
                      new BakeFormViews.GridPiece(
                          piece.id(),
                          piece.temperature().map(Temperature::toString).orElseThrow(),
                          piece.minutes().getAsDouble()))
              .toList(),
          null);
    } catch (IllegalArgumentException e) {
      String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
      return new BakeFormViews.GridRead(
          List.of(),
          new BakeFormViews.FieldProblem(
              "grid", parts[0], parts.length > 1 ? parts[1] : ""));
    }
  }
}
