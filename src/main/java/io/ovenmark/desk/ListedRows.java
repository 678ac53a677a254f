package io.ovenmark.desk;

import io.ovenmark.formula.Formula;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Survey;
import io.ovenmark.search.CheckedFile;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Worksheet;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * What was worked out for the list of formulas, kept in memory and in a file that may be deleted at
 * any time: so a listing reads only what changed since the last one. A row is found by the ids of
 * everything that it was made from: the formula, its bakes, the pantry, the goals and the settings,
 * and the file by the build of the program. A formula with something damaged is not kept.
 */
final class ListedRows {
  private static final long MARK = 0x3154534c4556314fL;
  private static final String NAME = "list";

  /** The file is written again when this part of it (1 in so many rows) is new. */
  private static final int SAVE_FRACTION = 16;

  private final Survey survey;
  private final Optional<CheckedFile> file;
  private final Map<String, Row> rows = new HashMap<>();
  private final Set<String> used = new HashSet<>();
  private boolean read;
  private int fresh;

  /**
   * What is worked out of the newest revision of a line.
   *
   * @param name name for people
   * @param goal short name of its goal, or null
   * @param goalName name of its goal, or null
   * @param goalMet whether that is met: true, false, or null
   * @param reference short name of the conventional formula, or null
   * @param ratios liquid ratio and dough moisture, or null
   * @param perPiece macros of a piece, or null
   * @param bakes how many bakes of the formula can be read
   * @param problems what is wrong with it
   */
  record Row(
      String name,
      String goal,
      String goalName,
      Boolean goalMet,
      String reference,
      FigureSet ratios,
      FigureSet perPiece,
      int bakes,
      List<Views.ProblemView> problems) {}

  ListedRows(Survey survey, OptionalLong program) {
    this.survey = survey;
    this.file =
        program.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new CheckedFile(survey.ownFolder(), NAME, MARK ^ program.getAsLong()));
  }

  /** The row of a line of history, worked out on a desk when it is not known. */
  Row row(Desk desk, Address line, Revision newest) {
    String slug = line.formula();
    String key =
        String.join(
            "|",
            slug,
            newest.blob().hex(),
            desk.notebook().latest(line).figuresKey(),
            survey.bakesKey(slug));
    synchronized (this) {
      ensureRead();
      used.add(key);
      Row known = rows.get(key);
      if (known != null) {
        return known;
      }
    }
    Row made = workOut(desk, line, newest);
    if (made.problems().isEmpty()) {
      synchronized (this) {
        rows.put(key, made);
        fresh++;
      }
    }
    return made;
  }

  private static Row workOut(Desk desk, Address line, Revision newest) {
    String slug = line.formula();
    var bakes = desk.notebook().bakes(slug);
    Desk.Attempt attempt = desk.attempt(line, newest, bakes);
    List<Views.ProblemView> problems = new ArrayList<>(attempt.problems());
    problems.addAll(Refusals.views(desk.notebook().bakeProblems(slug)));
    Optional<Formula> formula = desk.readable(newest);
    Optional<Worksheet> worksheet = attempt.sheet().map(Desk.Sheet::worksheet);
    Optional<GoalCheck> goal = attempt.sheet().flatMap(Desk.Sheet::goal);
    return new Row(
        formula.map(Formula::name).orElse(slug),
        formula.flatMap(Formula::goal).orElse(null),
        goal.map(check -> check.goal().name()).orElse(null),
        goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
        formula.flatMap(Formula::reference).orElse(null),
        worksheet.map(ShowFormula::ratios).orElse(null),
        worksheet.map(w -> FigureSet.of(w.macros().get(Basis.PIECE))).orElse(null),
        bakes.size(),
        List.copyOf(problems));
  }

  /** A whole listing begins: rows that it does not ask for are forgotten at its end. */
  synchronized void begin() {
    used.clear();
  }

  /** A whole listing ended; writes the file when much of it is new. */
  synchronized void end() {
    rows.keySet().retainAll(used);
    if (file.isPresent() && fresh * SAVE_FRACTION > rows.size()) {
      fresh = 0;
      try {
        file.get().write(out -> write(out, rows));
      } catch (IOException e) {
        return;
      }
    }
  }

  /** How many rows are known. */
  synchronized int known() {
    ensureRead();
    return rows.size();
  }

  private void ensureRead() {
    if (!read) {
      read = true;
      file.flatMap(kept -> kept.read(ListedRows::read)).ifPresent(rows::putAll);
    }
  }

  private static void write(DataOutputStream out, Map<String, Row> rows) throws IOException {
    out.writeInt(rows.size());
    for (Map.Entry<String, Row> entry : rows.entrySet()) {
      Row row = entry.getValue();
      out.writeUTF(entry.getKey());
      out.writeUTF(row.name());
      put(out, row.goal());
      put(out, row.goalName());
      out.writeByte(row.goalMet() == null ? 2 : row.goalMet() ? 1 : 0);
      put(out, row.reference());
      put(out, row.ratios());
      put(out, row.perPiece());
      out.writeInt(row.bakes());
    }
  }

  private static void put(DataOutputStream out, String text) throws IOException {
    out.writeBoolean(text != null);
    if (text != null) {
      out.writeUTF(text);
    }
  }

  private static void put(DataOutputStream out, FigureSet set) throws IOException {
    out.writeInt(set == null ? -1 : set.figures().size());
    if (set != null) {
      for (Map.Entry<String, Quantity> figure : set.figures().entrySet()) {
        out.writeUTF(figure.getKey());
        out.writeDouble(figure.getValue().low());
        out.writeDouble(figure.getValue().high());
      }
    }
  }

  private static Map<String, Row> read(DataInputStream in) throws IOException {
    Map<String, Row> rows = new HashMap<>();
    for (int i = in.readInt(); i > 0; i--) {
      rows.put(
          in.readUTF(),
          new Row(
              in.readUTF(),
              text(in),
              text(in),
              met(in.readByte()),
              text(in),
              set(in),
              set(in),
              in.readInt(),
              List.of()));
    }
    return rows;
  }

  private static Boolean met(int code) {
    return code == 2 ? null : Boolean.valueOf(code == 1);
  }

  private static String text(DataInputStream in) throws IOException {
    return in.readBoolean() ? in.readUTF() : null;
  }

  private static FigureSet set(DataInputStream in) throws IOException {
    int size = in.readInt();
    if (size < 0) {
      return null;
    }
    Map<String, Quantity> figures = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      figures.put(in.readUTF(), Quantity.between(in.readDouble(), in.readDouble()));
    }
    return new FigureSet(figures);
  }
}
