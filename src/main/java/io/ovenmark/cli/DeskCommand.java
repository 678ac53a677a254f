package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Notebook;
import picocli.CommandLine.Option;

/**
 * A verb that works on an open notebook. A subclass holds its words as fields, does its work in
 * {@link #run} and prints either the answer's JSON or its text. Refusals are thrown, never printed
 * there.
 *
 * <pre>{@code
 * @Command(
 *     name = "list",
 *     header = "…",
 *     description = "…",
 *     footerHeading = "%nExample:%n",
 *     footer = "  ovenmark list")
 * final class ListCommand extends DeskCommand {
 *   @Override
 *   ExitCode run(Desk desk) {
 *     Views.FormulaList answer = new ListFormulas(desk).call();
 *     print(answer, out -> text(answer, out));
 *     return ExitCode.DONE;
 *   }
 * }
 * }</pre>
 */
abstract class DeskCommand extends Verb {
  @Option(names = "--json", description = "Print the answer as JSON.")
  private boolean json;

  /** Prints an answer as text. */
  @FunctionalInterface
  interface Text {
    void to(Output out);
  }

  /**
   * Does the work.
   *
   * @param desk an open notebook, closed afterwards
   * @return how it ended
   */
  abstract ExitCode run(Desk desk);

  @Override
  public Integer call() {
    try (Desk desk = new Desk(Notebook.open(notebookFolder()))) {
      return run(desk).number();
    }
  }

  /** Prints an answer: as JSON when that was asked for, else as text. */
  final void print(Object answer, Text text) {
    if (json) {
      out().json(answer);
    } else {
      text.to(out());
    }
  }

  /** Whether JSON was asked for, so that nothing else may go to the output. */
  final boolean json() {
    return json;
  }
}
