package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShareFormula;
import io.ovenmark.desk.ShareViews;
import io.ovenmark.notebook.Address;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes one formula with its history for somebody else. */
@Command(
    name = "share",
    header = "Write one formula with its history for somebody else.",
    description = {
      "Write one formula with its history, variants, bakes and photos, and the foods and goals"
          + " that its figures rest on, as a notebook of its own: a bundle when the name ends in"
          + " .bundle, else a folder. Nothing else of this notebook goes along:"
          + " commits about other things stay, notes that speak of other formulas are cut, pictures"
          + " lose what they say of place and camera, e-mail addresses and prices stay unless you"
          + " say so. Names of those who wrote go along. Ovenmark takes it in with \"take-in\";"
          + " native"
          + " Git clones it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark share seeded-lupin-bun --look",
      "  ovenmark share seeded-lupin-bun lupin-bun.bundle",
      "  ovenmark share seeded-lupin-bun/egg-free egg-free.bundle --with-others-notes"
    })
final class ShareCommand extends WritingCommand {
  @Parameters(
      index = "0",
      paramLabel = "FORMULA",
      description = "Its short name; FORMULA/VARIANT shares that variant alone, as the main line.")
  private String formula;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FILE",
      description = "Where: FORMULA.bundle, or a new folder.")
  private Path place;

  @Option(names = "--look", description = "Only say what would go along.")
  private boolean look;

  @Option(
      names = "--with-reference",
      description = "Keep the conventional formula that it was rebuilt from, without its bakes.")
  private boolean withReference;

  @Option(names = "--with-emails", description = "Keep the e-mail addresses of those who wrote.")
  private boolean withEmails;

  @Option(
      names = "--with-prices",
      description = "Keep prices of foods, and fields of their files that Ovenmark does not know.")
  private boolean withPrices;

  @Option(
      names = "--with-others-notes",
      description =
          "Keep notes of revisions and bakes that others than you wrote. Ask them first.")
  private boolean withOthersNotes;

  @Override
  ExitCode run(Desk desk) {
    if (look == (place != null)) {
      throw usage(look ? "--look writes nothing: leave FILE out." : "Say where to write: FILE.");
    }
    Address address = desk.address(formula);
    String slug = address.formula();
    ShareFormula.Choice choice =
        new ShareFormula.Choice(
            address.variant(), withReference, withEmails, withPrices, withOthersNotes);
    ShareFormula verb = new ShareFormula(desk);
    if (look) {
      ShareViews.Share share = verb.preview(slug, choice, by(desk));
      print(share, out -> along(share, out));
      return ExitCode.DONE;
    }
    ProgressLines lines = new ProgressLines(surroundings());
    boolean bundle = place.toString().toLowerCase(Locale.ROOT).endsWith(".bundle");
    ShareViews.Shared shared =
        bundle
            ? verb.bundle(
                slug,
                choice,
                file(place),
                by(desk),
                (done, total) -> lines.at("Writing the history", done, total))
            : verb.folder(
                slug,
                choice,
                file(place),
                by(desk),
                (done, total) -> lines.at("Writing the history", done, total));
    print(
        shared,
        out -> {
          out.line("Shared " + shared.share().name() + " as " + shared.file());
          along(shared.share(), out);
        });
    return ExitCode.DONE;
  }

  private static void along(ShareViews.Share share, Output out) {
    if (share.variant() != null) {
      out.wrapped(
          "  The variant " + share.variant() + " alone, as the main line of what is shared"
              + (share.onMainLine() ? "." : ": the formula is not on your main line."),
          "  ");
    }
    out.line(
        "  "
            + share.lines().stream()
                .map(each -> each.line() + "@" + each.revisions())
                .collect(Collectors.joining(", ")));
    out.line(
        "  "
            + Figures.counted(share.bakes(), "bake", "bakes")
            + ", "
            + Figures.counted(share.photos(), "photo", "photos")
            + ", "
            + Figures.counted(share.publications(), "published revision", "published revisions"));
    named("Foods", share.foods(), out);
    named("Goals", share.goals(), out);
    for (ShareViews.SharedReference each : share.references()) {
      out.wrapped(
          each.along()
              ? "  Rebuilt from " + each.formula() + ", which goes along (without its bakes)."
              : "  Rebuilt from "
                  + each.formula()
                  + ", which stays; its short name is in the file.",
          "  ");
    }
    named(
        "Written by",
        share.people().stream()
            .map(ShareCommand::named)
            .toList(),
        out);
    if (share.commitsLeftOut() > 0) {
      out.line(
          "  "
              + Figures.counted(share.commitsLeftOut(), "change", "changes")
              + " about other things stay, stories, and tastings, which name guests.");
    }
    named(
        share.withPrices() ? "Prices and fields unknown here of" : "Without prices of",
        share.foodsWithPrices(),
        out);
    named("Notes that do not go along as they are", share.notesCut(), out);
    named("Speak of other formulas, and go along as written", share.speaksOfOthers(), out);
    named("Pictures that lost what they told beside what they show", share.photosStripped(), out);
    named("Pictures that cannot be read, and stay", share.photosLeftOut(), out);
    named(
        "Fields unknown to Ovenmark, which go along",
        share.unknownFields().stream()
            .map(each -> each.file() + ": " + String.join(", ", each.fields()))
            .toList(),
        out);
  }

  private static String named(ShareViews.Person person) {
    return person.email() == null ? person.name() : person.name() + " <" + person.email() + ">";
  }

  private static void named(String what, List<String> names, Output out) {
    if (!names.isEmpty()) {
      out.wrapped(
          "  "
              + what
              + ": "
              + names.stream()
                  .map(each -> each.lines().findFirst().orElse(""))
                  .collect(Collectors.joining(", ")),
          "    ");
    }
  }
}
