package io.ovenmark.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that only gathers others, as {@code ovenmark bake} does. */
abstract class Group implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public final void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: " + String.join(", ", spec.subcommands().keySet()) + ".");
  }
}
