package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ListFoods;
import picocli.CommandLine.Command;

/** Lists the foods of the pantry. */
@Command(
    name = "list",
    header = "List the foods of the pantry.",
    description = "List the foods of the pantry, with how many formulas and variants use them.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark pantry list")
final class PantryListCommand extends DeskCommand {
  @Override
  ExitCode run(Desk desk) {
    KitchenViews.FoodList answer = new ListFoods(desk).call();
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(KitchenViews.FoodList answer, Output out) {
    if (answer.foods().isEmpty()) {
      out.line("The pantry has no food yet.");
      out.line("Find one of the built-in table with: ovenmark pantry find almond");
      return;
    }
    FoodListText.print(answer.foods(), out);
  }
}
