package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.pantry.FoodImport;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.LabelFood;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PantryTest {
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

  private static AddFood.Label label(String slug, double serving, String... facts) {
    return new AddFood.Label(
        slug,
        "Lupin flour of the bench",
        FoodKind.DRY,
        serving == 100 ? LabelFood.Panel.EUROPEAN_UNION : LabelFood.Panel.UNITED_STATES,
        serving,
        List.of(facts));
  }

  @Test
  void thePantryListsItsFoodsWithThoseWhoUseThem() {
    kitchen.variant("egg-free");
    new AddFood(kitchen.desk()).fromTable("salt", List.of(), kitchen.by());

    List<KitchenViews.FoodEntry> foods = new ListFoods(kitchen.desk()).call().foods();

    assertThat(foods)
        .extracting(KitchenViews.FoodEntry::food)
        .containsExactly("egg-whole", "lupin-flour", "salt", "water");
    assertThat(foods.get(0).usedBy())
        .containsExactly("seeded-lupin-bun", "seeded-lupin-bun/egg-free");
    assertThat(foods.get(0).allergens()).containsExactly("eggs");
    assertThat(foods.get(2).usedBy()).isEmpty();
    kitchen.assertSound();
  }

  @Test
  void aFoodIsAddedFromItsLabelPerServing() {
    KitchenViews.FoodView food =
        new AddFood(kitchen.desk())
            .fromLabel(
                label(
                    "bench-lupin", 30, "energy=110kcal", "protein=12g", "fat=3", "carbohydrate=12",
                    "fiber=11", "sodium=5mg", "allergens=lupin", "weight.tbsp=9 g",
                    "price=4.80 EUR for 500 g"),
                kitchen.by());

    assertThat(food.source()).isEqualTo("label");
    assertThat(food.per100G().get("protein_g")).isCloseTo(40, within(1e-9));
    assertThat(food.per100G().get("carbohydrate_g")).isCloseTo(40, within(1e-9));
    assertThat(food.per100G().get("sodium_mg")).isCloseTo(16.6667, within(1e-4));
    assertThat(food.per100G().get("water_g")).isNull();
    assertThat(food.household())
        .contains(
            new KitchenViews.HouseholdView("serving", 30),
            new KitchenViews.HouseholdView("tbsp", 9));
    assertThat(food.price().perKilogram()).isCloseTo(9.6, within(1e-9));
    assertThat(food.allergens()).containsExactly("lupin");
    kitchen.assertSound();
  }

  /** Salt is sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I); carbohydrate without fibre. */
  @Test
  void aFoodIsAddedFromAnEuropeanLabelPer100Grams() {
    KitchenViews.FoodView food =
        new AddFood(kitchen.desk())
            .fromLabel(
                label(
                    "bench-lupin", 100, "energy=1510 kJ", "protein=40", "fat=9", "carbohydrate=11",
                    "fibre=30", "salt=0.05"),
                kitchen.by());

    assertThat(food.per100G().get("carbohydrate_g")).isCloseTo(41, within(1e-9));
    assertThat(food.per100G().get("sodium_mg")).isCloseTo(20, within(1e-9));
    assertThat(food.allergens()).isNull();
    assertThat(food.remarks()).anyMatch(remark -> remark.contains("allergens are unknown"));
  }

  @Test
  void aLabelThatCannotBeRightIsRefusedFigureByFigure() {
    UnreadableException refused =
        catchThrowableOfType(
            UnreadableException.class,
            () ->
                new AddFood(kitchen.desk())
                    .fromLabel(label("bench-lupin", 30, "protein=40", "fat=3"), kitchen.by()));

    assertThat(refused.problems().get(0).field()).isEqualTo("protein_g");
    assertThat(kitchen.files("main")).doesNotContain("pantry/bench-lupin.json");
  }

  @Test
  void aLabelWithoutFigureIsRefused() {
    assertThatThrownBy(
            () ->
                new AddFood(kitchen.desk())
                    .fromLabel(label("bench-lupin", 30, "price=3 EUR for 1 kg"), kitchen.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no figure");
  }

  @Test
  void aFoodThatIsThereIsNotOverwritten() {
    Refusal refusal =
        catchThrowableOfType(
            Refusal.class,
            () -> new AddFood(kitchen.desk()).fromTable("water", List.of(), kitchen.by()));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.EXISTS);
    assertThat(refusal.hint()).contains("ovenmark pantry set water");
  }

  @Test
  void aFoodIsChangedFactByFact() {
    KitchenViews.FoodView food =
        new ChangeFood(kitchen.desk())
            .call("lupin-flour", List.of("weight.tbsp=9 g", "density=0.55 g/ml"), kitchen.by());

    assertThat(food.densityGPerMl()).isEqualTo(0.55);
    assertThat(food.usedBy()).containsExactly("seeded-lupin-bun");
    assertThat(new ShowFood(kitchen.desk()).call("lupin-flour").densityGPerMl()).isEqualTo(0.55);
    kitchen.assertSound();
  }

  @Test
  void aChangeOfAFoodMovesNoFigureOfACommittedRevision() {
    Views.FormulaSheet before =
        new ShowFormula(kitchen.desk())
            .call(Address.parse("seeded-lupin-bun@2"));

    new ChangeFood(kitchen.desk()).call("lupin-flour", List.of("protein=30"), kitchen.by());

    assertThat(
            new ShowFormula(kitchen.desk())
                .call(Address.parse("seeded-lupin-bun@2")))
        .isEqualTo(before);
  }

  @Test
  void aVariantsFoodIsChangedThereAlone() {
    Address line = kitchen.variant("egg-free");

    new ChangeFood(kitchen.desk())
        .call(line, "lupin-flour", List.of("density=0.55"), kitchen.by());

    assertThat(
            kitchen.desk().notebook().latest(line).food("lupin-flour").orElseThrow()
                .densityGramsPerMillilitre())
        .hasValue(0.55);
    assertThat(new ShowFood(kitchen.desk()).call("lupin-flour").densityGPerMl()).isNull();
    kitchen.assertSound();
  }

  @Test
  void aChangeThatSaysNothingNewIsRefused() {
    assertThatThrownBy(
            () ->
                new ChangeFood(kitchen.desk())
                    .call("water", List.of("name=" + name("water")), kitchen.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("says all of that already");
  }

  private String name(String slug) {
    return new ShowFood(kitchen.desk()).call(slug).name();
  }

  @Test
  void aFoodOfTheTableIsShownBeforeThePantryHasIt() {
    KitchenViews.FoodView food = new ShowFood(kitchen.desk()).call("salt");

    assertThat(food.inPantry()).isFalse();
    assertThat(food.remarks()).anyMatch(remark -> remark.contains("built-in table"));
    assertThat(new ShowFood(kitchen.desk()).call("water").inPantry()).isTrue();
  }

  @Test
  void aFoodThatIsNowhereIsRefusedWithThoseThatAreNear() {
    Refusal refusal =
        catchThrowableOfType(
            Refusal.class, () -> new ShowFood(kitchen.desk()).call("almond-flower"));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.NOT_FOUND);
    assertThat(refusal.hint()).contains("Perhaps you mean almond");
  }

  @Test
  void foodsAreFoundInThePantryFirstThenInTheTable() {
    new AddFood(kitchen.desk())
        .fromLabel(label("bench-lupin", 30, "protein=12"), kitchen.by());

    List<KitchenViews.FoodEntry> found =
        new ListFoods(kitchen.desk()).find("lupin flour").foods();

    assertThat(found).filteredOn(KitchenViews.FoodEntry::inPantry)
        .extracting(KitchenViews.FoodEntry::food)
        .contains("bench-lupin", "lupin-flour");
    assertThat(found).extracting(KitchenViews.FoodEntry::food).doesNotHaveDuplicates();
    assertThat(new ListFoods(kitchen.desk()).find("almond").foods())
        .isNotEmpty()
        .noneMatch(KitchenViews.FoodEntry::inPantry);
  }

  @Test
  void aDamagedFoodIsListedWithWhatIsWrong() {
    kitchen.write("pantry/broken.json", "{\"name\": \"Broken\"}");
    kitchen.commitByHand("A slip");

    KitchenViews.FoodEntry entry = new ListFoods(kitchen.open()).call().foods().get(0);

    assertThat(entry.food()).isEqualTo("broken");
    assertThat(entry.problems().get(0).where()).contains("pantry/broken.json", "kind");
  }

  @Test
  void programsSeeUnitsInTheNames() {
    assertThat(Json.compact(new ShowFood(kitchen.desk()).call("water")))
        .contains("\"per_100_g\":{", "\"density_g_per_ml\":", "\"energy_kcal\":", "\"in_pantry\":");
  }

  @Test
  void foodsOfADownloadedTableAreAddedInOneCommit() throws IOException {
    Path table = Files.createDirectory(folder.resolve("sr28"));
    for (String file : List.of("FOOD_DES.txt", "NUT_DATA.txt", "WEIGHT.txt")) {
      try (InputStream in =
          FoodImport.class.getResourceAsStream("/io/ovenmark/pantry/sr28/" + file)) {
        Files.write(table.resolve(file), in.readAllBytes());
      }
    }
    FoodImport.Selection all = FoodImport.Selection.ids("01123", "12061", "20080");
    List<String> told = new ArrayList<>();

    KitchenViews.ImportView seen =
        new ImportFoods(kitchen.desk()).look(table, all, (file, done, total) -> told.add(file));
    String head = kitchen.repository().git("rev-parse", "main");
    String first = seen.foods().get(0).food();
    KitchenViews.ImportView one =
        new ImportFoods(kitchen.desk())
            .call(
                table, all, Optional.of(Set.of(first)), FoodImport.Progress.NONE, kitchen.by());
    assertThat(one.added()).isEqualTo(1);
    assertThat(kitchen.desk().notebook().latest().food(first)).isPresent();
    head = kitchen.repository().git("rev-parse", "main");
    KitchenViews.ImportView added =
        new ImportFoods(kitchen.desk())
            .call(table, all, FoodImport.Progress.NONE, kitchen.by());

    assertThat(seen.added()).isZero();
    assertThat(seen.table()).isEqualTo("SR28");
    assertThat(told).isNotEmpty();
    assertThat(added.added()).isPositive();
    assertThat(added.foods()).extracting(KitchenViews.ImportedFood::state).contains("added");
    assertThat(kitchen.repository().git("rev-parse", "main~1")).isEqualTo(head);
    kitchen.assertSound();

    KitchenViews.ImportView again =
        new ImportFoods(kitchen.desk())
            .call(table, all, FoodImport.Progress.NONE, kitchen.by());
    assertThat(again.added()).isZero();
    assertThat(again.foods())
        .extracting(KitchenViews.ImportedFood::state)
        .containsOnly("in the pantry already");
  }

  @Test
  void aPlaceThatHoldsNoTableIsRefused() {
    assertThatThrownBy(
            () ->
                new ImportFoods(kitchen.desk())
                    .call(
                        folder, FoodImport.Selection.words("egg"), FoodImport.Progress.NONE,
                        kitchen.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no food table");
    assertThatThrownBy(
            () ->
                new ImportFoods(kitchen.desk())
                    .call(
                        folder.resolve("nowhere.zip"), FoodImport.Selection.words("egg"),
                        FoodImport.Progress.NONE, kitchen.by()))
        .isInstanceOf(Refusal.class);
  }
}
