package io.ovenmark.bake;

import java.util.Locale;
import java.util.Optional;

/**
 * The trade's words for what is seen and tasted (common practice, no source). A finding that is not
 * in this list is kept as free words.
 */
public enum FindingVocabulary {
  /** The crumb sticks together, damp under the crust. */
  GUMMY_CRUMB("gummy crumb", false),
  /** Heavy, few pores. */
  DENSE("dense", false),
  /** Did not rise. */
  FLAT("flat", false),
  /** Flowed wide on the tray. */
  SPREAD("spread", false),
  /** Sank after the oven. */
  FELL("fell", false),
  /** Crust too light. */
  PALE("pale", false),
  /** Crust too dark. */
  DARK_CRUST("dark crust", false),
  /** Underside too dark. */
  DARK_BASE("dark base", false),
  /** Crumb without moisture. */
  DRY("dry", false),
  /** Falls apart when cut. */
  CRUMBLY("crumbly", false),
  /** Hard to bite. */
  TOUGH("tough", false),
  /** Smells or tastes of egg. */
  EGGY("eggy", false),
  /** Tastes bitter. */
  BITTER("bitter", false),
  /** Sandy or gritty in the mouth. */
  GRITTY("gritty", false),
  /** The cool feeling that erythritol leaves. */
  COOLING("cooling aftertaste", false),
  /** Large hollow under the crust. */
  HOLLOW("hollow", false),
  /** Damp line above the base. */
  WET_LINE("wet line", false),
  /** Upper side torn open. */
  CRACKED("cracked top", false),
  /** Crumb springs back, cuts clean. */
  DRY_CRUMB("crumb dry to the touch", true),
  /** Pores alike all through. */
  EVEN_CRUMB("even crumb", true),
  /** Rose well in the oven. */
  GOOD_SPRING("good oven spring", true),
  /** Snaps when broken. */
  CRISP("crisp", true),
  /** Soft to the bite. */
  TENDER("tender", true);

  private final String word;
  private final boolean merit;

  FindingVocabulary(String word, boolean merit) {
    this.word = word;
    this.merit = merit;
  }

  /**
   * The word itself.
   *
   * @return such as {@code gummy crumb}
   */
  public String word() {
    return word;
  }

  /**
   * Whether it is a merit.
   *
   * @return true for a merit, false for a fault
   */
  public boolean merit() {
    return merit;
  }

  /**
   * Finds an entry by its word.
   *
   * @param word any text
   * @return the entry; empty for free words
   */
  public static Optional<FindingVocabulary> of(String word) {
    String wanted = word.strip().toLowerCase(Locale.ROOT);
    for (FindingVocabulary entry : values()) {
      if (entry.word.equals(wanted)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }
}
