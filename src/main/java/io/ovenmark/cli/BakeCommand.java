package io.ovenmark.cli;

import picocli.CommandLine.Command;

/** Gathers the verbs about bakes. */
@Command(
    name = "bake",
    header = "Record and show bakes.",
    description = {
      "Record what came out of the oven, piece by piece, and show it. A bake belongs to exactly the"
          + " content that was weighed, so it stays with its revision whatever comes later."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark bake list seeded-lupin-bun",
    subcommands = {
      BakeAddCommand.class,
      BakeSetCommand.class,
      BakeListCommand.class,
      BakeShowCommand.class
    })
final class BakeCommand extends Group {}
