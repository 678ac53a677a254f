package io.ovenmark.desk;

import io.ovenmark.notebook.NotebookSettings;

/** Says which notebook it is, without looking at its formulas. */
public final class DescribeNotebook {
  private final Desk desk;

  /**
   * A notebook in a line.
   *
   * @param title its title
   * @param folder where it is
   * @param temperatureUnit {@code °C} or {@code °F}, for showing
   * @param massUnit {@code g} or {@code oz}, for showing
   */
  public record NotebookLine(
      String title, String folder, String temperatureUnit, String massUnit) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public DescribeNotebook(Desk desk) {
    this.desk = desk;
  }

  /**
   * Says it.
   *
   * @return title, folder and units
   */
  public NotebookLine call() {
    NotebookSettings settings = desk.notebook().latest().settings();
    return new NotebookLine(
        settings.title(),
        desk.notebook().folder().toString(),
        settings.temperatureUnit(),
        settings.massUnit());
  }
}
