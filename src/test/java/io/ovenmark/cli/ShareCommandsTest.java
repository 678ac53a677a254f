package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.ShareFormula;
import io.ovenmark.desk.TakeIn;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.store.Author;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShareCommandsTest {
  @TempDir Path folder;
  @TempDir Path other;
  private Bench bench;
  private Bench colleague;
  private Path bundle;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
    colleague = new Bench(other);
    colleague.must("new", "--notebook", other.toString());
    bundle = other.resolve("bun.bundle");
  }

  @Test
  void aFormulaGoesFromOneNotebookToAnother() {
    assertThat(bench.must("share", "seeded-lupin-bun", "--look").out()).contains("Written by:");
    assertThat(bench.must("share", "seeded-lupin-bun", bundle.toString()).out())
        .startsWith("Shared Seeded lupin bun as ")
        .contains("seeded-lupin-bun@3");
    assertThat(colleague.must("take-in", "bun.bundle", "--look").out())
        .startsWith("Seeded lupin bun would come in as seeded-lupin-bun");
    assertThat(colleague.must("take-in", "bun.bundle").out())
        .startsWith("Took in Seeded lupin bun as seeded-lupin-bun@3")
        .contains("ovenmark undo");
    assertThat(colleague.must("timeline", "seeded-lupin-bun").out())
        .isEqualTo(bench.must("timeline", "seeded-lupin-bun").out());
    assertThat(colleague.run("take-in", "bun.bundle").code()).isEqualTo(1);
    assertThat(colleague.must("take-in", "bun.bundle", "--as", "harbour-bun").out())
        .contains("harbour-bun@3");
    assertThat(colleague.must("check").out())
        .contains("\"wheat-bun\", is not in this notebook.")
        .contains("nothing is wrong");
  }

  @Test
  void theFormulaThatItWasRebuiltFromGoesAlongOnWishOnly() {
    assertThat(bench.must("share", "seeded-lupin-bun", "--look").out())
        .contains("Rebuilt from wheat-bun, which stays");
    bench.must("share", "seeded-lupin-bun", bundle.toString(), "--with-reference");
    assertThat(colleague.must("take-in", "bun.bundle").out()).contains("wheat-bun");
    assertThat(colleague.must("list").out()).contains("wheat-bun");
  }

  @Test
  void aFolderWillDoBothWays() {
    bench.must("share", "seeded-lupin-bun", other.resolve("shared").toString());
    assertThat(colleague.must("take-in", "shared").out()).startsWith("Took in Seeded lupin bun");
    assertThat(other.resolve("formulas/seeded-lupin-bun.json")).exists();
  }

  @Test
  void jsonIsTheAnswerOfTheDesk() {
    By by = new By(new Author("Ines", ""), OffsetDateTime.parse("2026-03-01T08:00:00Z"));
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(bench.must("share", "seeded-lupin-bun", "--look", "--json").out())
          .isEqualTo(
              Json.readable(
                  new ShareFormula(desk)
                      .preview("seeded-lupin-bun", ShareFormula.Choice.USUAL, by)));
    }
    bench.must("share", "seeded-lupin-bun", bundle.toString(), "--json");
    try (Desk desk = new Desk(Notebook.open(other))) {
      assertThat(colleague.must("take-in", "bun.bundle", "--look", "--json").out())
          .isEqualTo(
              Json.readable(
                  new TakeIn(desk).look(bundle, TakeIn.Choice.NONE, Progress.UNWATCHED)));
    }
  }

  @Test
  void whatCannotBeDoneIsSaid() throws IOException {
    Files.writeString(bundle, "Dear colleague");

    assertThat(bench.run("share", "seeded-lupin-bun").code()).isEqualTo(2);
    assertThat(bench.run("share", "seeded-lupin-bun", bundle.toString()).said())
        .contains("already");
    assertThat(bench.run("share", "no-such-bun", "--look").code()).isEqualTo(1);
    assertThat(colleague.run("take-in", "bun.bundle").said())
        .contains("The bundle cannot be taken in. It is not a Git bundle.");
    assertThat(colleague.run("take-in", "missing.bundle").said()).contains("no such file");
    assertThat(Files.readString(bundle)).isEqualTo("Dear colleague");
  }
}
