package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.BesideReference;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ReplaceFood;
import io.ovenmark.desk.ReplaceOrder;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplaceCommandsTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void foodsThatCanStandInAreListedWithThoseThatAreNotProposed() {
    String out = bench.must("replace", "seeded-lupin-bun", "egg-whole").out();

    assertThat(out)
        .startsWith("Seeded lupin bun\nseeded-lupin-bun@3\n\n")
        .contains("Kept: 38.1 g water (76.2 g in 100 g), as usual for it")
        .contains("Egg sets the crumb in the oven")
        .contains("\nOf another kind\n")
        .contains("more; --all lists them")
        .contains("it has no water: ")
        .contains("To mind");
    assertThat(out.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(105));
    assertThat(bench.must("replace", "seeded-lupin-bun", "egg-whole", "--all").out())
        .doesNotContain("--all lists them");
  }

  @Test
  void oneFoodIsToldInFullAndBecomesADraftOrARevision() {
    String[] one = {"replace", "seeded-lupin-bun@3", "egg-whole", "--with", "milk-whole"};
    assertThat(bench.must(one).out())
        .contains("43.2 g of whole milk has the water of 50 g of whole egg.")
        .contains("What moves: the formula and a piece")
        .contains("Gained: none")
        .contains("Lost: eggs")
        .contains("with --draft");
    assertThat(bench.must(with(one, "--draft")).out())
        .contains("Draft begun from seeded-lupin-bun@3")
        .contains("/drafts/");
    assertThat(bench.must(with(one, "--apply")).out())
        .startsWith("seeded-lupin-bun@4 · ")
        .contains("→ whole milk 43.2 g, same water”");
  }

  private static String[] with(String[] words, String more) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = more;
    return all;
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    Address bun = Address.parse("seeded-lupin-bun");
    Address wheat = Address.parse("wheat-bun");
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(bench.must("replace", "seeded-lupin-bun", "water", "--json").out())
          .isEqualTo(
              Json.readable(new ReplaceFood(desk).call(bun, ReplaceOrder.of("water"))));
      assertThat(
              bench
                  .must("rebuild", "seeded-lupin-bun", "--reference", "wheat-bun", "--json")
                  .out())
          .isEqualTo(
              Json.readable(new BesideReference(desk).call(bun, Optional.of(wheat))));
    }
  }

  @Test
  void aRebuildStandsBesideItsReference() {
    String out = bench.must("rebuild", "seeded-lupin-bun", "--reference", "wheat-bun").out();

    assertThat(out)
        .contains("○ wheat-bun@1   ● seeded-lupin-bun@3")
        .contains("Lines, by the part that they play")
        .contains("FLOUR ○")
        .contains("\nA piece\n")
        .contains("Only in the rebuild: ");
    assertThat(out.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThan(89));
  }

  @Test
  void whatWasTypedWrongIsRefusedOrUsage() {
    assertThat(bench.run("replace", "seeded-lupin-bun", "water", "--draft").code()).isEqualTo(2);
    assertThat(bench.run("replace", "seeded-lupin-bun", "water", "--note", "x").code())
        .isEqualTo(2);
    assertThat(
            bench
                .run(
                    "replace", "seeded-lupin-bun", "water", "--with", "milk-whole", "--draft",
                    "--apply")
                .code())
        .isEqualTo(2);
    assertThat(bench.run("replace", "seeded-lupin-bun", "gone").code()).isEqualTo(1);
    assertThat(bench.run("replace", "seeded-lupin-bun", "water", "--keep", "taste").code())
        .isEqualTo(1);
    assertThat(bench.run("rebuild", "wheat-bun").code()).isEqualTo(1);
    assertThat(
            bench
                .run(
                    "replace", "seeded-lupin-bun@2", "egg-whole", "--with", "milk-whole",
                    "--apply")
                .code())
        .isEqualTo(3);
  }
}
