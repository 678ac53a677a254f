package io.ovenmark.notebook;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.index.Entry;
import io.ovenmark.notebook.store.BlobId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** How the formulas of a notebook are called, or were. */
public final class FormulaNames {
  private FormulaNames() {}

  /**
   * The names of all formulas that are, or were, on the main line or a variant.
   *
   * @param notebook the notebook
   * @return for each short name all names that it had; none for those that cannot be read
   */
  public static Map<String, Set<String>> of(Notebook notebook) {
    Map<String, Set<String>> names = new TreeMap<>();
    Set<BlobId> seen = new HashSet<>();
    for (Entry entry : notebook.history().newestFirst(Layout.MAIN, Integer.MAX_VALUE)) {
      Layout.slugIn(Layout.FORMULAS, entry.path())
          .ifPresent(slug -> called(notebook, names, slug, entry, seen));
    }
    for (String branch : notebook.store().branches(Layout.VARIANTS).keySet()) {
      String slug = branch.substring(Layout.VARIANTS.length()).split("/", 2)[0];
      for (Entry entry : notebook.history().formula(branch, Layout.formula(slug))) {
        called(notebook, names, slug, entry, seen);
      }
    }
    return names;
  }

  private static void called(
      Notebook notebook,
      Map<String, Set<String>> names,
      String slug,
      Entry entry,
      Set<BlobId> seen) {
    Set<String> called = names.computeIfAbsent(slug, each -> new TreeSet<>());
    entry.blob().filter(seen::add).ifPresent(blob -> add(notebook, called, blob));
  }

  private static void add(Notebook notebook, Set<String> called, BlobId blob) {
    try {
      byte[] bytes = notebook.store().read(blob);
      called.addAll(List.of(FormulaCodec.read(Layout.FORMULAS, bytes).name()));
    } catch (UnreadableException damaged) {
      return;
    }
  }
}
