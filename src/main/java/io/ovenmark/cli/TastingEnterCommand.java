package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.EnterAnswer;
import io.ovenmark.desk.TastingViews;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Enters the answer of a sheet. */
@Command(
    name = "enter",
    header = "Enter the answer of a sheet.",
    description = {
      "Enter what stands on a taster's sheet: the odd or preferred code (none for no preference);"
          + " all codes, the best first; or scores, 417=7 233=5, with attributes behind commas,"
          + " 417=7,sweet=-1,moist=0 (a blank in a name is written _)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark tasting enter seeded-lupin-bun 2026-10-10-1 12 271",
      "  ovenmark tasting enter seeded-lupin-bun 2026-10-11-1 3 693=7,moist=-1 753=8 --correct"
    })
final class TastingEnterCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FORMULA", description = "Short name of the formula.")
  private String formula;

  @Parameters(index = "1", paramLabel = "TASTING", description = "Name of the tasting.")
  private String id;

  @Parameters(index = "2", paramLabel = "SHEET", description = "Number of the sheet.")
  private int sheet;

  @Parameters(index = "3..*", arity = "1..*", paramLabel = "ANSWER", description = "The answer.")
  private List<String> answer;

  @Option(names = "--initials", paramLabel = "TEXT", description = "Who tasted.")
  private String initials;

  @Option(names = "--note", paramLabel = "TEXT", description = "What the taster wrote beside it.")
  private String note;

  @Option(names = "--correct", description = "Replace an answer that is in already.")
  private boolean correct;

  @Override
  ExitCode run(Desk desk) {
    EnterAnswer.Words words =
        new EnterAnswer.Words(Optional.ofNullable(initials), Optional.ofNullable(note));
    TastingViews.TastingSheet tasting =
        new EnterAnswer(desk)
            .text(formula, id, sheet, String.join(" ", answer), words, correct, by(desk));
    print(tasting, out -> TastingText.entered(tasting, sheet, out));
    return ExitCode.DONE;
  }
}
