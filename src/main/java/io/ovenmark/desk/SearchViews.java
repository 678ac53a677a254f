package io.ovenmark.desk;

import io.ovenmark.search.Words;
import java.util.List;

/** The records of what is found in the history; see {@link Views} for how they are written. */
public final class SearchViews {
  private SearchViews() {}

  /**
   * What was found.
   *
   * @param asked what was looked for
   * @param count how many revisions and bakes were found
   * @param formulas the formulas in which something was found, best first; not more than {@code
   *     most}
   * @param formulaCount in how many formulas something was found
   * @param narrow words with which to look more closely
   * @param unread how many revisions and bakes have not been read for searching yet, so that words
   *     in them were not found
   */
  public record Found(
      AskedView asked,
      int count,
      List<FoundFormula> formulas,
      int formulaCount,
      Narrow narrow,
      int unread) {}

  /**
   * What was looked for; a part that was not stated is null.
   *
   * @param words words
   * @param finding words of a finding
   * @param ingredient a food
   * @param person a name
   * @param since first day
   * @param until last day
   * @param formula a formula or variant
   * @param kinds what must be so of the revision
   */
  public record AskedView(
      String words,
      String finding,
      String ingredient,
      String person,
      String since,
      String until,
      String formula,
      List<String> kinds) {}

  /**
   * What was found in one formula.
   *
   * @param formula short name
   * @param name name for people
   * @param count how many revisions and bakes
   * @param hits the newest of them, newest first
   */
  public record FoundFormula(String formula, String name, int count, List<Hit> hits) {}

  /**
   * A revision or a bake that was found.
   *
   * @param kind {@code revision} or {@code bake}
   * @param address address of the revision, or of the one that was baked
   * @param variant name of the variant, or null
   * @param revision number of the revision
   * @param bake name of the bake, or null for a revision
   * @param time when it was committed or went into the oven
   * @param person who committed or baked, or null
   * @param title the revision's note; for a bake that of its revision, unmarked
   * @param findings faults and merits of the bake; empty for a revision
   * @param passages where the words stand
   * @param changes what the revision changed of the ingredient that was looked for
   */
  public record Hit(
      String kind,
      String address,
      String variant,
      int revision,
      String bake,
      String time,
      String person,
      List<Words.Run> title,
      List<FoundFinding> findings,
      List<PassageView> passages,
      List<String> changes) {}

  /**
   * A fault or merit of a bake that was found.
   *
   * @param word the word
   * @param merit true for a merit, false for a fault, null for free words
   * @param runs the word in pieces, those marked that were looked for
   */
  public record FoundFinding(String word, Boolean merit, List<Words.Run> runs) {}

  /**
   * A text with the words that were looked for.
   *
   * @param place what text it is, such as {@code method step}
   * @param runs its pieces
   */
  public record PassageView(String place, List<Words.Run> runs) {}

  /**
   * Words with which to narrow what was found, most frequent first.
   *
   * @param findings findings of the bakes
   * @param ingredients foods that the revisions changed
   * @param people who committed or baked
   */
  public record Narrow(List<Choice> findings, List<Choice> ingredients, List<Choice> people) {}

  /**
   * A word to narrow with.
   *
   * @param value what to ask for
   * @param words how it is called
   * @param count how often it was found
   */
  public record Choice(String value, String words, int count) {}

  /**
   * The revisions of a timeline that fit.
   *
   * @param formula short name
   * @param variant the variant asked for, or null for all lines of history
   * @param revisions how many there are in all
   * @param addresses addresses of those that fit, newest first
   * @param narrow words with which to look more closely
   */
  public record Filtered(
      String formula, String variant, int revisions, List<String> addresses, Narrow narrow) {}
}
