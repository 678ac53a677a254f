package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SyntaxFaultTest {
  private static final String RESTORE = SyntaxFault.RESTORE;
  private static final String QUOTES = "Use straight double quotes (\") around names and texts.";
  private static final String WORD =
      "Put texts in double quotes; write true, false and null in small letters.";
  private static final String COMMA = "Put one comma between two entries.";
  private static final String NAME = "Write names as in \"name\": value.";
  private static final String MERGE =
      "Keep one of the two sides and remove the lines with <<<<<<<, ======= and >>>>>>>.";
  private static final String BRACKETS = "Check the brackets from here upwards.";
  private static final String BACKSLASH =
      "A backslash in a text is followed by something that has no meaning here.";

  static void assertReadsWell(Problem problem) {
    assertThat(problem.message()).matches("(?s)[A-Z].*\\.");
    assertThat(problem.hint()).matches("(?s)[A-Z].*\\.");
    assertThat(problem.message() + problem.hint())
        .doesNotContainPattern("(?i)\\btoken|redacted|jackson|feature|exception|parser|ctrl-char");
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        // truncated
        row("{", "1:2", "The file ends before it is complete.", RESTORE),
        row("{\"a\": \"x", "1:9", "The file ends inside a text in quotes.", RESTORE),
        row("{\"a\": tru", "1:10", "The file ends before it is complete.", RESTORE),
        row("{\"a\":\n 1,\n", "3:1", "The file ends before it is complete.", RESTORE),
        // commas
        row("{\"a\": 1\n \"b\": 2}", "2:2", "A comma is missing before the character \".", COMMA),
        row("[1 2]", "1:4", "A comma is missing before the character 2.", COMMA),
        row("{\"a\": 1; \"b\": 2}", "1:8", "A comma is missing before the character ;.", COMMA),
        row(
            "{\"a\": 1,\n}",
            "2:1",
            "A comma stands before the closing bracket }.",
            "Remove the comma after the last entry."),
        row(
            "[1, ]",
            "1:5",
            "A comma stands before the closing bracket ].",
            "Remove the comma after the last entry."),
        row(
            "{\"minutes\": 1,5}",
            "1:15",
            "A number stands after a comma where a name belongs.",
            "Write decimals with a point, such as 1.5."),
        // quotes
        row(
            "{'a': 1}",
            "1:2",
            "The character ' stands where a straight double quote belongs.",
            QUOTES),
        row(
            "{“a”: 1}",
            "1:2",
            "The character “ stands where a straight double quote belongs.",
            QUOTES),
        row(
            "{\"a\": „x“}",
            "1:7",
            "The character „ stands where a straight double quote belongs.",
            QUOTES),
        row("{name: 1}", "1:2", "The character n stands where a name in quotes belongs.", NAME),
        row("{\"a\": lupin}", "1:7", "The word lupin stands without quotes.", WORD),
        row("{\"a\": True}", "1:7", "The word True stands without quotes.", WORD),
        row(
            "{\"amount\": 150 g}",
            "1:16",
            "The word g follows a number without quotes.",
            "Put an amount and its unit in quotes together, such as \"150 g\"."),
        row(
            "{\"amount\": 150g}",
            "1:15",
            "The word g follows a number without quotes.",
            "Put an amount and its unit in quotes together, such as \"150 g\"."),
        // texts
        row(
            "{\"a\": \"x\ny\"}",
            "1:9",
            "A text in quotes runs over the end of its line.",
            "Close the quote on this line, or write \\n for a line break within the text."),
        row(
            "{\"a\": \"x\ty\"}",
            "1:9",
            "A tab stands in a text in quotes.",
            "Write a space, or \\t for a tab."),
        row("{\"a\": \"x\0\"}", "1:9", "An invisible control character stands here.", "Remove it."),
        row("{\"a\": 1\0}", "1:8", "An invisible control character stands here.", "Remove it."),
        row("{\"a\": \"C:\\photos\"}", "1:11", BACKSLASH, "Write \\\\ for a backslash itself."),
        row("{\"a\": \"\\u12g4\"}", "1:12", BACKSLASH, "Write \\\\ for a backslash itself."),
        row(
            "{\"x\\udc04\": 1}",
            "1:10",
            "A name holds only one half of an escaped character before this place.",
            "Write the character itself instead of its escape."),
        // numbers
        row("{\"a\": 018}", "1:7", "The number 018 begins with a needless 0.", "Remove the 0."),
        row("{\"a\": +5}", "1:7", "The number +5 has a plus sign.", "Remove the sign."),
        row(
            "{\"a\": .5}",
            "1:7",
            "A number begins with a point.",
            "Write a 0 before the point, such as 0.5."),
        row(
            "{\"a\": 5.}",
            "1:7",
            "The number 5. is not complete.",
            "Write it with digits, such as 0.5 or 150."),
        row(
            "{\"a\": 1e}",
            "1:7",
            "The number 1e is not complete.",
            "Write it with digits, such as 0.5 or 150."),
        row(
            "{\"a\": -}",
            "1:7",
            "The number - is not complete.",
            "Write it with digits, such as 0.5 or 150."),
        row(
            "{\"a\": NaN}",
            "1:7",
            "The word NaN is not a number.",
            "Write null for a figure that is unknown."),
        row(
            "{\"a\": -Infinity}",
            "1:7",
            "The word -Infinity is not a number.",
            "Write null for a figure that is unknown."),
        // structure
        row("{\"a\" 1}", "1:6", "A colon is missing after a name.", NAME),
        row("{\"a\": }", "1:7", "A value is missing before the character }.", "Write the value."),
        row("[,1]", "1:2", "A value is missing before the character ,.", "Write the value."),
        row("{,}", "1:2", "The character , stands where a name in quotes belongs.", NAME),
        row("{\"a\": 1]", "1:8", "The bracket ] stands where } belongs.", BRACKETS),
        row("[1}", "1:3", "The bracket } stands where ] belongs.", BRACKETS),
        row("]", "1:1", "The bracket ] closes nothing.", BRACKETS),
        row(
            "// lupin\n{}",
            "1:1",
            "A comment stands here, which JSON does not have.",
            "Keep the remark in a \"note\"."),
        row(
            "<html>",
            "1:1",
            "The character < cannot begin a value.",
            "Look for a missing quote, comma or bracket here or on the line before."),
        // Git's own marks of a merge that was not settled
        row(
            "{\n<<<<<<< HEAD\n\"a\": 1\n",
            "2:1",
            "A mark of an unsettled Git merge stands here.",
            MERGE),
        row("{\"a\": 1\n=======\n}", "2:1", "A mark of an unsettled Git merge stands here.", MERGE),
        row(
            "{\"a\": 1,\n>>>>>>> b\n}",
            "2:1",
            "A mark of an unsettled Git merge stands here.",
            MERGE));
  }

  private static Arguments row(String text, String at, String message, String hint) {
    return Arguments.of(text, at, message, hint);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void saysWhatIsWrongWhereAndWhatToDo(String text, String at, String message, String hint) {
    UnreadableException refused =
        catchThrowableOfType(
            UnreadableException.class, () -> JsonReader.read("a.json", text.getBytes(UTF_8)));
    assertThat(refused).isNotNull();
    assertThat(refused.problems())
        .singleElement()
        .hasToString("a.json:" + at + ": " + message + " " + hint);
    assertReadsWell(refused.problems().get(0));
  }
}
