package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole outputs, as a person sees them. */
class OutputsTest {
  @TempDir static Path folder;
  private static Bench bench;

  @BeforeAll
  static void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void theListHasOneRowForEachLineOfHistory() {
    assertThat(bench.must("list").out())
        .isEqualTo(
            """
            Saltmarsh bench

            formula           rev.  net carb., g  protein, g  liquid  bakes  goal
            seeded-lupin-bun     3          3.46        12.7     1.4      1  low-carb-bun: met
              /egg-free          4                                           egg-free-bun: met
            wheat-bun            1          28.1        4.82   0.615
            """);
  }

  @Test
  void aRevisionIsShownWorkedOut() {
    assertThat(bench.must("show", "seeded-lupin-bun@2").shown())
        .startsWith(
            """
            Seeded lupin bun
            seeded-lupin-bun@2 · 2026-03-02 · Ines · commit ··········
            “Softer dough for a bowl”
            Rebuilt from: wheat-bun

            line                  food                entered  grams  % of batch  baker's %
            soy-flour-defatted *  defatted soy flour    120 g    120        28.6        100
            flaxseed                                     45 g     45        10.7       37.5
            water                                       180 g    180        42.9        150
            egg-whole             whole egg           1 large    ~50        11.9       41.7
            butter-unsalted       butter, unsalted       20 g     20        4.77       16.7
            salt                  table salt          3/4 tsp   ~4.5        1.07       3.75
            batch                                                420
            * counts as flour; ~ weighed by volume or household measure
              flaxseed: ground fresh

            Yield           6 pieces of 69.9 g dough, 60.5 g baked (1 piece weighed)
            Liquid ratio    1.36
            Dough moisture  55.6 %
            Oven            200 °C, 24 min
            """)
        .contains(
            """
            Goal: Low-carbohydrate bun: met
              kept  at most 8 g net carbohydrate a piece  3.46 g
              kept  at least 8 g protein a piece          12.7 g
            """)
        .contains("net carbohydrate, g     3.46         4.96         5.72   20.8\n")
        .contains("Contains eggs, soybeans, milk.")
        .contains("71 °C");
  }

  @Test
  void theTimelineIsNewestFirst() {
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--limit", "4").out())
        .isEqualTo(
            """
            Seeded lupin bun
            5 revisions · goal Low-carbohydrate bun: met

            ● seeded-lupin-bun@3 · 2026-03-02 · Ines
              “Crumb was dry”
              Water 180 g → 188 g (+8 g). Oven temperature 200 → 205 °C.
              net carbohydrate 3.46 g · protein 12.7 g · liquid ratio 1.4 · goal met

            ◆ seeded-lupin-bun/egg-free@4 · 2026-03-02 · Ines
              “No egg, more water”
              Removed whole egg, 1 large. Water 180 g → 215 g (+35 g).
              net carbohydrate 3.4 g · protein 11.7 g · liquid ratio 1.27 · goal met

            ◆ seeded-lupin-bun/egg-free@3 · 2026-03-02 · Ines
              “Begin an egg-free bun”
              Goal low-carb-bun → egg-free-bun.
              net carbohydrate 3.46 g · protein 12.7 g · liquid ratio 1.36 · goal not met

            ● seeded-lupin-bun@2 · 2026-03-02 · Ines
              “Softer dough for a bowl”
              Water 170 g → 180 g (+10 g).
              net carbohydrate 3.46 g · protein 12.7 g · liquid ratio 1.36 · goal met
              baked 2026-03-02-1 · 1 piece · up to 41 mm high · 13.4 % lost on baking ·
                liking 6.5 of 9 (2 scores) · dry

            … and 1 earlier
            """);
  }

  @Test
  void previewOfCarryingShowsBothSides() {
    assertThat(bench.must("carry", "seeded-lupin-bun/egg-free", "--preview").out())
        .isEqualTo(
            """
            Carrying seeded-lupin-bun@3 into seeded-lupin-bun/egg-free@4 would give:
              Oven temperature 200 → 205 °C.

            To be chosen (--take FIELD=variant or FIELD=main):

            lines.water.amount: The amount of water ("180 g") was changed on both sides, to "215 g"
              and to "188 g".
                before   180 g
                variant  215 g
                main     188 g
            """);
  }

  @Test
  void aConflictShowsBothSidesAndTheWayOut() {
    assertThat(
            bench
                .run(
                    "revise",
                    "seeded-lupin-bun@2",
                    "--set",
                    "water=200g",
                    "--set",
                    "bake.minutes=26",
                    "--note",
                    "Wetter")
                .err())
        .isEqualTo(
            """
            ovenmark: Nothing was committed: seeded-lupin-bun@3 by Ines (“Crumb was dry”) changed
              the same.

            lines.water.amount: The amount of water ("180 g") was changed on both sides, to "200 g"
              and to "188 g".
                before  180 g
                mine    200 g
                theirs  188 g

              hint:  What you wrote is untouched. Repeat the command with a --take for each field,
                     such as --take water.amount=mine or --take water.amount=theirs, or --take
                     all=mine.
            """);
  }
}
