package io.ovenmark.bake;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Range;
import io.ovenmark.measure.Temperature;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads and writes a bake's file, {@code bakes/<formula>/<date>-<n>.json}. */
public final class BakeCodec {
  private BakeCodec() {}

  /**
   * Reads a bake.
   *
   * @param file the path in the notebook, also used in messages
   * @param formula slug of the formula, from the folder
   * @param id the bake's name, from the file
   * @param utf8 the file's bytes
   * @return the bake
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static Bake read(String file, String formula, String id, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<String> address = fields.requiredText("address");
    Optional<String> blob = fields.parsed("blob", Bake::checkedBlob);
    if (blob.isEmpty() && !fields.has("blob")) {
      fields.problem("blob", "The field is missing.", "Add the Git blob id of the baked formula.");
    }
    Optional<OffsetDateTime> time = fields.parsed("time", Moment::parse);
    if (time.isEmpty() && !fields.has("time")) {
      fields.problem("time", "The field is missing.", "Add when it went into the oven.");
    }
    Optional<String> baker = fields.text("baker");
    Optional<String> ambient = fields.text("ambient");
    Optional<String> note = fields.text("note");
    Set<String> ids = new HashSet<>();
    List<Piece> pieces = fields.objects("pieces", piece -> piece(piece, ids));
    List<String> findings = fields.texts("findings");
    List<Photo> photos = fields.objects("photos", BakeCodec::photo);
    Extras extras = fields.extras();
    Optional<Bake> bake = Optional.empty();
    if (fields.problems().isEmpty()) {
      try {
        bake =
            Optional.of(
                new Bake(
                    formula,
                    id,
                    address.orElseThrow(),
                    blob.orElseThrow(),
                    time.orElseThrow(),
                    baker,
                    ambient,
                    note,
                    pieces,
                    findings,
                    photos,
                    extras));
      } catch (IllegalArgumentException e) {
        fields.problem("", e);
      }
    }
    fields.finish();
    return bake.orElseThrow();
  }

  /**
   * Writes a bake in canonical form.
   *
   * @param bake the bake
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(Bake bake) {
    return CanonicalJson.write(
        new Members()
            .text("address", bake.address())
            .text("blob", bake.blob())
            .text("time", Moment.write(bake.time()))
            .text("baker", bake.baker())
            .text("ambient", bake.ambient())
            .text("note", bake.note())
            .list("pieces", bake.pieces(), BakeCodec::toJson)
            .texts("findings", bake.findings())
            .list("photos", bake.photos(), BakeCodec::toJson)
            .extras(bake.extras())
            .object());
  }

  private static Optional<Piece> piece(Fields fields, Set<String> ids) {
    Optional<String> id = pieceId(fields, "id", "Give the piece a letter.");
    if (id.isPresent() && !ids.add(id.get())) {
      fields.problem(
          "id",
          "The piece \"" + id.get() + "\" stands twice.",
          "Give one of the two another letter.");
    }
    Piece piece =
        new Piece(
            id.orElse("faulty"),
            fields.parsed("temperature", Temperature::parse),
            number(fields, "minutes", Piece.MINUTES),
            fields.text("rack"),
            number(fields, "dough_g", Piece.GRAMS),
            number(fields, "baked_g", Piece.GRAMS),
            number(fields, "width_mm", Piece.MILLIMETRES),
            number(fields, "height_mm", Piece.MILLIMETRES),
            fields.parsed("core", Temperature::parse),
            coreLog(fields),
            number(fields, "crust_shade", Piece.CRUST),
            fields.texts("findings"),
            fields.numbers("liking", Piece.LIKING.least(), Piece.LIKING.most()),
            fields.objects("attributes", BakeCodec::attribute),
            fields.text("verdict"),
            fields.text("note"),
            fields.extras());
    return id.map(found -> piece);
  }

  private static List<CorePoint> coreLog(Fields fields) {
    List<CorePoint> points = fields.objects("core_log", BakeCodec::corePoint);
    try {
      CoreLog.checkOrder(points);
    } catch (IllegalArgumentException e) {
      fields.problem("core_log", e);
      return List.of();
    }
    return points;
  }

  private static Optional<CorePoint> corePoint(Fields fields) {
    OptionalDouble minutes = number(fields, "minutes", Piece.MINUTES);
    Optional<Temperature> temperature = fields.parsed("temperature", Temperature::parse);
    if (!fields.has("minutes")) {
      fields.problem("minutes", "The field is missing.", "Add the minutes since it went in.");
    }
    if (!fields.has("temperature")) {
      fields.problem("temperature", "The field is missing.", "Add the temperature in the centre.");
    }
    return minutes.isPresent() && temperature.isPresent()
        ? Optional.of(new CorePoint(minutes.getAsDouble(), temperature.get(), fields.extras()))
        : Optional.empty();
  }

  private static Optional<Piece.Attribute> attribute(Fields fields) {
    Range score = Piece.Attribute.SCORE;
    List<Double> scores = fields.numbers("scores", score.least(), score.most());
    return fields
        .requiredText("name")
        .map(name -> new Piece.Attribute(name, scores, fields.extras()));
  }

  private static Optional<Photo> photo(Fields fields) {
    Optional<String> file = fields.parsed("file", Photo::checkedFile);
    if (file.isEmpty() && !fields.has("file")) {
      fields.problem("file", "The field is missing.", "Add the path of the picture.");
    }
    Optional<String> caption = fields.text("caption");
    Optional<String> alternative = fields.text("alternative");
    Optional<OffsetDateTime> taken = fields.parsed("taken", Moment::parse);
    List<Photo.Mark> marks = fields.objects("marks", BakeCodec::mark);
    Extras extras = fields.extras();
    return file.map(path -> new Photo(path, caption, alternative, taken, marks, extras));
  }

  private static Optional<Photo.Mark> mark(Fields fields) {
    Optional<String> piece = pieceId(fields, "piece", "Name the piece that is marked.");
    OptionalDouble x = number(fields, "x", Photo.Mark.PLACE);
    OptionalDouble y = number(fields, "y", Photo.Mark.PLACE);
    for (String place : List.of("x", "y")) {
      if (!fields.has(place)) {
        fields.problem(place, "The field is missing.", "Add a number from 0 to 1.");
      }
    }
    return piece.isPresent() && x.isPresent() && y.isPresent()
        ? Optional.of(
            new Photo.Mark(piece.get(), x.getAsDouble(), y.getAsDouble(), fields.extras()))
        : Optional.empty();
  }

  private static Optional<String> pieceId(Fields fields, String name, String hint) {
    if (!fields.has(name)) {
      fields.problem(name, "The field is missing.", hint);
    }
    return fields.parsed(name, Piece::checkedId);
  }

  private static OptionalDouble number(Fields fields, String name, Range range) {
    return fields.number(name, range.least(), range.most());
  }

  private static JsonValue toJson(Piece piece) {
    Members members =
        new Members()
            .text("id", piece.id())
            .text("temperature", piece.temperature().map(Temperature::toString))
            .number("minutes", piece.minutes())
            .text("rack", piece.rack())
            .number("dough_g", piece.doughGrams())
            .number("baked_g", piece.bakedGrams())
            .number("width_mm", piece.widthMillimetres())
            .number("height_mm", piece.heightMillimetres())
            .text("core", piece.core().map(Temperature::toString));
    if (!piece.coreLog().isEmpty()) {
      members.list(
          "core_log",
          piece.coreLog(),
          point ->
              new Members()
                  .number("minutes", Members.decimal(point.minutes()))
                  .text("temperature", point.temperature().toString())
                  .extras(point.extras())
                  .object());
    }
    members.number("crust_shade", piece.crustShade());
    if (!piece.findings().isEmpty()) {
      members.texts("findings", piece.findings());
    }
    if (!piece.liking().isEmpty()) {
      members.list("liking", piece.liking(), BakeCodec::number);
    }
    if (!piece.attributes().isEmpty()) {
      members.list(
          "attributes",
          piece.attributes(),
          a ->
              new Members()
                  .text("name", a.name())
                  .list("scores", a.scores(), BakeCodec::number)
                  .extras(a.extras())
                  .object());
    }
    return members
        .text("verdict", piece.verdict())
        .text("note", piece.note())
        .extras(piece.extras())
        .object();
  }

  private static JsonValue toJson(Photo photo) {
    Members members =
        new Members()
            .text("file", photo.file())
            .text("caption", photo.caption())
            .text("alternative", photo.alternative())
            .text("taken", photo.taken().map(Moment::write));
    if (!photo.marks().isEmpty()) {
      members.list(
          "marks",
          photo.marks(),
          m ->
              new Members()
                  .text("piece", m.piece())
                  .number("x", Members.decimal(m.x()))
                  .number("y", Members.decimal(m.y()))
                  .extras(m.extras())
                  .object());
    }
    return members.extras(photo.extras()).object();
  }

  private static JsonValue number(double value) {
    return new JsonValue.JsonNumber(Members.decimal(value));
  }
}
