package io.ovenmark.goal;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Members;
import io.ovenmark.measure.Slug;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads and writes a goal's file, {@code goals/<slug>.json}. */
public final class GoalCodec {
  private static final double GREATEST = 10_000_000;

  private GoalCodec() {}

  /**
   * Reads a goal.
   *
   * @param file the name used in messages
   * @param slug the short name, from the file's name
   * @param utf8 the file's bytes
   * @return the goal
   * @throws io.ovenmark.json.UnreadableException with everything that is wrong
   */
  public static Goal read(String file, String slug, byte[] utf8) {
    Fields fields = Fields.of(file, utf8);
    Optional<String> name = fields.requiredText("name");
    Optional<String> note = fields.text("note");
    List<Limit> limits = fields.objects("limits", GoalCodec::limit);
    Optional<Fields> without = fields.object("without");
    List<String> allergens = without.map(GoalCodec::allergens).orElse(List.of());
    List<String> foods = without.map(GoalCodec::foods).orElse(List.of());
    Optional<NetCarbohydrate> net = fields.object("net_carbohydrate").map(GoalCodec::policy);
    Extras extras = fields.extras();
    fields.finish();
    return new Goal(slug, name.orElseThrow(), note, limits, allergens, foods, net, extras);
  }

  /**
   * Writes a goal in canonical form.
   *
   * @param goal the goal
   * @return UTF-8 JSON with a final newline
   */
  public static byte[] write(Goal goal) {
    Members members =
        new Members()
            .text("name", goal.name())
            .text("note", goal.note())
            .list("limits", goal.limits(), GoalCodec::toJson);
    if (!goal.withoutAllergens().isEmpty() || !goal.withoutFoods().isEmpty()) {
      members.value(
          "without",
          new Members()
              .texts("allergens", goal.withoutAllergens())
              .texts("foods", goal.withoutFoods())
              .object());
    }
    goal.netCarbohydrate().ifPresent(net -> members.value("net_carbohydrate", toJson(net)));
    return CanonicalJson.write(members.extras(goal.extras()).object());
  }

  /**
   * Reads what net carbohydrate subtracts; also used for the notebook's own policy.
   *
   * @param fields the object with {@code subtract}
   * @return the policy; faults are reported in the fields
   */
  public static NetCarbohydrate policy(Fields fields) {
    Optional<Fields> subtract = fields.object("subtract");
    if (subtract.isEmpty()) {
      return NetCarbohydrate.ALL;
    }
    Fields shares = subtract.get();
    return new NetCarbohydrate(
        shares.number("fibre", 0, 1).orElse(0),
        shares.number("polyols", 0, 1).orElse(0),
        shares.number("allulose", 0, 1).orElse(0));
  }

  /**
   * Writes what net carbohydrate subtracts.
   *
   * @param net the policy
   * @return an object with {@code subtract}
   */
  public static JsonValue toJson(NetCarbohydrate net) {
    return new Members()
        .value(
            "subtract",
            new Members()
                .number("fibre", Members.decimal(net.fibre()))
                .number("polyols", Members.decimal(net.polyols()))
                .number("allulose", Members.decimal(net.allulose()))
                .object())
        .object();
  }

  private static List<String> allergens(Fields without) {
    List<String> words = without.texts("allergens");
    for (String word : words) {
      if (Allergen.group(word).isEmpty()) {
        without.problem(
            "allergens",
            "\"" + word + "\" is not an allergen that is known here.",
            "Use a name such as \"eggs\", \"tree nuts\" or \"gluten\".");
      }
    }
    return words;
  }

  private static List<String> foods(Fields without) {
    List<String> slugs = without.texts("foods");
    for (String slug : slugs) {
      try {
        Slug.check(slug);
      } catch (IllegalArgumentException e) {
        report(without, "foods", e);
      }
    }
    return slugs;
  }

  private static Optional<Limit> limit(Fields fields) {
    Optional<Figure> figure = fields.parsed("figure", GoalCodec::figure);
    if (figure.isEmpty() && !fields.has("figure")) {
      fields.problem("figure", "The limit names no figure.", "Add one such as \"protein_g\".");
    }
    Basis basis = fields.parsed("per", GoalCodec::basis).orElse(Basis.PIECE);
    OptionalDouble atLeast = fields.number("at_least", 0, GREATEST);
    OptionalDouble atMost = fields.number("at_most", 0, GREATEST);
    Extras extras = fields.extras();
    boolean faultyBound =
        atLeast.isEmpty() && fields.has("at_least") || atMost.isEmpty() && fields.has("at_most");
    if (figure.isEmpty() || faultyBound) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Limit(figure.get(), basis, atLeast, atMost, extras));
    } catch (IllegalArgumentException e) {
      report(fields, "", e);
      return Optional.empty();
    }
  }

  private static JsonValue toJson(Limit limit) {
    Members members = new Members().text("figure", limit.figure().key());
    if (limit.figure().isMacro()) {
      members.text("per", limit.basis().label());
    }
    return members
        .number("at_least", limit.atLeast())
        .number("at_most", limit.atMost())
        .extras(limit.extras())
        .object();
  }

  private static Figure figure(String key) {
    return Figure.withKey(key)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + key + "\" is not a figure.\n"
                        + "Use a name such as \"net_carbohydrate_g\" or \"liquid_ratio\"."));
  }

  private static Basis basis(String label) {
    return Basis.withLabel(label)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + label + "\" is not what a figure can be stated for.\n"
                        + "Use piece, batch, 100 g dough or 100 g baked."));
  }

  private static void report(Fields fields, String name, IllegalArgumentException e) {
    String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
    fields.problem(name, parts[0], parts.length > 1 ? parts[1] : "Correct the value.");
  }
}
