package io.ovenmark.tasting;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/** Reads and writes a tasting's file, {@code tastings/<formula>/<date>-<n>.json}. */
public final class TastingCodec {
  private TastingCodec() {}

  /**
   * Reads a tasting.
   *
   * @param file the path in the notebook, also used in messages
   * @param formula slug of the formula, from the folder
   * @param id the tasting's name, from the file
   * @param utf8 the file's bytes
   * @return the tasting
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static Tasting read(String file, String formula, String id, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<TastingKind> kind = fields.parsed("kind", TastingKind::parse);
    missing(fields, "kind", "Say what the tasters do, such as \"triangle\".");
    Optional<String> question = fields.requiredText("question");
    Optional<OffsetDateTime> time = fields.parsed("time", AnswerCodec::moment);
    missing(fields, "time", "Add when the tasting was set up.");
    Optional<Integer> seed = fields.whole("seed", 0, Integer.MAX_VALUE);
    missing(fields, "seed", "Add the number that codes and orders were drawn from.");
    List<Sample> samples = fields.objects("samples", TastingCodec::sample);
    List<String> attributes = fields.texts("attributes");
    Optional<String> note = fields.text("note");
    List<Sheet> sheets = fields.objects("sheets", TastingCodec::sheet);
    Extras extras = fields.extras();
    Optional<Tasting> tasting = Optional.empty();
    if (fields.problems().isEmpty()) {
      try {
        tasting =
            Optional.of(
                new Tasting(
                    formula,
                    id,
                    kind.orElseThrow(),
                    question.orElseThrow(),
                    time.orElseThrow(),
                    seed.orElseThrow(),
                    samples,
                    attributes,
                    note,
                    sheets,
                    extras));
      } catch (IllegalArgumentException e) {
        fields.problem("", e);
      }
    }
    fields.finish();
    return tasting.orElseThrow();
  }

  /**
   * Writes a tasting in canonical form.
   *
   * @param tasting the tasting
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(Tasting tasting) {
    Members members =
        new Members()
            .text("kind", tasting.kind().key())
            .text("question", tasting.question())
            .text("time", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(tasting.time()))
            .number("seed", BigDecimal.valueOf(tasting.seed()))
            .list("samples", tasting.samples(), TastingCodec::toJson);
    if (!tasting.attributes().isEmpty()) {
      members.texts("attributes", tasting.attributes());
    }
    return CanonicalJson.write(
        members
            .text("note", tasting.note())
            .list("sheets", tasting.sheets(), TastingCodec::toJson)
            .extras(tasting.extras())
            .object());
  }

  static void missing(Fields fields, String name, String hint) {
    if (!fields.has(name)) {
      fields.problem(name, "The field is missing.", hint);
    }
  }

  private static Optional<Sample> sample(Fields fields) {
    Optional<String> address = fields.requiredText("address");
    Optional<String> blob = fields.parsed("blob", Sample::checkedBlob);
    missing(fields, "blob", "Add the Git blob id of the formula that is tasted.");
    Optional<String> bake = fields.parsed("bake", Sample::checkedBake);
    Optional<String> piece = fields.parsed("piece", Sample::checkedPiece);
    Extras extras = fields.extras();
    if (piece.isPresent() && !fields.has("bake")) {
      fields.problem(
          "piece",
          "The sample names a piece but no bake.",
          "Name the bake that the piece is of, or leave the piece out.");
      return Optional.empty();
    }
    return address.isPresent() && blob.isPresent() && (bake.isPresent() || piece.isEmpty())
        ? Optional.of(new Sample(address.get(), blob.get(), bake, piece, extras))
        : Optional.empty();
  }

  private static Optional<Sheet> sheet(Fields fields) {
    Optional<Integer> number = fields.whole("number", 1, Tasting.MOST_SHEETS);
    missing(fields, "number", "Number the sheets from 1.");
    Optional<String> initials = fields.text("initials");
    int before = fields.problems().size();
    List<Serving> servings = fields.objects("servings", TastingCodec::serving);
    Optional<Answer> answer = fields.object("answer").flatMap(AnswerCodec::read);
    Extras extras = fields.extras();
    if (number.isEmpty() || fields.problems().size() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Sheet(number.get(), initials, servings, answer, extras));
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Optional.empty();
    }
  }

  private static Optional<Serving> serving(Fields fields) {
    Optional<String> code = fields.parsed("code", Serving::checkedCode);
    missing(fields, "code", "Add the three digits on the plate.");
    Optional<Integer> sample = fields.whole("sample", 1, Tasting.MOST_SHEETS);
    missing(fields, "sample", "Say which sample is on the plate, from 1.");
    return code.isPresent() && sample.isPresent()
        ? Optional.of(new Serving(code.get(), sample.get(), fields.extras()))
        : Optional.empty();
  }

  private static JsonValue toJson(Sample sample) {
    return new Members()
        .text("address", sample.address())
        .text("blob", sample.blob())
        .text("bake", sample.bake())
        .text("piece", sample.piece())
        .extras(sample.extras())
        .object();
  }

  private static JsonValue toJson(Sheet sheet) {
    Members members =
        new Members()
            .number("number", BigDecimal.valueOf(sheet.number()))
            .text("initials", sheet.initials())
            .list("servings", sheet.servings(), TastingCodec::toJson);
    sheet.answer().ifPresent(answer -> members.value("answer", AnswerCodec.toJson(answer)));
    return members.extras(sheet.extras()).object();
  }

  private static JsonValue toJson(Serving serving) {
    return new Members()
        .text("code", serving.code())
        .number("sample", BigDecimal.valueOf(serving.sample()))
        .extras(serving.extras())
        .object();
  }
}
