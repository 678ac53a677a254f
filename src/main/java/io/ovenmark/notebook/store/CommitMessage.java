package io.ovenmark.notebook.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The three parts of a commit's message.
 *
 * <p>The subject is the first paragraph in one line, as {@code git log --format=%s} prints it. The
 * trailers are the last paragraph, if it is not the first and each of its lines has the form
 * {@code Key: value} (or continues the line before with white space in front); of a key that
 * occurs twice the last value counts. The body is what lies between.
 *
 * @param subject one line, may be empty
 * @param body the paragraphs between, without line breaks at the ends
 * @param trailers in the order of the message
 */
public record CommitMessage(String subject, String body, Map<String, String> trailers) {
  private static final Pattern TRAILER = Pattern.compile("([A-Za-z0-9][A-Za-z0-9-]*):[ \t]*(.*)");

  /** Copies the trailers. */
  public CommitMessage {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(body, "body");
    trailers = copy(trailers);
  }

  /** Reads a message as it is stored. */
  public static CommitMessage parse(String text) {
    List<String> lines = List.of(text.replace("\r\n", "\n").split("\n", -1));
    int start = skipBlank(lines, 0, lines.size());
    int subjectEnd = start;
    StringBuilder subject = new StringBuilder();
    while (subjectEnd < lines.size() && !lines.get(subjectEnd).isBlank()) {
      subject.append(subject.length() == 0 ? "" : " ").append(lines.get(subjectEnd).strip());
      subjectEnd++;
    }
    int end = lines.size();
    while (end > subjectEnd && lines.get(end - 1).isBlank()) {
      end--;
    }
    int last = end;
    while (last > subjectEnd && !lines.get(last - 1).isBlank()) {
      last--;
    }
    Map<String, String> trailers =
        last > subjectEnd ? trailers(lines.subList(last, end)) : Map.of();
    int bodyEnd = trailers.isEmpty() ? end : last;
    while (bodyEnd > subjectEnd && lines.get(bodyEnd - 1).isBlank()) {
      bodyEnd--;
    }
    int bodyStart = skipBlank(lines, subjectEnd, bodyEnd);
    String body = String.join("\n", lines.subList(bodyStart, bodyEnd));
    return new CommitMessage(subject.toString(), body, trailers);
  }

  /**
   * Puts trailers under a message as a person wrote it.
   *
   * @throws StoreException {@code BAD_MESSAGE} if the message is blank or holds a NUL, or if a
   *     trailer's key is not letters, digits and hyphens or its value is not one line
   */
  static String compose(String message, Map<String, String> trailers) {
    String clean = message.replace("\r\n", "\n").replace('\r', '\n').strip();
    if (clean.isEmpty()) {
      throw bad(message, "A note is needed: say in a few words what changed.");
    }
    if (clean.indexOf('\0') >= 0) {
      throw bad(message, "A note cannot hold the character NUL: take it out.");
    }
    StringBuilder text = new StringBuilder(clean).append('\n');
    if (!trailers.isEmpty()) {
      text.append('\n');
      trailers.forEach((key, value) -> text.append(line(key, value)).append('\n'));
    }
    return text.toString();
  }

  static Map<String, String> copy(Map<String, String> trailers) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(trailers));
  }

  private static String line(String key, String value) {
    String line = key + ": " + value.strip();
    boolean control = line.chars().anyMatch(Character::isISOControl);
    Matcher matcher = TRAILER.matcher(line);
    if (control || value.isBlank() || !matcher.matches() || !matcher.group(1).equals(key)) {
      throw bad(key, "The trailer " + key + " needs a plain key and a value of one line.");
    }
    return line;
  }

  private static StoreException bad(String where, String message) {
    return new StoreException(StoreException.Reason.BAD_MESSAGE, where, message);
  }

  private static int skipBlank(List<String> lines, int from, int to) {
    int at = from;
    while (at < to && lines.get(at).isBlank()) {
      at++;
    }
    return at;
  }

  /** The trailers of a paragraph, empty if one of its lines is none. */
  private static Map<String, String> trailers(List<String> paragraph) {
    List<String> unfolded = new ArrayList<>();
    for (String line : paragraph) {
      if (Character.isWhitespace(line.charAt(0)) && !unfolded.isEmpty()) {
        unfolded.add(unfolded.remove(unfolded.size() - 1) + " " + line.strip());
      } else {
        unfolded.add(line);
      }
    }
    Map<String, String> found = new LinkedHashMap<>();
    for (String line : unfolded) {
      Matcher matcher = TRAILER.matcher(line);
      if (!matcher.matches()) {
        return Map.of();
      }
      found.put(matcher.group(1), matcher.group(2).strip());
    }
    return found;
  }
}
