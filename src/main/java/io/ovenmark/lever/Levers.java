package io.ovenmark.lever;

import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.worksheet.Worksheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to change so that figures come to wanted values.
 *
 * <pre>{@code
 * Question question = Question.of(Wish.read("liquid ratio 0.80")).keeping("egg-whole");
 * Levers levers = Levers.of(sheet, question, Readings.FINE, ShownUnits.AS_WRITTEN);
 * levers.answers().get(0).lines();   // water 180 → 163.6 g
 * }</pre>
 *
 * <p>A figure is a quotient of sums over the lines, so a wish on it becomes a linear condition when
 * both sides are multiplied by the divisor. A change of one line follows in closed form. The
 * combined change is the point nearest to the present one within all conditions, with the least sum
 * of squared relative changes of the lines: a convex quadratic programme.
 *
 * <p>Single changes are ranked by how little they disturb the rest: the sum of the relative
 * changes, without sign, of the figures that were not asked for (liquid ratio and dough moisture
 * with weight 2; batch mass, dough a piece, and energy, protein, fat, fibre, net carbohydrate and
 * sodium of a piece with weight 1) and of the lines that move. The weights are our own: common
 * practice, no source.
 *
 * <p>Unknown is not zero: a wish for at least or at most is granted whatever the unknown turns out
 * to be; what can neither be reached nor bounded is refused with the foods named. A line of 0 g
 * does not move, nor does one whose mass is unknown.
 *
 * @param before the worksheet that was asked about
 * @param question what was asked
 * @param answers changes that grant all wishes: one of the division alone, else the single changes
 *     by how little they disturb, then the combined one; empty when there is nothing to change and
 *     when it cannot be done
 * @param granted whether all wishes and limits are kept already
 * @param contradiction why it cannot be done; empty when it can
 * @param remarks what else a person should know
 */
public record Levers(
    Worksheet before,
    Question question,
    List<Answer> answers,
    boolean granted,
    Optional<Contradiction> contradiction,
    List<String> remarks) {
  /** Copies the lists. */
  public Levers {
    answers = List.copyOf(answers);
    remarks = List.copyOf(remarks);
  }

  /**
   * Looks for changes.
   *
   * @param sheet a formula worked out
   * @param question what is asked
   * @param reading what the scale can show in grams, 0 for exact masses
   * @param units how masses stand in sentences
   * @return the answers, or why there are none
   * @throws IllegalArgumentException when it cannot be answered, with a sentence and, after a line
   *     break, a remedy
   */
  public static Levers of(
      Worksheet sheet, Question question, double reading, ShownUnits units) {
    return new Search(sheet, question, reading, units).run();
  }

  /**
   * An answer.
   *
   * @param number its number
   * @return the answer, empty when there is none of that number
   */
  public Optional<Answer> answer(int number) {
    return answers.stream().filter(answer -> answer.number() == number).findFirst();
  }

  /** One question being answered. */
  private static final class Search {
    private final Worksheet sheet;
    private final Question question;
    private final Dough dough;
    private final Optional<Division> division;
    private final List<Condition> conditions;
    private final List<String> remarks;
    private final SingleChanges singles;
    private final Weighing weighing;

    Search(Worksheet sheet, Question question, double reading, ShownUnits units) {
      this.sheet = sheet;
      this.question = question;
      dough = new Dough(sheet);
      division = Division.of(dough, question, units);
      Conditions all = new Conditions(dough, question, division, units);
      remarks = all.check();
      conditions = all.all();
      singles = new SingleChanges(dough, question, division, conditions);
      weighing = new Weighing(dough, singles, conditions, reading);
    }

    Levers run() {
      if (singles.startIsEnough()) {
        Answer answer = answer(Answer.Kind.DIVISION, Optional.empty(), singles.start());
        boolean enough = question.wishes().stream().allMatch(wish -> wish.isMet(sheet));
        List<Answer> answers =
            enough || answer.yield().isEmpty() ? List.of() : List.of(answer);
        return levers(answers, answers.isEmpty(), Optional.empty());
      }
      List<Answer> answers = new ArrayList<>();
      for (int i = 0; i < dough.lines(); i++) {
        Optional<String> line = Optional.of(dough.id(i));
        singles.of(i).ifPresent(
            point -> answers.add(answer(Answer.Kind.SINGLE, line, point)));
      }
      answers.sort(Comparator.comparingDouble(Answer::disturbance));
      Optional<double[]> combined = combined();
      combined
          .map(point -> answer(Answer.Kind.COMBINED, Optional.empty(), point))
          .filter(answer -> answer.lines().size() > 1 || answers.isEmpty())
          .ifPresent(answers::add);
      for (int i = 0; i < answers.size(); i++) {
        answers.set(i, answers.get(i).numbered(i + 1));
      }
      return levers(
          answers, false, answers.isEmpty() ? Optional.of(contradiction()) : Optional.empty());
    }

    private Levers levers(
        List<Answer> answers, boolean granted, Optional<Contradiction> contradiction) {
      return new Levers(sheet, question, answers, granted, contradiction, remarks);
    }

    private Optional<double[]> combined() {
      double[] weights = dough.start();
      Arrays.fill(weights, 1);
      weights[dough.lines()] = 0;
      List<Row> rows =
          conditions.stream().flatMap(condition -> condition.rows().stream()).toList();
      return new Programme(dough.unknowns(), rows).nearest(dough.start(), weights);
    }

    private Answer answer(Answer.Kind kind, Optional<String> line, double[] point) {
      double[] masses = dough.masses(point);
      double[] readable = weighing.of(masses);
      Yield before = sheet.formula().yield();
      Yield yield = division.map(Division::yield).orElse(before);
      Worksheet after = dough.workOut(dough.formula(masses, yield));
      Worksheet weighed = dough.workOut(dough.formula(readable, yield));
      List<LineMove> lines = new ArrayList<>();
      for (int i = 0; i < masses.length; i++) {
        if (masses[i] != dough.grams(i)) {
          lines.add(
              new LineMove(
                  dough.id(i),
                  dough.name(i),
                  sheet.lines().get(i).line().amount(),
                  dough.grams(i),
                  masses[i],
                  Amount.grams(BigDecimal.valueOf(readable[i]))));
        }
      }
      return new Answer(
          1,
          kind,
          line,
          lines,
          Optional.of(yield).filter(next -> !next.equals(before)),
          after,
          weighed,
          FigureMove.between(sheet, after),
          Disturbance.of(sheet, after, question.wishes(), lines));
    }

    private Contradiction contradiction() {
      Contradictions all = new Contradictions(dough, conditions);
      List<Condition> because = all.because();
      List<Contradiction.Nearest> nearest = new ArrayList<>();
      for (Wish wish : question.wishes()) {
        boolean pinned = division.flatMap(Division::wish).filter(wish::equals).isPresent();
        if (!pinned) {
          nearest.add(all.nearest(wish, own(wish)));
        }
      }
      return new Contradiction(because.stream().map(Condition::words).toList(), nearest);
    }

    /** The wishes' conditions stand in their order, those of the division left out. */
    private Optional<Condition> own(Wish wish) {
      List<Condition> conditionsOfWishes =
          conditions.stream().filter(each -> each.kind() == Condition.Kind.WISH).toList();
      List<Wish> wishes =
          question.wishes().stream()
              .filter(each -> division.flatMap(Division::wish).filter(each::equals).isEmpty())
              .toList();
      return Optional.of(conditionsOfWishes.get(wishes.indexOf(wish)));
    }
  }
}
