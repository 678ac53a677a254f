package io.ovenmark.cli;

import picocli.CommandLine.Command;

/** Gathers the verbs about foods. */
@Command(
    name = "pantry",
    header = "Show, find, add and change foods.",
    description = {
      "Show, find, add and change the foods of the notebook: composition, household weights,"
          + " density, allergens, price. A food of the built-in table comes into the pantry by"
          + " itself when a formula first uses it."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark pantry find lupin flour",
    subcommands = {
      PantryListCommand.class,
      PantryShowCommand.class,
      PantryFindCommand.class,
      PantryAddCommand.class,
      PantrySetCommand.class,
      PantryImportCommand.class
    })
final class PantryCommand extends Group {}
