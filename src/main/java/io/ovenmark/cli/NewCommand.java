package io.ovenmark.cli;

import io.ovenmark.desk.CreateNotebook;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.NewFormula;
import io.ovenmark.desk.PasteChoices;
import io.ovenmark.desk.ReadPasted;
import io.ovenmark.desk.ReviseFormula;
import io.ovenmark.desk.WriteViews;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Revision;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a formula, or a notebook. */
@Command(
    name = "new",
    header = "Begin a formula or a notebook.",
    description = {
      "Begin a formula in the notebook, or, without a name, begin a notebook in a folder.",
      "A formula starts empty, from a file or as a copy of a revision; lines and fields may be"
          + " given at once."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark new --notebook saltmarsh --title \"Saltmarsh bench\"",
      "  ovenmark new \"Sesame crackers\" --add sesame-seeds=80g --add water=60g --pieces 12",
      "  ovenmark new \"Caraway lupin bun\" --from seeded-lupin-bun --add caraway=4g"
    })
final class NewCommand extends WritingCommand {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "Name of the formula for people, in any script.")
  private String name;

  @Option(
      names = "--as",
      paramLabel = "SHORT-NAME",
      description = "What it is filed under; default: made from the name.")
  private String shortName;

  @Option(
      names = "--from",
      paramLabel = "FILE|ADDRESS",
      description =
          "Begin with the formula in a JSON file (- for standard input) or of a revision.")
  private String from;

  @Option(
      names = "--paste",
      paramLabel = "FILE|-",
      description = {
        "Begin with ingredient lines as people write them, a whole block of text or a schema.org"
            + " recipe, in a file (- for standard input).",
        "Made only when no line is in doubt; else each doubt is told with how to settle it."
      })
  private String paste;

  @Option(
      names = "--food",
      paramLabel = "WORDS=FOOD",
      description = "With --paste: which food the words of a line mean: \"almond meal=almond-flour\"."
          + " May be repeated.")
  private Map<String, String> foods = new LinkedHashMap<>();

  @Option(
      names = "--amount",
      paramLabel = "LINE=AMOUNT",
      description = "With --paste: the amount of a line in doubt, named by its number:"
          + " \"3=2 tbsp\". May be repeated.")
  private Map<String, String> amounts = new LinkedHashMap<>();

  @Option(
      names = "--leave-out",
      paramLabel = "LINE",
      description = "With --paste: go on without a line, named by its number. May be repeated.")
  private Set<String> leftOut = new LinkedHashSet<>();

  @Option(
      names = "--reference",
      paramLabel = "FORMULA",
      description = "The conventional formula that it is rebuilt from.")
  private String reference;

  @Option(names = "--goal", paramLabel = "GOAL", description = "The goal it is developed towards.")
  private String goal;

  @Option(names = "--pieces", paramLabel = "N", description = "How many pieces a batch gives.")
  private String pieces;

  @Mixin private EditOptions edits;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      description = "Why it is begun; default: \"Begin NAME\".")
  private String note;

  @Option(
      names = "--title",
      paramLabel = "TEXT",
      description = "Without a NAME: title of the new notebook; default: the folder's name.")
  private String title;

  @Override
  public Integer call() {
    if (name != null) {
      if (title != null) {
        throw usage("--title is for a new notebook, NAME is for a new formula; give one of them.");
      }
      return super.call();
    }
    if (title == null && !hasNotebookOption()) {
      throw usage("Name the formula, or make a notebook with --notebook DIR or --title TEXT.");
    }
    Path folder = newNotebookFolder();
    String named =
        title != null
            ? title
            : folder.getFileName() == null ? "Notebook" : folder.getFileName().toString();
    WriteViews.NotebookMade made =
        new CreateNotebook().call(folder, named, configured -> by(() -> configured));
    print(
        made,
        out -> {
          out.line("Made the notebook “" + made.title() + "” in " + made.folder());
          out.line("Begin a formula with: ovenmark new \"Seeded lupin bun\"");
        });
    return ExitCode.DONE.number();
  }

  @Override
  ExitCode run(Desk desk) {
    if (paste != null && from != null) {
      throw usage("--paste and --from are two beginnings; give one of them.");
    }
    if (paste == null && !(foods.isEmpty() && amounts.isEmpty() && leftOut.isEmpty())) {
      throw usage(
          "--food, --amount and --leave-out are for a formula that begins with --paste.");
    }
    NewFormula verb = new NewFormula(desk);
    List<String> origin = new ArrayList<>();
    Optional<ReadPasted.Made> pasted = pasted(desk);
    Formula start =
        pasted
            .map(ReadPasted.Made::formula)
            .orElseGet(() -> start(desk, verb, origin))
            .withName(verb.named(name).name());
    List<ReviseFormula.Edit> all = new ArrayList<>();
    set(all, "reference", reference);
    set(all, "goal", goal);
    set(all, "yield.pieces", pieces);
    all.addAll(edits.edits());
    Formula formula = ReviseFormula.apply(start, all);
    String why = note != null ? note : "Begin " + formula.name() + String.join("", origin);
    WriteViews.RevisionWritten saved =
        verb.call(formula, Optional.ofNullable(shortName), why, by(desk));
    WriteViews.RevisionWritten written = pasted.map(each -> each.told(saved)).orElse(saved);
    print(written, out -> text(written, formula, out));
    return ExitCode.DONE;
  }

  private Optional<ReadPasted.Made> pasted(Desk desk) {
    return Optional.ofNullable(paste)
        .map(file -> InputFile.read(surroundings(), file))
        .map(bytes -> new ReadPasted(desk).formula(InputFile.shown(paste), bytes, choices()));
  }

  private PasteChoices choices() {
    return PasteChoices.of(foods, amounts, leftOut);
  }

  private Formula start(Desk desk, NewFormula verb, List<String> origin) {
    if (from == null) {
      return verb.named(name);
    }
    if (from.equals("-") || from.endsWith(".json")) {
      return FormulaCodec.read(InputFile.shown(from), InputFile.read(surroundings(), from));
    }
    Address address = desk.address(from);
    Revision revision = desk.notebook().revision(address);
    origin.add(" from " + revision.address());
    return desk.notebook().formula(revision);
  }

  private static void set(List<ReviseFormula.Edit> edits, String field, String value) {
    if (value != null) {
      edits.add(new ReviseFormula.Edit(ReviseFormula.Act.SET, field + "=" + value));
    }
  }

  private static void text(WriteViews.RevisionWritten written, Formula formula, Output out) {
    WrittenText.revision(written.revision(), out);
    if (!written.foodsAdded().isEmpty()) {
      out.wrapped("Copied into the pantry: " + String.join(", ", written.foodsAdded()) + ".", "  ");
    }
    WrittenText.remarks(written.remarks(), out);
    String formulaName = written.revision().formula();
    out.line(
        formula.lines().isEmpty()
            ? "Add a line with: ovenmark revise " + formulaName + " --add water=180g --note \"…\""
            : "See it with: ovenmark show " + formulaName);
  }
}
