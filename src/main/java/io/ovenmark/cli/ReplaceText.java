package io.ovenmark.cli;

import io.ovenmark.desk.CostViews;
import io.ovenmark.desk.DraftViews;
import io.ovenmark.desk.LeverViews;
import io.ovenmark.desk.ReplaceViews;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints foods that can stand in for others. */
final class ReplaceText {
  private static final int MOST_OF_THE_KIND = 12;
  private static final int MOST_OF_OTHERS = 6;

  private final ReplaceViews.ReplaceSheet sheet;
  private final boolean all;
  private final Output out;

  ReplaceText(ReplaceViews.ReplaceSheet sheet, boolean all, Output out) {
    this.sheet = sheet;
    this.all = all;
    this.out = out;
  }

  /** A draft that was begun. */
  static void draft(DraftViews.DraftView draft, Output out) {
    out.wrapped(
        "Draft begun from " + draft.base().address() + ", with the note “" + draft.note() + "”.",
        "  ");
    out.wrapped(
        "Its page in the viewer (ovenmark view) is /drafts/" + draft.id()
            + ", where it is saved as a revision or thrown away.",
        "  ");
  }

  void print(boolean one) {
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    out.wrapped(
        "Replaced: " + sheet.line().name() + ", " + sheet.line().entered() + " ("
            + sheet.line().source() + ")",
        "  ");
    out.wrapped(
        "Kept: " + FigureText.number(sheet.kept().grams()) + " g "
            + (sheet.kept().keep().equals("mass") ? "" : sheet.kept().label() + " ")
            + "(" + FigureText.number(sheet.kept().per100G()) + " g in 100 g)"
            + (sheet.kept().usual() ? ", as usual for it" : ""),
        "  ");
    if (sheet.goal() != null) {
      out.wrapped(
          "Goal: " + sheet.goal().name() + ", now " + Figures.met(sheet.goal().met()), "  ");
    }
    out.blank();
    if (one) {
      sheet.answers().forEach(this::whole);
    } else {
      out.wrapped(sheet.summary(), "");
      if (!sheet.line().work().isEmpty()) {
        out.blank();
        sheet.line().work().forEach(sentence -> out.wrapped(sentence, "  "));
      }
      list("Of the same kind", true, MOST_OF_THE_KIND);
      list("Of another kind", false, MOST_OF_OTHERS);
      explain();
    }
    setAside(one);
    tail();
  }

  private void list(String heading, boolean same, int most) {
    List<ReplaceViews.AnswerView> answers =
        sheet.answers().stream().filter(each -> each.sameKind() == same).toList();
    if (answers.isEmpty()) {
      return;
    }
    int shown = all ? answers.size() : Math.min(most, answers.size());
    out.heading(heading);
    Table table =
        new Table(
                "food", ">weigh", ">ratio", ">moist.", ">net c.", ">prot.", ">fat", "goal",
                "brings")
            .indent(2);
    for (ReplaceViews.AnswerView answer : answers.subList(0, shown)) {
      table.row(
          answer.food() + (answer.inPantry() ? "" : " *"),
          answer.weigh(),
          figure(answer, Figure.LIQUID_RATIO),
          figure(answer, Figure.DOUGH_MOISTURE),
          figure(answer, Figure.NET_CARBOHYDRATE),
          figure(answer, Figure.PROTEIN),
          figure(answer, Figure.FAT),
          sheet.goal() == null ? "" : Figures.met(answer.goalMet()),
          answer.allergensKnown() ? String.join(", ", answer.allergensGained()) : "not known");
    }
    out.table(table.withoutEmptyColumns());
    if (shown < answers.size()) {
      out.line("  and " + (answers.size() - shown) + " more; --all lists them");
    }
  }

  private void explain() {
    if (sheet.answers().isEmpty()) {
      return;
    }
    boolean piece = sheet.per().equals("per_piece");
    out.blank();
    out.wrapped(
        "Liquid ratio, dough moisture in %, and " + (piece ? "of a piece" : "in 100 g of dough")
            + " net carbohydrate, protein and fat in g; now "
            + now(Figure.LIQUID_RATIO) + ", " + now(Figure.DOUGH_MOISTURE) + ", "
            + now(Figure.NET_CARBOHYDRATE) + ", " + now(Figure.PROTEIN) + ", "
            + now(Figure.FAT)
            + ". “brings” names allergens that the formula does not contain now. An asterisk marks"
            + " foods of the built-in table, which come into the pantry when they are used.",
        "");
  }

  private String figure(ReplaceViews.AnswerView answer, Figure figure) {
    return text(answer.figures().figures().get(figure.key()));
  }

  private String now(Figure figure) {
    return text(sheet.figuresNow().figures().get(figure.key()));
  }

  /** A figure; a bound is marked, so that it is not taken for the figure. */
  private static String text(Quantity value) {
    if (value.isKnown()) {
      return FigureText.number(value.low());
    }
    return value.isUnknown() ? "?" : Double.isInfinite(value.high())
        ? "≥ " + FigureText.number(value.low())
        : "≤ " + FigureText.number(value.high());
  }

  private void whole(ReplaceViews.AnswerView answer) {
    out.wrapped(answer.sentence(), "");
    out.blank();
    out.wrapped(
        "Weigh " + answer.weigh() + " (" + FigureText.number(answer.per100G()) + " g "
            + sheet.kept().label() + " in 100 g; " + answer.source() + ")."
            + (answer.elsewhereG() == null
                ? ""
                : " Other lines hold " + FigureText.number(answer.elsewhereG())
                    + " g of it already.")
            + (answer.inPantry() ? "" : " It comes from the built-in table."),
        "");
    for (ReplaceViews.MovesView moves : answer.moves()) {
      if (!moves.moves().isEmpty()) {
        out.heading("What moves: " + moves.label());
        Table table = new Table("", ">before → after", ">change").indent(2);
        for (LeverViews.MoveView move : moves.moves()) {
          table.row(move.label(), move.changeText(), move.deltaText());
        }
        out.table(table);
      }
    }
    allergens(answer);
    rules(answer);
    cost(answer);
    list("What the figures do not show", answer.structure());
    list("To mind with it", answer.cautions());
    if (sheet.commit() != null) {
      out.blank();
      out.wrapped(
          "To go on with it, repeat the command for " + sheet.address()
              + " with --draft, or with --apply for a revision with the note “" + answer.note()
              + "”.",
          "  ");
    }
  }

  private void allergens(ReplaceViews.AnswerView answer) {
    out.heading("Allergens");
    out.wrapped("  Gained: " + words(answer.allergensGained()), "    ");
    out.wrapped("  Lost: " + words(answer.allergensLost()), "    ");
    if (!answer.allergensKnown()) {
      out.line("  Those of " + answer.name() + " are unknown.");
    }
  }

  private static String words(List<String> list) {
    return list.isEmpty() ? "none" : String.join(", ", list);
  }

  private void rules(ReplaceViews.AnswerView answer) {
    if (sheet.goal() == null) {
      return;
    }
    out.heading("Goal: " + sheet.goal().name() + ", " + Figures.met(answer.goalMet()));
    for (ReplaceViews.RuleView rule : answer.rules()) {
      String value = rule.valueText() == null ? "" : ": " + rule.valueText();
      String because = rule.because().isEmpty() ? "" : " (" + words(rule.because()) + ")";
      out.wrapped(
          "  " + Figures.met(rule.now()) + FigureText.ARROW + Figures.met(rule.met()) + "  "
              + rule.rule() + value + because,
          "    ");
    }
  }

  private void cost(ReplaceViews.AnswerView answer) {
    List<CostViews.MoneyDifference> costs = answer.cost().perPiece();
    if (!costs.isEmpty() || !answer.cost().perBatch().isEmpty()) {
      out.heading("Cost");
      for (CostViews.MoneyDifference each : costs) {
        out.wrapped("  A piece: " + money(each), "    ");
      }
      for (CostViews.MoneyDifference each : answer.cost().perBatch()) {
        out.wrapped("  A batch: " + money(each), "    ");
      }
      if (!answer.cost().unpriced().isEmpty()) {
        out.wrapped("  Without a price: " + words(answer.cost().unpriced()), "    ");
      }
    }
  }

  private static String money(CostViews.MoneyDifference each) {
    return each.fromText() + FigureText.ARROW + each.toText() + ", change "
        + (each.delta() == null ? "unknown" : each.deltaText());
  }

  private void list(String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      out.heading(heading);
      sentences.forEach(sentence -> out.wrapped("  " + sentence, "    "));
    }
  }

  /** Every food that is not proposed; those out of proportion by number alone unless all. */
  private void setAside(boolean one) {
    if (sheet.setAside().isEmpty()) {
      return;
    }
    if (!one) {
      out.heading("Not proposed");
    }
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (ReplaceViews.SetAsideView each : sheet.setAside()) {
      String reason = each.why().equals("out of proportion") ? each.why() : each.because();
      String name =
          each.why().equals("out of proportion") && one
              ? each.food() + " (" + each.because() + ")"
              : each.food();
      byReason.computeIfAbsent(reason, any -> new ArrayList<>()).add(name);
    }
    byReason.forEach(
        (reason, foods) ->
            out.wrapped(
                (one ? "Not proposed, " : "  ") + reason + ": " + String.join(", ", foods),
                "    "));
  }

  private void tail() {
    if (!sheet.remarks().isEmpty()) {
      out.blank();
      sheet.remarks().forEach(remark -> out.wrapped(remark, "  "));
    }
    list("To mind", sheet.cautions());
  }
}
