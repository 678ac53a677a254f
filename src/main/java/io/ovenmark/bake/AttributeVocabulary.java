package io.ovenmark.bake;

import java.util.List;
import java.util.Optional;

/**
 * Attributes that tasters score on a just-about-right scale of five steps, with words for each
 * step. The scale is that of ASTM MNL 63 (from memory); which attributes to ask for is common
 * practice, no source. An attribute of another name may be scored all the same.
 */
public enum AttributeVocabulary {
  /** How sweet. */
  SWEET("sweet", "not nearly sweet enough", "not sweet enough", "too sweet", "much too sweet"),
  /** How salty. */
  SALTY("salty", "not nearly salty enough", "not salty enough", "too salty", "much too salty"),
  /** How moist the crumb is. */
  MOIST("moist", "much too dry", "too dry", "too moist", "much too moist"),
  /** How firm to the bite. */
  FIRM("firm", "much too soft", "too soft", "too firm", "much too firm"),
  /** How strong the taste. */
  TASTE("taste", "much too weak", "too weak", "too strong", "much too strong"),
  /** How dark the crust. */
  BROWN("brown", "much too pale", "too pale", "too dark", "much too dark");

  private final String word;
  private final List<String> steps;

  AttributeVocabulary(String word, String muchLess, String less, String more, String muchMore) {
    this.word = word;
    this.steps = List.of(muchLess, less, "just right", more, muchMore);
  }

  /**
   * The attribute's name.
   *
   * @return such as {@code moist}
   */
  public String word() {
    return word;
  }

  /**
   * The words of the steps, from −2 to 2.
   *
   * @return five
   */
  public List<String> steps() {
    return steps;
  }

  /**
   * Finds an attribute by its name.
   *
   * @param name any text
   * @return the attribute; empty for one of another name
   */
  public static Optional<AttributeVocabulary> of(String name) {
    for (AttributeVocabulary entry : values()) {
      if (entry.word.equals(name)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }

  /** The steps of an attribute that is not in the vocabulary. */
  public static final List<String> OTHER_STEPS =
      List.of("much too little", "too little", "just right", "too much", "much too much");

  /**
   * The words of liking from 1 to 9: the nine-point hedonic scale (Peryam and Pilgrim 1957, from
   * memory).
   */
  public static final List<String> LIKING =
      List.of(
          "dislike extremely",
          "dislike very much",
          "dislike moderately",
          "dislike slightly",
          "neither like nor dislike",
          "like slightly",
          "like moderately",
          "like very much",
          "like extremely");

  /** The words of the crust from 0 to 4; common practice, no source. */
  public static final List<String> CRUST = List.of("raw", "pale", "golden", "dark", "burnt");
}
