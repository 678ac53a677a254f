package io.ovenmark.publish.card;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody chose for a card.
 *
 * @param paper the paper it is printed on
 * @param masses how masses are written
 * @param times by how much the formula is multiplied, above 0
 * @param storage how to keep what was baked; empty for what the formula says of it
 * @param more further cautions, in addition to those that belong to the formula
 */
public record CardChoices(
    Paper paper, Masses masses, double times, Optional<String> storage, List<String> more) {
  /** Grams on A4, as the formula is. */
  public static final CardChoices USUAL =
      new CardChoices(Paper.A4, Masses.GRAMS, 1, Optional.empty(), List.of());

  /** A paper. */
  public enum Paper {
    /** ISO 216 A4. */
    A4("a4", "A4", "210mm 297mm", "11mm 11.5mm"),
    /** US Letter, ANSI/ASME Y14.1 size A. */
    LETTER("letter", "US Letter", "8.5in 11in", "10mm 11.5mm"),
    /** An index card of 4 by 6 inches. */
    INDEX("4x6", "4 × 6 in", "6in 4in", "4mm 4.5mm");

    private final String key;
    private final String label;
    private final String size;
    private final String margin;

    Paper(String key, String label, String size, String margin) {
      this.key = key;
      this.label = label;
      this.size = size;
      this.margin = margin;
    }

    /**
     * The name in addresses and on the command line.
     *
     * @return such as {@code a4}
     */
    public String key() {
      return key;
    }

    /**
     * The name for people.
     *
     * @return such as {@code US Letter}
     */
    public String label() {
      return label;
    }

    /** Width and height as style sheets take them. */
    String size() {
      return size;
    }

    /** What stays white on each side, as style sheets take it. */
    String margin() {
      return margin;
    }

    /**
     * Reads a name.
     *
     * @param text such as {@code letter}
     * @return the paper
     * @throws IllegalArgumentException with a sentence and a remedy
     */
    public static Paper read(String text) {
      for (Paper paper : values()) {
        if (paper.key.equals(text.strip().toLowerCase(Locale.ROOT))) {
          return paper;
        }
      }
      throw new IllegalArgumentException(
          "The paper \"" + text + "\" is not known.\nChoose a4, letter or 4x6.");
    }
  }

  /** How masses are written. */
  public enum Masses {
    /** Grams. */
    GRAMS("g"),
    /** Avoirdupois ounces. */
    OUNCES("oz");

    private final String unit;

    Masses(String unit) {
      this.unit = unit;
    }

    /**
     * The unit's sign.
     *
     * @return {@code g} or {@code oz}
     */
    public String unit() {
      return unit;
    }

    /**
     * Reads a unit.
     *
     * @param text {@code g} or {@code oz}
     * @return the choice
     * @throws IllegalArgumentException with a sentence and a remedy
     */
    public static Masses read(String text) {
      for (Masses masses : values()) {
        if (masses.unit.equals(text.strip().toLowerCase(Locale.ROOT))) {
          return masses;
        }
      }
      throw new IllegalArgumentException(
          "The unit \"" + text + "\" is not one for a card.\nChoose g or oz.");
    }
  }

  private static final double LEAST_TIMES = 0.01;
  private static final double MOST_TIMES = 1000;
  private static final int LONGEST = 1000;

  /** Checks the parts and copies. */
  public CardChoices {
    requireNonNull(paper, "paper");
    requireNonNull(masses, "masses");
    storage = storage.map(String::strip).filter(text -> !text.isEmpty());
    more = more.stream().map(String::strip).filter(text -> !text.isEmpty()).toList();
    if (!(times >= LEAST_TIMES && times <= MOST_TIMES)) {
      throw new IllegalArgumentException(
          "A card cannot be for " + times + " times the formula.\nUse 0.01 to 1000.");
    }
    if (storage.filter(text -> text.length() > LONGEST).isPresent()
        || more.stream().anyMatch(text -> text.length() > LONGEST)) {
      throw new IllegalArgumentException(
          "That is too long for a card.\nKeep each text to " + LONGEST + " signs.");
    }
  }
}
