package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.Problem;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Tastings;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.SheetPlan;
import io.ovenmark.tasting.Sheet;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.tasting.TastingKind;
import io.ovenmark.tasting.Triangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Shows tastings: their list, one as its organiser sees it, its key, and the sheets as tasters see
 * them.
 *
 * <pre>{@code
 * TastingViews.TastingSheet tasting = new ShowTasting(desk).call("lupin-bun", "2026-09-14-1");
 * }</pre>
 */
public final class ShowTasting {
  private static final List<Integer> PANELS = List.of(6, 12, 18, 24, 30, 36);

  private final Desk desk;
  private final TastingParts parts;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowTasting(Desk desk) {
    this.desk = desk;
    this.parts = new TastingParts(desk);
  }

  /**
   * The tastings of a formula, and what a new one can be made of.
   *
   * @param address the formula; its point does not count
   * @return the list
   * @throws Refusal when there is no such formula
   */
  public TastingViews.TastingList list(Address address) {
    Notebook notebook = desk.notebook();
    Revision newest = notebook.newest(Address.latest(address.formula(), address.variant()));
    Tastings.Found found = parts.tastings().of(address.formula());
    return new TastingViews.TastingList(
        address.toString(),
        address.formula(),
        notebook.formula(newest).name(),
        found.tastings().stream().map(ShowTasting::line).toList(),
        problems(found.problems()),
        samples(address.formula()),
        Arrays.stream(TastingKind.values()).map(ShowTasting::kind).toList(),
        PANELS.stream().map(ShowTasting::panel).toList());
  }

  /**
   * The tastings of all formulas.
   *
   * @return by formula, newest first
   */
  public TastingViews.AllTastings all() {
    List<TastingViews.TastingLine> lines = new ArrayList<>();
    List<Views.ProblemView> problems = new ArrayList<>();
    for (String formula : desk.notebook().latest().formulas()) {
      Tastings.Found found = parts.tastings().of(formula);
      found.tastings().stream().map(ShowTasting::line).forEach(lines::add);
      problems.addAll(problems(found.problems()));
    }
    return new TastingViews.AllTastings(List.copyOf(lines), List.copyOf(problems));
  }

  /**
   * A tasting as its organiser sees it.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @return the tasting
   * @throws Refusal when there is none
   */
  public TastingViews.TastingSheet call(String formula, String id) {
    Tasting tasting = parts.tasting(formula, id);
    return new TastingViews.TastingSheet(
        formula,
        id,
        desk.notebook().latest().formula(formula).map(Formula::name).orElse(formula),
        tasting.kind().key(),
        tasting.kind().label(),
        tasting.question(),
        Json.time(tasting.time()),
        tasting.note().orElse(null),
        tasting.seed(),
        parts.samples(tasting),
        tasting.attributes(),
        SheetPlan.balancedAt(tasting.kind(), tasting.samples().size()),
        remarks(tasting),
        tasting.sheets().stream().map(parts::view).toList(),
        TastingResultViews.view(tasting),
        TastingCautions.forOrganiser(desk, tasting));
  }

  /**
   * Which sample has which code.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @return the key
   * @throws Refusal when there is no such tasting
   */
  public TastingViews.TastingKey key(String formula, String id) {
    Tasting tasting = parts.tasting(formula, id);
    return new TastingViews.TastingKey(
        formula,
        id,
        parts.samples(tasting),
        tasting.sheets().stream()
            .map(
                sheet ->
                    new TastingViews.KeySheet(
                        sheet.number(),
                        sheet.initials().orElse(null),
                        sheet.servings().stream()
                            .map(each -> new TastingViews.PlateView(each.code(), each.sample()))
                            .toList()))
            .toList());
  }

  /**
   * A sheet as its taster sees it.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @param number of the sheet
   * @return the sheet, without anything that tells the samples apart
   * @throws Refusal when there is none
   */
  public TastingViews.TasterSheet sheet(String formula, String id, int number) {
    Tasting tasting = parts.tasting(formula, id);
    Sheet sheet = TastingParts.sheet(tasting, number);
    return sheet(tasting, sheet, TastingCautions.forTasters(desk, tasting));
  }

  /**
   * All sheets of a tasting, for printing.
   *
   * @param formula slug of the formula
   * @param id the tasting's name
   * @return the sheets
   * @throws Refusal when there is no such tasting
   */
  public TastingViews.TasterSheets sheets(String formula, String id) {
    Tasting tasting = parts.tasting(formula, id);
    List<String> cautions = TastingCautions.forTasters(desk, tasting);
    return new TastingViews.TasterSheets(
        formula,
        id,
        tasting.kind().label(),
        tasting.sheets().stream().map(sheet -> sheet(tasting, sheet, cautions)).toList());
  }

  private static TastingViews.TasterSheet sheet(
      Tasting tasting, Sheet sheet, List<String> cautions) {
    return new TastingViews.TasterSheet(
        tasting.formula(),
        tasting.id(),
        sheet.number(),
        sheet.initials().orElse(null),
        tasting.kind().key(),
        tasting.question(),
        sheet.codes(),
        tasting.attributes(),
        sheet.answer().isPresent(),
        cautions);
  }

  private List<String> remarks(Tasting tasting) {
    List<String> remarks = new ArrayList<>();
    int sheets = tasting.sheets().size();
    int balanced = SheetPlan.balancedAt(tasting.kind(), tasting.samples().size());
    if (sheets % balanced != 0) {
      remarks.add(
          "The orders are balanced with " + balanced + " sheets or a multiple of them; with "
              + sheets + " some stand once more than others.");
    }
    for (Sample sample : tasting.samples()) {
      if (parts.revision(sample).isEmpty()) {
        remarks.add(
            "What was tasted as " + sample.address() + " is on no line of history any more.");
      }
    }
    return List.copyOf(remarks);
  }

  private static TastingViews.TastingLine line(Tasting tasting) {
    List<String> says = TastingResultViews.view(tasting).says();
    return new TastingViews.TastingLine(
        tasting.formula(),
        tasting.id(),
        tasting.kind().key(),
        tasting.kind().label(),
        tasting.question(),
        Json.time(tasting.time()),
        tasting.samples().stream().map(Sample::text).toList(),
        tasting.sheets().size(),
        tasting.answered(),
        says.isEmpty() ? "" : says.get(0));
  }

  private static TastingViews.KindView kind(TastingKind kind) {
    return new TastingViews.KindView(
        kind.key(), kind.label(), kind.question(), kind.leastSamples(), kind.mostSamples());
  }

  private static TastingViews.PanelView panel(int tasters) {
    return new TastingViews.PanelView(
        tasters,
        TastingResultViews.whole(Triangle.leastCorrect(tasters, 0.05)),
        TastingResultViews.number(Triangle.visible(tasters)));
  }

  private List<TastingViews.SampleChoice> samples(String formula) {
    Notebook notebook = desk.notebook();
    List<Bake> bakes = notebook.bakes(formula);
    List<TastingViews.SampleChoice> choices = new ArrayList<>();
    for (Address line : notebook.lines(formula)) {
      if (notebook.newestIfAny(line).isEmpty()) {
        continue;
      }
      int fork = line.variant().isPresent() ? notebook.forkNumber(line) : 0;
      List<Revision> revisions = new ArrayList<>(notebook.revisions(line));
      Collections.reverse(revisions);
      for (Revision revision : revisions) {
        if (revision.number() <= fork) {
          continue;
        }
        String address = revision.address().toString();
        choices.add(new TastingViews.SampleChoice(address, address + " · " + revision.note()));
        for (Bake bake : Desk.bakesOf(revision.blob().hex(), bakes)) {
          String text = address + ":" + bake.id();
          choices.add(new TastingViews.SampleChoice(text, address + ", bake " + bake.id()));
          bake.pieces()
              .forEach(
                  piece ->
                      choices.add(
                          new TastingViews.SampleChoice(
                              text + "/" + piece.id(),
                              address + ", bake " + bake.id() + ", piece " + piece.id())));
        }
      }
    }
    return List.copyOf(choices);
  }

  private static List<Views.ProblemView> problems(List<Problem> problems) {
    return Refusals.views(problems);
  }
}
