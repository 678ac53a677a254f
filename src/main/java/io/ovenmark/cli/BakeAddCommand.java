package io.ovenmark.cli;

import io.ovenmark.bake.BakeGrid;
import io.ovenmark.bake.BakeTime;
import io.ovenmark.bake.Piece;
import io.ovenmark.bake.PieceText;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.NewPhoto;
import io.ovenmark.desk.RecordBake;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records a bake. */
@Command(
    name = "add",
    header = "Record a bake of a revision.",
    description = {
      "Record a bake of a revision with its pieces, findings and photos.",
      "A piece is written in one text: its letter, oven temperature and time, then what was"
          + " measured and seen: dough=95g baked=82g width=88mm height=46mm core=96C crust=2"
          + " rack=middle liking=7,8,6 score.sweet=1,0 finding='gummy crumb' verdict=… note='…'."
          + " What is left out is not known. Photos are kept upright, at most 2400 pixels wide,"
          + " without place or camera."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark bake add seeded-lupin-bun@5 --piece \"a 190C 24min dough=95g core=96C\"",
      "  ovenmark bake add seeded-lupin-bun --grid \"190,200 C x 14,16 min\" --photo tray.jpg"
    })
final class BakeAddCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "The revision that was baked.")
  private String address;

  @Option(
      names = "--date",
      paramLabel = "WHEN",
      description = "When it went into the oven, \"2026-09-14 10:30\"; default: now.")
  private String date;

  @Option(names = "--baker", paramLabel = "NAME", description = "Who baked.")
  private String baker;

  @Option(
      names = "--ambient",
      paramLabel = "TEXT",
      description = "Remarks on room and oven.")
  private String ambient;

  @Option(names = "--piece", paramLabel = "TEXT", description = "A piece; may be repeated.")
  private List<String> pieces = new ArrayList<>();

  @Option(
      names = "--grid",
      paramLabel = "TEXT",
      description =
          "One piece for each temperature with each time, in letters from a; --piece then adds to"
              + " them.")
  private String grid;

  @Option(
      names = "--finding",
      paramLabel = "WORDS",
      description = "A fault or merit of the whole tray; may be repeated.")
  private List<String> findings = new ArrayList<>();

  @Option(names = "--photo", paramLabel = "FILE", description = "A picture; may be repeated.")
  private List<Path> photos = new ArrayList<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
  private String note;

  @Override
  ExitCode run(Desk desk) {
    Address baked = desk.address(address);
    By by = by(desk);
    List<Piece> begun = grid == null ? List.of() : checked("--grid", () -> BakeGrid.read(grid));
    RecordBake.Request request =
        new RecordBake.Request(
            baked,
            date == null
                ? by.time()
                : checked("--date", () -> BakeTime.read(date, surroundings().clock())),
            Optional.ofNullable(baker),
            Optional.ofNullable(ambient),
            Optional.ofNullable(note),
            checked("--piece", () -> PieceText.read(begun, pieces)),
            findings,
            photos());
    KitchenViews.BakeWritten written = new RecordBake(desk).call(request, by);
    print(written, out -> BakeText.written(written, out));
    return ExitCode.DONE;
  }

  private List<NewPhoto> photos() {
    return photos.stream()
        .map(photo -> PhotoFile.read(file(photo), Optional.empty(), List.of()))
        .toList();
  }
}
