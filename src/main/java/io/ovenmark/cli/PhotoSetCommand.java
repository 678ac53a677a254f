package io.ovenmark.cli;

import io.ovenmark.bake.Photo;
import io.ovenmark.desk.AddPhotos;
import io.ovenmark.desk.ChangePhotos;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.PhotoState;
import io.ovenmark.desk.PhotoViews;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes what is said of a photo. */
@Command(
    name = "set",
    header = "Change the words and marks of a photo.",
    description =
        "Change the caption, the alternative text and the marks of a photo. A mark takes the place"
            + " of those that its piece has. An empty text takes the words back.",
    footerHeading = "%nExample:%n",
    footer = "  ovenmark photo set seeded-lupin-bun 2026-10-03-1 1 --mark a=0.3,0.4")
final class PhotoSetCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "BAKE", description = "The bake, such as 2026-09-14-1.")
  private String id;

  @Parameters(
      index = "2",
      paramLabel = "PHOTO",
      description = "The photo: its path, or its place among those of the bake, such as 1.")
  private String photo;

  @Option(names = "--caption", paramLabel = "TEXT", description = "What is said beside it.")
  private String caption;

  @Option(
      names = "--alternative",
      paramLabel = "TEXT",
      description = "What it shows, for whoever does not see it.")
  private String alternative;

  @Option(
      names = "--mark",
      paramLabel = "PIECE=X,Y",
      description = "Where a piece is, from 0 to 1 from the left and from above; may be repeated.")
  private List<String> marks = new ArrayList<>();

  @Option(
      names = "--unmark",
      paramLabel = "PIECE",
      description = "A piece whose marks are taken away; may be repeated.")
  private List<String> unmarked = new ArrayList<>();

  @Override
  ExitCode run(Desk desk) {
    String slug = desk.address(formula).formula();
    ChangePhotos verb = new ChangePhotos(desk);
    Photo now = verb.find(slug, id, photo);
    PhotoState base = PhotoState.of(now);
    List<Photo.Mark> added = new AddPhotos(desk).marks(slug, id, marks);
    List<Photo.Mark> all = new ArrayList<>(base.marks());
    all.removeIf(
        mark ->
            unmarked.contains(mark.piece())
                || added.stream().anyMatch(each -> each.piece().equals(mark.piece())));
    all.addAll(added);
    PhotoState wanted =
        new PhotoState(
            caption == null ? base.caption() : Optional.of(caption),
            alternative == null ? base.alternative() : Optional.of(alternative),
            all);
    PhotoViews.PhotoChanged changed =
        verb.change(slug, id, now.file(), base, base, wanted, by(desk));
    print(changed, out -> text(changed, out));
    return changed.outcome().equals("conflict") ? ExitCode.CONFLICT : ExitCode.DONE;
  }

  private static void text(PhotoViews.PhotoChanged changed, Output out) {
    switch (changed.outcome()) {
      case "conflict" -> {
        out.line("Not changed: somebody else changed the same meanwhile.");
        changed.conflicts().forEach(each -> out.line("  " + side(each)));
      }
      case "unchanged" -> out.line(changed.photo().file() + " says all of that already.");
      default ->
          out.line(
              "Changed " + changed.photo().file()
                  + (changed.photo().marks().isEmpty()
                      ? ""
                      : ", marked: "
                          + changed.photo().marks().stream()
                              .map(mark -> mark.piece())
                              .collect(Collectors.joining(", "))));
    }
  }

  private static String side(PhotoViews.PhotoConflict conflict) {
    String what =
        conflict.piece() == null ? conflict.what() : "marks of piece " + conflict.piece();
    return what + ": " + said(conflict.mine()) + " against " + said(conflict.theirs());
  }

  private static String said(String words) {
    return words == null ? "nothing" : words;
  }
}
