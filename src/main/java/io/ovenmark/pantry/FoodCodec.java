package io.ovenmark.pantry;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads and writes a food's file, {@code pantry/<slug>.json}. A figure that is absent or null is
 * unknown; a missing {@code allergens} list is unknown while an empty one means none.
 */
public final class FoodCodec {
  private static final double GREATEST_GRAMS = 100.5;
  private static final double GREATEST_ENERGY = 1_000;
  private static final double GREATEST_MILLIGRAMS = 100_500;
  private static final double GREATEST_MICROGRAMS = 100_500_000;

  private FoodCodec() {}

  /**
   * Reads a food.
   *
   * @param file the name used in messages
   * @param slug the short name, from the file's name
   * @param utf8 the file's bytes
   * @return the food
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static Food read(String file, String slug, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    String name = fields.requiredText("name").orElse(slug);
    FoodKind kind = fields.parsed("kind", FoodCodec::kind).orElse(null);
    if (kind == null && !fields.has("kind")) {
      fields.problem("kind", "The field is missing.", "Add one of " + kinds() + ".");
    }
    Optional<Fields> source = fields.object("source");
    Source read =
        source
            .map(FoodCodec::source)
            .orElse(new Source(Source.Kind.OWN, Optional.empty(), Optional.empty()));
    Nutrients per100g =
        fields.object("per_100_g").map(FoodCodec::figures).orElse(Nutrients.UNKNOWN);
    List<HouseholdMeasure> household = fields.objects("household", FoodCodec::household);
    OptionalDouble density = fields.number("density_g_per_ml", 0.01, 25);
    Optional<String> polyol = fields.text("polyol");
    Optional<Set<Allergen>> allergens = allergens(fields);
    Optional<Price> price = fields.object("price").flatMap(FoodCodec::price);
    Extras extras = fields.extras();
    if (!Slug.isSlug(slug)) {
      fields.problem(
          "",
          "The file's name \"" + slug + "\" cannot be a short name.",
          "Use lower-case letters a-z, digits and single hyphens.");
    }
    fields.finish();
    return new Food(
        slug, name, kind, read, per100g, household, density, allergens, polyol, price, extras);
  }

  /**
   * Writes a food in canonical form.
   *
   * @param food the food
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(Food food) {
    return CanonicalJson.write(toJson(food));
  }

  private static JsonValue toJson(Food food) {
    Members figures = new Members();
    food.per100g()
        .toMap()
        .forEach((nutrient, figure) -> figures.number(nutrient.key(), figure.value()));
    Members members =
        new Members()
            .text("name", food.name())
            .text("kind", food.kind().key())
            .value(
                "source",
                new Members()
                    .text("kind", food.source().kind().key())
                    .text("id", food.source().id())
                    .text("note", food.source().note())
                    .object())
            .value("per_100_g", figures.object());
    if (!food.household().isEmpty()) {
      members.list(
          "household",
          food.household(),
          m ->
              new Members()
                  .text("measure", m.measure())
                  .number("grams", Members.decimal(m.grams()))
                  .extras(m.extras())
                  .object());
    }
    members.number("density_g_per_ml", food.densityGramsPerMillilitre());
    food.allergens()
        .ifPresent(set -> members.texts("allergens", set.stream().map(Allergen::key).toList()));
    members.text("polyol", food.polyol());
    food.price()
        .ifPresent(
            price ->
                members.value(
                    "price",
                    new Members()
                        .number("amount", price.amount())
                        .text("currency", price.currency())
                        .number("grams", Members.decimal(price.grams()))
                        .text("date", price.date().map(LocalDate::toString))
                        .object()));
    return members.extras(food.extras()).object();
  }

  private static Source source(Fields fields) {
    Source.Kind kind =
        fields
            .parsed(
                "kind",
                key ->
                    Source.Kind.withKey(key)
                        .orElseThrow(
                            () ->
                                new IllegalArgumentException(
                                    "\"" + key + "\" is not a kind of source.\n"
                                        + "Use SR28, FoodData Central, label, typical or own.")))
            .orElse(Source.Kind.OWN);
    return new Source(kind, fields.text("id"), fields.text("note"));
  }

  private static Nutrients figures(Fields fields) {
    Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
    for (String key : fields.names()) {
      Optional<Nutrient> nutrient = Nutrient.withKey(key);
      if (nutrient.isEmpty()) {
        continue;
      }
      OptionalDouble figure = fields.number(key, 0, greatest(nutrient.get()));
      if (figure.isPresent()) {
        known.put(nutrient.get(), Quantity.known(figure.getAsDouble()));
      }
    }
    return Nutrients.of(known);
  }

  /** The greatest figure per 100 g that can be true, with room for rounding. */
  static double greatest(Nutrient nutrient) {
    return switch (nutrient.unit()) {
      case "g" -> GREATEST_GRAMS;
      case "kcal" -> GREATEST_ENERGY;
      case "µg" -> GREATEST_MICROGRAMS;
      default -> GREATEST_MILLIGRAMS;
    };
  }

  private static Optional<HouseholdMeasure> household(Fields fields) {
    Optional<String> measure = fields.requiredText("measure");
    OptionalDouble grams = fields.number("grams", 0.001, 1_000_000);
    if (grams.isEmpty() && !fields.has("grams")) {
      fields.problem("grams", "The field is missing.", "Add what one of it weighs.");
    }
    return measure.isPresent() && grams.isPresent()
        ? Optional.of(new HouseholdMeasure(measure.get(), grams.getAsDouble(), fields.extras()))
        : Optional.empty();
  }

  private static Optional<Set<Allergen>> allergens(Fields fields) {
    List<String> words = fields.texts("allergens");
    if (!fields.has("allergens")) {
      return Optional.empty();
    }
    Set<Allergen> set = new TreeSet<>();
    for (String word : words) {
      Optional<Allergen> allergen = Allergen.withKey(word.toLowerCase(Locale.ROOT));
      if (allergen.isEmpty()) {
        fields.problem(
            "allergens",
            "\"" + word + "\" is not an allergen that is known here.",
            "Use a name such as \"eggs\" or \"tree nuts\".");
      }
      allergen.ifPresent(set::add);
    }
    return Optional.of(set);
  }

  private static Optional<Price> price(Fields fields) {
    Optional<BigDecimal> amount = fields.decimal("amount");
    Optional<String> currency = fields.text("currency");
    OptionalDouble grams = fields.number("grams", 0.001, 10_000_000);
    Optional<LocalDate> date = fields.parsed("date", FoodText::day);
    try {
      return Optional.of(
          new Price(
              amount.orElse(BigDecimal.ONE.negate()),
              currency.orElse(""),
              grams.orElse(0),
              date));
    } catch (IllegalArgumentException e) {
      String[] parts = e.getMessage().split("\n", 2);
      fields.problem("", parts[0], parts[1]);
      return Optional.empty();
    }
  }

  private static FoodKind kind(String key) {
    return FoodKind.withKey(key)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + key + "\" is not a kind of food.\nUse one of " + kinds() + "."));
  }

  private static String kinds() {
    StringBuilder out = new StringBuilder();
    for (FoodKind kind : FoodKind.values()) {
      out.append(out.isEmpty() ? "" : ", ").append(kind.key());
    }
    return out.toString();
  }
}
