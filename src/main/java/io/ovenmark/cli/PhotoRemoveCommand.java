package io.ovenmark.cli;

import io.ovenmark.bake.Photo;
import io.ovenmark.desk.ChangePhotos;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.PhotoState;
import io.ovenmark.desk.PhotoViews;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a photo away from its bake, or brings it back. */
@Command(
    name = "remove",
    header = "Take a photo away from its bake, or bring it back.",
    description = {
      "Take a photo away from its bake. Earlier commits keep it: the answer names one that brings"
          + " it back."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark photo remove seeded-lupin-bun 2026-10-03-1 2")
final class PhotoRemoveCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "BAKE", description = "The bake, such as 2026-09-14-1.")
  private String id;

  @Parameters(
      index = "2",
      paramLabel = "PHOTO",
      description = "The photo: its path, or its place among those of the bake, such as 1.")
  private String photo;

  @Option(
      names = "--back-from",
      paramLabel = "COMMIT",
      description = "Bring it back from a commit that has it; name it by its path then.")
  private String commit;

  @Override
  ExitCode run(Desk desk) {
    String slug = desk.address(formula).formula();
    ChangePhotos verb = new ChangePhotos(desk);
    if (commit != null) {
      PhotoViews.PhotoChanged back = verb.bringBack(slug, id, photo, commit, by(desk));
      print(back, out -> out.line("Brought back " + back.photo().file()));
      return ExitCode.DONE;
    }
    Photo now = verb.find(slug, id, photo);
    PhotoViews.PhotoRemoved removed =
        verb.remove(slug, id, now.file(), PhotoState.of(now), by(desk));
    print(
        removed,
        out -> {
          out.line("Removed " + removed.photo().file());
          out.line(
              "  bring it back with: ovenmark photo remove " + slug + " " + id + " "
                  + removed.photo().file() + " --back-from " + removed.commit().substring(0, 10));
        });
    return ExitCode.DONE;
  }
}
