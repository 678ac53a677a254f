package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardCommandTest {
  private static final String BUN = "seeded-lupin-bun";

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  private String form(String form, String... more) {
    List<String> words = new ArrayList<>(List.of("card", BUN, "--form", form));
    words.addAll(List.of(more));
    return bench.must(words.toArray(String[]::new)).out();
  }

  @Test
  void everyFormHoldsTheAmountsAndTheCautions() throws JsonProcessingException {
    for (String form : List.of("html", "markdown", "text", "short", "json-ld")) {
      assertThat(form(form)).contains("Seeded lupin bun", "lupin", "do not taste the dough");
    }
    assertThat(form("html")).startsWith("<!DOCTYPE html>");
    assertThat(form("markdown")).startsWith("# ");
    JsonNode data = new ObjectMapper().readTree(form("json-ld"));
    assertThat(data.get("@type").asText()).isEqualTo("Recipe");
  }

  @Test
  void aCautionIsWordedLongerByItsKeyWhichTheJsonNames() throws JsonProcessingException {
    JsonNode card = new ObjectMapper().readTree(bench.must("card", BUN, "--json").out());
    List<String> keys = new ArrayList<>();
    card.get("cautions").forEach(each -> keys.add(each.get("caution").asText()));

    assertThat(keys).contains("egg", "medical-diets");
    assertThat(form("text", "--word", "egg=Ask each guest.", "--word", "medical-diets="))
        .contains("and follow local food codes. Ask each guest.")
        .contains("with those who treat them.");
  }

  @Test
  void whatTheMethodNamesAndNoLineWeighsIsARemarkBesideTheCard() {
    String shiny = "method.+=Brush with honey and bake.";
    Bench.Result revised = bench.must("revise", BUN, "--set", shiny, "--note", "A shine");
    assertThat(revised.out()).contains("names “honey”, but no line weighs that");
    revised = bench.must("revise", BUN, "--set", "water+=2g", "--note", "Softer");
    assertThat(revised.out()).doesNotContain("honey");

    Bench.Result result = bench.must("card", BUN, "--form", "text");

    assertThat(result.err()).contains("names “honey”, but no line weighs that");
    assertThat(result.out()).doesNotContain("no line weighs");
    assertThat(bench.must("show", BUN).out()).contains("names “honey”");
    assertThat(bench.must("card", BUN, "--json").err()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "--word, xylitol=Careful., There is no caution",
    "--word, Careful, does not name a caution",
    "--paper, a5, Choose a4",
    "--masses, stone, Choose g or oz",
    "--times, twice, is not a number of times",
    "--form, pdf, Choose html",
    "--photo, nowhere.jpg, No bake of this formula has the photo",
  })
  void whatIsNotUnderstoodIsRefusedWithWhatWouldDo(String option, String value, String message) {
    Bench.Result ran = bench.run("card", BUN, option, value);

    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err()).contains(message);
  }
}
