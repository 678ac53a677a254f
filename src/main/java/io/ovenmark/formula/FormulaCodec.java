package io.ovenmark.formula;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Temperature;
import java.math.BigDecimal;

/**
 * Reads and writes a formula's file, {@code formulas/<slug>.json}. Reading reports everything that
 * is wrong at once; a line or stage without an id gets one that no other carries; writing is
 * canonical, so reading and writing an already canonical file gives the same bytes.
 */
public final class FormulaCodec {
  /** More than a tonne on one line is taken for a slip of the keyboard. */
  static final BigDecimal GREATEST_GRAMS = new BigDecimal("1000000");

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
    FormulaDraft read = new FormulaReading(false).formula(fields);
    fields.finish();
    return read.formula();
  }

  /**
   * Reads a formula that somebody is still typing: by the same rules, but what cannot be read yet
   * is reported and left open instead of refused, blank texts count as absent, blank lines and
   * steps are left out, and numbers may be written as texts. A draft without problems is a formula
   * that {@link #write} takes.
   *
   * @param name the name used in messages
   * @param utf8 JSON
   * @return what can be read, and what cannot
   * @throws io.ovenmark.json.UnreadableException when it is no JSON object at all
   */
  public static FormulaDraft draft(String name, byte[] utf8) {
    return new FormulaReading(true).formula(Fields.of(name, utf8));
  }

  /**
   * Writes a formula in canonical form.
   *
   * @param formula the formula
   * @return UTF-8 JSON with a final newline
   * @throws IllegalArgumentException when an amount is one that cannot be read
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
            .text("storage", formula.storage())
            .extras(formula.extras())
            .object());
  }

  private static JsonValue toJson(Line line) {
    if (!line.amount().isRead()) {
      throw new IllegalArgumentException(
          "The amount \"" + line.amount() + "\" cannot be read.\nWrite a number and a unit.");
    }
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
