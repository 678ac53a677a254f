package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.ovenmark.photo.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KitchenCommandsTest {
  private static final String BUN = "seeded-lupin-bun";

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  private static JsonNode json(Bench.Result result) throws IOException {
    return new ObjectMapper().readTree(result.out());
  }

  @Test
  void aBakeIsRecordedAndShownPieceByPiece() {
    Bench.Result added =
        bench.must(
            "bake", "add", BUN + "@3", "--date", "2026-03-01 10:30", "--baker", "Mara Quell",
            "--piece", "a 190C 24min dough=95g baked=82g finding='gummy crumb'", "--piece",
            "b 200C 24min note='dark, at the edge'", "--finding", "even crumb", "--note",
            "Door opened once");

    assertThat(added.out())
        .isEqualTo(
            """
            seeded-lupin-bun 2026-03-01-1 · 2026-03-01 10:30 · Mara Quell
            Of seeded-lupin-bun@3
            Note: Door opened once
            Findings: even crumb

                 oven  min  dough, g  baked, g  loss, %
            a  190 °C   24        95        82     13.7
            b  200 °C   24
              a: gummy crumb
              b: dark, at the edge
            """);
    assertThat(bench.must("bake", "show", BUN, "2026-03-01-1").out()).isEqualTo(added.out());
  }

  @Test
  void aGridMakesThePiecesAndAPieceAddsToThem() throws IOException {
    JsonNode bake =
        json(
                bench.must(
                    "bake", "add", BUN, "--grid", "190,200 C x 14,16 min", "--piece",
                    "c baked=80g", "--json"))
            .get("bake");

    assertThat(bake.get("pieces")).hasSize(4);
    assertThat(bake.get("pieces").get(2).get("temperature_c").asDouble()).isEqualTo(200);
    assertThat(bake.get("pieces").get(2).get("baked_g").asDouble()).isEqualTo(80);
    assertThat(bake.get("pieces").get(3).get("baked_g").isNull()).isTrue();
  }

  @Test
  void whatIsKnownLaterIsAdded() {
    bench.must(
        "bake", "set", BUN, "2026-03-02-1", "--piece", "a liking=8,8,8", "--piece", "b 190C");

    assertThat(bench.must("bake", "show", BUN).out())
        .contains("a  200 °C   24        67        58     13.4     41       8", "b  190 °C");
    assertThat(bench.must("bake", "list", BUN).out()).contains("2026-03-02-1 · of", "2 pieces");
  }

  @Test
  void aBakeOfAVariantIsListedWithItsFormula() {
    bench.must("bake", "add", BUN + "/egg-free", "--piece", "a 190C");

    assertThat(bench.must("bake", "list", BUN).out())
        .contains("of seeded-lupin-bun@2", "of seeded-lupin-bun/egg-free@4");
  }

  @Test
  void photosAreAddedFromFilesByAnyName() throws IOException {
    Files.write(folder.resolve("tray $(1).JPG"), Pictures.jpeg(Pictures.corners(40, 30)));

    Bench.Result added =
        bench.must(
            "photo", "add", BUN, "2026-03-02-1", "tray $(1).JPG", "--caption", "The tray", "--mark",
            "a=0.5,0.5");

    assertThat(added.out()).contains("Added photos/seeded-lupin-bun/2026-03-02-1-1.jpg", "1 photo");
    assertThat(bench.must("bake", "show", BUN).out()).contains("The tray · marked: a");
    assertThat(folder.resolve("photos/seeded-lupin-bun/2026-03-02-1-1.jpg")).exists();
    assertThat(folder.resolve("tray $(1).JPG")).exists();
  }

  @Test
  void aPhotoIsMarkedRemovedAndBroughtBack() throws IOException {
    Files.write(folder.resolve("tray.jpg"), Pictures.jpeg(Pictures.corners(40, 30)));
    bench.must("photo", "add", BUN, "2026-03-02-1", "tray.jpg", "--mark", "a=0.5,0.5");
    String[] set = {"photo", "set", BUN, "2026-03-02-1", "1"};

    String changed =
        bench
            .must(with(set, "--mark", "a=0.2,0.3", "--caption", "Cut", "--alternative", "A bun"))
            .out();
    assertThat(changed).contains("Changed photos/seeded-lupin-bun/2026-03-02-1-1.jpg, marked: a");
    assertThat(bench.must(with(set, "--caption", "Cut")).out()).contains("says all of that");
    JsonNode photo = json(bench.must(with(set, "--unmark", "a", "--json"))).get("photo");
    assertThat(photo.get("marks")).isEmpty();
    assertThat(photo.get("alternative").asText()).isEqualTo("A bun");
    assertThat(bench.run(with(set, "--mark", "z=0.2,0.3")).code()).isEqualTo(1);

    String removed = bench.must("photo", "remove", BUN, "2026-03-02-1", "1").out();
    assertThat(bench.run("photo", "remove", BUN, "2026-03-02-1", "1").err())
        .contains("The bake has no such photo");
    String[] back = removed.substring(removed.indexOf("photo remove")).strip().split(" ");
    assertThat(bench.must(back).out()).contains("Brought back photos/");
    assertThat(bench.must("bake", "show", BUN).out()).contains("Cut");
  }

  private static String[] with(String[] words, String... more) {
    return Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void aPhotoThatIsATextFileIsRefused() throws IOException {
    Files.writeString(folder.resolve("tray.jpg"), "not a picture");

    Bench.Result refused = bench.run("photo", "add", BUN, "2026-03-02-1", "tray.jpg");

    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err())
        .contains(
            "\"tray.jpg\" is a text file, not JPEG, PNG or WebP", "hint:  Choose the picture");
  }

  @Test
  void picturesThatAreNotThereAreRefused() {
    assertThat(bench.run("photo", "add", BUN, "2026-03-02-1", "none.jpg").err())
        .contains("There is no such file");
    assertThat(bench.run("photo", "add", BUN, "2026-03-02-1", ".").err()).contains("is a folder");
    assertThat(bench.run("photo", "add", BUN, "2026-03-02-1").code()).isEqualTo(2);
  }

  @Test
  void aGoalIsAddedAndHeldAgainstTheFormulasThatStateIt() {
    Bench.Result added =
        bench.must(
            "goal", "add", "guest-bun", "--name", "Bun for guests", "--limit",
            "net_carbohydrate_g <= 4 per piece", "--limit", "protein >= 12", "--without",
            "gluten,milk", "--without-food", "wheat-flour-bread", "--subtract",
            "fibre,polyols=0.5");
    assertThat(added.out())
        .contains(
            "Bun for guests (guest-bun)", "at most 4 g net carbohydrate a piece", "no milk",
            "net carbohydrate = carbohydrate − fibre − 50 % of polyols",
            "ovenmark revise FORMULA --set goal=guest-bun");

    bench.must("revise", BUN, "--set", "goal=guest-bun", "--note", "For guests");

    assertThat(bench.must("goal", "show", "guest-bun").out())
        .contains("seeded-lupin-bun@4 · Seeded lupin bun: not met", "broken  no milk", "kept");
    assertThat(bench.must("goal", "list").out())
        .contains("guest-bun · Bun for guests", "stated by seeded-lupin-bun");
  }

  @Test
  void aGoalIsReplacedOnlyWhenAsked() {
    bench.must("goal", "add", "lean", "--limit", "fat <= 3");

    Bench.Result refused = bench.run("goal", "add", "lean", "--limit", "fat <= 2");

    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("hint:  Choose another short name, or replace it with");
    assertThat(bench.must("goal", "add", "lean", "--limit", "fat <= 2", "--replace").out())
        .contains("at most 2 g fat a piece");
  }

  @Test
  void aFoodIsAddedFromItsLabelShownAndChanged() {
    bench.must(
        "pantry", "add", "bench-lupin", "--name", "Lupin flour of the bench", "--us",
        "--per-serving", "30g", "energy=110kcal", "protein=12", "fat=3", "carbohydrate=12",
        "fibre=11", "allergens=lupin");
    Bench.Result changed =
        bench.must(
            "pantry", "set", "bench-lupin", "weight.tbsp=9 g", "price=4.80 EUR for 500 g");

    assertThat(changed.out())
        .contains(
            "Lupin flour of the bench (bench-lupin) · dry", "protein         40  g",
            "Weights: 1 serving = 30 g · 1 tbsp = 9 g", "Allergens: lupin",
            "Price: 4.80 EUR for 500 g, 9.60 a kilogram", "Not known: ");
    assertThat(bench.must("pantry", "show", "bench-lupin").out()).isEqualTo(changed.out());
    assertThat(bench.must("pantry", "find", "lupin flour").out())
        .contains("bench-lupin", "in the pantry");
    assertThat(bench.must("pantry", "list").out()).contains("bench-lupin", "egg-whole");
  }

  @Test
  void aLabelThatCannotBeRightIsRefused() {
    Bench.Result refused =
        bench.run("pantry", "add", "bench-lupin", "--us", "--per-serving", "30g", "protein=300");

    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("where: label, field protein_g");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bake",
        "goal",
        "pantry",
        "photo",
        "pantry add x --us --eu",
        "pantry add almonds --per-serving 30g",
        "pantry set water",
        "bake show",
        "pantry import sr28 --most many"
      })
  void wrongUsageIsTwo(String words) {
    Bench.Result result = bench.run(words.split(" "));

    assertThat(result.code()).as(result.toString()).isEqualTo(2);
    assertThat(result.err()).contains("See: ovenmark " + words.split(" ")[0]);
    assertThat(result.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bake list rye-bun",
        "bake list ../x",
        "bake show wheat-bun",
        "bake show seeded-lupin-bun 2026-01-01-1",
        "bake add rye-bun --piece a",
        "bake add seeded-lupin-bun",
        "bake add seeded-lupin-bun --piece 190",
        "bake add seeded-lupin-bun --date tomorrow --piece a",
        "bake add seeded-lupin-bun --grid 190",
        "bake set seeded-lupin-bun 2026-03-02-1",
        "photo add seeded-lupin-bun 2026-03-02-1 notebook.json --mark z=0,0",
        "goal show none",
        "goal add x",
        "goal add X --limit fat<=3",
        "goal add x --limit taste>=3",
        "goal add x --without dust",
        "goal add x --limit fat<=3 --subtract water",
        "pantry show none-such",
        "pantry add none-such",
        "pantry add water",
        "pantry set none-such price=",
        "pantry set water taste=good",
        "pantry import . --words egg",
        "pantry import sr28"
      })
  void whatCannotBeDoneIsRefusedWithARemedy(String words) {
    Bench.Result result = bench.run(words.split(" "));

    assertThat(result.code()).as(result.toString()).isEqualTo(1);
    assertThat(result.err()).startsWith("ovenmark: ").contains("hint:  ");
    assertThat(result.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bake list seeded-lupin-bun",
        "bake show seeded-lupin-bun",
        "goal list",
        "goal show low-carb-bun",
        "pantry list",
        "pantry show egg-whole",
        "pantry find egg",
        "check"
      })
  void everyReadingCommandSpeaksJson(String words) throws IOException {
    JsonNode answer = json(bench.must((words + " --json").split(" ")));

    assertThat(answer.isObject()).isTrue();
    answer.fieldNames().forEachRemaining(name -> assertThat(name).matches("[a-z0-9_]+"));
  }

  @Test
  void aSoundNotebookPassesTheCheck() {
    Bench.Result result = bench.must("check");

    assertThat(result.out()).matches("(?s)Read \\d+ files, 0 photos, \\d+ Git objects: nothing is"
        + " wrong\\.\n");
    assertThat(result.err()).isEmpty();
  }

  @Test
  void aFaultIsToldWithPlaceAndRemedyAndTheExitCodeIsOne() throws IOException {
    Path food = folder.resolve("pantry/salt.json");
    Files.writeString(food, Files.readString(food).replace("\"dry\"", "\"wet\""));

    Bench.Result result = bench.run("check");

    assertThat(result.code()).isEqualTo(1);
    assertThat(result.out())
        .contains("wrong: pantry/salt.json:3:11, field kind\n", "1 fault.");
    assertThat(json(bench.run("check", "--json")).get("ok").asBoolean()).isFalse();
  }

  @Test
  void aNoticeIsNoFault() throws IOException {
    Files.writeString(folder.resolve("shopping.txt"), "seaweed");

    Bench.Result result = bench.must("check");

    assertThat(result.out()).contains("notice: shopping.txt", "nothing is wrong, 1 notice.");
  }

  @Test
  void aDownloadedTableIsImportedByNumber() throws IOException {
    Path table = Files.createDirectory(folder.resolve("sr28"));
    for (String file : List.of("FOOD_DES.txt", "NUT_DATA.txt", "WEIGHT.txt")) {
      Files.write(
          table.resolve(file),
          KitchenCommandsTest.class
              .getResourceAsStream("/io/ovenmark/pantry/sr28/" + file)
              .readAllBytes());
    }

    assertThat(bench.must("pantry", "import", "sr28", "--words", "almonds", "--look").out())
        .startsWith("SR28: 1 food fits\n")
        .contains("12061");
    assertThat(bench.must("pantry", "import", "sr28", "--id", "12061,20080").out())
        .startsWith("SR28: 2 foods fit, 2 added\n");
  }
}
