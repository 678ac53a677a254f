package io.ovenmark.publish.label;

import io.ovenmark.pantry.Allergen;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The allergens that a region's law names, as far as the foods tell. The nine of the United States:
 * FD&amp;C Act section 201(qq) (FALCPA 2004, FASTER Act 2021). The fourteen of the European Union:
 * Regulation (EU) No 1169/2011, Annex II; its cereals containing gluten are named one by one.
 *
 * @param contained the allergens with the foods that bring them, in the law's order
 * @param unknownIn the foods whose allergens are unknown
 * @param notes what else the law wants, and what the foods cannot tell
 */
public record AllergenStatement(
    List<Contained> contained, List<String> unknownIn, List<String> notes) {
  /**
   * An allergen.
   *
   * @param allergen which
   * @param name as the region's law names it
   * @param foods the foods that bring it
   */
  public record Contained(Allergen allergen, String name, List<String> foods) {
    /** Copies. */
    public Contained {
      foods = List.copyOf(foods);
    }
  }

  private static final Map<Allergen, String> UNITED_STATES =
      Map.of(
          Allergen.CRUSTACEANS, "Crustacean shellfish",
          Allergen.PEANUTS, "peanuts",
          Allergen.SOYBEANS, "soybeans");

  private static final Map<Allergen, String> EUROPEAN_UNION =
      Map.of(
          Allergen.WHEAT, "cereals containing gluten: wheat",
          Allergen.RYE, "cereals containing gluten: rye",
          Allergen.BARLEY, "cereals containing gluten: barley",
          Allergen.OATS, "cereals containing gluten: oats",
          Allergen.TREE_NUTS, "nuts",
          Allergen.SESAME, "sesame seeds",
          Allergen.SULPHITES, "sulphur dioxide and sulphites above 10 mg/kg");

  private static final Set<Allergen> NAMED_BY_KIND =
      EnumSet.of(Allergen.TREE_NUTS, Allergen.FISH, Allergen.CRUSTACEANS);

  /** Copies. */
  public AllergenStatement {
    contained = List.copyOf(contained);
    unknownIn = List.copyOf(unknownIn);
    notes = List.copyOf(notes);
  }

  /**
   * The law that names the allergens.
   *
   * @param region whose
   * @return the source
   */
  public static Source source(Region region) {
    return region == Region.UNITED_STATES
        ? Source.read("FD&C Act section 201(qq): nine major food allergens")
        : Source.read("Regulation (EU) No 1169/2011, Annex II: fourteen");
  }

  /**
   * What the foods of a worksheet tell.
   *
   * @param sheet the worksheet
   * @param region whose law
   * @return the statement
   */
  public static AllergenStatement of(Worksheet sheet, Region region) {
    Map<Allergen, List<String>> foods = new EnumMap<>(Allergen.class);
    for (WorksheetLine line : sheet.lines()) {
      for (Allergen allergen : line.food().flatMap(food -> food.allergens()).orElse(Set.of())) {
        List<String> names = foods.computeIfAbsent(allergen, none -> new ArrayList<>());
        if (isNamed(allergen, region) && !names.contains(line.name())) {
          names.add(line.name());
        }
      }
    }
    List<Contained> contained = new ArrayList<>();
    List<String> others = new ArrayList<>();
    foods.forEach(
        (allergen, names) -> {
          if (isNamed(allergen, region)) {
            contained.add(new Contained(allergen, name(allergen, region), names));
          } else {
            others.add(allergen.key());
          }
        });
    return new AllergenStatement(
        contained, sheet.allergensUnknownIn(), notes(sheet, region, foods.keySet(), others));
  }

  private static boolean isNamed(Allergen allergen, Region region) {
    return region == Region.UNITED_STATES ? allergen.unitedStates() : allergen.europeanUnion();
  }

  private static String name(Allergen allergen, Region region) {
    Map<Allergen, String> names =
        region == Region.UNITED_STATES ? UNITED_STATES : EUROPEAN_UNION;
    return names.getOrDefault(allergen, allergen.key());
  }

  private static List<String> notes(
      Worksheet sheet, Region region, Set<Allergen> contained, List<String> others) {
    List<String> notes = new ArrayList<>();
    if (contained.stream().anyMatch(NAMED_BY_KIND::contains)) {
      notes.add(
          region == Region.UNITED_STATES
              ? "Name the kind of each tree nut, fish and crustacean (FD&C Act section 403(w))."
              : "Name the kind of each nut (Annex II), and mark allergens in the list of"
                  + " ingredients (Article 21).");
    }
    if (!others.isEmpty()) {
      notes.add(
          "Not among the " + (region == Region.UNITED_STATES ? "nine" : "fourteen")
              + ", but in it: " + String.join(", ", others) + ". Say so all the same.");
    }
    boolean coconut =
        sheet.lines().stream()
            .anyMatch(
                line ->
                    line.line().food().contains("coconut")
                        || line.name().toLowerCase(Locale.ROOT).contains("coconut"));
    if (coconut) {
      notes.add(
          region == Region.UNITED_STATES
              ? "Coconut: the FDA took it from its list of tree nuts in January 2025 (from memory)."
              : "Coconut is not among the nuts of Annex II.");
    }
    notes.add("Traces from makers and from the bench are not counted; read every package.");
    return notes;
  }
}
