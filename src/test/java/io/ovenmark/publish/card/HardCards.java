package io.ovenmark.publish.card;

import io.ovenmark.measure.Quantity;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/** Cards that are hard to lay out, and the usual one. All of them are invented. */
final class HardCards {
  private static final List<String> FOODS =
      List.of(
          "lupin flour, sweet lupin", "partially defatted sunflower seed flour",
          "psyllium husk powder", "dried egg white", "whey protein isolate, plain", "flaxseed",
          "sesame seeds", "pumpkin seed kernels", "sunflower seed kernels",
          "double-acting baking powder", "table salt", "caraway seed", "whole egg",
          "cider vinegar", "sunflower oil, high oleic", "water");
  private static final List<String> STEPS =
      List.of(
          "Whisk the flours, psyllium, egg white powder, whey, baking powder, salt and caraway"
              + " until no streak is left.",
          "Toast the sesame and the sunflower seeds in a dry pan over medium heat for 4 minutes"
              + " and let them cool.",
          "Beat the eggs with the vinegar and the oil, then stir in the warm water.",
          "Pour the wet part over the dry part and stir with a stiff spatula for 1 minute; the"
              + " dough thickens as it stands.",
          "Rest 15 minutes, covered, so that the psyllium takes up the water.",
          "Fold in the seeds and divide into 6 pieces of about 130 g with wet hands.",
          "Shape round, set on a tray with a sheet, press the pumpkin seeds on top and cut a cross"
              + " 1 cm deep.",
          "Bake until the centre reaches 96 °C, turn the tray after half the time, and cool on a"
              + " rack for 1 hour before cutting.");
  private static final List<String> CAUTIONS =
      List.of(
          "Contains eggs, milk, sesame, lupin. Traces from the bench and from packages are not"
              + " counted; read every label.",
          "Contains egg: bake until the centre reaches 71 °C (160 °F), and follow local food"
              + " codes.",
          "Raw flour is not ready to eat: do not taste the dough.",
          "Contains lupin: people allergic to peanut can react to it.",
          "Figures are an aid for development. Whoever takes medicine for blood sugar or blood"
              + " pressure should settle changes of diet with those who treat them.");
  private static final List<String> BASIS =
      List.of(
          "Figures of a piece are summed over the ingredients (SR28, label), energy as the foods"
              + " state it.",
          "Net carbohydrate is carbohydrate − fibre − polyols − allulose; it has no legal"
              + " definition.",
          "Not all is known of: partially defatted sunflower seed flour.");
  private static final List<String> LABELS =
      List.of(
          "energy", "protein", "fat", "saturated fat", "carbohydrate", "fibre", "sugars",
          "net carbohydrate", "sodium");

  private HardCards() {}

  /** By name, in a fixed order. */
  static Map<String, Card> all() {
    Map<String, Card> cards = new TreeMap<>();
    cards.put("usual", usual());
    cards.put("extreme", extreme());
    cards.put("arabic", arabic());
    cards.put("greek", greek());
    cards.put("unknown", unknown());
    cards.put("one word", oneWord());
    return cards;
  }

  /** Sixteen ingredients, eight steps, a photo. */
  static Card usual() {
    List<Card.Ingredient> ingredients = new ArrayList<>();
    for (String food : FOODS) {
      Optional<String> note =
          ingredients.size() % 4 == 2 ? Optional.of("at room temperature") : Optional.empty();
      ingredients.add(ingredient("180 g", "1/4 cup + 1 tsp", food, note));
    }
    return card(
        "Seeded lupin bun",
        "A soft bun for breakfast, low in carbohydrate. It slices well on the next day.",
        Optional.of(photo()),
        ingredients,
        STEPS,
        1,
        "9.68 g");
  }

  /** A long name, thirty ingredients with notes, twelve steps, three stages, no photo. */
  static Card extreme() {
    List<Card.Ingredient> ingredients = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      ingredients.add(
          ingredient(
              "1.25 kg",
              "1 1/4 cups + 2 tbsp, ground, −12 %",
              FOODS.get(i % FOODS.size()),
              Optional.of("sieved through the 0.5 mm sieve and kept dry until it is needed")));
    }
    List<String> steps = new ArrayList<>(STEPS);
    steps.addAll(STEPS.subList(0, 4));
    return card(
        "Twice-toasted seeded lupin and sunflower breakfast bun with caraway, cider vinegar and a"
            + " crust of pumpkin seeds, for the long table",
        "A long trial with everything that the bench has on its shelves, so that nothing is"
            + " missing when the panel sits down.",
        Optional.empty(),
        ingredients,
        steps,
        3,
        "between 0.332 and 15.04 g");
  }

  static Card arabic() {
    return card(
        "خبز الترمس بالسمسم",
        "خبز طري للفطور، قليل الكربوهيدرات وبلا قمح.",
        Optional.empty(),
        List.of(
            ingredient("180 g", "1 2/3 cups", "طحين الترمس", Optional.empty()),
            ingredient("40 g", "1/4 cup + 1 tsp", "بذور السمسم", Optional.of("محمّص على نار هادئة")),
            ingredient("210 g", "3/4 cup + 2 tbsp", "water", Optional.of("دافئ، ٣٥ درجة"))),
        List.of("اخلط المكوّنات الجافة جيدًا.", "اخبز حتى تصل حرارة الوسط إلى 96 °C ثم برّد."),
        1,
        "at least 0.109 g");
  }

  static Card greek() {
    return card(
        "Τραγανά κράκερ με σουσάμι",
        "Λεπτά κράκερ χωρίς σιτάρι, για το τραπέζι με τα τυριά.",
        Optional.of(photo()),
        List.of(
            ingredient("150 g", "1 cup", "σουσάμι", Optional.empty()),
            ingredient("40 g", "", "λιναρόσπορος", Optional.of("αλεσμένος"))),
        List.of("Άνοιξε πολύ λεπτά ανάμεσα σε δύο φύλλα και χάραξε.", "Ψήσε 35 λεπτά."),
        1,
        "0.763 g");
  }

  /** Neither masses nor foods nor pieces nor method are known. */
  static Card unknown() {
    return card(
        "Trial | with *signs* & <b>what_is</b> `odd`",
        "",
        Optional.empty(),
        List.of(
            new Card.Ingredient(
                "2 heaped handfuls",
                OptionalDouble.empty(),
                Optional.empty(),
                "sea-moss",
                Optional.of("* from the fair | unlabelled"))),
        List.of(),
        0,
        "unknown");
  }

  /** Names without a place to break. */
  static Card oneWord() {
    return card(
        "Lupinensonnenblumenkernkürbisbrötchenversuchsreihe".repeat(2),
        "x".repeat(200),
        Optional.of(photo()),
        List.of(
            ingredient("180 g", "1 cup", "sonnenblumenkernmehlteilentölt".repeat(3),
                Optional.of("y".repeat(80)))),
        List.of("z".repeat(300)),
        1,
        "9.68 g");
  }

  private static Card card(
      String name,
      String description,
      Optional<CardPhoto> photo,
      List<Card.Ingredient> ingredients,
      List<String> method,
      int stages,
      String figure) {
    boolean known = !figure.equals("unknown");
    return new Card(
        name,
        Optional.of(description).filter(text -> !text.isEmpty()),
        known
            ? "6 pieces of 148 g dough; not weighed after baking"
            : "An unknown number of pieces, of unknown mass; not weighed after baking",
        known ? Optional.of("6 pieces") : Optional.empty(),
        photo,
        ingredients,
        method,
        Collections.nCopies(
            stages,
            new Card.Stage(
                Optional.of("205 °C (400 °F)"),
                Optional.of("18 min"),
                List.of("middle rack", "steam: 10 s at loading"),
                Optional.of("PT18M"))),
        LABELS.stream()
            .map(label -> new Card.Fact(label, label, figure, Quantity.UNKNOWN))
            .toList(),
        BASIS,
        List.of("eggs"),
        List.of(),
        CAUTIONS,
        Optional.of("Two days at room temperature in a closed box; frozen for a month."),
        "trial@1",
        Optional.of("2026-09-14"),
        1);
  }

  private static Card.Ingredient ingredient(
      String mass, String measure, String name, Optional<String> note) {
    return new Card.Ingredient(
        mass,
        OptionalDouble.of(1),
        Optional.of(measure)
            .filter(text -> !text.isEmpty())
            .map(text -> new KitchenMeasure(text, 1, 0)),
        name,
        note);
  }

  private static CardPhoto photo() {
    BufferedImage image = new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0xb57a3c));
    graphics.fillOval(100, 100, 1000, 700);
    graphics.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpeg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new CardPhoto(out.toByteArray(), "Six buns on a tray");
  }
}
