package io.ovenmark.formula;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Slug;
import io.ovenmark.measure.Temperature;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads and writes a formula's file, {@code formulas/<slug>.json}. Reading reports everything that
 * is wrong at once; a line or stage without an id gets one that no other carries; writing is
 * canonical, so reading and writing an already canonical file gives the same bytes.
 */
public final class FormulaCodec {
  /** More than a tonne on one line is taken for a slip of the keyboard. */
  static final BigDecimal GREATEST_GRAMS = new BigDecimal("1000000");

  /** A line or stage of which the file may leave the id to be found. */
  private record Draft<T>(Optional<String> id, String wanted, Function<String, T> withId) {}

  private FormulaCodec() {}

  /**
   * Reads a formula.
   *
   * @param file the name used in messages
   * @param utf8 the file's bytes
   * @return the formula
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static Formula read(String file, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<String> name = fields.requiredText("name");
    Optional<String> description = fields.text("description");
    Optional<String> goal = fields.parsed("goal", Slug::check);
    Optional<String> reference = fields.parsed("reference", Slug::check);
    Set<String> lineIds = new HashSet<>();
    List<Draft<Line>> lines = fields.objects("lines", line -> line(line, lineIds));
    List<String> method = fields.texts("method");
    Set<String> bakeIds = new HashSet<>();
    List<Draft<BakeSetting>> bake =
        fields.objects("bake", setting -> bakeSetting(setting, bakeIds));
    Yield yield = fields.object("yield").map(FormulaCodec::yield).orElse(Yield.UNSTATED);
    Extras extras = fields.extras();
    fields.finish();
    return new Formula(
        name.orElseThrow(),
        description,
        goal,
        reference,
        settle(lines, lineIds),
        method,
        settle(bake, bakeIds),
        yield,
        extras);
  }

  /**
   * Writes a formula in canonical form.
   *
   * @param formula the formula
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(Formula formula) {
    Members yield = new Members();
    formula.yield().pieces().ifPresent(n -> yield.number("pieces", BigDecimal.valueOf(n)));
    yield.number("dough_per_piece_g", formula.yield().doughPerPieceGrams());
    yield.number("handling_loss_percent", formula.yield().handlingLossPercent());
    return CanonicalJson.write(
        new Members()
            .text("name", formula.name())
            .text("description", formula.description())
            .text("goal", formula.goal())
            .text("reference", formula.reference())
            .list("lines", formula.lines(), FormulaCodec::toJson)
            .texts("method", formula.method())
            .list("bake", formula.bake(), FormulaCodec::toJson)
            .value("yield", yield.object())
            .extras(formula.extras())
            .object());
  }

  private static Optional<Draft<Line>> line(Fields fields, Set<String> ids) {
    Optional<String> id = id(fields, ids, "line");
    Optional<String> food = fields.parsed("food", Slug::check);
    if (food.isEmpty() && !fields.has("food")) {
      fields.problem("food", "The line has no food.", "Add the short name of a food.");
    }
    Optional<Amount> amount = fields.parsed("amount", text -> Line.checked(Amount.parse(text)));
    if (amount.isEmpty() && !fields.has("amount")) {
      fields.problem("amount", "The line has no amount.", "Add one such as \"150 g\".");
    }
    boolean flour = fields.flag("flour");
    Optional<String> note = fields.text("note");
    Extras extras = fields.extras();
    if (food.isEmpty() || amount.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Draft<>(
            id,
            food.get(),
            found -> new Line(found, food.get(), amount.get(), flour, note, extras)));
  }

  private static Optional<Draft<BakeSetting>> bakeSetting(Fields fields, Set<String> ids) {
    Optional<String> id = id(fields, ids, "bake setting");
    BakeSetting setting =
        BakeSetting.named("bake")
            .withTemperature(fields.parsed("temperature", Temperature::parse))
            .withMinutes(
                fields.number("minutes", BakeSetting.MINUTES.least(), BakeSetting.MINUTES.most()))
            .withRack(fields.text("rack"))
            .withSteam(fields.text("steam"))
            .withVessel(fields.text("vessel"))
            .withNote(fields.text("note"))
            .withExtras(fields.extras());
    return Optional.of(new Draft<>(id, "bake", setting::withId));
  }

  private static Optional<String> id(Fields fields, Set<String> ids, String what) {
    Optional<String> id = fields.parsed("id", Slug::check);
    if (id.isPresent() && !ids.add(id.get())) {
      fields.problem(
          "id",
          "The " + what + " id \"" + id.get() + "\" stands twice.",
          "Give one of the two another id.");
    }
    return id;
  }

  private static <T> List<T> settle(List<Draft<T>> drafts, Set<String> taken) {
    List<T> settled = new ArrayList<>();
    for (Draft<T> draft : drafts) {
      String id = draft.id().orElseGet(() -> FreeId.of(draft.wanted(), taken::contains));
      taken.add(id);
      settled.add(draft.withId().apply(id));
    }
    return settled;
  }

  private static Yield yield(Fields fields) {
    Optional<Integer> pieces = fields.whole("pieces", 1, Yield.MOST_PIECES);
    OptionalDouble dough =
        fields.number("dough_per_piece_g", Yield.DOUGH_GRAMS.least(), Yield.DOUGH_GRAMS.most());
    OptionalDouble loss =
        fields.number(
            "handling_loss_percent", Yield.LOSS_PERCENT.least(), Yield.LOSS_PERCENT.most());
    try {
      return new Yield(pieces, dough, loss);
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Yield.UNSTATED;
    }
  }

  private static JsonValue toJson(Line line) {
    Members members =
        new Members()
            .text("id", line.id())
            .text("food", line.food())
            .text("amount", line.amount().toString());
    if (line.flour()) {
      members.flag("flour", true);
    }
    return members.text("note", line.note()).extras(line.extras()).object();
  }

  private static JsonValue toJson(BakeSetting setting) {
    return new Members()
        .text("id", setting.id())
        .text("temperature", setting.temperature().map(Temperature::toString))
        .number("minutes", setting.minutes())
        .text("rack", setting.rack())
        .text("steam", setting.steam())
        .text("vessel", setting.vessel())
        .text("note", setting.note())
        .extras(setting.extras())
        .object();
  }
}
