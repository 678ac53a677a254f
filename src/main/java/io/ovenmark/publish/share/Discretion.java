package io.ovenmark.publish.share;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Keeps what is about one formula and cuts what speaks of others.
 *
 * <pre>{@code
 * Discretion discretion =
 *     Discretion.of(List.of("seeded-lupin-bun"), List.of("sesame-crispbread"), false);
 * discretion.note("Wetter dough. Crispbread unchanged.", "Formula changed");
 * }</pre>
 *
 * <p>A formula is spoken of by its name or its short name, in any capitals, with hyphens or spaces,
 * in the singular or with an s. A name that is a part of the own formula's name is never taken for
 * a mention. A note is cut sentence by sentence; what is left of it stays as it was written. What
 * cannot be found so is a nickname or a description of another formula: whoever shares should read
 * the notes.
 */
public final class Discretion {
  private static final Pattern ADDRESS =
      Pattern.compile("\\s*<?[\\p{L}\\p{N}._%+-]+@[\\p{L}\\p{N}-]+(?:\\.[\\p{L}\\p{N}-]+)+>?");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?;…])\\s+");
  private static final int SHORTEST = 2;

  private final List<String> own;
  private final SortedSet<String> others;
  private final boolean keepsAddresses;

  private Discretion(List<String> own, SortedSet<String> others, boolean keepsAddresses) {
    this.own = own;
    this.others = others;
    this.keepsAddresses = keepsAddresses;
  }

  /**
   * For one formula among others.
   *
   * @param own names and short names of what may be spoken of
   * @param others names and short names of what may not
   * @param keepsAddresses whether e-mail addresses in notes stay
   * @return the discretion
   */
  public static Discretion of(
      Collection<String> own, Collection<String> others, boolean keepsAddresses) {
    List<String> ours =
        own.stream()
            .map(Discretion::plain)
            .distinct()
            .sorted((a, b) -> b.length() - a.length())
            .toList();
    SortedSet<String> theirs = new TreeSet<>();
    for (String each : others) {
      String name = plain(each);
      if (name.strip().length() >= SHORTEST && ours.stream().noneMatch(o -> o.contains(name))) {
        theirs.add(name);
      }
    }
    return new Discretion(ours, theirs, keepsAddresses);
  }

  /**
   * Whether a text speaks of another formula.
   *
   * @param text any text
   * @return true when it names one
   */
  public boolean speaksOfOthers(String text) {
    String masked = plain(text);
    for (String name : own) {
      masked = masked.replace(name, " \u0000 ");
    }
    for (String name : others) {
      if (masked.contains(name) || masked.contains(name.stripTrailing() + "s ")) {
        return true;
      }
      if (isWrittenWithoutSpaces(name) && masked.contains(name.strip())) {
        return true;
      }
    }
    return false;
  }

  /**
   * A note as it may be told.
   *
   * @param note the note, its first line the subject
   * @param otherwise what it is about, for a subject of which nothing is left
   * @return not blank
   */
  public String note(String note, String otherwise) {
    requireNonNull(otherwise, "otherwise");
    String told = keepsAddresses ? note : ADDRESS.matcher(note).replaceAll("");
    if (speaksOfOthers(told)) {
      told = cut(told, otherwise);
    }
    return told.isBlank() ? otherwise : told;
  }

  private String cut(String note, String otherwise) {
    List<String> kept = new ArrayList<>();
    String[] lines = note.split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      String line = cutLine(lines[i]);
      if (i == 0 && line.isBlank()) {
        kept.add(otherwise + " (the note spoke of other formulas too)");
      } else if (!line.isBlank() || lines[i].isBlank()) {
        kept.add(line);
      }
    }
    String told = String.join("\n", kept).strip();
    // A name may run over the end of a line or a sentence.
    return speaksOfOthers(told) ? otherwise + " (the note spoke of other formulas too)" : told;
  }

  private String cutLine(String line) {
    if (!speaksOfOthers(line)) {
      return line;
    }
    List<String> kept = new ArrayList<>();
    for (String sentence : SENTENCE_END.split(line)) {
      if (!speaksOfOthers(sentence)) {
        kept.add(sentence);
      }
    }
    return String.join(" ", kept).strip();
  }

  /** Letters and digits in small, anything else as one space, one space at each end. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(" ");
    text.toLowerCase(Locale.ROOT)
        .codePoints()
        .forEach(
            each -> {
              if (Character.isLetterOrDigit(each)) {
                plain.appendCodePoint(each);
              } else if (plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
              }
            });
    if (plain.charAt(plain.length() - 1) != ' ') {
      plain.append(' ');
    }
    return plain.toString();
  }

  private static boolean isWrittenWithoutSpaces(String name) {
    return name.codePoints()
        .anyMatch(
            each ->
                Character.isIdeographic(each)
                    || Character.UnicodeScript.of(each) == Character.UnicodeScript.HIRAGANA
                    || Character.UnicodeScript.of(each) == Character.UnicodeScript.KATAKANA
                    || Character.UnicodeScript.of(each) == Character.UnicodeScript.THAI);
  }
}
