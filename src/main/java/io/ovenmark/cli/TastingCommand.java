package io.ovenmark.cli;

import picocli.CommandLine.Command;

/** Gathers the verbs about tastings. */
@Command(
    name = "tasting",
    header = "Set up blind tastings and read their results.",
    description = {
      "Set up a blind tasting with three-digit codes and balanced orders, print its sheets, enter"
          + " the answers, and see what they can and cannot tell.",
      "Ask each taster about allergies before anything is served."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark tasting show seeded-lupin-bun 2026-10-10-1",
    subcommands = {
      TastingNewCommand.class,
      TastingSheetCommand.class,
      TastingEnterCommand.class,
      TastingMoreCommand.class,
      TastingShowCommand.class,
      TastingListCommand.class
    })
final class TastingCommand extends Group {}
