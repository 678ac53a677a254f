package io.ovenmark.paste;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a line of text that moves on as patterns are found there. */
final class Scan {
  private final String text;
  private int at;
  private Matcher found;

  Scan(String text) {
    this.text = text;
  }

  /** Moves past a pattern if it stands here. */
  boolean eat(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    matcher.useTransparentBounds(true).useAnchoringBounds(false);
    if (!matcher.lookingAt()) {
      return false;
    }
    found = matcher;
    at = matcher.end();
    return true;
  }

  /** A group of what was eaten last. */
  Optional<String> group(int group) {
    return Optional.ofNullable(found.group(group));
  }

  int at() {
    return at;
  }

  void back(int to) {
    at = to;
  }

  boolean atEnd() {
    return text.substring(at).isBlank();
  }

  String rest() {
    return text.substring(at);
  }
}
