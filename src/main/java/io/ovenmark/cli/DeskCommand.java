package io.ovenmark.cli;

import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * A verb that works on an open notebook. A subclass holds its words as fields, does its work in {@link
 * #run} and prints either the answer's JSON or its text. Refusals are thrown, never printed there.
 *
 * <pre>{@code
 * @Command(name = "list", description = "…", footerHeading = "%nExample:%n", footer = "  ovenmark list")
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
abstract class DeskCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

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
  public final Integer call() {
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

  /** Where answers go. */
  final Output out() {
    return new Output(surroundings().out());
  }

  /** Where remarks go that are no part of the answer. */
  final Output err() {
    return new Output(surroundings().err());
  }

  final Surroundings surroundings() {
    return root().surroundings();
  }

  /** This command, for errors of usage. */
  final CommandSpec spec() {
    return spec;
  }

  private Ovenmark root() {
    return (Ovenmark) spec.root().userObject();
  }

  /**
   * The notebook's folder: the one asked for, else the current folder or the nearest above it that
   * holds a notebook, else the current folder.
   */
  final Path notebookFolder() {
    Path asked = root().notebook();
    if (asked != null) {
      return surroundings().folder().resolve(asked).normalize();
    }
    Path here = surroundings().folder();
    for (Path folder = here; folder != null; folder = folder.getParent()) {
      if (Files.isRegularFile(folder.resolve("notebook.json"))) {
        return folder;
      }
    }
    return here;
  }

  /** A file that was named on the command line, seen from the current folder. */
  final Path file(Path named) {
    return surroundings().folder().resolve(named).normalize();
  }

  /** Who does it and when: the author asked for, else Git's, else the account. */
  final By by(Desk desk, String author) {
    return Authors.by(
        surroundings(), author, () -> new RecordWriter(desk.notebook()).configuredAuthor());
  }

  /** Reads an address. */
  static Address address(String text) {
    return checked("address", () -> Address.parse(text));
  }

  /** Turns the refusal of a value type into one with a place. */
  static <T> T checked(String where, Supplier<T> read) {
    try {
      return read.get();
    } catch (IllegalArgumentException e) {
      throw Refusal.of(where, e);
    }
  }
}
