package io.ovenmark.web;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.store.Author;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * In whose name a request writes: the name that the person at a paired device gave, else that of
 * the desk. A request is handled by one thread from the guard to the answer, which is how the name
 * gets from the one to the other.
 */
final class WhoWrites {
  /** A domain that never is one: RFC 2606, section 2. */
  private static final String NOWHERE = "@phone.invalid";

  private final ThreadLocal<String> name = new ThreadLocal<>();

  /** Says from whom the request comes that this thread handles now. */
  void is(Visitor visitor) {
    Optional<String> given =
        visitor.device().map(Pairings.Device::name).filter(text -> !text.isEmpty());
    if (given.isPresent()) {
      name.set(given.get());
    } else {
      name.remove();
    }
  }

  /** The same time, and the author by the request. */
  Supplier<By> instead(Supplier<By> desk) {
    return () -> {
      By by = desk.get();
      String given = name.get();
      return given == null || given.equals(by.author().name())
          ? by
          : new By(new Author(given, mail(given)), by.time());
    };
  }

  private static String mail(String name) {
    String words = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", ".");
    return words.replaceAll("^\\.|\\.$", "") + NOWHERE;
  }
}
