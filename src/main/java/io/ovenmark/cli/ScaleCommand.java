package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.ScaleFormula;
import io.ovenmark.desk.ScaleOrder;
import io.ovenmark.desk.ScaleViews;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Scales a formula. */
@Command(
    name = "scale",
    header = "Scale a formula to pieces, a size, a tin or what is at hand.",
    description = {
      "Scale a formula to a number of pieces, a dough mass of a piece, a tin, or the amount at hand"
          + " of the scarcest ingredient, in amounts that scale and spoons can measure, and show"
          + " what that moves in ratio and macros. Nothing is committed; with --draft it becomes a"
          + " draft.",
      "What a tin takes follows from the tin that a piece fills now (--from-tin, or the vessel of"
          + " the formula) or from the density of the dough (--density, --fill)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark scale seeded-lupin-bun --pieces 10 --readable 1g",
      "  ovenmark scale seeded-lupin-bun --have \"psyllium-husk=40 g\"",
      "  ovenmark scale seeded-lupin-bun --tin loaf:25cmx11cmx7cm --density 1.1 --fill 60"
    })
final class ScaleCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Option(
      names = "--pieces",
      paramLabel = "N",
      description = "Number of pieces, or of tins; the dough a piece stays unless it is given too.")
  private String pieces;

  @Option(
      names = "--dough-per-piece",
      paramLabel = "MASS",
      description = "Dough mass of a piece, such as 95g; the number stays unless it is given too.")
  private String doughPerPiece;

  @Option(
      names = "--baked-per-piece",
      paramLabel = "MASS",
      description = "Baked mass of a piece; needs a loss on baking, weighed or given.")
  private String bakedPerPiece;

  @Option(
      names = "--tin",
      paramLabel = "TIN",
      description =
          "The tin to fill: round:20cmx5cm, square:20/18cmx5cm (top/bottom), loaf:25cmx11cmx7cm.")
  private String tin;

  @Option(
      names = "--from-tin",
      paramLabel = "TIN",
      description = "The tin that a piece of the formula fills now.")
  private String fromTin;

  @Option(
      names = "--density",
      paramLabel = "G/ML",
      description = "Density of the dough in grams a millilitre, weighed in a measuring cup.")
  private String density;

  @Option(
      names = "--fill",
      paramLabel = "PERCENT",
      description = "How much of the tin the dough fills; default: 60%% (common practice).")
  private String fill;

  @Option(
      names = "--have",
      paramLabel = "FOOD=AMOUNT",
      description = "What is at hand; may be repeated, the scarcest decides.")
  private List<String> have;

  @Option(
      names = "--handling-loss",
      paramLabel = "PERCENT",
      description = "What stays in the bowl and on hands; default: what the formula states.")
  private String handlingLoss;

  @Option(
      names = "--baking-loss",
      paramLabel = "PERCENT",
      description = "What leaves in the oven; default: what was weighed.")
  private String bakingLoss;

  @Option(
      names = "--readable",
      paramLabel = "GRAMS",
      description = "What the scale can show: 0.1g (default), 1g, 5g, or exact.")
  private String readable;

  @Option(names = "--draft", description = "Begin a draft of it, with a note proposed.")
  private boolean draft;

  @Override
  ExitCode run(Desk desk) {
    ScaleOrder order =
        new ScaleOrder(
            pieces,
            doughPerPiece,
            bakedPerPiece,
            tin,
            fromTin,
            density,
            fill,
            have,
            handlingLoss,
            bakingLoss,
            readable);
    if (draft) {
      DraftViews.DraftView begun =
          new ScaleFormula(desk).draft(desk.address(address), order, by(desk));
      print(begun, out -> LeverStartText.print(begun, out));
      return ExitCode.DONE;
    }
    ScaleViews.ScaleSheet sheet = new ScaleFormula(desk).call(desk.address(address), order);
    print(sheet, out -> ScaleText.print(sheet, out));
    return ExitCode.DONE;
  }
}
