package io.ovenmark.measure;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The short name that a formula, food, goal or line is filed under: lower-case ASCII letters,
 * digits and single hyphens, at most {@value #LONGEST} characters, so that it is the same on every
 * file system and in every branch name.
 */
public final class Slug {
  /** Greatest length of a slug. */
  public static final int LONGEST = 64;

  private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");

  private static final Map<Character, String> SPELLED =
      Map.of('ß', "ss", 'æ', "ae", 'œ', "oe", 'ø', "o", 'ł', "l", 'đ', "d", 'ð', "d", 'þ', "th");

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
          Quoting.quote(text)
              + " cannot be a short name.\n"
              + "Use up to "
              + LONGEST
              + " lower-case letters a-z, digits and single hyphens, such as \"lupin-bun\".");
    }
    return text;
  }

  /**
   * Proposes a slug for a name: accents dropped, ligatures spelled out, other characters turned
   * into hyphens.
   *
   * @param name any name
   * @param fallback what to use when the name has no usable letter, as in Greek script
   * @return a slug
   */
  public static String of(String name, String fallback) {
    String plain = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    StringBuilder slug = new StringBuilder();
    for (int i = 0; i < plain.length() && slug.length() <= LONGEST; i++) {
      char c = plain.charAt(i);
      if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
        slug.append(c);
      } else if (SPELLED.containsKey(c)) {
        slug.append(SPELLED.get(c));
      } else if (Character.getType(c) != Character.NON_SPACING_MARK
          && slug.length() > 0
          && slug.charAt(slug.length() - 1) != '-') {
        slug.append('-');
      }
    }
    slug.setLength(Math.min(slug.length(), LONGEST));
    while (slug.length() > 0 && slug.charAt(slug.length() - 1) == '-') {
      slug.setLength(slug.length() - 1);
    }
    return slug.length() == 0 ? fallback : slug.toString();
  }
}
