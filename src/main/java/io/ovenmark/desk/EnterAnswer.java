package io.ovenmark.desk;

import io.ovenmark.json.Extras;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.tasting.Answer;
import io.ovenmark.tasting.AnswerText;
import io.ovenmark.tasting.Score;
import io.ovenmark.tasting.Sheet;
import io.ovenmark.tasting.Tasting;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Enters the answer of a sheet: once by the taster, or by the organiser, who alone can correct it.
 *
 * <pre>{@code
 * new EnterAnswer(desk).text("lupin-bun", "2026-09-14-1", 3, "417", Optional.empty(), false, by);
 * }</pre>
 *
 * <p>Answers of different sheets never disturb each other, whoever sends them at the same time.
 */
public final class EnterAnswer {
  private static final int MOST_TRIES = 12;

  private final Desk desk;
  private final TastingParts parts;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public EnterAnswer(Desk desk) {
    this.desk = desk;
    this.parts = new TastingParts(desk);
  }

  /**
   * Takes what a taster sends.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @param number of the sheet
   * @param order the answer
   * @param by who commits it, and when
   * @return the sheet as the taster sees it, answered
   * @throws Refusal when the sheet is answered already, or the answer does not fit it
   */
  public TastingViews.TasterSheet taster(
      String formula, String id, int number, AnswerOrder order, By by) {
    write(
        formula,
        id,
        number,
        (tasting, sheet) -> {
          requireOpen(sheet);
          return answered(tasting, sheet, order.answer(tasting.kind()), order.who(), by);
        },
        by);
    return new ShowTasting(desk).sheet(formula, id, number);
  }

  /**
   * Enters or corrects an answer for the organiser.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @param number of the sheet
   * @param order the answer
   * @param basedOn the version of the answer that the organiser saw; empty text for none
   * @param by who commits it, and when
   * @return the tasting as its organiser sees it
   * @throws Refusal when the answer changed meanwhile, or does not fit the sheet
   */
  public TastingViews.TastingSheet organiser(
      String formula, String id, int number, AnswerOrder order, String basedOn, By by) {
    write(
        formula,
        id,
        number,
        (tasting, sheet) -> {
          if (!parts.version(sheet).equals(basedOn)) {
            throw new Refusal(
                Refusal.Reason.CONFLICT,
                "sheet " + number,
                "The answer of sheet " + number + " was entered or changed meanwhile.",
                "Look at it as it is now, then correct it.");
          }
          return answered(tasting, sheet, order.answer(tasting.kind()), order.who(), by);
        },
        by);
    return new ShowTasting(desk).call(formula, id);
  }

  /**
   * Enters an answer that is typed as one text.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @param number of the sheet
   * @param text as {@link AnswerText} reads it
   * @param words initials and note of the taster
   * @param correct whether an answer that is there may be replaced
   * @param by who commits it, and when
   * @return the tasting as its organiser sees it
   * @throws Refusal when there is an answer that may not be replaced, or the text does not fit
   */
  public TastingViews.TastingSheet text(
      String formula, String id, int number, String text, Words words, boolean correct, By by) {
    write(
        formula,
        id,
        number,
        (tasting, sheet) -> {
          if (!correct) {
            requireOpen(sheet);
          }
          Answer answer =
              Asked.read("answer", () -> AnswerText.read(tasting.kind(), text))
                  .withNote(words.note().or(() -> sheet.answer().flatMap(Answer::note)));
          return answered(tasting, sheet, answer, words.initials(), by);
        },
        by);
    return new ShowTasting(desk).call(formula, id);
  }

  /**
   * What goes with an answer.
   *
   * @param initials who tastes; empty keeps what is noted
   * @param note the taster's words; empty keeps what is noted
   */
  public record Words(Optional<String> initials, Optional<String> note) {
    /** Neither. */
    public static final Words NONE = new Words(Optional.empty(), Optional.empty());
  }

  private static void requireOpen(Sheet sheet) {
    if (sheet.answer().isPresent()) {
      throw new Refusal(
          Refusal.Reason.EXISTS,
          "sheet " + sheet.number(),
          "The answer of sheet " + sheet.number() + " is in already.",
          "Whoever runs the tasting can correct it.");
    }
  }

  private static Tasting answered(
      Tasting tasting, Sheet sheet, Answer answer, Optional<String> initials, By by) {
    Answer kept = keeping(sheet.answer(), answer).givenAt(by.time());
    return Asked.read("answer", () -> tasting.with(sheet.answered(kept, initials)));
  }

  /** Unknown fields of an earlier answer survive its correction. */
  private static Answer keeping(Optional<Answer> before, Answer answer) {
    if (before.isEmpty()) {
      return answer;
    }
    List<Score> scores =
        answer.scores().stream()
            .map(score -> keeping(before.get().scores(), score))
            .toList();
    return new Answer(
        answer.choice(),
        answer.ranking(),
        scores,
        answer.note(),
        answer.given(),
        before.get().extras());
  }

  private static Score keeping(List<Score> before, Score score) {
    Optional<Score> earlier =
        before.stream().filter(each -> each.code().equals(score.code())).findFirst();
    List<Score.Attribute> attributes =
        score.attributes().stream()
            .map(
                each ->
                    new Score.Attribute(
                        each.name(), each.score(), extras(earlier, each.name())))
            .toList();
    return new Score(
        score.code(),
        score.liking(),
        attributes,
        earlier.map(Score::extras).orElse(Extras.NONE));
  }

  private static Extras extras(Optional<Score> earlier, String attribute) {
    return earlier.stream()
        .flatMap(score -> score.attributes().stream())
        .filter(each -> each.name().equals(attribute))
        .map(Score.Attribute::extras)
        .findFirst()
        .orElse(Extras.NONE);
  }

  /** Writes again on what others wrote meanwhile; the change itself refuses what it must not. */
  private void write(
      String formula,
      String id,
      int number,
      BiFunction<Tasting, Sheet, Tasting> change,
      By by) {
    for (int i = 1; ; i++) {
      Tasting before = parts.tasting(formula, id);
      Sheet sheet = TastingParts.sheet(before, number);
      Tasting after = change.apply(before, sheet);
      try {
        parts.tastings().change(before, after, note(before, sheet), by);
        return;
      } catch (Refusal refusal) {
        if (refusal.reason() != Refusal.Reason.CONFLICT || i == MOST_TRIES) {
          throw refusal;
        }
      }
    }
  }

  private static String note(Tasting tasting, Sheet sheet) {
    return "Tasting " + tasting.id() + " of " + tasting.formula() + ": answer of sheet "
        + sheet.number() + (sheet.answer().isPresent() ? " corrected" : "");
  }
}
