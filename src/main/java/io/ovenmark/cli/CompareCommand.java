package io.ovenmark.cli;

import io.ovenmark.compare.ComparisonText;
import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Address;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Compares two revisions. */
@Command(
    name = "compare",
    header = "Compare two revisions.",
    description = {
      "Compare two states: what was changed, what that did to the figures and the goal, and what"
          + " came out of the oven. They may be revisions, variants, two formulas, or the file"
          + " edited by hand (FORMULA@edited). With one address: against the revision before it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  ovenmark compare seeded-lupin-bun@1 seeded-lupin-bun@3",
      "  ovenmark compare seeded-lupin-bun",
      "  ovenmark compare wheat-bun seeded-lupin-bun"
    })
final class CompareCommand extends DeskCommand {
  @Parameters(index = "0", paramLabel = "A", description = "The earlier state.")
  private String first;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "B",
      description = "The later state; without it A is compared with the revision before it.")
  private String second;

  @Override
  ExitCode run(Desk desk) {
    CompareRevisions verb = new CompareRevisions(desk);
    Address to = desk.address(second == null ? first : second);
    Address from = second == null ? verb.before(to) : desk.address(first);
    if (json()) {
      out().json(verb.call(from, to));
    } else {
      ComparisonText.of(verb.compare(from, to)).lines().forEach(out()::line);
      CostText.print(verb.cost(from, to), out());
    }
    return ExitCode.DONE;
  }
}
