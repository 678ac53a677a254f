package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ListFoods;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Finds foods by words. */
@Command(
    name = "find",
    header = "Find foods in the pantry and the built-in table.",
    description = "Find foods by words, in the pantry first, then in the built-in table.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark pantry find almond meal")
final class PantryFindCommand extends DeskCommand {
  @Parameters(arity = "1..*", paramLabel = "WORD", description = "Words of the food's name.")
  private List<String> words;

  @Override
  ExitCode run(Desk desk) {
    KitchenViews.FoodList answer = new ListFoods(desk).find(String.join(" ", words));
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(KitchenViews.FoodList answer, Output out) {
    if (answer.foods().isEmpty()) {
      out.line("No food fits.");
      out.wrapped(
          "Add it from its label with: ovenmark pantry add SHORT-NAME --us (or --eu) …", "  ");
      return;
    }
    FoodListText.found(answer.foods(), out);
  }
}
