package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.Address;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepGoalTest {
  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private static GoalForm.Limit limit(String figure, String least, String most) {
    return new GoalForm.Limit(figure, "per_piece", least, most);
  }

  private static GoalForm form(String seen, String name, GoalForm.Limit... limits) {
    return new GoalForm(
        "protein", seen, name, "", List.of(limits), List.of(), List.of(), null, true, null, null);
  }

  private KitchenWork.Saved save(GoalForm form) {
    return new KeepGoal(kitchen.desk()).call(form, kitchen.by());
  }

  /** The goal as it is, stated by the bun: at least 3 g protein a piece. */
  private String stated() {
    save(form(null, "Protein", limit("protein_g", "3", "")));
    Address line = Address.parse(Kitchen.BUN);
    kitchen.revise(line, Kitchen.bun(188).withGoal(Optional.of("protein")), "Goal");
    return new ShowGoal(kitchen.desk()).page("protein").seen();
  }

  @Test
  void aNewGoalIsTriedOnEveryFormula() {
    kitchen.variant("egg-free");

    KitchenWork.GoalTried tried =
        new KeepGoal(kitchen.desk()).look(form(null, "Protein", limit("protein_g", "3", "90")));

    assertThat(tried.rules()).containsExactly("at least 3 g and at most 90 g protein a piece");
    assertThat(tried.moves().formulas())
        .extracting(KitchenWork.LineMoves::line)
        .containsExactly("seeded-lupin-bun", "seeded-lupin-bun/egg-free");
    assertThat(tried.moves().formulas().get(0).goal().change()).isEqualTo("met");
    assertThat(kitchen.desk().notebook().latest().goals()).isEmpty();
  }

  @Test
  void aChangedGoalSaysWhoWouldNewlyMissIt() {
    String seen = stated();

    KitchenWork.GoalTried tried =
        new KeepGoal(kitchen.desk()).look(form(seen, "Protein", limit("protein_g", "50", "")));

    assertThat(tried.changed()).containsExactly("limit on protein per piece");
    KitchenWork.GoalMove goal = tried.moves().formulas().get(0).goal();
    assertThat(goal.change()).isEqualTo("newly missed");
    assertThat(goal.rules())
        .extracting(KitchenWork.RuleMove::rule)
        .containsExactly("at least 50 g protein a piece", "at least 3 g protein a piece");
    assertThat(goal.rules().get(0).isNew()).isTrue();
    assertThat(goal.rules().get(1).gone()).isTrue();
  }

  @Test
  void itsOwnRuleForNetCarbohydrateMovesTheFigureOfItsFormulas() {
    String seen = stated();
    GoalForm form =
        new GoalForm(
            "protein", seen, "Protein", "", List.of(limit("protein_g", "3", "")), List.of(),
            List.of(), Map.of("fibre", "0", "polyols", "0", "allulose", "0"), true, null, null);

    KitchenWork.GoalTried tried = new KeepGoal(kitchen.desk()).look(form);

    assertThat(tried.netCarbohydrateRule()).isEqualTo("carbohydrate");
    assertThat(tried.moves().formulas().get(0).figures())
        .extracting(KitchenWork.FigureMove::figure)
        .containsExactly("net_carbohydrate_g");
    assertThat(tried.cautions()).anyMatch(words -> words.contains("no legal definition"));
  }

  @Test
  void faultyFieldsAreToldOneByOne() {
    GoalForm form =
        new GoalForm(
            "", null, " ", "",
            List.of(
                limit("protein_g", "some", ""),
                limit("fat_g", "", ""),
                limit("fibre_g", "9", "4"),
                limit("flavour", "1", "")),
            List.of(), List.of("moonshine"), Map.of("fibre", "2"), true, null, null);

    KitchenWork.Saved saved = save(form);

    assertThat(saved.outcome()).isEqualTo("invalid");
    assertThat(saved.problems())
        .extracting(KitchenWork.FieldProblem::field)
        .containsExactly(
            "name", "limits.0.at_least", "limits.1", "limits.2", "limits.3.figure",
            "without_foods", "subtract.fibre");
  }

  @Test
  void aGoalWithoutRuleIsNotSaved() {
    assertThat(save(form(null, "Nothing")).problems().get(0).field()).isEqualTo("limits");
  }

  @Test
  void aCommaIsADecimalSignToo() {
    save(form(null, "Protein", limit("protein_g", "2,5", "")));

    assertThat(new ShowGoal(kitchen.desk()).call("protein").rules())
        .containsExactly("at least 2.5 g protein a piece");
  }

  @Test
  void twoWhoChangeDifferentRulesBothKeepTheirs() {
    String seen = stated();
    save(form(seen, "Protein", limit("protein_g", "3", ""), limit("fat_g", "", "20")));

    KitchenWork.Saved second =
        save(form(seen, "Protein for breakfast", limit("protein_g", "4", "")));

    assertThat(second.outcome()).isEqualTo("saved");
    assertThat(second.taken()).containsExactly("limit on fat per piece");
    KitchenViews.GoalSheet goal = new ShowGoal(kitchen.desk()).call("protein");
    assertThat(goal.name()).isEqualTo("Protein for breakfast");
    assertThat(goal.rules())
        .containsExactly("at least 4 g protein a piece", "at most 20 g fat a piece");
    kitchen.assertSound();
  }

  @Test
  void twoWhoChangeTheSameRuleAreShownBothSides() {
    String seen = stated();
    save(form(seen, "Protein", limit("protein_g", "5", "")));
    GoalForm mine = form(seen, "Protein", limit("protein_g", "4", ""));

    KitchenWork.Saved refused = save(mine);

    assertThat(refused.outcome()).isEqualTo("conflict");
    assertThat(refused.clashes().get(0).base()).isEqualTo("at least 3 g protein a piece");
    assertThat(refused.clashes().get(0).mine()).isEqualTo("at least 4 g protein a piece");
    assertThat(refused.clashes().get(0).theirs()).isEqualTo("at least 5 g protein a piece");

    KitchenWork.Saved chosen =
        save(
            new GoalForm(
                mine.goal(), mine.seen(), mine.name(), mine.note(), mine.limits(), List.of(),
                List.of(), null, true,
                Map.of("limit on protein per piece", "theirs"), refused.answered()));

    assertThat(chosen.outcome()).isEqualTo("unchanged");
    assertThat(new ShowGoal(kitchen.desk()).call("protein").rules())
        .containsExactly("at least 5 g protein a piece");
  }

  @Test
  void variantsWithTheSameGoalFollow() {
    stated();
    Address variant = kitchen.variant("egg-free");
    String seen = new ShowGoal(kitchen.desk()).page("protein").seen();

    KitchenWork.Saved saved = save(form(seen, "Protein", limit("protein_g", "4", "")));

    assertThat(saved.alsoIn()).containsExactly("seeded-lupin-bun/egg-free");
    assertThat(kitchen.desk().notebook().latest(variant).goal("protein"))
        .isEqualTo(kitchen.desk().notebook().latest().goal("protein"));
    kitchen.assertSound();
  }

  @Test
  void othersAreThoseThatDoNotStateIt() {
    stated();
    kitchen.variant("egg-free");
    save(
        new GoalForm(
            "free", null, "Free", "", List.of(), List.of("eggs", "gluten"), List.of(), null, true,
            null, null));

    assertThat(new ShowGoal(kitchen.desk()).others("protein").formulas()).isEmpty();
    assertThat(new ShowGoal(kitchen.desk()).others("free").formulas())
        .extracting(each -> each.standing().met())
        .containsExactly(false, false);
    assertThat(new ListGoals(kitchen.desk()).standing().get("free").formulas()).isEmpty();
    assertThat(new ShowGoal(kitchen.desk()).page("free").cautions())
        .anyMatch(words -> words.contains("20 mg"));
  }
}
