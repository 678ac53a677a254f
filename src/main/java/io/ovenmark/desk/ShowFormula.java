package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.HandEdit;
import io.ovenmark.notebook.store.TagFacts;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works one revision out, or the file that was edited by hand.
 *
 * <pre>{@code
 * Views.FormulaSheet sheet = new ShowFormula(desk).call(Address.parse("seeded-lupin-bun@5"));
 * }</pre>
 */
public final class ShowFormula {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowFormula(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works it out.
   *
   * @param address which state
   * @return the sheet
   * @throws Refusal when there is no such state
   * @throws io.ovenmark.json.UnreadableException when the file or a food is damaged
   */
  public Views.FormulaSheet call(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      return edited(address);
    }
    Revision revision = desk.notebook().revision(address);
    List<Bake> bakes = desk.notebook().bakes(address.formula());
    Desk.Sheet sheet = desk.sheet(address, revision, bakes);
    boolean otherFoods = desk.restsOnOtherFoods(address, revision);
    TagFacts published = desk.notebook().published(address.formula()).get(revision.commit());
    Head head =
        new Head(
            Optional.of(otherFoods ? address : revision.address()),
            otherFoods,
            revision.number(),
            revision.commit().hex(),
            revision.blob().hex(),
            Json.time(revision.time()),
            revision.author().name(),
            revision.note(),
            revision.details().isEmpty() ? null : revision.details(),
            published == null ? null : published.message());
    return view(head, sheet, Desk.bakesOf(revision.blob().hex(), bakes));
  }

  /** What a hand edit is, before it is worked out. */
  record Edited(Formula formula, String blob, Address line) {}

  /** Reads the file on disk. */
  static Edited read(Desk desk, Address address) {
    Address line = lineOnDisk(desk, address);
    if (address.variant().isPresent() && !address.variant().equals(line.variant())) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          address.toString(),
          "The files on disk are those of " + line.line() + ", not of " + address.line() + ".",
          "Check the branch out first with: git checkout " + address.branch());
    }
    String file = "formulas/" + address.formula() + ".json";
    HandEdit edit = desk.notebook().handEdit(address.formula()).orElse(null);
    if (edit == null) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          address.toString(),
          "The file of " + address.formula() + " on disk is the same as its newest revision.",
          "Edit " + file + ", or leave out \"@edited\".");
    }
    if (edit.onDisk().isEmpty()) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          address.toString(),
          "The file of " + address.formula() + " was deleted from disk or cannot be read.",
          "Bring it back with: git checkout -- " + file);
    }
    byte[] bytes = edit.onDisk().get();
    Formula formula = FormulaCodec.read(edit.path(), bytes);
    return new Edited(formula, desk.notebook().blobOf(bytes).hex(), line);
  }

  /** The line of history that a file edited by hand belongs to. */
  static Address lineOnDisk(Desk desk, Address address) {
    return desk.notebook()
        .lineOnDisk(address.formula())
        .orElse(Address.latest(address.formula(), Optional.empty()));
  }

  private Views.FormulaSheet edited(Address address) {
    Edited edited = read(desk, address);
    List<Bake> bakes =
        Desk.bakesOf(edited.blob(), desk.notebook().bakes(address.formula()));
    int next = desk.notebook().nextNumber(edited.line());
    Address shown =
        new Address(address.formula(), edited.line().variant(), Address.Point.EDITED);
    Head head =
        new Head(
            Optional.of(shown), false, next, null, edited.blob(), null, null, null, null, null);
    return view(head, desk.draft(edited.formula(), edited.line(), bakes), bakes);
  }

  /**
   * Shows what is not a revision yet.
   *
   * @param line the line of history that it would go on; empty for a new formula
   * @param number the number that it would get
   * @param sheet what was worked out
   * @return the sheet; without address and formula when it is new
   */
  Views.FormulaSheet unsaved(Optional<Address> line, int number, Desk.Sheet sheet) {
    Head head = new Head(line, false, number, null, null, null, null, null, null, null);
    return view(head, sheet, List.of());
  }

  private record Head(
      Optional<Address> address,
      boolean otherFoods,
      int number,
      String commit,
      String blob,
      String time,
      String author,
      String note,
      String details,
      String published) {}

  private Views.FormulaSheet view(Head head, Desk.Sheet sheet, List<Bake> bakes) {
    Worksheet worksheet = sheet.worksheet();
    Formula formula = worksheet.formula();
    Map<String, FigureSet> macros = new LinkedHashMap<>();
    for (Basis basis : Basis.values()) {
      macros.put(basis.key(), FigureSet.of(worksheet.macros().get(basis)));
    }
    Map<String, Quantity> yield = new LinkedHashMap<>();
    yield.put("pieces", worksheet.pieces());
    yield.put("batch_g", worksheet.batchGrams());
    yield.put("dough_g", worksheet.doughGrams());
    yield.put("dough_per_piece_g", worksheet.doughPerPieceGrams());
    yield.put("baked_per_piece_g", worksheet.bakedPerPieceGrams());
    return new Views.FormulaSheet(
        head.address().map(Address::toString).orElse(null),
        head.address().map(Address::formula).orElse(null),
        head.address().flatMap(Address::variant).orElse(null),
        head.number(),
        head.otherFoods(),
        head.commit(),
        head.blob(),
        head.time(),
        head.author(),
        head.note(),
        head.details(),
        head.published(),
        formula.name(),
        formula.description().orElse(null),
        formula.reference().orElse(null),
        new FigureSet(yield),
        BakeViews.number(formula.yield().handlingLossPercent()),
        worksheet.bakedYield().pieces(),
        ratios(worksheet),
        worksheet.lines().stream().map(ShowFormula::line).toList(),
        formula.method(),
        UnweighedFoods.views(desk, worksheet),
        formula.bake().stream().map(ShowFormula::stage).toList(),
        formula.storage().orElse(null),
        macros,
        worksheet.policy().energy().key(),
        worksheet.policy().netCarbohydrate().inWords(),
        worksheet.unknowns().stream()
            .map(u -> new Views.UnknownView(u.line(), u.nutrient(), u.why()))
            .toList(),
        sheet.goal().map(check -> GoalViews.view(check, desk.units())).orElse(null),
        worksheet.allergens().stream().map(Allergen::key).toList(),
        worksheet.allergensUnknownIn(),
        Cautions.of(worksheet, bakes, desk.units()),
        desk.views(bakes),
        CostViews.of(worksheet));
  }

  static FigureSet ratios(Worksheet worksheet) {
    Map<String, Quantity> ratios = new LinkedHashMap<>();
    ratios.put("liquid_ratio", worksheet.liquidRatio());
    ratios.put("dough_moisture_percent", worksheet.doughMoisturePercent());
    return new FigureSet(ratios);
  }

  private static Views.LineView line(WorksheetLine line) {
    return new Views.LineView(
        line.line().id(),
        line.line().food(),
        line.name(),
        line.food().map(food -> food.kind().key()).orElse(null),
        line.line().amount().toString(),
        FigureSet.number(line.grams()),
        line.resolved().approximate(),
        line.resolved().how(),
        line.line().flour(),
        line.line().note().orElse(null),
        FigureSet.number(line.percentOfBatch()),
        FigureSet.number(line.bakersPercent()));
  }

  private static Views.StageView stage(BakeSetting setting) {
    return new Views.StageView(
        setting.id(),
        setting.temperature().map(Temperature::toString).orElse(null),
        BakeViews.celsius(setting.temperature()),
        BakeViews.number(setting.minutes()),
        setting.rack().orElse(null),
        setting.steam().orElse(null),
        setting.vessel().orElse(null),
        setting.note().orElse(null));
  }
}
