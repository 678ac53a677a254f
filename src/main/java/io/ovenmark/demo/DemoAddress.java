package io.ovenmark.demo;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Slug;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A revision of the demo, written as in the notebook: {@code wheat-bun@2}, {@code
 * seeded-lupin-bun/egg-free@8}.
 *
 * @param formula slug of the formula
 * @param variant name of the variant; empty for the main line
 * @param revision number of the revision, from 1; a variant goes on counting from where it forked
 */
public record DemoAddress(String formula, Optional<String> variant, int revision) {
  private static final Pattern SHAPE = Pattern.compile("([^/@]+)(?:/([^/@]+))?@([1-9]\\d{0,3})");

  /** Checks the parts. */
  public DemoAddress {
    Slug.check(formula);
    requireNonNull(variant, "variant");
    variant.ifPresent(Slug::check);
    if (revision < 1) {
      throw new IllegalArgumentException(
          "There is no revision " + revision + ".\nCount revisions from 1.");
    }
  }

  /**
   * Reads an address.
   *
   * @param text such as {@code seeded-lupin-bun/egg-free@8}
   * @return the address
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static DemoAddress parse(String text) {
    Matcher matcher = SHAPE.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not the address of a revision.\n"
              + "Write it as in wheat-bun@2 or seeded-lupin-bun/egg-free@8.");
    }
    return new DemoAddress(
        matcher.group(1),
        Optional.ofNullable(matcher.group(2)),
        Integer.parseInt(matcher.group(3)));
  }

  /**
   * The line of history that the revision belongs to.
   *
   * @return the address without its number, such as {@code seeded-lupin-bun/egg-free}
   */
  public String line() {
    return formula + variant.map(name -> "/" + name).orElse("");
  }

  /** The address as it is written. */
  @Override
  public String toString() {
    return line() + "@" + revision;
  }
}
