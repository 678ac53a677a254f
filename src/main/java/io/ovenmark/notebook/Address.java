package io.ovenmark.notebook;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Slug;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a formula stands in its history: {@code lupin-bun} (its latest revision), {@code
 * lupin-bun@5}, {@code lupin-bun/egg-free@7}, {@code lupin-bun@4f2a91c} (the state at a commit) or
 * {@code lupin-bun@edited} (the file on disk that is not yet a revision). The only reader and
 * writer of addresses: command line, pages and files all use it. {@code toString} is what {@link
 * #parse} reads.
 *
 * @param formula slug of the formula
 * @param variant name of the variant; empty for the main line
 * @param point which state; {@link Point#LATEST} for the newest
 */
public record Address(String formula, Optional<String> variant, Point point) {
  private static final Pattern SHAPE =
      Pattern.compile("([a-z0-9-]+)(?:/([a-z0-9-]+))?(?:@([A-Za-z0-9]+))?");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}");
  private static final Pattern COMMIT = Pattern.compile("[0-9a-f]{7,40}");
  private static final Pattern DIGITS = Pattern.compile("[0-9-]+");
  private static final int GREATEST_NUMBER = 999_999;

  /**
   * Which state of a formula.
   *
   * @param kind how it is named
   * @param number the revision's number when numbered, 0 to 999999, else 0
   * @param commit 7 to 40 lower-case hexadecimal digits when named by a commit, else empty
   */
  public record Point(Kind kind, int number, String commit) {
    /** The newest revision. */
    public static final Point LATEST = new Point(Kind.LATEST, 0, "");

    /** The file on disk. */
    public static final Point EDITED = new Point(Kind.EDITED, 0, "");

    /** Checks that the parts fit the kind. */
    public Point {
      boolean fits =
          switch (kind) {
            case LATEST, EDITED -> number == 0 && commit.isEmpty();
            case NUMBERED -> number >= 0 && number <= GREATEST_NUMBER && commit.isEmpty();
            case COMMIT -> number == 0 && COMMIT.matcher(commit).matches();
          };
      if (!fits) {
        throw new IllegalArgumentException(
            "There is no state \"" + commit + number + "\" of a formula.\n"
                + "Use a number from 1 to " + GREATEST_NUMBER
                + " or 7 to 40 digits of a commit id.");
      }
    }

    /** How a state is named. */
    public enum Kind {
      /** The newest revision. */
      LATEST,
      /** A revision by its number. */
      NUMBERED,
      /** The state at a commit. */
      COMMIT,
      /** The file on disk, edited by hand. */
      EDITED
    }
  }

  /** Checks the names. */
  public Address {
    Slug.check(formula);
    requireNonNull(point, "point");
    variant.ifPresent(Address::checkVariant);
  }

  /**
   * Checks a variant's name: a slug with at least one letter, so that it is never taken for a
   * number.
   *
   * @param name the name
   * @return the same name
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static String checkVariant(String name) {
    Slug.check(name);
    if (DIGITS.matcher(name).matches()) {
      throw new IllegalArgumentException(
          "\"" + name + "\" cannot name a variant.\nUse a word, such as \"egg-free\".");
    }
    return name;
  }

  /** Whether a name is one that a variant can have. */
  static boolean isVariant(String name) {
    return Slug.isSlug(name) && !DIGITS.matcher(name).matches();
  }

  /**
   * Reads an address.
   *
   * @param text such as {@code lupin-bun/egg-free@7}
   * @return the address
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Address parse(String text) {
    Matcher matcher = SHAPE.matcher(text.strip());
    if (text.length() > 200 || !matcher.matches()) {
      throw bad(text);
    }
    Point point = matcher.group(3) == null ? Point.LATEST : point(text, matcher.group(3));
    return new Address(matcher.group(1), Optional.ofNullable(matcher.group(2)), point);
  }

  private static Point point(String text, String word) {
    if (word.equals("latest")) {
      return Point.LATEST;
    }
    if (word.equals("edited")) {
      return Point.EDITED;
    }
    if (NUMBER.matcher(word).matches()) {
      return new Point(Point.Kind.NUMBERED, Integer.parseInt(word), "");
    }
    String commit = word.toLowerCase(Locale.ROOT);
    if (COMMIT.matcher(commit).matches()) {
      return new Point(Point.Kind.COMMIT, 0, commit);
    }
    throw bad(text);
  }

  private static IllegalArgumentException bad(String text) {
    String shown = text.length() > 60 ? text.substring(0, 60) + "…" : text;
    return new IllegalArgumentException(
        "\"" + shown + "\" is not an address.\n"
            + "Write a formula, a variant and a revision as in \"lupin-bun/egg-free@7\".");
  }

  /**
   * The newest revision of a line of history.
   *
   * @param formula slug of the formula
   * @param variant name of the variant; empty for the main line
   * @return the address
   */
  public static Address latest(String formula, Optional<String> variant) {
    return new Address(formula, variant, Point.LATEST);
  }

  /**
   * The same line of history at a numbered revision.
   *
   * @param number 1 or more
   * @return the address
   */
  public Address at(int number) {
    return new Address(formula, variant, new Point(Point.Kind.NUMBERED, number, ""));
  }

  /**
   * The same line of history at a commit.
   *
   * @param commit 7 to 40 hexadecimal digits
   * @return the address
   * @throws IllegalArgumentException when it is no such id
   */
  public Address atCommit(String commit) {
    return new Address(
        formula, variant, new Point(Point.Kind.COMMIT, 0, commit.toLowerCase(Locale.ROOT)));
  }

  /**
   * The line of history without the state.
   *
   * @return such as {@code lupin-bun/egg-free}
   */
  public String line() {
    return variant.map(name -> formula + "/" + name).orElse(formula);
  }

  /**
   * The Git branch that holds the line of history.
   *
   * @return {@code main} or {@code variant/<formula>/<name>}
   */
  public String branch() {
    return variant.map(name -> Layout.variantBranch(formula, name)).orElse(Layout.MAIN);
  }

  @Override
  public String toString() {
    return switch (point.kind()) {
      case LATEST -> line();
      case NUMBERED -> line() + "@" + point.number();
      case COMMIT -> line() + "@" + point.commit();
      case EDITED -> line() + "@edited";
    };
  }
}
