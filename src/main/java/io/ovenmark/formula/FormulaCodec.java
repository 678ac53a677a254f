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
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads and writes a formula's file, {@code formulas/<slug>.json}. Reading reports everything that
 * is wrong at once; writing is canonical, so reading and writing an already canonical file gives the
 * same bytes.
 */
public final class FormulaCodec {
  /** More than a tonne on one line is taken for a slip of the keyboard. */
  static final BigDecimal GREATEST_GRAMS = new BigDecimal("1000000");

  private static final double LONGEST_BAKE_MINUTES = 2880;

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
    List<Line> lines = fields.objects("lines", line -> line(line, lineIds));
    List<String> method = fields.texts("method");
    Set<String> bakeIds = new HashSet<>();
    List<BakeSetting> bake = fields.objects("bake", setting -> bakeSetting(setting, bakeIds));
    Yield yield = fields.object("yield").map(FormulaCodec::yield).orElse(Yield.UNSTATED);
    Extras extras = fields.extras();
    fields.finish();
    return new Formula(
        name.orElseThrow(), description, goal, reference, lines, method, bake, yield, extras);
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

  private static Optional<Line> line(Fields fields, Set<String> ids) {
    Optional<String> food = fields.parsed("food", Slug::check);
    if (food.isEmpty() && !fields.has("food")) {
      fields.problem("food", "The line has no food.", "Add the short name of a food.");
    }
    Optional<Amount> amount = fields.parsed("amount", FormulaCodec::amount);
    if (amount.isEmpty() && !fields.has("amount")) {
      fields.problem("amount", "The line has no amount.", "Add one such as \"150 g\".");
    }
    Optional<String> written = fields.parsed("id", Slug::check);
    String id = written.orElseGet(() -> free(food.orElse("line"), ids));
    if (!ids.add(id)) {
      fields.problem(
          "id", "The line id \"" + id + "\" stands twice.", "Give one of the two another id.");
    }
    boolean flour = fields.flag("flour");
    Optional<String> note = fields.text("note");
    Extras extras = fields.extras();
    return food.isPresent() && amount.isPresent()
        ? Optional.of(new Line(id, food.get(), amount.get(), flour, note, extras))
        : Optional.empty();
  }

  private static String free(String food, Set<String> taken) {
    String id = food;
    for (int i = 2; taken.contains(id); i++) {
      id = food + "-" + i;
    }
    return id;
  }

  private static Amount amount(String text) {
    Amount amount = Amount.parse(text);
    if (amount.grams().filter(grams -> grams.compareTo(GREATEST_GRAMS) > 0).isPresent()) {
      throw new IllegalArgumentException(
          "The amount \"" + amount + "\" is more than a tonne.\nCheck the number and the unit.");
    }
    return amount;
  }

  private static Optional<BakeSetting> bakeSetting(Fields fields, Set<String> ids) {
    String id = fields.parsed("id", Slug::check).orElseGet(() -> free("bake", ids));
    if (!ids.add(id)) {
      fields.problem(
          "id",
          "The bake setting id \"" + id + "\" stands twice.",
          "Give one of the two another id.");
    }
    OptionalDouble minutes = fields.number("minutes", 0, LONGEST_BAKE_MINUTES);
    return Optional.of(
        new BakeSetting(
            id,
            fields.parsed("temperature", Temperature::parse),
            minutes,
            fields.text("rack"),
            fields.text("steam"),
            fields.text("vessel"),
            fields.text("note"),
            fields.extras()));
  }

  private static Yield yield(Fields fields) {
    Optional<Integer> pieces = fields.whole("pieces", 1, 100_000);
    OptionalDouble dough = fields.number("dough_per_piece_g", 0.01, 1_000_000);
    OptionalDouble loss = fields.number("handling_loss_percent", 0, 99.9);
    try {
      return new Yield(pieces, dough, loss);
    } catch (IllegalArgumentException e) {
      String[] parts = e.getMessage().split("\n", 2);
      fields.problem("", parts[0], parts[1]);
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
