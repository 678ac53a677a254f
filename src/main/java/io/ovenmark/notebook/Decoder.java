package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import io.ovenmark.story.StoryCodec;
import io.ovenmark.story.StoryPlan;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.TastingCodec;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Reads blobs into records, each blob once: what a blob says never changes. */
final class Decoder {
  /** How many decoded records are kept; a formula of 25 lines takes some 10 kB. */
  private static final int KEPT = 8192;

  private record Key(String kind, String name, String blob) {}

  private final GitStore store;
  private final Map<Key, Object> decoded =
      Collections.synchronizedMap(
          new LinkedHashMap<>(256, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Key, Object> eldest) {
              return size() > KEPT;
            }
          });

  Decoder(GitStore store) {
    this.store = store;
  }

  Formula formula(String path, BlobId blob) {
    return once(
        new Key("formula", "", blob.hex()),
        Formula.class,
        () -> FormulaCodec.read(path, store.read(blob)));
  }

  Food food(String slug, BlobId blob) {
    return once(
        new Key("food", slug, blob.hex()),
        Food.class,
        () -> FoodCodec.read(Layout.food(slug), slug, store.read(blob)));
  }

  Goal goal(String slug, BlobId blob) {
    return once(
        new Key("goal", slug, blob.hex()),
        Goal.class,
        () -> GoalCodec.read(Layout.goal(slug), slug, store.read(blob)));
  }

  Bake bake(String formula, String path, BlobId blob) {
    return once(
        new Key("bake", path, blob.hex()),
        Bake.class,
        () -> BakeCodec.read(path, formula, Layout.bakeId(path), store.read(blob)));
  }

  Tasting tasting(String formula, String path, BlobId blob) {
    return once(
        new Key("tasting", path, blob.hex()),
        Tasting.class,
        () -> TastingCodec.read(path, formula, Layout.bakeId(path), store.read(blob)));
  }

  StoryPlan story(Address line, String path, BlobId blob) {
    return once(
        new Key("story", path, blob.hex()),
        StoryPlan.class,
        () -> StoryCodec.read(path, line.formula(), line.variant(), store.read(blob)));
  }

  NotebookSettings settings(BlobId blob) {
    return once(
        new Key("settings", "", blob.hex()),
        NotebookSettings.class,
        () -> NotebookSettings.read(Layout.SETTINGS, store.read(blob)));
  }

  private <T> T once(Key key, Class<T> type, Supplier<T> read) {
    Object known = decoded.get(key);
    if (known == null) {
      known = read.get();
      decoded.put(key, known);
    }
    return type.cast(known);
  }
}
