package io.ovenmark.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints a script that completes the verbs and options in a shell. */
@Command(
    name = "completion",
    header = "Print a completion script for the shell.",
    description = {
      "Print a script that lets Bash and Zsh complete the commands and options. It speaks of a"
          + " command called ovenmark: an alias or a small script for java -jar ovenmark.jar."
    },
    footerHeading = "%nExample:%n",
    footer = "  ovenmark completion > ovenmark-completion.sh")
final class CompletionCommand extends Verb {
  @Override
  public Integer call() {
    out().raw(AutoComplete.bash("ovenmark", spec().root().commandLine()));
    return ExitCode.DONE.number();
  }
}
