package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplaceFoodTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir Path temporary;
  private LupinBench bench;
  private ReplaceFood verb;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
    verb = new ReplaceFood(bench.desk());
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private By by() {
    return bench.fixture().by();
  }

  private static ReplaceOrder keeping(String line, String keep) {
    return new ReplaceOrder(line, keep, null, null, null);
  }

  private static ReplaceViews.AnswerView answer(ReplaceViews.ReplaceSheet sheet, String food) {
    return sheet.answers().stream()
        .filter(each -> each.food().equals(food))
        .findFirst()
        .orElseThrow();
  }

  private static String because(ReplaceViews.ReplaceSheet sheet, String food) {
    return sheet.setAside().stream()
        .filter(each -> each.food().equals(food))
        .map(ReplaceViews.SetAsideView::because)
        .findFirst()
        .orElse("proposed");
  }

  /** By hand: three large eggs, 150 g, hold 114.2 g water; milk has 88.13 g in 100 g. */
  @Test
  void foodsOfThePantryAndOfTheTableAreProposed() {
    ReplaceViews.ReplaceSheet sheet = verb.call(BUN, ReplaceOrder.of("egg-whole"));

    assertThat(sheet.address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(sheet.kept().keep()).isEqualTo("water");
    assertThat(sheet.kept().usual()).isTrue();
    assertThat(sheet.line().work()).singleElement().asString().startsWith("Egg sets the crumb");
    ReplaceViews.AnswerView milk = answer(sheet, "milk-whole");
    assertThat(milk.grams()).isCloseTo(150 * 76.15 / 88.13, within(1e-9));
    assertThat(milk.weigh()).isEqualTo("129.6 g");
    assertThat(milk.inPantry()).isFalse();
    assertThat(milk.source()).isEqualTo("USDA SR28 01211");
    assertThat(milk.allergensGained()).containsExactly("milk");
    assertThat(milk.allergensLost()).containsExactly("eggs");
    assertThat(milk.moves()).isEmpty();
    assertThat(answer(sheet, "water").inPantry()).isTrue();
    assertThat(answer(sheet, "water").elsewhereG()).isEqualTo(188);
    assertThat(sheet.answers().get(0).sameKind()).isTrue();
    assertThat(sheet.answers())
        .extracting(ReplaceViews.AnswerView::food)
        .doesNotContain("egg-whole");
  }

  @Test
  void oneFoodIsToldWithEverythingThatMoves() {
    ReplaceViews.ReplaceSheet sheet =
        verb.call(BUN, ReplaceOrder.of("egg-whole").asking("milk-whole"));

    assertThat(sheet.answers()).hasSize(1);
    assertThat(sheet.setAside()).isEmpty();
    assertThat(sheet.answers().get(0).moves())
        .extracting(ReplaceViews.MovesView::per)
        .containsExactly("per_piece", "per_batch", "per_100_g_baked");
    assertThat(sheet.answers().get(0).structure()).isNotEmpty();
  }

  @Test
  void theGoalKeepsFoodsOutAndSaysWhy() {
    ReplaceViews.ReplaceSheet sheet = verb.call(BUN, keeping("lupin-flour", "protein"));

    assertThat(because(sheet, "wheat-flour-bread"))
        .isEqualTo("contains wheat (gluten), which the goal Low-carbohydrate bun is without");
    assertThat(because(sheet, "honey")).isEqualTo("the goal Low-carbohydrate bun is without honey");
    assertThat(because(sheet, "xanthan-gum")).isEqualTo("its protein is not known");
    assertThat(because(sheet, "oil-olive")).isEqualTo("it has no protein");

    ReplaceViews.ReplaceSheet free =
        verb.call(BUN, new ReplaceOrder("lupin-flour", "protein", "none", null, null));
    assertThat(free.goal()).isNull();
    assertThat(because(free, "wheat-flour-bread")).isEqualTo("proposed");
    assertThat(answer(free, "wheat-flour-bread").goalMet()).isNull();
    ReplaceViews.ReplaceSheet other =
        verb.call(BUN, new ReplaceOrder("water", null, "egg-free-bun", null, null));
    assertThat(other.goal().name()).isEqualTo("Egg-free bun");
    assertThat(because(other, "egg-white")).contains("contains eggs");
  }

  @Test
  void peanutForLupinIsToldAsAnAllergen() {
    ReplaceViews.ReplaceSheet sheet = verb.call(BUN, keeping("lupin-flour", "protein"));

    assertThat(answer(sheet, "peanut-flour-defatted").allergensGained())
        .containsExactly("peanuts");
    ReplaceViews.ReplaceSheet seeds = verb.call(BUN, keeping("sesame-seeds", "mass"));
    assertThat(answer(seeds, "xylitol").cautions())
        .contains("Contains xylitol, which is poisonous to dogs.");
  }

  @Test
  void aFoodBecomesADraftWithItsNote() {
    DraftViews.DraftView draft =
        verb.draft(BUN, ReplaceOrder.of("egg-whole").asking("milk-whole"), by());

    assertThat(draft.base().address()).isEqualTo("seeded-lupin-bun@3");
    assertThat(draft.note()).isEqualTo("Whole egg 3 large → whole milk 129.6 g, same water");
    assertThat(draft.document().text()).contains("\"milk-whole\"", "\"129.6 g\"", "low-carb-bun");
    assertThat(bench.desk().notebook().newest(BUN).number()).isEqualTo(3);
  }

  /** The goal that was asked about is not written into the formula. */
  @Test
  void aFoodBecomesTheNextRevision() {
    ReplaceOrder order = new ReplaceOrder("egg-whole", null, "egg-free-bun", "milk-whole", "1 g");
    WriteViews.RevisionWritten written = verb.apply(BUN, order, Optional.empty(), by());

    assertThat(written.revision().address()).isEqualTo("seeded-lupin-bun@4");
    assertThat(written.foodsAdded()).containsExactly("milk-whole");
    Views.FormulaSheet sheet = new ShowFormula(bench.desk()).call(BUN);
    assertThat(sheet.goal().goal()).isEqualTo("low-carb-bun");
    assertThat(sheet.lines())
        .anyMatch(each -> each.id().equals("egg-whole") && each.food().equals("milk-whole"));
  }

  @Test
  void whatCannotBeDoneIsRefusedWithARemedy() {
    refused("Keep water instead", () -> verb.call(BUN, keeping("water", "fat")));
    refused("egg-whole", () -> verb.call(BUN, ReplaceOrder.of("butter")));
    refused("protein, dry, fat", () -> verb.call(BUN, keeping("water", "taste")));
    refused("Name the line", () -> verb.call(BUN, ReplaceOrder.of(" ")));
    refused("milk-whole", () -> verb.call(BUN, ReplaceOrder.of("egg-whole").asking("milk-whol")));
    refused(
        "Its goals are egg-free-bun, low-carb-bun",
        () -> verb.call(BUN, new ReplaceOrder("water", null, "sweet", null, null)));
    refused("Name one", () -> verb.draft(BUN, ReplaceOrder.of("egg-whole"), by()));
    assertThatThrownBy(
            () -> verb.draft(BUN, keeping("lupin-flour", "protein").asking("salt"), by()))
        .hasMessage("The food \"salt\" is not proposed: it has no protein.");
    assertThatThrownBy(
            () ->
                verb.apply(
                    BUN.at(2),
                    ReplaceOrder.of("egg-whole").asking("milk-whole"),
                    Optional.empty(),
                    by()))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT));
  }

  private static void refused(String hint, Runnable run) {
    assertThatThrownBy(run::run)
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.hint()).contains(hint));
  }

  @Test
  void theChoicesAreTheLinesTheGoalsAndWhatCanBeKept() {
    ReplaceViews.Choices choices = verb.choices(BUN);

    assertThat(choices.goal()).isEqualTo("low-carb-bun");
    assertThat(choices.lines())
        .extracting(line -> line.line() + " " + line.usual())
        .contains("lupin-flour mass", "sesame-seeds dry", "water water", "egg-whole water");
    assertThat(choices.keeps()).hasSize(5);
    assertThat(choices.goals()).extracting(ReplaceViews.GoalChoice::goal)
        .containsExactly("egg-free-bun", "low-carb-bun");
  }

  @Test
  void aRebuildStandsBesideItsReference() {
    RebuildViews.RebuildSheet sheet =
        new BesideReference(bench.desk())
            .call(BUN, Optional.of(Address.parse("sesame-crispbread")));

    assertThat(sheet.reference().address()).isEqualTo("sesame-crispbread@1");
    assertThat(sheet.parts())
        .extracting(RebuildViews.PartView::part)
        .containsExactly(
            "flour", "water and other liquids", "egg", "sweetening", "seeds and other dry");
    assertThat(sheet.goal().rules().get(0).to()).isTrue();
    assertThat(sheet.goal().rules().get(0).from()).isNull();
    assertThat(sheet.allergensGained()).containsExactly("eggs", "lupin");
    assertThat(sheet.remarks()).anyMatch(remark -> remark.contains("how many pieces"));
    refused(
        "State its reference",
        () -> new BesideReference(bench.desk()).call(BUN, Optional.empty()));
    bench.bun().set("reference=sesame-crispbread").revise("Reference");
    assertThat(
            new BesideReference(bench.desk()).call(BUN, Optional.empty()).reference().formula())
        .isEqualTo("sesame-crispbread");
  }
}
