package io.ovenmark.cli;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;

/** Figures as they stand in tables and short lists. */
final class Figures {
  private Figures() {}

  /** A figure in a narrow column: {@code 3.41}, {@code ≥ 3.1}, {@code 3 to 4}, {@code unknown}. */
  static String cell(Quantity quantity) {
    return brief(FigureText.of(quantity));
  }

  /** A figure's text made short for a table. */
  static String brief(String text) {
    return text.replace("at least ", "≥ ")
        .replace("at most ", "≤ ")
        .replace("between ", "")
        .replace(" and ", " to ");
  }

  /** A number, or an empty cell. */
  static String cell(Double number) {
    return number == null ? "" : FigureText.number(number);
  }

  /** The name and unit of a figure by its JSON name: {@code net carbohydrate, g}. */
  static String name(String key) {
    return Figure.withKey(key)
        .map(figure -> figure.label() + (figure.unit().isEmpty() ? "" : ", " + figure.unit()))
        .orElse(key);
  }

  /** A figure with its name and unit: {@code net carbohydrate 3.41 g}. */
  static String inWords(Figure figure, Quantity quantity) {
    return figure.label() + " " + FigureText.of(quantity, figure.unit());
  }

  /** Whether a goal is met. */
  static String met(Boolean met) {
    return met == null ? "not known" : met ? "met" : "not met";
  }

  /** The day of an ISO 8601 time. */
  static String day(String time) {
    return time.length() < 10 ? time : time.substring(0, 10);
  }

  /** Day and minute of an ISO 8601 time. */
  static String minute(String time) {
    return time.length() < 16 ? time : time.substring(0, 16).replace('T', ' ');
  }

  /** A count with its word: {@code 1 piece}, {@code 3 pieces}. */
  static String counted(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
