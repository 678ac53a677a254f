package io.ovenmark.cause;

import io.ovenmark.bake.FindingVocabulary;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table of likely causes, kept as {@code causes.tsv} beside this class: a line each, tabs
 * between finding, gauge, way, first step, low limit, cause, what is done against it, and source;
 * the more common cause of a finding stands first.
 */
public final class CauseTable {
  private static final String FILE = "causes.tsv";
  private static final int COLUMNS = 8;
  private static final Map<FindingVocabulary, List<Cause>> CAUSES = load();

  private CauseTable() {}

  /**
   * The causes of a finding.
   *
   * @param finding the finding
   * @return its causes, the most common first; none for a merit
   */
  public static List<Cause> of(FindingVocabulary finding) {
    return CAUSES.getOrDefault(finding, List.of());
  }

  private static Map<FindingVocabulary, List<Cause>> load() {
    try (InputStream in = CauseTable.class.getResourceAsStream(FILE)) {
      return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a table.
   *
   * @param text the lines; empty ones and those that begin with # are skipped
   * @return the causes by finding
   * @throws IllegalArgumentException when a line is faulty, with its number
   */
  static Map<FindingVocabulary, List<Cause>> read(String text) {
    Map<FindingVocabulary, List<Cause>> causes = new EnumMap<>(FindingVocabulary.class);
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (!line.isBlank() && !line.startsWith("#")) {
        try {
          Cause cause = cause(line.split("\t", -1), causes);
          causes.computeIfAbsent(cause.finding(), each -> new ArrayList<>()).add(cause);
        } catch (IllegalArgumentException e) {
          throw new IllegalArgumentException("line " + (i + 1) + ": " + e.getMessage(), e);
        }
      }
    }
    causes.replaceAll((finding, list) -> List.copyOf(list));
    return Collections.unmodifiableMap(causes);
  }

  private static Cause cause(String[] cells, Map<FindingVocabulary, List<Cause>> before) {
    if (cells.length != COLUMNS) {
      throw new IllegalArgumentException("there must be " + COLUMNS + " columns");
    }
    FindingVocabulary finding =
        FindingVocabulary.of(cells[0]).orElseThrow(() -> unknown("finding", cells[0]));
    return new Cause(
        finding,
        before.getOrDefault(finding, List.of()).size() + 1,
        words(cells[5]),
        Gauge.withKey(cells[1]).orElseThrow(() -> unknown("gauge", cells[1])),
        Way.withKey(cells[2]).orElseThrow(() -> unknown("way", cells[2])),
        words(cells[6]),
        cells[3].isEmpty() ? 0 : Double.parseDouble(cells[3]),
        cells[4].isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(cells[4])),
        Optional.of(cells[7]).filter(source -> !source.isEmpty()));
  }

  private static String words(String cell) {
    if (cell.isBlank()) {
      throw new IllegalArgumentException("cause and what is done against it must be stated");
    }
    return cell;
  }

  private static IllegalArgumentException unknown(String what, String text) {
    return new IllegalArgumentException("there is no " + what + " \"" + text + "\"");
  }
}
