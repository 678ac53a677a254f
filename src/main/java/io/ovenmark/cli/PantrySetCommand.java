package io.ovenmark.cli;

import io.ovenmark.desk.ChangeFood;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.notebook.Address;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes a food. */
@Command(
    name = "set",
    header = "Change a food of the pantry.",
    description = {
      "Change a food of the pantry: price=\"3.20 EUR for 1000 g\", weight.tbsp=\"9 g\","
          + " density=\"0.55 g/ml\", allergens=lupin, kind=dry, name=…, polyol=erythritol, or a"
          + " figure per 100 g such as protein=39.1. Nothing behind the = makes a fact unknown.",
      "Figures of numbered revisions do not move; the newest is worked out with the changed food."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark pantry set lupin-flour weight.tbsp=9g price=\"4.80 EUR for 500 g\"")
final class PantrySetCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FOOD", description = "Its short name.")
  private String slug;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "NAME=VALUE",
      description = "What to change.")
  private List<String> facts;

  @Option(
      names = "--in",
      paramLabel = "FORMULA/VARIANT",
      description = "Change it for this variant alone; default: for the main line.")
  private String variant;

  @Override
  ExitCode run(Desk desk) {
    ChangeFood verb = new ChangeFood(desk);
    KitchenViews.FoodView food;
    if (variant == null) {
      food = verb.call(slug, facts, by(desk));
    } else {
      Address line = desk.address(variant);
      if (line.variant().isEmpty() || line.point().kind() != Address.Point.Kind.LATEST) {
        throw usage("--in names a variant as FORMULA/VARIANT.");
      }
      food = verb.call(line, slug, facts, by(desk));
    }
    print(food, out -> FoodSheetText.print(food, out));
    return ExitCode.DONE;
  }
}
