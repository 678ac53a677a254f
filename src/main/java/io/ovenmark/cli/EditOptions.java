package io.ovenmark.cli;

import io.ovenmark.desk.ReviseFormula;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Stack;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The options that change a formula field by field, kept in the order they were written in. */
final class EditOptions {
  private static final Pattern AMOUNT_FIRST =
      Pattern.compile(
          "([^=]*?\\d[^=]*?) +([a-z0-9:-]*[a-z][a-z0-9-]*?)( +(?:after|before) +\\S+)?");

  private final List<ReviseFormula.Edit> edits = new ArrayList<>();

  @Option(
      names = "--set",
      paramLabel = "FIELD=VALUE",
      parameterConsumer = InOrder.class,
      description = {
        "Set a field: water=188g, water+=5g, water-=10%%, water.note=35 °C, lupin-flour.flour=yes,"
            + " bake.temperature=205C, bake.minutes=24, yield.pieces=6, method.3=…, name=…,"
            + " goal=….",
        "May be repeated, as may the next three; they are done in the order given."
      })
  private List<String> sets;

  @Option(
      names = "--add",
      paramLabel = "FOOD=AMOUNT",
      parameterConsumer = InOrder.class,
      description =
          "Add a line: psyllium-husk=12g, or \"12 g psyllium-husk\"; after salt, before water.")
  private List<String> adds;

  @Option(
      names = "--remove",
      paramLabel = "LINE",
      parameterConsumer = InOrder.class,
      description = "Remove a line or an oven stage (bake.STAGE).")
  private List<String> removes;

  @Option(
      names = "--replace",
      paramLabel = "LINE=FOOD",
      parameterConsumer = InOrder.class,
      description = "Put another food in a line's place: butter-unsalted=oil-coconut 18g.")
  private List<String> replaces;

  /** What is to be done, in the order of the command line. */
  List<ReviseFormula.Edit> edits() {
    return List.copyOf(edits);
  }

  /** An addition as it is said, amount first, in the form in which it is kept. */
  static String addition(String text) {
    Matcher said = AMOUNT_FIRST.matcher(text.strip());
    return said.matches()
        ? said.group(2) + "=" + said.group(1) + (said.group(3) == null ? "" : said.group(3))
        : text;
  }

  /** Notes an edit under the name of its option. */
  static final class InOrder implements IParameterConsumer {
    @Override
    public void consumeParameters(Stack<String> args, ArgSpec option, CommandSpec command) {
      if (args.isEmpty()) {
        throw new ParameterException(
            command.commandLine(),
            "Missing required parameter for option '"
                + ((OptionSpec) option).longestName()
                + "' ("
                + option.paramLabel()
                + ")");
      }
      EditOptions options = options(option);
      String name = ((OptionSpec) option).longestName().substring(2);
      ReviseFormula.Act act = ReviseFormula.Act.valueOf(name.toUpperCase(Locale.ROOT));
      String text = args.pop();
      options.edits.add(
          new ReviseFormula.Edit(act, act == ReviseFormula.Act.ADD ? addition(text) : text));
    }

    /** The object that holds the option's field. */
    private static EditOptions options(ArgSpec option) {
      try {
        return option.scope().get();
      } catch (Exception e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
