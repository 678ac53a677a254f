package io.ovenmark.publish.story;

import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.card.Card;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/** Stories made by hand; invented for the demo's bench. */
final class StoryByHand {
  static final String GREEK = "Ψωμάκι με λούπινο, πιο ψηλό και λιγότερο υγρό";
  static final String ARABIC = "خبز الترمس بالسمسم، أعلى وأقل رطوبة";

  static final List<String> CAUTIONS =
      List.of(
          "Contains eggs, milk, sesame, lupin. Traces from the bench and from packages are not"
              + " counted; read every label.",
          "Contains egg: bake until the centre reaches 71 °C (160 °F), and follow local food"
              + " codes.",
          "Raw flour is not ready to eat: do not taste the dough.",
          "Contains lupin: people allergic to peanut can react to it.");

  static final Move HEIGHT =
      new Move(
          "best_height_mm", "best height", "mm", 31, 38, "31 mm", "38 mm", "+7 mm", false);

  private StoryByHand() {}

  /** A JPEG whose left half is red and whose right half is blue. */
  static byte[] jpeg(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.RED);
    graphics.fillRect(0, 0, width / 2, height);
    graphics.setColor(Color.BLUE);
    graphics.fillRect(width / 2, 0, width - width / 2, height);
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpeg", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static StoryPhoto photo(String shows) {
    return new StoryPhoto(jpeg(400, 300), shows, Optional.of("Pieces a and b"));
  }

  static Story.Step step(int number, Optional<Move> move, Optional<StoryPhoto> photo) {
    return step(
        number,
        "Drier dough, hotter and shorter bake",
        Optional.of("The wet line had to go."),
        number == 1 ? List.of() : List.of("Water 210 g → 180 g (−30 g)."),
        move,
        photo);
  }

  static Story.Step step(
      int number,
      String heading,
      Optional<String> words,
      List<String> changed,
      Optional<Move> move,
      Optional<StoryPhoto> photo) {
    return new Story.Step(
        number,
        "seeded-lupin-bun@" + number,
        "2026-07-1" + number % 10,
        heading,
        words,
        changed,
        number == 1 ? Optional.empty() : Optional.of("Water and heat changed together."),
        List.of("Up to 38 mm high, 9.8 % lost on baking.", "Gummy crumb, wet line."),
        move,
        photo);
  }

  static Arc arc(String label, Double... values) {
    List<Arc.Point> points = new ArrayList<>();
    for (int at = 0; at < values.length; at++) {
      Double value = values[at];
      points.add(
          new Arc.Point(
              at + 1,
              at % 2 == 0,
              value == null ? OptionalDouble.empty() : OptionalDouble.of(value),
              value == null ? "not baked" : value + " g"));
    }
    return new Arc(
        "net", label, "g", OptionalDouble.empty(), OptionalDouble.of(4), points);
  }

  static Card card(List<String> contains, List<String> unknown, List<String> cautions) {
    return new Card(
        "Seeded lupin bun",
        Optional.empty(),
        "6 pieces of 92.7 g dough, 81.8 g baked",
        Optional.of("6 pieces"),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new Card.Fact("energy_kcal", "energy", "206 kcal", Quantity.known(206)),
            new Card.Fact("protein_g", "protein", "at least 14.4 g", Quantity.atLeast(14.4)),
            new Card.Fact("fat_g", "fat", "12 g", Quantity.known(12)),
            new Card.Fact("carbohydrate_g", "carbohydrate", "15.9 g", Quantity.known(15.9)),
            new Card.Fact("fibre_g", "fibre", "unknown", Quantity.UNKNOWN),
            new Card.Fact(
                "net_carbohydrate_g", "net carbohydrate", "3.87 g", Quantity.known(3.87)),
            new Card.Fact("sodium_mg", "sodium", "478 mg", Quantity.known(478))),
        List.of("Net carbohydrate has no legal definition."),
        contains,
        unknown,
        cautions,
        Optional.of("Two days in a box."),
        "seeded-lupin-bun@13",
        Optional.of("2026-10-02"),
        1);
  }

  static Story of(List<Story.Step> steps, List<Arc> arcs, Card card) {
    return new Story(
        "How the bun lost its wet line",
        "Seeded lupin bun",
        Optional.of("Ines"),
        "13 revisions and 12 bakes, 2026-06-02 to 2026-10-05",
        Optional.of("A bun for guests who count every gram."),
        Optional.of("Next winter the crust."),
        steps.get(steps.size() - 1).photo(),
        steps,
        arcs,
        card);
  }

  /** Three steps with photos, two ways of figures. */
  static Story usual() {
    return of(
        List.of(
            step(1, Optional.empty(), Optional.of(photo("Two flat buns"))),
            step(2, Optional.of(HEIGHT), Optional.of(photo("Two higher buns"))),
            step(3, Optional.of(HEIGHT), Optional.of(photo("Two brown buns")))),
        List.of(arc("net carbohydrate", 5.2, 4.6, null, 3.9), arc("liking", 4.0, null, 7.1)),
        card(List.of("eggs", "milk", "lupin"), List.of(), CAUTIONS));
  }

  /** Everything too long, in several scripts, with much unknown. */
  static Story full() {
    String endless = "Backstubenverordnungsentwurf".repeat(12);
    List<String> changes =
        IntStream.rangeClosed(1, 30).mapToObj(n -> "Seed number " + n + " 12 g → 14 g.").toList();
    List<String> foods =
        IntStream.rangeClosed(1, 30).mapToObj(n -> "unlabelled sack number " + n).toList();
    List<String> cautions = new ArrayList<>(CAUTIONS);
    IntStream.rangeClosed(1, 12)
        .mapToObj(n -> "In the bake of 2026-09-" + (10 + n) + " the centre stayed below 71 °C"
            + " (160 °F), though there is egg in it: a, b, c. Do not serve such pieces.")
        .forEach(cautions::add);
    cautions.add(ARABIC + " 71 °C " + ARABIC);
    return of(
        List.of(
            step(1, ARABIC, Optional.of(GREEK), List.of(), Optional.empty(), Optional.empty()),
            step(
                2,
                (GREEK + " ").repeat(3).substring(0, 120),
                Optional.of((GREEK + ". ").repeat(40)),
                changes,
                Optional.of(HEIGHT),
                Optional.of(photo("Two buns"))),
            step(3, endless, Optional.of(endless), changes, Optional.empty(), Optional.empty()),
            step(
                4,
                "Neither has a photo",
                Optional.of(endless),
                changes,
                Optional.of(HEIGHT),
                Optional.empty()),
            step(
                5,
                "Nor a figure",
                Optional.empty(),
                List.of(ARABIC),
                Optional.empty(),
                Optional.empty())),
        IntStream.rangeClosed(1, 8)
            .mapToObj(n -> arc("figure with a rather long name, number " + n, 1.0, null, 1e6 * n))
            .toList(),
        card(List.of("eggs", "milk", "sesame", "lupin"), foods, cautions));
  }
}
