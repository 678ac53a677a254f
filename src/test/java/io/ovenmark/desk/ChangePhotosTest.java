package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.PieceText;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.Pictures;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangePhotosTest {
  private static final OffsetDateTime MORNING = OffsetDateTime.parse("2026-03-02T08:30:00+01:00");
  private static final String ID = "2026-03-02-1";
  private static final PhotoState EMPTY =
      new PhotoState(Optional.empty(), Optional.empty(), List.of());

  @TempDir Path folder;
  private Kitchen kitchen;
  private ChangePhotos verb;
  private String file;

  @BeforeEach
  void open() {
    kitchen = new Kitchen(folder);
    verb = new ChangePhotos(kitchen.desk());
    record(Kitchen.BUN);
    file = add("tray.jpg");
  }

  @AfterEach
  void close() {
    kitchen.close();
  }

  private void record(String address) {
    new RecordBake(kitchen.desk())
        .call(
            RecordBake.Request.of(Address.parse(address), MORNING)
                .withPieces(PieceText.read(List.of(), List.of("a 190C", "b 190C", "c 205C"))),
            kitchen.by());
  }

  private String add(String name) {
    return new AddPhotos(kitchen.desk())
        .call(Kitchen.BUN, ID, List.of(Kitchen.photo(name)), kitchen.by())
        .photosAdded()
        .get(0);
  }

  private PhotoViews.PhotoChanged change(PhotoState base, PhotoState wanted) {
    return verb.change(Kitchen.BUN, ID, file, base, base, wanted, kitchen.by());
  }

  private static PhotoState marked(Photo.Mark... marks) {
    return new PhotoState(Optional.empty(), Optional.empty(), List.of(marks));
  }

  private static PhotoState said(String caption) {
    return new PhotoState(Optional.of(caption), Optional.empty(), List.of());
  }

  private static Photo.Mark mark(String piece, double x, double y) {
    return new Photo.Mark(piece, x, y);
  }

  private Views.PhotoView shown() {
    return new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID).photos().get(0);
  }

  private long commits() {
    return kitchen.repository().git("rev-list", "main").lines().count();
  }

  @Test
  void wordsAndMarksAreCommittedTogether() {
    PhotoState wanted =
        new PhotoState(
            Optional.of("  Before cutting "),
            Optional.of("Three buns on a tray"),
            List.of(mark("a", 0.25, 0.51239), mark("b", 0.75, 0.5)));

    PhotoViews.PhotoChanged changed = change(EMPTY, wanted);

    assertThat(changed.outcome()).isEqualTo("committed");
    assertThat(changed.merged()).isFalse();
    assertThat(shown()).isEqualTo(changed.photo());
    assertThat(shown().caption()).isEqualTo("Before cutting");
    assertThat(shown().alternative()).isEqualTo("Three buns on a tray");
    assertThat(shown().marks())
        .containsExactly(
            new Views.MarkView("a", 0.25, 0.5124), new Views.MarkView("b", 0.75, 0.5));
    kitchen.assertSound();
  }

  @Test
  void whatItSaysAlreadyIsNotCommittedAgain() {
    change(EMPTY, said("Before cutting"));
    long before = commits();

    assertThat(change(EMPTY, said("Before cutting")).outcome()).isEqualTo("unchanged");
    assertThat(change(said("Before cutting"), said("Before cutting")).outcome())
        .isEqualTo("unchanged");
    assertThat(commits()).isEqualTo(before);
  }

  @Test
  void changesThatDoNotTouchAreBothKept() {
    change(EMPTY, marked(mark("a", 0.2, 0.2)));
    PhotoState mine = new PhotoState(Optional.of("Tray"), Optional.empty(), List.of(mark("b", 1, 1)));

    PhotoViews.PhotoChanged changed = change(EMPTY, mine);

    assertThat(changed.merged()).isTrue();
    assertThat(shown().caption()).isEqualTo("Tray");
    assertThat(shown().marks())
        .containsExactly(new Views.MarkView("a", 0.2, 0.2), new Views.MarkView("b", 1, 1));
  }

  @Test
  void anotherPieceIsStillRemovedWhileSomebodyMovesOne() {
    PhotoState both = marked(mark("a", 0.2, 0.2), mark("b", 0.8, 0.2));
    change(EMPTY, both);
    change(both, marked(mark("a", 0.3, 0.3), mark("b", 0.8, 0.2)));

    change(both, marked(mark("a", 0.2, 0.2)));

    assertThat(shown().marks()).containsExactly(new Views.MarkView("a", 0.3, 0.3));
  }

  @Test
  void theSamePieceMovedTwiceIsAConflictThatNamesBothSides() {
    PhotoState base = marked(mark("a", 0.2, 0.2));
    change(EMPTY, base);
    change(base, marked(mark("a", 0.3, 0.3)));
    long before = commits();

    PhotoViews.PhotoChanged refused = change(base, marked(mark("a", 0.9, 0.1)));

    assertThat(refused.outcome()).isEqualTo("conflict");
    assertThat(refused.conflicts())
        .containsExactly(
            new PhotoViews.PhotoConflict(
                "marks",
                "a",
                "90 % from the left, 10 % from above",
                "30 % from the left, 30 % from above"));
    assertThat(shown().marks()).containsExactly(new Views.MarkView("a", 0.3, 0.3));
    assertThat(commits()).isEqualTo(before);
  }

  @Test
  void aMarkThatSomebodyMovedIsNotRemovedUnseen() {
    PhotoState base = marked(mark("a", 0.2, 0.2));
    change(EMPTY, base);
    change(base, marked(mark("a", 0.3, 0.3)));

    assertThat(change(base, EMPTY).conflicts())
        .containsExactly(
            new PhotoViews.PhotoConflict(
                "marks", "a", null, "30 % from the left, 30 % from above"));
  }

  @Test
  void aMarkThatSomebodyRemovedIsNotMovedUnseen() {
    PhotoState base = marked(mark("a", 0.2, 0.2));
    change(EMPTY, base);
    change(base, EMPTY);

    assertThat(change(base, marked(mark("a", 0.9, 0.1))).conflicts())
        .extracting(PhotoViews.PhotoConflict::theirs)
        .containsExactly((String) null);
  }

  @Test
  void bothWordsCanBeInConflictAndTheChoiceIsCarriedOut() {
    PhotoState theirs = new PhotoState(Optional.of("Tray"), Optional.of("Buns"), List.of());
    change(EMPTY, theirs);
    PhotoState mine = new PhotoState(Optional.of("Sheet"), Optional.of("Rolls"), List.of());
    assertThat(change(EMPTY, mine).conflicts())
        .extracting(PhotoViews.PhotoConflict::what)
        .containsExactly("caption", "alternative");

    PhotoState chosen = new PhotoState(Optional.of("Sheet"), Optional.of("Buns"), List.of());
    verb.change(Kitchen.BUN, ID, file, EMPTY, theirs, chosen, kitchen.by());

    assertThat(shown().caption()).isEqualTo("Sheet");
    assertThat(shown().alternative()).isEqualTo("Buns");
  }

  @Test
  void whatMovedAgainAfterTheChoiceIsAskedOnceMore() {
    change(EMPTY, said("Tray"));
    change(said("Tray"), said("Tray, upper rack"));

    PhotoViews.PhotoChanged again =
        verb.change(Kitchen.BUN, ID, file, EMPTY, said("Tray"), said("Sheet"), kitchen.by());

    assertThat(again.outcome()).isEqualTo("conflict");
    assertThat(again.conflicts().get(0).theirs()).isEqualTo("Tray, upper rack");
  }

  @Test
  void aChangeOfThePiecesMeanwhileDoesNotStandInTheWay() {
    new ChangeBake(kitchen.desk())
        .call(
            Kitchen.BUN,
            ID,
            new ChangeBake.Changes(List.of("a baked=82g"), List.of(), Optional.empty()),
            kitchen.by());

    change(EMPTY, marked(mark("a", 0.5, 0.5)));

    Views.BakeView bake = new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID);
    assertThat(bake.pieces().get(0).bakedG()).isEqualTo(82);
    assertThat(bake.photos().get(0).marks()).hasSize(1);
  }

  @Test
  void onlyPiecesOfTheBakeAreMarked() {
    Refusal refusal =
        catchThrowableOfType(
            Refusal.class, () -> change(EMPTY, marked(mark("z", 0.5, 0.5))));

    assertThat(refusal.getMessage()).contains("no piece \"z\"");
    assertThat(refusal.where()).isEqualTo("marks");
  }

  @Test
  void textsAndMarksHaveALimit() {
    assertThatThrownBy(() -> change(EMPTY, said("x".repeat(301))))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("301 characters");
    Photo.Mark[] many =
        Stream.generate(() -> mark("a", 0.5, 0.5)).limit(201).toArray(Photo.Mark[]::new);
    assertThatThrownBy(() -> change(EMPTY, marked(many)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("201 marks");
  }

  @Test
  void aPhotoThatIsNotThereIsRefused() {
    assertThatThrownBy(
            () ->
                verb.change(
                    Kitchen.BUN, ID, "photos/x/y.jpg", EMPTY, EMPTY, said("x"), kitchen.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no such photo");
  }

  @Test
  void aPhotoThatIsTakenAwayIsGoneFromTheFilesAndComesBackAsItWas() {
    PhotoState state =
        new PhotoState(Optional.of("Tray"), Optional.empty(), List.of(mark("a", 0.5, 0.5)));
    change(EMPTY, state);
    String second = add("second.jpg");
    Views.BakeView before = new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID);

    PhotoViews.PhotoRemoved removed =
        verb.remove(Kitchen.BUN, ID, file, state, kitchen.by());

    assertThat(removed.bake().photos()).extracting(Views.PhotoView::file).containsExactly(second);
    assertThat(kitchen.files("main")).doesNotContain(file).contains(second);
    kitchen.assertSound();

    verb.bringBack(Kitchen.BUN, ID, file, removed.commit(), kitchen.by());

    assertThat(new ShowBake(kitchen.desk()).call(Kitchen.BUN, ID)).isEqualTo(before);
    assertThat(kitchen.files("main")).contains(file);
    long commits = commits();
    verb.bringBack(Kitchen.BUN, ID, file, removed.commit(), kitchen.by());
    assertThat(commits()).isEqualTo(commits);
    kitchen.assertSound();
  }

  @Test
  void aPhotoWhosePathIsTakenComesBackUnderAnother() {
    PhotoViews.PhotoRemoved removed = verb.remove(Kitchen.BUN, ID, file, EMPTY, kitchen.by());
    byte[] other =
        Pictures.jpeg(Pictures.corners(60, 40));
    new AddPhotos(kitchen.desk())
        .call(
            Kitchen.BUN,
            ID,
            List.of(new NewPhoto(other, "other.jpg", Optional.empty(), List.of())),
            kitchen.by());

    PhotoViews.PhotoChanged back =
        verb.bringBack(Kitchen.BUN, ID, file, removed.commit(), kitchen.by());

    assertThat(back.photo().file()).isNotEqualTo(file);
    assertThat(back.bake().photos())
        .extracting(Views.PhotoView::file)
        .containsExactly(back.photo().file(), file);
    kitchen.assertSound();
  }

  @Test
  void aPhotoWithNewMarksIsNotTakenAwayUnseen() {
    change(EMPTY, marked(mark("a", 0.5, 0.5)));

    Refusal refusal =
        catchThrowableOfType(
            Refusal.class, () -> verb.remove(Kitchen.BUN, ID, file, EMPTY, kitchen.by()));

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
    assertThat(kitchen.files("main")).contains(file);
  }

  @Test
  void theLastChangeUndoneBringsAPhotoBackToo() {
    verb.remove(Kitchen.BUN, ID, file, EMPTY, kitchen.by());

    new UndoLast(kitchen.desk()).call(Optional.empty(), kitchen.by());

    assertThat(shown().file()).isEqualTo(file);
    assertThat(kitchen.files("main")).contains(file);
    kitchen.assertSound();
  }

  @Test
  void photosOfAVariantsBakeAreChangedOnItsBranch() {
    kitchen.variant("egg-free");
    kitchen.revise(Address.parse("seeded-lupin-bun/egg-free"), Kitchen.bun(200), "Softer");
    record("seeded-lupin-bun/egg-free");
    String id = "2026-03-02-2";
    String branch = "variant/seeded-lupin-bun/egg-free";
    String photo =
        new AddPhotos(kitchen.desk())
            .call(Kitchen.BUN, id, List.of(Kitchen.photo("x.jpg")), kitchen.by())
            .photosAdded()
            .get(0);

    verb.change(Kitchen.BUN, id, photo, EMPTY, EMPTY, said("Softer"), kitchen.by());
    PhotoViews.PhotoRemoved removed =
        verb.remove(Kitchen.BUN, id, photo, said("Softer"), kitchen.by());

    assertThat(kitchen.files(branch)).doesNotContain(photo);
    verb.bringBack(Kitchen.BUN, id, photo, removed.commit(), kitchen.by());
    assertThat(kitchen.files(branch)).contains(photo);
    assertThat(kitchen.files("main")).doesNotContain(photo);
    kitchen.assertSound();
  }

  @Test
  void photosAreListedBakeByBake() {
    PhotoViews.PhotoList list = new ListPhotos(kitchen.desk()).call(Kitchen.BUN);

    assertThat(list.name()).isEqualTo("Seeded lupin bun");
    assertThat(list.bakes()).hasSize(1);
    assertThat(list.bakes().get(0).address()).isEqualTo("seeded-lupin-bun@2");
    assertThat(list.bakes().get(0).pieces())
        .extracting(PhotoViews.PhotographedPiece::temperatureC)
        .containsExactly(190.0, 190.0, 205.0);
    assertThat(list.bakes().get(0).pieces().get(0).minutes()).isNull();
  }
}
