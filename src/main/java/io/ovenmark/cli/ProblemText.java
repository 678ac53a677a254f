package io.ovenmark.cli;

import io.ovenmark.desk.Views;
import java.util.List;

/** Prints what is wrong with files that could not be read. */
final class ProblemText {
  private ProblemText() {}

  /** Place, sentence and remedy of each; nothing when there is none. */
  static void print(List<Views.ProblemView> problems, Output out) {
    for (Views.ProblemView problem : problems) {
      out.wrapped("  " + problem.where() + ": " + problem.message() + " " + problem.hint(), "    ");
    }
  }
}
