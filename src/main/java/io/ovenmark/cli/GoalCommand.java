package io.ovenmark.cli;

import picocli.CommandLine.Command;

/** Gathers the verbs about goals. */
@Command(
    name = "goal",
    header = "Set goals and show how formulas stand to them.",
    description = {
      "Set goals (limits on figures, allergens and foods to be free of) and show how the formulas"
          + " stand to them. A formula names its goal: ovenmark revise FORMULA --set goal=GOAL."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark goal show low-carb-bun",
    subcommands = {GoalAddCommand.class, GoalListCommand.class, GoalShowCommand.class})
final class GoalCommand extends Group {}
