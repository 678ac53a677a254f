package io.ovenmark.cli;

import io.ovenmark.desk.Refusals;
import io.ovenmark.json.Problem;
import io.ovenmark.notebook.Refusal;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says on the error stream what went wrong, and which exit code that is: a refusal with its
 * sentence, place and remedy, wrong usage with the way to the help, a fault of the program in one
 * sentence.
 */
final class Complaints {
  private final Surroundings surroundings;
  private final BooleanSupplier debug;
  private final List<String> args;

  Complaints(Surroundings surroundings, BooleanSupplier debug, List<String> args) {
    this.surroundings = surroundings;
    this.debug = debug;
    this.args = List.copyOf(args);
  }

  /** The exit code for what was thrown. */
  static int code(Throwable thrown) {
    if (thrown instanceof ParameterException) {
      return ExitCode.USAGE.number();
    }
    return Refusals.of(thrown)
        .map(refusal -> refusal.reason() == Refusal.Reason.CONFLICT)
        .map(conflict -> conflict ? ExitCode.CONFLICT : ExitCode.REFUSED)
        .orElse(ExitCode.INTERNAL)
        .number();
  }

  /** Says what is wrong with the command line. */
  int aboutUsage(ParameterException e) {
    Output err = new Output(surroundings.err());
    err.line("ovenmark: " + e.getMessage());
    StringWriter guess = new StringWriter();
    if (UnmatchedArgumentException.printSuggestions(e, new PrintWriter(guess))) {
      guess.toString().lines().forEach(err::line);
    }
    CommandLine command = e.getCommandLine();
    err.line("See: " + command.getCommandSpec().qualifiedName(" ") + " --help");
    return ExitCode.USAGE.number();
  }

  /** Says what was refused, or that the program is at fault. */
  int about(Throwable thrown) {
    Optional<Refusal> refusal = Refusals.of(thrown);
    if (refusal.isPresent()) {
      refused(refusal.get());
    } else {
      fault(thrown);
    }
    return code(thrown);
  }

  private void refused(Refusal refusal) {
    Output err = new Output(surroundings.err());
    if (refusal.problems().size() > 1) {
      err.line("ovenmark: " + refusal.problems().size() + " things to mend:");
      for (Problem problem : refusal.problems()) {
        err.blank();
        sentence(err, problem.where(), problem.message(), problem.hint());
      }
    } else {
      sentence(err, refusal.where(), "ovenmark: " + refusal.getMessage(), refusal.hint());
    }
  }

  private static void sentence(Output err, String where, String sentence, String hint) {
    err.wrapped(sentence, "");
    if (!where.isEmpty()) {
      err.line("  where: " + where);
    }
    if (!hint.isEmpty()) {
      err.wrapped("  hint:  " + hint, "         ");
    }
  }

  private void fault(Throwable thrown) {
    Output err = new Output(surroundings.err());
    boolean asked =
        debug.getAsBoolean() || surroundings.environment().apply("OVENMARK_DEBUG").isPresent();
    err.wrapped("ovenmark: Something went wrong inside the program (" + what(thrown) + ").", "");
    if (asked) {
      err.line("  while: " + args);
      StringWriter trace = new StringWriter();
      thrown.printStackTrace(new PrintWriter(trace));
      trace.toString().lines().forEach(err::line);
    } else {
      err.line("  hint:  For a report of the fault, repeat the command with --debug.");
    }
  }

  private static String what(Throwable thrown) {
    String message = thrown.getMessage();
    String name = thrown.getClass().getSimpleName();
    return message == null ? name : name + ": " + message.lines().findFirst().orElse("");
  }
}
