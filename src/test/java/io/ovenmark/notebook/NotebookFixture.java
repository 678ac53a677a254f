package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.Nutrient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A notebook in a temporary folder, with native Git beside it and a clock that ticks one minute at
 * each look, so that the same steps give the same commit ids.
 *
 * <pre>{@code
 * NotebookFixture fixture = new NotebookFixture(temporary);
 * Revision second =
 *     fixture.formula("seeded-lupin-bun").line("water", "180 g").revise("Begin")
 *         .set("water=188 g").revise("Wetter").newest();
 * }</pre>
 */
public final class NotebookFixture implements AutoCloseable {
  private final RepositoryFixture repository;
  private final List<Notebook> notebooks = new ArrayList<>();

  /** A new notebook called "Saltmarsh bench" below a temporary folder. */
  public NotebookFixture(Path temporary) {
    repository = new RepositoryFixture(temporary);
    notebooks.add(
        Notebook.create(directory(), NotebookSettings.titled("Saltmarsh bench"), by()));
  }

  /** The notebook. */
  public Notebook notebook() {
    return notebooks.get(0);
  }

  /** The notebook, opened once more. */
  public Notebook open() {
    Notebook notebook = Notebook.open(directory());
    notebooks.add(notebook);
    return notebook;
  }

  /** The notebook's folder. */
  public Path directory() {
    return repository.directory();
  }

  /** The folder with native Git beside it. */
  public RepositoryFixture repository() {
    return repository;
  }

  /** The bench hand, a minute later than the last time. */
  public By by() {
    return new By(RepositoryFixture.AUTHOR, repository.tick());
  }

  /** Native Git in the notebook's folder; it must succeed. */
  public String git(String... arguments) {
    return repository.git(arguments);
  }

  /** A formula to be made or revised on the main line. */
  public FormulaFixture formula(String slug) {
    return new FormulaFixture(this, Address.latest(slug, Optional.empty()));
  }

  /** A variant to be revised; see {@link FormulaFixture#fork}. */
  public FormulaFixture variant(String slug, String name) {
    return new FormulaFixture(this, Address.latest(slug, Optional.of(name)));
  }

  /** Adds or replaces a goal, given as the JSON of its file. */
  public Goal goal(String slug, String json) {
    Goal goal = GoalCodec.read(slug, slug, json.getBytes(StandardCharsets.UTF_8));
    new RecordWriter(notebook())
        .saveGoal(goal, notebook().latest().goal(slug), "Goal " + slug, by());
    return goal;
  }

  /** Changes one figure of a food in the main line's pantry, as a new package label does. */
  public Food relabel(String slug, Nutrient nutrient, double per100g) {
    Food before = notebook().latest().food(slug).orElseThrow();
    Food after =
        new Food(
            slug,
            before.name(),
            before.kind(),
            before.source(),
            before.per100g().with(nutrient, Quantity.known(per100g)),
            before.household(),
            before.densityGramsPerMillilitre(),
            before.allergens(),
            before.polyol(),
            before.price(),
            before.extras());
    new RecordWriter(notebook())
        .saveFood(after, Optional.of(before), "New label of " + slug, by());
    return after;
  }

  /** Records a bake of a revision, with one picture for each name. */
  public Bake bake(Revision revision, List<Piece> pieces, String... pictures) {
    RecordWriter writer = new RecordWriter(notebook());
    String slug = revision.address().formula();
    By by = by();
    String id = writer.freeBakeId(slug, by.time().toLocalDate());
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<Photo> photos = new ArrayList<>();
    for (String name : pictures) {
      String path = "photos/" + slug + "/" + name;
      files.put(path, RepositoryFixture.bytes("picture " + name));
      Photo.Mark mark = new Photo.Mark(pieces.get(0).id(), 0.25, 0.5);
      photos.add(
          new Photo(path, Optional.of(name), Optional.empty(), List.of(mark), Extras.NONE));
    }
    Bake bake =
        new Bake(
            slug,
            id,
            revision.address().toString(),
            revision.blob().hex(),
            by.time(),
            Optional.of("Bench Hand"),
            Optional.empty(),
            Optional.empty(),
            pieces,
            List.of(),
            photos,
            Extras.NONE);
    writer.addBake(revision.address(), bake, files, "Bake of " + revision.address(), by);
    return bake;
  }

  /** A piece with the figures that most tests need. */
  public static Piece piece(
      String id, int celsius, double minutes, double dough, double baked, double height,
      String... findings) {
    return new Piece(
        id,
        Optional.of(Temperature.parse(celsius + " °C")),
        OptionalDouble.of(minutes),
        Optional.empty(),
        OptionalDouble.of(dough),
        OptionalDouble.of(baked),
        OptionalDouble.empty(),
        OptionalDouble.of(height),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(findings),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Extras.NONE);
  }

  /** Writes a file by hand. */
  public void edit(String path, String content) {
    repository.edit(path, content);
  }

  /** A file on disk. */
  public String onDisk(String path) {
    return repository.onDisk(path).orElseThrow();
  }

  /** How many commits native Git counts on a branch. */
  public int commits(String branch) {
    return Integer.parseInt(git("rev-list", "--count", branch));
  }

  /** The files of the last commit of a branch by path, with their blob ids, as native Git says. */
  public Map<String, String> tree(String branch) {
    Map<String, String> files = new TreeMap<>();
    for (String row : git("ls-tree", "-r", branch).split("\n")) {
      String[] parts = row.split("[ \t]", 4);
      files.put(parts[3], parts[2]);
    }
    return files;
  }

  /** Native Git finds nothing wrong and nothing uncommitted, and there is no hand edit. */
  public void assertClean() {
    assertThat(git("fsck", "--strict", "--no-dangling")).doesNotContain("error", "warning");
    assertThat(git("status", "--porcelain")).isEmpty();
    assertThat(notebook().handEdits()).isEmpty();
  }

  /** Closes the notebooks. */
  @Override
  public void close() {
    notebooks.forEach(Notebook::close);
    repository.close();
  }
}
