package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsonOutputTest {
  private static final Address BUN = Address.parse("seeded-lupin-bun");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  private JsonNode json(int code, String... words) throws JsonProcessingException {
    Bench.Result result = bench.run(words);
    assertThat(result.code()).as(result.toString()).isEqualTo(code);
    assertThat(result.err()).isEmpty();
    return MAPPER.readTree(result.out());
  }

  @Test
  void readingCommandsPrintTheAnswersOfTheDesk() {
    try (Desk desk = new Desk(Notebook.open(folder))) {
      assertThat(bench.must("list", "--json").out())
          .isEqualTo(Json.readable(new ListFormulas(desk).call()));
      assertThat(bench.must("show", "seeded-lupin-bun@2", "--json").out())
          .isEqualTo(Json.readable(new ShowFormula(desk).call(BUN.at(2))));
      assertThat(bench.must("timeline", "seeded-lupin-bun", "--json").out())
          .isEqualTo(Json.readable(new ShowTimeline(desk).call(BUN)));
      assertThat(bench.must("compare", "seeded-lupin-bun@1", "seeded-lupin-bun@3", "--json").out())
          .isEqualTo(Json.readable(new CompareRevisions(desk).call(BUN.at(1), BUN.at(3))));
    }
  }

  @Test
  void revisingPrintsWhatWasCommitted() throws JsonProcessingException {
    JsonNode json =
        json(
            0,
            "revise",
            "seeded-lupin-bun@2",
            "--set",
            "salt=5g",
            "--add",
            "caraway=2g",
            "--note",
            "Seed",
            "--json");
    assertThat(json.at("/outcome").asText()).isEqualTo("committed");
    assertThat(json.at("/revision/address").asText()).isEqualTo("seeded-lupin-bun@4");
    assertThat(json.at("/revision/commit").asText()).hasSize(40);
    assertThat(json.at("/base/revision").asInt()).isEqualTo(2);
    assertThat(json.at("/changes/0/kind").asText()).isEqualTo("amount_changed");
    assertThat(json.at("/comparison/from/address").asText()).isEqualTo("seeded-lupin-bun@3");
    assertThat(json.at("/merged_with/0/address").asText()).isEqualTo("seeded-lupin-bun@3");
    assertThat(json.at("/foods_added/0").asText()).isEqualTo("caraway");
    assertThat(json.at("/conflicts")).isEmpty();
  }

  @Test
  void aConflictIsToldAsJsonToo() throws JsonProcessingException {
    JsonNode json =
        json(3, "revise", "seeded-lupin-bun@2", "--set", "water=200g", "--note", "Wet", "--json");
    assertThat(json.at("/outcome").asText()).isEqualTo("conflict");
    assertThat(json.at("/revision/address").asText()).isEqualTo("seeded-lupin-bun@3");
    assertThat(json.at("/conflicts/0/field").asText()).isEqualTo("lines.water.amount");
    assertThat(json.at("/conflicts/0/base").asText()).isEqualTo("180 g");
    assertThat(json.at("/conflicts/0/ours").asText()).isEqualTo("200 g");
    assertThat(json.at("/conflicts/0/theirs").asText()).isEqualTo("188 g");
    assertThat(json(3, "carry", "seeded-lupin-bun/egg-free", "--json").at("/outcome").asText())
        .isEqualTo("conflict");
  }

  @Test
  void everyWritingCommandPrintsJson(@TempDir Path other) throws JsonProcessingException {
    assertThat(json(0, "new", "Bun", "--json").at("/revision/address").asText()).isEqualTo("bun@1");
    assertThat(json(0, "variant", "seeded-lupin-bun", "a", "--json").at("/from/revision").asInt())
        .isEqualTo(3);
    assertThat(
            json(0, "carry", "seeded-lupin-bun/egg-free", "--take", "all=main", "--json")
                .at("/outcome")
                .asText())
        .isEqualTo("carried");
    assertThat(json(0, "restore", "seeded-lupin-bun@1", "--json").at("/outcome").asText())
        .isEqualTo("committed");
    assertThat(
            json(0, "publish", "seeded-lupin-bun@1", "--note", "x", "--json").at("/tag").asText())
        .isEqualTo("published/seeded-lupin-bun/1");
    assertThat(json(0, "undo", "--json").at("/formulas/0/formula").asText())
        .isEqualTo("seeded-lupin-bun");
    assertThat(
            json(0, "new", "--notebook", other.resolve("made").toString(), "--json")
                .at("/title")
                .asText())
        .isEqualTo("made");
  }
}
