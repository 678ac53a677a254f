package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.photo.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckNotebookTest {
  private static final String FORMULA = "formulas/seeded-lupin-bun.json";
  private static final String BAKE = "bakes/seeded-lupin-bun/2026-03-02-1.json";
  private static final String PHOTO = "photos/seeded-lupin-bun/2026-03-02-1-1.jpg";

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void bakeWithGoalAndPhoto() {
    kitchen = new Kitchen(folder);
    new SaveGoal(kitchen.desk())
        .call(
            new SaveGoal.Request(
                "low-carb", "Few carbohydrates", Optional.empty(), List.of("batch_g <= 500"),
                List.of("gluten"), List.of(), Optional.empty()),
            false,
            kitchen.by());
    kitchen.revise(
        Address.latest(Kitchen.BUN, Optional.empty()),
        Kitchen.bun(188).withGoal(Optional.of("low-carb")),
        "Aim at few carbohydrates");
    new RecordBake(kitchen.desk())
        .call(
            RecordBake.Request.of(
                    Address.parse("seeded-lupin-bun@2"),
                    OffsetDateTime.parse("2026-03-02T08:30:00+01:00"))
                .withPieces(PieceText.read(List.of(), List.of("a 190C", "b 200C")))
                .withPhotos(List.of(Kitchen.photo("tray.jpg"))),
            kitchen.by());
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private KitchenViews.CheckView check() {
    return new CheckNotebook(kitchen.open()).call(CheckNotebook.Progress.NONE);
  }

  private KitchenViews.CheckResult onlyFault() {
    KitchenViews.CheckView view = check();
    assertThat(view.results()).as(view.toString()).hasSize(1);
    assertThat(view.ok()).isFalse();
    assertThat(view.results().get(0).level()).isEqualTo("wrong");
    return told(view.results().get(0));
  }

  private KitchenViews.CheckResult onlyNotice() {
    KitchenViews.CheckView view = check();
    assertThat(view.results()).as(view.toString()).hasSize(1);
    assertThat(view.ok()).isTrue();
    assertThat(view.results().get(0).level()).isEqualTo("notice");
    return told(view.results().get(0));
  }

  private static KitchenViews.CheckResult told(KitchenViews.CheckResult result) {
    assertThat(result.where()).isNotBlank();
    assertThat(result.message()).matches("[^\n]+\\.");
    assertThat(result.hint()).isNotBlank();
    return result;
  }

  private void replace(String path, String old, String with) {
    String text = kitchen.read(path);
    assertThat(text).contains(old);
    kitchen.write(path, text.replace(old, with));
  }

  private void commit(String path, String old, String with) {
    replace(path, old, with);
    kitchen.commitByHand("Seed a fault");
  }

  @Test
  void aCleanNotebookHasNothingToTell() {
    kitchen.variant("egg-free");
    kitchen.revise(Address.parse("seeded-lupin-bun/egg-free"), Kitchen.bun(200), "Softer");
    List<String> told = new ArrayList<>();

    KitchenViews.CheckView view =
        new CheckNotebook(kitchen.open()).call((what, done, total) -> told.add(what));

    assertThat(view.results()).isEmpty();
    assertThat(view.ok()).isTrue();
    assertThat(view.files()).isPositive();
    assertThat(view.photos()).isEqualTo(1);
    assertThat(view.objects()).isPositive();
    assertThat(told).contains("files", "photos", "Git objects");
  }

  @Test
  void aFileThatIsCutOffIsFoundWithLineAndColumn() {
    kitchen.write(FORMULA, kitchen.read(FORMULA).substring(0, 150));
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().where()).matches("formulas/seeded-lupin-bun\\.json:\\d+:\\d+.*");
  }

  @Test
  void everyFaultWithinAFileIsTold() {
    kitchen.write(
        "pantry/broken.json", "{\n  \"name\": 7,\n  \"kind\": \"wet\",\n  \"allergens\": [\"x\"]\n}");
    kitchen.commitByHand("Seed faults");

    assertThat(check().results())
        .extracting(KitchenViews.CheckResult::where)
        .containsExactly(
            "pantry/broken.json:2:11, field name",
            "pantry/broken.json:3:11, field kind",
            "pantry/broken.json:4:16, field allergens");
  }

  @Test
  void aFoodThatIsMissingIsFound() {
    commit(FORMULA, "\"food\": \"water\"", "\"food\": \"sea-water\"");

    KitchenViews.CheckResult fault = onlyFault();
    assertThat(fault.where()).isEqualTo(FORMULA + ", field lines[1].food");
    assertThat(fault.message()).contains("\"sea-water\"", "\"water\"");
    assertThat(fault.hint()).contains("ovenmark pantry add sea-water");
  }

  @Test
  void aGoalThatIsMissingIsFound() {
    kitchen.repository().git("rm", "-q", "goals/low-carb.json");
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().where()).isEqualTo(FORMULA + ", field goal");
  }

  @Test
  void aReferenceThatIsNotHereIsToldAndIsNoFault() {
    commit(FORMULA, "\"lines\":", "\"reference\": \"wheat-bun\",\n  \"lines\":");

    KitchenViews.CheckView view = check();
    assertThat(view.ok()).isTrue();
    KitchenViews.CheckResult notice = view.results().get(0);
    assertThat(notice.where()).isEqualTo(FORMULA + ", field reference");
    assertThat(notice.message()).contains("wheat-bun");
  }

  @Test
  void aBakeOfNoKnownContentIsFound() {
    commit(BAKE, "\"blob\": \"", "\"blob\": \"0123456789012345678901234567890123456789\",\n"
        + "  \"was\": \"");

    KitchenViews.CheckResult fault = onlyFault();
    assertThat(fault.where()).isEqualTo(BAKE + ", field blob");
    assertThat(fault.hint()).contains("ovenmark timeline seeded-lupin-bun");
  }

  @Test
  void aBakeOfAFormulaThatIsNotThereIsFound() {
    String bake = kitchen.read(BAKE).replaceAll("(?s)\"photos\": \\[.*\\]", "\"photos\": []");
    kitchen.write("bakes/rye-bun/2026-03-02-1.json", bake);
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().message()).contains("\"rye-bun\", which the notebook lacks");
  }

  @Test
  void aBakeThatNamesAnotherRevisionThanItsContentIsNoticed() {
    commit(BAKE, "seeded-lupin-bun@2", "seeded-lupin-bun@1");

    KitchenViews.CheckResult notice = onlyNotice();
    assertThat(notice.message()).contains("seeded-lupin-bun@1", "that of seeded-lupin-bun@2");
  }

  @Test
  void aPhotoThatIsNotThereIsFound() {
    kitchen.repository().git("rm", "-q", PHOTO);
    kitchen.commitByHand("Seed a fault");

    KitchenViews.CheckResult fault = onlyFault();
    assertThat(fault.where()).isEqualTo(BAKE + ", field photos[0]");
    assertThat(fault.message()).contains(PHOTO, "is not there");
  }

  @Test
  void aPhotoInAnotherFormulasFolderIsFound() {
    kitchen.repository().git("mv", "photos/seeded-lupin-bun", "photos/rye-bun");
    commit(BAKE, "photos/seeded-lupin-bun/", "photos/rye-bun/");

    assertThat(onlyFault().message()).contains("another formula's folder");
  }

  @Test
  void aPhotoThatNoBakeMentionsIsNoticed() {
    kitchen.write(
        "photos/seeded-lupin-bun/other.jpg", Pictures.jpeg(Pictures.corners(40, 40)));
    kitchen.commitByHand("Add a picture");

    assertThat(onlyNotice().where()).isEqualTo("photos/seeded-lupin-bun/other.jpg");
  }

  @Test
  void aPhotoThatIsATextFileIsFound() {
    kitchen.write(PHOTO, "not a picture");
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().message()).contains("no JPEG");
  }

  @Test
  void aPhotoThatIsCutOffIsFound() {
    byte[] jpeg = Pictures.jpeg(Pictures.corners(320, 240));
    kitchen.write(PHOTO, Arrays.copyOf(jpeg, jpeg.length / 2));
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().message()).contains("damaged or cut off");
  }

  @Test
  void aPhotoThatSaysWhereItWasTakenIsFound() {
    kitchen.write(
        PHOTO,
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(40, 40)), new Pictures.Exif().at(54, 8)));
    kitchen.commitByHand("Seed a fault");

    assertThat(onlyFault().message()).contains("where it was taken");
  }

  @Test
  void aMarkOfAPieceThatIsNotThereIsFound() {
    commit(
        BAKE,
        "\"file\": \"" + PHOTO + "\"",
        "\"file\": \"" + PHOTO + "\",\n      \"marks\": [{\"piece\": \"z\", \"x\": 0, \"y\": 0}]");

    KitchenViews.CheckResult fault = onlyFault();
    assertThat(fault.where()).isEqualTo(BAKE + ", field photos[0]");
    assertThat(fault.message()).contains("\"z\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "formulas/Rye Bun.json",
        "formulas/rye-bun.txt",
        "formulas/old/rye-bun.json",
        "bakes/2026-03-02-1.json",
        "bakes/seeded-lupin-bun/yesterday.json",
        "photos/seeded-lupin-bun/tray.png",
        "goals/low carb.json"
      })
  void aFileThatIsNotReadBecauseOfItsNameIsFound(String path) {
    kitchen.write(path, "{}");
    assertThat(onlyFault().where()).isEqualTo(path);

    kitchen.commitByHand("Seed a fault");
    assertThat(onlyFault().where()).isEqualTo(path);
  }

  @Test
  void aFileOfOnesOwnIsNoticedUntilItIsCommitted() {
    kitchen.write("shopping.txt", "seaweed");
    assertThat(onlyNotice().where()).isEqualTo("shopping.txt");

    kitchen.commitByHand("Keep the list");
    assertThat(check().results()).isEmpty();
  }

  @Test
  void aHandEditIsNoticedWithTheWayToCommitIt() {
    replace(FORMULA, "188 g", "190 g");

    KitchenViews.CheckResult notice = onlyNotice();
    assertThat(notice.where()).isEqualTo(FORMULA);
    assertThat(notice.hint()).contains("ovenmark revise seeded-lupin-bun");
  }

  @Test
  void aHandEditThatCannotBeReadIsFoundWithLineAndColumn() {
    replace(FORMULA, "\"188 g\"", "\"188 stones\" \"");

    assertThat(onlyFault().where()).matches("formulas/seeded-lupin-bun\\.json:\\d+:\\d+.*");
  }

  @Test
  void aFileThatWasDeletedOnDiskIsNoticed() throws IOException {
    Files.delete(kitchen.repository().directory().resolve(PHOTO));

    KitchenViews.CheckResult notice = onlyNotice();
    assertThat(notice.hint()).contains("git restore " + PHOTO);
  }

  @Test
  void aFolderInPlaceOfAFileIsFound() throws IOException {
    Path file = kitchen.repository().directory().resolve("goals/low-carb.json");
    Files.delete(file);
    Files.createDirectories(file);

    assertThat(onlyFault().where()).isEqualTo("goals/low-carb.json");
  }

  @Test
  void aFaultOfAVariantSaysWhichVariant() {
    kitchen.variant("egg-free");
    kitchen.repository().git("checkout", "-q", "variant/seeded-lupin-bun/egg-free");
    commit(FORMULA, "\"food\": \"water\"", "\"food\": \"sea-water\"");
    kitchen.repository().git("checkout", "-q", "main");

    assertThat(onlyFault().line()).isEqualTo("seeded-lupin-bun/egg-free");
  }

  @Test
  void whatAVariantsBranchIsNotReadForIsNoFault() {
    kitchen.variant("egg-free");
    kitchen.repository().git("checkout", "-q", "variant/seeded-lupin-bun/egg-free");
    kitchen.write("formulas/rye-bun.json", "{");
    kitchen.commitByHand("Not read from here");
    kitchen.repository().git("checkout", "-q", "main");

    assertThat(check().results()).isEmpty();
  }

  @Test
  void twoBakesOfOneNameAreFound() {
    kitchen.variant("egg-free");
    kitchen.repository().git("checkout", "-q", "variant/seeded-lupin-bun/egg-free");
    commit(BAKE, "08:30", "14:30");
    kitchen.repository().git("checkout", "-q", "main");

    KitchenViews.CheckResult fault = onlyFault();
    assertThat(fault.line()).isEqualTo("seeded-lupin-bun/egg-free");
    assertThat(fault.message()).contains("hides this one");
  }

  @Test
  void aBakeThatAVariantHasInAnEarlierStateIsNoFault() {
    kitchen.variant("egg-free");
    new AddPhotos(kitchen.desk())
        .call(
            Kitchen.BUN, "2026-03-02-1", List.of(Kitchen.photo("two.jpg")), kitchen.by());

    assertThat(check().results()).isEmpty();
  }

  @Test
  void aBranchThatNamesNoVariantIsNoticed() {
    kitchen.repository().git("branch", "variant/seeded-lupin-bun");

    assertThat(onlyNotice().where()).isEqualTo("branch variant/seeded-lupin-bun");
  }

  @Test
  void aDamagedGitObjectIsFound() throws IOException {
    String blob = kitchen.repository().git("rev-parse", "main:goals/low-carb.json");
    Path object = object(blob);
    object.toFile().setWritable(true);
    byte[] bytes = Files.readAllBytes(object);
    bytes[bytes.length / 2] ^= 0x55;
    Files.write(object, bytes);

    KitchenViews.CheckView view = check();
    assertThat(view.ok()).isFalse();
    assertThat(view.results())
        .extracting(KitchenViews.CheckResult::where)
        .contains("goals/low-carb.json", "object " + blob);
  }

  @Test
  void aMissingGitObjectOfTheHistoryIsFound() throws IOException {
    String blob = kitchen.repository().git("rev-parse", "main~4:" + FORMULA);
    Files.delete(object(blob));

    assertThat(check().results())
        .extracting(KitchenViews.CheckResult::where)
        .contains("object " + blob);
  }

  private Path object(String id) {
    return kitchen
        .repository()
        .directory()
        .resolve(".git/objects/" + id.substring(0, 2) + "/" + id.substring(2));
  }

  @Test
  void nothingIsChangedByACheck() {
    replace(FORMULA, "188 g", "190 g");
    String before = kitchen.repository().git("status", "--porcelain");
    String refs = kitchen.repository().git("for-each-ref");

    check();

    assertThat(kitchen.repository().git("status", "--porcelain")).isEqualTo(before);
    assertThat(kitchen.repository().git("for-each-ref")).isEqualTo(refs);
  }
}
