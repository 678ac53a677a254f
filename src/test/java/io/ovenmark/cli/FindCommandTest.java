package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindCommandTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void whatWasFoundIsToldFormulaByFormula() {
    String out = bench.must("find", "--ingredient", "water").out();
    assertThat(out)
        .startsWith("5 revisions and bakes in 2 formulas\n")
        .contains("\nSeeded lupin bun · seeded-lupin-bun\n")
        .contains("Water 180 g → 188 g");
    assertThat(folder.resolve(".git/ovenmark/search")).exists();
  }

  @Test
  void bakesAreToldWithTheirFindings() {
    String out = bench.must("find", "--finding", "dry").out();
    assertThat(out)
        .startsWith("1 revision or bake in 1 formula\n")
        .contains("bake 2026-")
        .contains("dry");
  }

  @Test
  void moreThanTheLimitIsCounted() {
    String out =
        bench
            .must("find", "--person", "ines", "--formula", "seeded-lupin-bun", "--limit", "1")
            .out();
    assertThat(out).contains("  … and ").contains(" earlier\n");
  }

  @Test
  void nothingFoundIsNoError() {
    assertThat(bench.must("find", "unheard").out()).isEqualTo("Nothing fits.\n");
  }

  @ParameterizedTest
  @CsvSource({
    "--since=soon rest, 1",
    "--formula=no-bun rest, 1",
    "--kind=wet rest, 1",
    "--limit=0 rest, 2",
    "--limit=many rest, 2",
    "--formula=seeded-lupin-bun, 2",
    "--colour=brown, 2"
  })
  void whatCannotBeAskedIsRefused(String words, int code) {
    Bench.Result result = bench.run(("find " + words).split(" "));
    assertThat(result.code()).as(result.toString()).isEqualTo(code);
    assertThat(result.out()).isEmpty();
    assertThat(result.said()).startsWith("ovenmark: ");
  }

  @Test
  void theAnswerIsJsonToo() throws JsonProcessingException {
    JsonNode json =
        new ObjectMapper().readTree(bench.must("find", "begin", "--json").out());
    assertThat(json.at("/asked/words").asText()).isEqualTo("begin");
    assertThat(json.at("/count").isNumber()).isTrue();
    assertThat(json.at("/formula_count").isNumber()).isTrue();
    assertThat(json.at("/unread").asInt(-1)).isZero();
    JsonNode hit = json.at("/formulas/0/hits/0");
    assertThat(hit.at("/kind").asText()).isEqualTo("revision");
    assertThat(hit.at("/title/0/match").isBoolean()).isTrue();
    assertThat(json.at("/narrow/people/0/value").asText()).isEqualTo("Ines");
  }

  @Test
  void aDeletedOrDamagedIndexIsMadeAnew() throws Exception {
    String before = bench.must("find", "--ingredient", "water").out();
    Path index = folder.resolve(".git/ovenmark/search");
    Files.writeString(index, "nonsense");
    assertThat(bench.must("find", "--ingredient", "water").out()).isEqualTo(before);
    Files.delete(index);
    assertThat(bench.must("find", "--ingredient", "water").out()).isEqualTo(before);
  }
}
