package io.ovenmark.cli;

import io.ovenmark.desk.CardOrder;
import io.ovenmark.desk.CardViews;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.MakeCard;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the card of a revision. */
@Command(
    name = "card",
    header = "Make the card of a revision, to print or to publish.",
    description = {
      "Make one page with amounts in grams and kitchen measures, method, oven, the macros of a"
          + " piece, allergens and cautions. The same revision with the same choices gives the same"
          + " card to the byte.",
      "The text fits the description of a video: 5000 signs, short 1500. Cautions cannot be left"
          + " out: --word says more about one (--json names their keys), --caution adds one."
          + " The figures are an aid, not a label."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark card seeded-lupin-bun > bun.html",
      "  ovenmark card seeded-lupin-bun@9 --form short --times 2",
      "  ovenmark card seeded-lupin-bun --paper letter --storage \"Two days, in a box.\"",
    "  ovenmark card seeded-lupin-bun --word \"egg=Use a probe in the middle.\""
    })
final class CardCommand extends DeskCommand {
  private enum Form {
    HTML,
    MARKDOWN,
    TEXT,
    SHORT,
    JSON_LD
  }

  @Parameters(index = "0", paramLabel = "ADDRESS", description = "Which revision.")
  private String address;

  @Option(
      names = "--form",
      paramLabel = "FORM",
      defaultValue = "html",
      description = "html (default), markdown, text, short or json-ld.")
  private String form;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 (default), letter or 4x6.")
  private String paper;

  @Option(names = "--masses", paramLabel = "UNIT", description = "g (default) or oz.")
  private String masses;

  @Option(names = "--times", paramLabel = "N", description = "So many times the formula.")
  private String times;

  @Option(
      names = "--photo",
      paramLabel = "FILE",
      description = "A photo as its bake names it, or none; default: one of the best-liked bake.")
  private String photo;

  @Option(
      names = "--storage",
      paramLabel = "TEXT",
      description = "How to keep it; default: as the formula says.")
  private String storage;

  @Option(names = "--caution", paramLabel = "TEXT", description = "A further caution.")
  private List<String> cautions;

  @Option(
      names = "--word",
      paramLabel = "KEY=TEXT",
      description = "Say more about a caution of the formula, such as \"egg=Use a probe.\"")
  private List<String> words;

  @Override
  ExitCode run(Desk desk) {
    CardOrder order = new CardOrder(paper, masses, times, photo, storage, cautions, words);
    Address which = desk.address(address);
    Form wanted = form();
    CardViews.CardSheet sheet = new MakeCard(desk).call(which, order);
    print(
        sheet,
        out ->
            out.document(
                switch (wanted) {
                  case HTML -> new MakeCard(desk).page(which, order);
                  case MARKDOWN -> sheet.markdown();
                  case TEXT -> sheet.text().text();
                  case SHORT -> sheet.shortText().text();
                  case JSON_LD -> Json.readable(sheet.jsonLd());
                }));
    if (!json()) {
      sheet.remarks().forEach(remark -> err().wrapped(remark, ""));
    }
    return ExitCode.DONE;
  }

  private Form form() {
    return switch (form) {
      case "html" -> Form.HTML;
      case "markdown" -> Form.MARKDOWN;
      case "text" -> Form.TEXT;
      case "short" -> Form.SHORT;
      case "json-ld" -> Form.JSON_LD;
      default ->
          throw new Refusal(
              Refusal.Reason.INVALID,
              "--form",
              "There is no form \"" + form + "\" of a card.",
              "Choose html, markdown, text, short or json-ld.");
    };
  }
}
