package io.ovenmark.paste;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a person settled about pasted lines, apart from their foods. A line is named by its number
 * or by its text as it was pasted; blanks around and within it do not count. Named by its text, a
 * choice stays with its line when lines come and go above it.
 *
 * @param amounts the amount that is meant, as one writes it, by line
 * @param leftOut the lines that do not become part of the formula
 */
public record LineChoices(Map<String, String> amounts, Set<String> leftOut) {
  /** Nothing is settled. */
  public static final LineChoices NONE = new LineChoices(Map.of(), Set.of());

  /** Copies map and set, with every name tidied. */
  public LineChoices {
    amounts =
        amounts.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(
                    each -> PasteText.tidy(each.getKey()),
                    Map.Entry::getValue,
                    (first, second) -> first));
    leftOut = leftOut.stream().map(PasteText::tidy).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * The amount that was chosen for a line.
   *
   * @param number its number
   * @param text the line as it was pasted
   * @return the amount as it was written, which may be none that can be read; empty when none was
   */
  Optional<String> amount(int number, String text) {
    return Optional.ofNullable(amounts.get(String.valueOf(number)))
        .or(() -> Optional.ofNullable(amounts.get(PasteText.tidy(text))));
  }

  /** Whether a line was left out. */
  boolean isLeftOut(int number, String text) {
    return !leftOut.isEmpty()
        && (leftOut.contains(String.valueOf(number)) || leftOut.contains(PasteText.tidy(text)));
  }

  /**
   * Whether a choice means a line.
   *
   * @param named how the choice names its line
   * @param line the line
   * @return true when it is that line's number or text
   */
  public static boolean means(String named, PastedLine line) {
    String tidy = PasteText.tidy(named);
    return tidy.equals(String.valueOf(line.number())) || tidy.equals(PasteText.tidy(line.text()));
  }
}
