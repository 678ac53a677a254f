package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MakeCardTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");

  @TempDir Path temporary;
  private LupinBench bench;

  @BeforeEach
  void begin() {
    bench = new LupinBench(temporary);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private static CardOrder order(String paper, String masses, String times, String photo) {
    return new CardOrder(paper, masses, times, photo, null, null, null);
  }

  @Test
  void theCardOfARevisionIsThatOfItsWorksheet() {
    CardViews.CardSheet card = new MakeCard(bench.desk()).call(BUN.at(2), CardOrder.USUAL);

    assertThat(card.address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(card.ingredients()).extracting(CardViews.IngredientView::mass).contains("188 g");
    assertThat(card.cautions()).anyMatch(each -> each.text().contains("71 °C"));
    assertThat(card.allergens()).contains("eggs", "lupin");
    assertThat(card.yield()).contains("6 pieces").contains("baked");
    assertThat(card.text().limit()).isEqualTo(5000);
    assertThat(card.markdown()).startsWith("# ");
  }

  @Test
  void anOldCardNeverChanges() {
    String before = new MakeCard(bench.desk()).page(BUN.at(2), CardOrder.USUAL);
    bench.fixture().formula("seeded-lupin-bun").set("water=150 g").revise("Much drier");

    assertThat(new MakeCard(bench.desk()).page(BUN.at(2), CardOrder.USUAL)).isEqualTo(before);
  }

  @Test
  void choicesAreUnderstoodOrRefusedWithWhatWouldDo() {
    MakeCard verb = new MakeCard(bench.desk());

    assertThat(verb.call(BUN, order("4x6", "oz", "0.5", "none")).masses()).isEqualTo("oz");
    for (CardOrder wrong :
        List.of(
            order("a5", null, null, null),
            order(null, "stone", null, null),
            order(null, null, "twice", null),
            order(null, null, null, "photos/seeded-lupin-bun/none.jpg"))) {
      assertThatThrownBy(() -> verb.call(BUN, wrong))
          .isInstanceOfSatisfying(
              Refusal.class, refusal -> assertThat(refusal.hint()).isNotBlank());
    }
  }

  private static CardOrder worded(String... words) {
    return new CardOrder(null, null, null, null, null, List.of("Ask."), List.of(words));
  }

  @Test
  void eachCautionOfTheFormulaCanBeWordedLongerAndNoneShorter() {
    MakeCard verb = new MakeCard(bench.desk());
    List<CardViews.CautionView> plain = verb.call(BUN.at(2), worded()).cautions();

    assertThat(plain)
        .extracting(CardViews.CautionView::caution)
        .startsWith("allergens", "egg")
        .contains("lupin", "medical-diets")
        .endsWith((String) null);
    for (CardViews.CautionView each : plain.subList(0, plain.size() - 1)) {
      String key = each.caution();
      assertThat(verb.call(BUN.at(2), worded(key + "=", key + "=" + each.own().substring(0, 8))))
          .extracting(CardViews.CardSheet::cautions)
          .isEqualTo(plain);
      CardViews.CardSheet card = verb.call(BUN.at(2), worded(key + "= Ask =\n twice. "));
      assertThat(card.cautions())
          .hasSameSizeAs(plain)
          .contains(new CardViews.CautionView(key, each.own(), each.own() + " Ask = twice."));
      assertThat(card.text().text()).contains(each.own() + " Ask = twice.");
    }
  }

  @ParameterizedTest
  @CsvSource({"xylitol=Careful., There is no caution \"xylitol\" here.", "Careful, does not name",
    "=Careful, does not name"})
  void whatNamesNoCautionOfTheFormulaIsRefused(String word, String message) {
    assertThatThrownBy(() -> new MakeCard(bench.desk()).call(BUN.at(2), worded(word)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining(message);
    assertThatThrownBy(
            () -> new MakeCard(bench.desk()).call(BUN.at(2), worded("egg=" + "x".repeat(1001))))
        .hasMessageContaining("is too long for a card.");
  }

  @Test
  void aFileEditedByHandHasNoCard() {
    assertThatThrownBy(
            () ->
                new MakeCard(bench.desk())
                    .call(Address.parse("seeded-lupin-bun@edited"), CardOrder.USUAL))
        .hasMessageContaining("A card is made of a revision");
  }

  @Test
  void whatTheMethodNamesAndNoLineWeighsIsToldBesideTheCardAndNotOnIt() {
    bench
        .fixture()
        .formula("seeded-lupin-bun")
        .method("Mix it.", "Brush with butter and bake.")
        .revise("A shine");

    CardViews.CardSheet card = new MakeCard(bench.desk()).call(BUN, CardOrder.USUAL);

    assertThat(card.remarks())
        .containsExactly(
            "Step 2 names “butter”, but no line weighs that: figures and allergens leave it out."
                + " Add a line for it, or change the step.");
    assertThat(card.markdown()).contains("Brush with butter").doesNotContain("leave it out");
    assertThat(new ShowFormula(bench.desk()).call(BUN).namedUnweighed())
        .extracting(Views.UnweighedView::step, Views.UnweighedView::words)
        .containsExactly(tuple(2, "butter"));
    assertThat(new ShowLabel(bench.desk()).call(BUN, LabelChoices.USUAL).remarks())
        .contains(card.remarks().get(0));
    assertThat(new PublishRevision(bench.desk()).preview(BUN).remarks())
        .contains(card.remarks().get(0));
  }
}
