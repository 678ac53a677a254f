package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.Write;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadInputTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"name\":\"Bun\",\"lines\":[ | bad.json:1:24 | The file ends before it is complete.",
        "{\"name\":\"Bun\",\"yield\":{\"pieces\":0}} | bad.json:1:33, field yield.pieces | The"
            + " number 0",
        "{\"lines\":[]} | bad.json | ",
        "{\"name\":\"Bun\",\"lines\":[{\"food\":\"water\",\"amount\":\"1e308 g\"}]}"
            + " | bad.json:1:49, field lines[0].amount | The amount \"1e308 g\"",
        "{\"name\":\"Bun\",\"lines\":[{\"food\":\"water\",\"amount\":\"-3 g\"}]}"
            + " | bad.json:1:49, field lines[0].amount | The amount \"-3 g\" is negative.",
        "[1, 2] | bad.json | ",
        "'' | bad.json | ",
      })
  void aBadFileIsRefusedWithItsPlace(String json, String where, String sentence)
      throws IOException {
    Files.writeString(folder.resolve("bad.json"), json);
    Bench.Result result =
        bench.run("revise", "seeded-lupin-bun", "--file", "bad.json", "--note", "x");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err())
        .startsWith("ovenmark: ")
        .contains("where: " + where)
        .contains("hint:")
        .doesNotContain("\tat ");
    assertThat(result.err()).contains(sentence == null ? "" : sentence);
  }

  @Test
  void allProblemsOfAFileAreToldAtOnce() throws IOException {
    Files.writeString(
        folder.resolve("bad.json"),
        """
        {"name": "Bun",
         "lines": [{"food": "water", "amount": "1e308 g"}, {"food": "Wa ter", "amount": "-3 g"}],
         "yield": {"pieces": 0}}
        """);
    assertThat(bench.run("new", "Bun", "--from", "bad.json").err())
        .startsWith("ovenmark: 4 things to mend:\n")
        .contains("where: bad.json:2:40, field lines[0].amount")
        .contains("where: bad.json:2:61, field lines[1].food")
        .contains("where: bad.json:3:22, field yield.pieces");
  }

  @Test
  void aFileThatIsTruncatedOnDiskHurtsNoOtherFormula() throws IOException {
    Path file = folder.resolve("formulas/seeded-lupin-bun.json");
    Files.writeString(file, Files.readString(file).substring(0, 200));
    assertThat(bench.must("list").out()).contains("seeded-lupin-bun *").contains("wheat-bun");
    Bench.Result result = bench.run("revise", "seeded-lupin-bun", "--note", "x");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err()).contains("where: formulas/seeded-lupin-bun.json:");
    assertThat(bench.run("show", "seeded-lupin-bun@edited").code()).isEqualTo(1);
    bench.must("show", "seeded-lupin-bun");
  }

  @Test
  void aFileThatWasCommittedDamagedHurtsNoOtherFormula() {
    try (GitStore store = GitStore.open(folder)) {
      store.write(
          Write.to(
                  GitStore.MAIN,
                  store.head(GitStore.MAIN),
                  new Author("Tobias", ""),
                  OffsetDateTime.parse("2026-03-02T18:00:00Z"),
                  "Edited with another program")
              .put("formulas/wheat-bun.json", "{\"name\": ".getBytes(StandardCharsets.UTF_8)));
    }
    Bench.Result list = bench.must("list");
    assertThat(list.out())
        .containsPattern("wheat-bun +2 .*cannot be read")
        .contains("formulas/wheat-bun.json:1:")
        .contains("low-carb-bun: met");
    assertThat(bench.run("show", "wheat-bun").code()).isEqualTo(1);
    bench.must("show", "wheat-bun@1");
    assertThat(bench.must("timeline", "wheat-bun").out()).contains("formulas/wheat-bun.json:1:");
    assertThat(bench.must("restore", "wheat-bun@1").out())
        .startsWith("wheat-bun@3")
        .contains("cannot be read, so nothing is said about what changed");
    bench.must("show", "wheat-bun");
  }

  @ParameterizedTest
  @CsvSource({
    "new,Bun,--as,../../etc",
    "new,Bun,--as,a/b",
    "new,Bun,--as,C:bun",
    "show,../notebook,--json,",
    "show,/etc/passwd,--json,",
    "variant,seeded-lupin-bun,../x,",
    "show,seeded-lupin-bun@-1,--json,",
    "show,seeded-lupin-bun@99,--json,",
    "show,seeded-lupin-bun/nut-free,--json,",
    "revise,seeded-lupin-bun,--file,.."
  })
  void whatLeadsOutsideOrNowhereIsRefused(String verb, String first, String second, String third) {
    List<String> words = Stream.of(verb, first, second, third).filter(w -> w != null).toList();
    Bench.Result result = bench.run(words.toArray(String[]::new));
    assertThat(result.code()).as(result.toString()).isEqualTo(1);
    assertThat(result.out()).isEmpty();
    assertThat(result.err().lines().count()).isLessThanOrEqualTo(5);
  }

  @Test
  void namesAndNotesCannotDriveTheTerminal() {
    bench.must("new", "<script>alert(1)</script>\u001B]0;x\u0007", "--as", "odd");
    bench.must(
        "revise",
        "odd",
        "--add",
        "water=1g",
        "--set",
        "water.note=\u009B31m\u202Ered",
        "--note",
        "a\u001B[2Jb\u007F");
    for (String[] words :
        new String[][] {
          {"show", "odd"},
          {"timeline", "odd"},
          {"compare", "odd"},
          {"list"},
          {"show", "odd", "--json"},
          {"show", "odd\u001B[31m"},
          {"list", "--odd\u001B[31m"}
        }) {
      Bench.Result result = bench.run(words);
      assertThat((result.out() + result.err()).codePoints().filter(c -> c != '\n'))
          .as(String.join(" ", words))
          .noneMatch(c -> Character.isISOControl(c) || c == 0x202e);
    }
    assertThat(bench.must("show", "odd").out()).startsWith("<script>alert(1)</script>␛]0;x␇\n");
  }

  @Test
  void aDeletedOrTruncatedIndexChangesNothing() throws IOException {
    String before = bench.must("timeline", "seeded-lupin-bun", "--json").out();
    Path kept = folder.resolve(".git/ovenmark");
    List<Path> files;
    try (Stream<Path> all = Files.walk(kept)) {
      files = all.filter(Files::isRegularFile).toList();
    }
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      byte[] bytes = Files.readAllBytes(file);
      Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
    }
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--json").out()).isEqualTo(before);
    try (Stream<Path> all = Files.walk(kept)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
    assertThat(bench.must("timeline", "seeded-lupin-bun", "--json").out()).isEqualTo(before);
  }
}
