package io.ovenmark.paste;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells by its words what a line of a pasted block is. */
final class LineKinds {
  /** The parts that a pasted block may have. */
  enum Part {
    /** Before anything else. */
    START,
    /** The ingredients. */
    INGREDIENTS,
    /** The steps. */
    METHOD,
    /** What stands beside. */
    NOTES
  }

  private static final Set<String> INGREDIENTS =
      Set.of("ingredients", "ingredient list", "you will need", "you'll need", "what you need");
  private static final Set<String> METHOD =
      Set.of(
          "method", "instructions", "directions", "preparation", "steps", "procedure",
          "how to make it", "what to do", "making");
  private static final Set<String> NOTES =
      Set.of(
          "notes", "note", "tips", "tip", "storage", "nutrition", "nutrition facts",
          "nutrition information", "equipment", "comments");
  private static final Pattern INLINE_METHOD =
      Pattern.compile("(?:method|instructions?|directions?)\\s*:\\s+(\\S.*)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern DETAIL =
      Pattern.compile(
          "(?:(?:prep(?:aration)?|cook(?:ing)?|bak(?:e|ing)|total|rest(?:ing)?|active|inactive"
              + "|proof(?:ing)?|rising|hands[- ]on)\\s+time\\b.*"
              + "|(?:notes?|tips?|oven|temperature|oven temperature|calories|author|by|source"
              + "|course|cuisine|difficulty|category|keywords|rating|time|equipment)\\s*:\\s*\\S.*"
              + "|https?://\\S+)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern FOR_THE =
      Pattern.compile("for the \\p{L}[\\p{L} ]{1,40}", Pattern.CASE_INSENSITIVE);
  private static final Pattern VERB =
      Pattern.compile(
          "(?:pre-?heat|heat|mix|whisk|stir|combine|add|fold|knead|let|leave|place|put|pour|shape"
              + "|divide|roll|beat|cream (?:the|butter|together)|melt|cool|serve|sift|line|grease"
              + "|cut|brush|sprinkle|rest|cover|turn|remove|transfer|proof|prove|warm|weigh|blend"
              + "|boil|bring|chill|dissolve|soak|spread|work|form|press|when|once|then|bake|make"
              + "|using|in an?|if|gently|meanwhile|scatter|set|score|store|allow|repeat)\\b.*",
          Pattern.CASE_INSENSITIVE);
  private static final int LONGEST_HEADING = 60;
  private static final int LEAST_WORDS = 4;
  private static final int SENTENCE_WORDS = 7;
  private static final int LONG_SENTENCE_WORDS = 10;

  private LineKinds() {}

  /** The part that a line heads, if it is such a heading. */
  static Optional<Part> part(String tidy) {
    if (tidy.length() > LONGEST_HEADING) {
      return Optional.empty();
    }
    String word =
        tidy.toLowerCase(Locale.ROOT).replace('’', '\'').replaceAll("^[^\\p{L}]+|[^\\p{L}]+$", "");
    if (INGREDIENTS.contains(word)) {
      return Optional.of(Part.INGREDIENTS);
    }
    if (METHOD.contains(word)) {
      return Optional.of(Part.METHOD);
    }
    return NOTES.contains(word) ? Optional.of(Part.NOTES) : Optional.empty();
  }

  /** The first step on the line of its own heading, as in "Method: Mix everything." */
  static Optional<String> inlineStep(String tidy) {
    Matcher matcher = INLINE_METHOD.matcher(tidy);
    return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
  }

  /** A fact beside the formula, such as a time or a source. */
  static boolean isDetail(String tidy) {
    return tidy.length() <= PasteText.LONGEST_LINE && DETAIL.matcher(tidy).matches();
  }

  /** The name of a heading within a part, such as "For the topping:". */
  static Optional<String> heading(String tidy) {
    String text = PasteText.withoutBullet(tidy);
    if (text.length() > LONGEST_HEADING || text.length() < 2) {
      return Optional.empty();
    }
    if (text.endsWith(":")) {
      return Optional.of(text.substring(0, text.length() - 1).strip());
    }
    boolean marked = tidy.startsWith("#") || tidy.startsWith("**") && tidy.endsWith("**");
    return marked || FOR_THE.matcher(text).matches() ? Optional.of(text) : Optional.empty();
  }

  /** Whether a line without small letters and digits shouts like a heading. */
  static boolean isShouted(String tidy) {
    return tidy.length() <= LONGEST_HEADING
        && tidy.chars().anyMatch(Character::isUpperCase)
        && tidy.chars().noneMatch(c -> Character.isLowerCase(c) || Character.isDigit(c));
  }

  /** Whether a line tells what to do. */
  static boolean isStep(String tidy) {
    boolean numbered = PasteText.isNumbered(tidy);
    String text = PasteText.withoutNumber(tidy);
    int words = PasteText.words(text);
    boolean sentence = text.endsWith(".") || text.endsWith("!");
    return words >= LEAST_WORDS
        && (numbered || sentence || words >= SENTENCE_WORDS)
        && VERB.matcher(text).matches();
  }

  /** Whether a line is a sentence and no list item. */
  static boolean isSentence(String tidy) {
    return PasteText.words(tidy) >= LONG_SENTENCE_WORDS && tidy.matches("(?s)\\p{L}.*[.!?]");
  }
}
