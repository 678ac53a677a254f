package io.ovenmark.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The little of HTML that is needed to get at the data in a page and at plain text in a string. */
final class HtmlText {
  private static final String SCRIPT = "<script";
  private static final String END = "</script";
  private static final String TYPE = "application/ld+json";
  private static final Pattern BREAK =
      Pattern.compile("<(?:br|/?p|/?li|/?div|/?ol|/?ul|/?h[1-6])\\b[^<>]{0,500}>",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern TAG = Pattern.compile("</?[a-zA-Z][^<>]{0,500}>");
  private static final Pattern ENTITY =
      Pattern.compile("&(#\\d{1,7}|#[xX][0-9a-fA-F]{1,6}|[a-zA-Z][a-zA-Z0-9]{1,9});");
  private static final Map<String, String> NAMED =
      Map.ofEntries(
          Map.entry("amp", "&"),
          Map.entry("lt", "<"),
          Map.entry("gt", ">"),
          Map.entry("quot", "\""),
          Map.entry("apos", "'"),
          Map.entry("nbsp", " "),
          Map.entry("deg", "°"),
          Map.entry("frac12", "½"),
          Map.entry("frac14", "¼"),
          Map.entry("frac34", "¾"),
          Map.entry("times", "×"),
          Map.entry("ndash", "–"),
          Map.entry("mdash", "—"),
          Map.entry("rsquo", "’"),
          Map.entry("lsquo", "‘"),
          Map.entry("eacute", "é"),
          Map.entry("egrave", "è"));

  private HtmlText() {}

  /**
   * A part of a text and how many lines stand before it.
   *
   * @param text the part
   * @param linesBefore for telling places in the whole
   */
  record Block(String text, int linesBefore) {}

  /** The contents of the script elements of a page that hold JSON-LD. */
  static List<Block> jsonLd(String page) {
    List<Block> blocks = new ArrayList<>();
    int counted = 0;
    int newlines = 0;
    for (int at = find(page, SCRIPT, 0); at >= 0; at = find(page, SCRIPT, at + 1)) {
      int open = page.indexOf('>', at);
      int end = open < 0 ? -1 : find(page, END, open);
      if (open < 0) {
        break;
      }
      if (find(page.substring(at, open), TYPE, 0) >= 0) {
        for (; counted <= open; counted++) {
          newlines += page.charAt(counted) == '\n' ? 1 : 0;
        }
        String inside = page.substring(open + 1, end < 0 ? page.length() : end);
        blocks.add(new Block(inside, newlines));
      }
      at = end < 0 ? page.length() : end;
    }
    return blocks;
  }

  private static int find(String text, String lower, int from) {
    for (int i = from; i <= text.length() - lower.length(); i++) {
      if (text.regionMatches(true, i, lower, 0, lower.length())) {
        return i;
      }
    }
    return -1;
  }

  /** The lines of a string that may hold tags and entities, tidy, without empty ones. */
  static List<String> lines(String text) {
    String broken = BREAK.matcher(text).replaceAll("\n");
    return PasteText.lines(entities(TAG.matcher(broken).replaceAll("")), Integer.MAX_VALUE).stream()
        .map(PasteText::tidy)
        .filter(line -> !line.isEmpty())
        .toList();
  }

  /** A string on one line, without tags and entities. */
  static String plain(String text) {
    return String.join(" ", lines(text));
  }

  private static String entities(String text) {
    return ENTITY
        .matcher(text)
        .replaceAll(found -> Matcher.quoteReplacement(entity(found.group(1), found.group())));
  }

  private static String entity(String name, String whole) {
    if (name.charAt(0) != '#') {
      return NAMED.getOrDefault(name, whole);
    }
    boolean hex = name.charAt(1) == 'x' || name.charAt(1) == 'X';
    int code = Integer.parseInt(name.substring(hex ? 2 : 1), hex ? 16 : 10);
    return Optional.of(code)
        .filter(c -> Character.isValidCodePoint(c) && c != 0)
        .map(Character::toString)
        .orElse(whole);
  }
}
