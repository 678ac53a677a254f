package io.ovenmark.desk;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.lever.AtHand;
import io.ovenmark.lever.Readings;
import io.ovenmark.lever.ScaleQuestion;
import io.ovenmark.lever.ScaledLine;
import io.ovenmark.lever.Scaling;
import io.ovenmark.lever.Tin;
import io.ovenmark.lever.TinFill;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Scales a formula to pieces, to a size, to a tin or to what is at hand, in amounts that can be
 * measured.
 *
 * <pre>{@code
 * ScaleViews.ScaleSheet sheet =
 *     new ScaleFormula(desk).call(address, ScaleOrder.ofPieces("10"));
 * }</pre>
 */
public final class ScaleFormula {
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,6})?)\\s*(.*)");

  private final Desk desk;

  private record Found(FindLevers.State state, ScaleQuestion question, Scaling scaling) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ScaleFormula(Desk desk) {
    this.desk = desk;
  }

  /**
   * Scales.
   *
   * @param address which state
   * @param order to what
   * @return the scaled formula
   * @throws Refusal when there is no such state, or something that is needed is not known
   */
  public ScaleViews.ScaleSheet call(Address address, ScaleOrder order) {
    return view(find(address, order));
  }

  /**
   * The scaled formula as a document for a draft.
   *
   * @param address which state
   * @param order to what
   * @return the formula's JSON, with amounts that can be measured
   * @throws Refusal as {@link #call} does
   */
  public JsonText document(Address address, ScaleOrder order) {
    return JsonText.of(FormulaCodec.write(find(address, order).scaling().formula()));
  }

  /**
   * Begins a draft of the scaled formula.
   *
   * @param address which state
   * @param order to what
   * @param by who, and when
   * @return the draft, with a note that is proposed
   * @throws Refusal as {@link #call} does
   */
  public DraftViews.DraftView draft(Address address, ScaleOrder order, By by) {
    Found found = find(address, order);
    JsonText document = JsonText.of(FormulaCodec.write(found.scaling().formula()));
    KeepDrafts drafts = new KeepDrafts(desk);
    DraftViews.DraftView begun =
        drafts.begin(
            Optional.of(document), Optional.of(found.state().shown().toString()), by);
    String note = summary(found.scaling(), ShownUnits.AS_WRITTEN).replaceAll("\\.$", "");
    drafts.keep(begun.id(), begun.version(), new KeepDrafts.Typed(document, "", note), by);
    return drafts.show(begun.id());
  }

  private Found find(Address address, ScaleOrder order) {
    FindLevers.State state = FindLevers.state(desk, address);
    Worksheet sheet = state.sheet().worksheet();
    ScaleQuestion question = question(order, sheet);
    return new Found(
        state,
        question,
        Asked.read("question", () -> Scaling.of(sheet, question, desk.units())));
  }

  private static ScaleQuestion question(ScaleOrder order, Worksheet sheet) {
    return Asked.read(
        "question",
        () ->
            new ScaleQuestion(
                number("pieces", order.pieces(), "pieces?|tins?"),
                grams("dough_per_piece", order.doughPerPiece()),
                grams("baked_per_piece", order.bakedPerPiece()),
                tin("tin", order.tin()),
                tin("from_tin", order.fromTin()),
                number("density", order.density(), "g ?/ ?ml|g per ml"),
                number("fill", order.fill(), "%"),
                have(order.have(), sheet),
                number("handling_loss", order.handlingLoss(), "%"),
                number("baking_loss", order.bakingLoss(), "%"),
                order.readable() == null
                    ? Readings.FINE
                    : Asked.read("readable", () -> Readings.read(order.readable()))));
  }

  private static boolean isMissing(String text) {
    return text == null || text.isBlank();
  }

  private static OptionalDouble number(String where, String text, String unit) {
    if (isMissing(text)) {
      return OptionalDouble.empty();
    }
    Matcher matcher = NUMBER.matcher(text.strip());
    if (!matcher.matches() || !matcher.group(2).matches("(" + unit + ")?")) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          where,
          "The value \"" + text.strip() + "\" is not understood.",
          "Write a number" + (unit.equals("%") ? " of percent" : "")
              + ", decimals with a point.");
    }
    return OptionalDouble.of(Double.parseDouble(matcher.group(1)));
  }

  private static OptionalDouble grams(String where, String text) {
    if (isMissing(text)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Asked.read(where, () -> Amount.parse(text))
            .grams()
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        where,
                        "The mass \"" + text.strip() + "\" is not in a unit of mass.",
                        "Write it in grams or ounces, such as \"95 g\"."))
            .doubleValue());
  }

  private static Optional<Tin> tin(String where, String text) {
    return isMissing(text)
        ? Optional.empty()
        : Optional.of(Asked.read(where, () -> Tin.read(text)));
  }

  private static Map<String, Double> have(List<String> texts, Worksheet sheet) {
    Map<String, Double> have = new LinkedHashMap<>();
    for (String text : texts) {
      int equals = text.indexOf('=');
      if (equals < 1) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            text,
            "What is at hand names an ingredient and an amount.",
            "Write it as in \"psyllium-husk=40 g\".");
      }
      String name = text.substring(0, equals).strip();
      String value = text.substring(equals + 1).strip();
      Amount amount = Asked.read(text, () -> Amount.parse(value));
      Quantity grams =
          sheet.lines().stream()
              .filter(line -> line.line().id().equals(name) || line.line().food().equals(name))
              .findFirst()
              .flatMap(WorksheetLine::food)
              .map(food -> food.resolve(amount).grams())
              .or(() -> amount.grams().map(mass -> Quantity.known(mass.doubleValue())))
              .orElse(Quantity.UNKNOWN);
      if (!grams.isKnown()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            text,
            "What \"" + value + "\" of " + name + " weighs is not known.",
            "Give it in grams.");
      }
      have.put(name, grams.low());
    }
    return have;
  }

  private ScaleViews.ScaleSheet view(Found found) {
    FindLevers.State state = found.state();
    Scaling scaling = found.scaling();
    Worksheet exact = scaling.exact();
    Map<String, Quantity> yield = new LinkedHashMap<>();
    yield.put("pieces", exact.pieces());
    yield.put("batch_g", exact.batchGrams());
    yield.put("dough_g", exact.doughGrams());
    yield.put("dough_per_piece_g", exact.doughPerPieceGrams());
    yield.put(
        "baked_per_piece_g",
        scaling.bakingLossPercent().isPresent()
            ? exact.doughPerPieceGrams()
                .times(1 - scaling.bakingLossPercent().getAsDouble() / 100)
            : Quantity.UNKNOWN);
    List<String> remarks = new ArrayList<>(scaling.remarks());
    if (state.foodsDiffer()) {
      remarks.add(
          "Worked out with today's foods, goals and settings, which changed since that revision.");
    }
    return new ScaleViews.ScaleSheet(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        state.number(),
        exact.formula().name(),
        summary(scaling, desk.units()),
        scaling.factor(),
        found.question().reading(),
        new FigureSet(yield),
        BakeViews.number(exact.formula().yield().handlingLossPercent()),
        BakeViews.number(scaling.bakingLossPercent()),
        scaling.lines().stream().map(ScaleFormula::line).toList(),
        scaling.rounding().stream()
            .map(move -> LeverSheetMaker.move(move, desk.units()))
            .toList(),
        scaling.tin().map(ScaleFormula::tin).orElse(null),
        scaling.atHand().stream().map(ScaleFormula::hand).toList(),
        CostViews.of(scaling.measured()),
        remarks,
        Cautions.of(scaling.measured()));
  }

  private static String summary(Scaling scaling, ShownUnits units) {
    Worksheet exact = scaling.exact();
    String times = FigureText.number(scaling.factor()) + " times the formula";
    if (scaling.pieces().isEmpty()) {
      return "Scaled to " + times + ": " + units.mass(exact.batchGrams()) + " of dough.";
    }
    int count = scaling.pieces().getAsInt();
    String what = scaling.tin().isPresent() ? "tin" : "piece";
    return "Scaled to " + count + " " + what + (count == 1 ? "" : "s") + " of "
        + units.mass(exact.doughPerPieceGrams()) + " dough: " + times + ", a batch of "
        + units.mass(exact.batchGrams()) + ".";
  }

  private static ScaleViews.LineView line(ScaledLine line) {
    return new ScaleViews.LineView(
        line.line(),
        line.name(),
        line.entered().toString(),
        FigureSet.number(line.from()),
        FigureSet.number(line.exact()),
        line.amount().toString(),
        FigureSet.number(line.measured()),
        BakeViews.number(line.errorPercent()),
        line.how());
  }

  private static ScaleViews.TinView tin(TinFill fill) {
    return new ScaleViews.TinView(
        fill.tin().inWords(),
        fill.tin().millilitres(),
        fill.doughGrams(),
        fill.gramsPerMillilitre(),
        fill.because());
  }

  private static ScaleViews.HandView hand(AtHand hand) {
    return new ScaleViews.HandView(
        hand.food(),
        hand.haveGrams(),
        hand.usedGrams(),
        hand.haveGrams() - hand.usedGrams(),
        hand.scarcest());
  }
}
