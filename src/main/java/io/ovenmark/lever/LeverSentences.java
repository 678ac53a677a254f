package io.ovenmark.lever;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Answers about levers in plain words. */
public final class LeverSentences {
  /** How many lines a note names. */
  private static final int MOST_NAMED = 3;

  /** Figures that a sentence tells when they move, besides those that were asked for. */
  private static final List<Figure> TOLD =
      List.of(
          Figure.BATCH_MASS,
          Figure.DOUGH_PER_PIECE,
          Figure.PIECES,
          Figure.LIQUID_RATIO,
          Figure.DOUGH_MOISTURE,
          Figure.NET_CARBOHYDRATE,
          Figure.PROTEIN);

  private LeverSentences() {}

  /**
   * What an answer changes.
   *
   * @param answer the answer
   * @param units how masses are shown
   * @return such as {@code Water 180 → 170 g (−5.56 %)}
   */
  public static String change(Answer answer, ShownUnits units) {
    List<String> parts = new ArrayList<>();
    Optional<LineMove> first = lead(answer);
    first.ifPresent(move -> parts.add(moved(move, units)));
    for (LineMove move : answer.lines()) {
      if (first.filter(move::equals).isEmpty()) {
        parts.add(moved(move, units));
      }
    }
    answer
        .yield()
        .ifPresent(
            yield ->
                parts.add(
                    yield.pieces().isPresent()
                        ? "divide into " + FigureText.number(yield.pieces().get()) + " pieces"
                        : "divide into pieces of "
                            + units.mass(
                                Quantity.known(yield.doughPerPieceGrams().orElseThrow()))));
    return capital(String.join(", ", parts));
  }

  /** The line that was moved on purpose; empty unless it is a single change. */
  static Optional<String> lead(Answer answer, ShownUnits units) {
    return lead(answer).map(move -> moved(move, units));
  }

  private static String moved(LineMove move, ShownUnits units) {
    String masses =
        units.massChange(Quantity.known(move.fromGrams()), Quantity.known(move.toGrams()));
    OptionalDouble percent = move.percent();
    return move.name() + " " + masses
        + (percent.isPresent() ? " (" + FigureText.signed(percent.getAsDouble()) + " %)" : "");
  }

  /**
   * What an answer moves besides what was asked for.
   *
   * @param levers all answers
   * @param answer one of them
   * @param units how masses are shown
   * @return such as {@code Also moves: batch mass 450 → 440 g, …}; empty when nothing does
   */
  public static String alsoMoves(Levers levers, Answer answer, ShownUnits units) {
    List<String> parts = new ArrayList<>();
    for (Figure figure : TOLD) {
      boolean asked =
          levers.question().wishes().stream().anyMatch(wish -> wish.figure() == figure);
      if (!asked) {
        answer.moves().stream()
            .filter(move -> move.figure() == figure)
            .map(move -> move.name() + " " + move.change(units))
            .forEach(parts::add);
      }
    }
    return parts.isEmpty() ? "" : "Also moves: " + String.join(", ", parts) + ".";
  }

  /**
   * A note for the revision that an answer becomes.
   *
   * @param levers all answers
   * @param answer one of them
   * @return one line, such as {@code Liquid ratio 1.15 → 1.1: water 180 g → 170 g}
   */
  public static String note(Levers levers, Answer answer) {
    ShownUnits units = ShownUnits.AS_WRITTEN;
    List<String> wishes = new ArrayList<>();
    for (Wish wish : levers.question().wishes()) {
      FigureMove move =
          new FigureMove(
              wish.figure(),
              wish.basis(),
              wish.of(levers.before()),
              wish.of(answer.weighed()));
      wishes.add(move.name() + " " + move.change(units));
    }
    List<String> lines = new ArrayList<>();
    for (LineMove move : answer.lines()) {
      if (lines.size() < MOST_NAMED && isLead(answer, move)) {
        lines.add(move.name() + " " + move.entered() + FigureText.ARROW + move.weigh());
      }
    }
    int more = answer.lines().size() - lines.size();
    if (more > 0) {
      lines.add(more == 1 ? "1 more line" : more + " more lines");
    }
    String how = lines.isEmpty() ? change(answer, units) : String.join(", ", lines);
    return capital(String.join(", ", wishes) + ": " + how.substring(0, 1).toLowerCase(Locale.ROOT)
        + how.substring(1));
  }

  private static boolean isLead(Answer answer, LineMove move) {
    return answer.line().isEmpty() || answer.line().get().equals(move.line());
  }

  /**
   * How less liquid and more of something dry differ as ways of drying, or more liquid and less dry
   * as ways of wetting: in what they cost in batch size and net carbohydrate.
   *
   * @param levers all answers
   * @param units how masses are shown
   * @return a sentence; empty when the wish is not about wetness, or only one way is open
   */
  public static Optional<String> ways(Levers levers, ShownUnits units) {
    Optional<Boolean> drying = drying(levers);
    if (drying.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> liquid = way(levers, FoodKind.LIQUID, drying.get(), units);
    Optional<String> dry = way(levers, FoodKind.DRY, drying.get(), units);
    return liquid.isPresent() && dry.isPresent()
        ? Optional.of(capital(liquid.get()) + "; " + dry.get() + ".")
        : Optional.empty();
  }

  /** Whether the wishes dry the dough, or wet it; empty when they are not about that. */
  private static Optional<Boolean> drying(Levers levers) {
    for (Wish wish : levers.question().wishes()) {
      boolean wetness =
          wish.figure() == Figure.LIQUID_RATIO || wish.figure() == Figure.DOUGH_MOISTURE;
      if (wetness && wish.of(levers.before()).low() > wish.most()) {
        return Optional.of(true);
      }
      if (wetness && wish.of(levers.before()).low() < wish.least()) {
        return Optional.of(false);
      }
    }
    return Optional.empty();
  }

  private static Optional<String> way(
      Levers levers, FoodKind kind, boolean drying, ShownUnits units) {
    boolean less = drying == (kind == FoodKind.LIQUID);
    return levers.answers().stream()
        .filter(answer -> isWay(levers.before(), answer, kind, less))
        .findFirst()
        .map(
            answer ->
                (drying ? "drying by " : "wetting by ") + (less ? "less " : "more ")
                    + lead(answer).orElseThrow().name() + " "
                    + costs(levers.before(), answer.after(), units));
  }

  private static boolean isWay(Worksheet sheet, Answer answer, FoodKind kind, boolean less) {
    return lead(answer)
        .filter(
            move ->
                sheet.line(move.line()).flatMap(WorksheetLine::food)
                        .filter(food -> food.kind() == kind)
                        .isPresent()
                    && less == (move.toGrams() < move.fromGrams()))
        .isPresent();
  }

  private static Optional<LineMove> lead(Answer answer) {
    return answer.line()
        .flatMap(
            line ->
                answer.lines().stream().filter(move -> move.line().equals(line)).findFirst());
  }

  private static String costs(Worksheet before, Worksheet after, ShownUnits units) {
    double batch = after.batchGrams().low() - before.batchGrams().low();
    String mass = units.mass(Quantity.known(Math.abs(batch)));
    String first =
        Math.abs(batch) < 1e-6
            ? "leaves the batch as it is"
            : batch < 0 ? "takes " + mass + " from the batch" : "adds " + mass + " to the batch";
    boolean divided = !before.pieces().isUnknown();
    Basis basis = divided ? Basis.PIECE : Basis.DOUGH_100_G;
    String place = divided ? "a piece" : "100 g of dough";
    Quantity from = before.figure(Figure.NET_CARBOHYDRATE, basis);
    Quantity to = after.figure(Figure.NET_CARBOHYDRATE, basis);
    if (!from.isKnown() || !to.isKnown()) {
      return first + "; what it does to net carbohydrate is not known exactly";
    }
    double moved = to.low() - from.low();
    if (FigureText.number(moved).equals("0") || FigureText.looksTheSame(from, to)) {
      return first + " and leaves net carbohydrate at " + FigureText.of(to, "g")
          + (divided ? " a piece" : " per 100 g of dough");
    }
    String grams = FigureText.number(Math.abs(moved)) + " g net carbohydrate";
    if (batch > 0 == moved > 0 && Math.abs(batch) >= 1e-6) {
      return first + " and " + grams + (moved > 0 ? " to " : " from ") + place;
    }
    return first + " and " + (moved > 0 ? "adds " + grams + " to " : "takes " + grams + " from ")
        + place;
  }

  private static String capital(String text) {
    return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT)
        + text.substring(1);
  }
}
