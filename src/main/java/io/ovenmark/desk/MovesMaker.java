package io.ovenmark.desk;

import io.ovenmark.compare.FigureComparison;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.Limit;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Says what would move in lines of history if something were saved; only those are worked out. */
final class MovesMaker {
  private static final List<Figure> KEY_FIGURES =
      List.of(
          Figure.NET_CARBOHYDRATE,
          Figure.PROTEIN,
          Figure.FAT,
          Figure.FIBRE,
          Figure.ENERGY,
          Figure.SODIUM,
          Figure.LIQUID_RATIO,
          Figure.DOUGH_MOISTURE);

  private final Desk desk;
  private final List<KitchenWork.LineMoves> moved = new ArrayList<>();
  private final List<String> same = new ArrayList<>();

  MovesMaker(Desk desk) {
    this.desk = desk;
  }

  /** What is tried out against what is, line by line. */
  MovesMaker add(List<LinesInUse.Use> uses, Trial trial) {
    return add(uses, Trial.NOTHING, trial);
  }

  MovesMaker add(List<LinesInUse.Use> uses, Trial before, Trial after) {
    for (LinesInUse.Use use : uses) {
      try {
        Desk.Sheet from = desk.tried(use.line(), use.formula(), before);
        Desk.Sheet to = desk.tried(use.line(), use.formula(), after);
        add(use, from, to);
      } catch (UnreadableException | StoreException e) {
        moved.add(damaged(use, Refusals.problemsOf(e)));
      }
    }
    return this;
  }

  KitchenWork.Moves moves(List<String> apart) {
    return new KitchenWork.Moves(List.copyOf(moved), List.copyOf(same), List.copyOf(apart));
  }

  private void add(LinesInUse.Use use, Desk.Sheet from, Desk.Sheet to) {
    Worksheet old = from.worksheet();
    Worksheet now = to.worksheet();
    List<KitchenWork.FigureMove> figures = figures(old, now, to.goal());
    KitchenWork.GoalMove goal = to.goal().map(check -> goal(from.goal(), check)).orElse(null);
    List<String> gained = minus(keys(now.allergens()), keys(old.allergens()));
    List<String> lost = minus(keys(old.allergens()), keys(now.allergens()));
    List<String> unknown = minus(now.allergensUnknownIn(), old.allergensUnknownIn());
    List<String> known = minus(old.allergensUnknownIn(), now.allergensUnknownIn());
    boolean still =
        figures.isEmpty()
            && (goal == null || goal.change().equals("same") && goal.rules().isEmpty())
            && gained.isEmpty()
            && lost.isEmpty()
            && unknown.isEmpty()
            && known.isEmpty();
    if (still) {
      same.add(use.line().line());
    } else {
      moved.add(
          new KitchenWork.LineMoves(
              use.line().line(),
              use.line().formula(),
              use.line().variant().orElse(null),
              use.formula().name(),
              figures,
              goal,
              gained,
              lost,
              unknown,
              known,
              List.of()));
    }
  }

  private static KitchenWork.LineMoves damaged(
      LinesInUse.Use use, List<Views.ProblemView> problems) {
    return new KitchenWork.LineMoves(
        use.line().line(),
        use.line().formula(),
        use.line().variant().orElse(null),
        use.formula().name(),
        List.of(),
        null,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        problems);
  }

  /** Macros a piece, or per 100 g of dough when nobody knows how many pieces there are. */
  private List<KitchenWork.FigureMove> figures(
      Worksheet old, Worksheet now, Optional<GoalCheck> goal) {
    Basis basis =
        old.pieces().isUnknown() && now.pieces().isUnknown() ? Basis.DOUGH_100_G : Basis.PIECE;
    Set<Figure> order = new LinkedHashSet<>(KEY_FIGURES);
    order.addAll(List.of(Figure.values()));
    List<KitchenWork.FigureMove> moves = new ArrayList<>();
    for (Figure figure : order) {
      Quantity from = old.figure(figure, basis);
      Quantity to = now.figure(figure, basis);
      if (!from.equals(to)) {
        FigureComparison compared =
            new FigureComparison(
                figure, Optional.of(basis), from, to, to.minus(from), List.of());
        moves.add(move(compared, goal));
      }
    }
    return moves;
  }

  private KitchenWork.FigureMove move(FigureComparison compared, Optional<GoalCheck> goal) {
    Figure figure = compared.figure();
    Basis basis = compared.basis().orElseThrow();
    Optional<Limit> limit =
        goal.flatMap(
            check ->
                check.goal().limits().stream()
                    .filter(each -> each.figure() == figure)
                    .filter(each -> !figure.isMacro() || each.basis() == basis)
                    .findFirst());
    boolean known = compared.from().isKnown() && compared.to().isKnown();
    String words = basis == Basis.PIECE ? "a piece" : "per 100 g dough";
    return new KitchenWork.FigureMove(
        figure.key(),
        figure.label(),
        figure.unit(),
        figure.isMacro() ? words : "",
        KEY_FIGURES.contains(figure),
        FigureSet.number(compared.from()),
        FigureSet.number(compared.to()),
        compared.change(desk.units()),
        known ? compared.difference(desk.units()) : "",
        limit
            .map(
                each ->
                    new Views.LimitView(
                        BakeViews.number(each.atLeast()), BakeViews.number(each.atMost())))
            .orElse(null));
  }

  private KitchenWork.GoalMove goal(Optional<GoalCheck> before, GoalCheck after) {
    Goal goal = after.goal();
    Boolean from = before.map(check -> GoalViews.met(check.outcome())).orElse(null);
    Boolean to = GoalViews.met(after.outcome());
    return new KitchenWork.GoalMove(
        goal.slug(),
        goal.name(),
        from,
        to,
        change(before.map(GoalCheck::outcome), after.outcome()),
        rules(before, after));
  }

  private static String change(Optional<GoalCheck.Outcome> from, GoalCheck.Outcome to) {
    if (from.equals(Optional.of(to))) {
      return "same";
    }
    String newly = from.isPresent() ? "newly " : "";
    return switch (to) {
      case MET -> newly + "met";
      case BROKEN -> newly + "missed";
      case UNKNOWN -> from.isPresent() ? "no longer known" : "not known";
    };
  }

  private List<KitchenWork.RuleMove> rules(Optional<GoalCheck> before, GoalCheck after) {
    Map<String, GoalCheck.Result> old = new LinkedHashMap<>();
    before.ifPresent(check -> check.results().forEach(each -> old.put(each.rule(), each)));
    List<KitchenWork.RuleMove> moves = new ArrayList<>();
    for (GoalCheck.Result now : after.results()) {
      GoalCheck.Result was = old.remove(now.rule());
      if (was == null || was.outcome() != now.outcome()) {
        moves.add(
            new KitchenWork.RuleMove(
                words(now),
                was == null ? null : GoalViews.met(was.outcome()),
                GoalViews.met(now.outcome()),
                was == null,
                false,
                now.limit().map(limit -> value(limit, now.value())).orElse(null),
                now.because()));
      }
    }
    old.values()
        .forEach(
            gone ->
                moves.add(
                    new KitchenWork.RuleMove(
                        words(gone),
                        GoalViews.met(gone.outcome()),
                        null,
                        false,
                        true,
                        null,
                        List.of())));
    return moves;
  }

  private String words(GoalCheck.Result result) {
    return result.limit().map(limit -> limit.inWords(desk.units())).orElse(result.rule());
  }

  private String value(Limit limit, Quantity value) {
    return limit.figure().isWeighed()
        ? desk.units().mass(value)
        : FigureText.of(value, limit.figure().unit());
  }

  private static List<String> keys(Set<Allergen> allergens) {
    return allergens.stream().map(Allergen::key).toList();
  }

  private static List<String> minus(List<String> all, List<String> without) {
    Set<String> left = new TreeSet<>(all);
    left.removeAll(without);
    return List.copyOf(left);
  }
}
