package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviseCommandTest {
  @TempDir Path folder;
  private Bench bench;
  private Path file;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
    file = folder.resolve("formulas/seeded-lupin-bun.json");
  }

  /** Edits the file on disk as a person does at a time. */
  private void edit(String from, String to, String time) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to));
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse(time)));
  }

  private String amount(String address, String line) {
    try (Notebook notebook = Notebook.open(folder)) {
      return notebook
          .formula(notebook.revision(Address.parse(address)))
          .line(line)
          .orElseThrow()
          .amount()
          .toString();
    }
  }

  @Test
  void fieldsAreChangedInTheOrderGiven() {
    Bench.Result result =
        bench.must(
            "revise",
            "seeded-lupin-bun",
            "--add",
            "caraway=2g after salt",
            "--set",
            "caraway.note=crushed",
            "--set",
            "water+=4g",
            "--replace",
            "butter-unsalted=oil-coconut 18 g",
            "--remove",
            "flaxseed",
            "--note",
            "Coconut and seed");
    assertThat(result.out())
        .startsWith("seeded-lupin-bun@4 · 2026-03-02 ")
        .contains(
            """
            Against seeded-lupin-bun@3
              Removed flaxseed, 45 g.
              Water 188 g → 192 g (+4 g).
              Replaced butter, unsalted with coconut oil, 20 g → 18 g.
              Added caraway seed, 2 g.
            """)
        .contains("\n  Goal: Low-carbohydrate bun: met\n")
        .contains("Copied into the pantry: oil-coconut, caraway.");
  }

  @Test
  void aRuleThatBreaksIsTold() {
    Bench.Result result =
        bench.must(
            "revise", "seeded-lupin-bun", "--add", "wheat-flour-bread=80g", "--note", "Wheat");
    assertThat(result.out())
        .contains("  Goal: Low-carbohydrate bun: not met\n")
        .contains("at most 8 g net carbohydrate a piece: newly broken\n");
  }

  @Test
  void withoutANoteOneIsProposed() {
    Bench.Result refused = bench.run("revise", "seeded-lupin-bun", "--set", "water=192g");
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("This one would be: “Water 188 g → 192 g (+4 g)”");
    bench.must("revise", "seeded-lupin-bun", "--set", "water=192g", "--note-from-changes");
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--limit", "1").out())
        .contains("“Water 188 g → 192 g (+4 g)”");
  }

  @Test
  void aNoteFromManyChangesStaysShort() {
    bench.must(
        "revise",
        "seeded-lupin-bun",
        "--set",
        "water=192g",
        "--set",
        "salt=5g",
        "--set",
        "flaxseed=40g",
        "--set",
        "bake.minutes=26",
        "--set",
        "yield.pieces=8",
        "--note-from-changes");
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--limit", "1").out())
        .containsPattern("“Flaxseed 45 g → 40 g .*; \\d more changes”");
  }

  @Test
  void whatIsTheSameIsNotCommitted() {
    Bench.Result result =
        bench.must("revise", "seeded-lupin-bun", "--set", "water=188g", "--note", "Same");
    assertThat(result.out())
        .isEqualTo("Nothing to commit: seeded-lupin-bun@3 says the same already.\n");
  }

  @Test
  void anEditOfAnEarlierRevisionIsMergedByMeaning() {
    Bench.Result result =
        bench.must("revise", "seeded-lupin-bun@2", "--set", "salt=5g", "--note", "Salt by mass");
    assertThat(result.out())
        .contains(
            "Merged with seeded-lupin-bun@3 by Ines (“Crumb was dry”), which came in between.\n")
        .contains("Table salt 3/4 tsp → 5 g.");
    assertThat(amount("seeded-lupin-bun@4", "water")).isEqualTo("188 g");
  }

  @Test
  void aConflictIsSettledByTakingSides() {
    String[] same = {
      "revise", "seeded-lupin-bun", "--base", "2", "--set", "water=200g", "--note", "Wet", "--take"
    };
    assertThat(bench.run(with(same, "salt=mine")).err())
        .contains("Nothing is to be chosen at \"salt\".");
    assertThat(bench.run(with(same, "water")).err()).contains("\"water\" chooses no side.");
    assertThat(bench.must(with(same, "water.amount=theirs")).out()).startsWith("Nothing to commit");
    bench.must(with(same, "all=mine"));
    assertThat(amount("seeded-lupin-bun@4", "water")).isEqualTo("200 g");
  }

  private static String[] with(String[] words, String last) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = last;
    return all;
  }

  @Test
  void aWholeFileMayComeFromStandardInput() throws IOException {
    String json = Files.readString(file).replace("\"188 g\"", "\"191 g\"");
    bench.input(json).must("revise", "seeded-lupin-bun", "--file", "-", "--note", "Typed");
    assertThat(amount("seeded-lupin-bun", "water")).isEqualTo("191 g");
  }

  @Test
  void aFileEditedByHandIsCommittedAndPutInOrderOnDisk() throws IOException {
    edit("\"188 g\"", "   \"195 g\"", "2026-03-02T20:00:00Z");
    assertThat(bench.must("list").out()).contains("seeded-lupin-bun *");
    bench.must("revise", "seeded-lupin-bun", "--note", "By hand");
    assertThat(amount("seeded-lupin-bun@4", "water")).isEqualTo("195 g");
    assertThat(bench.must("list").out()).doesNotContain("*");
    assertThat(Files.readString(file)).contains("\"amount\": \"195 g\"");
  }

  @Test
  void aHandEditDoesNotUndoARevisionThatCameLater() throws IOException {
    edit("\"188 g\"", "\"195 g\"", "2026-03-02T09:06:20Z");
    Bench.Result other =
        bench.must("revise", "seeded-lupin-bun", "--set", "salt=5g", "--note", "Salt by mass");
    assertThat(other.out())
        .contains("formulas/seeded-lupin-bun.json stays on disk as it was edited by hand.")
        .contains("ovenmark revise seeded-lupin-bun --base 3");
    edit("\"45 g\"", "\"46 g\"", "2026-03-02T09:06:40Z");
    Bench.Result result = bench.must("revise", "seeded-lupin-bun", "--note", "By hand");
    assertThat(result.out()).contains("Merged with seeded-lupin-bun@4 by Ines");
    assertThat(amount("seeded-lupin-bun@5", "salt")).isEqualTo("5 g");
    assertThat(amount("seeded-lupin-bun@5", "water")).isEqualTo("195 g");
    assertThat(Files.readString(file)).contains("\"5 g\"").contains("\"195 g\"");
    assertThat(bench.must("list").out()).doesNotContain("*");
  }

  @Test
  void onlyOtherWhiteSpaceIsNoRevision() throws IOException {
    String before = Files.readString(file);
    edit("\"lines\"", "  \"lines\"", "2026-03-02T20:00:00Z");
    Bench.Result result = bench.must("revise", "seeded-lupin-bun");
    assertThat(result.out()).startsWith("Nothing to commit");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void aFileThatWasPutThereByHandBecomesAFormula() throws IOException {
    Files.writeString(
        folder.resolve("formulas/plain-cracker.json"),
        "{\"name\": \"Plain cracker\", \"lines\": [{\"food\": \"water\", \"amount\": \"60 g\"}]}");
    Bench.Result result = bench.must("revise", "plain-cracker");
    assertThat(result.out()).startsWith("plain-cracker@1").contains("“Begin Plain cracker”");
    assertThat(bench.must("list").out()).contains("plain-cracker").doesNotContain("*");
  }

  @Test
  void theFilesOnDiskAreNotAVariantS() throws IOException {
    edit("\"188 g\"", "\"195 g\"", "2026-03-02T20:00:00Z");
    assertThat(bench.run("revise", "seeded-lupin-bun/egg-free", "--note", "x").said())
        .contains(
            "The files on disk belong to seeded-lupin-bun, not to seeded-lupin-bun/egg-free.");
  }

  @Test
  void nothingEditedIsRefusedWithTheWayOn() {
    Bench.Result result = bench.run("revise", "seeded-lupin-bun", "--note", "x");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.said()).contains("there is nothing to commit").contains("--set");
  }

  @Test
  void anAmountWithoutKnownWeightIsToldAtOnce() {
    assertThat(
            bench.must("revise", "seeded-lupin-bun", "--set", "water=188x", "--note", "Slip").out())
        .contains("How much water weighs is not known: \"x\" of water has no known weight");
  }

  @Test
  void unknownFoodLineAndGoalAreRefused() {
    assertThat(bench.run("revise", "seeded-lupin-bun", "--add", "lupin=3g", "--note", "x").err())
        .contains("The pantry has no food \"lupin\".");
    assertThat(bench.run("revise", "seeded-lupin-bun", "--set", "wter=3g", "--note", "x").err())
        .contains("did you mean \"water\"?");
    assertThat(bench.run("revise", "seeded-lupin-bun", "--set", "goal=keto", "--note", "x").err())
        .contains("There is no goal \"keto\"")
        .contains("Its goals are egg-free-bun, low-carb-bun.");
    assertThat(bench.run("revise", "lupin", "--set", "water=3g", "--note", "x").err())
        .contains("Did you mean seeded-lupin-bun?");
  }
}
