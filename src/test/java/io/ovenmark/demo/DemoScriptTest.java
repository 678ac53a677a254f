package io.ovenmark.demo;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.demo.DemoEvent.BakeRecorded;
import io.ovenmark.demo.DemoEvent.FoodEntered;
import io.ovenmark.demo.DemoEvent.FormulaBegun;
import io.ovenmark.demo.DemoEvent.FormulaRevised;
import io.ovenmark.demo.DemoEvent.GoalSet;
import io.ovenmark.demo.DemoEvent.ImprovementsCarried;
import io.ovenmark.demo.DemoEvent.RevisionPublished;
import io.ovenmark.demo.DemoEvent.RevisionRestored;
import io.ovenmark.demo.DemoEvent.VariantOpened;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.JsonReader;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.FoodCodec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DemoScriptTest {
  private static final Path FOLDER = Path.of("formulas");
  private static final DemoScript SCRIPT = DemoScript.load();
  private static final Told TOLD = new Told(SCRIPT);

  private static <E extends DemoEvent> List<E> all(Class<E> kind) {
    return SCRIPT.events().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static List<Bake> bakes() {
    return all(BakeRecorded.class).stream().map(BakeRecorded::bake).toList();
  }

  private static Stream<BakeRecorded> bakeEvents() {
    return all(BakeRecorded.class).stream();
  }

  private static Stream<Path> files() throws IOException {
    try (Stream<Path> walk = Files.walk(FOLDER)) {
      return walk.filter(Files::isRegularFile).sorted().toList().stream();
    }
  }

  @Test
  void thereIsEnoughToLookAt() {
    assertThat(all(FormulaBegun.class)).hasSizeGreaterThanOrEqualTo(6);
    assertThat(TOLD.formulas()).hasSizeGreaterThanOrEqualTo(24);
    assertThat(all(VariantOpened.class)).hasSizeGreaterThanOrEqualTo(2);
    assertThat(bakes()).hasSizeGreaterThanOrEqualTo(8);
    assertThat(bakes().stream().mapToInt(bake -> bake.pieces().size()).sum())
        .isGreaterThanOrEqualTo(25);
    assertThat(all(GoalSet.class)).hasSizeGreaterThanOrEqualTo(6);
    assertThat(all(ImprovementsCarried.class)).isNotEmpty();
    assertThat(all(RevisionRestored.class)).isNotEmpty();
    assertThat(all(RevisionPublished.class)).isNotEmpty();
    assertThat(all(FoodEntered.class)).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "seeded-lupin-bun, 9",
    "seeded-lupin-bun/egg-free, 2",
    "seeded-lupin-bun/dairy-free, 2",
    "sesame-crispbread, 4",
    "cocoa-sunflower-muffin, 4",
    "wheat-bun, 1",
    "wheat-crispbread, 1",
    "wheat-muffin, 1"
  })
  void eachLineOfHistoryHasRevisionsOfItsOwn(String line, int atLeast) {
    long own = TOLD.formulas().keySet().stream().filter(a -> a.line().equals(line)).count();

    assertThat(own).isGreaterThanOrEqualTo(atLeast);
  }

  @Test
  void everyFileOfTheFolderIsToldAndEveryFileToldIsThere() throws IOException {
    Set<String> asked = new TreeSet<>();
    DemoScript.read(
        path -> {
          asked.add(path);
          return read(path);
        });

    assertThat(files().map(DemoScriptTest::name)).containsExactlyElementsOf(asked);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileIsCanonical(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);

    assertThat(new String(CanonicalJson.write(JsonReader.read(name(file), bytes)), UTF_8))
        .isEqualTo(new String(bytes, UTF_8));
  }

  @Test
  void formulasGoalsAndFoodsAreWrittenAsTheNotebookWritesThem() {
    for (DemoEvent event : SCRIPT.events()) {
      if (event instanceof FormulaBegun e) {
        assertSame(path(e.address()), FormulaCodec.write(e.formula()));
      } else if (event instanceof FormulaRevised e) {
        assertSame(path(e.address()), FormulaCodec.write(e.formula()));
      } else if (event instanceof ImprovementsCarried e) {
        assertSame(path(e.address()), FormulaCodec.write(e.formula()));
      } else if (event instanceof GoalSet e) {
        assertSame("goals/" + e.goal().slug() + ".json", GoalCodec.write(e.goal()));
      } else if (event instanceof FoodEntered e) {
        assertThat(foodFiles(e.food().slug())).contains(text(FoodCodec.write(e.food())));
      }
    }
  }

  @Test
  void everyFoodIsKnownAndEveryReferenceAndGoalExists() {
    Set<String> entered = new HashSet<>();
    all(FoodEntered.class).forEach(event -> entered.add(event.food().slug()));
    Set<String> goals = new HashSet<>();
    all(GoalSet.class).forEach(event -> goals.add(event.goal().slug()));
    Set<String> begun = new HashSet<>();
    all(FormulaBegun.class).forEach(event -> begun.add(event.address().formula()));

    TOLD.formulas()
        .forEach(
            (address, formula) -> {
              assertThat(formula.lines())
                  .as(address.toString())
                  .allMatch(
                      line ->
                          entered.contains(line.food())
                              || BuiltInPantry.find(line.food()).isPresent());
              assertThat(formula.goal())
                  .matches(goal -> goal.isEmpty() || goals.contains(goal.get()));
              assertThat(formula.reference())
                  .matches(other -> other.isEmpty() || begun.contains(other.get()));
            });
  }

  @Test
  void aVariantsFirstRevisionTakesTheGoalThatItWasOpenedFor() {
    for (VariantOpened opened : all(VariantOpened.class)) {
      DemoAddress first =
          new DemoAddress(
              opened.from().formula(), Optional.of(opened.name()), opened.from().revision() + 1);

      assertThat(TOLD.formulas().get(first).goal()).contains(opened.goal());
    }
  }

  @Test
  void aBakeCarriesTheBlobIdOfWhatWasWeighed() {
    Map<String, String> known = new TreeMap<>();
    all(BakeRecorded.class).forEach(e -> known.put(e.bake().address(), e.bake().blob()));

    // git hash-object formulas/wheat-bun/02.json and seeded-lupin-bun/05.json, native Git 2.39
    assertThat(known)
        .containsEntry("wheat-bun@2", "87401ba94f32953b00b870bae0183b39334d4d32")
        .containsEntry("seeded-lupin-bun@5", "29d829a945f061784006cb529392793820e16a0d");
  }

  @Test
  void findingsAreFromTheVocabularyAndUseMostOfIt() {
    Set<FindingVocabulary> used = EnumSet.noneOf(FindingVocabulary.class);
    for (Bake bake : bakes()) {
      List<String> words = new ArrayList<>(bake.findings());
      bake.pieces().forEach(piece -> words.addAll(piece.findings()));
      for (String word : words) {
        assertThat(FindingVocabulary.of(word)).as(bake.path() + ": " + word).isPresent();
        used.add(FindingVocabulary.of(word).get());
      }
    }

    assertThat(used).hasSizeGreaterThan(FindingVocabulary.values().length * 2 / 3);
  }

  @ParameterizedTest
  @MethodSource("bakeEvents")
  void piecesWeighWhatTheWorksheetGivesAndLoseNoMoreThanTheirWater(BakeRecorded event) {
    var sheet = TOLD.sheet(event.address().toString());
    double dough = sheet.doughPerPieceGrams().value().orElseThrow();
    for (Piece piece : event.bake().pieces()) {
      assertThat(piece.doughGrams().orElseThrow()).isBetween(dough * 0.98, dough * 1.02);
      piece
          .lossPercent()
          .ifPresent(loss -> assertThat(loss).isLessThan(sheet.doughMoisturePercent().low()));
      if (!event.address().formula().contains("crispbread")) {
        piece.lossPercent().ifPresent(loss -> assertThat(loss).isBetween(8.0, 17.0));
      }
    }
  }

  @Test
  void everyCoreIsPastWhatEggNeeds() {
    // egg dishes 160 °F, 71.1 °C (USDA Food Safety and Inspection Service)
    for (Bake bake : bakes()) {
      for (Piece piece : bake.pieces()) {
        piece.core().ifPresent(core -> assertThat(core.celsius()).isBetween(71.2, 100.0));
      }
    }
  }

  @Test
  void someThingsWereNotMeasured() {
    List<Piece> pieces = bakes().stream().flatMap(bake -> bake.pieces().stream()).toList();

    assertThat(pieces).anyMatch(piece -> piece.bakedGrams().isEmpty());
    assertThat(pieces).anyMatch(piece -> piece.core().isEmpty());
    assertThat(pieces).anyMatch(piece -> piece.liking().isEmpty());
  }

  @Test
  void photosBelongToTheirBakeAndMarkEveryPiece() {
    Set<String> files = new HashSet<>();
    for (BakeRecorded event : all(BakeRecorded.class)) {
      List<String> ids = event.bake().pieces().stream().map(Piece::id).toList();
      assertThat(event.pictures()).hasSameSizeAs(event.bake().photos());
      for (Photo photo : event.bake().photos()) {
        assertThat(files.add(photo.file())).isTrue();
        assertThat(photo.file())
            .startsWith("photos/" + event.bake().formula() + "/" + event.bake().id() + "-");
        assertThat(photo.caption()).isPresent();
        assertThat(photo.taken()).isPresent();
        assertThat(photo.marks()).extracting(Photo.Mark::piece).containsExactlyElementsOf(ids);
      }
    }
    assertThat(files).hasSizeGreaterThanOrEqualTo(12);
  }

  @Test
  void peopleAreOfTheReservedDomainAndNotesHaveAFirstLine() {
    for (DemoEvent event : SCRIPT.events()) {
      assertThat(event.at().author().email()).endsWith("@saltmarsh.example");
      String[] lines = event.at().note().split("\n", 3);
      assertThat(lines[0]).isNotBlank().hasSizeLessThanOrEqualTo(90);
      assertThat(lines.length == 1 || lines[1].isEmpty()).as(lines[0]).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"author\": \"tobias\"|\"author\": \"bruno\"|not one of the people",
        "2026-06-05T09:00:00+02:00|2026-06-01T09:00:00+02:00|before the one above",
        "2026-06-05T09:00:00+02:00|yesterday|not a date and time",
        "\"revise\": \"wheat-bun\"|\"revise\": \"wheat-roll\"|no wheat-roll yet",
        "\"revise\": \"wheat-bun\"|\"shelve\": \"wheat-bun\"|does not say one thing",
        "\"revise\": \"wheat-bun\"|\"new\": \"wheat-bun\"|exists already",
        "\"bake\": \"wheat-bun@2\"|\"bake\": \"wheat-bun@3\"|no revision wheat-bun@3",
        "\"bake\": \"wheat-bun@2\"|\"bake\": \"wheat bun\"|not the address",
        "\"shape\": \"round\"|\"shape\": \"star\"|not a shape",
        "wheat-bun/02.json|wheat-bun/03.json|cannot hold wheat-bun@2",
        "\"from\": \"seeded-lupin-bun@7\"|\"from\": \"wheat-bun@2\"|cannot be opened from",
        "\"goal\": \"egg-free-bun\"|\"goal\": \"egg-free-roll\"|no goal egg-free-bun yet"
      })
  void aTimelineThatContradictsItselfIsRefused(String right, String wrong, String sentence) {
    Function<String, Optional<byte[]>> files =
        path ->
            read(path)
                .map(
                    bytes ->
                        path.equals(DemoScript.TIMELINE)
                            ? replaceFirst(text(bytes), right, wrong).getBytes(UTF_8)
                            : bytes);

    assertThatThrownBy(() -> DemoScript.read(files))
        .isInstanceOfSatisfying(
            UnreadableException.class,
            e ->
                assertThat(e.problems())
                    .anySatisfy(
                        problem -> {
                          assertThat(problem.message()).contains(sentence);
                          assertThat(problem.where()).matches("timeline\\.json:\\d+:\\d+, .*");
                          assertThat(problem.hint()).isNotBlank();
                        }));
  }

  @Test
  void aMissingFileIsNamed() {
    String missing = "wheat-bun/02.json";

    assertThatThrownBy(
            () -> DemoScript.read(path -> path.equals(missing) ? Optional.empty() : read(path)))
        .isInstanceOf(UnreadableException.class)
        .hasMessageStartingWith(missing + ": The file is missing.");
  }

  private static String replaceFirst(String text, String right, String wrong) {
    int at = text.indexOf(right);
    assertThat(at).as(right).isNotNegative();
    return text.substring(0, at) + wrong + text.substring(at + right.length());
  }

  private static void assertSame(String path, byte[] written) {
    assertThat(text(written)).as(path).isEqualTo(text(read(path).orElseThrow()));
  }

  private static List<String> foodFiles(String slug) {
    try {
      return files()
          .filter(file -> name(file).matches("pantry/" + slug + "(-\\d{4}-\\d{2})?\\.json"))
          .map(file -> text(read(name(file)).orElseThrow()))
          .toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String path(DemoAddress address) {
    return address.line() + String.format(java.util.Locale.ROOT, "/%02d.json", address.revision());
  }

  private static String name(Path file) {
    return FOLDER.relativize(file).toString().replace('\\', '/');
  }

  private static Optional<byte[]> read(String path) {
    Path file = FOLDER.resolve(path);
    try {
      return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, UTF_8);
  }
}
