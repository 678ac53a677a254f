package io.ovenmark.desk;

import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodTable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads a person's own table of foods, and adds those that were chosen and that the pantry lacks.
 *
 * <pre>{@code
 * KitchenWork.TableRead read = new ReadFoodTable(desk).look("mill.csv", text);
 * new ReadFoodTable(desk).call("mill.csv", text, List.of("lupin-flour-coarse"), by);
 * }</pre>
 */
public final class ReadFoodTable {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ReadFoodTable(Desk desk) {
    this.desk = desk;
  }

  /**
   * Reads it; nothing is written.
   *
   * @param file its name
   * @param text its content
   * @return the foods and what is wrong, row by row
   * @throws io.ovenmark.json.UnreadableException when its first row is not understood
   */
  public KitchenWork.TableRead look(String file, String text) {
    return view(file, FoodTable.read(file, text), Set.of());
  }

  /**
   * Adds the chosen foods, all in one commit; what the pantry has already stays as it is.
   *
   * @param file its name
   * @param text its content
   * @param take short names of the chosen foods
   * @param by who commits them, and when
   * @return the foods and which were added
   * @throws Refusal when none of the chosen foods can be added
   * @throws io.ovenmark.json.UnreadableException when its first row is not understood
   */
  public KitchenWork.TableRead call(String file, String text, List<String> take, By by) {
    FoodTable.Result read = FoodTable.read(file, text);
    Set<String> wanted = new HashSet<>(take);
    while (true) {
      Set<String> known = new HashSet<>(desk.notebook().latest().foods());
      List<Food> fresh =
          read.foods().stream()
              .map(FoodTable.Found::food)
              .filter(food -> wanted.contains(food.slug()) && !known.contains(food.slug()))
              .toList();
      if (fresh.isEmpty()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            file,
            "There is no new food to add.",
            "Tick at least one that the pantry does not have.");
      }
      try {
        String note =
            fresh.size() == 1
                ? "Food from a table: " + fresh.get(0).name()
                : fresh.size() + " foods from a table";
        new RecordWriter(desk.notebook()).addFoods(fresh, note, by);
        Set<String> added = new HashSet<>();
        fresh.forEach(food -> added.add(food.slug()));
        return view(file, read, added);
      } catch (Refusal refusal) {
        if (refusal.reason() != Refusal.Reason.EXISTS) {
          throw refusal;
        }
      }
    }
  }

  private KitchenWork.TableRead view(String file, FoodTable.Result read, Set<String> added) {
    Set<String> known = new HashSet<>(desk.notebook().latest().foods());
    List<KitchenWork.TableFood> foods = new ArrayList<>();
    for (FoodTable.Found found : read.foods()) {
      Food food = found.food();
      String state = known.contains(food.slug()) ? "in the pantry already" : "new";
      foods.add(
          new KitchenWork.TableFood(
              found.row(),
              food.slug(),
              food.name(),
              food.kind().key(),
              found.kindGuessed(),
              FoodParts.figures(food.per100g()),
              food.allergens()
                  .map(set -> set.stream().map(Allergen::key).toList())
                  .orElse(null),
              added.contains(food.slug()) ? "added" : state));
    }
    return new KitchenWork.TableRead(
        file,
        foods,
        read.columns(),
        read.unknownColumns(),
        added.size(),
        Refusals.views(read.problems()));
  }
}
