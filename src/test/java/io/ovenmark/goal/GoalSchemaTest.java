package io.ovenmark.goal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GoalSchemaTest {
  private static final String GOAL =
      """
      {
        "name": "Low-carbohydrate bun",
        "note": "Agreed with the guest's dietitian.",
        "limits": [
          {"figure": "net_carbohydrate_g", "at_most": 4},
          {"figure": "protein_g", "per": "100 g baked", "at_least": 8, "at_most": 30, "own": 1},
          {"figure": "liquid_ratio", "per": null, "at_least": 0.9, "at_most": null}
        ],
        "without": {"allergens": ["eggs", "gluten"], "foods": ["wheat-flour"], "own": 1},
        "net_carbohydrate": {"subtract": {"fibre": 1, "polyols": 0.5, "allulose": 0}},
        "own": {"x": 1}
      }
      """;

  private static Goal read(String json) {
    return GoalCodec.read("goals/a.json", "a", json.getBytes(UTF_8));
  }

  @Test
  void aFullGoalFitsBeforeAndAfterTheCodec() {
    assertThat(SchemaCheck.errors("goal", GOAL)).isEmpty();
    byte[] written = GoalCodec.write(read(GOAL));
    assertThat(SchemaCheck.errors("goal", written)).isEmpty();
    assertThat(GoalCodec.write(GoalCodec.read("goals/a.json", "a", written))).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"name\": \"x\"}",
        "{\"name\": \"x\", \"note\": null, \"limits\": null, \"without\": null,"
            + " \"net_carbohydrate\": null}",
        "{\"name\": \"x\", \"without\": {}, \"net_carbohydrate\": {}}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"pieces\", \"at_least\": 0,"
            + " \"at_most\": 10000000, \"per\": \"batch\"}]}"
      })
  void schemaAndCodecAcceptTheSame(String json) {
    assertThat(SchemaCheck.errors("goal", json)).isEmpty();
    assertThat(SchemaCheck.errors("goal", GoalCodec.write(read(json)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "{\"name\": \"\"}",
        "{\"name\": \"x\", \"limits\": [{}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"protein_g\"}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"protein_g\", \"at_most\": null}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"Protein\", \"at_most\": 1}]}",
        "{\"name\": \"x\", \"limits\": [{\"at_most\": 1}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"protein_g\", \"at_most\": \"4 g\"}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"protein_g\", \"at_most\": -1}]}",
        "{\"name\": \"x\", \"limits\": [{\"figure\": \"protein_g\", \"at_least\": 1,"
            + " \"per\": \"slice\"}]}",
        "{\"name\": \"x\", \"without\": {\"allergens\": [\"peanut butter\"]}}",
        "{\"name\": \"x\", \"without\": {\"allergens\": \"eggs\"}}",
        "{\"name\": \"x\", \"net_carbohydrate\": {\"subtract\": {\"fibre\": 1.1}}}",
        "{\"name\": \"x\", \"net_carbohydrate\": {\"subtract\": [\"fibre\"]}}"
      })
  void schemaAndCodecRefuseTheSame(String json) {
    assertThat(SchemaCheck.errors("goal", json)).isNotEmpty();
    assertThatExceptionOfType(UnreadableException.class).isThrownBy(() -> read(json));
  }
}
