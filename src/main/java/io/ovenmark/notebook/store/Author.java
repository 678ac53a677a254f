package io.ovenmark.notebook.store;

import java.util.Objects;

/**
 * Who made a commit.
 *
 * <p>Characters that Git cannot keep in a name or an address ({@code <}, {@code >} and control
 * characters) are dropped and white space at the ends is cut, so that an author read back equals
 * the author written. A name that is then empty becomes {@code unknown}.
 *
 * @param name the name, not null
 * @param email the address, not null, may be empty
 */
public record Author(String name, String email) {

  /** Cleans both parts as described above. */
  public Author {
    name = clean(Objects.requireNonNull(name, "name"));
    email = clean(Objects.requireNonNull(email, "email"));
    if (name.isEmpty()) {
      name = "unknown";
    }
  }

  private static String clean(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .filter(c -> c != '<' && c != '>' && !Character.isISOControl(c))
        .forEach(kept::appendCodePoint);
    return kept.toString().trim();
  }
}
