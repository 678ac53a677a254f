package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.PlanTasting;
import io.ovenmark.desk.TastingViews;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets up a tasting. */
@Command(
    name = "new",
    header = "Set up a blind tasting.",
    description = {
      "Set up a blind tasting of revisions, possibly of the pieces of a bake. Every plate gets a"
          + " code of three digits, and the orders are balanced: the six orders of a triangle, else"
          + " a Williams design. The tasting is kept under the formula of the first sample.",
      "Kinds: triangle (which is the odd one), preference (which of two), ranking, liking (1 to 9),"
          + " just-about-right (liking, and too little or too much of each attribute)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark tasting new triangle seeded-lupin-bun@8 seeded-lupin-bun@9 --tasters 12",
      "  ovenmark tasting new liking seeded-lupin-bun@9:2026-08-29-1/a --tasters 10"
    })
final class TastingNewCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "KIND", description = "What the tasters do.")
  private String kind;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "SAMPLE",
      description = "A revision, or a piece of its bake: ADDRESS[:BAKE[/PIECE]].")
  private List<String> samples;

  @Option(
      names = "--tasters",
      paramLabel = "N",
      required = true,
      description = "How many people taste, one sheet each.")
  private int tasters;

  @Option(
      names = "--question",
      paramLabel = "TEXT",
      description = "What they are asked; default: the kind's own question.")
  private String question;

  @Option(
      names = "--attribute",
      paramLabel = "NAME",
      split = ",",
      description = "What is judged just-about-right, such as sweet; may be repeated.")
  private List<String> attributes = new ArrayList<>();

  @Option(names = "--note", paramLabel = "TEXT", description = "Anything else, for the organiser.")
  private String note;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What codes and orders are drawn from; default: a random number.")
  private Integer seed;

  @Override
  ExitCode run(Desk desk) {
    PlanTasting.Request request =
        new PlanTasting.Request(
            kind, samples, tasters, question, attributes, note, seed);
    TastingViews.TastingSheet tasting = new PlanTasting(desk).call(request, by(desk));
    print(tasting, out -> TastingText.planned(tasting, out));
    return ExitCode.DONE;
  }
}
