package io.ovenmark.cli;

import picocli.CommandLine.Command;

/** Gathers the verbs about photos. */
@Command(
    name = "photo",
    header = "Add, mark and remove photos of a bake.",
    description = {
      "Add photos to a bake, mark them, remove them. The camera's own file stays as it is; the"
          + " notebook keeps a copy that is upright, at most 2400 pixels wide, and says neither"
          + " where nor with what it was taken."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark photo add seeded-lupin-bun 2026-10-03-1 tray.jpg",
    subcommands = {PhotoAddCommand.class, PhotoSetCommand.class, PhotoRemoveCommand.class})
final class PhotoCommand extends Group {}
