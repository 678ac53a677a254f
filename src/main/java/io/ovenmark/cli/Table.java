package io.ovenmark.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of text in aligned columns, two spaces apart.
 *
 * <pre>{@code
 * Table table = new Table("line", ">grams").indent(2);
 * table.row("water", "188");
 * }</pre>
 */
final class Table {
  private static final String GAP = "  ";

  private final List<String> heads;
  private final List<Boolean> right;
  private final List<List<String>> rows = new ArrayList<>();
  private String indent = "";

  /**
   * A table.
   *
   * @param columns the heads; one that begins with {@code >} stands to the right, with its column.
   *     With empty heads only, no line of heads is printed
   */
  Table(String... columns) {
    List<String> names = new ArrayList<>();
    List<Boolean> sides = new ArrayList<>();
    for (String column : columns) {
      sides.add(column.startsWith(">"));
      names.add(column.startsWith(">") ? column.substring(1) : column);
    }
    heads = List.copyOf(names);
    right = List.copyOf(sides);
  }

  /** Moves the whole table to the right. */
  Table indent(int spaces) {
    indent = " ".repeat(spaces);
    return this;
  }

  /** Adds a row; missing cells at its end are empty. */
  Table row(String... cells) {
    List<String> row = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      row.add(i < cells.length && cells[i] != null ? Printable.of(cells[i]) : "");
    }
    rows.add(List.copyOf(row));
    return this;
  }

  /** The same table without the columns that hold nothing in any row. */
  Table withoutEmptyColumns() {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      int column = i;
      if (rows.stream().anyMatch(row -> !row.get(column).isEmpty())) {
        kept.add(i);
      }
    }
    Table table =
        new Table(
            kept.stream()
                .map(i -> (right.get(i) ? ">" : "") + heads.get(i))
                .toArray(String[]::new));
    table.indent = indent;
    rows.forEach(row -> table.row(kept.stream().map(row::get).toArray(String[]::new)));
    return table;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The lines to print. */
  List<String> lines() {
    List<List<String>> all = new ArrayList<>();
    if (heads.stream().anyMatch(head -> !head.isEmpty())) {
      all.add(heads);
    }
    all.addAll(rows);
    int[] widths = new int[heads.size()];
    for (List<String> row : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], TextWidth.of(row.get(i)));
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : all) {
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < widths.length; i++) {
        String cell = row.get(i);
        line.append(i == 0 ? "" : GAP)
            .append(
                right.get(i) ? TextWidth.right(cell, widths[i]) : TextWidth.left(cell, widths[i]));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }
}
