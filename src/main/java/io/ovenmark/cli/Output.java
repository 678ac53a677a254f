package io.ovenmark.cli;

import io.ovenmark.desk.Json;
import java.io.PrintWriter;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Prints lines for people. Whatever comes from a notebook goes through it, so that no note, name or
 * path can drive the terminal: control characters and marks that change the direction of writing
 * are shown, not sent.
 */
final class Output {
  /** A space between words that belong together; of Unicode's private use, never printed. */
  private static final char GLUE = '\uE000';

  /** A number and its unit, which stay on one line. */
  private static final Pattern MEASURE =
      Pattern.compile("(\\d) (°C|°F|%|g|mg|kg|ml|mm|min|kcal)(?![\\p{L}\\d])");

  private final PrintWriter out;

  Output(PrintWriter out) {
    this.out = out;
  }

  /** Prints one line. */
  void line(String text) {
    out.print(Printable.of(text).stripTrailing());
    out.print('\n');
    out.flush();
  }

  /** Prints an empty line. */
  void blank() {
    line("");
  }

  /** Prints a heading with an empty line before it. */
  void heading(String text) {
    blank();
    line(text);
  }

  /**
   * Prints a text over as many lines as it needs.
   *
   * @param text words
   * @param indent what the second and later lines begin with
   */
  void wrapped(String text, String indent) {
    String glued = MEASURE.matcher(Printable.of(text)).replaceAll("$1" + GLUE + "$2");
    for (String line : TextWidth.wrap(glued, Ovenmark.WIDTH, indent)) {
      line(line.replace(GLUE, ' '));
    }
  }

  /**
   * Prints parts with dots between them; a line is broken between parts as long as they fit.
   *
   * @param start what stands before the first part
   * @param parts texts
   * @param indent what the second and later lines begin with
   */
  void parts(String start, List<String> parts, String indent) {
    String text =
        parts.stream()
            .map(Printable::of)
            .map(part -> TextWidth.of(part) < Ovenmark.WIDTH / 2 ? part.replace(' ', GLUE) : part)
            .collect(Collectors.joining(GLUE + "· "));
    for (String line : TextWidth.wrap(start + text, Ovenmark.WIDTH, indent)) {
      line(line.replace(GLUE, ' '));
    }
  }

  /** Prints a table, its columns as wide as they need to be. */
  void table(Table table) {
    table.lines().forEach(this::line);
  }

  /** Prints an answer as JSON. */
  void json(Object answer) {
    out.print(Printable.json(Json.readable(answer)));
    out.flush();
  }

  /** Prints a document of many lines; nothing in it can drive the terminal. */
  void document(String text) {
    text.lines().forEach(line -> out.print(Printable.of(line) + "\n"));
    out.flush();
  }

  /** Prints text that is not a notebook's, such as a script, as it is. */
  void raw(String text) {
    out.print(text);
    out.flush();
  }
}
