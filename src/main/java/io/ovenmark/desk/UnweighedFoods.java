package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.NamedUnweighed;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says which foods a method names although no line weighs them. */
final class UnweighedFoods {
  private UnweighedFoods() {}

  /** The foods of the built-in table and of the pantry as it is today that the method names. */
  static List<Views.UnweighedView> views(Desk desk, Worksheet sheet) {
    return sheet.formula().method().isEmpty()
        ? List.of()
        : NamedUnweighed.in(sheet, pantry(desk.notebook().latest())).stream()
            .map(
                each -> new Views.UnweighedView(each.step(), each.words(), inWords(each)))
            .toList();
  }

  /** The same, each as a sentence. */
  static List<String> remarks(Desk desk, Worksheet sheet) {
    return views(desk, sheet).stream().map(Views.UnweighedView::text).toList();
  }

  /** Those that an earlier state did not name, or weighed, each as a sentence. */
  static List<String> newIn(Desk desk, Optional<Worksheet> before, Worksheet sheet) {
    Set<String> old = new HashSet<>();
    before.ifPresent(earlier -> views(desk, earlier).forEach(each -> old.add(each.words())));
    return views(desk, sheet).stream()
        .filter(each -> !old.contains(each.words()))
        .map(Views.UnweighedView::text)
        .toList();
  }

  private static String inWords(NamedUnweighed named) {
    return "Step "
        + named.step()
        + " names “"
        + named.words()
        + "”, but no line weighs that: figures and allergens leave it out. Add a line for it, or"
        + " change the step.";
  }

  /** What the pantry has besides the built-in table; a food that cannot be read has no name. */
  private static List<Food> pantry(Contents contents) {
    List<Food> foods = new ArrayList<>();
    for (String slug : contents.foods()) {
      if (BuiltInPantry.find(slug).isEmpty()) {
        read(contents, slug).ifPresent(foods::add);
      }
    }
    return foods;
  }

  private static Optional<Food> read(Contents contents, String slug) {
    try {
      return contents.food(slug);
    } catch (UnreadableException | StoreException e) {
      return Optional.empty();
    }
  }
}
