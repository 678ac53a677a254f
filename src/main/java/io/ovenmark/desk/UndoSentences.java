package io.ovenmark.desk;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.LastChange;
import io.ovenmark.notebook.LastChange.Effect;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Says what taking a change back does to files other than those of formulas. */
final class UndoSentences {
  private static final int MOST_NAMES = 6;
  private static final Map<String, String> KINDS =
      Map.of(
          "bakes", "bake",
          "photos", "photo",
          "pantry", "food",
          "goals", "goal",
          "tastings", "tasting",
          "stories", "story");

  private final Contents now;
  private final Contents then;

  private UndoSentences(Contents now, Contents then) {
    this.now = now;
    this.then = then;
  }

  /**
   * In sentences, one for each kind of file and what happens to it.
   *
   * @param change the change
   * @param now what the notebook holds with it
   * @param then what it holds without it
   */
  static List<String> of(LastChange change, Contents now, Contents then) {
    List<String> sentences = new ArrayList<>();
    change.variants().forEach((line, effect) -> sentences.add(sentence("variant", line, effect)));
    change
        .publications()
        .forEach((name, effect) -> sentences.add(sentence("publication of", name, effect)));
    sentences.addAll(new UndoSentences(now, then).sentences(change.effects()));
    return List.copyOf(sentences);
  }

  private static String sentence(String kind, String name, Effect effect) {
    return "The " + kind + " " + name + " " + one(effect) + ".";
  }

  private List<String> sentences(Map<String, Effect> effects) {
    Map<String, Map<Effect, List<String>>> named = new TreeMap<>();
    effects.forEach(
        (path, effect) -> {
          String folder = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
          if (!folder.equals("formulas")) {
            named
                .computeIfAbsent(
                    KINDS.getOrDefault(folder, "file"), kind -> new EnumMap<>(Effect.class))
                .computeIfAbsent(effect, e -> new ArrayList<>())
                .add(name(folder, path));
          }
        });
    List<String> sentences = new ArrayList<>();
    named.forEach(
        (kind, all) ->
            all.forEach((effect, names) -> sentences.add(sentence(kind, effect, names))));
    return List.copyOf(sentences);
  }

  private static String sentence(String kind, Effect effect, List<String> names) {
    if (names.size() == 1) {
      return "The " + kind + " " + names.get(0) + " " + one(effect) + ".";
    }
    int told = Math.min(MOST_NAMES, names.size());
    String more = names.size() > told ? " and " + (names.size() - told) + " more" : "";
    String kinds = (kind + "s").replaceFirst("ys$", "ies");
    return names.size() + " " + kinds + " " + many(effect) + ": "
        + String.join(", ", names.subList(0, told)) + more + ".";
  }

  private static String one(Effect effect) {
    return switch (effect) {
      case BACK -> "is there again";
      case AS_BEFORE -> "is as it was before";
      case GONE -> "is taken away";
      case LOST -> "cannot come back: it is not kept in this copy of the notebook";
    };
  }

  private static String many(Effect effect) {
    return switch (effect) {
      case BACK -> "are there again";
      case AS_BEFORE -> "are as they were before";
      case GONE -> "are taken away";
      case LOST -> "cannot come back: they are not kept in this copy of the notebook";
    };
  }

  private String name(String folder, String path) {
    String file = path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.json$", "");
    String[] parts = path.split("/", -1);
    return switch (folder) {
      case "bakes", "tastings" -> parts.length == 3 ? file + " of " + parts[1] : path;
      case "stories" -> parts.length == 3 ? parts[1] + "/" + file : file;
      case "pantry" -> readable(() -> then.food(file).or(() -> now.food(file)).map(Food::name), file);
      case "goals" ->
          readable(() -> then.goal(file).or(() -> now.goal(file)).map(each -> each.name()), file);
      case "photos" -> file;
      default -> path;
    };
  }

  private static String readable(Supplier<Optional<String>> name, String file) {
    try {
      return name.get().orElse(file);
    } catch (UnreadableException damaged) {
      return file;
    }
  }
}
