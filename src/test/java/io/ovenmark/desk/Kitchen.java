package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.photo.Pictures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A notebook of the Saltmarsh bench for tests, with native Git beside it. It begins with the seeded
 * lupin bun in two revisions (180 g of water, then 188 g).
 */
final class Kitchen implements AutoCloseable {
  static final String BUN = "seeded-lupin-bun";

  private final RepositoryFixture repository;
  private final List<Desk> desks = new ArrayList<>();
  private final Desk desk;

  Kitchen(Path temporary) {
    repository = new RepositoryFixture(temporary);
    Notebook.create(
            repository.directory(), NotebookSettings.titled("Saltmarsh bench"), by())
        .close();
    desk = open();
    new FormulaWriter(desk.notebook()).create(BUN, bun(180), "Begin", by());
    revise(Address.latest(BUN, Optional.empty()), bun(188), "Softer dough");
  }

  /** The bun with some water, and egg. */
  static Formula bun(int water) {
    String json =
        """
        {
          "name": "Seeded lupin bun",
          "lines": [
            {"id": "lupin-flour", "food": "lupin-flour", "amount": "120 g", "flour": true},
            {"id": "water", "food": "water", "amount": "%d g"},
            {"id": "egg-whole", "food": "egg-whole", "amount": "2 large"}
          ],
          "method": ["Mix.", "Bake."],
          "bake": [{"id": "bake", "temperature": "190 °C", "minutes": 24}],
          "yield": {"pieces": 6}
        }
        """
            .formatted(water);
    return FormulaCodec.read("bun.json", json.getBytes(StandardCharsets.UTF_8));
  }

  Desk desk() {
    return desk;
  }

  /** One more desk on the same notebook, as of another program. */
  Desk open() {
    Desk another = new Desk(Notebook.open(repository.directory()));
    desks.add(another);
    return another;
  }

  RepositoryFixture repository() {
    return repository;
  }

  By by() {
    return new By(RepositoryFixture.AUTHOR, repository.tick());
  }

  Revision revise(Address line, Formula formula, String note) {
    Notebook notebook = desk.notebook();
    new FormulaWriter(notebook).revise(notebook.newest(line), formula, note, by());
    return notebook.newest(line);
  }

  /** A variant of the bun, branched from its newest revision. */
  Address variant(String name) {
    Notebook notebook = desk.notebook();
    Revision newest = notebook.newest(Address.latest(BUN, Optional.empty()));
    new VariantWriter(notebook).fork(newest, name, Optional.empty(), "Begin " + name, by());
    return Address.latest(BUN, Optional.of(name));
  }

  /** A picture as from a camera, with a place in it. */
  static NewPhoto photo(String fileName) {
    byte[] bytes =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(120, 80)),
            new Pictures.Exif().orientation(6).taken("2026:03-01 09:00:00").at(54, 8));
    return new NewPhoto(bytes, fileName, Optional.empty(), List.of());
  }

  /** Native Git on the branch whose files are on disk: everything added and committed. */
  void commitByHand(String note) {
    repository.git("add", "-A");
    repository.git("commit", "-q", "-m", note);
  }

  void write(String path, String content) {
    repository.edit(path, content);
  }

  void write(String path, byte[] content) {
    try {
      Path file = repository.directory().resolve(path);
      Files.createDirectories(file.getParent());
      Files.write(file, content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String read(String path) {
    return repository.onDisk(path).orElseThrow();
  }

  /** The files of a branch by native Git. */
  List<String> files(String branch) {
    return repository.git("ls-tree", "-r", "--name-only", branch).lines().toList();
  }

  /** Native Git finds nothing wrong, and disk and branch agree. */
  void assertSound() {
    assertThat(repository.git("fsck", "--strict", "--no-dangling"))
        .doesNotContain("error", "warning", "missing");
    assertThat(repository.git("status", "--porcelain")).isEmpty();
  }

  @Override
  public void close() {
    desks.forEach(Desk::close);
    repository.close();
  }
}
