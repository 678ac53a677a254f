package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.PhotoFault;
import io.ovenmark.photo.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WaitingPhotosTest {
  private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-03-02T08:30:00+01:00");
  private static final String ID = "2026-03-02-1";

  @TempDir Path folder;
  private Kitchen kitchen;
  private WaitingPhotos waiting;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
    waiting = new WaitingPhotos(kitchen.desk());
    new RecordBake(kitchen.desk())
        .call(
            RecordBake.Request.of(Address.parse(Kitchen.BUN), MORNING)
                .withPieces(PieceText.read(List.of(), List.of("a 190C"))),
            kitchen.by());
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private static ReadyPhoto ready(int width, String taken) {
    byte[] bytes =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(width, 80)),
            new Pictures.Exif().taken(taken).zone("+01:00").at(54, 8));
    return ReadyPhoto.of(new NewPhoto(bytes, "x.jpg", Optional.of("A bun"), List.of()));
  }

  private String put(int width, String name) {
    return waiting
        .put(Kitchen.BUN, ID, name, ready(width, "2026:03:02 09:00:00"))
        .picture();
  }

  private long commits() {
    return kitchen.repository().git("rev-list", "main").lines().count();
  }

  @Test
  void picturesThatWaitAreAddedInOneCommit() {
    long before = commits();
    List<String> pictures = List.of(put(100, "one.jpg"), put(110, "two.jpg"), put(120, "3.jpg"));
    assertThat(commits()).isEqualTo(before);

    PhotoViews.PhotosAdded added = waiting.add(Kitchen.BUN, ID, pictures, kitchen.by());

    assertThat(commits()).isEqualTo(before + 1);
    assertThat(added.photosAdded()).hasSize(3);
    assertThat(added.bake().photos())
        .extracting(Views.PhotoView::taken)
        .containsOnly("2026-03-02T09:00:00+01:00");
    assertThat(added.bake().photos())
        .extracting(Views.PhotoView::caption)
        .containsOnly("A bun");
    assertThat(waiting.list(Kitchen.BUN, ID)).isEmpty();
    byte[] kept =
        kitchen.desk().notebook().photo(Kitchen.BUN, added.photosAdded().get(1)).orElseThrow();
    assertThat(Pictures.read(kept).getWidth()).isEqualTo(110);
    kitchen.assertSound();
  }

  @Test
  void theyOutliveTheProgramAndHaveNoPlaceInThem() throws IOException {
    String picture = put(100, "one.jpg");

    List<PhotoViews.WaitingPhoto> seen =
        new WaitingPhotos(kitchen.open()).list(Kitchen.BUN, ID);

    assertThat(seen)
        .containsExactly(
            new PhotoViews.WaitingPhoto(
                picture, "one.jpg", "A bun", "2026-03-02T09:00", 100, 80));
    try (Stream<Path> files = Files.walk(kitchen.desk().notebook().ownFolder())) {
      List<Path> jpegs = files.filter(file -> file.toString().endsWith(".jpg")).toList();
      assertThat(jpegs).hasSize(1);
      assertThat(PhotoFault.of(Files.readAllBytes(jpegs.get(0)))).isEmpty();
    }
    assertThat(kitchen.repository().git("status", "--porcelain")).isEmpty();
  }

  @Test
  void oneThatIsGoneOrShownAlreadyDoesNotHoldTheOthersUp() {
    String shown = put(100, "one.jpg");
    waiting.add(Kitchen.BUN, ID, List.of(shown), kitchen.by());
    String again = put(100, "one again.jpg");
    String gone = put(110, "two.jpg");
    waiting.throwAway(Kitchen.BUN, ID, List.of(gone));
    String good = put(120, "three.jpg");
    assertThat(again).isEqualTo(shown);

    PhotoViews.PhotosAdded added =
        waiting.add(Kitchen.BUN, ID, List.of(again, gone, good, "../x", good), kitchen.by());

    assertThat(added.photosAdded()).hasSize(1);
    assertThat(added.repeated()).containsExactly(again);
    assertThat(added.missing()).containsExactly(gone, "../x");
    assertThat(added.bake().photos()).hasSize(2);
    assertThat(waiting.list(Kitchen.BUN, ID)).isEmpty();
  }

  @Test
  void aPictureAddedAtOnceTwiceIsThereOnce() {
    ReadyPhoto photo = ready(100, "2026:03:02 09:00:00");
    waiting.addAtOnce(Kitchen.BUN, ID, photo, kitchen.by());
    long before = commits();

    PhotoViews.PhotosAdded again = waiting.addAtOnce(Kitchen.BUN, ID, photo, kitchen.by());

    assertThat(again.photosAdded()).isEmpty();
    assertThat(again.repeated()).hasSize(1);
    assertThat(again.bake().photos()).hasSize(1);
    assertThat(commits()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../../x.jpg",
        "..\\..\\x.jpg",
        "C:\\Windows\\x.jpg",
        "CON.jpg",
        "<img src=x onerror=alert(1)>.jpg",
        "a\u0000b\n\u001b[31m.jpg",
        "\u202egpj.exe"
      })
  void aHostileNameNeverBecomesAPath(String name) throws IOException {
    String picture = put(100, name);

    assertThat(waiting.list(Kitchen.BUN, ID))
        .extracting(PhotoViews.WaitingPhoto::name)
        .containsExactly(name);
    try (Stream<Path> files = Files.walk(kitchen.desk().notebook().ownFolder())) {
      assertThat(
              files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()))
          .contains(picture + ".jpg", picture + ".json")
          .noneMatch(file -> file.contains("x.jpg") || file.contains("CON"));
    }
    assertThat(waiting.add(Kitchen.BUN, ID, List.of(picture), kitchen.by()).photosAdded())
        .containsExactly("photos/seeded-lupin-bun/2026-03-02-1-1.jpg");
    kitchen.assertSound();
  }

  @Test
  void aLongNameIsCut() {
    put(100, "😀".repeat(3000));

    assertThat(waiting.list(Kitchen.BUN, ID).get(0).name()).isEqualTo("😀".repeat(120) + "…");
  }

  @Test
  void aDamagedNoteCountsAsAbsent() throws IOException {
    String picture = put(100, "one.jpg");
    Path note;
    try (Stream<Path> files = Files.walk(kitchen.desk().notebook().ownFolder())) {
      note = files.filter(file -> file.endsWith(picture + ".json")).findFirst().orElseThrow();
    }
    Files.writeString(note, "{\"name\":");

    assertThat(waiting.list(Kitchen.BUN, ID)).isEmpty();
    assertThat(waiting.add(Kitchen.BUN, ID, List.of(picture), kitchen.by()).missing())
        .containsExactly(picture);
  }

  @Test
  void thereMustBeSuchABake() {
    assertThatThrownBy(() -> waiting.requireRoom(Kitchen.BUN, "2030-01-01-1"))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> waiting.list("../x", ID)).isInstanceOf(Refusal.class);
  }
}
