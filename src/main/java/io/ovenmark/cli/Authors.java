package io.ovenmark.cli;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.Author;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Who commits something, and when. */
final class Authors {
  private static final Pattern NAME_AND_MAIL = Pattern.compile("([^<>]*)(?:<([^<>]*)>)?");

  private Authors() {}

  /**
   * Who and when.
   *
   * @param asked what {@code --author} says, or null
   * @param configured the author in Git's configuration
   */
  static By by(Surroundings surroundings, String asked, Supplier<Optional<Author>> configured) {
    Author author =
        asked != null
            ? parse(asked)
            : configured.get().orElseGet(() -> new Author(surroundings.account(), ""));
    return new By(author, OffsetDateTime.now(surroundings.clock()).truncatedTo(ChronoUnit.SECONDS));
  }

  private static Author parse(String text) {
    Matcher matcher = NAME_AND_MAIL.matcher(text.strip());
    if (!matcher.matches() || matcher.group(1).isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "--author",
          "The author needs a name and may have an address.",
          "Write it as in: --author \"Mara Quell <mara@saltmarsh.example>\"");
    }
    return new Author(matcher.group(1), matcher.group(2) == null ? "" : matcher.group(2));
  }
}
