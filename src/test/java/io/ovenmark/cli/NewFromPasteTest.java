package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewFromPasteTest {
  @TempDir Path folder;

  @Test
  void aPastedBlockBecomesRevisionOne() throws IOException {
    Bench bench = Saltmarsh.empty(folder);
    Files.writeString(
        folder.resolve("bun.txt"),
        "Anything\nMakes 6\n\n120 g lupin flour\n180 g water (warm)\n\nMethod\n1. Mix it.\n");
    assertThat(bench.must("new", "Bench bun", "--paste", "bun.txt").out())
        .startsWith("bench-bun@1")
        .contains("Copied into the pantry: lupin-flour, water.");
    assertThat(bench.must("show", "bench-bun").out())
        .startsWith("Bench bun\n")
        .contains("6 pieces")
        .contains("Mix it.");
  }

  @Test
  void linesInDoubtAreToldAndSettledOnTheCommandLine() {
    Bench bench = Saltmarsh.empty(folder);
    String lines = "60 g almond meal\n20 g butter\n";
    Bench.Result refused = bench.input(lines).run("new", "Bun", "--paste", "-");
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.said())
        .startsWith("ovenmark: 2 things to mend:")
        .contains("standard input:1:1")
        .contains("--food \"almond meal=");
    assertThat(bench.must("list").out()).contains("No formulas yet.");
    Bench.Result made =
        bench
            .input(lines)
            .must(
                "new", "Bun", "--paste", "-", "--food", "almond meal=almond-flour", "--food",
                "butter=butter-unsalted", "--pieces", "3");
    assertThat(made.out()).startsWith("bun@1");
  }

  @Test
  void amountsAndLinesLeftOutAreSettledOnTheCommandLine() {
    Bench bench = Saltmarsh.empty(folder);
    String lines = "60 g water\n2-3 tbsp honey\n5 g xylophone dust\n";
    assertThat(bench.input(lines).run("new", "Bun", "--paste", "-").said())
        .contains("--amount \"2=2 tbsp\"");
    Bench.Result made =
        bench
            .input(lines)
            .must("new", "Bun", "--paste", "-", "--amount", "2=3 tbsp", "--leave-out", "3");
    assertThat(made.out()).startsWith("bun@1").contains("Left out as chosen: \"5 g xylophone");
    assertThat(bench.must("show", "bun").out()).contains("3 tbsp").doesNotContain("xylophone");
  }

  @Test
  void whatShouldBeKnownIsToldInBothForms() {
    Bench bench = Saltmarsh.empty(folder);
    String lines = "Serves 6\n60 g water\n";
    assertThat(bench.input(lines).must("new", "One", "--paste", "-").out())
        .contains("may count servings");
    assertThat(bench.input(lines).must("new", "Two", "--paste", "-", "--json").out())
        .contains("may count servings");
  }

  @Test
  void twoBeginningsAreWrongUsage() {
    Bench bench = Saltmarsh.empty(folder);
    assertThat(bench.run("new", "Bun", "--paste", "a", "--from", "b").code()).isEqualTo(2);
    assertThat(bench.run("new", "Bun", "--food", "a=b").code()).isEqualTo(2);
    assertThat(bench.run("new", "Bun", "--amount", "1=2 g").code()).isEqualTo(2);
    assertThat(bench.run("new", "Bun", "--leave-out", "1").code()).isEqualTo(2);
    assertThat(bench.run("new", "Bun", "--paste", "missing.txt").code()).isEqualTo(1);
  }
}
