package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the revisions of a timeline that fit, each taken together with its bakes: those that
 * changed an ingredient, whose bakes had a finding, by a person, within a time.
 */
public final class FilterTimeline {
  private static final int MOST_CHOICES = 200;

  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public FilterTimeline(Desk desk) {
    this.desk = desk;
  }

  /**
   * Filters a timeline.
   *
   * @param line a formula, for its main line with all variants, or one variant, for its line of
   *     history from the beginning
   * @param search what must hold; its own formula does not count
   * @return the revisions that fit, by their times, newest first
   */
  public SearchViews.Filtered call(Address line, Search search) {
    SearchShelf shelf = desk.searchShelf();
    shelf.read(shelf.unread(line.formula()), Progress.UNWATCHED);
    SearchShelf.View view = shelf.view();
    SearchMatches matches = new SearchMatches(desk, anywhere(search), view);
    int fork = line.variant().isPresent() ? desk.notebook().forkNumber(line) : 0;
    List<SearchShelf.Step> fit = new ArrayList<>();
    SearchNarrow narrow = new SearchNarrow();
    Set<SearchShelf.Tray> trays = new HashSet<>();
    int all = 0;
    for (SearchShelf.Step step : view.stepsOf(line.formula())) {
      if (isOn(line, fork, step)) {
        all++;
        narrow.add(step);
        view.traysOf(step).stream().filter(trays::add).forEach(narrow::add);
        if (matches.withBakes(step)) {
          fit.add(step);
        }
      }
    }
    fit.sort(Comparator.comparing((SearchShelf.Step step) -> step.revision().time()).reversed());
    return new SearchViews.Filtered(
        line.formula(),
        line.variant().orElse(null),
        all,
        fit.stream().map(step -> address(line, step)).toList(),
        narrow.view(view, MOST_CHOICES));
  }

  /** On the line of a variant the revisions before its fork bear the variant's name, too. */
  private static String address(Address line, SearchShelf.Step step) {
    return line.variant().isPresent()
        ? line.at(step.revision().number()).toString()
        : step.revision().address().toString();
  }

  private static Search anywhere(Search search) {
    return new Search(
        search.words(),
        search.finding(),
        search.ingredient(),
        search.person(),
        search.since(),
        search.until(),
        Optional.empty(),
        search.kinds());
  }

  /** A variant's line begins with the main line up to its fork. */
  private static boolean isOn(Address line, int fork, SearchShelf.Step step) {
    Address address = step.revision().address();
    if (!step.formula().equals(line.formula())) {
      return false;
    }
    return line.variant().isEmpty()
        || address.variant().equals(line.variant())
        || (address.variant().isEmpty() && step.revision().number() <= fork);
  }
}
