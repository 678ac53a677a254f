package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoalsTest {
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

  private static SaveGoal.Request request(String slug, String... limits) {
    return new SaveGoal.Request(
        slug, "Few carbohydrates", Optional.empty(), List.of(limits), List.of(), List.of(),
        Optional.empty());
  }

  private static SaveGoal.Request without(List<String> allergens, List<String> foods) {
    return new SaveGoal.Request(
        "free", "Free of things", Optional.empty(), List.of(), allergens, foods, Optional.empty());
  }

  private KitchenViews.GoalSheet save(SaveGoal.Request request) {
    return new SaveGoal(kitchen.desk()).call(request, false, kitchen.by());
  }

  @Test
  void aGoalIsKeptInWordsThatProgramsAndPeopleRead() {
    KitchenViews.GoalSheet goal =
        save(
            new SaveGoal.Request(
                "low-carb",
                " Few carbohydrates ",
                Optional.of("For the guests"),
                List.of("net_carbohydrate_g <= 4 per piece", "protein >= 8"),
                List.of("Egg", "gluten"),
                List.of("water"),
                Optional.of(new NetCarbohydrate(1, 0, 1))));

    assertThat(goal.name()).isEqualTo("Few carbohydrates");
    assertThat(goal.rules())
        .containsExactly(
            "at most 4 g net carbohydrate a piece", "at least 8 g protein a piece", "no eggs",
            "no gluten", "no water");
    assertThat(goal.limits().get(0))
        .isEqualTo(
            new KitchenViews.GoalLimit(
                "net_carbohydrate_g", "per_piece", new Views.LimitView(null, 4.0)));
    assertThat(goal.netCarbohydrateRule()).isEqualTo("carbohydrate − fibre − allulose");
    assertThat(kitchen.read("goals/low-carb.json")).contains("\"at_most\": 4");
    kitchen.assertSound();
  }

  /** 2 large eggs in 6 pieces, 12.56 g protein in 100 g (SR28, NDB No. 01123), 50 g an egg. */
  @Test
  void theFormulasThatStateAGoalAreHeldAgainstIt() {
    save(request("low-carb", "protein >= 2.09 per piece", "batch_g <= 500"));
    Address line = Address.latest(Kitchen.BUN, Optional.empty());
    kitchen.revise(line, Kitchen.bun(188).withGoal(Optional.of("low-carb")), "Aim at few carbohydrates");
    Address variant = kitchen.variant("wet");
    kitchen.revise(variant, Kitchen.bun(400).withGoal(Optional.of("low-carb")), "Far too wet");

    KitchenViews.GoalSheet goal = new ShowGoal(kitchen.desk()).call("low-carb");

    assertThat(goal.formulas())
        .extracting(KitchenViews.GoalStanding::address)
        .containsExactly("seeded-lupin-bun@3", "seeded-lupin-bun/wet@4");
    assertThat(goal.formulas().get(0).standing().met()).isTrue();
    assertThat(goal.formulas().get(1).standing().met()).isFalse();
    assertThat(goal.formulas().get(1).standing().checks())
        .extracting(Views.GoalRule::met)
        .containsExactly(true, false);
    assertThat(new ListGoals(kitchen.desk()).call().goals())
        .singleElement()
        .satisfies(
            entry ->
                assertThat(entry.usedBy())
                    .containsExactly("seeded-lupin-bun", "seeded-lupin-bun/wet"));
  }

  @Test
  void aGoalThatWasChangedIsWhatFormulasAreHeldAgainst() {
    save(request("low-carb", "batch_g <= 500"));
    Address line = Address.latest(Kitchen.BUN, Optional.empty());
    kitchen.revise(line, Kitchen.bun(188).withGoal(Optional.of("low-carb")), "Aim at few carbohydrates");
    kitchen.variant("egg-free");

    KitchenViews.GoalSheet goal =
        new SaveGoal(kitchen.desk())
            .call(request("low-carb", "batch_g <= 300"), true, kitchen.by());

    assertThat(goal.formulas())
        .extracting(standing -> standing.standing().met())
        .containsExactly(false, false);
    kitchen.assertSound();
  }

  @Test
  void unknownFieldsOfAGoalSurviveItsReplacement() {
    save(request("low-carb", "batch_g <= 500"));
    String json = kitchen.read("goals/low-carb.json").replaceFirst("\\{", "{\n  \"for\": \"Ida\",");
    kitchen.write("goals/low-carb.json", json);
    kitchen.commitByHand("For Ida");

    new SaveGoal(kitchen.open()).call(request("low-carb", "batch_g <= 300"), true, kitchen.by());

    assertThat(kitchen.read("goals/low-carb.json")).contains("\"for\": \"Ida\"", "300");
  }

  @Test
  void aGoalThatIsThereIsNotOverwrittenUnasked() {
    save(request("low-carb", "batch_g <= 500"));

    Refusal refusal =
        catchThrowableOfType(
            Refusal.class, () -> save(request("low-carb", "batch_g <= 300")));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.EXISTS);
    assertThat(refusal.hint()).contains("--replace");
    assertThat(kitchen.read("goals/low-carb.json")).contains("500");
  }

  @Test
  void theSameGoalAgainMakesNoCommit() {
    save(request("low-carb", "batch_g <= 500"));
    String head = kitchen.repository().git("rev-parse", "main");

    new SaveGoal(kitchen.desk()).call(request("low-carb", "batch_g <= 500"), true, kitchen.by());

    assertThat(kitchen.repository().git("rev-parse", "main")).isEqualTo(head);
  }

  @ParameterizedTest
  @CsvSource({"dust, , not an allergen", ", lupinflour, Neither the pantry", ", Lupin Flour, short"})
  void aRuleThatCouldNeverBreakIsASlip(String allergen, String food, String says) {
    List<String> allergens = allergen == null ? List.of() : List.of(allergen);
    List<String> foods = food == null ? List.of() : List.of(food);

    assertThatThrownBy(() -> save(without(allergens, foods)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(says);
  }

  @Test
  void aGoalWithoutRuleOrNameIsRefused() {
    assertThatThrownBy(() -> save(request("low-carb")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("has no rule");
    assertThatThrownBy(
            () ->
                save(
                    new SaveGoal.Request(
                        "x", " ", Optional.empty(), List.of("protein >= 8"), List.of(), List.of(),
                        Optional.empty())))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("has no name");
  }

  @Test
  void aGoalThatIsNotThereIsRefusedWithThoseThatAre() {
    save(request("low-carb", "batch_g <= 500"));

    Refusal refusal =
        catchThrowableOfType(Refusal.class, () -> new ShowGoal(kitchen.desk()).call("low-fat"));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.NOT_FOUND);
    assertThat(refusal.hint()).contains("low-carb");
  }

  @Test
  void aDamagedGoalIsListedWithWhatIsWrong() {
    save(request("low-carb", "batch_g <= 500"));
    kitchen.write("goals/broken.json", "{\"name\": 3}");
    kitchen.commitByHand("A slip");

    List<KitchenViews.GoalEntry> goals = new ListGoals(kitchen.open()).call().goals();

    assertThat(goals).extracting(KitchenViews.GoalEntry::goal).containsExactly("broken", "low-carb");
    assertThat(goals.get(0).problems().get(0).where()).startsWith("goals/broken.json:1:");
    assertThat(goals.get(1).problems()).isEmpty();
  }
}
