package io.ovenmark.pantry;

import io.ovenmark.json.Position;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** What the readers of the two food tables have in common: one file after the other, row by row. */
abstract class TableReader {
  final FoodFiles files;
  final FoodImport.Selection selection;
  final Report report;
  final Map<String, ImportedFood> chosen = new LinkedHashMap<>();
  private final FoodImport.Progress progress;
  private final List<String> words;
  private int byWords;
  private boolean more;

  TableReader(
      FoodFiles files,
      FoodImport.Selection selection,
      FoodImport.Progress progress,
      Report report) {
    this.files = files;
    this.selection = selection;
    this.progress = progress;
    this.report = report;
    this.words = Words.of(selection.words());
  }

  /** Does something with each row. */
  interface RowReader {
    void read(Row row) throws IOException;
  }

  /** The row that is being read, with its file and the names of its columns. */
  static final class Row {
    final String file;
    final DelimitedReader at;
    private final Map<String, Integer> columns;
    private final Report report;

    Row(String file, DelimitedReader at, Map<String, Integer> columns, Report report) {
      this.file = file;
      this.at = at;
      this.columns = columns;
      this.report = report;
    }

    String text(String column) {
      Integer field = columns.get(column);
      return field == null ? "" : at.text(field).strip();
    }

    /** A number from 0 to a limit; empty when there is none or it is faulty (reported). */
    OptionalDouble number(String column, double most) {
      String text = text(column);
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      double value;
      try {
        value = Double.parseDouble(text);
      } catch (NumberFormatException e) {
        fault(column, "\"" + shorten(text) + "\" is not a number.", "It was left out: unknown.");
        return OptionalDouble.empty();
      }
      if (!(value >= 0 && value <= most)) {
        fault(
            column,
            "The number " + shorten(text) + " is out of range.",
            "It was left out: unknown. Expected is 0 to " + HouseholdNames.number(most) + ".");
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(value);
    }

    void fault(String column, String message, String hint) {
      report.add(file, at.position(columns.getOrDefault(column, 0)), column, message, hint);
    }

    private static String shorten(String text) {
      return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
  }

  /** Reads a file whose columns are fixed. */
  void each(String file, char separator, char quote, List<String> columns, RowReader reader)
      throws IOException {
    try (Reader in = open(file, StandardCharsets.ISO_8859_1)) {
      DelimitedReader records = new DelimitedReader(in, separator, quote, false);
      Row row = new Row(file, records, places(columns), report);
      boolean first = true;
      while (records.next()) {
        if (wellFormed(row, columns.size(), first)) {
          reader.read(row);
        }
        first = false;
      }
    }
  }

  /** Reads a file whose first row names its columns. */
  void each(String file, List<String> needed, RowReader reader) throws IOException {
    try (Reader in = open(file, StandardCharsets.UTF_8)) {
      DelimitedReader records = new DelimitedReader(in, ',', '"', true);
      if (!records.next()) {
        throw Report.refusal(
            file, Position.NONE, "", "The file is empty.", "Unpack the download again.");
      }
      List<String> columns = new ArrayList<>();
      for (int i = 0; i < records.fields(); i++) {
        columns.add(records.text(i).replace("\uFEFF", "").replace("\"", "").strip());
      }
      for (String column : needed) {
        if (!columns.contains(column)) {
          throw Report.refusal(
              file,
              records.position(0),
              column,
              "The first row names no column \"" + column + "\".",
              "Use the CSV files of FoodData Central as they were downloaded.");
        }
      }
      Row row = new Row(file, records, places(columns), report);
      while (records.next()) {
        if (wellFormed(row, columns.size(), false)) {
          reader.read(row);
        }
      }
    }
  }

  /** Notes a food when it is wanted. */
  void consider(String id, String description, int group, boolean wordsMayChoose) {
    boolean byId = selection.ids().contains(id);
    boolean fits = wordsMayChoose && !words.isEmpty() && ImportedFood.fits(words, description);
    if (fits && !byId) {
      more = more || byWords >= selection.most();
      fits = byWords++ < selection.most();
    }
    if ((byId || fits) && !description.isBlank()) {
      chosen.putIfAbsent(id, new ImportedFood(id, description.strip(), group));
    }
  }

  FoodImport.Result finish(
      FoodImport.Layout layout, Source.Kind source, String note, String foodsFile) {
    for (String id : new TreeSet<>(selection.ids())) {
      if (!chosen.containsKey(id)) {
        report.add(
            foodsFile,
            Position.NONE,
            "",
            "The table has no usable food with the number " + id + ".",
            "Check the number, leading zeros included.");
      }
    }
    List<ImportedFood> foods = List.copyOf(chosen.values());
    Optional<FoodKind> kind = selection.kind();
    return new FoodImport.Result(
        layout,
        ImportedFood.finish(foods, source, note, kind),
        report.problems(),
        report.count(),
        more);
  }

  void require(String file) {
    if (!files.has(file)) {
      throw Report.refusal(
          file, Position.NONE, "", "The file is missing.", "Unpack the whole download beside it.");
    }
  }

  private Reader open(String file, Charset charset) throws IOException {
    require(file);
    long total = files.size(file).orElse(0L);
    return new InputStreamReader(
        files.read(file, done -> progress.read(file, done, total)), charset);
  }

  private static Map<String, Integer> places(List<String> columns) {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      places.put(columns.get(i), i);
    }
    return places;
  }

  private boolean wellFormed(Row row, int columns, boolean mustBe) {
    String message = row.at.fault();
    if (message.isEmpty() && row.at.fields() != columns) {
      message = "The row has " + row.at.fields() + " fields where " + columns + " belong.";
    }
    if (message.isEmpty()) {
      return true;
    }
    if (mustBe) {
      throw Report.refusal(
          row.file,
          row.at.position(0),
          "",
          message,
          "Use the ASCII files of SR28 as they were downloaded.");
    }
    report.add(
        row.file,
        row.at.position(0),
        "",
        message,
        "The row was left out; download the file again if there are many.");
    return false;
  }
}
