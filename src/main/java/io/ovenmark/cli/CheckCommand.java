package io.ovenmark.cli;

import io.ovenmark.desk.CheckNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KitchenViews;
import picocli.CommandLine.Command;

/** Checks a whole notebook. */
@Command(
    name = "check",
    header = "Check the whole notebook.",
    description = {
      "Check every file of every formula and variant and of the disk, what the files say of each"
          + " other, the photos, every Git object and the history index, and say what is wrong"
          + " where and what to do. Nothing is changed. The exit code is 1 when anything is wrong;"
          + " notices do not count."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark check")
final class CheckCommand extends DeskCommand {
  @Override
  ExitCode run(Desk desk) {
    ProgressLines lines = new ProgressLines(surroundings());
    KitchenViews.CheckView view =
        new CheckNotebook(desk)
            .call((what, done, total) -> lines.at("Checking " + what, done, total));
    print(view, out -> text(view, out));
    return view.ok() ? ExitCode.DONE : ExitCode.REFUSED;
  }

  private static void text(KitchenViews.CheckView view, Output out) {
    for (KitchenViews.CheckResult result : view.results()) {
      String line = result.line() == null ? "" : " (in " + result.line() + ")";
      out.wrapped(result.level() + ": " + result.where() + line, "  ");
      out.wrapped("  " + result.message(), "  ");
      out.wrapped("  " + result.hint(), "  ");
      out.blank();
    }
    out.line(
        "Read " + Figures.counted(view.files(), "file", "files") + ", "
            + Figures.counted(view.photos(), "photo", "photos") + ", " + view.objects()
            + " Git objects: "
            + (view.ok() ? "nothing is wrong" : Figures.counted(view.wrong(), "fault", "faults"))
            + (view.notices() == 0
                ? "."
                : ", " + Figures.counted(view.notices(), "notice", "notices") + "."));
  }
}
