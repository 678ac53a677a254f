package io.ovenmark.desk;

import io.ovenmark.json.Extras;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.tasting.Answer;
import io.ovenmark.tasting.Score;
import io.ovenmark.tasting.TastingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An answer as a page sends it; what was not answered is null or left out.
 *
 * @param choice code of the odd or preferred sample, or {@code none}
 * @param ranking codes, the best first
 * @param scores what was said of each plate
 * @param note the taster's words
 * @param initials who tastes
 */
public record AnswerOrder(
    String choice,
    List<String> ranking,
    List<ScoreOrder> scores,
    String note,
    String initials) {
  /**
   * What was said of a plate.
   *
   * @param code the plate
   * @param liking from 1 to 9
   * @param attributes from −2 to 2 by name
   */
  public record ScoreOrder(String code, Double liking, Map<String, Integer> attributes) {}

  /** The answer, not yet checked against its sheet. */
  Answer answer(TastingKind kind) {
    return Asked.read("answer", () -> read(kind));
  }

  Optional<String> who() {
    return Optional.ofNullable(initials);
  }

  private Answer read(TastingKind kind) {
    List<Score> said = new ArrayList<>();
    for (ScoreOrder each : scores == null ? List.<ScoreOrder>of() : scores) {
      if (each == null || each.code() == null) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "scores",
            "A score names no sample.",
            "Reload the page and try again.");
      }
      List<Score.Attribute> attributes = new ArrayList<>();
      if (each.attributes() != null) {
        each.attributes()
            .forEach(
                (name, score) -> {
                  if (score != null) {
                    attributes.add(new Score.Attribute(name, score, Extras.NONE));
                  }
                });
      }
      OptionalDouble liking =
          each.liking() == null ? OptionalDouble.empty() : OptionalDouble.of(each.liking());
      said.add(new Score(each.code(), liking, attributes, Extras.NONE));
    }
    return new Answer(
        Optional.ofNullable(choice).filter(code -> !code.isBlank()),
        kind == TastingKind.RANKING && ranking != null ? ranking : List.of(),
        said,
        Optional.ofNullable(note),
        Optional.empty(),
        Extras.NONE);
  }
}
