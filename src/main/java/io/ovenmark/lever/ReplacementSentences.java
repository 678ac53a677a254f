package io.ovenmark.lever;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Foods that stand in for others, in plain words. */
public final class ReplacementSentences {
  /** Figures that a sentence tells when they move, the first few of them. */
  private static final List<Figure> TOLD =
      List.of(
          Figure.NET_CARBOHYDRATE,
          Figure.PROTEIN,
          Figure.FAT,
          Figure.LIQUID_RATIO,
          Figure.DOUGH_MOISTURE,
          Figure.DOUGH_PER_PIECE);

  private static final int MOST_TOLD = 4;

  private ReplacementSentences() {}

  /**
   * How many foods there are.
   *
   * @param found the answers
   * @param units how masses are shown
   * @return one sentence or two
   */
  public static String summary(Replacements found, ShownUnits units) {
    String line = name(found);
    String what = kept(found, units);
    if (found.answers().isEmpty()) {
      return "No food of the pantry or the built-in table can stand in for " + line + " and keep "
          + what + "; each is named below with the reason.";
    }
    long same = found.answers().stream().filter(Replacement::sameKind).count();
    long meeting =
        found.answers().stream()
            .filter(each -> outcome(each) == GoalCheck.Outcome.MET)
            .count();
    StringBuilder out = new StringBuilder();
    out.append(many(found.answers().size(), "food"))
        .append(" can stand in for ")
        .append(line)
        .append(" and keep ")
        .append(what)
        .append(", ")
        .append(same == 0 ? "none" : Long.toString(same))
        .append(" of the same kind");
    found
        .goal()
        .ifPresent(
            goal ->
                out.append("; with ")
                    .append(
                        meeting == found.answers().size()
                            ? "each of them"
                            : meeting == 0 ? "none of them" : Long.toString(meeting))
                    .append(" the goal ")
                    .append(goal.name())
                    .append(" is met"));
    Replacement first = found.answers().get(0);
    return out.append(". First comes ")
        .append(first.standIn().food().name())
        .append(": ")
        .append(units.amount(first.weigh()))
        .append(" for ")
        .append(units.mass(found.line().grams()))
        .append(".")
        .toString();
  }

  /**
   * What is kept.
   *
   * @param found the answers
   * @param units how masses are shown
   * @return such as {@code its 48 g protein} or {@code its mass of 120 g}
   */
  public static String kept(Replacements found, ShownUnits units) {
    Quantity grams = Quantity.known(found.keptGrams());
    return found.kept() == Kept.MASS
        ? "its mass of " + units.mass(grams)
        : "its " + FigureText.of(grams, "g") + " " + found.kept().label();
  }

  /**
   * What a food does in the place of the line.
   *
   * @param found all answers
   * @param answer one of them
   * @param units how masses are shown
   * @return a few sentences
   */
  public static String of(Replacements found, Replacement answer, ShownUnits units) {
    String kept =
        found.kept() == Kept.MASS
            ? "weighs as much as"
            : "has the " + found.kept().label() + " of";
    return (units.amount(answer.weigh()) + " of " + answer.standIn().food().name() + " " + kept
            + " " + units.mass(found.line().grams()) + " of " + name(found) + ". "
            + moves(found.before(), answer, units) + goal(found, answer, units)
            + allergens(found.before(), answer))
        .strip();
  }

  /**
   * What moves with a food, and which rules of the goal are then missed or left open.
   *
   * @param found all answers
   * @param answer one of them
   * @param units how masses are shown
   * @return a sentence or two
   */
  public static String inShort(Replacements found, Replacement answer, ShownUnits units) {
    String goal =
        outcome(answer) == GoalCheck.Outcome.MET ? "" : goal(found, answer, units);
    return (moves(found.before(), answer, units) + goal).strip();
  }

  /**
   * How the amount follows, so that it can be checked with a pencil.
   *
   * @param found all answers
   * @param answer one of them
   * @param units how masses are shown
   * @return such as {@code 120 g × 37.2 ÷ 51.46 = 86.75 g, by the protein in 100 g of
   *     each.}
   */
  public static String keeps(Replacements found, Replacement answer, ShownUnits units) {
    if (found.kept() == Kept.MASS) {
      return "The same mass, " + units.mass(found.line().grams()) + ".";
    }
    double one = found.kept().per100g(found.line().food().orElseThrow()).low();
    double other = found.kept().per100g(answer.standIn().food()).low();
    return plain(found.line().grams().low()) + " g × " + plain(one) + " ÷ " + plain(other) + " = "
        + plain(answer.grams()) + " g, by the " + found.kept().label() + " in 100 g of each.";
  }

  /** A number for a pencil: two decimals. */
  private static String plain(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String moves(Worksheet before, Replacement answer, ShownUnits units) {
    Basis basis = before.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
    List<String> parts = new ArrayList<>();
    for (Figure figure : TOLD) {
      FigureMove move =
          new FigureMove(
              figure,
              basis,
              before.figure(figure, basis),
              answer.weighed().figure(figure, basis));
      if (parts.size() < MOST_TOLD
          && !move.isStill()
          && !FigureText.looksTheSame(move.from(), move.to())) {
        parts.add(move.name() + " " + move.change(units));
      }
    }
    return parts.isEmpty()
        ? "Hardly anything else moves. "
        : capital(String.join(", ", parts)) + ". ";
  }

  private static GoalCheck.Outcome outcome(Replacement answer) {
    return answer.goal().map(GoalCheck::outcome).orElse(GoalCheck.Outcome.UNKNOWN);
  }

  private static String goal(Replacements found, Replacement answer, ShownUnits units) {
    if (answer.goal().isEmpty()) {
      return "";
    }
    GoalCheck check = answer.goal().get();
    String name = "The goal " + check.goal().name();
    return switch (check.outcome()) {
      case MET -> name + " is met. ";
      case BROKEN ->
          name + " is missed" + stillOrNew(found, check) + ": "
              + rules(check, GoalCheck.Outcome.BROKEN, units) + ". ";
      case UNKNOWN ->
          "Whether the goal " + check.goal().name() + " is met is not known: "
              + rules(check, GoalCheck.Outcome.UNKNOWN, units) + ". ";
    };
  }

  /** Whether the goal was missed before, too. */
  private static String stillOrNew(Replacements found, GoalCheck check) {
    return GoalCheck.of(check.goal(), found.before()).outcome() == GoalCheck.Outcome.BROKEN
        ? ", as before"
        : "";
  }

  private static String rules(
      GoalCheck check, GoalCheck.Outcome outcome, ShownUnits units) {
    List<String> rules = new ArrayList<>();
    for (GoalCheck.Result result : check.results()) {
      if (result.outcome() == outcome) {
        rules.add(
            result
                .limit()
                .map(
                    limit ->
                        limit.inWords(units) + " ("
                            + (limit.figure().isWeighed()
                                ? units.mass(result.value())
                                : FigureText.of(result.value(), limit.figure().unit()))
                            + ")")
                .orElse(result.rule() + " (" + String.join(", ", result.because()) + ")"));
      }
    }
    return String.join("; ", rules);
  }

  private static String allergens(Worksheet before, Replacement answer) {
    StringBuilder out = new StringBuilder();
    if (!answer.gained(before).isEmpty()) {
      out.append("It brings ").append(keys(answer.gained(before))).append(". ");
    }
    if (!answer.lost(before).isEmpty()) {
      out.append("The formula no longer contains ")
          .append(keys(answer.lost(before)))
          .append(". ");
    }
    if (answer.standIn().food().allergens().isEmpty()) {
      out.append("Its allergens are unknown.");
    }
    return out.toString();
  }

  private static String keys(Collection<Allergen> allergens) {
    return String.join(", ", allergens.stream().map(Allergen::key).toList());
  }

  /**
   * A note for the revision that an answer becomes.
   *
   * @param found all answers
   * @param answer one of them
   * @return one line, such as {@code Lupin flour 120 g → soy flour 112 g, same protein}
   */
  public static String note(Replacements found, Replacement answer) {
    return capital(name(found)) + " " + found.line().line().amount() + FigureText.ARROW
        + answer.standIn().food().name() + " " + answer.weigh() + ", same "
        + found.kept().label();
  }

  /** The line's short name. */
  private static String name(Replacements found) {
    int place = found.before().lines().indexOf(found.line());
    return LineNames.of(found.before()).get(place);
  }

  private static String many(int count, String noun) {
    return count == 1 ? "One " + noun : count + " " + noun + "s";
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
