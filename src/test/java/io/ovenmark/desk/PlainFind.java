package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds words by reading every revision and bake anew, slowly and simply: what {@link
 * FindInHistory} must find, too. It knows words between spaces, of Latin and Greek letters.
 */
final class PlainFind {
  private final Notebook notebook;

  PlainFind(Notebook notebook) {
    this.notebook = notebook;
  }

  /** Addresses of the revisions and {@code formula/id} of the bakes that have all words. */
  Set<String> words(String words) {
    Set<String> found = new TreeSet<>();
    for (String formula : notebook.latest().formulas()) {
      for (Address line : notebook.lines(formula)) {
        int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
        Revision before = null;
        for (Revision revision : notebook.revisions(line)) {
          if (revision.number() > fork && has(words, texts(before, revision))) {
            found.add(revision.address().toString());
          }
          before = revision;
        }
      }
      for (Bake bake : notebook.bakes(formula)) {
        if (has(words, texts(bake))) {
          found.add(formula + "/" + bake.id());
        }
      }
    }
    return found;
  }

  /** Addresses of the revisions that changed a food. */
  Set<String> food(String food) {
    Set<String> found = new TreeSet<>();
    for (String formula : notebook.latest().formulas()) {
      for (Address line : notebook.lines(formula)) {
        int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
        Map<String, String> before = Map.of();
        for (Revision revision : notebook.revisions(line)) {
          Map<String, String> now = lines(notebook.formula(revision), food);
          if (revision.number() > fork && !now.equals(before)) {
            found.add(revision.address().toString());
          }
          before = now;
        }
      }
    }
    return found;
  }

  private static Map<String, String> lines(Formula formula, String food) {
    Map<String, String> lines = new TreeMap<>();
    for (Line line : formula.lines()) {
      if (line.food().equals(food)) {
        lines.put(line.id(), line.amount().toString() + " " + line.note());
      }
    }
    return lines;
  }

  private List<String> texts(Revision before, Revision revision) {
    Formula now = notebook.formula(revision);
    List<String> texts = new ArrayList<>(List.of(revision.note(), revision.details()));
    List<String> all = texts(now);
    if (before != null) {
      all.removeAll(texts(notebook.formula(before)));
    }
    texts.addAll(all);
    Set<String> foods = new TreeSet<>();
    now.lines().forEach(line -> foods.add(line.food()));
    if (before != null) {
      notebook.formula(before).lines().forEach(line -> foods.add(line.food()));
    }
    for (String food : foods) {
      Map<String, String> earlier =
          before == null ? Map.of() : lines(notebook.formula(before), food);
      if (!lines(now, food).equals(earlier)) {
        texts.add(food);
        texts.add(notebook.latest().food(food).map(each -> each.name()).orElse(""));
      }
    }
    return texts;
  }

  private static List<String> texts(Formula formula) {
    List<String> texts = new ArrayList<>();
    texts.add(formula.name());
    formula.description().ifPresent(texts::add);
    formula.lines().forEach(line -> line.note().ifPresent(texts::add));
    texts.addAll(formula.method());
    for (BakeSetting stage : formula.bake()) {
      stage.note().ifPresent(texts::add);
    }
    formula.storage().ifPresent(texts::add);
    return texts;
  }

  private static List<String> texts(Bake bake) {
    List<String> texts = new ArrayList<>(bake.findings());
    bake.note().ifPresent(texts::add);
    bake.ambient().ifPresent(texts::add);
    bake.baker().ifPresent(texts::add);
    for (Piece piece : bake.pieces()) {
      texts.addAll(piece.findings());
      piece.verdict().ifPresent(texts::add);
      piece.note().ifPresent(texts::add);
    }
    for (Photo photo : bake.photos()) {
      photo.caption().ifPresent(texts::add);
    }
    return texts;
  }

  private static boolean has(String words, List<String> texts) {
    Set<String> there = new HashSet<>();
    texts.forEach(text -> there.addAll(split(text)));
    return split(words).stream()
        .allMatch(word -> there.stream().anyMatch(each -> each.startsWith(word)));
  }

  private static List<String> split(String text) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replace('ς', 'σ');
    return List.of(plain.split("[^\\p{L}\\p{N}]+")).stream().filter(w -> !w.isEmpty()).toList();
  }
}
