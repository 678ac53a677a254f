package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ImportFoods;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.pantry.FoodImport;
import io.ovenmark.pantry.FoodText;
import io.ovenmark.pantry.Nutrient;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes foods from a downloaded food table. */
@Command(
    name = "import",
    header = "Add foods from a downloaded food table.",
    description = {
      "Add foods from a table that you have downloaded: the ASCII files of USDA SR28 or the CSV"
          + " files of USDA FoodData Central, in a folder or a zip file. Foods that the pantry has"
          + " stay as they are; figures that the table lacks stay unknown."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark pantry import sr28 --words almonds --look",
      "  ovenmark pantry import sr28 --id 12061 --kind dry"
    })
final class PantryImportCommand extends WritingCommand {
  private static final int KILOBYTE = 1024;

  @Parameters(index = "0", paramLabel = "PATH", description = "Folder or zip file of the table.")
  private Path table;

  @Option(
      names = "--words",
      paramLabel = "TEXT",
      description = "Take foods whose description has all these words.")
  private String words = "";

  @Option(
      names = "--id",
      paramLabel = "NUMBER",
      split = ",",
      description = "Take the food of this NDB number or FoodData Central id; may be repeated.")
  private List<String> ids = List.of();

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "The part they play in a dough; default: guessed, to be checked.")
  private String kind;

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "" + FoodImport.Selection.USUAL_MOST,
      description = "At most so many foods; default: ${DEFAULT-VALUE}.")
  private int most;

  @Option(names = "--look", description = "Only show what would be added.")
  private boolean look;

  @Override
  ExitCode run(Desk desk) {
    FoodImport.Selection selection =
        checked(
            "--words or --id",
            () ->
                new FoodImport.Selection(
                    words,
                    new HashSet<>(ids),
                    Optional.ofNullable(kind).map(FoodText::kind),
                    most));
    ProgressLines lines = new ProgressLines(surroundings());
    FoodImport.Progress progress =
        (file, done, total) ->
            lines.at("Reading " + file + ", kilobytes", done / KILOBYTE, total / KILOBYTE);
    ImportFoods verb = new ImportFoods(desk);
    KitchenViews.ImportView answer =
        look
            ? verb.look(file(table), selection, progress)
            : verb.call(file(table), selection, progress, by(desk));
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private void text(KitchenViews.ImportView answer, Output out) {
    out.line(
        answer.table() + ": " + Figures.counted(answer.foods().size(), "food fits", "foods fit")
            + (look ? "" : ", " + answer.added() + " added"));
    Table foods =
        new Table("food", "name", "kind", ">kcal", ">protein", ">carb.", "number", "");
    for (KitchenViews.ImportedFood food : answer.foods()) {
      foods.row(
          food.food(),
          food.name(),
          food.kind() + (food.kindGuessed() ? " ?" : ""),
          FoodListText.cell(food.per100G(), Nutrient.ENERGY),
          FoodListText.cell(food.per100G(), Nutrient.PROTEIN),
          FoodListText.cell(food.per100G(), Nutrient.CARBOHYDRATE),
          food.sourceId(),
          food.state().equals("found") ? "" : food.state());
    }
    if (!foods.isEmpty()) {
      out.table(foods.withoutEmptyColumns());
    }
    if (answer.foods().stream().anyMatch(KitchenViews.ImportedFood::kindGuessed)) {
      out.wrapped(
          "? is a guess: check it, and correct it with: ovenmark pantry set FOOD kind=dry", "  ");
    }
    if (answer.more()) {
      out.line("There are more that fit; narrow the words or raise --most.");
    }
    if (answer.faultyRows() > 0) {
      out.line(answer.faultyRows() + " faulty rows were left out:");
      ProblemText.print(answer.problems(), out);
    }
  }
}
