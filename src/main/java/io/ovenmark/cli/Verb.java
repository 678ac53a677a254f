package io.ovenmark.cli;

import io.ovenmark.notebook.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every verb can reach: where to print, which folder is meant, its own usage. */
abstract class Verb implements Callable<Integer> {
  @Spec private CommandSpec spec;

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

  /** Says what goes wrong while a command goes on by itself. */
  final Complaints complaints() {
    return root().complaints();
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

  /** Whether a notebook's folder was named. */
  final boolean hasNotebookOption() {
    return root().notebook() != null;
  }

  /** The folder for a new notebook: the one asked for, else the current one. */
  final Path newNotebookFolder() {
    Path asked = root().notebook();
    Path here = surroundings().folder();
    return (asked == null ? here : here.resolve(asked)).normalize();
  }

  /** A file that was named on the command line, seen from the current folder. */
  final Path file(Path named) {
    return surroundings().folder().resolve(named).normalize();
  }

  /** Refuses the command line itself. */
  final ParameterException usage(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
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
