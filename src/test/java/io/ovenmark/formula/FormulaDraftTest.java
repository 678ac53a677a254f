package io.ovenmark.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Problem;
import io.ovenmark.measure.Amount;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class FormulaDraftTest {
  private static final String BUN =
      """
      {"name": "Bun", "description": "Soft.", "goal": "low", "reference": "wheat",
       "lines": [{"id": "a", "food": "water", "amount": "1 1/2 cups", "note": "warm", "x": 1}],
       "method": ["Mix.", "Bake."],
       "bake": [{"id": "bake", "temperature": "190 °C", "minutes": 24, "rack": "low"}],
       "yield": {"pieces": 6, "handling_loss_percent": 2.5},
       "storage": "Two days.", "own": {"field": [1, 2]}}
      """;

  private static byte[] bytes(String json) {
    return json.getBytes(StandardCharsets.UTF_8);
  }

  private static FormulaDraft draft(String json) {
    return FormulaCodec.draft("draft", bytes(json));
  }

  @Test
  void aCompleteDraftReadsAsItsFileDoes() {
    FormulaDraft draft = draft(BUN);
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.formula()).isEqualTo(FormulaCodec.read("bun", bytes(BUN)));
    assertThat(draft.places()).containsExactly(0);
  }

  @Test
  void everyPrefixOfWhatIsTypedCanBeRead() {
    String amount = "1 1/2 cups (heaped)";
    for (int end = 0; end <= amount.length(); end++) {
      String typed = amount.substring(0, end);
      FormulaDraft draft = draft(BUN.replace("1 1/2 cups", typed));
      Line line = draft.formula().lines().get(0);
      assertThat(line.amount().isRead()).as(typed).isEqualTo(draft.problems().isEmpty());
    }
  }

  @Test
  void blanksCountAsAbsentAndTextsAsNumbers() {
    FormulaDraft draft =
        draft(
            """
            {"name": " Bun ", "description": " ", "goal": "", "reference": "",
             "lines": [{"food": " water ", "amount": " 5 g ", "note": ""}],
             "method": ["", " Mix. "], "bake": [{"temperature": "", "minutes": ""}],
             "yield": {"pieces": "6", "handling_loss_percent": " 2.5 "}}
            """);
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.formula())
        .isEqualTo(
            FormulaCodec.read(
                "bun",
                bytes(
                    """
                    {"name": "Bun", "lines": [{"food": "water", "amount": "5 g"}],
                     "method": ["Mix."], "yield": {"pieces": 6, "handling_loss_percent": 2.5}}
                    """)));
  }

  @Test
  void whatCannotBeReadIsLeftOpenAndNamed() {
    FormulaDraft draft =
        draft(
            """
            {"name": "", "lines": [{"amount": "5"}, {"food": "A", "amount": "5 g"},
              {"id": "x", "food": "b", "amount": "1 g"}, {"id": "x", "food": "c", "amount": 3}],
             "yield": {"pieces": "1,5", "dough_per_piece_g": 0}}
            """);
    assertThat(draft.problems())
        .extracting(Problem::field)
        .containsExactly(
            "name", "lines[0].amount", "lines[0].food", "lines[1].food", "lines[3].id",
            "lines[3].amount", "yield.pieces", "yield.dough_per_piece_g");
    assertThat(draft.formula().name()).isEqualTo(FormulaDraft.NO_NAME);
    assertThat(draft.formula().lines())
        .extracting(Line::food)
        .containsExactly(FormulaDraft.NO_FOOD, FormulaDraft.NO_FOOD, "b", "c");
    assertThat(draft.formula().yield()).isEqualTo(Yield.UNSTATED);
  }

  @Test
  void bothWaysToDivideABatchAreAProblemOfTheYield() {
    assertThat(draft(BUN.replace("\"pieces\": 6", "\"pieces\": 6, \"dough_per_piece_g\": 80"))
            .problems())
        .extracting(Problem::field)
        .containsExactly("yield");
  }

  @Test
  void whatCannotBeReadIsNeverWritten() {
    Formula formula =
        Formula.named("Bun").withLines(List.of(Line.of("water", "water", Amount.unread("5"))));
    assertThatThrownBy(() -> FormulaCodec.write(formula)).hasMessageContaining("cannot be read");
  }

  @Test
  void anAmountThatCannotBeReadIsKnownByItsTextAlone() {
    Amount typed = Amount.unread(" 5  x1 ");
    assertThat(typed).hasToString("5 x1").isEqualTo(Amount.unread("5 x1"));
    assertThat(typed.isRead()).isFalse();
    assertThat(typed).isNotEqualTo(Amount.unread("6")).isNotEqualTo(Amount.parse("5 x"));
    assertThat(Amount.unread("")).hasToString("not stated");
    assertThat(typed.grams()).isEmpty();
    assertThat(typed.millilitres()).isEmpty();
    assertThatThrownBy(typed::number).isInstanceOf(IllegalStateException.class);
  }
}
