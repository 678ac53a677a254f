package io.ovenmark.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The top-level command: what all verbs share. */
@Command(
    name = "ovenmark",
    versionProvider = Ovenmark.Version.class,
    description = {
      "A version-controlled notebook for formulas of baked goods: every revision with its figures,"
          + " what changed between any two of them, and what came out of the oven."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nExamples, the first of which makes the notebook of all others:%n",
    footer = {
      "  ovenmark demo saltmarsh",
      "  ovenmark timeline seeded-lupin-bun --notebook saltmarsh"
    },
    subcommands = {
      DemoCommand.class,
      ViewCommand.class,
      NewCommand.class,
      ListCommand.class,
      ShowCommand.class,
      ReviseCommand.class,
      TimelineCommand.class,
      CompareCommand.class,
      LeversCommand.class,
      ScaleCommand.class,
      WindowCommand.class,
      ReplaceCommand.class,
      RebuildCommand.class,
      CausesCommand.class,
      MatteredCommand.class,
      LabelCommand.class,
      FindCommand.class,
      CardCommand.class,
      StoryCommand.class,
      VariantCommand.class,
      CarryCommand.class,
      BakeCommand.class,
      PhotoCommand.class,
      TastingCommand.class,
      GoalCommand.class,
      PantryCommand.class,
      RestoreCommand.class,
      PublishCommand.class,
      ShareCommand.class,
      TakeInCommand.class,
      UndoCommand.class,
      CheckCommand.class,
      CompletionCommand.class
    })
final class Ovenmark implements Runnable {
  /** Width of help texts and tables, in characters. */
  static final int WIDTH = 88;

  private final Surroundings surroundings;
  private final Complaints complaints;

  @Spec private CommandSpec spec;

  @Option(
      names = "--notebook",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description = "Folder of the notebook; default: the current folder or the nearest above it.")
  private Path notebook;

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "Write the stack trace of an internal fault.")
  private boolean debug;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help.")
  private boolean help;

  @Option(names = "--version", versionHelp = true, description = "Show the version.")
  private boolean version;

  Ovenmark(Surroundings surroundings, List<String> args) {
    this.surroundings = surroundings;
    this.complaints = new Complaints(surroundings, () -> debug, args);
  }

  /**
   * Runs one command.
   *
   * @return the exit code
   */
  static int run(Surroundings surroundings, String... args) {
    Ovenmark root = new Ovenmark(surroundings, List.of(args));
    if (Words.isLost(args)) {
      new Output(surroundings.err())
          .wrapped(
              "ovenmark: The command line holds letters that did not arrive; set the locale to one"
                  + " with UTF-8, such as LC_ALL=C.UTF-8.",
              "  ");
      return ExitCode.USAGE.number();
    }
    try {
      return commandLine(root).execute(args);
    } catch (RuntimeException | Error fault) {
      return root.complaints.about(fault);
    }
  }

  /** The whole command line with its manners. */
  static CommandLine commandLine(Ovenmark root) {
    Complaints complaints = root.complaints;
    CommandLine line = new CommandLine(root);
    line.setOut(root.surroundings.out());
    line.setErr(root.surroundings.err());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setUsageHelpWidth(WIDTH);
    abbreviate(line);
    line.setExpandAtFiles(false);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler((e, args) -> complaints.aboutUsage(e));
    line.setExecutionExceptionHandler((e, command, result) -> complaints.about(e));
    line.setExitCodeExceptionMapper(Complaints::code);
    return line;
  }

  /** Options stand in the list below the synopsis, not in it. */
  private static void abbreviate(CommandLine line) {
    line.getCommandSpec().usageMessage().abbreviateSynopsis(true);
    line.getSubcommands().values().forEach(Ovenmark::abbreviate);
  }

  Surroundings surroundings() {
    return surroundings;
  }

  Complaints complaints() {
    return complaints;
  }

  /** The folder that was asked for, or null. */
  Path notebook() {
    return notebook;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do.");
  }

  /** The version of the program file. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Ovenmark.class.getPackage().getImplementationVersion();
      return new String[] {"ovenmark " + (version == null ? "(built from source)" : version)};
    }
  }
}
