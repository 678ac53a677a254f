package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.notebook.store.WriteOutcome;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Function;

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
   * @throws Refusal when there is a bake, or another picture, of that name
   */
  public void addBake(
      Address line, Bake bake, Map<String, byte[]> pictures, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>(pictures);
    files.put(bake.path(), BakeCodec.write(bake));
    SortedMap<String, Optional<BlobId>> expected = fresh(pictures.keySet());
    expected.put(bake.path(), Optional.empty());
    put(line.branch(), files, expected, note, by);
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
   * @throws Refusal when somebody changed the bake meanwhile, or there is another picture of a name
   */
  public void changeBake(
      Address line, Bake before, Bake after, Map<String, byte[]> pictures, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>(pictures);
    files.put(after.path(), BakeCodec.write(after));
    SortedMap<String, Optional<BlobId>> expected = fresh(pictures.keySet());
    expected.put(after.path(), Optional.of(known(notebook.latest(line), before)));
    put(line.branch(), files, expected, note, by);
  }

  /**
   * Commits a bake without some of its pictures, and deletes their files.
   *
   * @param line the line of history on whose branch the bake is kept
   * @param before the bake as it was read
   * @param after the bake as it shall be
   * @param pictures paths of the files to be deleted
   * @param note for the commit
   * @param by who and when
   * @return a commit that still has them
   * @throws Refusal when somebody changed the bake or a picture meanwhile
   */
  public CommitId removePhotos(
      Address line, Bake before, Bake after, Set<String> pictures, String note, By by) {
    Contents contents = notebook.latest(line);
    SortedMap<String, byte[]> files = single(after.path(), BakeCodec.write(after));
    SortedMap<String, Optional<BlobId>> expected =
        single(after.path(), Optional.of(known(contents, before)));
    pictures.forEach(path -> expected.put(path, contents.blob(path)));
    put(line.branch(), files, expected, note, by);
    return contents.commit();
  }

  /** The content of a bake that is still as it was read. */
  private static BlobId known(Contents contents, Bake before) {
    return contents
        .blob(before.path())
        .filter(
            blob -> contents.bake(before.formula(), before.path()).equals(Optional.of(before)))
        .orElseThrow(() -> changed(before.path()));
  }

  private static SortedMap<String, Optional<BlobId>> fresh(Set<String> paths) {
    SortedMap<String, Optional<BlobId>> expected = new TreeMap<>();
    paths.forEach(path -> expected.put(path, Optional.empty()));
    return expected;
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
    put(
        branch,
        single(path, FoodCodec.write(food)),
        single(path, seen(contents, path, before, contents::food, food.slug())),
        note,
        by);
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
    saveGoal(Address.latest(goal.slug(), Optional.empty()), goal, before, note, by);
  }

  /**
   * Commits a goal to a line of history.
   *
   * @param line the line; any formula stands for the main line
   * @param goal the goal
   * @param before what the writer saw; empty for a new one
   * @param note for the commit
   * @param by who and when
   */
  public void saveGoal(Address line, Goal goal, Optional<Goal> before, String note, By by) {
    String path = Layout.goal(goal.slug());
    Contents contents = notebook.latest(line);
    put(
        line.branch(),
        single(path, GoalCodec.write(goal)),
        single(path, seen(contents, path, before, contents::goal, goal.slug())),
        note,
        by);
  }

  /**
   * The content that the writer saw; empty for a new file.
   *
   * @throws Refusal when there is another one by now
   */
  private static <T> Optional<BlobId> seen(
      Contents contents,
      String path,
      Optional<T> before,
      Function<String, Optional<T>> read,
      String slug) {
    if (before.isEmpty()) {
      return Optional.empty();
    }
    if (!before.equals(read.apply(slug))) {
      throw changed(path);
    }
    return contents.blob(path);
  }

  /**
   * Commits changed settings of the notebook to a line of history, whose figures follow its own.
   *
   * @param line the line; any formula stands for the main line
   * @param settings the settings
   * @param before what the writer saw
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when somebody changed them meanwhile
   */
  public void saveSettings(
      Address line, NotebookSettings settings, NotebookSettings before, String note, By by) {
    Contents contents = notebook.latest(line);
    if (!contents.settings().equals(before)) {
      throw changed(Layout.SETTINGS);
    }
    put(
        line.branch(),
        single(Layout.SETTINGS, settings.write()),
        single(Layout.SETTINGS, contents.blob(Layout.SETTINGS)),
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
   * @throws Refusal when it is published already, or is on no line of history
   */
  public TagFacts publish(Revision revision, String note, By by) {
    String message = FormulaWriter.checkedNote(note);
    Address address = revision.address();
    if (address.point().kind() != Address.Point.Kind.NUMBERED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "The revision " + address + " is on no line of history.",
          "Restore it first, then publish the revision that gives.");
    }
    try {
      return notebook
          .store()
          .tag(
              Layout.publishedTag(address, revision.number()),
              revision.commit(),
              message,
              by.author(),
              by.time());
    } catch (StoreException e) {
      if (e.reason() == StoreException.Reason.NAME_TAKEN) {
        throw new Refusal(
            Refusal.Reason.EXISTS,
            address.toString(),
            "The revision " + address + " is published already.",
            "Publish a later one.");
      }
      throw e;
    }
  }

  /**
   * Takes the last change of a line of history back: a new commit whose files are those before it.
   * Undoing an undo does the change again.
   *
   * @param line the line; the change may be of any file on its branch
   * @param by who and when
   * @return the note of the change that was taken back
   * @throws Refusal when there is nothing to take back, or somebody writes at the same time
   */
  public String undo(Address line, By by) {
    return LastChange.of(notebook, line).undo(by);
  }

  /**
   * Who the user is according to Git's configuration.
   *
   * @return the author, empty when Git does not know
   */
  public Optional<Author> configuredAuthor() {
    return notebook.store().configuredAuthor();
  }

  /** Commits files that are still as the writer saw them; those without bytes are deleted. */
  void put(
      String branch,
      SortedMap<String, byte[]> files,
      SortedMap<String, Optional<BlobId>> seen,
      String note,
      By by) {
    String message = FormulaWriter.checkedNote(note);
    while (true) {
      CommitId head = notebook.head(branch);
      Contents contents = notebook.at(head);
      seen.forEach(
          (path, blob) ->
              refuseMoved(
                  path, blob, contents.blob(path), Optional.ofNullable(files.get(path))));
      Write write = Write.to(branch, Optional.of(head), by.author(), by.time(), message);
      for (String path : seen.keySet()) {
        write = files.containsKey(path) ? write.put(path, files.get(path)) : write.delete(path);
      }
      if (!(notebook.store().write(write) instanceof WriteOutcome.Moved)) {
        return;
      }
    }
  }

  private void refuseMoved(
      String path, Optional<BlobId> seen, Optional<BlobId> now, Optional<byte[]> wanted) {
    if (now.equals(seen) || now.equals(wanted.map(notebook::blobOf))) {
      return;
    }
    if (seen.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.EXISTS,
          path,
          "There is a file " + path + " already.",
          "Choose another name, or change that one.");
    }
    throw changed(path);
  }

  static Refusal changed(String path) {
    return new Refusal(
        Refusal.Reason.CONFLICT,
        path,
        "Somebody changed " + path + " meanwhile.",
        "Read it again, then repeat your change.");
  }

  private static <T> SortedMap<String, T> single(String path, T value) {
    SortedMap<String, T> files = new TreeMap<>();
    files.put(path, value);
    return files;
  }
}
