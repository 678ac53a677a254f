package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveFoodTest {
  private static final String LUPIN = "lupin-flour";

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

  private String seen() {
    return kitchen.desk().notebook().latest().commit().hex();
  }

  private static FoodForm form(String seen, Map<String, String> facts) {
    return new FoodForm(LUPIN, null, seen, facts, null, null, true, null, null);
  }

  private static FoodForm label(String food, Map<String, String> facts, FoodForm.Label label) {
    return new FoodForm(food, null, null, facts, null, label, true, null, null);
  }

  private KitchenWork.Saved save(FoodForm form) {
    return new SaveFood(kitchen.desk()).call(form, kitchen.by());
  }

  private Food lupin() {
    return kitchen.desk().notebook().latest().food(LUPIN).orElseThrow();
  }

  private Food lupin(Address line) {
    return kitchen.desk().notebook().latest(line).food(LUPIN).orElseThrow();
  }

  /** 120 g of the flour in 6 pieces: one gram more in 100 g is 0.2 g more a piece. */
  @Test
  void tryingSaysWhichFiguresWouldMoveAndWritesNothing() {
    double before =
        kitchen
            .desk()
            .tried(Address.parse(Kitchen.BUN), Kitchen.bun(188), Trial.NOTHING)
            .worksheet()
            .figure(Figure.PROTEIN, Basis.PIECE)
            .low();
    double protein = lupin().per100g().get(Nutrient.PROTEIN).low();
    String seen = seen();

    KitchenWork.FoodTried tried =
        new SaveFood(kitchen.desk())
            .look(form(seen, Map.of("protein_g", "" + (protein - 5))));

    assertThat(tried.problems()).isEmpty();
    assertThat(tried.changed()).containsExactly("protein, g");
    KitchenWork.LineMoves bun = tried.moves().formulas().get(0);
    assertThat(bun.line()).isEqualTo(Kitchen.BUN);
    assertThat(bun.figures()).extracting(KitchenWork.FigureMove::figure).contains("protein_g");
    KitchenWork.FigureMove moved = bun.figures().get(0);
    assertThat(moved.figure()).isEqualTo("protein_g");
    assertThat(moved.from()).isCloseTo(before, within(1e-9));
    assertThat(moved.to()).isCloseTo(before - 1, within(1e-9));
    assertThat(moved.deltaText()).isEqualTo("−1");
    assertThat(seen()).isEqualTo(seen);
  }

  @Test
  void onlyThoseWhoUseTheFoodAreWorkedOut() {
    KitchenWork.FoodTried tried =
        new SaveFood(kitchen.desk())
            .look(
                new FoodForm(
                    "salt", null, seen(), Map.of("sodium_mg", "30000"), null, null, true, null,
                    null));

    assertThat(tried.moves().formulas()).isEmpty();
    assertThat(tried.moves().same()).isEmpty();
  }

  /** 2 large eggs in 6 pieces give 2.09 g protein a piece; see GoalsTest. The flour gives more. */
  @Test
  void aGoalThatWouldBeMissedOrCouldNotBeKnownIsNamed() {
    new SaveGoal(kitchen.desk())
        .call(
            new SaveGoal.Request(
                "protein", "Protein", Optional.empty(), List.of("protein_g >= 3 per piece"),
                List.of(), List.of(), Optional.empty()),
            false,
            kitchen.by());
    Address line = Address.parse(Kitchen.BUN);
    kitchen.revise(line, Kitchen.bun(188).withGoal(Optional.of("protein")), "Goal");

    assertThat(goalWith("protein_g", "").change()).isEqualTo("no longer known");
    KitchenWork.GoalMove missed = goalWith("protein_g", "0");
    assertThat(missed.from()).isTrue();
    assertThat(missed.to()).isFalse();
    assertThat(missed.change()).isEqualTo("newly missed");
    assertThat(missed.rules().get(0).valueText()).isEqualTo("2.09 g");
    assertThat(goalWith("fat_g", "0").change()).isEqualTo("same");
  }

  private KitchenWork.GoalMove goalWith(String fact, String text) {
    return new SaveFood(kitchen.desk())
        .look(form(seen(), Map.of(fact, text)))
        .moves()
        .formulas()
        .get(0)
        .goal();
  }

  @Test
  void allergensThatWouldComeInAreNamed() {
    KitchenWork.FoodTried tried =
        new SaveFood(kitchen.desk()).look(form(seen(), Map.of("allergens", "lupin, soybeans")));

    KitchenWork.LineMoves bun = tried.moves().formulas().get(0);
    assertThat(bun.allergensGained()).containsExactly("soybeans");
    assertThat(bun.figures()).isEmpty();
    tried = new SaveFood(kitchen.desk()).look(form(seen(), Map.of("allergens", "")));
    assertThat(tried.moves().formulas().get(0).nowUnknownIn()).hasSize(1);
    assertThat(tried.cautions()).anyMatch(words -> words.contains("allergens are unknown"));
  }

  @Test
  void faultyFieldsAreToldAndTheOthersAreTried() {
    FoodForm form = form(seen(), Map.of("protein_g", "12 kcal", "fat_g", "8", "price", "cheap"));

    KitchenWork.FoodTried tried = new SaveFood(kitchen.desk()).look(form);
    KitchenWork.Saved saved = save(form);

    assertThat(tried.problems())
        .extracting(KitchenWork.FieldProblem::field)
        .containsExactlyInAnyOrder("protein_g", "price");
    assertThat(tried.changed()).containsExactly("fat, g");
    assertThat(saved.outcome()).isEqualTo("invalid");
    assertThat(saved.problems()).hasSize(2);
    assertThat(lupin().price()).isEmpty();
  }

  @Test
  void aPartThatIsMoreThanItsWholeIsToldWhereItWasTyped() {
    Map<String, String> facts =
        Map.of(
            "fat_g", "9", "saturated_fat_g", "7", "trans_fat_g", "3",
            "sugars_g", "2", "added_sugars_g", "4", "vitamin_d_ug", "1 mcg");

    KitchenWork.FoodTried tried = new SaveFood(kitchen.desk()).look(form(seen(), facts));

    assertThat(tried.problems())
        .extracting(KitchenWork.FieldProblem::field)
        .containsExactly("trans_fat_g", "added_sugars_g");
    assertThat(tried.problems().get(0).message())
        .isEqualTo(
            "100 g hold 9 g fat, so 3 g trans fat beside 7 g saturated fat cannot be.");
    assertThat(save(form(seen(), facts)).outcome()).isEqualTo("invalid");
  }

  @Test
  void figuresThatALabelNeedsAreKept() {
    Map<String, String> facts =
        Map.of(
            "fat_g", "9", "saturated_fat_g", "7", "trans_fat_g", "2",
            "sugars_g", "2", "added_sugars_g", "0", "vitamin_d_ug", "80 IU");

    assertThat(save(form(seen(), facts)).problems()).isEmpty();
    assertThat(lupin().per100g().get(Nutrient.TRANS_FAT)).isEqualTo(Quantity.known(2));
    assertThat(lupin().per100g().get(Nutrient.ADDED_SUGARS)).isEqualTo(Quantity.ZERO);
    assertThat(lupin().per100g().get(Nutrient.VITAMIN_D)).isEqualTo(Quantity.known(2));
  }

  @Test
  void aBoundOnALabelIsNoFigure() {
    KitchenWork.FoodTried tried =
        new SaveFood(kitchen.desk()).look(form(seen(), Map.of("sugars_g", "<0,5")));

    assertThat(tried.problems().get(0).message()).contains("bound on sugars");
  }

  @Test
  void twoWhoChangeDifferentFactsBothKeepTheirs() {
    String seen = seen();

    assertThat(save(form(seen, Map.of("protein_g", "35"))).outcome()).isEqualTo("saved");
    KitchenWork.Saved second =
        save(form(seen, Map.of("price", "6 EUR for 1000 g on 2026-10-03", "fat_g", "9")));

    assertThat(second.outcome()).isEqualTo("saved");
    assertThat(second.taken()).contains("protein, g");
    assertThat(lupin().per100g().get(Nutrient.PROTEIN).low()).isEqualTo(35);
    assertThat(lupin().per100g().get(Nutrient.FAT).low()).isEqualTo(9);
    assertThat(lupin().price().orElseThrow().date()).hasToString("Optional[2026-10-03]");
    kitchen.assertSound();
  }

  @Test
  void twoWhoChangeTheSameFactAreShownBothSides() {
    String seen = seen();
    String was = lupin().name();
    save(form(seen, Map.of("name", "Lupin of the mill")));

    FoodForm mine = form(seen, Map.of("name", "Lupin of the bench", "density", "0.5"));
    KitchenWork.Saved refused = save(mine);

    assertThat(refused.outcome()).isEqualTo("conflict");
    assertThat(refused.clashes())
        .containsExactly(
            new KitchenWork.Clash(
                "name", "name", was, "Lupin of the bench", "Lupin of the mill"));
    assertThat(lupin().name()).isEqualTo("Lupin of the mill");
    assertThat(lupin().densityGramsPerMillilitre()).isEmpty();

    KitchenWork.Saved chosen = save(picked(mine, Map.of("name", "mine"), refused.answered()));

    assertThat(chosen.outcome()).isEqualTo("saved");
    assertThat(lupin().name()).isEqualTo("Lupin of the bench");
    assertThat(lupin().densityGramsPerMillilitre()).hasValue(0.5);
    kitchen.assertSound();
  }

  @Test
  void aChoiceDoesNotAnswerWhatWasNotShown() {
    String seen = seen();
    save(form(seen, Map.of("name", "Second")));
    FoodForm mine = form(seen, Map.of("name", "Mine"));
    KitchenWork.Saved refused = save(mine);
    save(form(refused.answered(), Map.of("name", "Third")));

    KitchenWork.Saved again = save(picked(mine, Map.of("name", "mine"), refused.answered()));

    assertThat(again.outcome()).isEqualTo("conflict");
    assertThat(again.clashes().get(0).theirs()).isEqualTo("Third");
    assertThat(lupin().name()).isEqualTo("Third");
  }

  private static FoodForm picked(FoodForm form, Map<String, String> picks, String answered) {
    return new FoodForm(
        form.food(), form.line(), form.seen(), form.facts(), form.weights(), form.label(),
        form.variants(), picks, answered);
  }

  @Test
  void variantsWithTheSameCopyFollowAndOthersStay() {
    Address same = kitchen.variant("egg-free");
    Address other = kitchen.variant("dairy-free");
    new ChangeFood(kitchen.desk())
        .call(other, LUPIN, List.of("density=0.4"), kitchen.by());
    Food kept = lupin(other);
    FoodForm form = form(seen(), Map.of("density", "0.6"));

    KitchenWork.FoodTried tried = new SaveFood(kitchen.desk()).look(form);
    KitchenWork.Saved saved = save(form);

    assertThat(tried.moves().apart()).containsExactly("seeded-lupin-bun/dairy-free");
    assertThat(saved.alsoIn()).containsExactly("seeded-lupin-bun/egg-free");
    assertThat(lupin(same)).isEqualTo(lupin());
    assertThat(lupin(other)).isEqualTo(kept);
    kitchen.assertSound();
  }

  @Test
  void variantsStayWhereNobodyAsksForThem() {
    Address variant = kitchen.variant("egg-free");
    Food before = lupin(variant);

    KitchenWork.Saved saved =
        save(
            new FoodForm(
                LUPIN, null, seen(), Map.of("density", "0.6"), null, null, false, null, null));

    assertThat(saved.alsoIn()).isEmpty();
    assertThat(lupin(variant)).isEqualTo(before);
  }

  @Test
  void aVariantsOwnCopyIsChangedThereAlone() {
    Address variant = kitchen.variant("egg-free");
    Food main = lupin();
    String seen = kitchen.desk().notebook().latest(variant).commit().hex();

    KitchenWork.Saved saved =
        save(
            new FoodForm(
                LUPIN, "seeded-lupin-bun/egg-free", seen, Map.of("density", "0.6"), null, null,
                true, null, null));

    assertThat(saved.outcome()).isEqualTo("saved");
    assertThat(lupin()).isEqualTo(main);
    assertThat(lupin(variant).densityGramsPerMillilitre()).hasValue(0.6);
  }

  @Test
  void aNewFoodComesFromItsLabelPerServing() {
    FoodForm form =
        label(
            "",
            Map.of("name", "Lupin flour of the bench", "kind", "dry", "allergens", "lupin"),
            new FoodForm.Label(
                "US", "30", Map.of("protein_g", "12", "fat_g", "3", "sodium_mg", ""), false));

    KitchenWork.Saved saved = save(form);

    assertThat(saved.name()).isEqualTo("lupin-flour-of-the-bench");
    KitchenViews.FoodView food = new ShowFood(kitchen.desk()).call(saved.name());
    assertThat(food.per100G().get("protein_g")).isCloseTo(40, within(1e-9));
    assertThat(food.per100G().get("sodium_mg")).isNull();
    assertThat(food.household()).containsExactly(new KitchenViews.HouseholdView("serving", 30));
    assertThat(save(form).problems().get(0).field()).isEqualTo("food");
  }

  @Test
  void aNewLabelTakesThePlaceOfTheFiguresOrKeepsWhatItDoesNotState() {
    Food before = lupin();
    Map<String, String> figures = Map.of("protein_g", "30", "fat_g", "8");

    FoodForm.Label alone = new FoodForm.Label("EU", "", figures, false);
    FoodForm.Label kept = new FoodForm.Label("EU", "", figures, true);
    KitchenWork.FoodTried without =
        new SaveFood(kitchen.desk())
            .look(new FoodForm(LUPIN, null, seen(), null, null, alone, true, null, null));
    KitchenWork.FoodTried with =
        new SaveFood(kitchen.desk())
            .look(new FoodForm(LUPIN, null, seen(), null, null, kept, true, null, null));

    assertThat(without.food().per100G().get("water_g")).isNull();
    assertThat(with.food().per100G().get("water_g"))
        .isEqualTo(FigureSet.number(before.per100g().get(Nutrient.WATER)));
    assertThat(with.food().per100G().get("protein_g")).isEqualTo(30);
    assertThat(with.food().source()).isEqualTo("label");
    assertThat(with.food().sourceNote()).contains("kept as it was");
  }

  @Test
  void householdWeightsAreReadRowByRow() {
    FoodForm form =
        new FoodForm(
            LUPIN, null, seen(), null,
            List.of(
                new FoodForm.Weight("tbsp", "9"),
                new FoodForm.Weight("", ""),
                new FoodForm.Weight("cup", "much"),
                new FoodForm.Weight("tbsp", "8 g"),
                new FoodForm.Weight("", "3 g")),
            null, true, null, null);

    KitchenWork.FoodTried tried = new SaveFood(kitchen.desk()).look(form);

    assertThat(tried.food().household()).contains(new KitchenViews.HouseholdView("tbsp", 9));
    assertThat(tried.problems())
        .extracting(KitchenWork.FieldProblem::field)
        .containsExactly("weights.2", "weights.3", "weights.4");
  }

  @Test
  void aFoodOfTheBuiltInTableIsTakenIntoThePantry() {
    KitchenWork.FoodPage page = new ShowFood(kitchen.desk()).page("salt", null);

    KitchenWork.Saved saved =
        save(
            new FoodForm(
                "salt", null, page.seen(), page.facts(), null, null, true, null, null));

    assertThat(page.food().inPantry()).isFalse();
    assertThat(saved.outcome()).isEqualTo("saved");
    assertThat(kitchen.desk().notebook().latest().food("salt")).isPresent();
  }

  @Test
  void whatSaysTheSameIsNotCommitted() {
    KitchenWork.FoodPage page = new ShowFood(kitchen.desk()).page(LUPIN, null);
    String seen = seen();

    assertThat(save(form(seen, page.facts())).outcome()).isEqualTo("unchanged");
    assertThat(seen()).isEqualTo(seen);
  }

  @Test
  void aFormThatRestsOnNothingKnownIsRefused() {
    FoodForm form = form("not a commit", Map.of());

    assertThatThrownBy(() -> save(form))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("not known");
  }

  @Test
  void thePageOfAFoodNamesItsUsersLineByLine() {
    kitchen.variant("egg-free");

    KitchenWork.FoodPage page = new ShowFood(kitchen.desk()).page("egg-whole", null);

    assertThat(page.uses())
        .extracting(KitchenWork.FoodUse::line)
        .containsExactly("seeded-lupin-bun", "seeded-lupin-bun/egg-free");
    KitchenWork.UsedLine line = page.uses().get(0).lines().get(0);
    assertThat(line.entered()).isEqualTo("2 large");
    assertThat(line.grams()).isCloseTo(100, within(1e-9));
    assertThat(line.approximate()).isTrue();
    assertThat(page.copies())
        .containsExactly(new KitchenWork.FoodCopy("seeded-lupin-bun/egg-free", true));
    assertThat(page.cautions()).anyMatch(words -> words.contains("71 °C"));
  }
}
