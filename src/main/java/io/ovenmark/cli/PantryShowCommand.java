package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ShowFood;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a food. */
@Command(
    name = "show",
    header = "Show a food.",
    description =
        "Show a food of the pantry, or one of the built-in table: figures, weights, allergens,"
            + " price, and who uses it.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark pantry show lupin-flour")
final class PantryShowCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "FOOD", description = "Its short name.")
  private String slug;

  @Override
  ExitCode run(Desk desk) {
    KitchenViews.FoodView food = new ShowFood(desk).call(slug);
    print(food, out -> FoodSheetText.print(food, out));
    return ExitCode.DONE;
  }
}
