package io.ovenmark.story;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoryCodecTest {
  private static final String FILE = "stories/seeded-lupin-bun.json";
  private static final String FULL =
      """
      {
        "title": "A bun without wheat",
        "by": "Ines",
        "opening": "For the breakfast basket.",
        "closing": "It stays soft for a day.",
        "figures": ["mean_liking", "net_carbohydrate_g.per_piece"],
        "steps": [
          {"revision": 1},
          {"revision": 5, "heading": "Too wet", "words": "Gummy.\\nAll of them.",
           "photo": "none", "figure": "best_height_mm", "mood": "low"}
        ],
        "music": {"tempo": 90}
      }
      """;

  private static StoryPlan read(String text) {
    return StoryCodec.read(FILE, "seeded-lupin-bun", Optional.empty(), text.getBytes(UTF_8));
  }

  @Test
  void whatIsReadIsWrittenAgainWithFieldsThatAreNotKnown() {
    StoryPlan plan = read(FULL);
    String written = new String(StoryCodec.write(plan), UTF_8);

    assertThat(plan.steps().get(1).words()).contains("Gummy.\nAll of them.");
    assertThat(written).contains("\"mood\": \"low\"").contains("\"tempo\": 90").endsWith("}\n");
    assertThat(read(written)).isEqualTo(plan);
    assertThat(StoryCodec.write(read(written))).isEqualTo(written.getBytes(UTF_8));
  }

  @Test
  void everyFileThatCanBeReadFitsThePublishedSchema() {
    assertThat(SchemaCheck.errors("story", FULL)).isEmpty();
    assertThat(SchemaCheck.errors("story", "{}")).isEmpty();
    assertThat(read("{}").steps()).isEmpty();
    assertThat(SchemaCheck.errors("story", "{\"steps\": [{\"heading\": \"x\"}]}")).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"steps\": [{\"heading\": \"x\"}]} | revision | missing",
        "{\"steps\": [{\"revision\": 0}]} | revision | 1",
        "{\"steps\": [{\"revision\": 5}, {\"revision\": 5}]} | '' | each once",
        "{\"steps\": [{\"revision\": 5}, {\"revision\": 2}]} | '' | order of their revisions",
        "{\"figures\": [\"a\", \"a\"]} | '' | twice",
        "{\"figures\": [\"a\",\"b\",\"c\",\"d\",\"e\",\"f\",\"g\"]} | '' | at most 6",
        "{\"title\": 5} | title | text"
      })
  void whatIsWrongIsSaidWithPlaceAndRemedy(String text, String field, String words) {
    UnreadableException refused =
        catchThrowableOfType(UnreadableException.class, () -> read(text));

    assertThat(refused.problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(FILE);
              assertThat(problem.field()).endsWith(field);
              assertThat(problem.message() + " " + problem.hint()).contains(words);
            });
  }

  @Test
  void blanksAreNothingAndTextsHaveAnEnd() {
    assertThat(read("{\"title\": \"  \", \"steps\": []}").title()).isEmpty();
    UnreadableException tooLong =
        catchThrowableOfType(
            UnreadableException.class, () -> read("{\"title\": \"" + "x".repeat(121) + "\"}"));
    assertThat(tooLong.problems().get(0).message()).contains("120");
  }

  @Test
  void eachLineOfHistoryHasAFileOfItsOwn() {
    assertThat(StoryPlan.untold("bun", Optional.empty()).path()).isEqualTo("stories/bun.json");
    assertThat(StoryPlan.untold("bun", Optional.of("egg-free")).path())
        .isEqualTo("stories/bun/egg-free.json");
  }
}
