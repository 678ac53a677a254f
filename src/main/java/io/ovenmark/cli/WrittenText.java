package io.ovenmark.cli;

import io.ovenmark.desk.ComparisonViews;
import io.ovenmark.desk.Views;
import io.ovenmark.desk.WriteViews;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints what was committed. */
final class WrittenText {
  /** How many revisions in between are told one by one. */
  private static final int MOST_TOLD = 3;

  private WrittenText() {}

  /** A conflict's field as it may be typed: without the word "lines.". */
  static String shortField(WriteViews.ConflictView conflict) {
    return conflict.field().replaceFirst("^lines\\.", "");
  }

  /** A revision that was committed, or that is there already. */
  static void print(WriteViews.RevisionWritten written, Output out) {
    if (written.outcome().equals("unchanged")) {
      out.wrapped(
          "Nothing to commit: " + written.revision().address() + " says the same already.", "");
      remarks(written.remarks(), out);
      return;
    }
    revision(written.revision(), out);
    changes(written.changes(), written.comparison(), out);
    boolean more =
        !written.mergedWith().isEmpty()
            || !written.foodsAdded().isEmpty()
            || !written.leftAsEditedByHand().isEmpty()
            || !written.remarks().isEmpty();
    if (more && !written.changes().isEmpty()) {
      out.blank();
    }
    merged(written.mergedWith(), out);
    if (!written.foodsAdded().isEmpty()) {
      out.wrapped("Copied into the pantry: " + String.join(", ", written.foodsAdded()) + ".", "  ");
    }
    left(written, out);
    remarks(written.remarks(), out);
  }

  /** Address, who and when, and the note. */
  static void revision(WriteViews.RevisionView revision, Output out) {
    out.wrapped(
        String.join(
            " · ",
            revision.address(),
            Figures.minute(revision.time()),
            revision.author(),
            "commit " + revision.commit().substring(0, 10)),
        "  ");
    out.wrapped("  “" + revision.note() + "”", "  ");
  }

  static void remarks(List<String> remarks, Output out) {
    remarks.forEach(remark -> out.wrapped(remark, "  "));
  }

  private static void merged(List<WriteViews.RevisionView> others, Output out) {
    if (others.size() > MOST_TOLD) {
      out.wrapped(
          "Merged with the "
              + others.size()
              + " revisions that came in between, "
              + others.get(0).address()
              + " to "
              + others.get(others.size() - 1).address()
              + ".",
          "  ");
      return;
    }
    for (WriteViews.RevisionView other : others) {
      out.wrapped(
          "Merged with "
              + other.address()
              + " by "
              + other.author()
              + " (“"
              + other.note()
              + "”), which came in between.",
          "  ");
    }
  }

  private static void left(WriteViews.RevisionWritten written, Output out) {
    String own = "formulas/" + written.revision().formula() + ".json";
    for (String file : written.leftAsEditedByHand()) {
      if (!file.equals(own)) {
        out.wrapped(file + " stays on disk as it was edited by hand.", "  ");
      } else if (written.base() == null) {
        out.wrapped(file + " was there already and stays as it is on disk.", "  ");
      } else {
        out.wrapped(
            file
                + " stays on disk as it was edited by hand. To commit it too, merged with this"
                + " revision: ovenmark revise "
                + written.revision().formula()
                + " --base "
                + (written.revision().revision() - 1),
            "  ");
      }
    }
  }

  /** What changed in words, the figures that moved, and what that means for the goal. */
  static void changes(
      List<Views.ChangeView> changes, ComparisonViews.ComparisonView comparison, Output out) {
    if (!changes.isEmpty()) {
      out.heading(comparison == null ? "Changes" : "Against " + comparison.from().address());
      changes.forEach(change -> out.wrapped("  " + change.sentence(), "    "));
    }
    if (comparison != null) {
      figures(comparison, out);
      goal(comparison.goal(), out);
    }
  }

  private static void figures(ComparisonViews.ComparisonView comparison, Output out) {
    Map<String, ComparisonViews.FigureDifference> figures =
        new LinkedHashMap<>(comparison.ratios());
    figures.putAll(comparison.macros().get("per_piece"));
    Table table = new Table("", ">○ before", ">● now", ">change").indent(2);
    figures.forEach(
        (key, figure) -> {
          if (!figure.fromText().equals(figure.toText())) {
            table.row(
                figure.label() + (figure.unit().isEmpty() ? "" : ", " + figure.unit()),
                Figures.brief(plain(figure.fromText(), figure.unit())),
                Figures.brief(plain(figure.toText(), figure.unit())),
                Figures.brief(figure.deltaText()));
          }
        });
    if (!table.isEmpty()) {
      out.blank();
      out.table(table);
    }
  }

  private static String plain(String text, String unit) {
    return unit.isEmpty() || !text.endsWith(" " + unit)
        ? text
        : text.substring(0, text.length() - unit.length() - 1);
  }

  private static void goal(ComparisonViews.GoalDifference goal, Output out) {
    if (goal == null) {
      return;
    }
    List<String> moved = new ArrayList<>();
    boolean broken = false;
    boolean open = false;
    for (ComparisonViews.GoalRuleDifference rule : goal.rules()) {
      boolean now = !rule.change().equals("only before");
      broken |= now && Boolean.FALSE.equals(rule.toMet());
      open |= now && rule.toMet() == null;
      if (rule.change().startsWith("newly") || rule.change().equals("only now")) {
        moved.add(rule.rule() + ": " + standing(rule));
      }
    }
    if (goal.toGoal() == null) {
      return;
    }
    out.blank();
    out.line("  Goal: " + goal.toGoal() + ": " + (broken ? "not met" : open ? "not known" : "met"));
    moved.forEach(rule -> out.wrapped("    " + rule, "      "));
  }

  private static String standing(ComparisonViews.GoalRuleDifference rule) {
    return switch (rule.change()) {
      case "newly met" -> "newly kept";
      case "newly broken" -> "newly broken";
      case "newly unknown" -> "no longer certain";
      default -> rule.toMet() == null ? "not known" : rule.toMet() ? "kept" : "broken";
    };
  }

  /** Both sides of each conflict. */
  static void conflicts(
      List<WriteViews.ConflictView> conflicts, String ours, String theirs, Output out) {
    for (WriteViews.ConflictView conflict : conflicts) {
      out.blank();
      out.wrapped(conflict.field() + ": " + conflict.sentence(), "  ");
      Table table = new Table("", "");
      table.row("before", side(conflict.base()));
      table.row(ours, side(conflict.ours()));
      table.row(theirs, side(conflict.theirs()));
      out.table(table.indent(4));
    }
  }

  private static String side(String text) {
    return text == null ? "(nothing)" : text;
  }
}
