package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.ShareViews;
import io.ovenmark.desk.TakeIn;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a formula in from a bundle or another notebook. */
@Command(
    name = "take-in",
    header = "Take a formula in from a bundle or another notebook.",
    description = {
      "Take a formula in with its history, variants, bakes and photos, from a bundle that was"
          + " shared or from another notebook's folder. Nothing here is overwritten: foods and"
          + " goals that are here with other figures are named, and you say with --differing"
          + " whether to keep your own or to take theirs in under other names."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark take-in bun.bundle --look",
      "  ovenmark take-in bun.bundle --as harbour-bun --differing own"
    })
final class TakeInCommand extends WritingCommand {
  @Parameters(index = "0", paramLabel = "FILE", description = "A bundle, or a notebook's folder.")
  private Path from;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FORMULA",
      description = "Its short name there; not needed when there is only one.")
  private String formula;

  @Option(names = "--look", description = "Only say what would come in.")
  private boolean look;

  @Option(names = "--as", paramLabel = "NAME", description = "Its short name here.")
  private String as;

  @Option(
      names = "--differing",
      paramLabel = "own|theirs",
      description = "Which foods and goals to use where both have them with other figures.")
  private String differing;

  @Option(
      names = "--without-reference",
      description = "Leave out the conventional formula that it was rebuilt from.")
  private boolean withoutReference;

  @Override
  ExitCode run(Desk desk) {
    TakeIn.Choice choice =
        new TakeIn.Choice(
            Optional.ofNullable(formula),
            Optional.ofNullable(as),
            Optional.ofNullable(differing),
            !withoutReference,
            Optional.empty());
    ProgressLines lines = new ProgressLines(surroundings());
    Progress progress = (done, total) -> lines.at("Taking in", done, total);
    if (look) {
      ShareViews.Offer offer = new TakeIn(desk).look(file(from), choice, progress);
      print(offer, out -> offer(offer, out));
      return ExitCode.DONE;
    }
    ShareViews.TakenIn taken = new TakeIn(desk).call(file(from), choice, by(desk), progress);
    print(
        taken,
        out -> {
          out.line("Took in " + taken.arrival().name() + " as " + taken.revision().address());
          arrival(taken.arrival(), out);
          if (taken.differing() != null) {
            out.line(
                taken.differing().equals("own")
                    ? "  Your own were kept."
                    : "  Theirs came in under the names behind the arrows.");
          }
          named("Edited by hand on disk, and left so", taken.leftAsEditedByHand(), out);
          out.line("  Take it back, with its variants, with: ovenmark undo");
        });
    return ExitCode.DONE;
  }

  private static void offer(ShareViews.Offer offer, Output out) {
    if (offer.arrival() == null) {
      out.line("Formulas in it; name one of them:");
      offer.formulas().forEach(each -> out.parts("  ", List.of(each.formula(), each.name()), "  "));
      return;
    }
    out.line(offer.arrival().name() + " would come in as " + offer.arrival().as());
    if (offer.arrival().taken()) {
      out.line("  That short name is in use here: choose another one with --as.");
    }
    arrival(offer.arrival(), out);
  }

  private static void arrival(ShareViews.Arrival arrival, Output out) {
    out.line(
        "  "
            + arrival.lines().stream()
                .map(each -> each.line() + "@" + each.revisions())
                .collect(Collectors.joining(", ")));
    out.line(
        "  "
            + Figures.counted(arrival.bakes(), "bake", "bakes")
            + ", "
            + Figures.counted(arrival.photos(), "photo", "photos"));
    named("Written by", arrival.people(), out);
    named("New foods", arrival.newFoods(), out);
    named("New goals", arrival.newGoals(), out);
    named("Reference formulas that come in too", arrival.newReferences(), out);
    named("Reference formulas that are here already, and stay", arrival.ownReferences(), out);
    named(
        "Here with other figures",
        arrival.differing().stream()
            .map(each -> each.kind() + " " + each.slug() + " → " + each.theirs())
            .toList(),
        out);
    if (arrival.policyDiffers()) {
      out.wrapped(
          "  Figures are worked out by another rule there: numbered revisions keep theirs, the"
              + " latest one follows yours.",
          "  ");
    }
    named("Pictures that lost what they told beside what they show", arrival.photosStripped(), out);
    named("Pictures that cannot be read, and are left out", arrival.photosLeftOut(), out);
  }

  private static void named(String what, List<String> names, Output out) {
    if (!names.isEmpty()) {
      out.wrapped("  " + what + ": " + String.join(", ", names), "    ");
    }
  }
}
