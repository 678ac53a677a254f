package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkOutDraftTest {
  private static final Optional<String> BASE = Optional.of("seeded-lupin-bun@3");

  @TempDir static Path folder;
  private static LupinBench bench;

  @BeforeAll
  static void open() {
    bench = new LupinBench(folder);
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  private String document() {
    Address address = Address.parse(BASE.get());
    return JsonText.of(
            FormulaCodec.write(
                bench.desk().notebook().formula(bench.desk().notebook().revision(address))))
        .text();
  }

  private DraftViews.DraftSheet workOut(String document) {
    return new WorkOutDraft(bench.desk()).call(new JsonText(document), BASE, Set.of());
  }

  private DraftViews.DraftSheet with(String typed, String instead) {
    assertThat(document()).contains(typed);
    return workOut(document().replace(typed, instead));
  }

  private static ComparisonViews.FigureDifference perPiece(
      DraftViews.DraftSheet draft, String figure) {
    return draft.comparison().macros().get("per_piece").get(figure);
  }

  @Test
  void anUntouchedDraftHasTheFiguresOfItsBaseAndChangesNothing() {
    DraftViews.DraftSheet draft = workOut(document());
    Views.FormulaSheet shown = new ShowFormula(bench.desk()).call(Address.parse(BASE.get()));
    assertThat(draft.sheet().ratios()).isEqualTo(shown.ratios());
    assertThat(draft.sheet().macros().get("per_piece"))
        .isEqualTo(shown.macros().get("per_piece"));
    assertThat(draft.sheet().lines()).isEqualTo(shown.lines());
    assertThat(draft.sheet().cautions()).isEqualTo(shown.cautions());
    assertThat(draft.sheet().goal()).isEqualTo(shown.goal());
    assertThat(draft.sheet().revision()).isEqualTo(4);
    assertThat(draft.changes()).isEmpty();
    assertThat(draft.proposedNote()).isEmpty();
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.comparison().identical()).isTrue();
  }

  @Test
  void aChangedAmountMovesTheFiguresAndProposesANote() {
    DraftViews.DraftSheet draft = with("188 g", "202 g");
    assertThat(draft.changes())
        .extracting(Views.ChangeView::sentence)
        .containsExactly("Water 188 g → 202 g (+14 g).");
    assertThat(draft.proposedNote()).isEqualTo("Water 188 g → 202 g (+14 g)");
    assertThat(draft.comparison().ratios().get("batch_g").delta())
        .isCloseTo(14, within(1e-9));
    assertThat(draft.comparison().lines())
        .filteredOn(line -> line.id().equals("water"))
        .extracting(ComparisonViews.LineDifference::deltaG)
        .containsExactly(14.0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "1", "18-", "188 gg 3", "1,5 g", "one", "2000000 g"})
  void aLineThatCannotBeReadIsUnknownAndNeverZero(String typed) {
    DraftViews.DraftSheet draft = with("\"188 g\"", "\"" + typed + "\"");
    assertThat(draft.problems())
        .extracting(Views.ProblemView::where)
        .containsExactly("lines.3.amount");
    assertThat(draft.problems().get(0).message()).endsWith(".");
    assertThat(draft.problems().get(0).hint()).isNotBlank();
    Views.LineView water = draft.sheet().lines().get(3);
    assertThat(water.grams()).isNull();
    assertThat(water.percentOfBatch()).isNull();
    assertThat(draft.sheet().yield().json().get("batch_g")).isNull();
    assertThat(draft.sheet().yield().figures().get("batch_g").low()).isGreaterThan(180);
    assertThat(draft.sheet().ratios().json().get("liquid_ratio")).isNull();
    assertThat(perPiece(draft, "protein_g").to())
        .as("water holds no protein, so a piece's is known")
        .isCloseTo(perPiece(draft, "protein_g").from(), within(1e-9));
    assertThat(perPiece(draft, "water_g").to()).isNull();
  }

  @Test
  void anAmountOfAnUnknownMeasureIsReadAndUnresolved() {
    DraftViews.DraftSheet draft = with("\"188 g\"", "\"1 bucket\"");
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.sheet().lines().get(3).grams()).isNull();
    assertThat(draft.sheet().lines().get(3).how()).contains("bucket");
  }

  @Test
  void aLineWithoutFoodWeighsWhatItSaysAndHoldsTheUnknown() {
    DraftViews.DraftSheet draft = with("\"food\": \"water\"", "\"food\": \"\"");
    assertThat(draft.problems())
        .extracting(Views.ProblemView::where, Views.ProblemView::hint)
        .containsExactly(tuple("lines.3.food", "Choose one, or remove the line."));
    assertThat(draft.sheet().lines().get(3).grams()).isEqualTo(188);
    assertThat(perPiece(draft, "protein_g").to()).isNull();
  }

  @Test
  void aFoodThatNoPantryHasIsAProblemOfItsLine() {
    DraftViews.DraftSheet draft = with("\"food\": \"water\"", "\"food\": \"sea-water\"");
    assertThat(draft.problems())
        .extracting(Views.ProblemView::where)
        .containsExactly("lines.3.food");
  }

  @Test
  void blankLinesAndStepsAreNotThereYet() {
    String more =
        document()
            .replace("\"lines\": [", "\"lines\": [{\"food\": \"\", \"amount\": \" \"},")
            .replace("\"method\": [", "\"method\": [\"  \",");
    DraftViews.DraftSheet draft = workOut(more);
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.changes()).isEmpty();
    assertThat(draft.places()).containsExactly(1, 2, 3, 4, 5);
    assertThat(draft.comparison().identical()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "'\"pieces\": 6', '\"pieces\": \"six\"', yield.pieces",
    "'\"pieces\": 6', '\"pieces\": \"6.5\"', yield.pieces",
    "'\"pieces\": 6', '\"pieces\": \"0\"', yield.pieces",
    "'\"205 °C\"', '\"20\"', bake.0.temperature",
    "'\"minutes\": 25', '\"minutes\": \"25 min\"', bake.0.minutes",
    "'\"Seeded lupin bun\"', '\" \"', name",
    "'\"low-carb-bun\"', '\"no-such-goal\"', goal",
    "'\"low-carb-bun\"', '\"No goal\"', goal",
  })
  void everyFieldThatCannotBeReadIsNamed(String typed, String instead, String where) {
    DraftViews.DraftSheet draft =
        document().contains(typed)
            ? with(typed, instead)
            : with(typed.replace("Seeded lupin bun", "Seeded-lupin-bun"), instead);
    assertThat(draft.problems()).extracting(Views.ProblemView::where).containsExactly(where);
  }

  @Test
  void whatIsInTheBowlAddsUpToTheBatch() {
    DraftViews.DraftSheet draft =
        new WorkOutDraft(bench.desk()).call(new JsonText(document()), BASE, Set.of(0, 3, 99));
    assertThat(draft.bowl().json()).containsEntry("in_bowl_g", 308.0);
    double left = (Double) draft.bowl().json().get("left_g");
    assertThat(left + 308)
        .isCloseTo((Double) draft.sheet().yield().json().get("batch_g"), within(1e-9));
    DraftViews.DraftSheet half =
        new WorkOutDraft(bench.desk())
            .call(new JsonText(document().replace("188 g", "1")), BASE, Set.of(0, 3));
    assertThat(half.bowl().json().get("in_bowl_g")).isNull();
    assertThat(half.bowl().figures().get("in_bowl_g").low()).isEqualTo(120);
  }

  @Test
  void numbersMayBeTypedAsTexts() {
    DraftViews.DraftSheet draft = with("\"pieces\": 6", "\"pieces\": \" 7 \"");
    assertThat(draft.problems()).isEmpty();
    assertThat(draft.sheet().yield().json().get("pieces")).isEqualTo(7.0);
  }

  @Test
  void aReplacedFoodKeepsItsLine() {
    DraftViews.DraftSheet draft = with("\"food\": \"water\"", "\"food\": \"egg-white\"");
    assertThat(draft.comparison().lines())
        .filteredOn(line -> line.id().equals("water"))
        .extracting(ComparisonViews.LineDifference::change)
        .containsExactly("replaced");
  }

  @Test
  void aNewFormulaHasFiguresAndAProposedNameButNothingBefore() {
    JsonText typed =
        new JsonText(
            "{\"name\":\"Crème bun\",\"lines\":[{\"food\":\"water\",\"amount\":\"100 g\"}]}");
    DraftViews.DraftSheet draft = new WorkOutDraft(bench.desk()).call(typed, Optional.empty(), Set.of());
    assertThat(draft.comparison()).isNull();
    assertThat(draft.proposedName()).isEqualTo("creme-bun");
    assertThat(draft.proposedNote()).isEqualTo("First version");
    assertThat(draft.sheet().yield().json().get("batch_g")).isEqualTo(100.0);
    assertThat(draft.sheet().formula()).isNull();
  }

  @Test
  void whatChangedInFoodsIsNotTakenForTyping(@TempDir Path another) {
    try (LupinBench relabelled = new LupinBench(another)) {
      relabelled.relabelFlour();
      DraftViews.DraftSheet draft =
          new WorkOutDraft(relabelled.desk()).call(new JsonText(document()), BASE, Set.of());
      assertThat(draft.comparison().identical()).isTrue();
      assertThat(draft.remarks()).singleElement().asString().contains("seeded-lupin-bun@3");
    }
  }

  @Test
  void twoDocumentsAreToldApartInWords() {
    DraftViews.DraftDifference difference =
        new WorkOutDraft(bench.desk())
            .differences(
                new JsonText(document()),
                new JsonText(document().replace("188 g", "1")),
                BASE);
    assertThat(difference.changes())
        .extracting(Views.ChangeView::sentence)
        .containsExactly("Water 188 g → 1.");
  }

  @Test
  void whatIsNoDocumentIsRefused() {
    assertThatThrownBy(() -> workOut("[]")).isInstanceOf(UnreadableException.class);
    assertThatThrownBy(
            () ->
                new WorkOutDraft(bench.desk())
                    .call(new JsonText("{}"), Optional.of("seeded-lupin-bun@99"), Set.of()))
        .isInstanceOf(Refusal.class);
  }

  @Test
  void aCompleteDraftIsTheFormulaThatItsFileWouldBe() {
    assertThat(WorkOutDraft.complete(new JsonText(document())))
        .isEqualTo(FormulaCodec.read("bun", new JsonText(document()).utf8()));
    assertThatThrownBy(
            () -> WorkOutDraft.complete(new JsonText(document().replace("188 g", "188"))))
        .isInstanceOfSatisfying(
            Refusal.class,
            refusal -> assertThat(refusal.problems()).extracting("field")
                .containsExactly("lines[3].amount"));
  }
}
