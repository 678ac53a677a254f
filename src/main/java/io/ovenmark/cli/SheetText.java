package io.ovenmark.cli;

import io.ovenmark.desk.FigureSet;
import io.ovenmark.desk.Views;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints a worksheet. */
final class SheetText {
  /** Width of the labels before yield, ratios and oven. */
  private static final int LABEL = 16;

  private final Views.FormulaSheet sheet;
  private final Output out;

  private SheetText(Views.FormulaSheet sheet, Output out) {
    this.sheet = sheet;
    this.out = out;
  }

  static void print(Views.FormulaSheet sheet, Output out) {
    SheetText text = new SheetText(sheet, out);
    text.head();
    text.lines();
    text.yield();
    text.macros();
    CostText.print(sheet.cost(), out);
    text.unknowns();
    GoalText.print(sheet.goal(), out);
    text.method();
    text.storage();
    text.allergens();
    text.bakes();
  }

  private void head() {
    out.line(sheet.name());
    List<String> parts = new ArrayList<>();
    parts.add(sheet.address());
    if (sheet.commit() == null) {
      parts.add("edited by hand, not yet a revision; would be number " + sheet.revision());
    } else {
      parts.add(Figures.day(sheet.time()));
      parts.add(sheet.author());
      parts.add("commit " + sheet.commit().substring(0, 10));
    }
    out.parts("", parts, "  ");
    if (sheet.note() != null) {
      out.wrapped("“" + sheet.note() + "”", "  ");
    }
    if (sheet.details() != null) {
      sheet.details().lines().forEach(line -> out.wrapped("  " + line, "  "));
    }
    if (sheet.published() != null) {
      out.wrapped("Published: " + sheet.published(), "  ");
    }
    if (sheet.foodsChangedSince()) {
      out.wrapped(
          "Worked out with today's foods, goals and settings, which changed since; "
              + sheet.formula()
              + "@"
              + sheet.revision()
              + " shows those of its own day.",
          "  ");
    }
    if (sheet.description() != null) {
      out.blank();
      out.wrapped(sheet.description(), "");
    }
    if (sheet.reference() != null) {
      out.line("Rebuilt from: " + sheet.reference());
    }
  }

  private void lines() {
    if (sheet.lines().isEmpty()) {
      out.blank();
      out.wrapped(
          "No lines yet. Add one with: ovenmark revise " + line() + " --add water=180g", "  ");
      return;
    }
    Map<String, String> notes = new LinkedHashMap<>();
    boolean approximate = false;
    boolean flour = sheet.lines().stream().anyMatch(Views.LineView::flour);
    Table table =
        flour
            ? new Table("line", "food", ">entered", ">grams", ">% of batch", ">baker's %")
            : new Table("line", "food", ">entered", ">grams", ">% of batch");
    for (Views.LineView line : sheet.lines()) {
      approximate |= line.approximate() && line.grams() != null;
      table.row(
          line.id() + (line.flour() ? " *" : ""),
          line.name().equals(line.id().replace('-', ' ')) ? "" : line.name(),
          line.entered(),
          line.grams() == null
              ? "not known"
              : (line.approximate() ? "~" : "") + FigureText.number(line.grams()),
          Figures.cell(line.percentOfBatch()),
          Figures.cell(line.bakersPercent()));
      if (line.note() != null) {
        notes.put(line.id(), line.note());
      }
    }
    table.row("batch", "", "", Figures.cell(sheet.yield().figures().get(Figure.BATCH_MASS.key())));
    out.blank();
    out.table(table);
    if (flour) {
      out.line(
          "* counts as flour" + (approximate ? "; ~ weighed by volume or household measure" : ""));
    } else if (approximate) {
      out.line("~ by volume or household measure");
    }
    notes.forEach((id, note) -> out.wrapped("  " + id + ": " + note, "    "));
  }

  private String line() {
    return sheet.variant() == null ? sheet.formula() : sheet.formula() + "/" + sheet.variant();
  }

  private void yield() {
    Map<String, Quantity> yield = sheet.yield().figures();
    Quantity pieces = yield.get(Figure.PIECES.key());
    Quantity dough = yield.get(Figure.DOUGH_PER_PIECE.key());
    Quantity baked = yield.get(Figure.BAKED_PER_PIECE.key());
    List<String> parts = new ArrayList<>();
    if (pieces.isUnknown()) {
      parts.add("not stated: set it with --set yield.pieces=6");
    } else {
      parts.add(
          FigureText.of(pieces)
              + (pieces.isKnown() && pieces.low() == 1 ? " piece of " : " pieces of ")
              + FigureText.of(dough, "g")
              + " dough");
      if (sheet.handlingLossPercent() != null) {
        parts.add(FigureText.number(sheet.handlingLossPercent()) + " % lost on handling");
      }
      parts.add(
          sheet.bakedPieces() == 0
              ? "baked mass not weighed yet"
              : FigureText.of(baked, "g")
                  + " baked ("
                  + Figures.counted(sheet.bakedPieces(), "piece", "pieces")
                  + " weighed)");
    }
    out.blank();
    row("Yield", String.join(", ", parts));
    Map<String, Quantity> ratios = sheet.ratios().figures();
    row("Liquid ratio", FigureText.of(ratios.get(Figure.LIQUID_RATIO.key())));
    row("Dough moisture", FigureText.of(ratios.get(Figure.DOUGH_MOISTURE.key()), "%"));
    for (Views.StageView stage : sheet.bake()) {
      row(sheet.bake().size() == 1 ? "Oven" : "Oven, " + stage.id(), oven(stage));
    }
  }

  private void row(String label, String text) {
    out.wrapped(TextWidth.left(label, LABEL) + text, " ".repeat(LABEL));
  }

  private static String oven(Views.StageView stage) {
    List<String> parts = new ArrayList<>();
    add(parts, "", stage.temperature());
    add(parts, "", stage.minutes() == null ? null : FigureText.number(stage.minutes()) + " min");
    add(parts, "rack ", stage.rack());
    add(parts, "steam ", stage.steam());
    add(parts, "", stage.vessel());
    add(parts, "", stage.note());
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, String word, String text) {
    if (text != null) {
      parts.add(word + text);
    }
  }

  private void macros() {
    if (sheet.lines().isEmpty()) {
      return;
    }
    List<Basis> bases = new ArrayList<>(List.of(Basis.PIECE, Basis.DOUGH_100_G));
    if (sheet.bakedPieces() > 0) {
      bases.add(Basis.BAKED_100_G);
    }
    bases.add(Basis.BATCH);
    List<String> heads = new ArrayList<>(List.of(""));
    bases.forEach(basis -> heads.add(">" + (basis == Basis.PIECE ? "a piece" : basis.label())));
    Table table = new Table(heads.toArray(String[]::new));
    for (Figure figure : Figure.macros()) {
      List<String> row = new ArrayList<>(List.of(Figures.name(figure.key())));
      boolean none = true;
      for (Basis basis : bases) {
        FigureSet set = sheet.macros().get(basis.key());
        Quantity quantity = set.figures().get(figure.key());
        none &= quantity.isKnown() && quantity.low() == 0;
        row.add(Figures.cell(quantity));
      }
      if (!none || figure != Figure.ALLULOSE && figure != Figure.POLYOLS) {
        table.row(row.toArray(String[]::new));
      }
    }
    out.blank();
    out.table(table);
    out.wrapped(
        "Net carbohydrate is " + sheet.netCarbohydrateRule() + "; energy by " + energy() + ".", "");
  }

  private String energy() {
    return sheet.energyRule().equals("foods") ? "the foods' own values" : sheet.energyRule();
  }

  private void unknowns() {
    if (sheet.unknowns().isEmpty()) {
      return;
    }
    out.heading("Not known");
    Map<String, List<String>> byLine = new LinkedHashMap<>();
    for (Views.UnknownView unknown : sheet.unknowns()) {
      byLine
          .computeIfAbsent(unknown.line(), line -> new ArrayList<>())
          .add(
              unknown.nutrient().equals("mass") || unknown.nutrient().equals("food")
                  ? unknown.why()
                  : Figure.withKey(unknown.nutrient())
                      .map(Figure::label)
                      .orElse(unknown.nutrient()));
    }
    byLine.forEach(
        (line, what) -> out.wrapped("  " + line + ": " + String.join(", ", what), "    "));
  }

  private void method() {
    if (sheet.method().isEmpty()) {
      return;
    }
    out.heading("Method");
    for (int i = 0; i < sheet.method().size(); i++) {
      out.wrapped("  " + (i + 1) + ". " + sheet.method().get(i), "     ");
    }
    sheet.namedUnweighed().forEach(named -> out.wrapped("  " + named.text(), "    "));
  }

  private void storage() {
    if (sheet.storage() != null) {
      out.heading("Storage");
      out.wrapped("  " + sheet.storage(), "  ");
    }
  }

  private void allergens() {
    out.heading("Allergens and cautions");
    sheet.cautions().forEach(caution -> out.wrapped("  " + caution, "    "));
  }

  private void bakes() {
    if (sheet.bakes().isEmpty()) {
      return;
    }
    out.heading("Bakes");
    sheet.bakes().forEach(bake -> out.parts("  ", BakeLine.of(bake), "    "));
  }
}
