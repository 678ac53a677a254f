package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.measure.Slug;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import io.ovenmark.story.StoryCodec;
import io.ovenmark.story.StoryPlan;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.TastingCodec;
import java.util.Optional;

/** What a file of a notebook is, by its path, and what it says. */
public sealed interface NotebookFile {
  /**
   * The notebook's settings.
   *
   * @param settings the settings
   */
  record SettingsFile(NotebookSettings settings) implements NotebookFile {}

  /**
   * A formula.
   *
   * @param slug its short name
   * @param formula the formula
   */
  record FormulaFile(String slug, Formula formula) implements NotebookFile {}

  /**
   * A food.
   *
   * @param food the food
   */
  record FoodFile(Food food) implements NotebookFile {}

  /**
   * A goal.
   *
   * @param goal the goal
   */
  record GoalFile(Goal goal) implements NotebookFile {}

  /**
   * A bake.
   *
   * @param bake the bake
   */
  record BakeFile(Bake bake) implements NotebookFile {}

  /**
   * A picture.
   *
   * @param formula slug of the formula it belongs to
   * @param bytes its content
   */
  record PhotoFile(String formula, byte[] bytes) implements NotebookFile {}

  /**
   * A tasting.
   *
   * @param tasting the tasting
   */
  record TastingFile(Tasting tasting) implements NotebookFile {}

  /**
   * A story.
   *
   * @param plan the story
   */
  record StoryFile(StoryPlan plan) implements NotebookFile {}

  /** A file in one of the notebook's folders that is not read there, because of its name. */
  record StrayFile() implements NotebookFile {}

  /** A file outside the notebook's folders: somebody's own. */
  record OtherFile() implements NotebookFile {}

  /**
   * Reads a file.
   *
   * @param path its path in the notebook
   * @param bytes its content
   * @return what it is
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong in it
   */
  static NotebookFile read(String path, byte[] bytes) {
    if (path.equals(Layout.SETTINGS)) {
      return new SettingsFile(NotebookSettings.read(path, bytes));
    }
    Optional<String> slug = Layout.slugIn(Layout.FORMULAS, path);
    if (slug.isPresent()) {
      return new FormulaFile(slug.get(), FormulaCodec.read(path, bytes));
    }
    slug = Layout.slugIn(Layout.PANTRY, path);
    if (slug.isPresent()) {
      return new FoodFile(FoodCodec.read(path, slug.get(), bytes));
    }
    slug = Layout.slugIn(Layout.GOALS, path);
    if (slug.isPresent()) {
      return new GoalFile(GoalCodec.read(path, slug.get(), bytes));
    }
    Optional<Address> told = Layout.storyOf(path);
    if (told.isPresent()) {
      return new StoryFile(
          StoryCodec.read(path, told.get().formula(), told.get().variant(), bytes));
    }
    Optional<String> formula = Layout.formulaOf(path).filter(Slug::isSlug);
    if (formula.isPresent() && Layout.isBake(path)) {
      return new BakeFile(BakeCodec.read(path, formula.get(), Layout.bakeId(path), bytes));
    }
    if (formula.isPresent() && Layout.isTasting(path)) {
      return new TastingFile(
          TastingCodec.read(path, formula.get(), Layout.bakeId(path), bytes));
    }
    if (formula.isPresent() && Layout.isPhoto(path)) {
      return new PhotoFile(formula.get(), bytes);
    }
    return Layout.isInFolder(path) ? new StrayFile() : new OtherFile();
  }

  /**
   * Whether a variant's branch is where a file is read from.
   *
   * @param path the file
   * @param formula slug of the variant's formula
   * @return true for the settings, foods, goals, and what belongs to that formula
   */
  static boolean isReadFromVariantOf(String formula, String path) {
    return path.equals(Layout.SETTINGS)
        || path.equals(Layout.formula(formula))
        || path.startsWith(Layout.PANTRY + "/")
        || path.startsWith(Layout.GOALS + "/")
        || path.startsWith(Layout.BAKES + "/" + formula + "/")
        || path.startsWith(Layout.PHOTOS + "/" + formula + "/");
  }
}
