package io.ovenmark.desk;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodImport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads foods from a food table that was downloaded, and adds those that the pantry lacks.
 *
 * <pre>{@code
 * KitchenViews.ImportView added = new ImportFoods(desk).call(
 *     Path.of("sr28asc.zip"), FoodImport.Selection.words("sesame flour"),
 *     FoodImport.Progress.NONE, by);
 * }</pre>
 */
public final class ImportFoods {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ImportFoods(Desk desk) {
    this.desk = desk;
  }

  /**
   * Looks for foods without adding any.
   *
   * @param folderOrZip where the table is
   * @param selection which foods
   * @param progress who is told how far it is
   * @return what was found
   * @throws Refusal when the table cannot be read
   */
  public KitchenViews.ImportView look(
      Path folderOrZip, FoodImport.Selection selection, FoodImport.Progress progress) {
    return view(read(folderOrZip, selection, progress), Set.of());
  }

  /**
   * Adds foods, all in one commit; those whose short name the pantry has already stay as they are.
   *
   * @param folderOrZip where the table is
   * @param selection which foods
   * @param progress who is told how far it is
   * @param by who commits it, and when
   * @return what was found and added
   * @throws Refusal when the table cannot be read or has no food that fits
   */
  public KitchenViews.ImportView call(
      Path folderOrZip, FoodImport.Selection selection, FoodImport.Progress progress, By by) {
    return call(folderOrZip, selection, Optional.empty(), progress, by);
  }

  /**
   * Adds some of the foods, all in one commit.
   *
   * @param folderOrZip where the table is
   * @param selection which foods
   * @param take short names of the foods to add; empty for all that were found
   * @param progress who is told how far it is
   * @param by who commits it, and when
   * @return what was found and added
   * @throws Refusal when the table cannot be read or has no food that fits
   */
  public KitchenViews.ImportView call(
      Path folderOrZip,
      FoodImport.Selection selection,
      Optional<Set<String>> take,
      FoodImport.Progress progress,
      By by) {
    FoodImport.Result result = read(folderOrZip, selection, progress);
    if (result.foods().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          folderOrZip.toString(),
          "The table has no food that fits.",
          "Use fewer words, or beginnings of words.");
    }
    while (true) {
      Set<String> known = new HashSet<>(desk.notebook().latest().foods());
      List<Food> fresh =
          result.foods().stream()
              .map(FoodImport.Found::food)
              .filter(food -> take.map(slugs -> slugs.contains(food.slug())).orElse(true))
              .filter(food -> known.add(food.slug()))
              .toList();
      try {
        if (!fresh.isEmpty()) {
          new RecordWriter(desk.notebook()).addFoods(fresh, note(result, fresh), by);
        }
      } catch (Refusal refusal) {
        if (refusal.reason() == Refusal.Reason.EXISTS) {
          continue;
        }
        throw refusal;
      }
      Set<String> added = new HashSet<>();
      fresh.forEach(food -> added.add(food.slug()));
      return view(result, added);
    }
  }

  private static String note(FoodImport.Result result, List<Food> fresh) {
    String from = " from " + table(result);
    return fresh.size() == 1
        ? "Food" + from + ": " + fresh.get(0).name()
        : fresh.size() + " foods" + from;
  }

  private static FoodImport.Result read(
      Path place, FoodImport.Selection selection, FoodImport.Progress progress) {
    try {
      return FoodImport.read(place, selection, progress);
    } catch (IOException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          place.toString(),
          "The food table cannot be read.",
          "Name the folder or zip file as it was downloaded (" + e.getMessage() + ").");
    } catch (IllegalArgumentException e) {
      throw Refusal.of(place.toString(), e);
    }
  }

  private static String table(FoodImport.Result result) {
    return switch (result.layout()) {
      case SR28 -> "SR28";
      case FOOD_DATA_CENTRAL -> "FoodData Central";
    };
  }

  private KitchenViews.ImportView view(FoodImport.Result result, Set<String> added) {
    Contents contents = desk.notebook().latest();
    Set<String> known = new HashSet<>(contents.foods());
    List<KitchenViews.ImportedFood> foods = new ArrayList<>();
    for (FoodImport.Found found : result.foods()) {
      Food food = found.food();
      String other = known.contains(food.slug()) ? "in the pantry already" : "found";
      foods.add(
          new KitchenViews.ImportedFood(
              food.slug(),
              food.name(),
              food.kind().key(),
              found.kindGuessed(),
              food.source().id().orElse(null),
              FoodParts.figures(food.per100g()),
              added.contains(food.slug()) ? "added" : other));
    }
    return new KitchenViews.ImportView(
        table(result),
        foods,
        added.size(),
        result.more(),
        result.faulty(),
        Refusals.views(result.problems()));
  }
}
