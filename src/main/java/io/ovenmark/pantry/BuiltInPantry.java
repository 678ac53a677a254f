package io.ovenmark.pantry;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The foods that come with Ovenmark: 144 of the USDA National Nutrient Database for Standard
 * Reference, Release 28 (2015, public domain), two of USDA FoodData Central, and specialities of
 * low-carbohydrate baking with typical label values. Each food says where its figures come from;
 * a figure that the source does not give is unknown. Beyond the source, polyols and allulose are 0
 * in SR28 foods, which have none added, and soluble fibre is 0 where fibre is; trans fat, added
 * sugars and vitamin D are stated only where they follow from what the food is: 0 in water, salts
 * and pure crystals, no added sugars in a single food to which nothing was added, all sugars added
 * in sugar, syrup and honey (21 CFR 101.9(c)(6)(iii)). An empty set of
 * allergens means that the food itself is none of those in {@link Allergen}; traces depend on the
 * maker and stand on the package.
 *
 * <pre>{@code
 * Food egg = BuiltInPantry.find("egg-whole").orElseThrow();
 * List<Food> found = BuiltInPantry.search("almond meal");
 * }</pre>
 *
 * <p>The table is read when first asked for, and each food when it is first wanted.
 */
public final class BuiltInPantry {
  private static final String TABLE = "foods.tsv";
  private static final String SR28_NOTE =
      "Polyols and allulose taken as 0, as none are added.";
  private static final String TYPICAL_NOTE =
      "Typical label values, from memory; replace them by your package's own.";

  private static final Nutrient[] NUTRIENTS = Nutrient.values();

  private BuiltInPantry() {}

  private static final class Table {
    private static final Map<String, Integer> COLUMNS = new HashMap<>();
    private static final Map<String, Row> ROWS = new LinkedHashMap<>();

    static {
      try (InputStream in = BuiltInPantry.class.getResourceAsStream(TABLE);
          BufferedReader lines =
              new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        String[] columns = lines.readLine().split("\t", -1);
        for (int i = 0; i < columns.length; i++) {
          COLUMNS.put(columns[i], i);
        }
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          ROWS.put(line.substring(0, line.indexOf('\t')), new Row(line));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static final class Search {
    private static final FoodSearch SEARCH = prepare();

    private static FoodSearch prepare() {
      Map<String, String> otherNames = new HashMap<>();
      Table.ROWS.forEach((slug, row) -> otherNames.put(slug, row.otherNames()));
      return FoodSearch.of(all(), otherNames);
    }
  }

  /**
   * Finds a food by its short name.
   *
   * @param slug such as {@code egg-whole}
   * @return the food, empty when the table has none of that name
   */
  public static Optional<Food> find(String slug) {
    Row row = Table.ROWS.get(slug);
    return row == null ? Optional.empty() : Optional.of(row.food());
  }

  /**
   * What else a food of the table is called.
   *
   * @param slug such as {@code almond-flour}
   * @return names such as {@code almond meal}; empty when it has none or is not in the table
   */
  public static List<String> otherNames(String slug) {
    Row row = Table.ROWS.get(slug);
    return row == null || row.otherNames().isEmpty()
        ? List.of()
        : List.of(row.otherNames().split("; *"));
  }

  /**
   * All foods.
   *
   * @return in the fixed order of the table: water, flours, proteins, seeds and nuts, eggs, dairy,
   *     fats, sugars, flavourings, produce, specialities
   */
  public static List<Food> all() {
    List<Food> foods = new ArrayList<>(Table.ROWS.size());
    for (Row row : Table.ROWS.values()) {
      foods.add(row.food());
    }
    return List.copyOf(foods);
  }

  /**
   * Finds foods by words; see {@link FoodSearch#search}.
   *
   * @param words such as {@code almond meal} or {@code eggs}
   * @return the foods, best first; empty when nothing fits
   */
  public static List<Food> search(String words) {
    return Search.SEARCH.search(words);
  }

  /** One line of the table, understood when first asked for. */
  private static final class Row {
    private final String[] cells;
    private volatile Food food;

    Row(String line) {
      this.cells = line.split("\t", -1);
    }

    String otherNames() {
      return cell("also");
    }

    Food food() {
      if (food == null) {
        food =
            new Food(
                cell("slug"),
                cell("name"),
                FoodKind.withKey(cell("kind")).orElseThrow(),
                source(),
                nutrients(),
                household(),
                number(cell("density_g_per_ml")),
                allergens(),
                text("polyol"),
                Optional.empty(),
                Extras.NONE);
      }
      return food;
    }

    private String cell(String column) {
      return cells[Table.COLUMNS.get(column)];
    }

    private Source source() {
      Source.Kind kind = Source.Kind.withKey(cell("source")).orElseThrow();
      String start =
          switch (kind) {
            case SR28 -> SR28_NOTE;
            case TYPICAL -> TYPICAL_NOTE;
            default -> "";
          };
      String note = (start + " " + cell("note")).strip();
      return new Source(
          kind, text("id"), note.isEmpty() ? Optional.empty() : Optional.of(note));
    }

    private Nutrients nutrients() {
      Map<Nutrient, Quantity> known = new EnumMap<>(Nutrient.class);
      for (Nutrient nutrient : NUTRIENTS) {
        known.put(nutrient, Quantity.of(number(cell(nutrient.key()))));
      }
      return Nutrients.of(known);
    }

    private List<HouseholdMeasure> household() {
      List<HouseholdMeasure> measures = new ArrayList<>();
      if (!cell("household").isEmpty()) {
        for (String part : cell("household").split("\\|")) {
          int at = part.lastIndexOf('=');
          measures.add(
              new HouseholdMeasure(
                  part.substring(0, at).strip(), Double.parseDouble(part.substring(at + 1))));
        }
      }
      return measures;
    }

    private Optional<Set<Allergen>> allergens() {
      String words = cell("allergens");
      if (words.isEmpty()) {
        return Optional.empty();
      }
      Set<Allergen> set = EnumSet.noneOf(Allergen.class);
      if (!words.equals("none")) {
        for (String word : words.split("; ")) {
          set.add(Allergen.withKey(word).orElseThrow());
        }
      }
      return Optional.of(set);
    }

    private Optional<String> text(String column) {
      return cell(column).isEmpty() ? Optional.empty() : Optional.of(cell(column));
    }

    private static OptionalDouble number(String cell) {
      return cell.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(Double.parseDouble(cell));
    }
  }
}
