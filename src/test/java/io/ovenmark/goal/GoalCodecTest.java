package io.ovenmark.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.json.Extras;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GoalCodecTest {
  private static final String FULL =
      """
      {
        "name": "at most 4 g net",
        "note": "for the seeded bun",
        "limits": [
          {
            "figure": "net_carbohydrate_g",
            "per": "piece",
            "at_most": 4
          },
          {
            "figure": "protein_g",
            "per": "100 g baked",
            "at_least": 8.5,
            "at_most": 30,
            "since": "spring"
          },
          {
            "figure": "liquid_ratio",
            "at_least": 0.6
          }
        ],
        "without": {
          "allergens": [
            "eggs",
            "gluten"
          ],
          "foods": [
            "sugar-granulated"
          ],
          "colours": "red"
        },
        "net_carbohydrate": {
          "subtract": {
            "fibre": 1,
            "polyols": 0.5,
            "allulose": 1,
            "inulin": 1
          }
        },
        "agreed_with": "the dietitian"
      }
      """;

  @Test
  void aCanonicalFileIsReadAndWrittenToTheSameBytes() {
    Goal goal = read(FULL);
    assertThat(goal.slug()).isEqualTo("four-net");
    assertThat(goal.limits()).hasSize(3);
    assertThat(goal.limits().get(1).basis()).isEqualTo(Basis.BAKED_100_G);
    assertThat(goal.limits().get(1).atLeast()).hasValue(8.5);
    assertThat(goal.withoutAllergens()).containsExactly("eggs", "gluten");
    assertThat(goal.withoutFoods()).containsExactly("sugar-granulated");
    assertThat(goal.netCarbohydrate()).contains(new NetCarbohydrate(1, 0.5, 1));
    assertThat(text(goal)).isEqualTo(FULL);
  }

  @Test
  void whatIsWrittenIsReadAsTheSameGoal() {
    Goal goal =
        new Goal(
            "four-net",
            "Ψωμί <script>",
            Optional.empty(),
            List.of(
                new Limit(
                    Figure.SODIUM,
                    Basis.DOUGH_100_G,
                    OptionalDouble.of(0),
                    OptionalDouble.of(0.1),
                    Extras.NONE)),
            List.of(),
            List.of("egg-whole"),
            Optional.of(NetCarbohydrate.ALL),
            Extras.NONE);
    assertThat(read(text(goal))).isEqualTo(goal);
  }

  @Test
  void theLeastGoalIsAName() {
    Goal goal = read("{\"name\": \"none yet\"}");
    assertThat(goal.limits()).isEmpty();
    assertThat(goal.withoutAllergens()).isEmpty();
    assertThat(goal.netCarbohydrate()).isEmpty();
    assertThat(read(text(goal))).isEqualTo(goal);
  }

  @Test
  void unknownFieldsOfAPartThatIsElseEmptySurvive() {
    Goal goal = read("{\"name\": \"n\", \"without\": {\"colours\": \"red\"}}");
    assertThat(read(text(goal))).isEqualTo(goal);
    assertThat(text(goal)).contains("\"colours\": \"red\"");
  }

  @Test
  void aLimitIsForAPieceWhenNothingElseIsSaid() {
    Goal goal = read("{\"name\": \"n\", \"limits\": [{\"figure\": \"fat_g\", \"at_most\": 9}]}");
    assertThat(goal.limits().get(0).basis()).isEqualTo(Basis.PIECE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}                                                   | 1 | 1,1,0.5",
        "{\"subtract\": {\"fibre\": 1}}                       | 0 | 1,0,0",
        "{\"subtract\": {\"fibre\": 1, \"polyols\": 0.5}}     | 0 | 1,0.5,0",
      })
  void thePolicySubtractsWhatItNamesAndAllWhenItNamesNothing(
      String json, int everything, String shares) {
    NetCarbohydrate read = read("{\"name\": \"n\", \"net_carbohydrate\": " + json + "}")
        .netCarbohydrate()
        .orElseThrow();
    String[] parts = shares.split(",");
    assertThat(read)
        .isEqualTo(
            everything == 1
                ? NetCarbohydrate.ALL
                : new NetCarbohydrate(
                    Double.parseDouble(parts[0]),
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2])));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"limits\": []}                        | goals/g.json:1:1, field name"
            + " | The field is missing.",
        "{\"name\": 4}                           | goals/g.json:1:10, field name"
            + " | There is the number 4 where a text in quotes belongs.",
        "{\"name\": \"n\", \"limits\": {}}       | goals/g.json:1:25, field limits"
            + " | There is an object in { } where a list in [ ] belongs.",
        "{\"name\": \"n\", \"limits\": [4]}      | goals/g.json:1:26, field limits[0]"
            + " | There is the number 4 where an object in { } belongs.",
        "{\"name\": \"n\", \"limits\": [{}]}     | goals/g.json:1:26, field limits[0].figure"
            + " | The limit names no figure.",
        "{\"name\": \"n\", \"limits\": [{\"figure\": \"fat\", \"at_most\": 1}]}"
            + " | goals/g.json:1:37, field limits[0].figure | \"fat\" is not a figure.",
        "{\"name\": \"n\", \"limits\": [{\"figure\": \"fat_g\", \"per\": \"slice\","
            + " \"at_most\": 1}]}"
            + " | goals/g.json:1:53, field limits[0].per"
            + " | \"slice\" is not what a figure can be stated for.",
        "{\"name\": \"n\", \"limits\": [{\"figure\": \"fat_g\"}]}"
            + " | goals/g.json:1:26, field limits[0] | The limit on fat has no bound.",
        "{\"name\": \"n\", \"limits\": [{\"figure\": \"fat_g\", \"at_most\": -1}]}"
            + " | goals/g.json:1:57, field limits[0].at_most | The number -1 is out of range.",
        "{\"name\": \"n\", \"limits\": [{\"figure\": \"fat_g\", \"at_least\": 2,"
            + " \"at_most\": 1}]}"
            + " | goals/g.json:1:26, field limits[0]"
            + " | The bounds on fat contradict each other.",
        "{\"name\": \"n\", \"without\": {\"allergens\": [\"Eggs\"]}}"
            + " | goals/g.json:1:40, field without.allergens"
            + " | \"Eggs\" is not an allergen that is known here.",
        "{\"name\": \"n\", \"without\": {\"foods\": [\"Egg White\"]}}"
            + " | goals/g.json:1:36, field without.foods"
            + " | \"Egg White\" cannot be a short name.",
        "{\"name\": \"n\", \"net_carbohydrate\": {\"subtract\": {\"fibre\": 2}}}"
            + " | goals/g.json:1:58, field net_carbohydrate.subtract.fibre"
            + " | The number 2 is out of range.",
      })
  void aFaultIsNamedWithItsPlace(String json, String where, String message) {
    Problem problem = problems(json).get(0);
    assertThat(problem.where()).isEqualTo(where);
    assertThat(problem.message()).isEqualTo(message);
    assertThat(problem.hint()).isNotBlank();
  }

  @Test
  void everyFaultIsReportedAtOnce() {
    List<Problem> problems =
        problems(
            """
            {
              "limits": [ { "figure": "nothing", "at_least": -2 } ],
              "without": { "allergens": [ "gravel", "eggs", "sand" ] }
            }
            """);
    assertThat(problems).extracting(problem -> problem.at().line()).containsExactly(1, 2, 2, 3, 3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "{\"name\": \"n\"", "{\"name\": \"n\", \"limits\": null,}"})
  void whatIsNoJsonObjectIsRefused(String json) {
    assertThat(problems(json)).hasSize(1);
  }

  @Test
  void nullsCountAsAbsent() {
    Goal goal =
        read("{\"name\": \"n\", \"note\": null, \"limits\": null, \"without\": null}");
    assertThat(goal.limits()).isEmpty();
  }

  @Test
  void aGoalCannotBeMadeOfWordsThatMeanNothing() {
    assertThatThrownBy(() -> goal("n", List.of("gravel"), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not an allergen");
    assertThatThrownBy(() -> goal("n", List.of(), List.of("Egg White")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> goal(" ", List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("needs a name");
  }

  private static Goal goal(String name, List<String> allergens, List<String> foods) {
    return new Goal(
        "g",
        name,
        Optional.empty(),
        List.of(),
        allergens,
        foods,
        Optional.empty(),
        Extras.NONE);
  }

  private static Goal read(String json) {
    return GoalCodec.read(
        "goals/four-net.json", "four-net", json.getBytes(StandardCharsets.UTF_8));
  }

  private static List<Problem> problems(String json) {
    return catchThrowableOfType(
            UnreadableException.class,
            () -> GoalCodec.read("goals/g.json", "g", json.getBytes(StandardCharsets.UTF_8)))
        .problems();
  }

  private static String text(Goal goal) {
    return new String(GoalCodec.write(goal), StandardCharsets.UTF_8);
  }
}
