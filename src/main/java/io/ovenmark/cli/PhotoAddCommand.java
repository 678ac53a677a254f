package io.ovenmark.cli;

import io.ovenmark.bake.Photo;
import io.ovenmark.desk.AddPhotos;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.NewPhoto;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds photos to a bake. */
@Command(
    name = "add",
    header = "Add photos to a bake.",
    description = "Add JPEG, PNG or WebP pictures to a bake, behind those that it has.",
    footerHeading = "%nExample:%n",
    footer =
        "  ovenmark photo add seeded-lupin-bun 2026-10-03-1 tray.jpg --mark a=0.3,0.4")
final class PhotoAddCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "BAKE", description = "The bake, such as 2026-09-14-1.")
  private String id;

  @Parameters(
      index = "2..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "The pictures.")
  private List<Path> files;

  @Option(
      names = "--caption",
      paramLabel = "TEXT",
      description = "What the picture shows; repeated, in the order of the files.")
  private List<String> captions = new ArrayList<>();

  @Option(
      names = "--mark",
      paramLabel = "PIECE=X,Y",
      description =
          "Where a piece is on the one picture, from 0 to 1 from the left and from above; may be"
              + " repeated.")
  private List<String> marks = new ArrayList<>();

  @Override
  ExitCode run(Desk desk) {
    if (captions.size() > files.size()) {
      throw usage("There are more captions than pictures.");
    }
    if (!marks.isEmpty() && files.size() > 1) {
      throw usage("Add a picture with marks by itself, so that it is clear where they belong.");
    }
    AddPhotos verb = new AddPhotos(desk);
    String slug = desk.address(formula).formula();
    List<Photo.Mark> places = verb.marks(slug, id, marks);
    List<NewPhoto> photos = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      Optional<String> caption =
          i < captions.size() ? Optional.of(captions.get(i)) : Optional.empty();
      photos.add(PhotoFile.read(file(files.get(i)), caption, places));
    }
    KitchenViews.BakeWritten written = verb.call(slug, id, photos, by(desk));
    print(written, out -> text(written, out));
    return ExitCode.DONE;
  }

  private static void text(KitchenViews.BakeWritten written, Output out) {
    written.photosAdded().forEach(path -> out.line("Added " + path));
    out.parts("", BakeLine.of(written.bake()), "  ");
  }
}
