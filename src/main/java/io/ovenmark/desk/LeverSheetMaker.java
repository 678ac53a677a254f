package io.ovenmark.desk;

import io.ovenmark.goal.GoalCheck;
import io.ovenmark.lever.Answer;
import io.ovenmark.lever.Contradiction;
import io.ovenmark.lever.FigureMove;
import io.ovenmark.lever.LeverSentences;
import io.ovenmark.lever.LeverSummary;
import io.ovenmark.lever.Levers;
import io.ovenmark.lever.LineMove;
import io.ovenmark.lever.Question;
import io.ovenmark.lever.Wish;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.notebook.Revision;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns answers about levers into their records. */
final class LeverSheetMaker {
  private final ShownUnits units;
  private final FindLevers.Found found;
  private final Levers levers;
  private final List<String> cautions;

  LeverSheetMaker(Desk desk, FindLevers.Found found) {
    this.units = desk.units();
    this.found = found;
    this.levers = found.levers();
    this.cautions = Cautions.of(levers.before());
  }

  LeverViews.LeverSheet sheet() {
    FindLevers.State state = found.state();
    List<String> remarks = new ArrayList<>(levers.remarks());
    if (state.foodsDiffer()) {
      remarks.add(
          "Worked out with today's foods, goals and settings, which changed since that revision.");
    }
    return new LeverViews.LeverSheet(
        state.shown().toString(),
        state.shown().formula(),
        state.shown().variant().orElse(null),
        state.number(),
        state.revision().map(Revision::commit).map(commit -> commit.hex()).orElse(null),
        levers.before().formula().name(),
        asked(),
        levers.granted(),
        LeverSummary.of(levers, units),
        levers.answers().stream().map(this::answer).toList(),
        LeverSentences.ways(levers, units).orElse(null),
        levers.contradiction().map(this::impossible).orElse(null),
        remarks,
        cautions);
  }

  private LeverViews.AskedView asked() {
    Question question = levers.question();
    return new LeverViews.AskedView(
        question.wishes().stream().map(this::wish).toList(),
        List.copyOf(question.keep()),
        found.order().limits(),
        question.batchFixed() ? "fixed" : "free",
        question.piecesFixed() ? "fixed" : "free",
        found.order().reading());
  }

  private LeverViews.WishView wish(Wish wish) {
    Quantity now = wish.of(levers.before());
    return new LeverViews.WishView(
        wish.inWords(units),
        wish.inWords(ShownUnits.AS_WRITTEN),
        wish.figure().key(),
        wish.figure().isMacro() ? wish.basis().key() : null,
        new Views.LimitView(
            BakeViews.number(wish.limit().atLeast()), BakeViews.number(wish.limit().atMost())),
        FigureSet.number(now),
        text(wish.figure(), now),
        wish.isMet(levers.before()));
  }

  private String text(Figure figure, Quantity value) {
    return figure.isWeighed() ? units.mass(value) : FigureText.of(value, figure.unit());
  }

  private LeverViews.AnswerView answer(Answer answer) {
    Optional<GoalCheck> goal =
        found.state().sheet().goal().map(check -> GoalCheck.of(check.goal(), answer.weighed()));
    return new LeverViews.AnswerView(
        answer.number(),
        answer.kind().key(),
        answer.line().orElse(null),
        LeverSentences.change(answer, units) + ".",
        LeverSentences.alsoMoves(levers, answer, units),
        LeverSentences.note(levers, answer),
        answer.disturbance(),
        answer.lines().stream().map(LeverSheetMaker::line).toList(),
        answer
            .yield()
            .map(
                yield ->
                    new LeverViews.YieldView(
                        yield.pieces().orElse(null),
                        BakeViews.number(yield.doughPerPieceGrams())))
            .orElse(null),
        levers.question().wishes().stream().map(wish -> grant(wish, answer)).toList(),
        answer.moves().stream().map(move -> move(move, units)).toList(),
        CostViews.between(levers.before(), answer.after()),
        goal.map(check -> GoalViews.met(check.outcome())).orElse(null),
        Cautions.of(answer.weighed()).stream()
            .filter(caution -> !cautions.contains(caution))
            .toList());
  }

  private static LeverViews.LineMoveView line(LineMove move) {
    return new LeverViews.LineMoveView(
        move.line(),
        move.name(),
        move.entered().toString(),
        move.fromGrams(),
        move.toGrams(),
        move.toGrams() - move.fromGrams(),
        BakeViews.number(move.percent()),
        move.weigh().toString());
  }

  private LeverViews.GrantView grant(Wish wish, Answer answer) {
    Quantity weighed = wish.of(answer.weighed());
    return new LeverViews.GrantView(
        wish.inWords(units),
        FigureSet.number(wish.of(answer.after())),
        FigureSet.number(weighed),
        text(wish.figure(), weighed),
        wish.isMet(answer.weighed()));
  }

  static LeverViews.MoveView move(FigureMove move, ShownUnits units) {
    return new LeverViews.MoveView(
        move.figure().key(),
        move.name(),
        move.figure().unit(),
        move.figure().isMacro() ? move.basis().key() : null,
        FigureSet.number(move.from()),
        FigureSet.number(move.to()),
        FigureSet.number(move.delta()),
        move.change(units),
        move.difference(units));
  }

  private LeverViews.ImpossibleView impossible(Contradiction contradiction) {
    List<LeverViews.NearestView> nearest =
        contradiction.nearest().stream()
            .map(
                each ->
                    new LeverViews.NearestView(
                        each.wish().inWords(units),
                        BakeViews.number(each.alone()),
                        BakeViews.number(each.together()),
                        LeverSummary.of(each, units),
                        each.instead()
                            .map(wish -> wish.inWords(ShownUnits.AS_WRITTEN))
                            .orElse(null)))
            .toList();
    return new LeverViews.ImpossibleView(contradiction.because(), nearest);
  }
}
