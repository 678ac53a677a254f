package io.ovenmark.desk;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a food is kept: the main line's pantry, else a variant's. Every variant keeps copies of its
 * own, so that its figures rest on its own branch.
 *
 * @param line the variant; empty for the main line
 * @param contents what that line holds now
 * @param food the food there; empty when nobody keeps it
 */
record FoodPlace(Optional<Address> line, Contents contents, Optional<Food> food) {

  /** Finds the place. */
  static FoodPlace of(Desk desk, String slug, String line, LinesInUse lines) {
    Notebook notebook = desk.notebook();
    if (line != null && !line.isBlank()) {
      Address variant = desk.address(line);
      Contents contents = notebook.latest(variant);
      return new FoodPlace(
          variant.variant().isPresent()
              ? Optional.of(Address.latest(variant.formula(), variant.variant()))
              : Optional.empty(),
          contents,
          contents.food(slug));
    }
    Contents main = notebook.latest();
    Optional<Food> own = main.food(slug);
    if (own.isEmpty()) {
      for (LinesInUse.Use use : lines.using(slug)) {
        Contents there = notebook.latest(use.line());
        Optional<Food> food = there.food(slug);
        if (use.line().variant().isPresent() && food.isPresent()) {
          return new FoodPlace(Optional.of(use.line()), there, food);
        }
      }
    }
    return new FoodPlace(Optional.empty(), main, own);
  }

  /** The food, or the built-in table's of that name. */
  Optional<Food> foodOrBuiltIn(String slug) {
    return food.or(() -> BuiltInPantry.find(slug));
  }

  /** The food as it was when somebody saw it. */
  static Optional<Food> seen(Notebook notebook, String slug, String commit) {
    if (commit == null || commit.isBlank()) {
      return Optional.empty();
    }
    try {
      return notebook.at(new CommitId(commit)).food(slug);
    } catch (IllegalArgumentException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "seen",
          "What this page rests on is not known to the notebook.",
          "Reload the page; what you typed is kept.");
    }
  }

  /** The lines of history that rest on this very food: those that use it, without own copies. */
  List<LinesInUse.Use> users(String slug, LinesInUse lines) {
    return lines.using(slug).stream()
        .filter(
            use ->
                line.isPresent()
                    ? use.line().equals(line.get())
                    : use.line().variant().isEmpty())
        .toList();
  }

  /** The variants that use the food and keep a copy of their own; none for a variant's own food. */
  List<LinesInUse.Use> copies(String slug, LinesInUse lines) {
    List<LinesInUse.Use> copies = new ArrayList<>();
    if (line.isEmpty()) {
      lines.using(slug).stream()
          .filter(use -> use.line().variant().isPresent())
          .forEach(copies::add);
    }
    return copies;
  }
}
