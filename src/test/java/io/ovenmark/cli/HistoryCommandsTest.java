package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Variants, carrying over, restoring, publishing and undoing. */
class HistoryCommandsTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void aVariantBeginsAsTheRevisionItIsBranchedFrom() {
    Bench.Result result =
        bench.must("variant", "seeded-lupin-bun", "dairy-free", "--from", "2", "--note", "No milk");
    assertThat(result.out())
        .startsWith("Branched seeded-lupin-bun/dairy-free from seeded-lupin-bun@2\n")
        .contains("Goal: Low-carbohydrate bun: met\n");
    assertThat(bench.must("compare", "seeded-lupin-bun@2", "seeded-lupin-bun/dairy-free").out())
        .contains("unchanged");
    Bench.Result again = bench.run("variant", "seeded-lupin-bun", "dairy-free", "--note", "x");
    assertThat(again.code()).isEqualTo(1);
    assertThat(again.said()).contains("There is a variant \"dairy-free\"");
  }

  @Test
  void aVariantForAGoalSaysWhatIsStillToDo() {
    Bench.Result result =
        bench.must("variant", "seeded-lupin-bun", "no-egg", "--goal", "egg-free-bun");
    assertThat(result.out())
        .contains("Goal: Low-carbohydrate bun without egg: not met\n")
        .containsPattern("broken +no eggs +whole egg");
    assertThat(bench.run("variant", "seeded-lupin-bun", "b", "--goal", "keto").said())
        .contains("There is no goal \"keto\"");
    assertThat(bench.run("variant", "seeded-lupin-bun", "12").code()).isEqualTo(1);
    assertThat(bench.run("variant", "seeded-lupin-bun@2", "b", "--from", "2").code()).isEqualTo(2);
  }

  @Test
  void carryingWithoutAChoiceWritesNothing() {
    String before = bench.must("timeline", "seeded-lupin-bun", "--json").out();
    Bench.Result result = bench.run("carry", "seeded-lupin-bun/egg-free");
    assertThat(result.code()).isEqualTo(3);
    assertThat(result.err()).contains("    variant  215 g\n    main     188 g\n");
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--json").out()).isEqualTo(before);
  }

  @Test
  void carryingWithAChoiceIsAMerge() {
    Bench.Result result =
        bench.must(
            "carry",
            "seeded-lupin-bun/egg-free",
            "--take",
            "water.amount=variant",
            "--note",
            "Hotter oven");
    assertThat(result.out())
        .startsWith("seeded-lupin-bun/egg-free@5 ")
        .contains("  carries seeded-lupin-bun@3\n")
        .contains("  Oven temperature 200 → 205 °C.\n");
    assertThat(bench.must("timeline", "seeded-lupin-bun/egg-free", "--limit", "1").out())
        .contains("carries seeded-lupin-bun@3");
    assertThat(bench.must("carry", "seeded-lupin-bun/egg-free").out())
        .startsWith("Nothing to carry: seeded-lupin-bun/egg-free@5 holds everything");
  }

  @Test
  void carryingNeedsAVariant() {
    assertThat(bench.run("carry", "seeded-lupin-bun").code()).isEqualTo(1);
    assertThat(bench.run("carry", "seeded-lupin-bun/egg-free@3").code()).isEqualTo(2);
    assertThat(bench.run("carry", "seeded-lupin-bun/egg-free", "--take", "all=mine").said())
        .contains("\"all=mine\" chooses no side.");
  }

  @Test
  void aRestoredRevisionFindsItsBakesAgain() {
    Bench.Result result = bench.must("restore", "seeded-lupin-bun@2");
    assertThat(result.out())
        .startsWith("seeded-lupin-bun@4 ")
        .contains("“Back to seeded-lupin-bun@2”")
        .contains("Water 188 g → 180 g (−8 g).");
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--limit", "1").out())
        .contains("restores seeded-lupin-bun@2")
        .contains("baked 2026-03-02-1 · 1 piece");
    assertThat(bench.must("restore", "seeded-lupin-bun@4").out()).startsWith("Nothing to commit");
  }

  @Test
  void aRevisionMayBeRestoredIntoAVariantOfItsFormula() {
    bench.must("restore", "seeded-lupin-bun@1", "--into", "seeded-lupin-bun/egg-free");
    assertThat(bench.must("list").out()).containsPattern("/egg-free +5 .*low-carb-bun: met");
    assertThat(bench.run("restore", "seeded-lupin-bun@1", "--into", "wheat-bun").said())
        .contains("cannot be restored into wheat-bun")
        .contains("--from seeded-lupin-bun@1");
    assertThat(bench.run("restore", "seeded-lupin-bun").code()).isEqualTo(2);
  }

  @Test
  void aRevisionIsPublishedOnce() {
    String[] publish = {"publish", "seeded-lupin-bun@3", "--note", "The winter bun"};
    assertThat(bench.must(publish).out())
        .isEqualTo(
            """
            Published seeded-lupin-bun@3 as published/seeded-lupin-bun/3
              “The winter bun”
            """);
    assertThat(bench.run(publish).said()).contains("seeded-lupin-bun@3 is published already.");
    assertThat(bench.must("show", "seeded-lupin-bun@3").out())
        .contains("Published: The winter bun");
    assertThat(bench.run("publish", "seeded-lupin-bun@3").code()).isEqualTo(2);
  }

  @Test
  void publishingWhatMissesItsGoalIsSaidAndDone() {
    assertThat(bench.must("publish", "seeded-lupin-bun/egg-free@3", "--note", "Too early").out())
        .contains("It does not meet its goal.")
        .contains("See why with: ovenmark show seeded-lupin-bun/egg-free@3");
  }

  @Test
  void undoTakesTheLastChangeBackAndOnceMoreDoesItAgain() {
    assertThat(bench.must("undo").out())
        .isEqualTo(
            """
            Taken back: “Crumb was dry”
              now seeded-lupin-bun@4
                Water 188 g → 180 g (−8 g).
                Oven temperature 205 → 200 °C.
            To take this back: ovenmark undo
            """);
    assertThat(bench.must("undo").out()).contains("Water 180 g → 188 g (+8 g).");
    assertThat(bench.must("show", "seeded-lupin-bun").out()).contains("188 g");
  }

  @Test
  void undoOfABeginningTakesTheFormulaAwayAndBackAgain() {
    bench.must("new", "Sesame crispbread");
    assertThat(bench.must("undo").out())
        .contains("  sesame-crispbread is gone from the notebook\n");
    assertThat(bench.must("list").out()).doesNotContain("sesame");
    assertThat(bench.must("undo").out()).contains("now sesame-crispbread@");
  }

  @Test
  void undoOfAVariantLeavesTheMainLineAlone() {
    bench.must("undo", "seeded-lupin-bun/egg-free");
    assertThat(bench.must("show", "seeded-lupin-bun/egg-free").out()).contains("egg-whole");
    assertThat(bench.must("show", "seeded-lupin-bun").out())
        .startsWith("Seeded lupin bun\nseeded-lupin-bun@3");
    Bench.Result whole = bench.run("undo", "seeded-lupin-bun");
    assertThat(whole.code()).isEqualTo(2);
    assertThat(whole.said()).contains("ovenmark restore seeded-lupin-bun@N");
  }

  @Test
  void thereIsNothingToUndoInANewNotebook(@TempDir Path other) {
    assertThat(Saltmarsh.empty(other).run("undo").code()).isEqualTo(1);
  }
}
