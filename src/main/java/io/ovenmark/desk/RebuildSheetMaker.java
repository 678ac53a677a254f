package io.ovenmark.desk;

import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Rebuild;
import io.ovenmark.compare.Side;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.lever.Structure;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Address;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns a formula beside its reference into the records of the answer. */
final class RebuildSheetMaker {
  private static final List<Figure> OF_THE_FORMULA =
      List.of(
          Figure.BATCH_MASS, Figure.PIECES, Figure.LIQUID_RATIO, Figure.DOUGH_MOISTURE);

  private static final List<Figure> OF_A_PIECE =
      List.of(Figure.DOUGH_PER_PIECE, Figure.BAKED_PER_PIECE);

  private final ShownUnits units;
  private final Comparison comparison;
  private final Worksheet from;
  private final Worksheet to;

  RebuildSheetMaker(Desk desk, Comparison comparison) {
    this.units = desk.units();
    this.comparison = comparison;
    this.from = comparison.from().sheet();
    this.to = comparison.to().sheet();
  }

  RebuildViews.RebuildSheet sheet() {
    Rebuild rebuild = Rebuild.of(comparison);
    List<Figure> ofAPiece = new ArrayList<>(OF_A_PIECE);
    ofAPiece.addAll(Figure.macros());
    return new RebuildViews.RebuildSheet(
        side(comparison.from()),
        side(comparison.to()),
        summary(),
        rebuild.parts().stream().map(RebuildSheetMaker::part).toList(),
        figures(ofAPiece, Basis.PIECE),
        figures(Figure.macros(), Basis.DOUGH_100_G),
        figures(OF_THE_FORMULA, Basis.PIECE),
        comparison.to().goal().map(GoalCheck::goal).map(this::goal).orElse(null),
        keys(minus(to.allergens(), from.allergens())),
        keys(minus(from.allergens(), to.allergens())),
        to.allergensUnknownIn(),
        CostViews.between(from, to),
        Structure.between(foods(from), foods(to)),
        remarks(),
        Cautions.of(to));
  }

  private static RebuildViews.SideView side(Side side) {
    Address address = Address.parse(side.address());
    return new RebuildViews.SideView(
        side.address(),
        address.formula(),
        address.variant().orElse(null),
        side.sheet().formula().name(),
        FigureSet.number(side.sheet().pieces()),
        FigureSet.number(side.sheet().doughPerPieceGrams()));
  }

  private String summary() {
    return to.formula().name() + " beside " + from.formula().name() + ": a piece has "
        + change(Figure.NET_CARBOHYDRATE) + " net carbohydrate, " + change(Figure.PROTEIN)
        + " protein, " + change(Figure.FAT) + " fat and " + change(Figure.ENERGY)
        + ", in " + units.massChange(from.doughPerPieceGrams(), to.doughPerPieceGrams())
        + " of dough.";
  }

  private String change(Figure figure) {
    return FigureText.change(
        from.figure(figure, Basis.PIECE), to.figure(figure, Basis.PIECE), figure.unit());
  }

  private static RebuildViews.PartView part(Rebuild.Part part) {
    return new RebuildViews.PartView(
        part.part().label(),
        new RebuildViews.ShareView(null, null, figures(part.from())),
        new RebuildViews.ShareView(null, null, figures(part.to())),
        part.rows().stream().map(RebuildSheetMaker::row).toList());
  }

  private static RebuildViews.RowView row(Rebuild.Row row) {
    return new RebuildViews.RowView(
        row.line().id(),
        row.change().key(),
        share(row.line().before(), row.from()),
        share(row.line().after(), row.to()));
  }

  private static RebuildViews.ShareView share(
      Optional<WorksheetLine> line, Optional<Rebuild.Share> share) {
    return line.isEmpty() || share.isEmpty()
        ? null
        : new RebuildViews.ShareView(
            line.get().name(),
            line.get().line().amount().toString(),
            figures(share.get()));
  }

  private static FigureSet figures(Rebuild.Share share) {
    Map<String, Quantity> figures = new LinkedHashMap<>();
    figures.put("grams", share.grams());
    figures.put("percent_of_batch", share.percentOfBatch());
    Rebuild.FIGURES.forEach(
        figure -> figures.put(figure.key(), share.perPiece().get(figure)));
    return new FigureSet(figures);
  }

  private List<RebuildViews.FigureView> figures(List<Figure> wanted, Basis basis) {
    return wanted.stream().map(figure -> figure(figure, basis)).toList();
  }

  private RebuildViews.FigureView figure(Figure figure, Basis basis) {
    Quantity before = from.figure(figure, basis);
    Quantity after = to.figure(figure, basis);
    boolean known = before.isKnown() && after.isKnown();
    Quantity delta = after.minus(before);
    String unit = figure.unit().isEmpty() ? "" : " " + figure.unit();
    String difference =
        figure.isWeighed()
            ? units.massDifference(delta)
            : FigureText.signed(delta) + unit;
    return new RebuildViews.FigureView(
        figure.key(),
        figure.label(),
        figure.unit(),
        FigureSet.number(before),
        FigureSet.number(after),
        known ? FigureSet.number(delta) : null,
        text(figure, before),
        text(figure, after),
        figure.isWeighed()
            ? units.massChange(before, after)
            : FigureText.change(before, after, figure.unit()),
        known ? difference : "");
  }

  private String text(Figure figure, Quantity value) {
    return figure.isWeighed() ? units.mass(value) : FigureText.of(value, figure.unit());
  }

  private RebuildViews.GoalView goal(Goal goal) {
    GoalCheck before = GoalCheck.of(goal, from);
    GoalCheck after = GoalCheck.of(goal, to);
    List<RebuildViews.RuleView> rules = new ArrayList<>();
    for (int i = 0; i < after.results().size(); i++) {
      GoalCheck.Result one = before.results().get(i);
      GoalCheck.Result other = after.results().get(i);
      rules.add(
          new RebuildViews.RuleView(
              other.limit().map(limit -> limit.inWords(units)).orElse(other.rule()),
              GoalViews.met(one.outcome()),
              GoalViews.met(other.outcome()),
              words(one),
              words(other)));
    }
    return new RebuildViews.GoalView(
        goal.slug(),
        goal.name(),
        GoalViews.met(before.outcome()),
        GoalViews.met(after.outcome()),
        List.copyOf(rules));
  }

  private String words(GoalCheck.Result result) {
    return result
        .limit()
        .map(limit -> text(limit.figure(), result.value()))
        .orElse(String.join(", ", result.because()));
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    comparison
        .rules()
        .forEach(
            rule ->
                remarks.add(
                    "The two are worked out by other rules, " + rule.label() + ": "
                        + rule.from().orElse("none") + FigureText.ARROW
                        + rule.to().orElse("none") + "."));
    if (from.pieces().isUnknown() || to.pieces().isUnknown()) {
      remarks.add(
          "One of the two does not say into how many pieces it is divided, so that what a line"
              + " brings to a piece is not known.");
    }
    return List.copyOf(remarks);
  }

  private static List<Food> foods(Worksheet sheet) {
    return sheet.lines().stream().flatMap(line -> line.food().stream()).toList();
  }

  private static Set<Allergen> minus(Set<Allergen> all, Set<Allergen> without) {
    Set<Allergen> left = EnumSet.noneOf(Allergen.class);
    left.addAll(all);
    left.removeAll(without);
    return left;
  }

  private static List<String> keys(Collection<Allergen> allergens) {
    return allergens.stream().map(Allergen::key).toList();
  }
}
