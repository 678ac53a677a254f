package io.ovenmark.bake;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Temperature;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads and writes a bake's file, {@code bakes/<formula>/<date>-<n>.json}. */
public final class BakeCodec {
  private static final double GREATEST_GRAMS = 1_000_000;
  private static final double GREATEST_MILLIMETRES = 10_000;
  private static final double LONGEST_MINUTES = 2880;

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
    Optional<String> blob = fields.requiredText("blob");
    Optional<OffsetDateTime> time = fields.parsed("time", BakeCodec::time);
    if (time.isEmpty() && !fields.has("time")) {
      fields.problem("time", "The field is missing.", "Add when it went into the oven.");
    }
    Optional<String> baker = fields.text("baker");
    Optional<String> ambient = fields.text("ambient");
    Optional<String> note = fields.text("note");
    List<Piece> pieces = fields.objects("pieces", BakeCodec::piece);
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
        report(fields, "", e);
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
            .text("time", bake.time().toString())
            .text("baker", bake.baker())
            .text("ambient", bake.ambient())
            .text("note", bake.note())
            .list("pieces", bake.pieces(), BakeCodec::toJson)
            .texts("findings", bake.findings())
            .list("photos", bake.photos(), BakeCodec::toJson)
            .extras(bake.extras())
            .object());
  }

  private static OffsetDateTime time(String text) {
    try {
      return OffsetDateTime.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a date and time.\n"
              + "Write it as in ISO 8601, such as \"2026-09-14T10:30:00+02:00\".",
          e);
    }
  }

  private static Optional<Piece> piece(Fields fields) {
    Optional<String> id = fields.requiredText("id");
    OptionalDouble crust = fields.number("crust_shade", 0, 4);
    try {
      return Optional.of(
          new Piece(
              id.orElse("x"),
              fields.parsed("temperature", Temperature::parse),
              fields.number("minutes", 0, LONGEST_MINUTES),
              fields.text("rack"),
              fields.number("dough_g", 0.01, GREATEST_GRAMS),
              fields.number("baked_g", 0.01, GREATEST_GRAMS),
              fields.number("width_mm", 0.1, GREATEST_MILLIMETRES),
              fields.number("height_mm", 0.1, GREATEST_MILLIMETRES),
              fields.parsed("core", Temperature::parse),
              crust,
              fields.texts("findings"),
              fields.numbers("liking", 1, 9),
              fields.objects("attributes", BakeCodec::attribute),
              fields.text("verdict"),
              fields.text("note"),
              fields.extras()));
    } catch (IllegalArgumentException e) {
      report(fields, "id", e);
      return Optional.empty();
    }
  }

  private static Optional<Piece.Attribute> attribute(Fields fields) {
    return fields
        .requiredText("name")
        .map(name -> new Piece.Attribute(name, fields.numbers("scores", -2, 2)));
  }

  private static Optional<Photo> photo(Fields fields) {
    Optional<String> file = fields.requiredText("file");
    Optional<OffsetDateTime> taken = fields.parsed("taken", BakeCodec::time);
    List<Photo.Mark> marks = fields.objects("marks", BakeCodec::mark);
    Optional<String> caption = fields.text("caption");
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Photo(file.get(), caption, taken, marks, fields.extras()));
    } catch (IllegalArgumentException e) {
      report(fields, "file", e);
      return Optional.empty();
    }
  }

  private static Optional<Photo.Mark> mark(Fields fields) {
    Optional<String> piece = fields.requiredText("piece");
    OptionalDouble x = fields.number("x", 0, 1);
    OptionalDouble y = fields.number("y", 0, 1);
    if (piece.isPresent() && x.isPresent() && y.isPresent()) {
      return Optional.of(new Photo.Mark(piece.get(), x.getAsDouble(), y.getAsDouble()));
    }
    fields.problem("", "The mark is not complete.", "Give it a piece, x and y.");
    return Optional.empty();
  }

  private static void report(Fields fields, String name, IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    fields.problem(name, parts[0], parts.length > 1 ? parts[1] : "Correct the value.");
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
            .text("core", piece.core().map(Temperature::toString))
            .number("crust_shade", piece.crustShade());
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
            .text("taken", photo.taken().map(OffsetDateTime::toString));
    if (!photo.marks().isEmpty()) {
      members.list(
          "marks",
          photo.marks(),
          m ->
              new Members()
                  .text("piece", m.piece())
                  .number("x", Members.decimal(m.x()))
                  .number("y", Members.decimal(m.y()))
                  .object());
    }
    return members.extras(photo.extras()).object();
  }

  private static JsonValue number(double value) {
    return new JsonValue.JsonNumber(Members.decimal(value));
  }
}
