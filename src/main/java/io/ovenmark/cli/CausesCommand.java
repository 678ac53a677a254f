package io.ovenmark.cli;

import io.ovenmark.desk.CauseOrder;
import io.ovenmark.desk.CauseViews;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.FindCauses;
import io.ovenmark.notebook.Address;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds likely causes of a finding, and the bakes that tell changes apart. */
@Command(
    name = "causes",
    header = "Find likely causes of a finding, and the bakes that tell them apart.",
    description = {
      "Without a finding: all findings of the bakes up to a revision, and how each stands.",
      "With one: its common causes held against the formula's own figures, those first whose"
          + " figure moved with it; what changed when it came or went; and, where several things"
          + " changed together, the plan of bakes that tells them apart."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark causes seeded-lupin-bun",
      "  ovenmark causes seeded-lupin-bun \"gummy crumb\" --pieces 2 --tray 6",
      "  ovenmark causes seeded-lupin-bun@8 \"gummy crumb\" --plan 1 --draft 3"
    })
final class CausesCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Parameters(
      index = "1",
      paramLabel = "FINDING",
      arity = "0..1",
      description = "Which finding, such as \"gummy crumb\"; without it an overview of all.")
  private String finding;

  @Option(
      names = "--pieces",
      paramLabel = "N",
      description = "Pieces of each setting of a plan; default: 2.")
  private String pieces;

  @Option(
      names = "--tray",
      paramLabel = "N",
      description = "Pieces that a tray takes; default: the pieces of a batch.")
  private String tray;

  @Option(
      names = "--plan",
      paramLabel = "N",
      description = "The plan that --draft is about; default: 1.")
  private Integer plan;

  @Option(
      names = "--draft",
      paramLabel = "SETTING",
      description = "Begin a draft with the dough and oven of that setting of the plan.")
  private Integer draft;

  @Option(
      names = "--against",
      paramLabel = "CAUSE",
      description = "Begin a draft with what is done against the cause of that number.")
  private Integer against;

  @Override
  ExitCode run(Desk desk) {
    if (finding == null && (draft != null || against != null)) {
      throw usage("--draft and --against need a finding.");
    }
    if (draft != null && against != null) {
      throw usage("--draft and --against begin a draft each; use one of them.");
    }
    if (plan != null && draft == null) {
      throw usage("--plan is for --draft.");
    }
    FindCauses verb = new FindCauses(desk);
    Address which = desk.address(address);
    CauseOrder order = new CauseOrder(finding, pieces, tray);
    if (draft != null) {
      return begun(verb.setting(which, order, plan == null ? 1 : plan, draft, by(desk)));
    }
    if (against != null) {
      return begun(verb.remedy(which, order, against, by(desk)));
    }
    CauseViews.CauseSheet sheet = verb.call(which, order);
    print(sheet, out -> CausesText.print(sheet, out));
    return ExitCode.DONE;
  }

  private ExitCode begun(DraftViews.DraftView view) {
    print(
        view,
        out ->
            out.wrapped(
                "The draft " + view.id() + " was begun. Open it with: ovenmark view, then the page"
                    + " /drafts/" + view.id(),
                ""));
    return ExitCode.DONE;
  }
}
