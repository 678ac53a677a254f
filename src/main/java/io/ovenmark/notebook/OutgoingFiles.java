package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.json.Extras;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The files of a formula as they go into another notebook. */
final class OutgoingFiles {
  private final Notebook notebook;
  private final MadeContents contents;
  private final String slug;
  private final boolean prices;
  private final UnaryOperator<Bake> bakes;
  private final Map<BlobId, Optional<BlobId>> foods = new HashMap<>();

  /**
   * For one formula.
   *
   * @param notebook where it is
   * @param contents where what is made anew is kept
   * @param slug the formula's short name
   * @param prices whether prices of foods go along
   * @param bakes a bake as it goes along
   */
  OutgoingFiles(
      Notebook notebook,
      MadeContents contents,
      String slug,
      boolean prices,
      UnaryOperator<Bake> bakes) {
    this.notebook = notebook;
    this.contents = contents;
    this.slug = slug;
    this.prices = prices;
    this.bakes = bakes;
  }

  /** The files of a moment as they go along. */
  SortedMap<String, BlobId> files(SortedMap<String, BlobId> files, String title) {
    SortedMap<String, BlobId> told = new TreeMap<>();
    files.forEach(
        (path, blob) -> {
          if (path.equals(Layout.SETTINGS)) {
            told.put(path, contents.put(settings(blob, title)));
          } else if (Layout.isPhoto(path)) {
            contents.picture(path, blob).ifPresent(clean -> told.put(path, clean));
          } else if (Layout.slugIn(Layout.PANTRY, path).isPresent()) {
            food(path, blob).ifPresent(bare -> told.put(path, bare));
          } else if (Layout.isBake(path)) {
            told.put(path, bake(path, blob));
          } else {
            told.put(path, blob);
          }
        });
    told.computeIfAbsent(
        Layout.SETTINGS, path -> contents.put(NotebookSettings.titled(title).write()));
    return told;
  }

  /** Without its price; nothing when it cannot be read, since a price may be anywhere in it. */
  private Optional<BlobId> food(String path, BlobId blob) {
    if (prices) {
      return Optional.of(blob);
    }
    return foods.computeIfAbsent(
        blob,
        each ->
            readFood(path, each)
                .map(food -> contents.put(FoodCodec.write(food.withoutPrivate()))));
  }

  private Optional<Food> readFood(String path, BlobId blob) {
    try {
      String food = Layout.slugIn(Layout.PANTRY, path).orElseThrow();
      return Optional.of(FoodCodec.read(path, food, notebook.store().read(blob)));
    } catch (UnreadableException damaged) {
      return Optional.empty();
    }
  }

  private BlobId bake(String path, BlobId blob) {
    try {
      Bake bake = BakeCodec.read(path, slug, Layout.bakeId(path), notebook.store().read(blob));
      Bake told = bakes.apply(bake);
      return told.equals(bake) ? blob : contents.put(BakeCodec.write(told));
    } catch (UnreadableException damaged) {
      return blob;
    }
  }

  /** Of the settings only what figures are worked out by. */
  private byte[] settings(BlobId blob, String title) {
    NotebookSettings usual = NotebookSettings.titled(title);
    NotebookSettings own =
        NotebookSettings.read(Layout.SETTINGS, notebook.store().read(blob));
    return new NotebookSettings(
            NotebookSettings.FORMAT,
            title,
            usual.temperatureUnit(),
            usual.massUnit(),
            own.policy(),
            Extras.NONE)
        .write();
  }

  /** A file that is no picture as it goes along. */
  Optional<BlobId> file(String path, BlobId blob) {
    if (Layout.slugIn(Layout.PANTRY, path).isPresent()) {
      return food(path, blob);
    }
    return Optional.of(Layout.isBake(path) ? bake(path, blob) : blob);
  }

  /** Whether a food's file has something that concerns only its owner. */
  boolean hasPrivate(String path, BlobId blob) {
    return readFood(path, blob).filter(food -> !food.equals(food.withoutPrivate())).isPresent();
  }
}
