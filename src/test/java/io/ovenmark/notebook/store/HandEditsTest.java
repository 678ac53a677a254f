package io.ovenmark.notebook.store;

import static io.ovenmark.notebook.store.RepositoryFixture.bytes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HandEditsTest {
  private static final String BUN = "formulas/seeded-lupin-bun.json";
  private static final String CRISPBREAD = "formulas/sesame-crispbread.json";
  private static final String MUFFIN = "formulas/cocoa-sunflower-muffin.json";

  @TempDir Path temporary;
  private RepositoryFixture fixture;
  private GitStore store;

  @BeforeEach
  void createANotebook() {
    fixture = new RepositoryFixture(temporary);
    store = fixture.create();
    fixture.commit(
        store,
        fixture
            .change(store, "main", "Start")
            .put(BUN, bytes("bun\n"))
            .put(CRISPBREAD, bytes("crispbread\n")));
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  private List<String> write(Write write) {
    return ((WriteOutcome.Written) store.write(write)).leftAsEditedByHand();
  }

  @Test
  void areFoundWithTheirBytes() throws IOException {
    fixture.edit(BUN, "edited\n");
    fixture.edit(MUFFIN, "new\n");
    fixture.edit("bakes/elsewhere.json", "new\n");
    Files.delete(fixture.directory().resolve(CRISPBREAD));

    assertThat(store.handEdits("formulas"))
        .containsExactly(
            new HandEdit(
                MUFFIN, HandEdit.Kind.ADDED, Optional.empty(), Optional.of(bytes("new\n"))),
            new HandEdit(
                BUN,
                HandEdit.Kind.CHANGED,
                Optional.of(store.hash(bytes("bun\n"))),
                Optional.of(bytes("edited\n"))),
            new HandEdit(
                CRISPBREAD,
                HandEdit.Kind.DELETED,
                Optional.of(store.hash(bytes("crispbread\n"))),
                Optional.empty()));
    assertThat(store.handEdits("")).hasSize(4);
    assertThat(store.handEdits("pantry")).isEmpty();
  }

  /** What may have happened to the file of the bun. */
  private enum Mishap {
    NOTHING,
    TOUCHED,
    EDITED,
    STAGED,
    DELETED,
    LINKED,
    FOLDER,
    BEHIND_A_LINK,
    CARRIAGE_RETURNS,
    CONVERTED_LINE_ENDS
  }

  @ParameterizedTest
  @EnumSource
  void ofOneFileAreThoseOfItsFolder(Mishap mishap) throws IOException {
    Path file = fixture.directory().resolve(BUN);
    switch (mishap) {
      case NOTHING -> fixture.edit(CRISPBREAD, "edited\n");
      case TOUCHED -> Files.setLastModifiedTime(file, FileTime.fromMillis(12345678));
      case EDITED -> fixture.edit(BUN, "nub\n");
      case STAGED -> {
        fixture.edit(BUN, "staged\n");
        fixture.git("add", BUN);
        fixture.edit(BUN, "bun\n");
      }
      case DELETED -> Files.delete(file);
      case LINKED -> {
        Path target = Files.writeString(temporary.resolve("target"), "bun\n");
        Files.delete(file);
        Files.createSymbolicLink(file, target);
      }
      case FOLDER -> {
        Files.delete(file);
        fixture.edit(BUN + "/inside.json", "bun\n");
      }
      case BEHIND_A_LINK -> {
        Path moved = temporary.resolve("moved");
        Files.move(file.getParent(), moved);
        Files.createSymbolicLink(file.getParent(), moved);
      }
      case CARRIAGE_RETURNS -> fixture.edit(BUN, "bun\r\n");
      case CONVERTED_LINE_ENDS -> {
        fixture.git("config", "core.autocrlf", "true");
        fixture.edit(BUN, "bun\r\n");
      }
      default -> throw new IllegalStateException(mishap.name());
    }

    List<HandEdit> all = fixture.open().handEdits("formulas");

    for (String path : List.of(BUN, CRISPBREAD, MUFFIN)) {
      assertThat(fixture.open().handEdits(path).stream().filter(e -> e.path().equals(path)))
          .containsExactlyElementsOf(
              all.stream().filter(edit -> edit.path().equals(path)).toList());
    }
  }

  @Test
  void ofTheSameLengthRightAfterAWriteAreFound() {
    for (int i = 100; i < 150; i++) {
      fixture.put(store, "main", BUN, "by write " + i + "\n");
      fixture.edit(BUN, "by hands " + i + "\n");
      assertThat(store.handEdits("formulas")).extracting(HandEdit::path).containsExactly(BUN);
      assertThat(store.handEdits(BUN)).extracting(HandEdit::path).containsExactly(BUN);
      fixture.edit(BUN, "by write " + i + "\n");
      assertThat(store.handEdits("formulas")).isEmpty();
      assertThat(store.handEdits(BUN)).isEmpty();
    }
  }

  @Test
  void areNoneWhenOnlyTheTimeChanged() throws IOException {
    Path file = fixture.directory().resolve(BUN);
    fixture.edit(BUN, "bun\n");
    Files.setLastModifiedTime(file, FileTime.fromMillis(12345678));

    assertThat(store.handEdits("formulas")).isEmpty();
  }

  @Test
  void areComparedWithTheCommitAndNotWithTheStagingArea() {
    fixture.edit(BUN, "edited\n");
    fixture.git("add", "-A");
    assertThat(store.handEdits("formulas")).extracting(HandEdit::path).containsExactly(BUN);

    fixture.edit(BUN, "bun\n");
    assertThat(store.handEdits("formulas")).isEmpty();
  }

  @Test
  void areNoneWithADetachedHead() {
    fixture.git("checkout", "-q", "--detach");
    fixture.edit(BUN, "edited\n");

    assertThat(store.checkedOutBranch()).isEmpty();
    assertThat(store.handEdits("formulas")).isEmpty();
    fixture.put(store, "main", CRISPBREAD, "other\n");
    assertThat(fixture.onDisk(CRISPBREAD)).contains("crispbread\n");
  }

  @Test
  void leaveOutWhatGitIgnores() {
    fixture.edit(".gitignore", "*~\n");
    fixture.edit(BUN + "~", "backup\n");

    assertThat(store.handEdits("formulas")).isEmpty();
  }

  @Test
  void withOtherLineEndsCountOnlyWhereGitDoesNotConvertThem() {
    fixture.edit(BUN, "bun\r\n");
    assertThat(store.handEdits("formulas")).hasSize(1);

    fixture.git("config", "core.autocrlf", "true");
    assertThat(fixture.open().handEdits("formulas")).isEmpty();
    assertThat(write(fixture.change(store, "main", "New").put(BUN, bytes("2\n")))).isEmpty();
    assertThat(fixture.git("status", "--porcelain")).isEmpty();
  }

  @Test
  void areNeverOverwrittenByAWrite() throws IOException {
    fixture.put(store, "main", MUFFIN, "muffin\n");
    fixture.edit(BUN, "edited\n");
    fixture.edit("formulas/new.json", "untracked\n");
    Files.delete(fixture.directory().resolve(CRISPBREAD));
    Write write =
        fixture
            .change(store, "main", "All")
            .put(BUN, bytes("2\n"))
            .put(CRISPBREAD, bytes("2\n"))
            .put(MUFFIN, bytes("2\n"))
            .put("formulas/new.json", bytes("2\n"));

    assertThat(write(write)).containsExactly("formulas/new.json", BUN, CRISPBREAD);

    assertThat(fixture.onDisk(BUN)).contains("edited\n");
    assertThat(fixture.onDisk("formulas/new.json")).contains("untracked\n");
    assertThat(fixture.onDisk(CRISPBREAD)).isEmpty();
    assertThat(fixture.onDisk(MUFFIN)).contains("2\n");
    assertThat(store.handEdits("formulas"))
        .extracting(HandEdit::path, HandEdit::kind)
        .containsExactly(
            tuple("formulas/new.json", HandEdit.Kind.CHANGED),
            tuple(BUN, HandEdit.Kind.CHANGED),
            tuple(CRISPBREAD, HandEdit.Kind.DELETED));
    assertThat(fixture.git("status", "--porcelain").lines())
        .containsExactlyInAnyOrder(
            " M formulas/new.json", " M " + BUN, " D " + CRISPBREAD);
  }

  @Test
  void areKeptWhenTheWriteDeletesTheFile() {
    fixture.edit(BUN, "edited\n");

    assertThat(write(fixture.change(store, "main", "Away").delete(BUN))).containsExactly(BUN);

    assertThat(fixture.onDisk(BUN)).contains("edited\n");
    assertThat(fixture.git("status", "--porcelain")).isEqualTo("?? " + BUN);
  }

  @Test
  void becomeTheCommitWhenItHasTheirBytes() throws IOException {
    fixture.edit(BUN, "edited\n");
    fixture.edit(MUFFIN, "new\n");
    Files.delete(fixture.directory().resolve(CRISPBREAD));
    Write write = fixture.change(store, "main", "By hand");
    for (HandEdit edit : store.handEdits("formulas")) {
      write =
          edit.onDisk().isPresent()
              ? write.put(edit.path(), edit.onDisk().get())
              : write.delete(edit.path());
    }

    fixture.commit(store, write);

    fixture.assertClean(store);
  }

  @Test
  void thatAreStagedStayStaged() {
    fixture.edit(BUN, "staged\n");
    fixture.git("add", BUN);
    fixture.edit(BUN, "bun\n");

    assertThat(write(fixture.change(store, "main", "New").put(BUN, bytes("2\n"))))
        .containsExactly(BUN);

    assertThat(fixture.git("show", ":" + BUN)).isEqualTo("staged");
  }

  @Test
  void ofOtherFilesSurviveInTheStagingArea() {
    fixture.edit(CRISPBREAD, "staged\n");
    fixture.edit(MUFFIN, "added\n");
    fixture.git("add", "-A");

    assertThat(write(fixture.change(store, "main", "New").put(BUN, bytes("2\n")))).isEmpty();

    assertThat(fixture.git("status", "--porcelain").lines())
        .containsExactlyInAnyOrder("M  " + CRISPBREAD, "A  " + MUFFIN);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void thatAreLinksAreNeverFollowed(boolean folder) throws IOException {
    Path outside = Files.createDirectories(temporary.resolve("outside"));
    Path target = outside.resolve("seeded-lupin-bun.json");
    Files.writeString(target, "bun\n");
    Path formulas = fixture.directory().resolve("formulas");
    Files.delete(fixture.directory().resolve(BUN));
    if (folder) {
      Files.delete(fixture.directory().resolve(CRISPBREAD));
      Files.delete(formulas);
      Files.createSymbolicLink(formulas, outside);
    } else {
      Files.createSymbolicLink(fixture.directory().resolve(BUN), target);
    }

    assertThat(store.handEdits("formulas"))
        .contains(
            new HandEdit(
                BUN,
                HandEdit.Kind.UNREADABLE,
                Optional.of(store.hash(bytes("bun\n"))),
                Optional.empty()));
    assertThat(write(fixture.change(store, "main", "New").put(BUN, bytes("2\n"))))
        .containsExactly(BUN);
    assertThat(write(fixture.change(store, "main", "Away").delete(BUN))).containsExactly(BUN);
    assertThat(Files.readString(target)).isEqualTo("bun\n");
  }

  @Test
  void thatAreFoldersAreLeft() throws IOException {
    Files.delete(fixture.directory().resolve(BUN));
    Files.createDirectories(fixture.directory().resolve(BUN));
    fixture.edit(BUN + "/mine.txt", "mine\n");

    assertThat(write(fixture.change(store, "main", "New").put(BUN, bytes("2\n"))))
        .containsExactly(BUN);

    assertThat(fixture.onDisk(BUN + "/mine.txt")).contains("mine\n");
  }

  @Test
  void areNotMistakenInASparseCheckout() {
    fixture.git("status");
    fixture.git("sparse-checkout", "set", "--no-cone", "/" + BUN);
    assertThat(fixture.onDisk(CRISPBREAD)).isEmpty();
    assertThat(store.handEdits("")).isEmpty();

    fixture.put(store, "main", CRISPBREAD, "2\n");

    assertThat(fixture.onDisk(CRISPBREAD)).isEmpty();
    fixture.assertClean(store);
  }

  @Test
  void thatChangeOnlyTheModeAreNone() {
    assertThat(fixture.directory().resolve(BUN).toFile().setExecutable(true)).isTrue();
    assertThat(store.handEdits("formulas")).isEmpty();

    fixture.git("commit", "-qam", "Executable");
    fixture.put(store, "main", BUN, "2\n");

    assertThat(fixture.git("ls-files", "-s", BUN)).startsWith("100755");
    fixture.assertClean(store);
  }
}
