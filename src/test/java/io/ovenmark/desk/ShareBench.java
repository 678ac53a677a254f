package io.ovenmark.desk;

import static io.ovenmark.notebook.NotebookFixture.piece;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.FormulaFixture;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.BlobId;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import io.ovenmark.notebook.store.Write;
import io.ovenmark.pantry.Nutrient;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;

/**
 * A notebook for the tests of sharing: a seeded lupin bun with a wheat reference, two variants (one
 * with improvements carried over), bakes with photos, a publication, foods that changed; and beside
 * it a crispbread and a muffin whose secrets must stay. All figures of bakes are invented.
 */
final class ShareBench implements AutoCloseable {
  static final String BUN = "seeded-lupin-bun";
  static final Author MATE = new Author("Other Hand", "other.hand@example.org");

  /** What must not be found in what is shared. */
  static final List<String> SECRETS =
      List.of(
          "sesame-crispbread",
          "Sesame crispbread",
          "sesame crispbread",
          "cocoa-sunflower-muffin",
          "Cocoa sunflower muffin",
          "honey",
          "cocoa",
          "Saltmarsh bench",
          "Secret remark",
          "secret_key",
          "example.org");

  private final NotebookFixture fixture;
  private final Desk desk;

  ShareBench(Path temporary) {
    fixture = new NotebookFixture(temporary);
    edit(
        "notebook.json",
        text ->
            text.replace("\"energy\": \"foods\"", "\"energy\": \"US factors\"")
                .replace("\"title\"", "\"secret_key\": \"Secret remark\",\n  \"title\""),
        "Secret remark about the settings");
    fixture.goal(
        "low-carb-bun",
        """
        {"name": "Low-carbohydrate bun",
         "limits": [{"figure": "net_carbohydrate_g", "per": "piece", "at_most": 4}],
         "net_carbohydrate": {"subtract": {"fibre": 1, "allulose": 0}}}
        """);
    fixture
        .formula("wheat-bun")
        .line("wheat-flour-bread", "500 g")
        .line("water", "300 g")
        .set("yield.pieces=8")
        .revise("The wheat bun that is rebuilt");
    fixture
        .formula("sesame-crispbread")
        .line("sesame-seeds", "150 g")
        .line("honey", "2 tsp")
        .revise("Secret remark: crisp");
    fixture
        .formula(BUN)
        .line("lupin-flour", "120 g")
        .line("psyllium-husk", "20 g")
        .line("egg-whole", "2 large")
        .line("water", "180 g")
        .set("lupin-flour.flour=true", "goal=low-carb-bun", "reference=wheat-bun")
        .set("yield.pieces=6", "bake.temperature=200C", "bake.minutes=25")
        .method("Mix.", "Rest 10 min.", "Bake.")
        .revise("Begin");
    fixture.formula(BUN).set("water=188 g").revise("Wetter\n\nThe first dough tore.");
    bake(2, "tray.jpg", "A grand bake.");
    fixture.relabel("lupin-flour", Nutrient.FIBRE, 30);
    fixture
        .formula(BUN)
        .set("egg-whole=3 large")
        .revise("One more egg. Sesame crispbread gets none.");
    bake(3, "tray-2.jpg", "Sesame crispbread and bun baked together");
    new RecordWriter(fixture.notebook())
        .publish(
            fixture.notebook().revision(Address.parse(BUN + "@3")),
            "For the breakfast basket",
            fixture.by());
    bun().fork("egg-free", null).set("egg-whole=0 g", "water=230 g").revise("No egg");
    fixture.formula("cocoa-sunflower-muffin").line("cocoa-powder", "40 g").revise("Secret remark");
    fixture.formula(BUN).set("psyllium-husk=24 g").revise("More husk");
    new VariantWriter(fixture.notebook())
        .carry(Address.parse(BUN + "/egg-free"), Map.of(), "Carry the husk over", by());
    fixture.variant(BUN, "egg-free").set("water=240 g").revise("Still wetter without egg");
    new RestoreRevision(new Desk(fixture.notebook()))
        .call(
            Address.parse(BUN + "@3"),
            Address.parse(BUN),
            "Back to less husk",
            new By(MATE, fixture.by().time()));
    fixture.relabel("lupin-flour", Nutrient.PROTEIN, 37);
    desk = new Desk(fixture.open());
  }

  private By by() {
    return fixture.by();
  }

  FormulaFixture bun() {
    return fixture.formula(BUN);
  }

  NotebookFixture fixture() {
    return fixture;
  }

  Desk desk() {
    return desk;
  }

  private void edit(String path, UnaryOperator<String> change, String note) {
    try (GitStore store = fixture.repository().open()) {
      var head = store.head("main").orElseThrow();
      BlobId blob = store.blob(head, path).orElseThrow();
      String text = new String(store.read(blob), StandardCharsets.UTF_8);
      fixture
          .repository()
          .commit(
              store,
              Write.to(
                      "main",
                      Optional.of(head),
                      RepositoryFixture.AUTHOR,
                      fixture.repository().tick(),
                      note)
                  .put(path, RepositoryFixture.bytes(change.apply(text))));
    }
  }

  private void bake(int revision, String picture, String note) {
    Address address = Address.parse(BUN).at(revision);
    Bake bake =
        fixture.bake(
            fixture.notebook().revision(address),
            List.of(piece("a", 200, 25, 76, 66, 38, "dense")),
            picture);
    try (GitStore store = fixture.repository().open()) {
      fixture
          .repository()
          .commit(
              store,
              Write.to(
                      "main",
                      store.head("main"),
                      RepositoryFixture.AUTHOR,
                      fixture.repository().tick(),
                      note)
                  .put(bake.photos().get(0).file(), jpegWithRemark("54.1 N 7.9 E secret place")));
    }
  }

  /** A small picture with a remark in it that tells a place. */
  static byte[] jpegWithRemark(String remark) {
    byte[] bare = jpeg();
    byte[] words = RepositoryFixture.bytes(remark);
    byte[] all = new byte[bare.length + words.length + 4];
    all[0] = bare[0];
    all[1] = bare[1];
    all[2] = (byte) 0xFF;
    all[3] = (byte) 0xFE;
    all[4] = (byte) ((words.length + 2) >> 8);
    all[5] = (byte) (words.length + 2);
    System.arraycopy(words, 0, all, 6, words.length);
    System.arraycopy(bare, 2, all, 6 + words.length, bare.length - 2);
    return all;
  }

  static byte[] jpeg() {
    try {
      BufferedImage image = new BufferedImage(32, 24, BufferedImage.TYPE_INT_RGB);
      image.setRGB(4, 4, 0xAA7744);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "jpg", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    desk.close();
    fixture.close();
  }
}
