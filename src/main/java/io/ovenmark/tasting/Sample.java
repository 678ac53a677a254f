package io.ovenmark.tasting;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is tasted: a revision, and possibly the bake and the piece that the samples were cut from.
 *
 * @param address the revision as a person reads it, such as {@code lupin-bun@5}, not blank
 * @param blob Git blob id of the formula file, 40 hexadecimal digits: exactly what was weighed
 * @param bake name of the bake, {@code <date>-<n>}; empty when not noted
 * @param piece letter of the piece; only with a bake
 * @param extras unknown fields
 */
public record Sample(
    String address, String blob, Optional<String> bake, Optional<String> piece, Extras extras) {
  private static final Pattern BLOB = Pattern.compile("[0-9a-f]{40}");
  private static final Pattern BAKE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}-[0-9]{1,4}");
  private static final Pattern PIECE = Pattern.compile("[a-z0-9]{1,12}");
  private static final Pattern TEXT = Pattern.compile("([^:]+?)(?::([^/]+?)(?:/(.+))?)?");

  /** Checks the names. */
  public Sample {
    Faults.require(
        !address.isBlank(),
        "The sample names no revision.",
        "Write the address of what is tasted, such as lupin-bun@5.");
    checkedBlob(blob);
    bake.ifPresent(Sample::checkedBake);
    piece.ifPresent(Sample::checkedPiece);
    Faults.require(
        piece.isEmpty() || bake.isPresent(),
        "The sample names a piece but no bake.",
        "Name the bake that the piece is of, or leave the piece out.");
    requireNonNull(extras, "extras");
  }

  /**
   * A sample as a person writes it: {@code lupin-bun@5}, {@code lupin-bun@5:2026-09-14-1} or {@code
   * lupin-bun@5:2026-09-14-1/b}.
   *
   * @param address the revision, not yet looked up
   * @param bake name of the bake; empty when none is named
   * @param piece letter of the piece; empty when none is named
   */
  public record Named(String address, Optional<String> bake, Optional<String> piece) {
    /**
     * Reads it.
     *
     * @param text the text
     * @return what it names
     * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
     */
    public static Named parse(String text) {
      Matcher matcher = TEXT.matcher(text.strip());
      Faults.require(
          matcher.matches(),
          Quoting.quote(text) + " does not name a sample.",
          "Write a revision, possibly with its bake and piece, as in"
              + " lupin-bun@5:2026-09-14-1/b.");
      return new Named(
          matcher.group(1),
          Optional.ofNullable(matcher.group(2)).map(Sample::checkedBake),
          Optional.ofNullable(matcher.group(3)).map(Sample::checkedPiece));
    }
  }

  /**
   * The slug of the formula that is tasted.
   *
   * @return the address up to the variant or revision
   */
  public String formula() {
    return address.split("[/@]", 2)[0];
  }

  /**
   * The sample as a person writes it.
   *
   * @return such as {@code lupin-bun@5:2026-09-14-1/b}
   */
  public String text() {
    return address
        + bake.map(id -> ":" + id + piece.map(letter -> "/" + letter).orElse("")).orElse("");
  }

  static String checkedBlob(String blob) {
    Faults.require(
        BLOB.matcher(blob).matches(),
        Quoting.quote(blob) + " is not a Git object id.",
        "Write the 40 hexadecimal digits of the formula's blob, in small letters.");
    return blob;
  }

  static String checkedBake(String id) {
    Faults.require(
        BAKE.matcher(id).matches(),
        Quoting.quote(id) + " is not the name of a bake.",
        "Use the date and a number, such as 2026-09-14-1.");
    return id;
  }

  static String checkedPiece(String letter) {
    Faults.require(
        PIECE.matcher(letter).matches(),
        Quoting.quote(letter) + " is not the letter of a piece.",
        "Write one of the bake's pieces, such as b.");
    return letter;
  }
}
