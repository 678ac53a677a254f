package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is looked for in the history. All that is stated must hold.
 *
 * @param words words, each of which must begin a word of a text; blank for none
 * @param finding words of a finding on the bake
 * @param ingredient short name or words of a food that the revision changed
 * @param person words of the name of who committed or baked
 * @param since first day, as noted where it happened
 * @param until last day
 * @param line a formula with all its lines of history, or one variant
 * @param kinds what must be so of the revision
 */
public record Search(
    String words,
    Optional<String> finding,
    Optional<String> ingredient,
    Optional<String> person,
    Optional<LocalDate> since,
    Optional<LocalDate> until,
    Optional<Address> line,
    Set<Kind> kinds) {
  private static final int LONGEST = 200;

  /** What may be asked of a revision. */
  public enum Kind {
    /** It has bakes. */
    BAKED,
    /** It was published. */
    PUBLISHED,
    /** It takes an earlier one back. */
    RESTORED,
    /** It carries the main line over. */
    CARRIED,
    /** The stages in the oven changed in it. */
    OVEN,
    /** The method changed in it. */
    METHOD;

    /**
     * The word for programs.
     *
     * @return such as {@code baked}
     */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * The same as a person states it; a part may be null or blank.
   *
   * @param words see {@link Search}
   * @param finding see {@link Search}
   * @param ingredient see {@link Search}
   * @param person see {@link Search}
   * @param since a day, such as {@code 2026-03-01}
   * @param until a day
   * @param formula a formula or variant
   * @param kinds words of {@link Kind}
   */
  public record Texts(
      String words,
      String finding,
      String ingredient,
      String person,
      String since,
      String until,
      String formula,
      List<String> kinds) {}

  /** Copies the kinds. */
  public Search {
    requireNonNull(words, "words");
    kinds = Set.copyOf(kinds);
  }

  /**
   * Looks for words alone.
   *
   * @param words the words
   * @return the search
   */
  public static Search forWords(String words) {
    return new Search(
        words,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of());
  }

  /**
   * Reads what a person asks for.
   *
   * @param desk the desk on which it is looked for
   * @param texts what was stated
   * @return the search
   * @throws Refusal when a day is none, there is no such formula, or words are too many
   */
  public static Search read(Desk desk, Texts texts) {
    Optional<LocalDate> since = day("since", texts.since());
    Optional<LocalDate> until = day("until", texts.until());
    if (since.isPresent() && until.isPresent() && until.get().isBefore(since.get())) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "until",
          "The time ends on " + until.get() + ", before it begins on " + since.get() + ".",
          "Exchange the two days.");
    }
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    texts.kinds().forEach(word -> kinds.add(kind(word)));
    return new Search(
        stated("words", texts.words()).orElse(""),
        stated("finding", texts.finding()),
        stated("ingredient", texts.ingredient()),
        stated("person", texts.person()),
        since,
        until,
        stated("formula", texts.formula()).map(desk::address),
        kinds);
  }

  /**
   * Whether nothing was stated but perhaps the formula.
   *
   * @return true when everything fits
   */
  public boolean isOpen() {
    return words.isBlank()
        && finding.isEmpty()
        && ingredient.isEmpty()
        && person.isEmpty()
        && since.isEmpty()
        && until.isEmpty()
        && kinds.isEmpty();
  }

  private static Optional<String> stated(String where, String text) {
    if (text != null && text.length() > LONGEST) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          where,
          "That is longer than the " + LONGEST + " characters that are looked for.",
          "Leave out all but the words that matter.");
    }
    return Optional.ofNullable(text).map(String::strip).filter(words -> !words.isEmpty());
  }

  private static Optional<LocalDate> day(String where, String text) {
    try {
      return stated(where, text).map(LocalDate::parse);
    } catch (DateTimeException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          where,
          "\"" + text.strip() + "\" is not a day.",
          "Write it as year, month and day, such as 2026-03-01.");
    }
  }

  private static Kind kind(String word) {
    for (Kind kind : Kind.values()) {
      if (kind.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
        return kind;
      }
    }
    throw new Refusal(
        Refusal.Reason.INVALID,
        "kind",
        "There is no kind of revision \"" + word + "\".",
        "Choose baked, published, restored, carried, oven or method.");
  }
}
