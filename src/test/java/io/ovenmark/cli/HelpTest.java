package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.photo.Pictures;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class HelpTest {
  @TempDir static Path made;
  @TempDir Path folder;

  @BeforeAll
  static void makeTheNotebook() throws IOException {
    new Bench(made).must("demo", made.toString());
    String edited =
        Files.readString(made.resolve("formulas/seeded-lupin-bun.json"))
            .replace("\"180 g\"", "\"184 g\"");
    Files.writeString(made.resolve("edited.json"), edited, StandardCharsets.UTF_8);
    new Bench(made).must("share", "seeded-lupin-bun", "bun.bundle");
    Files.write(made.resolve("tray.jpg"), Pictures.jpeg(Pictures.corners(60, 40)));
    Path table = Files.createDirectory(made.resolve("sr28"));
    for (String file : List.of("FOOD_DES.txt", "NUT_DATA.txt", "WEIGHT.txt")) {
      String name = "/io/ovenmark/pantry/sr28/" + file;
      try (InputStream in = HelpTest.class.getResourceAsStream(name)) {
        Files.write(table.resolve(file), in.readAllBytes());
      }
    }
  }

  static Stream<CommandLine> commands() {
    return all(line()).stream();
  }

  private static CommandLine line() {
    return new Bench(Path.of("")).commandLine();
  }

  private static List<CommandLine> all(CommandLine line) {
    List<CommandLine> all = new ArrayList<>(List.of(line));
    line.getSubcommands().values().forEach(sub -> all.addAll(all(sub)));
    return all;
  }

  static Stream<String> examples() {
    return commands().flatMap(command -> examples(command).stream());
  }

  private static List<String> examples(CommandLine command) {
    return Stream.of(command.getCommandSpec().usageMessage().footer())
        .filter(line -> line.startsWith("  ovenmark "))
        .map(String::strip)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandSaysWhatItDoesAndGivesAnExample(CommandLine command) {
    String name = command.getCommandSpec().qualifiedName(" ");
    CommandLine.Model.UsageMessageSpec usage = command.getCommandSpec().usageMessage();
    assertThat(usage.description()).as(name).isNotEmpty();
    assertThat(examples(command)).as(name).isNotEmpty();
    assertThat(usage.footerHeading()).as(name).contains("Example");
    examples(command).forEach(example -> assertThat(example).startsWith(name));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyHelpFitsTheWidthAndEndsWithTheExample(CommandLine command) {
    String help = command.getUsageMessage();
    assertThat(help.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(89));
    assertThat(help.strip()).endsWith(examples(command).get(examples(command).size() - 1));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleRuns(String example) throws IOException {
    boolean makesOne =
        List.of(" demo ", " new --notebook ", " --demo").stream().anyMatch(example::contains);
    if (!makesOne) {
      boolean named = example.contains(" --notebook saltmarsh");
      Saltmarsh.copy(made, named ? folder.resolve("saltmarsh") : folder);
    }
    Bench.Result result = new Bench(folder).run(words(example));
    assertThat(result.code()).as(example + "\n" + result).isZero();
    assertThat(result.out()).isNotBlank();
  }

  @Test
  void helpGoesToTheOutputAndIsNoError() {
    Bench.Result result = new Bench(folder).run("revise", "--help");
    assertThat(result.code()).isZero();
    assertThat(result.err()).isEmpty();
    assertThat(result.out())
        .startsWith("Commit the next revision.\nUsage: ovenmark revise [OPTIONS]");
  }

  @Test
  void theVersionIsTold() {
    Bench.Result result = new Bench(folder).run("--version");
    assertThat(result.code()).isZero();
    assertThat(result.out()).startsWith("ovenmark ");
  }

  @Test
  void theCompletionScriptKnowsEveryCommand() {
    String script = new Bench(folder).must("completion").out();
    line().getSubcommands().keySet().forEach(name -> assertThat(script).contains(name));
    assertThat(script).contains("--note-from-changes");
  }

  /** The words of an example, as a shell would give them, without what follows {@code >}. */
  private static String[] words(String example) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    boolean quoted = false;
    for (char c : (example + " ").toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ' ' && !quoted) {
        if (!word.isEmpty()) {
          words.add(word.toString());
        }
        word.setLength(0);
      } else {
        word.append(c);
      }
    }
    int redirection = words.indexOf(">");
    List<String> all = redirection < 0 ? words : words.subList(0, redirection);
    return all.subList(1, all.size()).toArray(String[]::new);
  }
}
