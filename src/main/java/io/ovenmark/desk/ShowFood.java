package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodFacts;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Shows a food of the pantry, or one of the built-in table that the pantry lacks.
 *
 * <pre>{@code
 * KitchenViews.FoodView food = new ShowFood(desk).call("egg-whole");
 * }</pre>
 */
public final class ShowFood {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowFood(Desk desk) {
    this.desk = desk;
  }

  /**
   * Shows it.
   *
   * @param slug its short name
   * @return the food
   * @throws io.ovenmark.notebook.Refusal when there is no such food
   * @throws io.ovenmark.json.UnreadableException when its file is damaged
   */
  public KitchenViews.FoodView call(String slug) {
    Asked.slug("food", slug);
    LinesInUse lines = new LinesInUse(desk.notebook());
    FoodPlace place = FoodPlace.of(desk, slug, null, lines);
    return FoodParts.view(
        food(slug, place), place.food().isPresent(), lines.withFood(slug));
  }

  /**
   * Shows it for its page: with who uses it line by line, and in the words of a form.
   *
   * @param slug its short name
   * @param line the variant whose own copy is meant, or null
   * @return the food
   * @throws io.ovenmark.notebook.Refusal when there is no such food or variant
   * @throws io.ovenmark.json.UnreadableException when its file is damaged
   */
  public KitchenWork.FoodPage page(String slug, String line) {
    Asked.slug("food", slug);
    LinesInUse lines = new LinesInUse(desk.notebook());
    FoodPlace place = FoodPlace.of(desk, slug, line, lines);
    Food food = food(slug, place);
    NetCarbohydrate net = place.contents().settings().policy().netCarbohydrate();
    return new KitchenWork.FoodPage(
        FoodParts.view(food, place.food().isPresent(), lines.withFood(slug)),
        place.contents().commit().hex(),
        place.line().map(Address::line).orElse(null),
        FoodFacts.of(food),
        BuiltInPantry.otherNames(slug),
        FoodParts.net(food, net),
        net.inWords(),
        lines.using(slug).stream().map(use -> use(use, slug)).toList(),
        place.copies(slug, lines).stream()
            .map(use -> new KitchenWork.FoodCopy(use.line().line(), isSame(use, food)))
            .toList(),
        Cautions.of(food));
  }

  private static Food food(String slug, FoodPlace place) {
    return place
        .foodOrBuiltIn(slug)
        .orElseThrow(() -> FoodParts.noFood(slug, place.contents()));
  }

  private boolean isSame(LinesInUse.Use use, Food food) {
    try {
      return desk.notebook().latest(use.line()).food(food.slug()).equals(Optional.of(food));
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
      return false;
    }
  }

  /** The ingredients of a line of history that are the food; without masses when damaged. */
  private KitchenWork.FoodUse use(LinesInUse.Use use, String slug) {
    List<KitchenWork.UsedLine> used = new ArrayList<>();
    try {
      desk.tried(use.line(), use.formula(), Trial.NOTHING).worksheet().lines().stream()
          .filter(line -> line.line().food().equals(slug))
          .forEach(
              line ->
                  used.add(
                      new KitchenWork.UsedLine(
                          line.line().id(),
                          line.line().amount().toString(),
                          FigureSet.number(line.grams()),
                          line.resolved().approximate(),
                          FigureSet.number(line.percentOfBatch()))));
    } catch (UnreadableException | StoreException e) {
      Refusals.problemsOf(e);
      use.formula().lines().stream()
          .filter(line -> line.food().equals(slug))
          .forEach(
              line ->
                  used.add(
                      new KitchenWork.UsedLine(
                          line.id(), line.amount().toString(), null, false, null)));
    }
    return new KitchenWork.FoodUse(
        use.line().line(),
        use.line().formula(),
        use.line().variant().orElse(null),
        use.formula().name(),
        used);
  }
}
