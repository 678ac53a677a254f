package io.ovenmark.cli;

import io.ovenmark.desk.MatteredViews;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints what mattered. */
final class MatteredText {
  private static final int SUREST = 4;
  private static final int WIDEST = 30;

  private MatteredText() {}

  static void print(MatteredViews.MatteredSheet sheet, boolean all, Output out) {
    out.line(sheet.name());
    out.line(sheet.address());
    out.blank();
    List<String> counts = new ArrayList<>();
    counts.add(Figures.counted(sheet.bakes(), "bake", "bakes"));
    counts.add(Figures.counted(sheet.pieces(), "piece", "pieces"));
    if (sheet.withVariants()) {
      counts.add("variants included");
    }
    if (sheet.unread() > 0) {
      counts.add(Figures.counted(sheet.unread(), "bake", "bakes") + " of an unknown formula");
    }
    out.parts("", counts, "  ");
    out.wrapped(sheet.summary(), "");
    sheet.outcomes().forEach(outcome -> outcome(outcome, all, out));
    if (sheet.outcomes().stream().anyMatch(outcome -> !outcome.missing())) {
      out.blank();
      out.wrapped(
          "* shows with all other changes beside it; o shows by itself only, and cannot be told"
              + " from what else changed. Effects stand with all others beside them.",
          "");
    }
    out.heading("How it is worked out");
    out.wrapped("  " + sheet.model().name(), "  ");
    out.wrapped("  " + sheet.model().why(), "  ");
    out.heading("What it cannot tell");
    sheet.model().cannot().forEach(each -> out.wrapped("  " + each, "    "));
  }

  private static void outcome(MatteredViews.OutcomeView outcome, boolean all, Output out) {
    out.heading(capital(outcome.label()));
    out.wrapped("  " + outcome.sentence(), "  ");
    if (outcome.missing()) {
      return;
    }
    Table table =
        new Table("went up, or so", "for each", ">effect", ">from", ">to", ">alone")
            .indent(2);
    outcome.effects().stream()
        .limit(all ? outcome.effects().size() : SUREST)
        .forEach(effect -> row(table, effect));
    out.table(table);
    int more = outcome.effects().size() - SUREST;
    if (!all && more > 0) {
      out.line("  … and " + Figures.counted(more, "less sure change", "less sure changes"));
    }
    List<String> notes = new ArrayList<>();
    if (outcome.unknownPieces() > 0) {
      notes.add(
          "Not known of " + Figures.counted(outcome.unknownPieces(), "piece", "pieces")
              + ", left out.");
    }
    if (outcome.setAside() > 0) {
      notes.add(
          Figures.counted(outcome.setAside(), "piece", "pieces")
              + " set aside, as a change is not known of them.");
    }
    notes.add(outcome.multiplicity());
    out.wrapped("  " + String.join(" ", notes), "  ");
  }

  private static void row(Table table, MatteredViews.EffectView effect) {
    table.row(
        mark(effect.standing()) + brief(effect),
        effect.per().isEmpty() ? "" : effect.per().replaceAll(" of .*", ""),
        effect.together().text().replaceAll(" of .*", ""),
        effect.together().lowText(),
        effect.together().highText(),
        effect.alone() + " of " + effect.changed());
  }

  private static String mark(String standing) {
    return switch (standing) {
      case "clear" -> "* ";
      case "along" -> "o ";
      default -> "  ";
    };
  }

  private static String brief(MatteredViews.EffectView effect) {
    String text = effect.words();
    String more = effect.with().isEmpty() ? "" : " +" + effect.with().size();
    int most = WIDEST - more.length();
    return (text.length() > most ? text.substring(0, most - 1).strip() + "…" : text) + more;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
