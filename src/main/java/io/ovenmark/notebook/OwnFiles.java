package io.ovenmark.notebook;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Slug;
import io.ovenmark.notebook.store.BlobId;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** The own foods and goals, beside those that come in. */
final class OwnFiles {
  private final Notebook target;
  private final Contents own;
  private final MadeContents contents;

  OwnFiles(Notebook target, Contents own, MadeContents contents) {
    this.target = target;
    this.own = own;
    this.contents = contents;
  }

  /** Those that the own notebook does not have. */
  List<String> fresh(
      List<String> slugs, SortedMap<String, BlobId> now, Function<String, String> path) {
    return slugs.stream()
        .distinct()
        .filter(each -> now.containsKey(path.apply(each)))
        .filter(each -> own.blob(path.apply(each)).isEmpty())
        .sorted()
        .toList();
  }

  /** Those that it has with other contents, with free names for theirs. */
  SortedMap<String, String> differing(
      List<String> slugs, SortedMap<String, BlobId> now, Function<String, String> path) {
    SortedMap<String, String> differing = new TreeMap<>();
    for (String slug : slugs) {
      BlobId theirs = now.get(path.apply(slug));
      Optional<BlobId> ours = own.blob(path.apply(slug));
      if (theirs != null
          && ours.isPresent()
          && !ours.get().equals(theirs)
          && !saysTheSame(path.apply(slug), theirs, ours.get())) {
        differing.put(slug, free(slug, now, path));
      }
    }
    return differing;
  }

  private boolean saysTheSame(String path, BlobId theirs, BlobId ours) {
    NotebookFile there = shared(NotebookFile.read(path, contents.read(theirs)));
    try {
      return there.equals(shared(NotebookFile.read(path, target.store().read(ours))));
    } catch (UnreadableException damaged) {
      return false;
    }
  }

  /** Prices and the like may differ: no figure rests on them, and the own ones stay. */
  private static NotebookFile shared(NotebookFile file) {
    return file instanceof NotebookFile.FoodFile food
        ? new NotebookFile.FoodFile(food.food().withoutPrivate())
        : file;
  }

  private String free(
      String slug, SortedMap<String, BlobId> now, Function<String, String> path) {
    for (int n = 2; ; n++) {
      String end = "-" + n;
      int room = Slug.LONGEST - end.length();
      String stem = slug.length() > room ? slug.substring(0, room).replaceAll("-+$", "") : slug;
      String name = stem + end;
      if (own.blob(path.apply(name)).isEmpty() && !now.containsKey(path.apply(name))) {
        return name;
      }
    }
  }
}
