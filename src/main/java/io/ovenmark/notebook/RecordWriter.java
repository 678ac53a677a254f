package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/** Commits what belongs to formulas: bakes, photos, foods, goals, publications; and undoes. */
public final class RecordWriter {
  /** Trailer that names the commit whose change was taken back. */
  public static final String UNDOES = "Undoes";

  private final Notebook notebook;

  /**
   * Writes to a notebook.
   *
   * @param notebook the notebook, open
   */
  public RecordWriter(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * A name for a new bake that none of the formula's lines of history has yet.
   *
   * @param formula slug of the formula
   * @param date day of the bake
   * @return {@code <date>-<n>}
   */
  public String freeBakeId(String formula, LocalDate date) {
    SortedSet<String> taken = notebook.bakeIds(formula);
    int n = 1;
    while (taken.contains(date + "-" + n)) {
      n++;
    }
    return date + "-" + n;
  }

  /**
   * Commits a new bake with its pictures.
   *
   * @param line the line of history of the revision that was baked
   * @param bake the bake
   * @param pictures bytes of each picture by its path
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when there is a bake of that name
   */
  public void addBake(
      Address line, Bake bake, Map<String, byte[]> pictures, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>(pictures);
    files.put(bake.path(), BakeCodec.write(bake));
    put(line.branch(), files, Map.of(bake.path(), Optional.empty()), note, by);
  }

  /**
   * Commits a changed bake, with pictures that were added to it.
   *
   * @param line the line of history on whose branch the bake is kept
   * @param before the bake as it was read
   * @param after the bake as it shall be
   * @param pictures bytes of each new picture by its path
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when somebody changed the bake meanwhile
   */
  public void changeBake(
      Address line, Bake before, Bake after, Map<String, byte[]> pictures, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>(pictures);
    files.put(after.path(), BakeCodec.write(after));
    Optional<BlobId> known =
        notebook.latest(line).blob(before.path())
            .filter(
                blob ->
                    before.equals(
                        BakeCodec.read(
                            before.path(),
                            before.formula(),
                            before.id(),
                            notebook.store().read(blob))));
    put(line.branch(), files, Map.of(after.path(), known), note, by);
  }

  /**
   * The line of history on whose branch a bake is kept.
   *
   * @param bake the bake
   * @return the first line that has it
   */
  public Address lineOf(Bake bake) {
    return notebook.lines(bake.formula()).stream()
        .filter(line -> notebook.latest(line).blob(bake.path()).isPresent())
        .findFirst()
        .orElse(Address.latest(bake.formula(), Optional.empty()));
  }

  /**
   * Commits a food to the main line's pantry.
   *
   * @param food the food
   * @param before what the writer saw; empty for a new one
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when somebody changed it meanwhile, or a new one exists already
   */
  public void saveFood(Food food, Optional<Food> before, String note, By by) {
    saveFood(Layout.MAIN, food, before, note, by);
  }

  /**
   * Commits a food to the pantry of a line of history.
   *
   * @param line the line
   * @param food the food
   * @param before what the writer saw; empty for a new one
   * @param note for the commit
   * @param by who and when
   */
  public void saveFood(Address line, Food food, Optional<Food> before, String note, By by) {
    saveFood(line.branch(), food, before, note, by);
  }

  private void saveFood(String branch, Food food, Optional<Food> before, String note, By by) {
    String path = Layout.food(food.slug());
    Contents contents = notebook.at(notebook.head(branch));
    Optional<BlobId> known =
        contents.blob(path).filter(blob -> before.equals(contents.food(food.slug())));
    put(branch, single(path, FoodCodec.write(food)), Map.of(path, known), note, by);
  }

  /**
   * Commits new foods to the main line's pantry, all at once.
   *
   * @param foods the foods, of different short names
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when the pantry has one of them already
   */
  public void addFoods(List<Food> foods, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    SortedMap<String, Optional<BlobId>> expected = new TreeMap<>();
    for (Food food : foods) {
      files.put(Layout.food(food.slug()), FoodCodec.write(food));
      expected.put(Layout.food(food.slug()), Optional.empty());
    }
    put(Layout.MAIN, files, expected, note, by);
  }

  /**
   * Commits a goal to the main line.
   *
   * @param goal the goal
   * @param before what the writer saw; empty for a new one
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when somebody changed it meanwhile, or a new one exists already
   */
  public void saveGoal(Goal goal, Optional<Goal> before, String note, By by) {
    String path = Layout.goal(goal.slug());
    Contents contents = notebook.latest();
    Optional<BlobId> known =
        contents.blob(path).filter(blob -> before.equals(contents.goal(goal.slug())));
    put(Layout.MAIN, single(path, GoalCodec.write(goal)), Map.of(path, known), note, by);
  }

  /**
   * Commits changed settings of the notebook.
   *
   * @param settings the settings
   * @param note for the commit
   * @param by who and when
   */
  public void saveSettings(NotebookSettings settings, String note, By by) {
    Optional<BlobId> known = notebook.latest().blob(Layout.SETTINGS);
    put(
        Layout.MAIN,
        single(Layout.SETTINGS, settings.write()),
        Map.of(Layout.SETTINGS, known),
        note,
        by);
  }

  /**
   * Marks a revision as published, with an annotated tag.
   *
   * @param revision the revision
   * @param note what is published, and where
   * @param by who and when
   * @return the tag
   * @throws io.ovenmark.notebook.store.StoreException when it is published already
   */
  public TagFacts publish(Revision revision, String note, By by) {
    Address line =
        Address.latest(revision.address().formula(), revision.address().variant());
    return notebook
        .store()
        .tag(
            Layout.publishedTag(line, revision.number()),
            revision.commit(),
            FormulaWriter.checkedNote(note),
            by.author(),
            by.time());
  }

  /**
   * Takes the last change of a line of history back: a new commit whose files are those before it.
   * Undoing an undo does the change again.
   *
   * @param line the line; the change may be of any file on its branch
   * @param by who and when
   * @return the note of the change that was taken back
   * @throws Refusal when there is nothing before it
   */
  public String undo(Address line, By by) {
    while (true) {
      CommitId head = notebook.head(line.branch());
      var facts = notebook.store().facts(head);
      if (facts.parents().isEmpty()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            line.line(),
            "There is no change before the beginning of the notebook.",
            "");
      }
      CommitId before = facts.parents().get(0);
      Write write =
          Write.to(
                  line.branch(),
                  Optional.of(head),
                  by.author(),
                  by.time(),
                  "Undo: " + facts.subject())
              .trailer(UNDOES, head.hex());
      SortedMap<String, BlobId> now = notebook.store().list(head, "");
      SortedMap<String, BlobId> then = notebook.store().list(before, "");
      for (Map.Entry<String, BlobId> file : then.entrySet()) {
        if (!file.getValue().equals(now.get(file.getKey()))) {
          write = write.put(file.getKey(), notebook.store().read(file.getValue()));
        }
      }
      for (String path : now.keySet()) {
        if (!then.containsKey(path)) {
          write = write.delete(path);
        }
      }
      WriteOutcome outcome = notebook.store().write(write);
      if (outcome instanceof WriteOutcome.Written) {
        return facts.subject();
      }
      if (outcome instanceof WriteOutcome.Unchanged) {
        throw new Refusal(
            Refusal.Reason.INVALID, line.line(), "The last change changed no file.", "");
      }
    }
  }

  /**
   * Who the user is according to Git's configuration.
   *
   * @return the author, empty when Git does not know
   */
  public Optional<Author> configuredAuthor() {
    return notebook.store().configuredAuthor();
  }

  private void put(
      String branch,
      SortedMap<String, byte[]> files,
      Map<String, Optional<BlobId>> expected,
      String note,
      By by) {
    while (true) {
      CommitId head = notebook.head(branch);
      Contents contents = notebook.at(head);
      List<String> moved = new ArrayList<>();
      expected.forEach(
          (path, blob) -> {
            if (!contents.blob(path).equals(blob)) {
              moved.add(path);
            }
          });
      if (!moved.isEmpty()) {
        throw changed(moved.get(0), expected.get(moved.get(0)).isEmpty());
      }
      Write write =
          Write.to(
              branch,
              Optional.of(head),
              by.author(),
              by.time(),
              FormulaWriter.checkedNote(note));
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        write = write.put(file.getKey(), file.getValue());
      }
      if (!(notebook.store().write(write) instanceof WriteOutcome.Moved)) {
        return;
      }
    }
  }

  private static Refusal changed(String path, boolean wasNew) {
    String slug = path.substring(path.lastIndexOf('/') + 1).replace(".json", "");
    return wasNew && Slug.isSlug(slug)
        ? new Refusal(
            Refusal.Reason.EXISTS,
            path,
            "There is a file " + path + " already, or it changed since it was read.",
            "Read it again, then change that one.")
        : new Refusal(
            Refusal.Reason.CONFLICT,
            path,
            "Somebody changed " + path + " meanwhile.",
            "Read it again, then repeat your change.");
  }

  private static SortedMap<String, byte[]> single(String path, byte[] bytes) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(path, bytes);
    return files;
  }
}
