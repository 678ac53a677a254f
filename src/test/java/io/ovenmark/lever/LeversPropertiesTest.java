package io.ovenmark.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.goal.Limit;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Bench;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Policy;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for every question, tried on seeded random ones. */
class LeversPropertiesTest {
  private static final int TRIALS = 300;

  private final Random random = new Random(20261104);
  private final Bench bench = new Bench();
  private int trial;

  @Test
  void everyAnswerWorkedOutAnewKeepsAllThatWasAsked() {
    int answered = 0;
    int refused = 0;
    for (trial = 0; trial < TRIALS; trial++) {
      Worksheet sheet = randomSheet();
      Question question = randomQuestion(sheet);
      Levers levers = Levers.of(sheet, question, Readings.FINE, ShownUnits.AS_WRITTEN);
      answered += levers.answers().isEmpty() ? 0 : 1;
      refused += levers.contradiction().isPresent() ? 1 : 0;
      for (Answer answer : levers.answers()) {
        keeps(sheet, question, answer);
      }
      assertThat(levers.granted() || !levers.answers().isEmpty())
          .as("trial " + trial)
          .isEqualTo(levers.contradiction().isEmpty());
    }
    assertThat(answered).isGreaterThan(100);
    assertThat(refused).isGreaterThan(20);
  }

  private void keeps(Worksheet before, Question question, Answer answer) {
    String what = "trial " + trial + ", answer " + answer.number() + " of " + question;
    Worksheet after =
        bench.sheet(answer.after().formula(), before.policy(), before.bakedYield());
    for (Wish wish : question.wishes()) {
      assertThat(wish.isMet(after)).as(what + ": " + wish.of(after)).isTrue();
    }
    for (int i = 0; i < before.lines().size(); i++) {
      WorksheetLine was = before.lines().get(i);
      WorksheetLine is = after.lines().get(i);
      double grams = is.grams().low();
      assertThat(grams).as(what).isGreaterThanOrEqualTo(0);
      assertThat(answer.weighed().lines().get(i).grams().low()).isGreaterThanOrEqualTo(0);
      assertThat(is.line().id()).isEqualTo(was.line().id());
      if (question.keep().contains(was.line().id())) {
        assertThat(is.line()).as(what).isEqualTo(was.line());
      }
      for (LineLimit limit : question.limits()) {
        if (limit.line().equals(was.line().id())) {
          assertThat(grams)
              .as(what)
              .isBetween(limit.atLeastGrams() - 1e-6, limit.atMostGrams() + 1e-6);
        }
      }
    }
    if (question.batchFixed()) {
      assertThat(after.batchGrams().low())
          .as(what)
          .isCloseTo(before.batchGrams().low(), within(1e-5));
    }
  }

  @Test
  void noSingleChangeIsNearerThanTheCombinedOne() {
    int compared = 0;
    for (trial = 0; trial < TRIALS; trial++) {
      Worksheet sheet = randomSheet();
      Levers levers =
          Levers.of(sheet, randomQuestion(sheet), Readings.FINE, ShownUnits.AS_WRITTEN);
      Optional<Answer> combined =
          levers.answers().stream()
              .filter(answer -> answer.kind() == Answer.Kind.COMBINED)
              .findFirst();
      for (Answer answer : levers.answers()) {
        if (combined.isPresent() && answer.kind() == Answer.Kind.SINGLE) {
          compared++;
          assertThat(squares(combined.get()))
              .as("trial " + trial)
              .isLessThanOrEqualTo(squares(answer) + 1e-7);
        }
      }
    }
    assertThat(compared).isGreaterThan(200);
  }

  private static double squares(Answer answer) {
    return answer.lines().stream()
        .mapToDouble(move -> Math.pow(move.percent().orElse(0) / 100, 2))
        .sum();
  }

  @Test
  void whatContradictsIsImpossibleTogetherAndPossibleWithoutAnyOne() {
    int checked = 0;
    for (trial = 0; checked < 40; trial++) {
      Worksheet sheet = randomSheet();
      Question question = randomQuestion(sheet);
      Dough dough = new Dough(sheet);
      Optional<Division> division = Division.of(dough, question, ShownUnits.AS_WRITTEN);
      List<Condition> all =
          new Conditions(dough, question, division, ShownUnits.AS_WRITTEN).all();
      Contradictions contradictions = new Contradictions(dough, all);
      if (!contradictions.isPossible(all)) {
        checked++;
        List<Condition> because = contradictions.because();
        assertThat(because).as("trial " + trial).isNotEmpty();
        assertThat(contradictions.isPossible(because)).as("trial " + trial).isFalse();
        for (Condition each : because) {
          List<Condition> fewer = new ArrayList<>(because);
          fewer.remove(each);
          assertThat(contradictions.isPossible(fewer)).as("trial " + trial).isTrue();
        }
      }
    }
  }

  /** Random masses within the limits never come nearer to a wish than what is called nearest. */
  @Test
  void noTriedDoughComesNearerThanTheNearestValue() {
    int checked = 0;
    for (trial = 0; checked < 40; trial++) {
      Worksheet sheet = randomSheet();
      Figure figure =
          List.of(Figure.LIQUID_RATIO, Figure.DOUGH_MOISTURE, Figure.PROTEIN, Figure.FAT)
              .get(random.nextInt(4));
      double now = sheet.figure(figure, Basis.DOUGH_100_G).low();
      Wish wish = wish(figure, Basis.DOUGH_100_G, now * 1.6 + 1, Double.POSITIVE_INFINITY);
      List<LineLimit> limits = new ArrayList<>();
      sheet.lines().forEach(
          line ->
              limits.add(
                  LineLimit.within(line.line().id(), line.grams().low(), 15)));
      Question question =
          Question.of(wish).within(limits.toArray(LineLimit[]::new));
      if (sheet.liquidRatio().isKnown()) {
        Optional<Contradiction> contradiction =
            Levers.of(sheet, question, Readings.FINE, ShownUnits.AS_WRITTEN).contradiction();
        if (contradiction.isPresent()) {
          checked++;
          double nearest = contradiction.get().nearest().get(0).alone().orElseThrow();
          assertThat(nearest).isBetween(now - 1e-9, wish.least());
          for (int i = 0; i < 200; i++) {
            double tried = tried(sheet, limits).figure(figure, Basis.DOUGH_100_G).low();
            assertThat(tried).as("trial " + trial).isLessThanOrEqualTo(nearest + 1e-9);
          }
        }
      }
    }
  }

  /** Each line at one of its limits, or somewhere between. */
  private Worksheet tried(Worksheet sheet, List<LineLimit> limits) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < limits.size(); i++) {
      LineLimit limit = limits.get(i);
      double share = random.nextInt(3) == 0 ? random.nextDouble() : random.nextInt(2);
      double grams = limit.atLeastGrams() + share * (limit.atMostGrams() - limit.atLeastGrams());
      lines.add(
          sheet.lines().get(i).line().withAmount(Amount.grams(BigDecimal.valueOf(grams))));
    }
    return bench.sheet(sheet.formula().withLines(lines), sheet.policy(), sheet.bakedYield());
  }

  private static Wish wish(Figure figure, Basis basis, double least, double most) {
    return new Wish(
        new Limit(
            figure,
            basis,
            Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty(),
            Double.isFinite(most) ? OptionalDouble.of(most) : OptionalDouble.empty(),
            Extras.NONE));
  }

  private Question randomQuestion(Worksheet sheet) {
    List<Wish> wishes = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      Figure figure = Figure.values()[random.nextInt(Figure.values().length)];
      Basis basis = Basis.values()[random.nextInt(Basis.values().length)];
      Quantity now = sheet.figure(figure, basis);
      boolean once =
          wishes.stream().noneMatch(wish -> wish.figure() == figure);
      if (once && now.isKnown() && now.low() > 0.01) {
        double wanted = now.low() * (0.6 + random.nextDouble() * 0.8);
        if (figure == Figure.PIECES) {
          wanted = Math.max(1, Math.round(wanted));
        }
        wishes.add(
            switch (random.nextInt(4)) {
              case 0 -> wish(figure, basis, wanted, Double.POSITIVE_INFINITY);
              case 1 -> wish(figure, basis, Double.NEGATIVE_INFINITY, wanted);
              case 2 -> wish(figure, basis, wanted, Math.ceil(wanted * 1.05));
              default -> wish(figure, basis, wanted, wanted);
            });
      }
    }
    if (wishes.isEmpty()) {
      wishes.add(
          wish(Figure.BATCH_MASS, Basis.PIECE, sheet.batchGrams().low() * 1.1, 1e6));
    }
    List<String> keep = new ArrayList<>();
    List<LineLimit> limits = new ArrayList<>();
    for (WorksheetLine line : sheet.lines()) {
      switch (random.nextInt(5)) {
        case 0 -> keep.add(line.line().id());
        case 1 ->
            limits.add(
                LineLimit.within(line.line().id(), line.grams().low(), random.nextInt(60)));
        case 2 -> limits.add(LineLimit.atMost(line.line().id(), line.grams().low() * 1.3));
        default -> {}
      }
    }
    return Question.of(wishes.toArray(Wish[]::new))
        .keeping(keep.toArray(String[]::new))
        .within(limits.toArray(LineLimit[]::new))
        .withBatchFixed(random.nextInt(4) == 0)
        .withPiecesFixed(random.nextBoolean());
  }

  private Worksheet randomSheet() {
    List<Line> lines = new ArrayList<>();
    int count = 3 + random.nextInt(7);
    for (int i = 0; i < count; i++) {
      String slug = "food-" + i;
      FoodKind kind = i < 2 ? FoodKind.values()[i] : FoodKind.values()[random.nextInt(5)];
      int protein = random.nextInt(40);
      int fat = random.nextInt(40);
      int carbohydrate = random.nextInt(100 - protein - fat);
      int fibre = random.nextInt(carbohydrate + 1);
      bench.add(
          Bench.with(
              Bench.food(
                  slug, kind, protein, fat, carbohydrate, fibre,
                  100 - protein - fat - carbohydrate, random.nextInt(900)),
              Nutrient.SODIUM,
              Quantity.known(random.nextInt(900))));
      Amount amount = Amount.grams(BigDecimal.valueOf(20 + random.nextInt(3000), 1));
      lines.add(Line.of(slug, slug, amount));
    }
    OptionalDouble loss =
        random.nextBoolean() ? OptionalDouble.of(random.nextInt(10)) : OptionalDouble.empty();
    Yield yield =
        random.nextBoolean()
            ? new Yield(Optional.of(1 + random.nextInt(12)), OptionalDouble.empty(), loss)
            : new Yield(Optional.empty(), OptionalDouble.of(20 + random.nextInt(90)), loss);
    Formula formula = Formula.named("random").withLines(lines).withYield(yield);
    BakedYield baked =
        random.nextBoolean() ? new BakedYield(Quantity.known(0.9), 2) : BakedYield.UNMEASURED;
    return bench.sheet(formula, Policy.USUAL, baked);
  }
}
