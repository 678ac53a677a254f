package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Revision;
import io.ovenmark.search.Passage;
import io.ovenmark.search.Words;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds revisions and bakes by words in notes, method steps, ingredients, findings, verdicts and
 * captions, of all formulas, variants and revisions, also old ones.
 *
 * <p>With a finding only bakes are found, with an ingredient or a kind of revision and no finding
 * only revisions, else both. A text is found where it came in: an old method step at the revision
 * that wrote it. Formulas that were deleted and have no variant are not searched.
 *
 * <pre>{@code
 * SearchViews.Found found = new FindInHistory(desk).call(Search.forWords("gummy"), 10);
 * }</pre>
 */
public final class FindInHistory {
  /** So many are read in some tenths of a second. */
  private static final int QUICK = 500;

  private static final int MOST_FORMULAS = 20;
  private static final int MOST_PASSAGES = 4;
  private static final int MOST_CHOICES = 8;

  private final Desk desk;

  /** What was found in one formula, newest first. */
  private static final class Group {
    private final List<Found> found = new ArrayList<>();
    private boolean whole;
  }

  /** A revision or a bake; the other one is null. */
  private record Found(SearchShelf.Step step, SearchShelf.Tray tray, OffsetDateTime time) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public FindInHistory(Desk desk) {
    this.desk = desk;
  }

  /**
   * Reads the whole history for searching, as far as that has not been done before. What was read
   * is kept, also when it is cancelled.
   *
   * @param progress told how many revisions and bakes have been read
   */
  public void read(Progress progress) {
    SearchShelf shelf = desk.searchShelf();
    shelf.read(shelf.unread(), progress);
  }

  /** Reads the history unless that would take more than a moment. */
  public void readIfQuick() {
    SearchShelf shelf = desk.searchShelf();
    int unread = shelf.view().unread();
    if (unread > 0 && unread <= QUICK) {
      read(Progress.UNWATCHED);
    }
  }

  /**
   * Looks for something in what has been read.
   *
   * @param search what to look for
   * @param mostHits how many revisions and bakes to tell for each formula at most
   * @return what was found
   */
  public SearchViews.Found call(Search search, int mostHits) {
    SearchShelf.View view = desk.searchShelf().view();
    SearchMatches matches = new SearchMatches(desk, search, view);
    Map<String, Group> groups = new LinkedHashMap<>();
    SearchNarrow narrow = new SearchNarrow();
    int count = 0;
    for (SearchShelf.Step step : view.steps()) {
      if (matches.step(step)) {
        add(groups, step.formula(), new Found(step, null, step.revision().time()))
            .whole |= matches.words().areWholeIn(step.searchable());
        narrow.add(step);
        count++;
      }
    }
    for (SearchShelf.Tray tray : view.trays()) {
      if (matches.tray(tray)) {
        add(groups, tray.formula(), new Found(null, tray, tray.facts().time()))
            .whole |= matches.words().areWholeIn(tray.searchable());
        narrow.add(tray);
        count++;
      }
    }
    groups.values().forEach(g -> g.found.sort(Comparator.comparing(Found::time).reversed()));
    List<SearchViews.FoundFormula> formulas =
        groups.entrySet().stream()
            .sorted(
                Comparator.comparing((Map.Entry<String, Group> each) -> !each.getValue().whole)
                    .thenComparing(
                        each -> each.getValue().found.get(0).time(), Comparator.reverseOrder()))
            .limit(MOST_FORMULAS)
            .map(each -> formula(each.getKey(), each.getValue(), mostHits, view, matches))
            .toList();
    return new SearchViews.Found(
        asked(search),
        count,
        formulas,
        groups.size(),
        narrow.view(view, MOST_CHOICES),
        view.unread());
  }

  private static Group add(Map<String, Group> groups, String formula, Found found) {
    Group group = groups.computeIfAbsent(formula, slug -> new Group());
    group.found.add(found);
    return group;
  }

  /** What was looked for, as programs see it. */
  static SearchViews.AskedView asked(Search search) {
    return new SearchViews.AskedView(
        search.words().isBlank() ? null : search.words(),
        search.finding().orElse(null),
        search.ingredient().orElse(null),
        search.person().orElse(null),
        search.since().map(String::valueOf).orElse(null),
        search.until().map(String::valueOf).orElse(null),
        search.line().map(Address::line).orElse(null),
        search.kinds().stream().sorted().map(Search.Kind::word).toList());
  }

  private SearchViews.FoundFormula formula(
      String slug, Group group, int mostHits, SearchShelf.View view, SearchMatches matches) {
    List<SearchViews.Hit> hits =
        group.found.stream()
            .limit(mostHits)
            .map(
                found ->
                    found.step() != null
                        ? hit(found.step(), view, matches)
                        : hit(found.tray(), view, matches))
            .toList();
    return new SearchViews.FoundFormula(slug, name(slug, view), group.found.size(), hits);
  }

  /** What the formula is called in its newest readable revision, of the main line if it has one. */
  private String name(String slug, SearchShelf.View view) {
    List<SearchShelf.Step> steps = view.stepsOf(slug);
    boolean main = steps.stream().anyMatch(FindInHistory::isOnMain);
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (!main || isOnMain(steps.get(i))) {
        Optional<Formula> formula = desk.readable(steps.get(i).revision());
        if (formula.isPresent()) {
          return formula.get().name();
        }
      }
    }
    return slug;
  }

  private static boolean isOnMain(SearchShelf.Step step) {
    return step.revision().address().variant().isEmpty();
  }

  private SearchViews.Hit hit(
      SearchShelf.Step step, SearchShelf.View view, SearchMatches matches) {
    Revision revision = step.revision();
    List<Passage> passages = new ArrayList<>();
    if (!revision.details().isEmpty()) {
      passages.add(new Passage(Passage.Place.NOTE, revision.details()));
    }
    passages.addAll(step.facts().passages());
    for (String food : step.facts().foods()) {
      passages.add(new Passage(Passage.Place.INGREDIENT, view.foodName(food)));
    }
    List<Words.Run> note = matches.words().marked(revision.note());
    return new SearchViews.Hit(
        "revision",
        revision.address().toString(),
        revision.address().variant().orElse(null),
        revision.number(),
        null,
        Json.time(revision.time()),
        revision.author().name(),
        note.isEmpty() ? Words.beginning(revision.note()) : note,
        List.of(),
        marked(passages, matches.words()),
        matches.foods().map(foods -> changes(step, foods)).orElse(List.of()));
  }

  private SearchViews.Hit hit(
      SearchShelf.Tray tray, SearchShelf.View view, SearchMatches matches) {
    List<SearchShelf.Step> steps = view.stepsOf(tray);
    Optional<SearchShelf.Step> step =
        steps.stream()
            .filter(each -> each.revision().address().toString().equals(tray.facts().address()))
            .findFirst()
            .or(() -> steps.stream().findFirst());
    List<Passage> passages =
        tray.facts().passages().stream()
            .filter(passage -> passage.place() != Passage.Place.FINDING)
            .toList();
    return new SearchViews.Hit(
        "bake",
        step.map(each -> each.revision().address().toString()).orElse(tray.facts().address()),
        step.flatMap(each -> each.revision().address().variant()).orElse(null),
        step.map(each -> each.revision().number()).orElse(0),
        tray.id(),
        Json.time(tray.facts().time()),
        tray.facts().baker().orElse(null),
        step.map(each -> Words.beginning(each.revision().note())).orElse(List.of()),
        tray.facts().findings().stream().map(word -> finding(word, matches)).toList(),
        marked(passages, matches.words()),
        matches.foods().isPresent() && step.isPresent()
            ? changes(step.get(), matches.foods().get())
            : List.of());
  }

  private static SearchViews.FoundFinding finding(String word, SearchMatches matches) {
    List<Words.Run> marked =
        matches.isFinding(word)
            ? List.of(new Words.Run(word, true))
            : matches.words().marked(word);
    return new SearchViews.FoundFinding(
        word,
        BakeViews.finding(word).merit(),
        marked.isEmpty() ? Words.beginning(word) : marked);
  }

  private static List<SearchViews.PassageView> marked(List<Passage> passages, Words words) {
    List<SearchViews.PassageView> marked = new ArrayList<>();
    for (Passage passage : passages) {
      List<Words.Run> runs = words.marked(passage.text());
      if (!runs.isEmpty() && marked.size() < MOST_PASSAGES) {
        marked.add(new SearchViews.PassageView(passage.place().words(), runs));
      }
    }
    return marked;
  }

  /** What a revision changed of some foods, in sentences. */
  private List<String> changes(SearchShelf.Step step, Set<String> foods) {
    return step.before()
        .map(before -> new TimelineRows(desk).changesOf(before, step.revision(), foods))
        .orElse(List.of());
  }
}
