package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.photo.PhotoFault;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordBakeTest {
  private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-03-02T08:30:00+01:00");

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private static RecordBake.Request request(String address, String... pieces) {
    return RecordBake.Request.of(Address.parse(address), MORNING)
        .withPieces(PieceText.read(List.of(), List.of(pieces)));
  }

  private KitchenViews.BakeWritten record(RecordBake.Request request) {
    return new RecordBake(kitchen.desk()).call(request, kitchen.by());
  }

  private String blob(String address) {
    return kitchen.desk().notebook().revision(Address.parse(address)).blob().hex();
  }

  @Test
  void aBakePointsToTheContentThatWasWeighed() {
    KitchenViews.BakeWritten written =
        record(request(Kitchen.BUN, "a 190C 24min dough=95g baked=82g"));

    Views.BakeView bake = written.bake();
    assertThat(bake.id()).isEqualTo("2026-03-02-1");
    assertThat(bake.address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(bake.blob()).isEqualTo(blob("seeded-lupin-bun@2"));
    assertThat(bake.revisions()).containsExactly("seeded-lupin-bun@2");
    assertThat(bake.pieces()).hasSize(1);
    assertThat(kitchen.files("main")).contains("bakes/seeded-lupin-bun/2026-03-02-1.json");
    assertThat(new ShowBake(kitchen.desk()).call(Kitchen.BUN, bake.id())).isEqualTo(bake);
    kitchen.assertSound();
  }

  @Test
  void anOlderRevisionCanBeBaked() {
    Views.BakeView bake = record(request("seeded-lupin-bun@1", "a 190C 24min")).bake();

    assertThat(bake.address()).isEqualTo("seeded-lupin-bun@1");
    assertThat(bake.blob()).isEqualTo(blob("seeded-lupin-bun@1"));
    kitchen.assertSound();
  }

  @Test
  void aBakeOfAVariantGoesToItsBranch() {
    kitchen.variant("egg-free");
    kitchen.revise(
        Address.parse("seeded-lupin-bun/egg-free"), Kitchen.bun(200), "More water, no egg yet");

    KitchenViews.BakeWritten written =
        record(request("seeded-lupin-bun/egg-free", "a 190C 24min"));

    assertThat(written.line()).isEqualTo("seeded-lupin-bun/egg-free");
    assertThat(written.bake().revisions()).containsExactly("seeded-lupin-bun/egg-free@3");
    assertThat(kitchen.files("variant/seeded-lupin-bun/egg-free"))
        .contains("bakes/seeded-lupin-bun/2026-03-02-1.json");
    assertThat(kitchen.files("main")).noneMatch(path -> path.startsWith("bakes/"));
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes())
        .extracting(Views.BakeView::id)
        .containsExactly("2026-03-02-1");
    kitchen.assertSound();
  }

  @Test
  void aBakeNamesEveryRevisionThatHasItsContent() {
    Revision first = kitchen.desk().notebook().revision(Address.parse("seeded-lupin-bun@1"));
    kitchen.revise(first.address(), Kitchen.bun(180), "Back to the firmer dough");
    kitchen.variant("egg-free");
    kitchen.revise(Address.parse("seeded-lupin-bun/egg-free"), Kitchen.bun(190), "Softer");
    kitchen.revise(Address.parse("seeded-lupin-bun/egg-free"), Kitchen.bun(180), "Firmer");

    Views.BakeView bake = record(request("seeded-lupin-bun@1", "a 190C")).bake();

    assertThat(bake.revisions())
        .containsExactly(
            "seeded-lupin-bun@1", "seeded-lupin-bun@3", "seeded-lupin-bun/egg-free@5");
  }

  @Test
  void theSecondBakeOfADayGetsTheNextNumber() {
    record(request(Kitchen.BUN, "a 190C"));
    kitchen.variant("egg-free");
    Views.BakeView second = record(request("seeded-lupin-bun/egg-free", "a 200C")).bake();
    Views.BakeView third = record(request("seeded-lupin-bun@1", "a 210C")).bake();

    assertThat(List.of(second.id(), third.id())).containsExactly("2026-03-02-2", "2026-03-02-3");
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes()).hasSize(3);
    kitchen.assertSound();
  }

  @Test
  void aDamagedBakeIsNotInTheWayOfANewOne() {
    record(request(Kitchen.BUN, "a 190C"));
    kitchen.write("bakes/seeded-lupin-bun/2026-03-02-1.json", "{");
    kitchen.commitByHand("A slip");

    new RecordBake(kitchen.open()).call(request(Kitchen.BUN, "a 200C"), kitchen.by());

    assertThat(kitchen.files("main")).contains("bakes/seeded-lupin-bun/2026-03-02-2.json");
  }

  @Test
  void twoProgramsThatRecordAtOnceLoseNoBake() throws Exception {
    int each = 10;
    List<Desk> desks = List.of(kitchen.open(), kitchen.open());
    ExecutorService writers = Executors.newFixedThreadPool(desks.size());
    List<Callable<List<String>>> tasks = new ArrayList<>();
    for (Desk desk : desks) {
      tasks.add(
          () -> {
            List<String> ids = new ArrayList<>();
            for (int i = 0; i < each; i++) {
              String piece = "a 190C note='" + desks.indexOf(desk) + " " + i + "'";
              ids.add(
                  new RecordBake(desk)
                      .call(request(Kitchen.BUN, piece), by(i))
                      .bake()
                      .id());
            }
            return ids;
          });
    }
    List<String> ids = new ArrayList<>();
    for (Future<List<String>> done : writers.invokeAll(tasks)) {
      ids.addAll(done.get());
    }
    writers.shutdown();

    assertThat(ids).hasSize(2 * each).doesNotHaveDuplicates();
    assertThat(new ListBakes(kitchen.desk()).call(Kitchen.BUN).bakes())
        .extracting(Views.BakeView::id)
        .containsExactlyInAnyOrderElementsOf(ids);
    kitchen.assertSound();
  }

  private static By by(int minute) {
    return new By(RepositoryFixture.AUTHOR, MORNING.plusMinutes(minute));
  }

  @Test
  void photosAreKeptUprightWithoutPlaceUnderASafeName() {
    NewPhoto photo =
        new NewPhoto(
            Kitchen.photo("x").bytes(),
            "../../../etc/passwd\u001b[31m.JPG",
            Optional.of("The tray"),
            List.of(new Photo.Mark("a", 0.25, 0.5)));

    KitchenViews.BakeWritten written =
        record(
            request(Kitchen.BUN, "a 190C").withPhotos(List.of(photo, Kitchen.photo("b.jpg"))));

    assertThat(written.photosAdded())
        .containsExactly(
            "photos/seeded-lupin-bun/2026-03-02-1-1.jpg",
            "photos/seeded-lupin-bun/2026-03-02-1-2.jpg");
    Views.PhotoView kept = written.bake().photos().get(0);
    assertThat(kept.caption()).isEqualTo("The tray");
    assertThat(kept.marks()).containsExactly(new Views.MarkView("a", 0.25, 0.5));
    byte[] bytes =
        kitchen.desk().notebook().photo(Kitchen.BUN, kept.file()).orElseThrow();
    assertThat(PhotoFault.of(bytes)).isEmpty();
    assertThat(kitchen.files("main")).containsAll(written.photosAdded());
    kitchen.assertSound();
  }

  @Test
  void aPhotoThatIsATextFileRefusesTheWholeBake() {
    NewPhoto text =
        new NewPhoto(
            "not a picture".getBytes(StandardCharsets.UTF_8),
            "tray.jpg",
            Optional.empty(),
            List.of());
    List<String> before = kitchen.files("main");

    assertThatThrownBy(
            () -> record(request(Kitchen.BUN, "a 190C").withPhotos(List.of(text))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("\"tray.jpg\" is a text file");
    assertThat(kitchen.files("main")).isEqualTo(before);
  }

  @Test
  void aMarkOfAPieceThatIsNotThereIsRefused() {
    NewPhoto photo =
        new NewPhoto(
            Kitchen.photo("x").bytes(),
            "tray.jpg",
            Optional.empty(),
            List.of(new Photo.Mark("z", 0.5, 0.5)));

    assertThatThrownBy(
            () -> record(request(Kitchen.BUN, "a 190C").withPhotos(List.of(photo))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no piece \"z\"");
  }

  @Test
  void aBakeOfWhichNothingIsNotedIsRefused() {
    assertThatThrownBy(() -> record(request(Kitchen.BUN)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("nothing to record");
  }

  @ParameterizedTest
  @ValueSource(strings = {"seeded-lupin-bun@9", "rye-bun", "seeded-lupin-bun/nut-free"})
  void whatIsNotThereCannotBeBaked(String address) {
    Refusal refusal =
        catchThrowableOfType(Refusal.class, () -> record(request(address, "a 190C")));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.NOT_FOUND);
  }

  @Test
  void aFileThatIsNoRevisionYetCannotBeBaked() {
    assertThatThrownBy(() -> record(request("seeded-lupin-bun@edited", "a 190C")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("the file on disk is none yet");
  }

  /** Egg dishes are safe from 71 °C, 160 °F (USDA Food Safety and Inspection Service). */
  @Test
  void aCoolCentreOfADoughWithEggIsRemarked() {
    assertThat(record(request(Kitchen.BUN, "a 190C core=70.9C", "b core=71C")).remarks())
        .singleElement()
        .asString()
        .contains("a (70.9 °C)")
        .doesNotContain("b (");
    assertThat(record(request(Kitchen.BUN, "a 190C core=160F")).remarks()).isEmpty();
  }

  @Test
  void aPieceThatGainedMassIsRemarked() {
    assertThat(record(request(Kitchen.BUN, "a dough=80g baked=90g")).remarks())
        .singleElement()
        .asString()
        .contains("heavier baked than as dough, by 12.5 %");
  }

  @Test
  void findingsOfTheTrayTakeTheVocabularysForm() {
    RecordBake.Request request =
        new RecordBake.Request(
            Address.parse(Kitchen.BUN),
            MORNING,
            Optional.of(" Mara "),
            Optional.of(""),
            Optional.of("Door opened once"),
            List.of(),
            List.of("Even Crumb", "smells of rain", " "),
            List.of());

    Views.BakeView bake = record(request).bake();

    assertThat(bake.findings()).containsExactly("even crumb", "smells of rain");
    assertThat(bake.baker()).isEqualTo("Mara");
    assertThat(bake.ambient()).isNull();
    assertThat(bake.pieces()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"../x", "a b", "", "-"})
  void aNameThatIsNoneIsRefusedNotObeyed(String formula) {
    assertThatThrownBy(() -> new ListBakes(kitchen.desk()).call(formula))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> new ShowBake(kitchen.desk()).call(formula, "../../x"))
        .isInstanceOf(Refusal.class);
  }
}
