package io.ovenmark.measure;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The short name that a formula, food, goal or line is filed under: lower-case ASCII letters, digits
 * and single hyphens, at most {@value #LONGEST} characters, so that it is the same on every file
 * system and in every branch name.
 */
public final class Slug {
  /** Greatest length of a slug. */
  public static final int LONGEST = 64;

  private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");

  private Slug() {}

  /**
   * Whether a text is a slug.
   *
   * @param text any text, not null
   * @return true when it may be used as it is
   */
  public static boolean isSlug(String text) {
    return text.length() <= LONGEST && SHAPE.matcher(text).matches();
  }

  /**
   * Checks a slug.
   *
   * @param text the text
   * @return the same text
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static String check(String text) {
    if (!isSlug(text)) {
      throw new IllegalArgumentException(
          "\"" + text + "\" cannot be a short name.\n"
              + "Use lower-case letters a-z, digits and single hyphens, such as \"lupin-bun\".");
    }
    return text;
  }

  /**
   * Proposes a slug for a name: accents dropped, other characters turned into hyphens.
   *
   * @param name any name
   * @param fallback what to use when the name has no usable letter, as in Greek script
   * @return a slug
   */
  public static String of(String name, String fallback) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    if (plain.length() > LONGEST) {
      plain = plain.substring(0, LONGEST).replaceAll("-+$", "");
    }
    return plain.isEmpty() ? fallback : plain;
  }
}
