package io.ovenmark.notebook;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.nio.file.Path;
import java.time.OffsetDateTime;

/**
 * Revises one line of a formula again and again: a program of its own for the tests of several
 * programs and of sudden death. It prints a full stop after each revision.
 */
final class ReviserProgram {
  private static final By BY =
      new By(RepositoryFixture.AUTHOR, OffsetDateTime.parse("2026-03-01T08:00:00+01:00"));

  private ReviserProgram() {}

  /** Takes the notebook's folder, the formula, the line and how many revisions to make. */
  public static void main(String[] arguments) {
    try (Notebook notebook = Notebook.open(Path.of(arguments[0]))) {
      Address line = Address.parse(arguments[1]);
      revise(notebook, line, arguments[2], Integer.parseInt(arguments[3]), ReviserProgram::tell);
    }
  }

  private static void tell() {
    System.out.print('.');
    System.out.flush();
  }

  /**
   * Adds a gram to a line at each revision.
   *
   * @param line the formula or variant
   * @param own id of the line, which nobody else changes
   * @param afterEach what to do after each revision
   */
  static void revise(
      Notebook notebook, Address line, String own, int count, Runnable afterEach) {
    FormulaWriter writer = new FormulaWriter(notebook);
    for (int i = 1; i <= count; i++) {
      Revision base = notebook.newest(line);
      Formula edited = new FormulaEdit(notebook.formula(base)).set(own + "+=1g").formula();
      ReviseOutcome outcome = writer.revise(base, edited, own + " " + i, BY);
      if (!(outcome instanceof ReviseOutcome.Saved)) {
        throw new IllegalStateException(own + " " + i + ": " + outcome);
      }
      afterEach.run();
    }
  }
}
