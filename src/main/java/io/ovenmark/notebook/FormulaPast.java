package io.ovenmark.notebook;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.Line;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.index.Entry;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.Transfer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The past of one formula: the commits that touched it, its bakes or its photos, on the main line
 * and on its variants, each with the files that the formula consisted of and rested on then.
 *
 * <p>Those files are, by their paths: the settings, the formula under its present path, its bakes
 * and photos, the foods and goals that it used up to then, and, if wanted, the formula that it was
 * rebuilt from with its foods and its goal. Side branches that were merged, other than the main
 * line, are left out.
 */
final class FormulaPast {
  /** What no line of history has led to yet. */
  static final int NOTHING = -1;

  private final Notebook notebook;
  private final Address lead;
  private final String slug;
  private final boolean reference;
  private final List<Moment> moments = new ArrayList<>();
  private final Map<Address, End> ends = new LinkedHashMap<>();
  private final Map<CommitId, State> states = new HashMap<>();
  private int leftOut;

  /** What a commit touched. */
  enum Touched {
    FORMULA,
    BAKES,
    PHOTOS,
    /** Nothing of its own: it joins two lines. */
    NOTHING
  }

  /**
   * A commit that belongs to the formula.
   *
   * @param facts what it says
   * @param parent the moment before it on its line, or {@link #NOTHING}
   * @param merged moments that it joins
   * @param touched what it touched first of all
   * @param files the formula's files then
   */
  record Moment(
      CommitFacts facts,
      int parent,
      List<Integer> merged,
      Touched touched,
      SortedMap<String, BlobId> files) {}

  /**
   * Where a line of history stands now.
   *
   * @param moment its last moment
   * @param files the formula's files now
   */
  record End(int moment, SortedMap<String, BlobId> files) {}

  /** What is known at a commit. */
  private record State(
      int moment, Optional<BlobId> formula, String bakes, String photos, Needs needs) {
    static final State BEGIN =
        new State(NOTHING, Optional.empty(), "", "", new Needs(none(), none(), none()));

    private static SortedSet<String> none() {
      return Collections.emptySortedSet();
    }
  }

  /** Foods, goals and references that the formula used up to a commit. */
  private record Needs(
      SortedSet<String> foods, SortedSet<String> goals, SortedSet<String> references) {
    Needs with(Formula formula) {
      SortedSet<String> moreFoods = new TreeSet<>(foods);
      formula.lines().stream().map(Line::food).forEach(moreFoods::add);
      SortedSet<String> moreGoals = new TreeSet<>(goals);
      formula.goal().ifPresent(moreGoals::add);
      SortedSet<String> moreReferences = new TreeSet<>(references);
      formula.reference().ifPresent(moreReferences::add);
      return new Needs(moreFoods, moreGoals, moreReferences);
    }
  }

  private FormulaPast(Notebook notebook, Address lead, boolean reference) {
    this.notebook = notebook;
    this.lead = lead;
    this.slug = lead.formula();
    this.reference = reference;
  }

  /**
   * Reads it.
   *
   * @param notebook where
   * @param slug the formula, which must be on the main line
   * @param reference whether the formula that it was rebuilt from belongs to it
   */
  static FormulaPast of(Notebook notebook, String slug, boolean reference) {
    return of(notebook, Address.latest(slug, Optional.empty()), reference);
  }

  /**
   * Reads it with one line of history in the lead: the main line with all variants, or a variant
   * alone, with what it carried over from the main line.
   *
   * @param notebook where
   * @param lead the line, which must have the formula
   * @param reference whether the formula that it was rebuilt from belongs to it
   */
  static FormulaPast of(Notebook notebook, Address lead, boolean reference) {
    FormulaPast past = new FormulaPast(notebook, lead, reference);
    notebook.newest(lead);
    if (lead.variant().isEmpty()) {
      notebook.lines(lead.formula()).forEach(line -> past.walk(line));
      return past;
    }
    CommitId head = notebook.head(lead.branch());
    notebook
        .store()
        .mergeBase(notebook.head(Layout.MAIN), head)
        .ifPresent(shared -> past.walk(shared));
    past.walk(lead);
    return past;
  }

  /** The line of history that is the main line where it is told. */
  Address lead() {
    return lead;
  }

  List<Moment> moments() {
    return Collections.unmodifiableList(moments);
  }

  /** Each line of history that has anything of the formula, the main line first. */
  Map<Address, End> ends() {
    return Collections.unmodifiableMap(ends);
  }

  /** How many commits are about other things. */
  int leftOut() {
    return leftOut;
  }

  /** The moment of a commit; empty when the commit is none. */
  Optional<Integer> momentOf(String hex) {
    if (!hex.matches("[0-9a-f]{40}")) {
      return Optional.empty();
    }
    CommitId commit = new CommitId(hex);
    return Optional.ofNullable(states.get(commit))
        .map(State::moment)
        .filter(at -> at >= 0 && moments.get(at).facts().id().equals(commit));
  }

  private void walk(Address line) {
    CommitId head = notebook.head(line.branch());
    State state = walk(head);
    if (state.moment() != NOTHING) {
      ends.put(line, new End(state.moment(), files(head, state.formula(), state.needs())));
    }
  }

  private State walk(CommitId head) {
    GitStore store = notebook.store();
    List<CommitFacts> commits = new Transfer(store).line(head, states.keySet());
    Map<CommitId, Entry> entries = new HashMap<>();
    notebook
        .history()
        .formulaAt(head, Layout.formula(slug))
        .forEach(entry -> entries.put(entry.commit(), entry));
    State state =
        commits.isEmpty()
            ? states.get(head)
            : commits.get(0).parents().stream()
                .findFirst()
                .map(parent -> states.getOrDefault(parent, State.BEGIN))
                .orElse(State.BEGIN);
    for (CommitFacts facts : commits) {
      state = step(facts, Optional.ofNullable(entries.get(facts.id())), state);
      states.put(facts.id(), state);
    }
    return state;
  }

  private State step(CommitFacts facts, Optional<Entry> entry, State before) {
    GitStore store = notebook.store();
    Optional<BlobId> formula = entry.isEmpty() ? before.formula() : entry.get().blob();
    String bakes = store.treeId(facts.id(), Layout.bakes(slug)).orElse("");
    String photos = store.treeId(facts.id(), Layout.photos(slug)).orElse("");
    Needs needs = before.needs();
    if (entry.isPresent() && formula.isPresent()) {
      needs = readable(formula.get()).map(needs::with).orElse(needs);
    }
    List<Integer> merged =
        facts.parents().stream()
            .skip(1)
            .map(states::get)
            .filter(state -> state != null && state.moment() != NOTHING)
            .map(State::moment)
            .filter(at -> at != before.moment())
            .distinct()
            .toList();
    Touched touched =
        entry.isPresent()
            ? Touched.FORMULA
            : !bakes.equals(before.bakes())
                ? Touched.BAKES
                : !photos.equals(before.photos()) ? Touched.PHOTOS : Touched.NOTHING;
    int moment = before.moment();
    if (touched != Touched.NOTHING || carries(facts) && !merged.isEmpty()) {
      moment = moments.size();
      SortedMap<String, BlobId> files = files(facts.id(), formula, needs);
      moments.add(new Moment(facts, before.moment(), merged, touched, files));
    } else {
      leftOut++;
    }
    return new State(moment, formula, bakes, photos, needs);
  }

  private boolean carries(CommitFacts facts) {
    String carried = facts.trailers().getOrDefault(VariantWriter.CARRIES, "");
    return carried.split("[@/ ]", 2)[0].equals(slug);
  }

  private Optional<Formula> readable(BlobId blob) {
    try {
      return Optional.of(FormulaPast.read(notebook, Layout.formula(slug), blob));
    } catch (UnreadableException damaged) {
      return Optional.empty();
    }
  }

  private static Formula read(Notebook notebook, String path, BlobId blob) {
    return FormulaCodec.read(path, notebook.store().read(blob));
  }

  private SortedMap<String, BlobId> files(
      CommitId commit, Optional<BlobId> formula, Needs needs) {
    Contents contents = notebook.at(commit);
    SortedMap<String, BlobId> files = new TreeMap<>();
    SortedSet<String> foods = new TreeSet<>(needs.foods());
    SortedSet<String> goals = new TreeSet<>(needs.goals());
    if (reference) {
      for (String each : needs.references()) {
        contents
            .formulaBlob(each)
            .filter(blob -> !each.equals(slug))
            .ifPresent(
                blob -> {
                  files.put(Layout.formula(each), blob);
                  Optional<Formula> read = readable(blob);
                  read.ifPresent(of -> of.lines().forEach(line -> foods.add(line.food())));
                  read.flatMap(Formula::goal).ifPresent(goals::add);
                });
      }
    }
    formula.ifPresent(blob -> files.put(Layout.formula(slug), blob));
    put(files, contents, Layout.SETTINGS);
    foods.forEach(food -> put(files, contents, Layout.food(food)));
    goals.forEach(goal -> put(files, contents, Layout.goal(goal)));
    folder(files, commit, Layout.bakes(slug));
    folder(files, commit, Layout.photos(slug));
    return files;
  }

  private static void put(SortedMap<String, BlobId> files, Contents contents, String path) {
    contents.blob(path).ifPresent(blob -> files.put(path, blob));
  }

  private void folder(SortedMap<String, BlobId> files, CommitId commit, String folder) {
    notebook
        .store()
        .list(commit, folder)
        .forEach(
            (path, blob) -> {
              if (Layout.isBake(path) || Layout.isPhoto(path)) {
                files.put(path, blob);
              }
            });
  }
}
