package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.ovenmark.bake.Piece;
import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The answers as programs see them. Whoever reads them relies on every name, so a golden file that
 * changes is a change of the contract.
 */
class ContractTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Map<String, Object> ANSWERS = new LinkedHashMap<>();

  private static final List<Piece> WINDOW =
      PieceText.read(
          List.of(),
          List.of(
              "a 190C 21min core=91C crust=1.4 finding=pale",
              "b 190C 28min core=97C crust=2.2 log='8min 45C, 20min 88C, 28min 97C'",
              "c 210C 20min core=95C crust=2.4 finding='even crumb' liking=8,7",
              "d 210C 26min core=99C crust=3.3 finding=dry"));

  private static final CardOrder CARD =
      new CardOrder(
          "letter",
          null,
          "1.5",
          null,
          "Two days in a closed box.",
          List.of("Ask each guest."),
          List.of("egg=Use a probe in the middle."));

  @TempDir static Path temporary;
  private static LupinBench bench;

  @BeforeAll
  static void ask() {
    bench = new LupinBench(temporary);
    Desk desk = bench.desk();
    Address bun = Address.parse("seeded-lupin-bun");
    Views.FormulaSheet sheet = new ShowFormula(desk).call(bun.at(2));
    ANSWERS.put("list", new ListFormulas(desk).call());
    ANSWERS.put("show", sheet);
    ANSWERS.put("timeline", new ShowTimeline(desk).call(bun));
    ANSWERS.put("compare", new CompareRevisions(desk).call(bun.at(2), bun.at(3)));
    ANSWERS.put("bake", sheet.bakes().get(0));
    ANSWERS.put("levers", new FindLevers(desk).call(bun, LeverOrder.of("liquid ratio 1.9")));
    ANSWERS.put(
        "replace",
        new ReplaceFood(desk).call(bun, ReplaceOrder.of("egg-whole").asking("milk-whole")));
    ANSWERS.put(
        "rebuild",
        new BesideReference(desk)
            .call(bun, Optional.of(Address.parse("sesame-crispbread"))));
    ANSWERS.put("causes", new FindCauses(desk).call(bun, CauseOrder.of("dense")));
    ANSWERS.put("mattered", new ShowMattered(desk).call(bun, true, Optional.empty()));
    ANSWERS.put("scale", new ScaleFormula(desk).call(bun, ScaleOrder.ofPieces("10")));
    bench.fixture().bake(bench.bun().at(3), WINDOW);
    ANSWERS.put(
        "window",
        new FindWindow(desk).call(bun.at(3), WindowOrder.of("dough", "crust 2 to 3", "not dry")));
    ANSWERS.put("tasting", tasting(desk));
    ANSWERS.put("label", new ShowLabel(desk).call(bun.at(2), LabelChoices.USUAL));
    ANSWERS.put("card", new MakeCard(desk).call(bun.at(2), CARD));
    TellStory tell = new TellStory(desk);
    ANSWERS.put("story", tell.call(tell.plan(bun)));
    By by = bench.fixture().by();
    ANSWERS.put(
        "share",
        new ShareFormula(desk).preview("seeded-lupin-bun", ShareFormula.Choice.USUAL, by));
    Path bundle = temporary.resolve("bun.bundle");
    new ShareFormula(desk)
        .bundle("seeded-lupin-bun", ShareFormula.Choice.USUAL, bundle, by, Progress.UNWATCHED);
    ANSWERS.put("take-in", new TakeIn(desk).look(bundle, TakeIn.Choice.NONE, Progress.UNWATCHED));
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  static Set<String> answers() {
    return ANSWERS.keySet();
  }

  private static TastingViews.TastingSheet tasting(Desk desk) {
    List<String> samples = List.of("seeded-lupin-bun@2", "seeded-lupin-bun@3");
    PlanTasting.Request request =
        new PlanTasting.Request(
            "just-about-right", samples, 3, "", List.of("sweet"), "After lunch", 7);
    TastingViews.TastingSheet tasting = new PlanTasting(desk).call(request, bench.fixture().by());
    for (TastingViews.SheetView sheet : tasting.sheets()) {
      String text =
          sheet.codes().get(0) + "=" + (5 + sheet.number()) + ",sweet=" + (sheet.number() - 2)
              + " " + sheet.codes().get(1) + "=6,sweet=0";
      tasting =
          new EnterAnswer(desk)
              .text(
                  tasting.formula(),
                  tasting.id(),
                  sheet.number(),
                  text,
                  EnterAnswer.Words.NONE,
                  false,
                  bench.fixture().by());
    }
    return tasting;
  }

  private static JsonNode json(String answer) {
    try {
      return MAPPER.readTree(Json.compact(ANSWERS.get(answer)));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("answers")
  void isWrittenAsInItsGoldenFile(String answer) {
    String folder = bench.desk().notebook().folder().toString();
    String text = Json.readable(ANSWERS.get(answer)).replace(folder, "FOLDER");

    Golden.check(answer + ".json", text);
  }

  /** Every name that the design states, and the type that stands there. */
  @ParameterizedTest
  @CsvSource({
    "list, formulas[].formula, STRING",
    "list, formulas[].name, STRING",
    "list, formulas[].goal, STRING or NULL",
    "list, formulas[].revisions, NUMBER",
    "list, formulas[].latest, STRING",
    "list, formulas[].variants[].variant, STRING",
    "show, formula, STRING",
    "show, variant, STRING or NULL",
    "show, revision, NUMBER",
    "show, commit, STRING",
    "show, blob, STRING",
    "show, time, STRING",
    "show, author, STRING",
    "show, note, STRING",
    "show, yield.pieces, NUMBER",
    "show, yield.dough_g, NUMBER",
    "show, yield.dough_per_piece_g, NUMBER",
    "show, yield.baked_per_piece_g, NUMBER or NULL",
    "show, ratios.liquid_ratio, NUMBER",
    "show, ratios.dough_moisture_percent, NUMBER or NULL",
    "show, lines[].id, STRING",
    "show, lines[].food, STRING",
    "show, lines[].name, STRING",
    "show, lines[].kind, STRING",
    "show, lines[].entered, STRING",
    "show, lines[].grams, NUMBER",
    "show, lines[].approximate, BOOLEAN",
    "show, lines[].percent_of_batch, NUMBER",
    "show, lines[].bakers_percent, NUMBER",
    "show, macros.per_batch.energy_kcal, NUMBER or NULL",
    "show, macros.per_piece.protein_g, NUMBER",
    "show, macros.per_100_g_dough.fat_g, NUMBER",
    "show, macros.per_100_g_baked.carbohydrate_g, NUMBER",
    "show, macros.per_piece.saturated_fat_g, NUMBER or NULL",
    "show, macros.per_piece.fibre_g, NUMBER or NULL",
    "show, macros.per_piece.sugars_g, NUMBER or NULL",
    "show, macros.per_piece.polyols_g, NUMBER or NULL",
    "show, macros.per_piece.net_carbohydrate_g, NUMBER or NULL",
    "show, macros.per_piece.sodium_mg, NUMBER or NULL",
    "show, macros.per_piece.water_g, NUMBER or NULL",
    "show, unknowns[].line, STRING",
    "show, unknowns[].nutrient, STRING",
    "show, goal.name, STRING",
    "show, goal.met, BOOLEAN or NULL",
    "show, goal.checks[].rule, STRING",
    "show, goal.checks[].limit, OBJECT or NULL",
    "show, goal.checks[].value, NUMBER or NULL",
    "show, goal.checks[].met, BOOLEAN or NULL",
    "compare, from.address, STRING",
    "compare, from.revision, NUMBER",
    "compare, from.commit, STRING",
    "compare, to.address, STRING",
    "compare, summary, STRING",
    "compare, lines[].id, STRING",
    "compare, lines[].change, STRING",
    "compare, lines[].from_g, NUMBER",
    "compare, lines[].to_g, NUMBER",
    "compare, lines[].delta_g, NUMBER",
    "compare, ratios.liquid_ratio.from, NUMBER",
    "compare, ratios.liquid_ratio.to, NUMBER",
    "compare, ratios.liquid_ratio.delta, NUMBER",
    "compare, macros.per_piece.net_carbohydrate_g.from, NUMBER or NULL",
    "compare, macros.per_piece.protein_g.contributions[].cause, STRING",
    "compare, macros.per_piece.protein_g.contributions[].delta, NUMBER",
    "compare, process[].field, STRING",
    "compare, process[].from, STRING or NULL",
    "compare, process[].to, STRING or NULL",
    "compare, method, ARRAY",
    "compare, outcomes, OBJECT",
    "compare, confounded, ARRAY",
    "timeline, formula, STRING",
    "timeline, revisions[].address, STRING",
    "timeline, revisions[].revision, NUMBER",
    "timeline, revisions[].variant, STRING or NULL",
    "timeline, revisions[].commit, STRING",
    "timeline, revisions[].time, STRING",
    "timeline, revisions[].author, STRING",
    "timeline, revisions[].note, STRING",
    "timeline, revisions[].changes[].sentence, STRING",
    "timeline, revisions[].figures.liquid_ratio, NUMBER",
    "timeline, revisions[].bakes, ARRAY"
  })
  void hasTheNamesOfTheDesign(String answer, String path, String types) {
    List<JsonNode> found = List.of(json(answer));
    for (String step : path.split("\\.")) {
      List<JsonNode> next = new ArrayList<>();
      for (JsonNode node : found) {
        String name = step.replace("[]", "");
        assertThat(node.has(name)).as("%s in %s", name, node).isTrue();
        JsonNode member = node.get(name);
        if (step.endsWith("[]")) {
          member.forEach(next::add);
        } else {
          next.add(member);
        }
      }
      found = next;
    }
    assertThat(found).isNotEmpty();
    TreeSet<String> seen = new TreeSet<>();
    found.forEach(node -> seen.add(node.getNodeType().name()));
    assertThat(List.of(types.split(" or "))).containsAll(seen);
  }

  private static void walk(String path, JsonNode node, BiConsumer<String, JsonNode> visit) {
    visit.accept(path, node);
    node.properties().forEach(each -> walk(path + "." + each.getKey(), each.getValue(), visit));
    int i = 0;
    for (JsonNode element : node.isArray() ? node : List.<JsonNode>of()) {
      walk(path + "[" + i++ + "]", element, visit);
    }
  }

  @ParameterizedTest
  @MethodSource("answers")
  void hasNamesInSnakeCaseAndNumbersThatAreNumbers(String answer) {
    walk(
        answer,
        json(answer),
        (path, node) -> {
          if (!path.startsWith("card.json_ld")) { // in another vocabulary's words
            node.fieldNames()
                .forEachRemaining(name -> assertThat(name).as(path).matches("[a-z][a-z0-9_]*"));
          }
          if (node.isTextual()) {
            assertThat(node.asText()).as(path).isNotIn("NaN", "Infinity", "-Infinity", "null");
          }
        });
  }

  @Test
  void whatIsUnknownIsNullWithItsBoundsBesideIt() {
    JsonNode macros = json("show").at("/macros/per_piece");
    int bounded = 0;
    for (Map.Entry<String, JsonNode> member : macros.properties()) {
      JsonNode bounds = macros.path("bounds").path(member.getKey());
      if (!bounds.isMissingNode()) {
        bounded++;
        assertThat(member.getValue().isNull()).as(member.getKey()).isTrue();
        assertThat(bounds.has("at_least")).isTrue();
        assertThat(bounds.has("at_most")).isTrue();
        if (!bounds.get("at_least").isNull() && !bounds.get("at_most").isNull()) {
          assertThat(bounds.get("at_least").asDouble())
              .isLessThanOrEqualTo(bounds.get("at_most").asDouble());
        }
      }
    }
    assertThat(bounded).isPositive();
    assertThat(macros.get("energy_kcal").isNull()).isTrue();
    assertThat(macros.get("protein_g").isNumber()).isTrue();
  }

  @Test
  void contributionsAddUpToTheDifference() {
    List<String> checked = new ArrayList<>();
    walk(
        "compare",
        json("compare"),
        (path, node) -> {
          JsonNode contributions = node.path("contributions");
          if (contributions.isArray() && !contributions.isEmpty()) {
            double sum = 0;
            for (JsonNode each : contributions) {
              sum += each.get("delta").asDouble();
            }
            double delta = node.get("delta").asDouble();
            assertThat(sum).as(path).isCloseTo(delta, within(1e-9 * Math.max(1, Math.abs(delta))));
            checked.add(path);
          }
        });
    assertThat(checked).hasSizeGreaterThan(10);
  }

  @Test
  void theSumOfTheLinesIsTheDough() {
    JsonNode show = json("show");
    double grams = 0;
    double percent = 0;
    for (JsonNode line : show.get("lines")) {
      grams += line.get("grams").asDouble();
      percent += line.get("percent_of_batch").asDouble();
    }
    assertThat(show.at("/yield/dough_g").asDouble()).isCloseTo(grams, within(1e-9));
    assertThat(percent).isCloseTo(100, within(1e-9));
  }

  @Test
  void compactAndReadableAreTheSameAnswer() throws JsonProcessingException {
    for (Object answer : ANSWERS.values()) {
      assertThat(MAPPER.readTree(Json.readable(answer)))
          .isEqualTo(MAPPER.readTree(Json.compact(answer)));
      assertThat(Json.compact(answer)).doesNotContain("\n");
      assertThat(Json.readable(answer)).endsWith("}\n").doesNotContain("\r");
    }
  }

  @Test
  void theSameStepsGiveTheSameAnswersToTheLastCommitId(@TempDir Path other) {
    try (LupinBench again = new LupinBench(other)) {
      Address bun = Address.latest("seeded-lupin-bun", Optional.empty());
      assertThat(new ShowTimeline(again.desk()).call(bun)).isEqualTo(ANSWERS.get("timeline"));
    }
  }
}
