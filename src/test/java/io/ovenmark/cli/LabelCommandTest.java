package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.LabelChoices;
import io.ovenmark.desk.ShowLabel;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelCommandTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void bothRegionsAreShownWithTheirRulesAndThatItIsAnAid() {
    String out = bench.must("label", "seeded-lupin-bun").out();

    assertThat(out)
        .contains("not an approved label")
        .contains("\nUnited States\n")
        .contains("\nEuropean Union\n")
        .contains("Total carbohydrate")
        .contains("of which saturates")
        .contains("21 CFR 101.9(c)(2)")
        .contains("No legal definition")
        .contains("\nCautions\n");
  }

  @Test
  void oneRegionCanBeChosenAndAnAllowanceEntered() {
    String out = bench.must("label", "seeded-lupin-bun", "--eu", "--loss", "12%").out();

    assertThat(out)
        .contains("\nEuropean Union\n", "an allowance that was entered")
        .doesNotContain("\nUnited States\n");
  }

  @Test
  void theJsonIsTheAnswerOfTheDesk() throws JsonProcessingException {
    JsonNode printed =
        new ObjectMapper()
            .readTree(
                bench
                    .must("label", "seeded-lupin-bun", "--us", "--reference", "bread", "--json")
                    .out());
    try (Desk desk = new Desk(Notebook.open(folder))) {
      LabelChoices order = new LabelChoices(null, null, "bread", List.of("us"));
      String asked =
          Json.compact(new ShowLabel(desk).call(desk.address("seeded-lupin-bun"), order));
      assertThat(printed).isEqualTo(new ObjectMapper().readTree(asked));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "seeded-lupin-bun --loss=much, 1",
    "seeded-lupin-bun --reference=bun, 1",
    "seeded-lupin-bun --energy=guess, 1",
    "no-bun, 1",
    "seeded-lupin-bun --colour=brown, 2",
    "--us, 2"
  })
  void whatCannotBeAskedIsRefused(String words, int code) {
    Bench.Result result = bench.run(("label " + words).split(" "));

    assertThat(result.code()).as(result.toString()).isEqualTo(code);
    assertThat(result.out()).isEmpty();
    assertThat(result.said()).startsWith("ovenmark: ");
  }
}
