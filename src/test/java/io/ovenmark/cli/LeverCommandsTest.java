package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindLevers;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.KeepDrafts;
import io.ovenmark.desk.LeverOrder;
import io.ovenmark.desk.ScaleFormula;
import io.ovenmark.desk.ScaleOrder;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeverCommandsTest {
  private static final String RATIO = "liquid ratio 1.3";

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  /** By hand: dry 120 + 45 + 4.5 g, so liquid 220.35 g, of which 50 g egg: water 170.35 g. */
  @Test
  void changesOfOneLineAreListedWithWhatElseTheyMove() {
    String out = bench.must("levers", "seeded-lupin-bun", "--want", RATIO).out();

    assertThat(out)
        .startsWith(
            """
            Seeded lupin bun
            seeded-lupin-bun@3

            Wanted: liquid ratio 1.3 (now 1.4)

            5 changes of one line do it; water 188 → 170 g (−9.39 %) disturbs the rest least.

               one line            now, g    weigh   change  batch  moist.   net c.   prot.
            1  water                  188  170.4 g  −9.39 %  −17.7   −1.87
            """)
        .contains("\n6. All lines together\n")
        .contains("Drying by less water takes 17.7 g from the batch and leaves net carbohydrate at")
        .contains("repeat the command for seeded-lupin-bun@3")
        .contains("  Figures are an aid for development.");
    assertThat(out.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(89));
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    Address bun = Address.parse("seeded-lupin-bun");
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(bench.must("levers", "seeded-lupin-bun", "--want", RATIO, "--json").out())
          .isEqualTo(Json.readable(new FindLevers(desk).call(bun, LeverOrder.of(RATIO))));
      assertThat(bench.must("scale", "seeded-lupin-bun", "--pieces", "9", "--json").out())
          .isEqualTo(
              Json.readable(new ScaleFormula(desk).call(bun, ScaleOrder.ofPieces("9"))));
    }
  }

  @Test
  void anAnswerIsCommittedWithAProposedNoteOrOnesOwn() {
    Bench.Result first =
        bench.must(
            "levers", "seeded-lupin-bun@3", "--want", RATIO, "--readable", "1g", "--apply", "1");
    assertThat(first.out())
        .startsWith("seeded-lupin-bun@4 · ")
        .contains("“Liquid ratio 1.4 → 1.3: water 188 g → 170 g”")
        .contains("Against seeded-lupin-bun@3\n  Water 188 g → 170 g (−18 g).");
    Bench.Result second =
        bench.must(
            "levers", "seeded-lupin-bun", "--want", "liquid ratio 1.2", "--apply", "2", "--note",
            "Firmer");
    assertThat(second.out()).startsWith("seeded-lupin-bun@5 · ").contains("“Firmer”");
  }

  @Test
  void anAnswerAndAScaledFormulaBecomeDrafts() {
    String answer =
        bench.must("levers", "seeded-lupin-bun", "--want", RATIO, "--draft", "1").out();
    assertThat(answer)
        .containsPattern("Draft formula-[0-9a-f]+ of seeded-lupin-bun@3\\.")
        .contains("“Liquid ratio 1.4 → 1.3: water 188 g → 170.4 g”");
    assertThat(bench.must("scale", "seeded-lupin-bun", "--pieces", "10", "--draft").out())
        .contains("“Scaled to 10 pieces of 71.3 g dough: 1.67 times the formula");
    assertThat(bench.must("timeline", "seeded-lupin-bun").out())
        .doesNotContain("seeded-lupin-bun@4");
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(new KeepDrafts(desk).all().drafts()).hasSize(2);
    }
  }

  @Test
  void withoutAWishTheFiguresThatCanBeAskedForAreListed() {
    assertThat(bench.must("levers", "seeded-lupin-bun").out())
        .startsWith("Seeded lupin bun\nseeded-lupin-bun@3\n\n")
        .contains("Figures as they are\n  liquid ratio 1.4\n")
        .contains("  water                 188 g  water");
    bench.must("new", "Empty bun");
    assertThat(bench.must("levers", "empty-bun").out()).contains("has no lines yet");
  }

  @Test
  void anAnswerAboutAnOlderRevisionIsAConflict() {
    Bench.Result result =
        bench.run("levers", "seeded-lupin-bun@2", "--want", RATIO, "--apply", "1");
    assertThat(result.code()).isEqualTo(3);
    assertThat(result.err())
        .contains("The answers are about seeded-lupin-bun@2, but seeded-lupin-bun@3 by Ines")
        .contains("hint:  Ask again about seeded-lupin-bun@3.");
  }

  @Test
  void whyItCannotBeDoneIsTold() {
    String out =
        bench
            .must(
                "levers", "seeded-lupin-bun", "--want", "liquid ratio 0.9", "--keep",
                "soy-flour-defatted,flaxseed,egg-whole", "--at-least", "water=150g", "--within",
                "salt=10%")
            .out();
    assertThat(out)
        .contains("Limits: soy-flour-defatted stays, flaxseed stays, egg-whole stays, water at")
        .contains("It cannot be done: these contradict each other:")
        .contains("How near one can come\n  liquid ratio 0.9: 1.18 is the nearest");
    assertThat(
            bench.run("levers", "seeded-lupin-bun", "--want", "liquid ratio 0.9", "--keep",
                "water,egg-whole", "--within", "1%", "--apply", "1").code())
        .isEqualTo(1);
  }

  @Test
  void whatIsSoAlreadyIsTold() {
    assertThat(
            bench.must("levers", "seeded-lupin-bun", "--want", "liquid ratio at most 2").out())
        .contains("Nothing to change: liquid ratio is 1.4.");
  }

  @Test
  void wrongUsageAndWrongWishesAreToldApart() {
    assertThat(bench.run("levers", "seeded-lupin-bun", "--apply", "1").code()).isEqualTo(2);
    assertThat(
            bench.run("levers", "seeded-lupin-bun", "--want", RATIO, "--apply", "1", "--draft", "1")
                .code())
        .isEqualTo(2);
    assertThat(bench.run("levers", "seeded-lupin-bun", "--want", RATIO, "--note", "x").code())
        .isEqualTo(2);
    assertThat(bench.run("scale", "seeded-lupin-bun", "--size", "3").code()).isEqualTo(2);
    Bench.Result wish = bench.run("levers", "seeded-lupin-bun", "--want", "taste 7");
    assertThat(wish.code()).isEqualTo(1);
    assertThat(wish.err()).contains("\"taste\" is not a figure", "where: taste 7", "hint:");
    assertThat(bench.run("scale", "seeded-lupin-bun").code()).isEqualTo(1);
  }

  @Test
  void aScaledFormulaIsReadyToWeigh() {
    Bench.Result result =
        bench.must("scale", "seeded-lupin-bun", "--pieces", "10", "--readable", "1 g");
    assertThat(result.out())
        .startsWith(
            """
            Seeded lupin bun
            seeded-lupin-bun@3

            Scaled to 10 pieces of 71.3 g dough: 1.67 times the formula, a batch of 713 g.

            line                formula    measure  exact, g     error
            defatted soy flour    120 g      200 g       200
            flaxseed               45 g       75 g        75
            water                 188 g      313 g       313  −0.106 %
            whole egg           1 large       83 g      83.3    −0.4 %
            butter                 20 g       33 g      33.3      −1 %
            table salt          3/4 tsp  1 1/4 tsp       7.5
            """)
        .contains("What measuring to 1 g moves\n");
  }

  @Test
  void whatIsAtHandAndTinsAreScaledTo() {
    assertThat(
            bench.must("scale", "seeded-lupin-bun", "--have", "flaxseed=60 g").out())
        .contains("Scaled to 8 pieces of 71.3 g dough")
        .contains("Of 60 g flaxseed it takes 60 g, the scarcest; 0 g are left.");
    assertThat(
            bench.must(
                    "scale", "seeded-lupin-bun", "--tin", "loaf:25cmx11cmx7cm", "--density", "1.1")
                .out())
        .contains("Scaled to 1 tin of 1271 g dough")
        .contains("The loaf tin 25 cm × 11 cm × 7 cm holds 1925 ml, 60 % filled with dough of")
        .contains("common practice (no source)")
        .contains("Oven time and temperature do not scale with the mass");
  }

  @Test
  void pricesAreShownWhereTheyAreKnown() {
    assertThat(bench.must("show", "seeded-lupin-bun").out()).doesNotContain("Cost:");
    bench.must("pantry", "set", "soy-flour-defatted", "price=6 EUR for 1000 g");
    bench.must("pantry", "set", "water", "price=0 EUR for 1000 g");

    assertThat(bench.must("show", "seeded-lupin-bun").out())
        .contains(
            "Cost: at least 0.72 EUR a batch, at least 0.12 EUR a piece; the price is not known");
    assertThat(bench.must("levers", "seeded-lupin-bun", "--want", RATIO).out())
        .contains("    0.00\n", "+0.014\n", "cost in EUR", "price is missing.");
    bench.must(
        "revise", "seeded-lupin-bun", "--set", "soy-flour-defatted=130g", "--note", "More flour");
    assertThat(bench.must("compare", "seeded-lupin-bun@3", "seeded-lupin-bun").out())
        .contains("\nCost\n")
        .contains("The price is not known of");
  }
}
