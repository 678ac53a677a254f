package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.FoodImport.Found;
import io.ovenmark.pantry.FoodImport.Layout;
import io.ovenmark.pantry.FoodImport.Progress;
import io.ovenmark.pantry.FoodImport.Result;
import io.ovenmark.pantry.FoodImport.Selection;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fixtures hold a few foods of SR28 in the layout of its ASCII files (columns beside the
 * figures partly from memory) and the same foods in the layout of FoodData Central's CSV files (FDC
 * ids from memory). Rows that the tests add themselves are invented.
 */
class FoodImportTest {
  private static final List<String> SR28 = List.of("FOOD_DES.txt", "NUT_DATA.txt", "WEIGHT.txt");
  private static final List<String> FDC =
      List.of(
          "food.csv",
          "food_nutrient.csv",
          "food_portion.csv",
          "measure_unit.csv",
          "nutrient.csv");

  @TempDir Path sr28;
  @TempDir Path fdc;

  @BeforeEach
  void unpack() throws IOException {
    copy("sr28", SR28, sr28);
    copy("fdc", FDC, fdc);
  }

  private static void copy(String folder, List<String> names, Path to) throws IOException {
    for (String name : names) {
      try (InputStream in = FoodImportTest.class.getResourceAsStream(folder + "/" + name)) {
        Files.write(to.resolve(name), in.readAllBytes());
      }
    }
  }

  private static void append(Path file, Charset charset, String text) throws IOException {
    Files.writeString(
        file, Files.readString(file, charset) + text, charset);
  }

  private static Result read(Path place, Selection selection) throws IOException {
    return FoodImport.read(place, selection, Progress.NONE);
  }

  private static Food only(Result result) {
    assertThat(result.problems()).isEmpty();
    assertThat(result.foods()).hasSize(1);
    return result.foods().get(0).food();
  }

  /** The same foods of SR28 stand in the built-in table: both ways of reading must agree. */
  @ParameterizedTest
  @CsvSource({
    "01123, 171287, egg-whole, egg-whole-raw-fresh",
    "12061, 170567, almonds, nuts-almonds",
    "20080, 168893, wheat-flour-whole, wheat-flour-whole-grain",
    "09050, 171711, blueberries, blueberries-raw"
  })
  void bothLayoutsGiveTheFiguresAndWeightsOfTheBuiltInTable(
      String ndb, String fdcId, String builtIn, String slug) throws IOException {
    Food expected = BuiltInPantry.find(builtIn).orElseThrow();
    Food fromSr28 = only(read(sr28, Selection.ids(ndb)));
    Food fromFdc = only(read(fdc, Selection.ids(fdcId)));
    for (Food food : List.of(fromSr28, fromFdc)) {
      assertThat(food.slug()).isEqualTo(slug);
      assertThat(food.kind()).isEqualTo(expected.kind());
      assertThat(food.household()).isEqualTo(expected.household());
      assertThat(food.allergens()).isEmpty();
      for (Nutrient nutrient : Nutrient.values()) {
        boolean inTheFiles =
            nutrient != Nutrient.POLYOLS
                && nutrient != Nutrient.ALLULOSE
                && nutrient != Nutrient.ADDED_SUGARS
                && nutrient != Nutrient.SOLUBLE_FIBRE;
        assertThat(food.per100g().get(nutrient))
            .as(nutrient.label())
            .isEqualTo(inTheFiles ? expected.per100g().get(nutrient) : Quantity.UNKNOWN);
      }
      assertThat(FoodCodec.read("f", slug, FoodCodec.write(food))).isEqualTo(food);
    }
    assertThat(fromSr28.source().kind()).isEqualTo(Source.Kind.SR28);
    assertThat(fromSr28.source().id()).contains(ndb);
    assertThat(fromFdc.source().kind()).isEqualTo(Source.Kind.FOOD_DATA_CENTRAL);
    assertThat(fromFdc.source().id()).contains(fdcId);
  }

  /** SR28 reports no sugars and no alcohol for chia seeds (NDB 12006). */
  @Test
  void aFigureThatIsNotInTheFileStaysUnknown() throws IOException {
    Food chia = only(read(sr28, Selection.ids("12006")));
    assertThat(chia.per100g().get(Nutrient.SUGARS)).isEqualTo(Quantity.UNKNOWN);
    assertThat(chia.per100g().get(Nutrient.FIBRE)).isEqualTo(Quantity.known(34.4));
    assertThat(chia.household()).isEmpty();
  }

  @Test
  void wordsChooseAndTheKindIsMarkedAsGuessedOrTakenAsGiven() throws IOException {
    Result guessed = read(sr28, Selection.words("flour whole"));
    assertThat(guessed.layout()).isEqualTo(Layout.SR28);
    assertThat(guessed.foods()).extracting(Found::kindGuessed).containsExactly(true);
    assertThat(only(guessed).source().note().orElseThrow()).contains("is a guess");
    Result given =
        read(sr28, new Selection("eggs", Set.of(), Optional.of(FoodKind.PRODUCE), 5));
    assertThat(given.foods()).extracting(Found::kindGuessed).containsExactly(false);
    assertThat(only(given).kind()).isEqualTo(FoodKind.PRODUCE);
    assertThat(only(given).source().note().orElseThrow()).doesNotContain("guess");
    assertThat(read(sr28, Selection.words("unicorn")).foods()).isEmpty();
  }

  @Test
  void wordsPassOverTheSamplesOfFoodDataCentral() throws IOException {
    assertThat(read(fdc, Selection.words("almonds")).foods())
        .extracting(found -> found.food().source().id().orElseThrow())
        .containsExactly("170567");
  }

  @Test
  void theLimitHoldsAndSaysThatThereIsMore() throws IOException {
    Result result = read(sr28, new Selection("raw", Set.of(), Optional.empty(), 1));
    assertThat(result.foods()).hasSize(1);
    assertThat(result.more()).isTrue();
    assertThat(read(sr28, Selection.words("raw")).more()).isFalse();
  }

  @Test
  void aZipFileReadsLikeAFolderWhateverTheFolderInside() throws IOException {
    Path zip = sr28.resolve("download.zip");
    try (OutputStream out = Files.newOutputStream(zip);
        ZipOutputStream entries = new ZipOutputStream(out)) {
      for (String name : FDC) {
        entries.putNextEntry(new ZipEntry("table_2019/" + name));
        entries.write(Files.readAllBytes(fdc.resolve(name)));
        entries.closeEntry();
      }
    }
    assertThat(read(zip, Selection.words("egg"))).isEqualTo(read(fdc, Selection.words("egg")));
  }

  @Test
  void progressGrowsToTheSizeOfEachFile() throws IOException {
    List<String> finished = new ArrayList<>();
    FoodImport.read(
        sr28,
        Selection.words("egg"),
        (file, done, total) -> {
          assertThat(done).isPositive().isLessThanOrEqualTo(total);
          if (done == total) {
            finished.add(file);
          }
        });
    assertThat(finished).containsExactlyElementsOf(SR28);
  }

  @Test
  void aFaultyRowIsLeftOutCountedAndReportedWithItsPlace() throws IOException {
    append(
        sr28.resolve("NUT_DATA.txt"),
        StandardCharsets.ISO_8859_1,
        "~01123~^~291~^many^0^^~4~^~~^~~^~~^^^^^^^~~^08/2015^\r\n"
            + "~01123~^~307~\r\n"
            + "~01123~^~269^1\r\n"
            + "~01123~^~221~^-4^0^^~4~^~~^~~^~~^^^^^^^~~^08/2015^\r\n");
    int line = (int) Files.lines(sr28.resolve("NUT_DATA.txt")).count() - 3;
    Result result = read(sr28, Selection.ids("01123"));
    assertThat(result.faulty()).isEqualTo(4);
    assertThat(result.problems())
        .extracting(Problem::toString)
        .containsExactly(
            "NUT_DATA.txt:" + line + ":15, field Nutr_Val: \"many\" is not a number."
                + " It was left out: unknown.",
            "NUT_DATA.txt:" + (line + 1) + ":1: The row has 2 fields where 18 belong."
                + " The row was left out; download the file again if there are many.",
            "NUT_DATA.txt:" + (line + 2) + ":1: A text is not closed before the end of the line."
                + " The row was left out; download the file again if there are many.",
            "NUT_DATA.txt:" + (line + 3) + ":15, field Nutr_Val: The number -4 is out of range."
                + " It was left out: unknown. Expected is 0 to 100.5.");
    assertThat(result.foods()).hasSize(1);
  }

  @Test
  void aNumberThatIsNotInTheTableIsReported() throws IOException {
    assertThat(read(sr28, Selection.ids("99999")).problems())
        .extracting(Problem::message)
        .containsExactly("The table has no usable food with the number 99999.");
  }

  @Test
  void anotherLayoutIsRefused() throws IOException {
    Files.writeString(sr28.resolve("FOOD_DES.txt"), "NDB_No,Long_Desc\n01123,Egg\n");
    assertThatThrownBy(() -> read(sr28, Selection.words("egg")))
        .isInstanceOf(UnreadableException.class)
        .hasMessage(
            "FOOD_DES.txt:1:1: The row has 1 fields where 14 belong."
                + " Use the ASCII files of SR28 as they were downloaded.");
    Files.writeString(fdc.resolve("food.csv"), "id,title\n1,Egg\n");
    assertThatThrownBy(() -> read(fdc, Selection.words("egg")))
        .hasMessageContaining("names no column \"fdc_id\"");
    Files.writeString(fdc.resolve("nutrient.csv"), "id,unit_name\n1093,G\n");
    assertThatThrownBy(() -> read(fdc, Selection.words("egg")))
        .hasMessageContaining("The unit of nutrient 1093 is \"g\" where mg belongs.");
  }

  @Test
  void missingFilesAndPlacesAreRefused(@TempDir Path empty) throws IOException {
    assertThatThrownBy(() -> read(empty, Selection.words("egg")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("holds no food table");
    assertThatThrownBy(() -> read(empty.resolve("nowhere"), Selection.words("egg")))
        .hasMessageContaining("neither a folder nor a file");
    Path text = Files.writeString(empty.resolve("notes.zip"), "no zip file");
    assertThatThrownBy(() -> read(text, Selection.words("egg")))
        .hasMessageContaining("is not a zip file");
    Files.delete(sr28.resolve("WEIGHT.txt"));
    assertThatThrownBy(() -> read(sr28, Selection.words("egg")))
        .hasMessageContaining("WEIGHT.txt: The file is missing.");
    assertThatThrownBy(() -> Selection.words("  "))
        .hasMessageContaining("Nothing says which foods to read.");
  }

  @Test
  void textsOfSr28AreLatin1AndThoseOfFoodDataCentralUtf8() throws IOException {
    append(
        sr28.resolve("FOOD_DES.txt"),
        StandardCharsets.ISO_8859_1,
        "~90001~^~0100~^~Crème^ \"épaisse\"~^~~^~~^~~^~~^~~^^~~^^^^\r\n");
    assertThat(only(read(sr28, Selection.ids("90001"))).name())
        .isEqualTo("Crème^ \"épaisse\"");
    append(
        fdc.resolve("food.csv"),
        StandardCharsets.UTF_8,
        "\"900002\",\"foundation_food\",\"Crème,\n\"\"épaisse\"\"\",\"1\",\"2020-01-01\"\n");
    assertThat(only(read(fdc, Selection.words("creme"))).name())
        .isEqualTo("Crème,\n\"épaisse\"");
  }

  @Test
  void twoFoodsOfOneDescriptionGetDifferentShortNames() throws IOException {
    append(
        fdc.resolve("food.csv"),
        StandardCharsets.UTF_8,
        "\"900003\",\"foundation_food\",\"Nuts, almonds\",\"12\",\"2020-01-01\"\n");
    assertThat(read(fdc, Selection.words("almonds")).foods())
        .extracting(found -> found.food().slug())
        .containsExactly("nuts-almonds", "nuts-almonds-900003");
  }

  @Test
  void servingsOfPackagedFoodsAreHouseholdMeasuresAndMillilitresAreLeftOut() throws IOException {
    append(
        fdc.resolve("food.csv"),
        StandardCharsets.UTF_8,
        "\"900004\",\"branded_food\",\"SEED MEAL\",\"Flours\",\"2020-01-01\"\n"
            + "\"900005\",\"branded_food\",\"SEED DRINK\",\"Drinks\",\"2020-01-01\"\n");
    Files.writeString(
        fdc.resolve("branded_food.csv"),
        "\"fdc_id\",\"ingredients\",\"serving_size\",\"serving_size_unit\","
            + "\"household_serving_fulltext\"\n"
            + "\"900004\",\"SEEDS, \n\"\"MILLED\"\"\",\"14.0\",\"g\",\"2 Tbsp\"\n"
            + "\"900005\",\"WATER, SEEDS\",\"240.0\",\"ml\",\"1 cup\"\n");
    append(
        fdc.resolve("food_nutrient.csv"),
        StandardCharsets.UTF_8,
        "\"901\",\"900004\",\"1003\",\"35.7\",\"\",\"70\",\"\",\"\",\"\",\"\",\"\"\n");
    Result result = read(fdc, Selection.words("seed"));
    assertThat(result.foods()).hasSize(1);
    Food meal = result.foods().get(0).food();
    assertThat(meal.household())
        .containsExactly(new HouseholdMeasure("tbsp", 7), new HouseholdMeasure("serving", 14));
    assertThat(meal.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.known(35.7));
    assertThat(result.problems())
        .extracting(Problem::message)
        .containsExactly("The figures of \"SEED DRINK\" are per 100 ml, not per 100 g.");
  }

  @Test
  void theMeasuredFigureIsPreferredToItsSubstitutes() throws IOException {
    append(
        fdc.resolve("food.csv"),
        StandardCharsets.UTF_8,
        "\"900006\",\"foundation_food\",\"Seeds, milled\",\"12\",\"2020-01-01\"\n");
    append(
        fdc.resolve("food_nutrient.csv"),
        StandardCharsets.UTF_8,
        "\"902\",\"900006\",\"2047\",\"500\",\"\",\"\",\"\",\"\",\"\",\"\",\"\"\n"
            + "\"903\",\"900006\",\"2048\",\"480\",\"\",\"\",\"\",\"\",\"\",\"\",\"\"\n"
            + "\"904\",\"900006\",\"203\",\"21\",\"\",\"\",\"\",\"\",\"\",\"\",\"\"\n");
    append(
        fdc.resolve("food_portion.csv"),
        StandardCharsets.UTF_8,
        "\"905\",\"900006\",\"1\",\"1.0\",\"1001\",\"\",\"heaped\",\"9.0\",\"1\",\"\",\"\"\n"
            + "\"906\",\"900006\",\"2\",\"2.0\",\"1000\",\"\",\"\",\"180.0\",\"1\",\"\",\"\"\n");
    Food food = only(read(fdc, Selection.ids("900006")));
    assertThat(food.per100g().get(Nutrient.ENERGY)).isEqualTo(Quantity.known(480));
    assertThat(food.per100g().get(Nutrient.PROTEIN)).isEqualTo(Quantity.known(21));
    assertThat(food.household())
        .containsExactly(
            new HouseholdMeasure("tbsp, heaped", 9), new HouseholdMeasure("cup", 90));
  }
}
