package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.goal.Goal;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.pantry.Food;
import io.ovenmark.story.StoryPlan;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.worksheet.Policy;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * What a notebook holds at one commit: the foods, goals and settings that the figures of a formula
 * of that commit rest on. Immutable, as a commit is. Reading something that is damaged throws
 * {@link io.ovenmark.json.UnreadableException}, and leaves everything else readable.
 */
public final class Contents {
  private final Folders folders;
  private final Decoder decoder;
  private final CommitId commit;

  Contents(Folders folders, Decoder decoder, CommitId commit) {
    this.folders = folders;
    this.decoder = decoder;
    this.commit = commit;
  }

  /**
   * The commit.
   *
   * @return its id
   */
  public CommitId commit() {
    return commit;
  }

  /**
   * The notebook's settings; the usual ones when the commit has no such file.
   *
   * @return the settings
   */
  public NotebookSettings settings() {
    return blob(Layout.SETTINGS)
        .map(decoder::settings)
        .orElseGet(() -> NotebookSettings.titled("Notebook"));
  }

  /**
   * The policy that a formula's figures follow: the notebook's, with the net carbohydrate of the
   * formula's goal where that states its own.
   *
   * @param formula the formula
   * @return the policy
   */
  public Policy policy(Formula formula) {
    Policy policy = settings().policy();
    return formula
        .goal()
        .flatMap(this::goal)
        .flatMap(Goal::netCarbohydrate)
        .map(net -> new Policy(policy.energy(), net))
        .orElse(policy);
  }

  /**
   * A food of the pantry.
   *
   * @param slug its short name
   * @return the food, empty when the pantry has none of that name
   */
  public Optional<Food> food(String slug) {
    return blob(Layout.food(slug)).map(blob -> decoder.food(slug, blob));
  }

  /**
   * The foods of the pantry.
   *
   * @return their short names in alphabetical order
   */
  public List<String> foods() {
    return slugs(Layout.PANTRY);
  }

  /**
   * A goal.
   *
   * @param slug its short name
   * @return the goal, empty when there is none of that name
   */
  public Optional<Goal> goal(String slug) {
    return blob(Layout.goal(slug)).map(blob -> decoder.goal(slug, blob));
  }

  /**
   * The goals.
   *
   * @return their short names in alphabetical order
   */
  public List<String> goals() {
    return slugs(Layout.GOALS);
  }

  /**
   * The formulas.
   *
   * @return their short names in alphabetical order
   */
  public List<String> formulas() {
    return slugs(Layout.FORMULAS);
  }

  /**
   * A formula.
   *
   * @param slug its short name
   * @return the formula, empty when there is none of that name
   */
  public Optional<Formula> formula(String slug) {
    return formulaBlob(slug).map(blob -> decoder.formula(Layout.formula(slug), blob));
  }

  /**
   * The content of a formula's file.
   *
   * @param slug its short name
   * @return the blob, empty when there is none of that name
   */
  public Optional<BlobId> formulaBlob(String slug) {
    return blob(Layout.formula(slug));
  }

  /** A bake by its path. */
  Optional<Bake> bake(String formula, String path) {
    return blob(path).map(blob -> decoder.bake(formula, path, blob));
  }

  /** A tasting by its path. */
  Optional<Tasting> tasting(String formula, String path) {
    return blob(path).map(blob -> decoder.tasting(formula, path, blob));
  }

  /** The story of a line of history by its path. */
  Optional<StoryPlan> story(Address line, String path) {
    return blob(path).map(blob -> decoder.story(line, path, blob));
  }

  /** The paths of the files of a folder. */
  Set<String> files(String folder) {
    return folders.list(commit, folder).keySet();
  }

  /**
   * Any file.
   *
   * @param path its path in the notebook
   * @return its blob, empty when there is none
   */
  Optional<BlobId> blob(String path) {
    int slash = path.lastIndexOf('/');
    return slash < 0
        ? folders.topFile(commit, path)
        : Optional.ofNullable(folders.list(commit, path.substring(0, slash)).get(path));
  }

  /**
   * Names everything that a formula's figures rest on besides the formula itself: two commits that
   * give the same text give the same figures.
   *
   * @return a text for use as a key
   */
  public String figuresKey() {
    return folders.treeId(commit, Layout.PANTRY).orElse("-")
        + folders.treeId(commit, Layout.GOALS).orElse("-")
        + id(Layout.SETTINGS);
  }

  /**
   * Names everything that the figures of one formula rest on besides the formula itself: its foods,
   * its goal and the settings. Unlike {@link #figuresKey()} it stays the same when other foods or
   * goals change.
   *
   * @param formula the formula
   * @return a text for use as a key
   */
  public String figuresKey(Formula formula) {
    StringBuilder key = new StringBuilder(id(Layout.SETTINGS));
    key.append(formula.goal().map(slug -> id(Layout.goal(slug))).orElse("-"));
    SortedMap<String, BlobId> pantry = folders.list(commit, Layout.PANTRY);
    for (Line line : formula.lines()) {
      BlobId food = pantry.get(Layout.food(line.food()));
      key.append(food == null ? "-" : food.hex());
    }
    return key.toString();
  }

  private String id(String path) {
    return blob(path).map(BlobId::hex).orElse("-");
  }

  private List<String> slugs(String folder) {
    return folders.list(commit, folder).keySet().stream()
        .flatMap(path -> Layout.slugIn(folder, path).stream())
        .toList();
  }
}
