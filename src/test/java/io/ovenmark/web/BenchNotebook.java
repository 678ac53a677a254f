package io.ovenmark.web;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.Write;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * A small notebook of the Saltmarsh bench for the viewer's tests, with everything that a page must
 * be able to show: a goal missed and met, bakes with and without measures, a variant, a restored
 * and a published revision, figures that are unknown, names and notes that try to be markup, a
 * damaged file, and formulas of no, one and sixty lines.
 */
final class BenchNotebook {
  /** A name that would run if it were taken for markup. */
  static final String HOSTILE = "<img src=x onerror=alert(1)><script>alert(2)</script>&amp;\"'";

  static final String PHOTO = "photos/seeded-lupin-bun/2026-03-04-1-tray.jpg";
  static final String TEXT_PHOTO = "photos/seeded-lupin-bun/notes.jpg";
  static final int PHOTO_WIDTH = 1200;

  private static final Author INES = new Author("Ines", "ines@saltmarsh.example");

  private final Notebook notebook;
  private OffsetDateTime clock = OffsetDateTime.parse("2026-03-01T08:00:00+01:00");

  private BenchNotebook(Notebook notebook) {
    this.notebook = notebook;
  }

  /** A notebook with nothing in it. */
  static void empty(Path folder) {
    By by = new By(INES, OffsetDateTime.parse("2026-03-01T08:00:00+01:00"));
    Notebook.create(folder, NotebookSettings.titled("Saltmarsh bench"), by).close();
  }

  /** The whole notebook. */
  static void create(Path folder) {
    By by = new By(INES, OffsetDateTime.parse("2026-03-01T08:00:00+01:00"));
    NotebookSettings settings = NotebookSettings.titled("Saltmarsh bench");
    try (Notebook notebook = Notebook.create(folder, settings, by)) {
      BenchNotebook bench = new BenchNotebook(notebook);
      bench.goals();
      bench.buns();
      bench.others();
    }
    damage(folder);
    editByHand(folder);
  }

  private void goals() {
    for (String without : new String[] {"", "\"eggs\""}) {
      String slug = without.isEmpty() ? "low-carb-bun" : "egg-free-bun";
      String name = without.isEmpty() ? "Low-carbohydrate bun" : "Low-carbohydrate bun, no egg";
      String json =
          """
          {"name": "%s", "limits": [
            {"figure": "net_carbohydrate_g", "per": "piece", "at_most": 4},
            {"figure": "protein_g", "per": "piece", "at_least": 8}],
           "without": {"allergens": [%s]}}
          """
              .formatted(name, without);
      new RecordWriter(notebook)
          .saveGoal(GoalCodec.read(slug, slug, bytes(json)), Optional.empty(), "Goal", by());
    }
  }

  private void buns() {
    create(
        "wheat-bun",
        """
        {"name": "Wheat bun", "lines": [
          {"food": "wheat-flour-bread", "amount": "300 g", "flour": true},
          {"food": "water", "amount": "190 g"}, {"food": "salt", "amount": "1 tsp"}],
         "method": ["Mix.", "Prove until doubled."], "yield": {"pieces": 6}}
        """);
    create(
        "seeded-lupin-bun",
        """
        {"name": "Seeded lupin bun", "description": "For the breakfast basket.",
         "goal": "low-carb-bun", "reference": "wheat-bun", "lines": [
          {"food": "soy-flour-defatted", "amount": "150 g", "flour": true},
          {"food": "flaxseed", "amount": "30 g", "note": "ground fresh"},
          {"food": "water", "amount": "210 g"}, {"food": "egg-whole", "amount": "2 large"},
          {"food": "butter-unsalted", "amount": "20 g"}, {"food": "salt", "amount": "3/4 tsp"},
          {"food": "sunflower-seeds", "amount": "25 g"}],
         "method": ["Whisk everything dry together.", "Stir in water and egg.", "Rest 15 min."],
         "bake": [{"temperature": "190 °C", "minutes": 27, "rack": "middle"}],
         "yield": {"pieces": 6, "handling_loss_percent": 3}}
        """);
    Address bun = Address.parse("seeded-lupin-bun");
    revise(bun, "Softer dough\n\nIt tore when rounded.", "water=220 g");
    bake("seeded-lupin-bun@2", "2026-03-04-1", TWO_PIECES, true);
    revise(
        bun,
        "Drier dough, hotter oven",
        "water=188 g",
        "bake.temperature=205 °C",
        "bake.minutes=21",
        "method.2=Stir in water, egg and the soft butter.",
        "soy-flour-defatted=110 g");
    bake("seeded-lupin-bun@3", "2026-03-09-1", THREE_PIECES, false);
    Revision third = notebook.revision(bun.at(3));
    new VariantWriter(notebook)
        .fork(third, "egg-free", Optional.of("egg-free-bun"), "Begin an egg-free bun", by());
    Address eggFree = Address.parse("seeded-lupin-bun/egg-free");
    new FormulaWriter(notebook)
        .revise(
            notebook.newest(eggFree),
            new FormulaEdit(notebook.formula(notebook.newest(eggFree)))
                .remove("egg-whole")
                .set("water=240 g")
                .formula(),
            "No egg, more water",
            by());
    revise(bun, "Twice the seed", "sunflower-seeds=50 g");
    new FormulaWriter(notebook).restore(third, bun, "Back to less seed", by());
    new RecordWriter(notebook)
        .publish(notebook.newest(bun), "The breakfast bun of this winter", by());
  }

  private void others() {
    create(
        "sesame-crispbread",
        """
        {"name": "Σησαμένια τραγανά", "goal": "low-carb-bun", "lines": [
          {"food": "sesame-flour-partially-defatted", "amount": "120 g", "flour": true},
          {"food": "salt", "amount": "2 pinches of the left hand"},
          {"food": "water", "amount": "90 g"}], "yield": {"pieces": 12}}
        """);
    create(
        "hostile",
        """
        {"name": "%1$s", "description": "%1$s", "lines": [
          {"food": "water", "amount": "10 g", "note": "%1$s"}], "method": ["%1$s"],
         "yield": {"pieces": 1}}
        """
            .formatted(HOSTILE.replace("\"", "\\\"")));
    revise(Address.parse("hostile"), HOSTILE + "\n\n" + HOSTILE, "water=12 g");
    create("no-lines", "{\"name\": \"Nothing yet\"}");
    revise(Address.parse("no-lines"), "Say what it is to be", "description=A bun, some day");
    create(
        "one-line",
        """
        {"name": "Water", "lines": [{"food": "water", "amount": "1 l"}]}
        """);
    StringBuilder lines = new StringBuilder();
    for (int i = 1; i <= 60; i++) {
      lines.append(i == 1 ? "" : ",");
      lines.append("{\"id\": \"w-%d\", \"food\": \"water\", \"amount\": \"%d g\"}".formatted(i, i));
    }
    create("sixty-lines", "{\"name\": \"Sixty lines\", \"lines\": [" + lines + "]}");
    revise(Address.parse("sixty-lines"), "One of them", "w-7=70 g");
    create("broken-bun", "{\"name\": \"Broken bun\", \"lines\": []}");
  }

  private static final String TWO_PIECES =
      """
      {"id": "a", "temperature": "190 °C", "minutes": 24, "dough_g": 94.6, "baked_g": 85.7,
       "width_mm": 89, "height_mm": 31, "core": "94 °C", "crust_shade": 1.2,
       "findings": ["gummy crumb"], "liking": [5, 6, 5]},
      {"id": "b", "temperature": "190 °C", "minutes": 30, "dough_g": 95, "baked_g": 84,
       "width_mm": 92, "height_mm": 33, "core": "97 °C", "crust_shade": 2,
       "findings": ["gummy crumb", "pale"], "liking": [6, 6, 5], "verdict": "still damp",
       "attributes": [{"name": "moist", "scores": [1, 1, 0]}]}
      """;

  private static final String THREE_PIECES =
      """
      {"id": "a", "temperature": "205 °C", "minutes": 18, "dough_g": 94.6, "baked_g": 84,
       "width_mm": 88, "height_mm": 45, "crust_shade": 1.5, "findings": ["even crumb"],
       "liking": [7, 7, 6]},
      {"id": "b", "temperature": "205 °C", "minutes": 21, "height_mm": 46, "crust_shade": 2.4,
       "findings": ["even crumb", "smells of the sea"], "liking": [8, 7, 7]},
      {"id": "c"}
      """;

  private void bake(String address, String id, String pieces, boolean photographed) {
    Revision revision = notebook.revision(Address.parse(address));
    String photos =
        photographed
            ? "{\"file\": \"%s\", \"caption\": \"Two buns\", \"marks\": ["
                    .formatted(PHOTO)
                + "{\"piece\": \"a\", \"x\": 0.25, \"y\": 0.5},"
                + "{\"piece\": \"b\", \"x\": 0.75, \"y\": 0.5}]}"
            : "";
    String json =
        """
        {"address": "%s", "blob": "%s", "time": "%sT10:20:00+01:00", "baker": "Ines",
         "ambient": "23 °C", "pieces": [%s], "photos": [%s]}
        """
            .formatted(address, revision.blob().hex(), id.substring(0, 10), pieces, photos);
    Bake bake = BakeCodec.read(id, "seeded-lupin-bun", id, bytes(json));
    Map<String, byte[]> pictures =
        photographed
            ? Map.of(PHOTO, picture(PHOTO_WIDTH, 900), TEXT_PHOTO, bytes("not a picture"))
            : Map.of();
    new RecordWriter(notebook).addBake(Address.parse(address), bake, pictures, "Bake", by());
  }

  /** A JPEG picture of two discs on a tray. */
  static byte[] picture(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x3b4346));
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(new Color(0xc0812f));
    graphics.fillOval(width / 8, height / 4, width / 4, height / 2);
    graphics.fillOval(width * 5 / 8, height / 4, width / 4, height / 2);
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpg", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private void create(String slug, String json) {
    Formula formula = FormulaCodec.read(slug, bytes(json));
    new FormulaWriter(notebook).create(slug, formula, "Write it down", by());
  }

  private void revise(Address line, String note, String... changes) {
    Revision base = notebook.newest(line);
    FormulaEdit edit = new FormulaEdit(notebook.formula(base));
    for (String change : changes) {
      edit = edit.set(change);
    }
    new FormulaWriter(notebook).revise(base, edit.formula(), note, by());
  }

  private By by() {
    clock = clock.plusDays(1);
    return new By(INES, clock);
  }

  /** A commit whose formula was cut off in the middle. */
  private static void damage(Path folder) {
    try (GitStore store = GitStore.open(folder)) {
      store.write(
          Write.to(
                  "main",
                  store.head("main"),
                  INES,
                  OffsetDateTime.parse("2026-05-01T08:00:00+01:00"),
                  "Saved by a failing editor")
              .put("formulas/broken-bun.json", bytes("{\"name\": \"Broken bun\", \"lines\": [")));
    }
  }

  private static void editByHand(Path folder) {
    Path file = folder.resolve("formulas/wheat-bun.json");
    try {
      Files.writeString(file, Files.readString(file).replace("190 g", "195 g"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
