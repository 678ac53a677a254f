package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Range;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads a form of a bake as far as it can be read: a field that is not understood is told and taken
 * as unknown, so that everything else can be worked out while somebody still types.
 */
public final class BakeFormReader {
  private final BakeForm form;
  private final Optional<Bake> before;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * What is wrong with a field.
   *
   * @param field its place, such as {@code note} or {@code pieces.0.dough}; pieces count from 0
   * @param sentence what is wrong
   * @param remedy what to write
   */
  public record Fault(String field, String sentence, String remedy) {}

  /**
   * What was understood.
   *
   * @param time when it went into the oven; empty when not stated or not understood
   * @param baker who baked
   * @param ambient remarks on room and oven
   * @param note anything else
   * @param findings faults and merits of the whole tray
   * @param pieces the pieces whose letters can be used
   * @param faults what is wrong, field by field
   */
  public record Reading(
      Optional<OffsetDateTime> time,
      Optional<String> baker,
      Optional<String> ambient,
      Optional<String> note,
      List<String> findings,
      List<Piece> pieces,
      List<Fault> faults) {
    /** Copies. */
    public Reading {
      requireNonNull(time, "time");
      findings = List.copyOf(findings);
      pieces = List.copyOf(pieces);
      faults = List.copyOf(faults);
    }
  }

  private BakeFormReader(BakeForm form, Optional<Bake> before) {
    this.form = form;
    this.before = before;
  }

  /**
   * Reads a form.
   *
   * @param form what was typed
   * @param before the bake that the form was filled with; a text that still is what {@link
   *     BakeFormText} writes for it means its very value. Empty for a new bake
   * @param clock what time it is, and the zone of times without one
   * @return what was understood
   */
  public static Reading read(BakeForm form, Optional<Bake> before, Clock clock) {
    return new BakeFormReader(form, before).read(clock);
  }

  private Reading read(Clock clock) {
    Optional<BakeForm> filled = before.map(bake -> BakeFormText.of(bake, form.units()));
    Optional<OffsetDateTime> time =
        filled.filter(texts -> texts.time().equals(form.time())).isPresent()
            ? before.map(Bake::time)
            : text(form.time())
                .flatMap(text -> tried("time", () -> Optional.of(BakeTime.read(text, clock))));
    Map<String, Piece> known = new LinkedHashMap<>();
    before.ifPresent(bake -> bake.pieces().forEach(piece -> known.put(piece.id(), piece)));
    List<Piece> pieces = new ArrayList<>();
    Set<String> letters = new HashSet<>();
    for (int i = 0; i < form.pieces().size() && pieces.size() < PieceText.MOST_PIECES; i++) {
      PieceForm typed = form.pieces().get(i);
      String place = "pieces." + i + ".";
      letter(typed, place, letters)
          .ifPresent(id -> pieces.add(piece(id, typed, place, Optional.ofNullable(known.get(id)))));
    }
    if (form.pieces().size() > PieceText.MOST_PIECES) {
      faults.add(
          new Fault(
              "pieces",
              "The bake has " + form.pieces().size() + " pieces, more than "
                  + PieceText.MOST_PIECES + ".",
              "Record it as several bakes."));
    }
    return new Reading(
        time,
        kept(form.baker(), Bake::baker),
        kept(form.ambient(), Bake::ambient),
        kept(form.note(), Bake::note),
        before
            .map(Bake::findings)
            .filter(form.findings()::equals)
            .orElseGet(() -> findings(form.findings())),
        pieces,
        faults);
  }

  /** A text of the tray; one that is still as it was stays so to the last blank. */
  private Optional<String> kept(String written, Function<Bake, Optional<String>> part) {
    return before.flatMap(part).filter(written::equals).or(() -> text(written));
  }

  private Optional<String> letter(PieceForm typed, String place, Set<String> letters) {
    String id = typed.id().strip().toLowerCase(Locale.ROOT);
    if (id.isEmpty()) {
      faults.add(new Fault(place + "id", "The piece has no letter.", "Give it one, such as a."));
      return Optional.empty();
    }
    Optional<String> checked = tried(place + "id", () -> Optional.of(Piece.checkedId(id)));
    if (checked.isPresent() && !letters.add(id)) {
      faults.add(
          new Fault(
              place + "id",
              "The piece \"" + id + "\" stands twice.",
              "Give one of the two another letter."));
      return Optional.empty();
    }
    return checked;
  }

  private Piece piece(String id, PieceForm typed, String place, Optional<Piece> known) {
    Piece was = known.orElseGet(() -> Piece.named(id));
    PieceForm filled = BakeFormText.of(was, form.units());
    TypedUnits units = form.units();
    List<PieceForm.Taster> tasters = typed.tasters();
    boolean sameTasters = tasters.equals(filled.tasters());
    return new Piece(
        id,
        field(typed, filled, PieceForm::temperature, was.temperature(), place + "temperature",
            text -> TypedMeasure.temperature(text, units)),
        number(typed, filled, PieceForm::minutes, was.minutes(), place + "minutes",
            text -> checked(Piece.MINUTES, "The baking time", TypedMeasure.minutes(text))),
        field(typed, filled, PieceForm::rack, was.rack(), place + "rack", BakeFormReader::text),
        number(typed, filled, PieceForm::dough, was.doughGrams(), place + "dough",
            text -> checked(Piece.GRAMS, "The dough mass", TypedMeasure.grams(text, units))),
        number(typed, filled, PieceForm::baked, was.bakedGrams(), place + "baked",
            text -> checked(Piece.GRAMS, "The baked mass", TypedMeasure.grams(text, units))),
        number(typed, filled, PieceForm::width, was.widthMillimetres(), place + "width",
            text -> checked(Piece.MILLIMETRES, "The width", TypedMeasure.millimetres(text))),
        number(typed, filled, PieceForm::height, was.heightMillimetres(), place + "height",
            text -> checked(Piece.MILLIMETRES, "The height", TypedMeasure.millimetres(text))),
        field(typed, filled, PieceForm::core, was.core(), place + "core",
            text -> TypedMeasure.temperature(text, units)),
        typed.coreLog().equals(filled.coreLog())
            ? was.coreLog()
            : tried(place + "core_log", () -> Optional.of(CoreLog.read(typed.coreLog())))
                .orElse(List.of()),
        number(typed, filled, PieceForm::crust, was.crustShade(), place + "crust",
            text -> checked(Piece.CRUST, "The crust shade", TypedMeasure.plain(text))),
        typed.findings().equals(was.findings()) ? was.findings() : findings(typed.findings()),
        sameTasters ? was.liking() : liking(tasters, place),
        sameTasters ? was.attributes() : attributes(tasters, was, place),
        field(typed, filled, PieceForm::verdict, was.verdict(), place + "verdict",
            BakeFormReader::text),
        field(typed, filled, PieceForm::note, was.note(), place + "note", BakeFormReader::text),
        was.extras());
  }

  private <T> Optional<T> field(
      PieceForm typed,
      PieceForm filled,
      Function<PieceForm, String> text,
      Optional<T> was,
      String place,
      Function<String, Optional<T>> read) {
    String written = text.apply(typed);
    return written.equals(text.apply(filled)) ? was : tried(place, () -> read.apply(written));
  }

  private OptionalDouble number(
      PieceForm typed,
      PieceForm filled,
      Function<PieceForm, String> text,
      OptionalDouble was,
      String place,
      Function<String, OptionalDouble> read) {
    String written = text.apply(typed);
    if (written.equals(text.apply(filled))) {
      return was;
    }
    return tried(place, () -> Optional.of(read.apply(written))).orElse(OptionalDouble.empty());
  }

  private static OptionalDouble checked(
      Range range, String what, OptionalDouble value) {
    range.check(what, value);
    return value;
  }

  private List<Double> liking(List<PieceForm.Taster> tasters, String place) {
    List<Double> scores = new ArrayList<>();
    for (int i = 0; i < tasters.size(); i++) {
      String text = tasters.get(i).liking();
      tried(
              place + "tasters." + i + ".liking",
              () -> Optional.of(checked(Piece.LIKING, "The liking", TypedMeasure.plain(text))))
          .ifPresent(score -> score.ifPresent(scores::add));
    }
    return scores;
  }

  private List<Piece.Attribute> attributes(
      List<PieceForm.Taster> tasters, Piece was, String place) {
    Map<String, List<Double>> scores = new LinkedHashMap<>();
    Map<String, Extras> extras = new LinkedHashMap<>();
    for (Piece.Attribute attribute : was.attributes()) {
      scores.put(attribute.name(), new ArrayList<>());
      extras.put(attribute.name(), attribute.extras());
    }
    for (int i = 0; i < tasters.size(); i++) {
      String at = place + "tasters." + i + ".";
      tasters
          .get(i)
          .attributes()
          .forEach(
              (name, text) ->
                  tried(
                          at + name,
                          () ->
                              Optional.of(
                                  checked(
                                      Piece.Attribute.SCORE,
                                      "The score",
                                      TypedMeasure.plain(text))))
                      .ifPresent(
                          score ->
                              score.ifPresent(
                                  value ->
                                      scores
                                          .computeIfAbsent(name.strip(), n -> new ArrayList<>())
                                          .add(value))));
    }
    List<Piece.Attribute> attributes = new ArrayList<>();
    scores.forEach(
        (name, values) -> {
          if (!name.isEmpty() && !values.isEmpty()) {
            attributes.add(
                new Piece.Attribute(name, values, extras.getOrDefault(name, Extras.NONE)));
          }
        });
    return attributes;
  }

  private static List<String> findings(List<String> words) {
    Set<String> findings = new LinkedHashSet<>();
    for (String word : words) {
      String finding =
          FindingVocabulary.of(word).map(FindingVocabulary::word).orElse(word.strip());
      if (!finding.isEmpty()) {
        findings.add(finding);
      }
    }
    return List.copyOf(findings);
  }

  private static Optional<String> text(String text) {
    return Optional.of(text.strip()).filter(stripped -> !stripped.isEmpty());
  }

  private <T> Optional<T> tried(String field, Supplier<Optional<T>> read) {
    try {
      return read.get();
    } catch (IllegalArgumentException e) {
      String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
      faults.add(new Fault(field, parts[0], parts.length > 1 ? parts[1] : ""));
      return Optional.empty();
    }
  }
}
