package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.SaveGoal;
import io.ovenmark.goal.SubtractText;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a goal. */
@Command(
    name = "add",
    header = "Add a goal, or replace one.",
    description = {
      "Add a goal: limits on figures, and what a formula must be free of. A limit is written as"
          + " \"net_carbohydrate_g <= 4 per piece\", \"protein >= 8 g\" or \"liquid ratio 0.85 to"
          + " 0.95\"; per piece, batch, 100 g dough or 100 g baked."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark goal add lowest-carb --limit \"net_carbohydrate_g <= 2 per piece\"",
      "  ovenmark goal add guest-bun --limit \"protein >= 8 g\" --without eggs,gluten"
    })
final class GoalAddCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "GOAL", description = "Short name to file it under.")
  private String slug;

  @Option(
      names = "--name",
      paramLabel = "TEXT",
      description = "Its name for people; default: the short name.")
  private String name;

  @Option(names = "--limit", paramLabel = "TEXT", description = "A limit; may be repeated.")
  private List<String> limits = new ArrayList<>();

  @Option(
      names = "--without",
      paramLabel = "ALLERGENS",
      split = ",",
      description = "Allergens it must be free of, such as eggs,milk,gluten.")
  private List<String> allergens = new ArrayList<>();

  @Option(
      names = "--without-food",
      paramLabel = "FOODS",
      split = ",",
      description = "Foods it must not contain, by short name.")
  private List<String> foods = new ArrayList<>();

  @Option(
      names = "--subtract",
      paramLabel = "PARTS",
      description =
          "What its net carbohydrate leaves out: fibre,polyols=0.5,allulose or none; default: the"
              + " notebook's rule.")
  private String subtract;

  @Option(names = "--note", paramLabel = "TEXT", description = "For whom or why.")
  private String note;

  @Option(names = "--replace", description = "Take the place of a goal of this short name.")
  private boolean replace;

  @Override
  ExitCode run(Desk desk) {
    Optional<NetCarbohydrate> net =
        Optional.ofNullable(subtract)
            .map(text -> checked("--subtract", () -> SubtractText.read(text)));
    SaveGoal.Request request =
        new SaveGoal.Request(
            slug,
            name == null ? slug : name,
            Optional.ofNullable(note),
            limits,
            allergens,
            foods,
            net);
    KitchenViews.GoalSheet goal = new SaveGoal(desk).call(request, replace, by(desk));
    print(goal, out -> GoalSheetText.print(goal, out));
    return ExitCode.DONE;
  }
}
