package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.GitStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {
  @TempDir Path folder;

  @Test
  void withoutANameANotebookIsMade() {
    Bench bench = new Bench(folder);
    assertThat(bench.must("new", "--notebook", "bench").out())
        .startsWith("Made the notebook “bench” in " + folder.resolve("bench") + "\n");
    assertThat(bench.from(folder.resolve("bench/formulas/..")).run("list").code()).isZero();
    assertThat(bench.run("new", "--notebook", "bench").code()).isEqualTo(1);
  }

  @Test
  void aNotebookIsFoundFromAFolderWithinIt() throws IOException {
    Saltmarsh.empty(folder);
    Path within = Files.createDirectories(folder.resolve("photos/drafts"));
    assertThat(new Bench(within).must("list").out()).startsWith("Saltmarsh bench\n");
    assertThat(new Bench(within).run("list", "--notebook", ".").err())
        .contains("--notebook " + folder);
  }

  @Test
  void aRepositoryWithoutCommitIsRefusedAndMayBecomeANotebook() {
    GitStore.create(folder).close();
    Bench bench = new Bench(folder);
    assertThat(bench.run("list").code()).isEqualTo(1);
    assertThat(bench.run("list").err()).contains("hint:  Make it a notebook with: ovenmark new");
    bench.must("new", "--notebook", ".");
    assertThat(bench.must("list").out()).contains("No formulas yet.");
  }

  @Test
  void aFormulaMayBeginEmpty() {
    Bench.Result result = Saltmarsh.empty(folder).must("new", "Sesame crispbread");
    assertThat(result.shown())
        .isEqualTo(
            """
            sesame-crispbread@1 · 2026-03-02 09:01 · Ines · commit ··········
              “Begin Sesame crispbread”
            Add a line with: ovenmark revise sesame-crispbread --add water=180g --note "…"
            """);
  }

  @Test
  void theAuthorMayBeNamed() {
    Bench bench = Saltmarsh.empty(folder);
    assertThat(bench.must("new", "Bun", "--author", "Maren <maren@saltmarsh.example>").out())
        .contains(" · Maren · ");
    assertThat(bench.must("new", "Roll", "--author", "Maren").out()).contains(" · Maren · ");
    assertThat(bench.run("new", "Loaf", "--author", "<maren@saltmarsh.example>").code())
        .isEqualTo(1);
  }

  @Test
  void aNameWithoutLettersAToZGetsANumber() {
    Bench bench = Saltmarsh.empty(folder);
    assertThat(bench.must("new", "Ψωμί λούπινου").out())
        .startsWith("formula-1@1")
        .contains("filed as \"formula-1\"");
    assertThat(bench.must("new", "豆腐パン").out()).startsWith("formula-2@1");
    assertThat(bench.must("list").out()).contains("formula-1").contains("formula-2");
    assertThat(bench.must("show", "formula-1").out()).startsWith("Ψωμί λούπινου\n");
    assertThat(bench.must("new", "Ψωμί", "--as", "lupin-loaf").out()).startsWith("lupin-loaf@1");
  }

  @Test
  void aCopyBeginsWithTheContentOfARevision() {
    Bench bench = Saltmarsh.bench(folder);
    Bench.Result result =
        bench.must("new", "Caraway bun", "--from", "seeded-lupin-bun@2", "--add", "caraway=4g");
    assertThat(result.out())
        .startsWith("caraway-bun@1")
        .contains("“Begin Caraway bun from seeded-lupin-bun@2”");
    assertThat(bench.must("compare", "seeded-lupin-bun@2", "caraway-bun").out())
        .contains("caraway seed")
        .contains("5 more unchanged".replace("5", "6"));
  }

  @Test
  void aFileMayBeTheBeginning() throws IOException {
    Bench bench = Saltmarsh.empty(folder);
    Files.writeString(
        folder.resolve("cracker.json"),
        """
        {"name": "x", "lines": [{"food": "sesame-seeds", "amount": "80 g"}], "yield": {"pieces": 9}}
        """);
    bench.must("new", "Sesame cracker", "--from", "cracker.json");
    assertThat(bench.must("show", "sesame-cracker").out())
        .contains("sesame-seeds")
        .contains("9 pieces of 8.89 g dough");
    assertThat(bench.run("new", "Other", "--from", "missing.json").err())
        .contains("There is no such file.");
  }

  @Test
  void whatExistsIsNotMadeAgain() {
    Bench bench = Saltmarsh.bench(folder);
    assertThat(bench.run("new", "Wheat bun").err())
        .contains("There is a formula \"wheat-bun\" already.");
  }

  @Test
  void anUnknownGoalIsRefusedBeforeAnythingIsWritten() {
    Bench bench = Saltmarsh.bench(folder);
    assertThat(bench.run("new", "Bun", "--goal", "keto").err())
        .contains("There is no goal \"keto\" in this notebook.");
    assertThat(bench.must("list").out()).doesNotContain("\nbun ");
  }
}
