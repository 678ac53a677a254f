package io.ovenmark.tasting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which answers fit a sheet. */
final class AnswerRules {
  private AnswerRules() {}

  /** Refuses an answer that does not fit, with a sentence that names the sheet. */
  static void check(
      TastingKind kind, List<String> attributes, Sheet sheet, Answer answer, int number) {
    String where = "Sheet " + number;
    Set<String> codes = new HashSet<>(sheet.codes());
    String listed = String.join(", ", sheet.codes());
    boolean chosen = kind == TastingKind.TRIANGLE || kind == TastingKind.PREFERENCE;
    Faults.require(
        answer.choice().isPresent() == chosen,
        where + (chosen ? " names no sample." : " names one sample, which is not asked."),
        chosen ? "Choose one of " + listed + "." : "Leave \"choice\" out.");
    answer
        .choice()
        .ifPresent(
            code ->
                Faults.require(
                    codes.contains(code)
                        || kind == TastingKind.PREFERENCE && code.equals(Answer.NO_PREFERENCE),
                    where + " chooses " + code + ", which is not on it.",
                    "Choose one of " + listed
                        + (kind == TastingKind.PREFERENCE ? ", or none." : ".")));
    boolean ranked = kind == TastingKind.RANKING;
    Faults.require(
        ranked
            ? answer.ranking().size() == codes.size()
                && codes.equals(new HashSet<>(answer.ranking()))
            : answer.ranking().isEmpty(),
        where + (ranked ? " does not rank every sample once." : " ranks, which is not asked."),
        ranked ? "Put " + listed + " in order, the best first." : "Leave \"ranking\" out.");
    Faults.require(
        kind.isScored() ? !answer.scores().isEmpty() : answer.scores().isEmpty(),
        where + (kind.isScored() ? " scores no sample." : " scores, which is not asked."),
        kind.isScored() ? "Score at least one of " + listed + "." : "Leave \"scores\" out.");
    Set<String> scored = new HashSet<>();
    for (Score score : answer.scores()) {
      Faults.require(
          codes.contains(score.code()) && scored.add(score.code()),
          where + " scores " + score.code() + " twice, or it is not on it.",
          "Score each of " + listed + " once.");
      for (Score.Attribute each : score.attributes()) {
        Faults.require(
            attributes.contains(each.name()),
            where + " scores " + each.name() + ", which is not asked.",
            attributes.isEmpty()
                ? "Leave the attribute out."
                : "Use one of " + String.join(", ", attributes) + ".");
      }
    }
  }
}
