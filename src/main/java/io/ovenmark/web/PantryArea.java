package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListFoods;
import io.ovenmark.desk.ShowFood;

/** Foods of the pantry and of the built-in table. */
final class PantryArea implements Area {
  private final Desk desk;

  PantryArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "foods",
            context ->
                Asked.optional(context, "words")
                    .map(words -> new ListFoods(desk).find(words))
                    .orElseGet(() -> new ListFoods(desk).call()))
        .question("food", context -> new ShowFood(desk).call(Asked.text(context, "food")));
  }
}
