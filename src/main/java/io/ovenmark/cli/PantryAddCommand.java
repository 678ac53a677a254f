package io.ovenmark.cli;

import io.ovenmark.desk.AddFood;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.FoodText;
import io.ovenmark.pantry.LabelFood;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a food. */
@Command(
    name = "add",
    header = "Add a food from its label or the built-in table.",
    description = {
      "Add a food. With --us or --eu from its package's label: figures as printed, energy=120kcal"
          + " protein=12 fat=3 saturated_fat=0.5 carbohydrate=9 fibre=8 sugars=1 salt=0.1, for"
          + " --per-serving or per 100 g. What is not printed stays unknown. Without them from the"
          + " built-in table.",
      "Further facts: allergens=eggs,milk (or none), weight.tbsp=\"9 g\", density=\"0.55 g/ml\","
          + " price=\"4.80 EUR for 500 g\", polyol=erythritol."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark pantry add almonds",
      "  ovenmark pantry add bench-lupin --us --per-serving 30g protein=12 fat=3 fibre=11"
    })
final class PantryAddCommand extends WritingCommand {
  private static final double PER_100_GRAMS = 100;

  @Parameters(index = "0", paramLabel = "FOOD", description = "Short name to file it under.")
  private String slug;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "NAME=VALUE",
      description = "Figures and facts.")
  private List<String> facts = new ArrayList<>();

  @Option(
      names = "--us",
      description = "The label follows the United States: carbohydrate includes fibre.")
  private boolean unitedStates;

  @Option(
      names = "--eu",
      description = "The label follows the European Union: carbohydrate without fibre.")
  private boolean europeanUnion;

  @Option(
      names = "--per-serving",
      paramLabel = "GRAMS",
      description = "What a serving weighs, 30g; default: figures per 100 g.")
  private String serving;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description =
          "The part it plays in a dough: dry, liquid, fat, dairy solid or produce; default: dry.")
  private String kind;

  @Option(
      names = "--name",
      paramLabel = "TEXT",
      description = "Its name for people; default: the short name.")
  private String name;

  @Override
  ExitCode run(Desk desk) {
    if (unitedStates && europeanUnion) {
      throw usage("A label follows either --us or --eu, not both.");
    }
    AddFood verb = new AddFood(desk);
    KitchenViews.FoodView food =
        unitedStates || europeanUnion
            ? verb.fromLabel(label(), by(desk))
            : verb.fromTable(slug, edits(), by(desk));
    print(food, out -> FoodSheetText.print(food, out));
    return ExitCode.DONE;
  }

  private AddFood.Label label() {
    return new AddFood.Label(
        slug,
        name == null ? slug.replace('-', ' ') : name,
        kind == null ? FoodKind.DRY : checked("--kind", () -> FoodText.kind(kind)),
        unitedStates ? LabelFood.Panel.UNITED_STATES : LabelFood.Panel.EUROPEAN_UNION,
        serving == null
            ? PER_100_GRAMS
            : checked("--per-serving", () -> FoodText.grams("a serving", serving)),
        facts);
  }

  private List<String> edits() {
    if (serving != null) {
      throw usage("--per-serving belongs to a label; say --us or --eu too.");
    }
    List<String> edits = new ArrayList<>();
    if (name != null) {
      edits.add("name=" + name);
    }
    if (kind != null) {
      edits.add("kind=" + kind);
    }
    edits.addAll(facts);
    return edits;
  }
}
