package io.ovenmark.desk;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.lever.FigureMove;
import io.ovenmark.lever.Kept;
import io.ovenmark.lever.Replacement;
import io.ovenmark.lever.ReplacementSentences;
import io.ovenmark.lever.Replacements;
import io.ovenmark.lever.SetAside;
import io.ovenmark.lever.Structure;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Revision;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Source;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns foods that stand in for others into the records of answers. */
final class ReplaceSheetMaker {
  /** Figures that are told of every food. */
  private static final List<Figure> TOLD =
      List.of(
          Figure.BATCH_MASS,
          Figure.DOUGH_PER_PIECE,
          Figure.LIQUID_RATIO,
          Figure.DOUGH_MOISTURE,
          Figure.ENERGY,
          Figure.PROTEIN,
          Figure.FAT,
          Figure.FIBRE,
          Figure.NET_CARBOHYDRATE,
          Figure.SODIUM);

  private final ShownUnits units;
  private final ReplaceFood.Found found;
  private final Replacements all;
  private final Worksheet before;
  private final Basis basis;

  ReplaceSheetMaker(Desk desk, ReplaceFood.Found found) {
    this.units = desk.units();
    this.found = found;
    this.all = found.found();
    this.before = all.before();
    this.basis = before.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
  }

  ReplaceViews.ReplaceSheet sheet() {
    FindLevers.State state = found.state();
    return new ReplaceViews.ReplaceSheet(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        state.number(),
        state.revision().map(Revision::commit).map(commit -> commit.hex()).orElse(null),
        before.formula().name(),
        line(),
        new ReplaceViews.KeptView(
            all.kept().key(),
            all.kept().label(),
            all.keptGrams(),
            all.kept().per100g(all.line().food().orElseThrow()).low(),
            all.kept() == Kept.usual(all.line().food().orElseThrow()),
            all.kept() == Kept.MASS
                ? "mass of " + units.mass(Quantity.known(all.keptGrams()))
                : FigureText.number(all.keptGrams()) + " g",
            per100g(all.line().food().orElseThrow())),
        found.sheet().goal().map(check -> GoalViews.view(check, units)).orElse(null),
        all.reading(),
        basis.key(),
        figures(before),
        ReplacementSentences.summary(all, units),
        all.answers().stream()
            .filter(answer -> isAsked(answer.standIn().food().slug()))
            .map(this::answer)
            .toList(),
        setAside(),
        remarks(),
        Cautions.of(before));
  }

  /** How much of what is kept 100 g of a food hold. */
  private String per100g(Food food) {
    return FigureText.number(all.kept().per100g(food).low()) + " g in 100 g";
  }

  private boolean isAsked(String food) {
    return found.with().isEmpty() || found.with().get().equals(food);
  }

  private ReplaceViews.LineView line() {
    WorksheetLine line = all.line();
    Food food = line.food().orElseThrow();
    return new ReplaceViews.LineView(
        line.line().id(),
        food.slug(),
        food.name(),
        food.kind().key(),
        line.line().amount().toString(),
        line.grams().low(),
        source(food),
        Structure.doneBy(food));
  }

  /** Where a food's figures come from. */
  private static String source(Food food) {
    Source source = food.source();
    String id = source.id().map(number -> " " + number).orElse("");
    return switch (source.kind()) {
      case SR28 -> "USDA SR28" + id;
      case FOOD_DATA_CENTRAL -> "USDA FoodData Central" + id;
      case LABEL -> "label of the package";
      case TYPICAL -> "typical label values";
      case OWN -> "own figures";
    };
  }

  private List<ReplaceViews.SetAsideView> setAside() {
    List<ReplaceViews.SetAsideView> views = new ArrayList<>();
    for (SetAside each : all.setAside()) {
      if (isAsked(each.standIn().food().slug())) {
        views.add(
            new ReplaceViews.SetAsideView(
                each.standIn().food().slug(),
                each.standIn().food().name(),
                each.standIn().inPantry(),
                each.why().key(),
                each.because()));
      }
    }
    found
        .unreadable()
        .forEach(
            (slug, why) -> {
              if (isAsked(slug)) {
                views.add(
                    new ReplaceViews.SetAsideView(slug, slug, true, "unreadable", why));
              }
            });
    return List.copyOf(views);
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (found.state().foodsDiffer()) {
      remarks.add(
          "Worked out with today's foods, goals and settings, which changed since that revision.");
    }
    all.line()
        .line()
        .note()
        .ifPresent(
            note ->
                remarks.add(
                    "The line's note “" + note + "” was written for " + all.line().name()
                        + " and stays; read it again."));
    if (before.bakedYield().share().isKnown()) {
      remarks.add(
          "What is stated of the baked piece takes the loss on baking that was weighed to stay.");
    }
    remarks.add(
        "The method stays as it is: read it again where it names " + all.line().name() + ".");
    return List.copyOf(remarks);
  }

  private FigureSet figures(Worksheet sheet) {
    Map<String, Quantity> figures = new LinkedHashMap<>();
    for (Figure figure : TOLD) {
      figures.put(figure.key(), sheet.figure(figure, basis));
    }
    return new FigureSet(figures);
  }

  private ReplaceViews.AnswerView answer(Replacement answer) {
    Food food = answer.standIn().food();
    Double elsewhere = elsewhere(food);
    WorksheetLine line = answer.weighed().line(all.line().line().id()).orElseThrow();
    return new ReplaceViews.AnswerView(
        answer.number(),
        food.slug(),
        food.name(),
        food.kind().key(),
        answer.sameKind(),
        answer.standIn().inPantry(),
        source(food),
        answer.grams(),
        answer.weigh().toString(),
        units.amount(answer.weigh()),
        all.kept().per100g(food).low(),
        FigureSet.number(Replacements.holds(line, all.kept())),
        ReplacementSentences.keeps(all, answer, units),
        elsewhere,
        elsewhere == null
            ? null
            : "Other lines hold " + units.mass(Quantity.known(elsewhere)) + " of it already.",
        ReplacementSentences.of(all, answer, units),
        ReplacementSentences.inShort(all, answer, units),
        ReplacementSentences.note(all, answer),
        answer.disturbance(),
        answer.goal().map(check -> GoalViews.met(check.outcome())).orElse(null),
        answer.goal().map(this::rules).orElse(List.of()),
        figures(answer.weighed()),
        found.with().isPresent() ? moves(answer) : List.of(),
        keys(answer.gained(before)),
        keys(answer.lost(before)),
        food.allergens().isPresent(),
        CostViews.between(before, answer.weighed()),
        answer.structure(),
        Cautions.newIn(answer.weighed(), before));
  }

  private Double elsewhere(Food food) {
    double grams = 0;
    boolean any = false;
    for (WorksheetLine line : before.lines()) {
      boolean other = !line.line().id().equals(all.line().line().id());
      if (other && line.line().food().equals(food.slug()) && line.grams().isKnown()) {
        grams += line.grams().low();
        any = true;
      }
    }
    return any ? grams : null;
  }

  private List<ReplaceViews.RuleView> rules(GoalCheck check) {
    Optional<GoalCheck> now = found.sheet().goal();
    List<ReplaceViews.RuleView> rules = new ArrayList<>();
    for (int i = 0; i < check.results().size(); i++) {
      GoalCheck.Result then = check.results().get(i);
      GoalCheck.Result was = now.orElseThrow().results().get(i);
      if (then.outcome() != GoalCheck.Outcome.MET || was.outcome() != GoalCheck.Outcome.MET) {
        rules.add(
            new ReplaceViews.RuleView(
                then.limit().map(limit -> limit.inWords(units)).orElse(then.rule()),
                then.limit()
                    .map(
                        limit ->
                            limit.figure().isWeighed()
                                ? units.mass(then.value())
                                : FigureText.of(then.value(), limit.figure().unit()))
                    .orElse(null),
                GoalViews.met(was.outcome()),
                GoalViews.met(then.outcome()),
                then.because()));
      }
    }
    return List.copyOf(rules);
  }

  private List<ReplaceViews.MovesView> moves(Replacement answer) {
    List<ReplaceViews.MovesView> views = new ArrayList<>();
    if (basis == Basis.PIECE) {
      views.add(moves(answer, Basis.PIECE, "the formula and a piece"));
    } else {
      views.add(moves(answer, Basis.DOUGH_100_G, "100 g of dough"));
    }
    views.add(moves(answer, Basis.BATCH, "the batch"));
    if (before.bakedYield().share().isKnown()) {
      views.add(moves(answer, Basis.BAKED_100_G, "100 g baked"));
    }
    return List.copyOf(views);
  }

  private ReplaceViews.MovesView moves(Replacement answer, Basis each, String label) {
    List<LeverViews.MoveView> moves =
        answer.moves(before, each).stream().map(this::move).toList();
    return new ReplaceViews.MovesView(each.key(), label, moves);
  }

  private LeverViews.MoveView move(FigureMove move) {
    return LeverSheetMaker.move(move, units);
  }

  private static List<String> keys(Collection<Allergen> allergens) {
    return allergens.stream().map(Allergen::key).toList();
  }
}
