package io.ovenmark.change;

import java.util.Map;

/** What the values of a bake are called within a sentence, by their paths. */
final class BakeWords {
  private static final Map<String, String> FIELDS =
      Map.ofEntries(
          Map.entry("id", "the letter"),
          Map.entry("temperature", "the oven temperature"),
          Map.entry("minutes", "the time in the oven, in minutes,"),
          Map.entry("rack", "the place"),
          Map.entry("dough_g", "the dough mass, in grams,"),
          Map.entry("baked_g", "the baked mass, in grams,"),
          Map.entry("width_mm", "the width, in mm,"),
          Map.entry("height_mm", "the height, in mm,"),
          Map.entry("dough", "the dough mass"),
          Map.entry("baked", "the baked mass"),
          Map.entry("width", "the width"),
          Map.entry("height", "the height"),
          Map.entry("core", "the core temperature"),
          Map.entry("core_log", "the logged core temperatures"),
          Map.entry("crust_shade", "the crust"),
          Map.entry("crust", "the crust"),
          Map.entry("findings", "the findings"),
          Map.entry("liking", "the liking"),
          Map.entry("tasters", "what the tasters said"),
          Map.entry("verdict", "the verdict"),
          Map.entry("note", "the note"),
          Map.entry("time", "the time"),
          Map.entry("baker", "the baker"),
          Map.entry("ambient", "the remark on room and oven"),
          Map.entry("caption", "the caption"),
          Map.entry("taken", "the time of taking"),
          Map.entry("marks", "the marks"),
          Map.entry("grid", "the grid"),
          Map.entry("units", "the units"));

  private BakeWords() {}

  static String of(String path) {
    String[] steps = path.startsWith("form.") ? path.substring(5).split("\\.") : path.split("\\.");
    if (steps.length > 1 && steps[0].equals("pieces")) {
      String piece = "piece " + steps[1];
      return steps.length == 2 ? "the " + piece : part(steps, 2) + " of " + piece;
    }
    if (steps.length > 1 && steps[0].equals("photos")) {
      // a file has points of its own; what follows its ending is the field
      int end = path.indexOf(".jpg");
      String field = end < 0 ? "" : path.substring(end + 4).replaceFirst("^\\.", "");
      return (field.isEmpty() ? "" : part(field.split("\\."), 0) + " of ") + "the photo "
          + (end < 0 ? steps[1] : path.substring(7, end + 4));
    }
    return part(steps, 0);
  }

  /** The field at a step, with what lies below it. */
  private static String part(String[] steps, int at) {
    String field = FIELDS.getOrDefault(steps[at], "the field " + Texts.quoted(steps[at]));
    boolean scored = steps[at].equals("attributes") && steps.length > at + 1;
    if (scored) {
      return "the scores for " + Texts.quoted(steps[at + 1]);
    }
    boolean taster = steps.length > at + 1 && steps[at + 1].matches("\\d+");
    return taster ? field + " (taster " + (Integer.parseInt(steps[at + 1]) + 1) + ")" : field;
  }
}
