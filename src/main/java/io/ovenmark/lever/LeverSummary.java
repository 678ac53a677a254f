package io.ovenmark.lever;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the answers to a question come to, in plain words. */
public final class LeverSummary {
  private LeverSummary() {}

  /**
   * The answer in a sentence or two.
   *
   * @param levers the answers
   * @param units how masses are shown
   * @return such as {@code 5 changes of one line do it; water 180 → 170 g disturbs least.}
   */
  public static String of(Levers levers, ShownUnits units) {
    if (levers.granted()) {
      return "Nothing to change: " + String.join(", ", now(levers, units)) + ".";
    }
    if (levers.contradiction().isPresent()) {
      return impossible(levers.contradiction().get());
    }
    Answer first = levers.answers().get(0);
    long singles =
        levers.answers().stream().filter(each -> each.kind() == Answer.Kind.SINGLE).count();
    if (first.kind() == Answer.Kind.DIVISION) {
      return "No line has to move: " + lower(LeverSentences.change(first, units)) + ".";
    }
    if (singles == 0) {
      return "No single line does it; several together do.";
    }
    String lead = LeverSentences.lead(first, units).orElseThrow();
    return singles == 1
        ? "One change of one line does it: " + lead + "."
        : singles + " changes of one line do it; " + lead + " disturbs the rest least.";
  }

  private static List<String> now(Levers levers, ShownUnits units) {
    List<String> parts = new ArrayList<>();
    for (Wish wish : levers.question().wishes()) {
      Quantity figure = wish.of(levers.before());
      FigureMove move = new FigureMove(wish.figure(), wish.basis(), figure, figure);
      parts.add(move.name() + " is " + text(wish.figure(), figure, units));
    }
    return parts;
  }

  private static String impossible(Contradiction contradiction) {
    List<String> because = contradiction.because();
    if (because.size() == 1) {
      return "It cannot be done: no masses give " + because.get(0) + ".";
    }
    return "It cannot be done: these contradict each other: "
        + String.join("; ", because) + ". Without any one of them it could.";
  }

  /**
   * How near one can come to a wish.
   *
   * @param nearest the values
   * @param units how masses are shown
   * @return such as {@code liquid ratio 0.8: 0.98 is the nearest within the limits}
   */
  public static String of(Contradiction.Nearest nearest, ShownUnits units) {
    Wish wish = nearest.wish();
    String asked = wish.inWords(units) + ": ";
    OptionalDouble alone = nearest.alone();
    OptionalDouble together = nearest.together();
    if (alone.isEmpty()) {
      return asked + "nothing can be said, since the limits contradict each other";
    }
    String one = text(wish.figure(), Quantity.known(alone.getAsDouble()), units);
    if (isGranted(wish, alone.getAsDouble())) {
      return asked + "possible by itself"
          + (together.isPresent() && !isGranted(wish, together.getAsDouble())
              ? "; together with the other wishes "
                  + text(wish.figure(), Quantity.known(together.getAsDouble()), units)
                  + " is the nearest"
              : "");
    }
    boolean same =
        together.isEmpty()
            || Math.abs(together.getAsDouble() - alone.getAsDouble())
                <= Wish.TOLERANCE * Math.max(1, Math.abs(alone.getAsDouble()));
    return asked + one + " is the nearest within the limits"
        + (same
            ? ""
            : ", " + text(wish.figure(), Quantity.known(together.getAsDouble()), units)
                + " with the other wishes granted");
  }

  private static boolean isGranted(Wish wish, double value) {
    double slack = Wish.TOLERANCE * Math.max(1, Math.abs(value));
    return value >= wish.least() - slack && value <= wish.most() + slack;
  }

  private static String text(Figure figure, Quantity value, ShownUnits units) {
    return figure.isWeighed() ? units.mass(value) : FigureText.of(value, figure.unit());
  }

  private static String lower(String text) {
    return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
