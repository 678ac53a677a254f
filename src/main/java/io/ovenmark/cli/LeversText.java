package io.ovenmark.cli;

import io.ovenmark.desk.CostViews;
import io.ovenmark.desk.LeverViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prints answers about levers. */
final class LeversText {
  private static final String SINGLE = "single";

  private final LeverViews.LeverSheet sheet;
  private final Output out;

  private LeversText(LeverViews.LeverSheet sheet, Output out) {
    this.sheet = sheet;
    this.out = out;
  }

  static void print(LeverViews.LeverSheet sheet, Output out) {
    LeversText text = new LeversText(sheet, out);
    text.head();
    text.singles();
    text.others();
    if (sheet.ways() != null) {
      out.blank();
      out.wrapped(sheet.ways(), "");
    }
    text.impossible();
    text.tail();
  }

  private void head() {
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    for (LeverViews.WishView wish : sheet.asked().wishes()) {
      out.wrapped("Wanted: " + wish.wish() + " (now " + wish.nowText() + ")", "  ");
    }
    List<String> conditions = new ArrayList<>();
    sheet.asked().keep().forEach(line -> conditions.add(line + " stays"));
    conditions.addAll(sheet.asked().limits());
    if (sheet.asked().batch().equals("fixed")) {
      conditions.add("batch mass stays");
    }
    if (sheet.asked().pieces().equals("free")) {
      conditions.add("dough a piece stays, pieces follow");
    }
    if (!conditions.isEmpty()) {
      out.wrapped("Limits: " + String.join(", ", conditions), "  ");
    }
    out.blank();
    out.wrapped(sheet.summary(), "");
  }

  private void singles() {
    Table table =
        new Table(
            ">", "one line", ">now, g", ">weigh", ">change", ">batch", ">moist.", ">net c.",
            ">prot.", ">cost");
    for (LeverViews.AnswerView answer : sheet.answers()) {
      if (answer.kind().equals(SINGLE)) {
        LeverViews.LineMoveView line =
            answer.lines().stream()
                .filter(move -> move.line().equals(answer.line()))
                .findFirst()
                .orElseThrow();
        table.row(
            Integer.toString(answer.number()),
            line.line(),
            FigureText.number(line.fromG()),
            line.weigh(),
            percent(line.percent()),
            moved(answer, Figure.BATCH_MASS),
            moved(answer, Figure.DOUGH_MOISTURE),
            moved(answer, Figure.NET_CARBOHYDRATE),
            moved(answer, Figure.PROTEIN),
            briefCost(answer));
      }
    }
    if (!table.isEmpty()) {
      out.blank();
      out.table(table.withoutEmptyColumns());
      out.wrapped(
          "From “batch” on, what else it moves: batch in g, moisture in points, and of a piece net"
              + " carbohydrate and protein in g"
              + currency()
              + (table.lines().stream().anyMatch(line -> line.endsWith("?"))
                  ? "; ? where a price is missing."
                  : ".")
              + (sheet.asked().batch().equals("fixed")
                  ? " The other lines give or take in proportion."
                  : ""),
          "");
    }
  }

  private static String percent(Double percent) {
    return percent == null ? "" : FigureText.signed(percent) + " %";
  }

  private static String moved(LeverViews.AnswerView answer, Figure figure) {
    return answer.moves().stream()
        .filter(move -> move.figure().equals(figure.key()))
        .map(move -> move.delta() == null ? "?" : FigureText.signed(move.delta()))
        .findFirst()
        .orElse("");
  }

  /** The cost without its currency, when there is but one. */
  private static String briefCost(LeverViews.AnswerView answer) {
    String cost = cost(answer);
    return cost.contains(", ") ? cost : cost.split(" ")[0];
  }

  private String currency() {
    return sheet.answers().get(0).cost().perPiece().stream()
        .map(money -> " and cost in " + money.currency())
        .findFirst()
        .orElse("");
  }

  private static String cost(LeverViews.AnswerView answer) {
    List<CostViews.MoneyDifference> costs =
        answer.cost().perPiece().isEmpty()
            ? answer.cost().perBatch()
            : answer.cost().perPiece();
    return String.join(
        ", ",
        costs.stream()
            .map(each -> each.delta() == null ? "?" : each.deltaText())
            .toList());
  }

  /** The division alone, and the combined change. */
  private void others() {
    for (LeverViews.AnswerView answer : sheet.answers()) {
      if (answer.kind().equals(SINGLE)) {
        continue;
      }
      out.heading(
          answer.number() + ". "
              + (answer.lines().isEmpty() ? answer.sentence() : "All lines together"));
      Table table = new Table("", ">from, g", ">to, g", ">weigh", ">change").indent(2);
      for (LeverViews.LineMoveView line : answer.lines()) {
        table.row(
            line.name(),
            FigureText.number(line.fromG()),
            FigureText.number(line.toG()),
            line.weigh(),
            percent(line.percent()));
      }
      if (!table.isEmpty()) {
        out.table(table);
      }
      if (!answer.also().isEmpty()) {
        out.wrapped("  " + answer.also(), "  ");
      }
      String cost = cost(answer);
      if (!cost.isEmpty() && !cost.contains("?")) {
        out.wrapped(
            "  Cost " + (answer.cost().perPiece().isEmpty() ? "of the batch " : "of a piece ")
                + cost + ".",
            "  ");
      }
    }
    List<String> notGranted = new ArrayList<>();
    for (LeverViews.AnswerView answer : sheet.answers()) {
      answer.wishes().stream()
          .filter(wish -> !wish.granted() && looksOff(wish))
          .map(wish -> answer.number() + ": " + wish.weighedText())
          .forEach(notGranted::add);
    }
    if (!notGranted.isEmpty()) {
      out.wrapped(
          "As weighed to " + FigureText.number(sheet.asked().readableG())
              + " g it comes only near: " + String.join(", ", notGranted) + ".",
          "  ");
    }
  }

  /** Whether the exact and the weighed figure read differently. */
  private static boolean looksOff(LeverViews.GrantView wish) {
    return wish.value() == null
        || wish.weighed() == null
        || !FigureText.number(wish.value()).equals(FigureText.number(wish.weighed()));
  }

  private void impossible() {
    if (sheet.impossible() == null) {
      return;
    }
    out.heading("How near one can come");
    sheet.impossible().nearest().forEach(near -> out.wrapped("  " + near.sentence(), "    "));
  }

  private void tail() {
    if (!sheet.remarks().isEmpty()) {
      out.blank();
      sheet.remarks().forEach(remark -> out.wrapped(remark, "  "));
    }
    Optional<LeverViews.AnswerView> first = sheet.answers().stream().findFirst();
    if (first.isPresent() && sheet.commit() != null) {
      out.blank();
      out.wrapped(
          "To make one of them a revision, repeat the command for " + sheet.address()
              + " with --apply " + first.get().number()
              + ", or to open it as a draft with --draft " + first.get().number()
              + "; its note would be “" + first.get().note() + "”.",
          "  ");
    }
    out.heading("To mind");
    List<String> cautions = new ArrayList<>(sheet.cautions());
    for (LeverViews.AnswerView answer : sheet.answers()) {
      answer.cautions().stream()
          .map(caution -> "Answer " + answer.number() + ": " + caution)
          .forEach(cautions::add);
    }
    cautions.forEach(caution -> out.wrapped("  " + caution, "    "));
  }
}
