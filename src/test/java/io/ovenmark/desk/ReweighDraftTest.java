package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReweighDraftTest {
  @TempDir static Path folder;
  private static Kitchen kitchen;

  @BeforeAll
  static void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterAll
  static void close() {
    kitchen.close();
  }

  private static DraftViews.Reweighed wish(
      String yield, ReweighDraft.Target target, int place, String value) {
    String document =
        """
        {"name": "Bun", "lines": [
          {"food": "lupin-flour", "amount": "100 g", "flour": true},
          {"food": "", "amount": ""},
          {"food": "water", "amount": "80 g"},
          {"food": "egg-whole", "amount": "2 large"},
          {"food": "table-salt", "amount": "0.5 kg"}],
         "yield": {%s}}
        """
            .formatted(yield);
    return wish(new JsonText(document), target, place, value);
  }

  private static DraftViews.Reweighed wish(
      JsonText document, ReweighDraft.Target target, int place, String value) {
    return new ReweighDraft(kitchen.desk())
        .call(document, Optional.empty(), new ReweighDraft.Wish(target, place, value));
  }

  private static List<String> amounts(DraftViews.Reweighed reweighed) {
    return reweighed.amounts().stream().map(each -> each.place() + " " + each.amount()).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "GRAMS, 150, 2 150 g",
    "GRAMS, 5 oz, 2 5 oz",
    "GRAMS, 1 1/2 lb, 2 1 1/2 lb",
    "PERCENT_OF_BATCH, 50, 2 700 g",
    "PERCENT_OF_BATCH, 12.5 %, 2 100 g",
    "PERCENT_OF_BATCH, 10, 2 77.8 g",
    "PERCENT_OF_BATCH, 0.5, 2 3.52 g",
    "BAKERS_PERCENT, 62.5, 2 62.5 g",
    "BAKERS_PERCENT, 2105, 2 2105 g",
  })
  void oneLineFollowsAWish(ReweighDraft.Target target, String value, String amount) {
    assertThat(amounts(wish("", target, 2, value))).containsExactly(amount);
  }

  @Test
  void scalingToPiecesKeepsTheDoughOfAPieceAndTheMeasures() {
    DraftViews.Reweighed pieces = wish("\"pieces\": 6", ReweighDraft.Target.PIECES, -1, "9");
    assertThat(amounts(pieces))
        .containsExactly("0 150 g", "2 120 g", "3 3 large", "4 0.75 kg");
    assertThat(pieces.pieces()).isEqualTo(9);
    assertThat(pieces.doughPerPieceG()).isNull();
  }

  @Test
  void scalingToDoughAPieceOrABatchKeepsThePieces() {
    DraftViews.Reweighed dough =
        wish("\"dough_per_piece_g\": 78", ReweighDraft.Target.DOUGH_PER_PIECE, -1, "39");
    assertThat(amounts(dough)).startsWith("0 50 g", "2 40 g");
    assertThat(dough.doughPerPieceG()).isEqualTo(39);
    DraftViews.Reweighed batch = wish("\"pieces\": 6", ReweighDraft.Target.BATCH, -1, "1.56 kg");
    assertThat(amounts(batch)).containsExactly("0 200 g", "2 160 g", "3 4 large", "4 1 kg");
    assertThat(batch.pieces()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "PERCENT_OF_BATCH, 2, 100, Use less than 100 %.",
    "PERCENT_OF_BATCH, 2, many, Write digits",
    "PERCENT_OF_BATCH, 1, 50, Choose a food",
    "PERCENT_OF_BATCH, 2, -5, Use 0 %",
    "BAKERS_PERCENT, 0, 50, Weigh another flour first.",
    "GRAMS, 2, 3 large, Write grams",
    "GRAMS, 2, -3, Use 0 or more.",
    "PIECES, -1, 6.5, Use a whole number",
    "PIECES, -1, 0, Use a whole number",
    "DOUGH_PER_PIECE, -1, 50, Complete the amounts and the yield first.",
    "BATCH, -1, 0, Use a number above 0.",
  })
  void whatCannotBeIsRefusedInOneSentence(
      ReweighDraft.Target target, int place, String value, String hint) {
    assertThatThrownBy(() -> wish("", target, place, value))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> {
              assertThat(refusal.getMessage()).endsWith(".").doesNotContain("\n");
              assertThat(refusal.hint()).contains(hint);
            });
  }

  @Test
  void whatCannotBeReadCannotBeScaled() {
    JsonText document =
        new JsonText(
            "{\"name\":\"Bun\",\"lines\":[{\"food\":\"water\",\"amount\":\"80\"}],"
                + "\"yield\":{\"pieces\":\"6\"}}");
    assertThatThrownBy(() -> wish(document, ReweighDraft.Target.PIECES, -1, "9"))
        .hasMessageContaining("The amount \"80\" cannot be read");
  }

  @Test
  void targetsAreNamedAsInOrders() {
    assertThat(ReweighDraft.Target.named("percent_of_batch"))
        .contains(ReweighDraft.Target.PERCENT_OF_BATCH);
    assertThat(ReweighDraft.Target.named("salt")).isEmpty();
  }
}
