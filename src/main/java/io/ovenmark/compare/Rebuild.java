package io.ovenmark.compare;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A conventional formula beside its rebuild: lines side by side, gathered by the part that they
 * play, each with what it brings to a piece. What a line brings to a piece is what it brings to the
 * batch, less its share of the loss on handling, divided by the pieces; with a stated dough mass of
 * a piece, its share of the batch times that mass. All lines of a side add up to the piece.
 *
 * <pre>{@code
 * Rebuild rebuild = Rebuild.of(Comparison.between(reference, rebuilt));
 * }</pre>
 *
 * @param parts the parts that either side has, in order
 */
public record Rebuild(List<Part> parts) {
  /** What is told of each line's share in a piece. */
  public static final List<Figure> FIGURES =
      List.of(Figure.NET_CARBOHYDRATE, Figure.PROTEIN, Figure.FAT, Figure.ENERGY);

  /**
   * Lines that play one part.
   *
   * @param part which
   * @param rows the lines side by side
   * @param from all of them on the conventional side
   * @param to all of them on the rebuilt side
   */
  public record Part(DoughPart part, List<Row> rows, Share from, Share to) {
    /** Copies the list. */
    public Part {
      requireNonNull(part, "part");
      rows = List.copyOf(rows);
    }
  }

  /**
   * A line on both sides, or on one. Lines that were aligned but play different parts stand apart.
   *
   * @param line how it was aligned
   * @param from its share on the conventional side; empty when it is not there
   * @param to its share on the rebuilt side; empty when it is not there
   */
  public record Row(LineComparison line, Optional<Share> from, Optional<Share> to) {
    /** Checks that nothing is null. */
    public Row {
      requireNonNull(line, "line");
      requireNonNull(from, "from");
      requireNonNull(to, "to");
    }

    /**
     * What became of the line here.
     *
     * @return added or removed for one that stands on one side of this row
     */
    public LineChange change() {
      return from.isEmpty() ? LineChange.ADDED : to.isEmpty() ? LineChange.REMOVED : line.change();
    }
  }

  /**
   * What a line, or several, bring.
   *
   * @param grams mass
   * @param percentOfBatch share of the batch
   * @param perPiece each of {@link #FIGURES} in a piece
   */
  public record Share(
      Quantity grams, Quantity percentOfBatch, Map<Figure, Quantity> perPiece) {
    /** Copies the map. */
    public Share {
      requireNonNull(grams, "grams");
      requireNonNull(percentOfBatch, "percentOfBatch");
      perPiece = Collections.unmodifiableMap(new EnumMap<>(perPiece));
    }

    private static Share none() {
      Map<Figure, Quantity> nothing = new EnumMap<>(Figure.class);
      FIGURES.forEach(figure -> nothing.put(figure, Quantity.ZERO));
      return new Share(Quantity.ZERO, Quantity.ZERO, nothing);
    }

    private Share plus(Share other) {
      Map<Figure, Quantity> sum = new EnumMap<>(Figure.class);
      FIGURES.forEach(
          figure -> sum.put(figure, perPiece.get(figure).plus(other.perPiece.get(figure))));
      return new Share(
          grams.plus(other.grams), percentOfBatch.plus(other.percentOfBatch), sum);
    }
  }

  /** Copies the list. */
  public Rebuild {
    parts = List.copyOf(parts);
  }

  /**
   * Sets two formulas side by side.
   *
   * @param comparison from the conventional formula to its rebuild
   * @return the parts with their lines
   */
  public static Rebuild of(Comparison comparison) {
    Worksheet from = comparison.from().sheet();
    Worksheet to = comparison.to().sheet();
    Map<DoughPart, List<Row>> rows = new EnumMap<>(DoughPart.class);
    for (LineComparison line : comparison.lines()) {
      Optional<Share> before = line.before().map(each -> share(from, each));
      Optional<Share> after = line.after().map(each -> share(to, each));
      DoughPart part = DoughPart.of(line.after().or(line::before).orElseThrow());
      boolean apart =
          line.change() == LineChange.REPLACED
              && DoughPart.of(line.before().orElseThrow()) != part;
      if (apart) {
        add(rows, DoughPart.of(line.before().get()), new Row(line, before, Optional.empty()));
        add(rows, part, new Row(line, Optional.empty(), after));
      } else {
        add(rows, part, new Row(line, before, after));
      }
    }
    List<Part> parts = new ArrayList<>();
    rows.forEach(
        (part, lines) ->
            parts.add(
                new Part(
                    part,
                    lines,
                    sum(lines.stream().map(Row::from).toList()),
                    sum(lines.stream().map(Row::to).toList()))));
    return new Rebuild(parts);
  }

  private static void add(Map<DoughPart, List<Row>> rows, DoughPart part, Row row) {
    rows.computeIfAbsent(part, any -> new ArrayList<>()).add(row);
  }

  private static Share sum(List<Optional<Share>> shares) {
    Share sum = Share.none();
    for (Optional<Share> share : shares) {
      sum = share.isPresent() ? sum.plus(share.get()) : sum;
    }
    return sum;
  }

  private static Share share(Worksheet sheet, WorksheetLine line) {
    Map<Figure, Quantity> perPiece = new EnumMap<>(Figure.class);
    FIGURES.forEach(
        figure -> perPiece.put(figure, inPiece(sheet, line.macros().get(figure))));
    return new Share(line.grams(), line.percentOfBatch(), perPiece);
  }

  /** What a line brings to the batch, as far as it comes into a piece. */
  private static Quantity inPiece(Worksheet sheet, Quantity inBatch) {
    if (inBatch.equals(Quantity.ZERO)) {
      return Quantity.ZERO;
    }
    return sheet.formula().yield().doughPerPieceGrams().isPresent()
        ? inBatch.times(sheet.doughPerPieceGrams()).dividedBy(sheet.batchGrams())
        : inBatch
            .times(1 - sheet.formula().yield().handlingLossPercent().orElse(0) / 100)
            .dividedBy(sheet.pieces());
  }
}
