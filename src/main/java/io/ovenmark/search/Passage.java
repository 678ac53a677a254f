package io.ovenmark.search;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * A text of a revision or a bake.
 *
 * @param place what it is
 * @param text as it was written, not blank
 */
public record Passage(Place place, String text) {
  /** Where texts stand. The order is that of the numbers in the index. */
  public enum Place {
    /** The note of a revision, with what follows its first line. */
    NOTE("note"),
    /** A step of the method that is new in this revision. */
    STEP("method step"),
    /** The formula's name, where it is new. */
    NAME("name"),
    /** The formula's description, where it is new. */
    DESCRIPTION("description"),
    /** A note on a line of the formula, where it is new. */
    LINE_NOTE("note on a line"),
    /** A note on a stage in the oven, where it is new. */
    OVEN_NOTE("note on the oven"),
    /** An ingredient that this revision changed. */
    INGREDIENT("ingredient"),
    /** A fault or merit of a tray or piece. */
    FINDING("finding"),
    /** A verdict on a piece. */
    VERDICT("verdict"),
    /** A note on a tray or piece. */
    BAKE_NOTE("note on the bake"),
    /** Remarks on room and oven. */
    AMBIENT("room and oven"),
    /** What a photo shows. */
    CAPTION("caption"),
    /** How to keep what was baked, where it is new. */
    STORAGE("storage");

    private final String words;

    Place(String words) {
      this.words = words;
    }

    /**
     * The name for people.
     *
     * @return such as {@code method step}
     */
    public String words() {
      return words;
    }
  }

  /** Checks that nothing is null. */
  public Passage {
    requireNonNull(place, "place");
    requireNonNull(text, "text");
  }

  /** A passage of a text that may be missing or blank. */
  static Optional<Passage> of(Place place, Optional<String> text) {
    return text.filter(words -> !words.isBlank()).map(words -> new Passage(place, words));
  }
}
