package io.ovenmark.change;

import io.ovenmark.json.Extras;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/** Decides single values of a merge by the rule of three and gathers what it cannot decide. */
final class Pick {
  private final Map<String, Choice> chosen;
  private final List<Conflict> open = new ArrayList<>();

  Pick(Map<String, Choice> chosen) {
    this.chosen = chosen;
  }

  List<Conflict> open() {
    return open;
  }

  /** A value that compares with equals. */
  <T> T value(String path, String what, Three<T> sides, Function<T, Optional<String>> text) {
    return value(path, what, sides, Object::equals, text);
  }

  /** An optional text. */
  Optional<String> text(String path, String what, Three<Optional<String>> sides) {
    return value(path, what, sides, Function.identity());
  }

  /**
   * What both sides agree on, else what the one side made of it that changed it, else the choice of
   * a person, else our version and an open conflict.
   */
  <T> T value(
      String path,
      String what,
      Three<T> sides,
      BiPredicate<? super T, ? super T> same,
      Function<? super T, Optional<String>> text) {
    if (same.test(sides.ours(), sides.theirs()) || same.test(sides.base(), sides.theirs())) {
      return sides.ours();
    }
    if (same.test(sides.base(), sides.ours())) {
      return sides.theirs();
    }
    Choice choice = chosen.get(path);
    if (choice != null) {
      return sides.on(choice);
    }
    Three<Optional<String>> texts = sides.map(text);
    open.add(
        new Conflict(path, sentence(what, texts), texts.base(), texts.ours(), texts.theirs()));
    return sides.ours();
  }

  /** Unknown fields, name by name; ours first, then those that only theirs has. */
  Extras extras(String path, String owner, Three<Extras> sides) {
    Extras result = sides.ours();
    for (String name : Same.extraNames(sides.base(), sides.ours(), sides.theirs())) {
      Extras from =
          value(
              path + "extras." + name,
              "the other field " + Texts.quoted(name) + owner,
              sides,
              (a, b) -> Same.extra(name, a, b),
              extras -> Same.extraText(name, extras));
      result = result.with(name, from);
    }
    return result;
  }

  private static String sentence(String what, Three<Optional<String>> texts) {
    String subject = Texts.capital(what);
    if (texts.base().isEmpty()) {
      return subject
          + " was added on both sides, as "
          + part(texts.ours())
          + " and as "
          + part(texts.theirs())
          + ".";
    }
    String before = " (" + part(texts.base()) + ")";
    if (texts.ours().isEmpty() || texts.theirs().isEmpty()) {
      Optional<String> kept = texts.ours().isEmpty() ? texts.theirs() : texts.ours();
      return subject
          + before
          + " was removed on one side and changed to "
          + part(kept)
          + " on the other.";
    }
    return subject
        + before
        + " was changed on both sides, to "
        + part(texts.ours())
        + " and to "
        + part(texts.theirs())
        + ".";
  }

  private static String part(Optional<String> text) {
    return text.map(Texts::quoted).orElse("nothing");
  }
}
