package io.ovenmark.desk;

import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.search.Words;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells which revisions and bakes fit a search. Made for one question, then thrown away. */
final class SearchMatches {
  private final Desk desk;
  private final Search search;
  private final SearchShelf.View view;
  private final Words words;
  private final Optional<Set<String>> foods;
  private final Optional<Set<String>> findings;
  private final Optional<Words> person;
  private final Map<String, Boolean> people = new HashMap<>();
  private final Map<String, Map<CommitId, TagFacts>> published = new HashMap<>();

  SearchMatches(Desk desk, Search search, SearchShelf.View view) {
    this.desk = desk;
    this.search = search;
    this.view = view;
    this.words = Words.of(search.words());
    this.foods = search.ingredient().map(this::foodsOf);
    this.findings = search.finding().map(this::findingsOf);
    this.person = search.person().map(Words::of);
  }

  Words words() {
    return words;
  }

  /** Short names of the foods that are looked for; empty when any will do. */
  Optional<Set<String>> foods() {
    return foods;
  }

  /** Whether a finding is one of those that are looked for. */
  boolean isFinding(String word) {
    return findings.isPresent() && findings.get().contains(word);
  }

  /** A food of exactly that short name or name, else all whose words fit. */
  private Set<String> foodsOf(String text) {
    Set<String> all = new HashSet<>();
    view.steps().forEach(step -> all.addAll(step.facts().foods()));
    Words asked = Words.of(text);
    if (all.contains(text)) {
      return Set.of(text);
    }
    Set<String> named = new HashSet<>();
    Set<String> fit = new HashSet<>();
    for (String food : all) {
      String name = view.foodName(food);
      if (asked.areAllOf(name)) {
        named.add(food);
      }
      if (!asked.isEmpty() && asked.areIn(Words.searchable(List.of(food, name)))) {
        fit.add(food);
      }
    }
    return named.isEmpty() ? fit : named;
  }

  /** Exactly that finding, else all whose words fit. */
  private Set<String> findingsOf(String text) {
    Set<String> all = new HashSet<>();
    view.trays().forEach(tray -> all.addAll(tray.facts().findings()));
    Words asked = Words.of(text);
    Set<String> exact = new HashSet<>();
    Set<String> fit = new HashSet<>();
    for (String finding : all) {
      if (asked.areAllOf(finding)) {
        exact.add(finding);
      }
      if (!asked.isEmpty() && asked.areIn(Words.searchable(List.of(finding)))) {
        fit.add(finding);
      }
    }
    return exact.isEmpty() ? fit : exact;
  }

  /** Whether a revision is found by itself. */
  boolean step(SearchShelf.Step step) {
    return search.finding().isEmpty()
        && isOnLine(step)
        && isWithin(step.revision().time())
        && isBy(step.revision().author().name())
        && hasFoodAndKinds(step)
        && words.areIn(step.searchable());
  }

  /** Whether a bake is found; unless a finding is asked for, only its own words and facts count. */
  boolean tray(SearchShelf.Tray tray) {
    boolean ofRevision = search.ingredient().isPresent() || !search.kinds().isEmpty();
    return (search.finding().isPresent() || !ofRevision)
        && hasFinding(tray)
        && isWithin(tray.facts().time())
        && isBy(tray.facts().baker().orElse(""))
        && words.areIn(tray.searchable())
        && isOfLine(tray)
        && (!ofRevision || view.stepsOf(tray).stream().anyMatch(this::hasFoodAndKinds));
  }

  /** Whether a revision with its bakes fits: so a timeline is filtered. */
  boolean withBakes(SearchShelf.Step step) {
    if (!isOnLine(step) || !hasFoodAndKinds(step)) {
      return false;
    }
    List<SearchShelf.Tray> trays = view.traysOf(step);
    StringBuilder all = new StringBuilder(step.searchable());
    boolean found = search.finding().isEmpty();
    boolean by = isBy(step.revision().author().name());
    boolean within = isWithin(step.revision().time());
    for (SearchShelf.Tray tray : trays) {
      all.append(tray.searchable());
      found |= hasFinding(tray);
      by |= isBy(tray.facts().baker().orElse(""));
      within |= isWithin(tray.facts().time());
    }
    return found && by && within && words.areIn(all.toString());
  }

  private boolean isOnLine(SearchShelf.Step step) {
    return search.line().isEmpty()
        || (search.line().get().formula().equals(step.formula())
            && (search.line().get().variant().isEmpty()
                || search.line().get().variant().equals(step.revision().address().variant())));
  }

  private boolean isOfLine(SearchShelf.Tray tray) {
    if (search.line().isEmpty()) {
      return true;
    }
    if (!search.line().get().formula().equals(tray.formula())) {
      return false;
    }
    return search.line().get().variant().isEmpty()
        || view.stepsOf(tray).stream().anyMatch(this::isOnLine);
  }

  private boolean isWithin(OffsetDateTime time) {
    LocalDate day = time.toLocalDate();
    return search.since().stream().noneMatch(day::isBefore)
        && search.until().stream().noneMatch(day::isAfter);
  }

  private boolean isBy(String name) {
    return person.isEmpty()
        || people.computeIfAbsent(
            name, who -> person.get().areIn(Words.searchable(List.of(who))));
  }

  private boolean hasFinding(SearchShelf.Tray tray) {
    return findings.isEmpty() || tray.facts().findings().stream().anyMatch(findings.get()::contains);
  }

  private boolean hasFoodAndKinds(SearchShelf.Step step) {
    return (foods.isEmpty() || step.facts().foods().stream().anyMatch(foods.get()::contains))
        && search.kinds().stream().allMatch(kind -> is(step, kind));
  }

  private boolean is(SearchShelf.Step step, Search.Kind kind) {
    return switch (kind) {
      case BAKED -> !view.traysOf(step).isEmpty();
      case PUBLISHED ->
          published
              .computeIfAbsent(step.formula(), desk.notebook()::published)
              .containsKey(step.revision().commit());
      case RESTORED -> step.revision().trailers().containsKey(FormulaWriter.RESTORES);
      case CARRIED -> step.revision().trailers().containsKey(VariantWriter.CARRIES);
      case OVEN -> step.facts().oven();
      case METHOD -> step.facts().method();
    };
  }
}
