package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThumbnailsTest {
  private static final byte[] PICTURE = BenchNotebook.picture(60, 40);

  @TempDir Path folder;
  private final AtomicInteger made = new AtomicInteger();

  private final Supplier<byte[]> make =
      () -> {
        made.incrementAndGet();
        return PICTURE;
      };

  private Thumbnails thumbnails() {
    return new Thumbnails(folder.resolve("thumbnails"), Thumbnails.MOST_ON_DISK);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static String id(int n) {
    return "%040x".formatted(n);
  }

  @Test
  void eachIsMadeOnceAlsoForTheNextProgram() throws IOException {
    Thumbnails first = thumbnails();
    assertThat(first.get(id(1), 400, make)).isEqualTo(PICTURE);
    assertThat(first.get(id(1), 400, make)).isEqualTo(PICTURE);
    assertThat(thumbnails().get(id(1), 400, make)).isEqualTo(PICTURE);

    assertThat(made).hasValue(1);
    assertThat(files()).hasSize(1);
  }

  @Test
  void anotherWidthOrContentIsAnotherPicture() throws IOException {
    Thumbnails all = thumbnails();
    all.get(id(1), 400, make);
    all.get(id(1), 320, make);
    all.get(id(2), 400, make);

    assertThat(made).hasValue(3);
    assertThat(files()).hasSize(3);
  }

  @Test
  void oneThatWasCutOffOnDiskIsMadeAgain() throws IOException {
    thumbnails().get(id(1), 400, make);
    Path file = files().get(0);
    Files.write(file, new byte[0]);

    assertThat(thumbnails().get(id(1), 400, make)).isEqualTo(PICTURE);

    assertThat(made).hasValue(2);
    assertThat(Files.readAllBytes(file)).isEqualTo(PICTURE);
  }

  @Test
  void deletedOnesAreMadeAgain() throws IOException {
    thumbnails().get(id(1), 400, make);
    Files.delete(files().get(0));

    assertThat(thumbnails().get(id(1), 400, make)).isEqualTo(PICTURE);
    assertThat(files()).hasSize(1);
  }

  @Test
  void theOldestMakeRoom() throws IOException {
    Path kept = folder.resolve("thumbnails");
    Thumbnails few = new Thumbnails(kept, 3L * PICTURE.length);
    for (int i = 1; i <= 5; i++) {
      few.get(id(i), 400, make);
    }
    assertThat(files()).hasSize(3);

    new Thumbnails(kept, 3L * PICTURE.length).get(id(6), 400, make);

    assertThat(files())
        .hasSize(3)
        .anyMatch(file -> file.toString().contains("06-400"))
        .noneMatch(file -> file.toString().contains("01-400"));
  }

  @Test
  void aFolderThatCannotBeWrittenToHindersNobody() throws IOException {
    Files.writeString(folder.resolve("thumbnails"), "a file where the folder should be");

    assertThat(thumbnails().get(id(1), 400, make)).isEqualTo(PICTURE);
  }
}
