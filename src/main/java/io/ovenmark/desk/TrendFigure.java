package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Price;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A figure whose way along a line of history can be drawn. */
sealed interface TrendFigure {
  /** What a program asks for. */
  String key();

  /** Its name for people. */
  String label();

  /** What it belongs to, for choosing. */
  String group();

  /** The unit of its values. */
  String unit(ShownUnits units);

  /** Its value in a revision; the worksheet is empty when it could not be worked out. */
  TrendViews.Value value(Optional<Worksheet> worksheet, List<Bake> bakes, ShownUnits units);

  /** Whether it comes from bakes. */
  default boolean isMeasured() {
    return false;
  }

  /** What a goal demands of it. */
  default Optional<Limit> limit(Goal goal) {
    return Optional.empty();
  }

  /** A figure of the worksheet. */
  record Worked(Figure figure, Basis basis) implements TrendFigure {
    @Override
    public String key() {
      return figure.isMacro() ? figure.key() + "." + basis.key() : figure.key();
    }

    @Override
    public String label() {
      return figure.isMacro() ? figure.label() + " " + per(basis) : figure.label();
    }

    @Override
    public String group() {
      return figure.isMacro() ? per(basis) : "dough and yield";
    }

    @Override
    public String unit(ShownUnits units) {
      return figure.isWeighed() ? units.massUnit() : figure.unit();
    }

    @Override
    public TrendViews.Value value(
        Optional<Worksheet> worksheet, List<Bake> bakes, ShownUnits units) {
      Quantity quantity =
          worksheet.map(sheet -> sheet.figure(figure, basis)).orElse(Quantity.UNKNOWN);
      return of(figure.isWeighed() ? units.inMassUnit(quantity) : quantity, unit(units));
    }

    @Override
    public Optional<Limit> limit(Goal goal) {
      return goal.limits().stream()
          .filter(limit -> limit.figure() == figure)
          .filter(limit -> !figure.isMacro() || limit.basis() == basis)
          .findFirst();
    }
  }

  /** The share of a food in the batch. */
  record Share(String food, String name) implements TrendFigure {
    @Override
    public String key() {
      return "share." + food;
    }

    @Override
    public String label() {
      return name + ", % of batch";
    }

    @Override
    public String group() {
      return "share of an ingredient";
    }

    @Override
    public String unit(ShownUnits units) {
      return "%";
    }

    @Override
    public TrendViews.Value value(
        Optional<Worksheet> worksheet, List<Bake> bakes, ShownUnits units) {
      return of(worksheet.map(this::share).orElse(Quantity.UNKNOWN), "%");
    }

    private Quantity share(Worksheet sheet) {
      return sheet.lines().stream()
          .filter(line -> line.line().food().equals(food))
          .map(WorksheetLine::percentOfBatch)
          .reduce(Quantity.ZERO, Quantity::plus);
    }
  }

  /** What the ingredients cost, at the prices of the revision's own pantry. */
  record Cost(Basis basis) implements TrendFigure {
    private static final List<Basis> BASES = List.of(Basis.PIECE, Basis.DOUGH_100_G, Basis.BATCH);

    @Override
    public String key() {
      return "cost." + basis.key();
    }

    @Override
    public String label() {
      return "ingredient cost " + per(basis);
    }

    @Override
    public String group() {
      return "cost";
    }

    @Override
    public String unit(ShownUnits units) {
      return "";
    }

    @Override
    public TrendViews.Value value(
        Optional<Worksheet> worksheet, List<Bake> bakes, ShownUnits units) {
      if (worksheet.isEmpty()) {
        return of(Quantity.UNKNOWN, "");
      }
      String currency = currency(worksheet.get()).orElse("");
      return of(cost(worksheet.get(), currency), currency);
    }

    /** The currency of most of the prices. */
    private static Optional<String> currency(Worksheet sheet) {
      TreeMap<String, Integer> counts = new TreeMap<>();
      for (WorksheetLine line : sheet.lines()) {
        price(line).ifPresent(price -> counts.merge(price.currency(), 1, Integer::sum));
      }
      return counts.entrySet().stream()
          .max(Map.Entry.comparingByValue())
          .map(Map.Entry::getKey);
    }

    static Optional<Price> price(WorksheetLine line) {
      return line.food().flatMap(food -> food.price());
    }

    private Quantity cost(Worksheet sheet, String currency) {
      Quantity batch = Quantity.ZERO;
      for (WorksheetLine line : sheet.lines()) {
        Optional<Price> price = price(line).filter(each -> each.currency().equals(currency));
        batch =
            batch.plus(
                price
                    .map(each -> line.grams().times(each.amount().doubleValue() / each.grams()))
                    .orElseGet(
                        () -> line.grams().equals(Quantity.ZERO) ? Quantity.ZERO : Quantity.UNKNOWN));
      }
      return switch (basis) {
        case PIECE -> batch.times(sheet.doughPerPieceGrams()).dividedBy(sheet.batchGrams());
        case DOUGH_100_G -> batch.times(100).dividedBy(sheet.batchGrams());
        default -> batch;
      };
    }
  }

  /** What was measured or tasted of the bakes of exactly a revision's content. */
  enum Outcome implements TrendFigure {
    HEIGHT("best_height_mm", "best height", "mm", Measure.MOST, Piece::heightMillimetres),
    WIDTH("mean_width_mm", "mean width", "mm", Measure.MEAN, Piece::widthMillimetres),
    SPREAD("mean_spread_factor", "mean spread factor", "", Measure.MEAN, Piece::spreadFactor),
    LOSS("mean_loss_percent", "mean loss on baking", "%", Measure.MEAN, Piece::lossPercent),
    CORE(
        "lowest_core_c",
        "lowest core temperature",
        "°C",
        Measure.LEAST,
        piece ->
            piece
                .core()
                .map(core -> OptionalDouble.of(core.celsius()))
                .orElse(OptionalDouble.empty())),
    CRUST("mean_crust_shade", "mean crust shade, 0 to 4", "", Measure.MEAN, Piece::crustShade),
    LIKING("mean_liking", "liking, 1 to 9", "", Measure.MEAN, Piece::meanLiking);

    private enum Measure {
      MOST,
      LEAST,
      MEAN
    }

    private final String key;
    private final String label;
    private final String unit;
    private final Measure measure;
    private final Function<Piece, OptionalDouble> figure;

    Outcome(
        String key,
        String label,
        String unit,
        Measure measure,
        Function<Piece, OptionalDouble> figure) {
      this.key = key;
      this.label = label;
      this.unit = unit;
      this.measure = measure;
      this.figure = figure;
    }

    @Override
    public String key() {
      return key;
    }

    @Override
    public String label() {
      return label;
    }

    @Override
    public String group() {
      return "bakes";
    }

    @Override
    public String unit(ShownUnits units) {
      return this == CORE ? units.degreeUnit() : unit;
    }

    @Override
    public boolean isMeasured() {
      return true;
    }

    @Override
    public TrendViews.Value value(
        Optional<Worksheet> worksheet, List<Bake> bakes, ShownUnits units) {
      double[] values = values(bakes).toArray();
      if (values.length == 0) {
        String none = bakes.isEmpty() ? "not baked" : this == LIKING ? "not tasted" : "not measured";
        return new TrendViews.Value(null, null, null, 0, none);
      }
      double found =
          switch (measure) {
            case MOST -> Arrays.stream(values).max().getAsDouble();
            case LEAST -> Arrays.stream(values).min().getAsDouble();
            case MEAN -> Arrays.stream(values).average().getAsDouble();
          };
      double shown = this == CORE ? units.inDegrees(found) : found;
      String text = FigureText.of(Quantity.known(shown), unit(units));
      return new TrendViews.Value(
          shown, null, null, values.length, text + " (n " + values.length + ")");
    }

    private DoubleStream values(List<Bake> bakes) {
      Stream<Piece> pieces = bakes.stream().flatMap(bake -> bake.pieces().stream());
      return this == LIKING
          ? pieces.flatMap(piece -> piece.liking().stream()).mapToDouble(score -> score)
          : pieces.map(figure).filter(OptionalDouble::isPresent).mapToDouble(v -> v.getAsDouble());
    }
  }

  private static String per(Basis basis) {
    return switch (basis) {
      case PIECE -> "a piece";
      case BATCH -> "a batch";
      default -> "per " + basis.label();
    };
  }

  /** A quantity as a value: bounds stand there only when it is not exactly known. */
  private static TrendViews.Value of(Quantity quantity, String unit) {
    boolean known = quantity.isKnown();
    return new TrendViews.Value(
        FigureSet.number(quantity),
        known || quantity.isUnknown() ? null : finite(quantity.low()),
        known || quantity.isUnknown() ? null : finite(quantity.high()),
        null,
        FigureText.of(quantity, unit));
  }

  private static Double finite(double bound) {
    return Double.isFinite(bound) ? bound : null;
  }

  /** All figures, with those of the foods of some worksheets. */
  static List<TrendFigure> all(List<Worksheet> worksheets) {
    List<TrendFigure> all = new ArrayList<>();
    for (Figure figure : Figure.values()) {
      if (!figure.isMacro()) {
        all.add(new Worked(figure, Basis.PIECE));
      }
    }
    all.addAll(List.of(Outcome.values()));
    for (Basis basis : List.of(Basis.PIECE, Basis.DOUGH_100_G, Basis.BAKED_100_G, Basis.BATCH)) {
      Figure.macros().forEach(figure -> all.add(new Worked(figure, basis)));
    }
    TreeMap<String, String> foods = new TreeMap<>();
    boolean priced = false;
    for (Worksheet sheet : worksheets) {
      for (WorksheetLine line : sheet.lines()) {
        foods.put(line.line().food(), line.name());
        priced |= Cost.price(line).isPresent();
      }
    }
    if (priced) {
      Cost.BASES.forEach(basis -> all.add(new Cost(basis)));
    }
    foods.forEach((food, name) -> all.add(new Share(food, name)));
    return List.copyOf(all);
  }

  /** The figure of a key among some. */
  static TrendFigure named(String key, List<TrendFigure> all) {
    return all.stream()
        .filter(figure -> figure.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    "figures",
                    "There is no figure \"" + key + "\" of this formula.",
                    "Choose another figure."));
  }
}
