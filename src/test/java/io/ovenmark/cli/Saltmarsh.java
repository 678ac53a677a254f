package io.ovenmark.cli;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.Author;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A small notebook of the Saltmarsh bench, made with the commands themselves: {@code wheat-bun}
 * with one revision, {@code seeded-lupin-bun} with three and a bake of the second, and its variant
 * {@code egg-free} from the second, whose water contradicts the third's. Foods have exact SR28
 * figures.
 */
final class Saltmarsh {
  private static final By INES =
      new By(
          new Author("Ines", "ines@saltmarsh.example"),
          OffsetDateTime.parse("2026-03-02T08:00:00Z"));

  /** How many commands make the whole bench; the last one's revision is of 09:06. */
  private static final int COMMANDS = 7;

  private Saltmarsh() {}

  /** An empty notebook whose Git configuration names the author Ines. */
  static Bench empty(Path folder) {
    Bench bench = new Bench(folder);
    bench.must("new", "--title", "Saltmarsh bench", "--author", "Ines <ines@saltmarsh.example>");
    try {
      Files.writeString(
          folder.resolve(".git/config"),
          "[user]\n\tname = Ines\n\temail = ines@saltmarsh.example\n",
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bench;
  }

  /** The whole bench, in a folder that is empty. */
  static Bench bench(Path folder) {
    try {
      copy(Made.FOLDER, folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Bench(folder).after(COMMANDS);
  }

  /** The bench that all others are copied from. */
  private static final class Made {
    static final Path FOLDER = make();

    private static Path make() {
      try {
        Path folder = Files.createTempDirectory("saltmarsh");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
        build(folder);
        return folder;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private static void delete(Path folder) {
      try (Stream<Path> files = Files.walk(folder)) {
        files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static void build(Path folder) {
    Bench bench = empty(folder);
    goal(folder, "low-carb-bun", "Low-carbohydrate bun", "");
    goal(folder, "egg-free-bun", "Low-carbohydrate bun without egg", "\"eggs\"");
    bench.must(
        "new",
        "Wheat bun",
        "--add",
        "wheat-flour-bread=240g",
        "--set",
        "wheat-flour-bread.flour=yes",
        "--add",
        "water=150g",
        "--add",
        "butter-unsalted=20g",
        "--add",
        "salt=4g",
        "--pieces",
        "6");
    bench.must(
        "new",
        "Seeded lupin bun",
        "--reference",
        "wheat-bun",
        "--goal",
        "low-carb-bun",
        "--add",
        "soy-flour-defatted=120g",
        "--set",
        "soy-flour-defatted.flour=yes",
        "--add",
        "flaxseed=45g",
        "--set",
        "flaxseed.note=ground fresh",
        "--add",
        "water=170g",
        "--add",
        "egg-whole=1 large",
        "--add",
        "butter-unsalted=20g",
        "--add",
        "salt=3/4 tsp",
        "--pieces",
        "6",
        "--set",
        "method.+=Whisk everything dry together.",
        "--set",
        "method.+=Stir in water and egg, then the butter.",
        "--set",
        "bake.temperature=200C",
        "--set",
        "bake.minutes=24");
    bench.must(
        "revise", "seeded-lupin-bun", "--set", "water=180g", "--note", "Softer dough for a bowl");
    bake(folder);
    bench.must(
        "variant",
        "seeded-lupin-bun",
        "egg-free",
        "--goal",
        "egg-free-bun",
        "--note",
        "Begin an egg-free bun");
    bench.must(
        "revise",
        "seeded-lupin-bun/egg-free",
        "--remove",
        "egg-whole",
        "--set",
        "water=215g",
        "--note",
        "No egg, more water");
    bench.must(
        "revise",
        "seeded-lupin-bun",
        "--set",
        "water=188g",
        "--set",
        "bake.temperature=205C",
        "--note",
        "Crumb was dry");
  }

  private static void goal(Path folder, String slug, String name, String allergens) {
    String json =
        """
        {"name": "%s", "limits": [
          {"figure": "net_carbohydrate_g", "per": "piece", "at_most": 8},
          {"figure": "protein_g", "per": "piece", "at_least": 8}],
         "without": {"allergens": [%s]}}
        """
            .formatted(name, allergens);
    try (Notebook notebook = Notebook.open(folder)) {
      new RecordWriter(notebook)
          .saveGoal(
              GoalCodec.read("goal", slug, json.getBytes(StandardCharsets.UTF_8)),
              Optional.empty(),
              "Goal " + slug,
              INES);
    }
  }

  private static void bake(Path folder) {
    try (Notebook notebook = Notebook.open(folder)) {
      Address address = Address.parse("seeded-lupin-bun@2");
      Revision revision = notebook.revision(address);
      String json =
          """
          {"address": "seeded-lupin-bun@2", "blob": "%s", "time": "2026-03-02T14:00:00Z",
           "pieces": [
             {"id": "a", "temperature": "200 °C", "minutes": 24, "dough_g": 67, "baked_g": 58,
              "height_mm": 41, "findings": ["dry"], "liking": [6, 7]}]}
          """
              .formatted(revision.blob().hex());
      Bake bake =
          BakeCodec.read(
              "bake", "seeded-lupin-bun", "2026-03-02-1", json.getBytes(StandardCharsets.UTF_8));
      new RecordWriter(notebook).addBake(address, bake, Map.of(), "First tray", INES);
    }
  }

  /** Copies a notebook. */
  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }
}
