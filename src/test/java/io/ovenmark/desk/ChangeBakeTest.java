package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.store.RepositoryFixture;
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

class ChangeBakeTest {
  private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-03-02T08:30:00+01:00");
  private static final String ID = "2026-03-02-1";

  @TempDir Path folder;
  private Kitchen kitchen;

  @BeforeEach
  void bake() {
    kitchen = new Kitchen(folder);
    new RecordBake(kitchen.desk())
        .call(
            RecordBake.Request.of(Address.parse(Kitchen.BUN), MORNING)
                .withPieces(
                    PieceText.read(List.of(), List.of("a 190C dough=95g", "b 200C dough=95g"))),
            kitchen.by());
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private KitchenViews.BakeWritten change(String... pieces) {
    return new ChangeBake(kitchen.desk())
        .call(
            Kitchen.BUN,
            ID,
            new ChangeBake.Changes(List.of(pieces), List.of(), Optional.empty()),
            kitchen.by());
  }

  @Test
  void whatIsKnownLaterIsAddedToThePiece() {
    Views.BakeView bake = change("b baked=81g liking=7,8 finding=pale").bake();

    assertThat(bake.pieces().get(0).bakedG()).isNull();
    assertThat(bake.pieces().get(1).doughG()).isEqualTo(95);
    assertThat(bake.pieces().get(1).bakedG()).isEqualTo(81);
    assertThat(bake.pieces().get(1).liking()).containsExactly(7.0, 8.0);
    assertThat(new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID)).isEqualTo(bake);
    kitchen.assertSound();
  }

  @Test
  void theTrayGetsFindingsAndAnotherNote() {
    ChangeBake.Changes changes =
        new ChangeBake.Changes(
            List.of(), List.of("Even crumb", "even crumb"), Optional.of("Cooled on a rack"));

    Views.BakeView bake =
        new ChangeBake(kitchen.desk()).call(Kitchen.BUN, ID, changes, kitchen.by()).bake();

    assertThat(bake.findings()).containsExactly("even crumb");
    assertThat(bake.note()).isEqualTo("Cooled on a rack");
  }

  @Test
  void aChangeThatSaysNothingNewIsRefused() {
    assertThatThrownBy(() -> change("a 190C"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("says all of that already");
  }

  @Test
  void aBakeThatIsNotThereIsRefusedWithThoseThatAre() {
    Refusal refusal =
        catchThrowableOfType(
            Refusal.class,
            () -> new ShowBake(kitchen.desk()).call(Kitchen.BUN, "2026-03-09-1"));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.NOT_FOUND);
    assertThat(refusal.hint()).contains(ID);
  }

  @Test
  void unknownFieldsOfTheBakeSurviveAChange() {
    String path = "bakes/seeded-lupin-bun/" + ID + ".json";
    kitchen.write(
        path, kitchen.read(path).replaceFirst("\\{", "{\n  \"oven\": \"the old one\","));
    kitchen.commitByHand("Note the oven");

    new ChangeBake(kitchen.open())
        .call(
            Kitchen.BUN,
            ID,
            new ChangeBake.Changes(List.of("a baked=80g"), List.of(), Optional.empty()),
            kitchen.by());

    assertThat(kitchen.read(path)).contains("\"oven\": \"the old one\"", "\"baked_g\": 80");
  }

  @Test
  void photosAreAddedBehindThoseThatAreThere() {
    AddPhotos verb = new AddPhotos(kitchen.desk());
    verb.call(Kitchen.BUN, ID, List.of(Kitchen.photo("one.jpg")), kitchen.by());

    KitchenViews.BakeWritten written =
        verb.call(
            Kitchen.BUN,
            ID,
            List.of(
                new NewPhoto(
                    Kitchen.photo("two.jpg").bytes(),
                    "two.jpg",
                    Optional.of("Cut through"),
                    List.of(new Photo.Mark("b", 0.1, 0.9)))),
            kitchen.by());

    assertThat(written.photosAdded())
        .containsExactly("photos/seeded-lupin-bun/2026-03-02-1-2.jpg");
    assertThat(written.bake().photos())
        .extracting(Views.PhotoView::file)
        .containsExactly(
            "photos/seeded-lupin-bun/2026-03-02-1-1.jpg",
            "photos/seeded-lupin-bun/2026-03-02-1-2.jpg");
    assertThat(written.bake().photos().get(1).caption()).isEqualTo("Cut through");
    kitchen.assertSound();
  }

  @Test
  void thePhotosOfAVariantsBakeGoToItsBranch() {
    kitchen.variant("egg-free");
    Address line = kitchen.variant("dairy-free");
    Views.BakeView bake =
        new RecordBake(kitchen.desk())
            .call(
                RecordBake.Request.of(line, MORNING)
                    .withPieces(PieceText.read(List.of(), List.of("a 190C"))),
                kitchen.by())
            .bake();

    new AddPhotos(kitchen.desk())
        .call(Kitchen.BUN, bake.id(), List.of(Kitchen.photo("one.jpg")), kitchen.by());

    String path = "photos/seeded-lupin-bun/2026-03-02-2-1.jpg";
    assertThat(kitchen.files("variant/seeded-lupin-bun/dairy-free")).contains(path);
    assertThat(kitchen.files("main")).doesNotContain(path);
    assertThat(kitchen.desk().notebook().photo(Kitchen.BUN, path)).isPresent();
    kitchen.assertSound();
  }

  @Test
  void twoProgramsThatAddPhotosAtOnceLoseNone() throws Exception {
    int each = 5;
    List<Callable<Void>> tasks = new ArrayList<>();
    for (String who : List.of("Mara", "Ida")) {
      Desk desk = kitchen.open();
      tasks.add(
          () -> {
            for (int i = 0; i < each; i++) {
              By by = new By(RepositoryFixture.AUTHOR, MORNING.plusMinutes(i));
              NewPhoto photo =
                  new NewPhoto(
                      Kitchen.photo("x.jpg").bytes(), "x.jpg", Optional.of(who + i), List.of());
              new AddPhotos(desk).call(Kitchen.BUN, ID, List.of(photo), by);
            }
            return null;
          });
    }
    ExecutorService writers = Executors.newFixedThreadPool(tasks.size());
    for (Future<Void> done : writers.invokeAll(tasks)) {
      done.get();
    }
    writers.shutdown();

    assertThat(new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID).photos())
        .extracting(Views.PhotoView::file)
        .hasSize(2 * each)
        .doesNotHaveDuplicates();
    kitchen.assertSound();
  }

  @Test
  void noPhotoAtAllIsRefused() {
    assertThatThrownBy(
            () -> new AddPhotos(kitchen.desk()).call(Kitchen.BUN, ID, List.of(), kitchen.by()))
        .isInstanceOf(Refusal.class);
  }
}
