package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Survey;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Food;
import io.ovenmark.search.BakeFacts;
import io.ovenmark.search.Passage;
import io.ovenmark.search.SearchIndex;
import io.ovenmark.search.StepFacts;
import io.ovenmark.search.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * All revisions and bakes of a notebook ready for being searched. What is in them comes from the
 * {@link SearchIndex}; which of them there are, from the branches as they are now. Lines of history
 * that have not moved are kept from one question to the next.
 */
final class SearchShelf {
  private static final int SAVE_EVERY = 5000;

  private final Desk desk;
  private final Survey survey;
  private final SearchIndex index;
  private final Map<String, KeptLine> lines = new HashMap<>();
  private final Map<String, KeptBakes> bakes = new HashMap<>();
  private final Set<String> unreadable = new HashSet<>();
  private SortedMap<String, CommitId> heads;
  private View view;

  /**
   * A revision.
   *
   * @param revision the revision
   * @param before the one before it; empty for the first
   * @param facts what it brought; nothing as long as it has not been read
   * @param searchable its words
   */
  record Step(
      Revision revision, Optional<Revision> before, StepFacts facts, String searchable) {
    String formula() {
      return revision.address().formula();
    }

    String content() {
      return revision.blob().hex();
    }
  }

  /**
   * A bake.
   *
   * @param formula short name of its formula
   * @param id its name
   * @param facts what is searched of it
   * @param searchable its words
   */
  record Tray(String formula, String id, BakeFacts facts, String searchable) {}

  /**
   * What there is to search.
   *
   * @param steps the revisions, formula by formula
   * @param trays the bakes, formula by formula
   * @param stepsByFormula the revisions of a formula, line by line, oldest first
   * @param stepsOf the revisions of a content, oldest first, by formula and content
   * @param traysOf the bakes of a content, by formula and content
   * @param foods names of foods by their short names
   * @param unread how many revisions and bakes have not been read
   */
  record View(
      List<Step> steps,
      List<Tray> trays,
      Map<String, List<Step>> stepsByFormula,
      Map<String, List<Step>> stepsOf,
      Map<String, List<Tray>> traysOf,
      Map<String, String> foods,
      int unread) {
    List<Step> stepsOf(String formula) {
      return stepsByFormula.getOrDefault(formula, List.of());
    }

    List<Step> stepsOf(Tray tray) {
      return stepsOf.getOrDefault(key(tray.formula(), tray.facts().blob()), List.of());
    }

    List<Tray> traysOf(Step step) {
      return traysOf.getOrDefault(key(step.formula(), step.content()), List.of());
    }

    /** The name of a food for people. */
    String foodName(String slug) {
      return foods.getOrDefault(slug, slug.replace('-', ' '));
    }

    static String key(String formula, String content) {
      return formula + " " + content;
    }
  }

  private record KeptLine(
      CommitId newest, int fork, Map<String, String> foods, List<Step> steps, int unread) {}

  private record KeptBakes(Map<String, BlobId> files, List<Tray> trays, int unread) {}

  /** Something that has not been read yet. */
  interface Job {
    /** Reads it into the index. */
    void run();
  }

  SearchShelf(Desk desk) {
    this.desk = desk;
    this.survey = new Survey(desk.notebook());
    this.index = new SearchIndex(survey.ownFolder());
  }

  SearchIndex index() {
    return index;
  }

  /** What there is to search now. */
  synchronized View view() {
    SortedMap<String, CommitId> now = survey.heads();
    if (view == null || !now.equals(heads) || view.unread() > 0) {
      view = look();
      heads = now;
    }
    return view;
  }

  private View look() {
    Map<String, String> foods = foodNames();
    List<Step> steps = new ArrayList<>();
    List<Tray> trays = new ArrayList<>();
    Set<String> present = new LinkedHashSet<>();
    int unread = 0;
    for (String formula : survey.formulas()) {
      for (Address line : desk.notebook().lines(formula)) {
        Optional<KeptLine> kept = line(line, foods);
        if (kept.isPresent()) {
          present.add(line.line());
          steps.addAll(kept.get().steps());
          unread += kept.get().unread();
        }
      }
      KeptBakes kept = bakes(formula);
      present.add(formula);
      trays.addAll(kept.trays());
      unread += kept.unread();
    }
    lines.keySet().retainAll(present);
    bakes.keySet().retainAll(present);
    Map<String, List<Step>> stepsByFormula = new HashMap<>();
    Map<String, List<Step>> stepsOf = new HashMap<>();
    for (Step step : steps) {
      stepsByFormula.computeIfAbsent(step.formula(), key -> new ArrayList<>()).add(step);
      stepsOf
          .computeIfAbsent(View.key(step.formula(), step.content()), key -> new ArrayList<>())
          .add(step);
    }
    Map<String, List<Tray>> traysOf = new HashMap<>();
    for (Tray tray : trays) {
      traysOf
          .computeIfAbsent(View.key(tray.formula(), tray.facts().blob()), key -> new ArrayList<>())
          .add(tray);
    }
    return new View(steps, trays, stepsByFormula, stepsOf, traysOf, foods, unread);
  }

  private Map<String, String> foodNames() {
    Contents contents = desk.notebook().latest();
    Map<String, String> names = new LinkedHashMap<>();
    for (String slug : contents.foods()) {
      try {
        contents.food(slug).map(Food::name).ifPresent(name -> names.put(slug, name));
      } catch (UnreadableException | StoreException e) {
        names.put(slug, slug.replace('-', ' '));
      }
    }
    return names;
  }

  private Optional<KeptLine> line(Address line, Map<String, String> foods) {
    Notebook notebook = desk.notebook();
    Optional<Revision> newest = notebook.newestIfAny(line);
    if (newest.isEmpty()) {
      return Optional.empty();
    }
    int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
    KeptLine kept = lines.get(line.line());
    if (kept == null
        || kept.unread() > 0
        || kept.fork() != fork
        || !kept.newest().equals(newest.get().commit())
        || !kept.foods().equals(foods)) {
      kept = readLine(line, newest.get().commit(), fork, foods);
      lines.put(line.line(), kept);
    }
    return Optional.of(kept);
  }

  private KeptLine readLine(
      Address line, CommitId newest, int fork, Map<String, String> foods) {
    List<Step> steps = new ArrayList<>();
    int unread = 0;
    Optional<Revision> before = Optional.empty();
    for (Revision revision : desk.notebook().revisions(line)) {
      if (revision.number() > fork) {
        Optional<StepFacts> facts = index.step(content(before), revision.blob().hex());
        unread += facts.isPresent() ? 0 : 1;
        steps.add(step(revision, before, facts.orElse(StepFacts.NONE), foods));
      }
      before = Optional.of(revision);
    }
    return new KeptLine(newest, fork, foods, steps, unread);
  }

  private static String content(Optional<Revision> revision) {
    return revision.map(each -> each.blob().hex()).orElse(SearchIndex.NOTHING);
  }

  private static Step step(
      Revision revision,
      Optional<Revision> before,
      StepFacts facts,
      Map<String, String> foods) {
    List<String> texts = new ArrayList<>();
    texts.add(revision.note());
    texts.add(revision.details());
    facts.passages().forEach(passage -> texts.add(passage.text()));
    for (String food : facts.foods()) {
      texts.add(food);
      texts.add(foods.getOrDefault(food, ""));
    }
    return new Step(revision, before, facts, Words.searchable(texts));
  }

  private KeptBakes bakes(String formula) {
    Map<String, BlobId> files = survey.bakes(formula);
    KeptBakes kept = bakes.get(formula);
    if (kept == null || kept.unread() > 0 || !kept.files().equals(files)) {
      List<Tray> trays = new ArrayList<>();
      int unread = 0;
      for (Map.Entry<String, BlobId> file : files.entrySet()) {
        Optional<BakeFacts> facts = index.bake(file.getValue().hex());
        if (facts.isEmpty()) {
          unread += isUnreadable(file.getValue()) ? 0 : 1;
        } else {
          trays.add(tray(formula, survey.bakeId(file.getKey()), facts.get()));
        }
      }
      kept = new KeptBakes(files, trays, unread);
      bakes.put(formula, kept);
    }
    return kept;
  }

  private static Tray tray(String formula, String id, BakeFacts facts) {
    List<String> texts = new ArrayList<>();
    facts.passages().stream().map(Passage::text).forEach(texts::add);
    facts.baker().ifPresent(texts::add);
    return new Tray(formula, id, facts, Words.searchable(texts));
  }

  private boolean isUnreadable(BlobId content) {
    synchronized (unreadable) {
      return unreadable.contains(content.hex());
    }
  }

  /** Reads; what was read is kept, also when the reading is cancelled. */
  void read(List<Job> jobs, Progress progress) {
    int done = 0;
    try {
      for (Job job : jobs) {
        progress.at(done, jobs.size());
        job.run();
        done++;
        if (done % SAVE_EVERY == 0) {
          index.save();
        }
      }
    } finally {
      index.save();
    }
  }

  /** All that has not been read yet. */
  List<Job> unread() {
    List<Job> jobs = new ArrayList<>();
    for (String formula : survey.formulas()) {
      addJobs(formula, jobs);
    }
    return jobs;
  }

  /** All of one formula that has not been read yet. */
  List<Job> unread(String formula) {
    List<Job> jobs = new ArrayList<>();
    addJobs(formula, jobs);
    return jobs;
  }

  private void addJobs(String formula, List<Job> jobs) {
    Notebook notebook = desk.notebook();
    for (Address line : notebook.lines(formula)) {
      if (notebook.newestIfAny(line).isEmpty()) {
        continue;
      }
      int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
      Optional<Revision> before = Optional.empty();
      for (Revision revision : notebook.revisions(line)) {
        String from = content(before);
        String to = revision.blob().hex();
        if (revision.number() > fork && index.step(from, to).isEmpty()) {
          Optional<Revision> earlier = before;
          jobs.add(() -> index.add(from, to, facts(earlier, revision)));
        }
        before = Optional.of(revision);
      }
    }
    survey
        .bakes(formula)
        .forEach(
            (path, blob) -> {
              if (index.bake(blob.hex()).isEmpty() && !isUnreadable(blob)) {
                jobs.add(() -> readBake(formula, path, blob));
              }
            });
  }

  private StepFacts facts(Optional<Revision> before, Revision revision) {
    Optional<Formula> to = desk.readable(revision);
    if (to.isEmpty()) {
      return StepFacts.NONE;
    }
    if (before.isEmpty()) {
      return StepFacts.first(to.get());
    }
    return desk.readable(before.get())
        .map(from -> StepFacts.between(from, to.get()))
        .orElseGet(
            () -> new StepFacts(List.of(), false, false, StepFacts.first(to.get()).passages()));
  }

  private void readBake(String formula, String path, BlobId blob) {
    try {
      Bake bake = survey.bake(formula, path, blob);
      index.add(blob.hex(), BakeFacts.of(bake));
    } catch (UnreadableException | StoreException e) {
      if (Refusals.problems(e).isEmpty()) {
        throw e;
      }
      synchronized (unreadable) {
        unreadable.add(blob.hex());
      }
    }
  }
}
