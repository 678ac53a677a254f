package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindInHistory;
import io.ovenmark.desk.Search;
import io.ovenmark.desk.SearchViews;
import io.ovenmark.search.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds revisions and bakes by words. */
@Command(
    name = "find",
    header = "Find revisions and bakes by words.",
    description = {
      "Find words in notes, method steps, ingredients, findings, verdicts and captions of all"
          + " formulas, variants and revisions, also old ones. The beginning of a word will do;"
          + " accents and capitals do not matter. With --finding only bakes are found, with"
          + " --ingredient or --kind only revisions."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark find rest dough",
      "  ovenmark find --ingredient psyllium --since 2026-03-01",
      "  ovenmark find --finding \"gummy crumb\""
    })
final class FindCommand extends DeskCommand {
  @Parameters(arity = "0..*", paramLabel = "WORD", description = "Words; all must be there.")
  private List<String> words = List.of();

  @Option(names = "--finding", paramLabel = "WORDS", description = "A finding of the bake.")
  private String finding;

  @Option(
      names = "--ingredient",
      paramLabel = "FOOD",
      description = "A food that the revision changed: its short name or words of its name.")
  private String ingredient;

  @Option(names = "--person", paramLabel = "NAME", description = "Who committed or baked.")
  private String person;

  @Option(names = "--since", paramLabel = "DAY", description = "First day, such as 2026-03-01.")
  private String since;

  @Option(names = "--until", paramLabel = "DAY", description = "Last day.")
  private String until;

  @Option(
      names = "--formula",
      paramLabel = "FORMULA[/VARIANT]",
      description = "Only this formula or variant.")
  private String formula;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description =
          "Only revisions that are so: baked, published, restored, carried, oven or method (these"
              + " changed). May be given several times.")
  private List<String> kinds = List.of();

  @Option(
      names = "--limit",
      paramLabel = "N",
      defaultValue = "10",
      description = "Show only the newest N of each formula; default: 10.")
  private int limit;

  @Override
  ExitCode run(Desk desk) {
    if (limit < 1) {
      throw usage("--limit must be 1 or more.");
    }
    Search search =
        Search.read(
            desk,
            new Search.Texts(
                String.join(" ", words), finding, ingredient, person, since, until, formula, kinds));
    if (search.isOpen()) {
      throw usage("Say what to find: words, --finding, --ingredient, --person, --since or --kind.");
    }
    FindInHistory verb = new FindInHistory(desk);
    ProgressLines progress = new ProgressLines(surroundings());
    verb.read((done, total) -> progress.at("Reading the history", done, total));
    SearchViews.Found answer = verb.call(search, limit);
    print(answer, out -> text(answer, out));
    return ExitCode.DONE;
  }

  private static void text(SearchViews.Found answer, Output out) {
    if (answer.count() == 0) {
      out.line("Nothing fits.");
      return;
    }
    out.line(
        Figures.counted(answer.count(), "revision or bake", "revisions and bakes")
            + " in "
            + Figures.counted(answer.formulaCount(), "formula", "formulas"));
    for (SearchViews.FoundFormula group : answer.formulas()) {
      out.blank();
      out.parts("", List.of(group.name(), group.formula()), "  ");
      group.hits().forEach(hit -> hit(hit, out));
      int more = group.count() - group.hits().size();
      if (more > 0) {
        out.line("  … and " + more + " earlier");
      }
    }
    int more = answer.formulaCount() - answer.formulas().size();
    if (more > 0) {
      out.blank();
      out.line("… and " + Figures.counted(more, "more formula", "more formulas"));
    }
  }

  private static void hit(SearchViews.Hit hit, Output out) {
    List<String> head = new ArrayList<>();
    head.add(hit.bake() == null ? hit.address() : "bake " + hit.bake() + " of " + hit.address());
    head.add(Figures.day(hit.time()));
    if (hit.person() != null) {
      head.add(hit.person());
    }
    out.parts("  ", head, "    ");
    if (hit.bake() == null) {
      out.wrapped("    “" + text(hit.title()) + "”", "    ");
    }
    if (!hit.findings().isEmpty()) {
      out.wrapped(
          "    "
              + hit.findings().stream()
                  .map(SearchViews.FoundFinding::word)
                  .collect(Collectors.joining(", ")),
          "    ");
    }
    hit.passages()
        .forEach(each -> out.wrapped("    " + each.place() + ": " + text(each.runs()), "      "));
    hit.changes().forEach(each -> out.wrapped("    " + each, "      "));
  }

  private static String text(List<Words.Run> runs) {
    return runs.stream().map(Words.Run::text).collect(Collectors.joining());
  }
}
