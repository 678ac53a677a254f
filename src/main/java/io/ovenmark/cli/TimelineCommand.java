package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.desk.Views;
import io.ovenmark.notebook.Address;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how a formula was developed. */
@Command(
    name = "timeline",
    header = "Show how a formula was developed.",
    description = {
      "Show how a formula was developed, newest first: notes, what changed, key figures of a piece,"
          + " bakes. A formula shows its main line with all variants, a variant its own line."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark timeline seeded-lupin-bun --limit 3")
final class TimelineCommand extends DeskCommand {
  private static final List<Figure> KEY_FIGURES =
      List.of(Figure.NET_CARBOHYDRATE, Figure.PROTEIN, Figure.LIQUID_RATIO);

  @Parameters(index = "0", paramLabel = "FORMULA[/VARIANT]", description = "Which line of history.")
  private String line;

  @Option(names = "--limit", paramLabel = "N", description = "Show only the newest N revisions.")
  private Integer limit;

  @Override
  ExitCode run(Desk desk) {
    if (limit != null && limit < 1) {
      throw usage("--limit must be 1 or more.");
    }
    Address address = desk.address(line);
    Views.TimelineView all = new ShowTimeline(desk).call(address);
    Views.TimelineView answer = limit == null ? all : newest(all, limit);
    print(answer, out -> text(answer, all.revisions().size(), out));
    return ExitCode.DONE;
  }

  private static Views.TimelineView newest(Views.TimelineView all, int limit) {
    return new Views.TimelineView(
        all.formula(),
        all.name(),
        all.variant(),
        all.goal(),
        List.copyOf(all.revisions().subList(0, Math.min(limit, all.revisions().size()))),
        all.variants(),
        all.editedByHand(),
        all.problems());
  }

  private static void text(Views.TimelineView answer, int all, Output out) {
    out.line(answer.name());
    List<String> head = new ArrayList<>();
    head.add(Figures.counted(all, "revision", "revisions"));
    if (answer.goal() != null) {
      head.add("goal " + answer.goal().name() + ": " + Figures.met(answer.goal().met()));
    }
    out.parts("", head, "  ");
    if (answer.editedByHand()) {
      out.wrapped(
          "The file on disk was edited by hand and is not yet a revision; see it with: ovenmark"
              + " compare "
              + answer.formula()
              + "@edited",
          "  ");
    }
    answer.revisions().forEach(entry -> entry(entry, out));
    if (answer.revisions().size() < all) {
      out.blank();
      out.line("… and " + (all - answer.revisions().size()) + " earlier");
    }
  }

  private static void entry(Views.TimelineEntry entry, Output out) {
    List<String> head = new ArrayList<>();
    head.add((entry.variant() == null ? "● " : "◆ ") + entry.address());
    head.add(Figures.day(entry.time()));
    head.add(entry.author());
    if (entry.restores() != null) {
      head.add("restores " + entry.restores());
    }
    if (entry.carries() != null) {
      head.add("carries " + entry.carries());
    }
    if (entry.merge() && entry.carries() == null) {
      head.add("merge");
    }
    out.blank();
    out.parts("", head, "  ");
    out.wrapped("  “" + entry.note() + "”", "  ");
    if (entry.published() != null) {
      out.wrapped("  published: " + firstLine(entry.published()), "    ");
    }
    if (!entry.changes().isEmpty()) {
      out.wrapped(
          "  " + String.join(" ", entry.changes().stream().map(c -> c.sentence()).toList()), "  ");
    }
    entry
        .problems()
        .forEach(each -> out.wrapped("  " + each.where() + ": " + each.message(), "    "));
    if (entry.figures() != null) {
      out.parts("  ", figures(entry), "  ");
    }
    entry.bakes().forEach(bake -> out.parts("  baked ", BakeLine.of(bake), "    "));
  }

  private static List<String> figures(Views.TimelineEntry entry) {
    List<String> parts = new ArrayList<>();
    for (Figure figure : KEY_FIGURES) {
      parts.add(Figures.inWords(figure, entry.figures().figures().get(figure.key())));
    }
    if (entry.goalMet() != null) {
      parts.add("goal " + Figures.met(entry.goalMet()));
    }
    return parts;
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("");
  }
}
