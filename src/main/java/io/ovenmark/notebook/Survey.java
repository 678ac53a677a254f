package io.ovenmark.notebook;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.CommitId;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A notebook as ids of its contents, for those who keep what they work out and want to know what is
 * new: nothing is read that they do not ask for.
 */
public final class Survey {
  private final Notebook notebook;

  /**
   * Surveys a notebook.
   *
   * @param notebook the notebook, open
   */
  public Survey(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * Where all branches stand. As long as it is the same, so is everything but the files on disk and
   * the published tags.
   *
   * @return the newest commit of each branch by its name
   */
  public SortedMap<String, CommitId> heads() {
    SortedMap<String, CommitId> heads = new TreeMap<>(notebook.store().branches(""));
    notebook.store().branches(Layout.VARIANTS).forEach(heads::putIfAbsent);
    return heads;
  }

  /**
   * Where to keep what can be made anew: beside the repository's objects, never cloned.
   *
   * @return an absolute path; the folder may not exist yet
   */
  public Path ownFolder() {
    return notebook.ownFolder();
  }

  /**
   * The formulas that are on the main line or have a variant.
   *
   * @return their short names, those of the main line first
   */
  public Set<String> formulas() {
    Set<String> slugs = new LinkedHashSet<>(notebook.latest().formulas());
    for (String branch : notebook.store().branches(Layout.VARIANTS).keySet()) {
      String[] words = branch.substring(Layout.VARIANTS.length()).split("/", 2);
      if (words.length == 2 && Address.isVariant(words[1])) {
        slugs.add(words[0]);
      }
    }
    return slugs;
  }

  /**
   * The files of a formula's bakes on all its lines of history, readable or not.
   *
   * @param formula its short name
   * @return the content by path
   */
  public Map<String, BlobId> bakes(String formula) {
    return notebook.shelf().files(formula);
  }

  /**
   * Names all bakes of a formula: as long as it is the same, so are they.
   *
   * @param formula its short name
   * @return a text for use as a key
   */
  public String bakesKey(String formula) {
    return String.join(" ", notebook.shelf().foldersOf(formula));
  }

  /**
   * The name of a bake.
   *
   * @param path its file
   * @return such as {@code 2026-09-14-1}
   */
  public String bakeId(String path) {
    return Layout.bakeId(path);
  }

  /**
   * Reads a bake.
   *
   * @param formula short name of its formula
   * @param path its file
   * @param content the file's content
   * @return the bake
   * @throws io.ovenmark.json.UnreadableException when the content is damaged
   */
  public Bake bake(String formula, String path, BlobId content) {
    return notebook.shelf().bake(formula, path, content);
  }
}
