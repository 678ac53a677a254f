package io.ovenmark.notebook;

import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.TastingCodec;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The tastings of formulas. They are kept on the main line, since a tasting may compare revisions
 * of several lines and formulas.
 *
 * <pre>{@code
 * Tastings tastings = new Tastings(notebook);
 * Optional<Tasting> tasting = tastings.find("lupin-bun", "2026-09-14-1");
 * }</pre>
 */
public final class Tastings {
  private final Notebook notebook;

  /**
   * The tastings of a notebook.
   *
   * @param notebook the notebook, open
   */
  public Tastings(Notebook notebook) {
    this.notebook = notebook;
  }

  /**
   * What was found in a formula's folder.
   *
   * @param tastings those that can be read, newest first
   * @param problems what is wrong with the others
   */
  public record Found(List<Tasting> tastings, List<Problem> problems) {
    /** Copies. */
    public Found {
      tastings = List.copyOf(tastings);
      problems = List.copyOf(problems);
    }
  }

  /**
   * The tastings of a formula.
   *
   * @param formula its slug
   * @return those that can be read, and what is wrong with the others
   */
  public Found of(String formula) {
    Contents contents = notebook.latest();
    List<Tasting> tastings = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String id : ids(contents, formula)) {
      String path = path(formula, id);
      try {
        contents.tasting(formula, path).ifPresent(tastings::add);
      } catch (UnreadableException e) {
        problems.addAll(e.problems());
      } catch (StoreException e) {
        problems.add(new Problem(path, Position.NONE, "", e.getMessage(), ""));
      }
    }
    tastings.sort(Comparator.comparing(Tasting::time).thenComparing(Tasting::id).reversed());
    return new Found(tastings, problems);
  }

  /**
   * A tasting.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @return the tasting; empty when there is none of that name
   * @throws UnreadableException when its file is damaged
   */
  public Optional<Tasting> find(String formula, String id) {
    String path = path(formula, id);
    return Layout.isTasting(path)
        ? notebook.latest().tasting(formula, path)
        : Optional.empty();
  }

  /**
   * A name for a new tasting.
   *
   * @param formula slug of the formula
   * @param date day of the tasting
   * @return {@code <date>-<n>}, not taken yet
   */
  public String freeId(String formula, LocalDate date) {
    SortedSet<String> taken = ids(notebook.latest(), formula);
    int n = 1;
    while (taken.contains(date + "-" + n)) {
      n++;
    }
    return date + "-" + n;
  }

  /**
   * Commits a new tasting.
   *
   * @param tasting the tasting
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when there is a tasting of that name
   */
  public void add(Tasting tasting, String note, By by) {
    put(tasting, Optional.empty(), note, by);
  }

  /**
   * Commits a changed tasting.
   *
   * @param before the tasting as it was read
   * @param after the tasting as it shall be
   * @param note for the commit
   * @param by who and when
   * @throws Refusal when somebody changed the tasting meanwhile
   */
  public void change(Tasting before, Tasting after, String note, By by) {
    Contents contents = notebook.latest();
    BlobId known =
        contents
            .blob(before.path())
            .filter(
                blob ->
                    contents
                        .tasting(before.formula(), before.path())
                        .equals(Optional.of(before)))
            .orElseThrow(() -> RecordWriter.changed(before.path()));
    put(after, Optional.of(known), note, by);
  }

  private void put(Tasting tasting, Optional<BlobId> seen, String note, By by) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(tasting.path(), TastingCodec.write(tasting));
    SortedMap<String, Optional<BlobId>> expected = new TreeMap<>();
    expected.put(tasting.path(), seen);
    new RecordWriter(notebook).put(Layout.MAIN, files, expected, note, by);
  }

  private static String path(String formula, String id) {
    return Layout.tastings(formula) + "/" + id + ".json";
  }

  private static SortedSet<String> ids(Contents contents, String formula) {
    SortedSet<String> ids = new TreeSet<>();
    contents.files(Layout.tastings(formula)).stream()
        .filter(Layout::isTasting)
        .forEach(path -> ids.add(Layout.bakeId(path)));
    return ids;
  }
}
