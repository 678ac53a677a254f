package io.ovenmark.tasting;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Quoting;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads and writes the answer of a sheet. */
public final class AnswerCodec {
  private static final int LONGEST_TIME = 40;

  private AnswerCodec() {}

  /**
   * Writes an answer alone, for telling one state of it from another.
   *
   * @param answer the answer; empty when there is none yet
   * @return UTF-8 JSON; nothing for no answer
   */
  public static byte[] write(Optional<Answer> answer) {
    return answer.map(each -> CanonicalJson.write(toJson(each))).orElse(new byte[0]);
  }

  /** A point in time with its distance from UTC. */
  static OffsetDateTime moment(String text) {
    if (text.length() <= LONGEST_TIME) {
      try {
        return OffsetDateTime.parse(text);
      } catch (DateTimeException e) {
        throw new IllegalArgumentException(refusal(text), e);
      }
    }
    throw new IllegalArgumentException(refusal(text));
  }

  private static String refusal(String text) {
    return Quoting.quote(text) + " is not a date and time.\n"
        + "Write date, time and zone, such as \"2026-09-14T10:30:00+02:00\".";
  }

  static Optional<Answer> read(Fields fields) {
    int before = fields.problems().size();
    Optional<String> choice = fields.text("choice");
    List<String> ranking = fields.texts("ranking");
    List<Score> scores = fields.objects("scores", AnswerCodec::score);
    Optional<String> note = fields.text("note");
    Optional<OffsetDateTime> given = fields.parsed("given", AnswerCodec::moment);
    Extras extras = fields.extras();
    if (fields.problems().size() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Answer(choice, ranking, scores, note, given, extras));
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Optional.empty();
    }
  }

  private static Optional<Score> score(Fields fields) {
    int before = fields.problems().size();
    Optional<String> code = fields.parsed("code", Serving::checkedCode);
    TastingCodec.missing(fields, "code", "Add the code of the plate.");
    OptionalDouble liking =
        fields.number("liking", Score.LIKING.least(), Score.LIKING.most());
    List<Score.Attribute> attributes = fields.objects("attributes", AnswerCodec::attribute);
    Extras extras = fields.extras();
    if (fields.problems().size() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Score(code.orElseThrow(), liking, attributes, extras));
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Optional.empty();
    }
  }

  private static Optional<Score.Attribute> attribute(Fields fields) {
    Optional<String> name = fields.requiredText("name");
    Optional<Integer> score =
        fields.whole("score", -Score.Attribute.MOST, Score.Attribute.MOST);
    TastingCodec.missing(fields, "score", "Add -2 (much too little) to 2 (much too much).");
    return name.isPresent() && score.isPresent()
        ? Optional.of(new Score.Attribute(name.get(), score.get(), fields.extras()))
        : Optional.empty();
  }

  static JsonValue.JsonObject toJson(Answer answer) {
    Members members = new Members().text("choice", answer.choice());
    if (!answer.ranking().isEmpty()) {
      members.texts("ranking", answer.ranking());
    }
    if (!answer.scores().isEmpty()) {
      members.list("scores", answer.scores(), AnswerCodec::toJson);
    }
    return members
        .text("note", answer.note())
        .text("given", answer.given().map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format))
        .extras(answer.extras())
        .object();
  }

  private static JsonValue toJson(Score score) {
    Members members =
        new Members().text("code", score.code()).number("liking", score.liking());
    if (!score.attributes().isEmpty()) {
      members.list(
          "attributes",
          score.attributes(),
          each ->
              new Members()
                  .text("name", each.name())
                  .number("score", BigDecimal.valueOf(each.score()))
                  .extras(each.extras())
                  .object());
    }
    return members.extras(score.extras()).object();
  }
}
