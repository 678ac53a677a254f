package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FoodForm;
import io.ovenmark.desk.ImportFoods;
import io.ovenmark.desk.KitchenViews;
import io.ovenmark.desk.ListFoods;
import io.ovenmark.desk.ReadFoodTable;
import io.ovenmark.desk.SaveFood;
import io.ovenmark.desk.ShowFood;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.FoodImport;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Foods of the pantry and of the built-in table. */
final class PantryArea implements Area {
  private final Desk desk;
  private final Opening opening;

  PantryArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  /**
   * A table of foods that was chosen or dropped.
   *
   * @param file its name
   * @param text its content
   * @param take short names of the foods to add; null while only looking
   */
  private record TableOrder(String file, String text, List<String> take) {
    TableOrder {
      if (file == null || text == null) {
        throw new Refusal(
            Refusal.Reason.INVALID, "text", "There is no table.", "Choose a file.");
      }
      take = take == null ? List.of() : List.copyOf(take);
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("foods", this::foods)
        .question("food", context -> new ShowFood(desk).call(Asked.text(context, "food")))
        .question(
            "food/page",
            context ->
                new ShowFood(Asked.desk(desk, context))
                    .page(
                        Asked.text(context, "food"),
                        Asked.optional(context, "line").orElse(null)))
        .order(
            "food/try",
            context ->
                new SaveFood(Asked.desk(desk, context))
                    .look(Asked.order(context, FoodForm.class)))
        .order(
            "food/save",
            context ->
                new SaveFood(Asked.desk(desk, context))
                    .call(Asked.order(context, FoodForm.class), opening.by().get()))
        .order("foods/table", this::look)
        .order("foods/table/add", this::add)
        .order("foods/zip", context -> inZip(context, this::lookInZip))
        .order("foods/zip/add", context -> inZip(context, zip -> addFromZip(context, zip)));
  }

  private Object foods(Context context) {
    Optional<String> words = Asked.optional(context, "words");
    if (words.isPresent()) {
      return new ListFoods(desk).find(words.get());
    }
    boolean all = Asked.optional(context, "all").isPresent();
    return all ? new ListFoods(desk).withBuiltIn() : new ListFoods(desk).call();
  }

  private Object look(Context context) {
    TableOrder order = Asked.order(context, TableOrder.class);
    return new ReadFoodTable(desk).look(order.file(), order.text());
  }

  private Object add(Context context) {
    TableOrder order = Asked.order(context, TableOrder.class);
    return new ReadFoodTable(desk)
        .call(order.file(), order.text(), order.take(), opening.by().get());
  }

  /** A downloaded food table with the words that foods are chosen by. */
  private record Zip(Path file, FoodImport.Selection selection) {}

  private KitchenViews.ImportView lookInZip(Zip zip) {
    return new ImportFoods(desk).look(zip.file(), zip.selection(), FoodImport.Progress.NONE);
  }

  private KitchenViews.ImportView addFromZip(Context context, Zip zip) {
    Set<String> take = Set.of(Asked.text(context, "take").split(","));
    return new ImportFoods(desk)
        .call(
            zip.file(),
            zip.selection(),
            Optional.of(take),
            FoodImport.Progress.NONE,
            opening.by().get());
  }

  /** Keeps what was sent in a file of its own for as long as it is read. */
  private static Object inZip(Context context, Function<Zip, Object> read) {
    String words = Asked.text(context, "words");
    try {
      Path file = Files.createTempFile("food-table", ".zip");
      try (InputStream sent = context.bodyInputStream()) {
        Files.copy(sent, file, StandardCopyOption.REPLACE_EXISTING);
        return read.apply(new Zip(file, FoodImport.Selection.words(words)));
      } catch (Refusal refusal) {
        throw new Refusal(
            refusal.reason(),
            Asked.optional(context, "file").orElse("the table"),
            refusal.getMessage().replace("\"" + file + "\"", "The file"),
            refusal.hint());
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
