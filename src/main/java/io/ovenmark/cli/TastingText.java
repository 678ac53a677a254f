package io.ovenmark.cli;

import io.ovenmark.desk.TastingViews;
import io.ovenmark.desk.Views;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Prints tastings for people. */
final class TastingText {
  private TastingText() {}

  static void list(
      List<TastingViews.TastingLine> tastings, List<Views.ProblemView> problems, Output out) {
    if (tastings.isEmpty() && problems.isEmpty()) {
      out.line("There is no tasting yet. Set one up with: ovenmark tasting new");
    }
    for (TastingViews.TastingLine each : tastings) {
      out.line(
          each.formula() + " " + each.id() + "  " + each.kindLabel() + ", " + each.answered()
              + " of " + each.sheets() + " answered");
      out.line("  " + String.join(" / ", each.samples()));
      out.wrapped("  " + each.says(), "  ");
    }
    problems.forEach(each -> out.wrapped(each.where() + ": " + each.message(), "  "));
  }

  static void planned(TastingViews.TastingSheet tasting, Output out) {
    out.line(
        "Tasting " + tasting.id() + " of " + tasting.formula() + ": " + tasting.kindLabel() + ", "
            + tasting.sheets().size() + (tasting.sheets().size() == 1 ? " sheet." : " sheets."));
    tasting.remarks().forEach(each -> out.wrapped(each, "  "));
    cautions(tasting.cautions(), out);
    out.blank();
    out.line(
        "Sheets: ovenmark tasting sheet " + tasting.formula() + " " + tasting.id());
    out.line(
        "Plates: ovenmark tasting show " + tasting.formula() + " " + tasting.id() + " --key");
  }

  static void entered(TastingViews.TastingSheet tasting, int sheet, Output out) {
    out.line(
        "The answer of sheet " + sheet + " is in; " + tasting.results().answered() + " of "
            + tasting.results().sheets() + " are.");
  }

  static void print(TastingViews.TastingSheet tasting, Output out) {
    out.line(tasting.name() + ", tasting " + tasting.id() + " · " + tasting.kindLabel());
    out.wrapped("Asked: " + tasting.question(), "  ");
    for (TastingViews.SampleView sample : tasting.samples()) {
      out.wrapped(
          "Sample " + sample.place() + ": " + sample.text()
              + (sample.note() == null ? "" : " · " + sample.note()),
          "  ");
    }
    if (!tasting.attributes().isEmpty()) {
      out.wrapped("Attributes: " + String.join(", ", tasting.attributes()), "  ");
    }
    if (tasting.note() != null) {
      out.wrapped("Note: " + tasting.note(), "  ");
    }
    tasting.remarks().forEach(each -> out.wrapped(each, "  "));
    cautions(tasting.cautions(), out);
    results(tasting.results(), out);
    out.heading("Sheets");
    Table table = new Table("sheet", "who", "codes in order", "answer", "note").indent(2);
    for (TastingViews.SheetView sheet : tasting.sheets()) {
      table.row(
          Integer.toString(sheet.number()),
          sheet.initials(),
          String.join(" ", sheet.codes()),
          answer(sheet.answer()),
          sheet.answer() == null ? null : sheet.answer().note());
    }
    out.table(table.withoutEmptyColumns());
  }

  private static void results(TastingViews.ResultsView results, Output out) {
    out.heading(
        "What the answers tell (" + results.answered() + " of " + results.sheets() + ")");
    results.says().forEach(each -> out.wrapped("  " + each, "  "));
    if (!results.cannot().isEmpty()) {
      out.heading("What they cannot tell");
      results.cannot().forEach(each -> out.wrapped("  " + each, "  "));
    }
    if (results.attributes() != null) {
      out.heading("Just about right: how many said so, and the drop in liking");
      Table table =
          new Table("sample", "attribute", ">--", ">-", ">right", ">+", ">++", ">drop -", ">drop +")
              .indent(2);
      for (TastingViews.AttributeView each : results.attributes()) {
        List<Integer> counts = each.counts();
        table.row(
            Integer.toString(each.sample()),
            each.attribute(),
            counts.get(0).toString(),
            counts.get(1).toString(),
            counts.get(2).toString(),
            counts.get(3).toString(),
            counts.get(4).toString(),
            Figures.cell(each.tooLittle().drop()),
            Figures.cell(each.tooMuch().drop()));
      }
      out.table(table);
    }
  }

  static String answer(TastingViews.AnswerView answer) {
    if (answer == null) {
      return "";
    }
    if (answer.choice() != null) {
      return answer.choice();
    }
    if (!answer.ranking().isEmpty()) {
      return String.join(" ", answer.ranking());
    }
    List<String> words = new ArrayList<>();
    for (TastingViews.ScoreView score : answer.scores()) {
      StringBuilder word = new StringBuilder(score.code()).append('=');
      word.append(score.liking() == null ? "-" : plain(score.liking()));
      for (Map.Entry<String, Integer> each : score.attributes().entrySet()) {
        word.append(',').append(each.getKey().replace(' ', '_'));
        word.append('=').append(each.getValue());
      }
      words.add(word.toString());
    }
    return String.join(" ", words);
  }

  private static String plain(double liking) {
    return BigDecimal.valueOf(liking).stripTrailingZeros().toPlainString();
  }

  static void key(TastingViews.TastingKey key, Output out) {
    for (TastingViews.SampleView sample : key.samples()) {
      out.line("Sample " + sample.place() + ": " + sample.text());
    }
    out.blank();
    Table table = new Table("sheet", "who", "plates in order: code and sample").indent(2);
    for (TastingViews.KeySheet sheet : key.sheets()) {
      table.row(
          Integer.toString(sheet.number()),
          sheet.initials(),
          String.join(
              "  ",
              sheet.plates().stream().map(each -> each.code() + "=" + each.sample()).toList()));
    }
    out.table(table.withoutEmptyColumns());
  }

  static void sheet(TastingViews.TasterSheet sheet, Output out) {
    out.line("------------------------------------------------------------");
    out.line("Tasting " + sheet.id() + " · sheet " + sheet.number() + "      Initials: ________");
    sheet.cautions().forEach(each -> out.wrapped(each, "  "));
    out.blank();
    out.wrapped(sheet.question(), "  ");
    out.line("Taste in this order, from left to right:");
    out.blank();
    out.line("    " + String.join("      ", sheet.codes()));
    out.blank();
    switch (sheet.kind()) {
      case "triangle" -> out.line("Odd one: ____   Guess if you must.");
      case "preference" -> out.line("Preferred: ____   or  [ ] no preference");
      case "ranking" -> out.line("Best first: " + "____  ".repeat(sheet.codes().size()));
      default -> scores(sheet, out);
    }
    out.line("Remarks: ________________________________________");
    out.blank();
  }

  private static void scores(TastingViews.TasterSheet sheet, Output out) {
    out.line("1 dislike extremely, 5 neither like nor dislike, 9 like extremely");
    for (String code : sheet.codes()) {
      out.line("  " + code + "  liking: 1  2  3  4  5  6  7  8  9");
      for (String attribute : sheet.attributes()) {
        out.line(
            "       " + attribute
                + ": much too little | too little | just right | too much | much too much");
      }
    }
  }

  private static void cautions(List<String> cautions, Output out) {
    out.heading("Before anything is served");
    cautions.forEach(each -> out.wrapped("  " + each, "  "));
  }
}
