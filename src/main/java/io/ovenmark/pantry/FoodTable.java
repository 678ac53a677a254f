package io.ovenmark.pantry;

import io.ovenmark.json.Extras;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Slug;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads a person's own table of foods: one row a food, the first row names the columns, commas,
 * semicolons or tabs between them. Figures are per 100 g; carbohydrate includes fibre unless its
 * column says otherwise. An empty cell is unknown. A faulty cell is left out and told with its row;
 * a row without a name is left out as a whole.
 *
 * <pre>{@code
 * FoodTable.Result read = FoodTable.read("mill.csv", "name;protein;fat\nLupin flour;37,2;9,6\n");
 * }</pre>
 */
public final class FoodTable {
  /** How many foods one table may hold. */
  public static final int MOST_FOODS = 2_000;

  private static final double KILOJOULES_PER_KILOCALORIE = 4.184;

  /** Regulation (EU) No 1169/2011, Annex I. */
  private static final double SALT_PER_SODIUM = 2.5;

  private static final String NAME = "name";
  private static final String KIND = "kind";
  private static final String SLUG = "short_name";
  private static final String WITHOUT_FIBRE = "carbohydrate_without_fibre";
  private static final Map<String, String> OTHER_WORDS =
      Map.ofEntries(
          Map.entry("food", NAME),
          Map.entry("description", NAME),
          Map.entry("slug", SLUG),
          Map.entry("calories", "energy_kcal"),
          Map.entry("kcal", "energy_kcal"),
          Map.entry("energy", "energy_kcal"),
          Map.entry("kj", "energy_kj"),
          Map.entry("saturates", "saturated_fat"),
          Map.entry("trans", "trans_fat"),
          Map.entry("trans_fatty_acids", "trans_fat"),
          Map.entry("trans_fats", "trans_fat"),
          Map.entry("added_sugar", "added_sugars"),
          Map.entry("sugars_added", "added_sugars"),
          Map.entry("includes_added_sugars", "added_sugars"),
          Map.entry("vitamin_d_d2_d3", "vitamin_d"),
          Map.entry("vit_d", "vitamin_d"),
          Map.entry("available_carbohydrate", WITHOUT_FIBRE),
          Map.entry("sugar_alcohols", "polyols"));
  private static final Set<String> FACTS =
      Set.of(NAME, SLUG, KIND, "density", "price", "allergens", "polyol", "salt", "energy_kj",
          WITHOUT_FIBRE);

  /**
   * A food that was read.
   *
   * @param row line of the file on which it begins
   * @param food the food, of the source {@link Source.Kind#OWN}
   * @param kindGuessed whether its kind was guessed, to be checked by a person
   */
  public record Found(int row, Food food, boolean kindGuessed) {}

  /**
   * What was read.
   *
   * @param foods in the order of the file
   * @param problems what is wrong, row by row
   * @param columns the columns that were understood, by the name they have here
   * @param unknownColumns the columns that were left out, as they are written
   */
  public record Result(
      List<Found> foods,
      List<Problem> problems,
      List<String> columns,
      List<String> unknownColumns) {
    /** Copies. */
    public Result {
      foods = List.copyOf(foods);
      problems = List.copyOf(problems);
      columns = List.copyOf(columns);
      unknownColumns = List.copyOf(unknownColumns);
    }
  }

  private final String file;
  private final Report report = new Report();
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final Set<String> unknown = new LinkedHashSet<>();
  private final Set<String> taken = new HashSet<>();
  private final List<Found> foods = new ArrayList<>();

  private FoodTable(String file) {
    this.file = file;
  }

  /**
   * Reads a table.
   *
   * @param file its name, for messages and for the source of the foods
   * @param text its content
   * @return the foods and what is wrong
   * @throws io.ovenmark.json.UnreadableException when its first row names no food and no figure
   */
  public static Result read(String file, String text) {
    FoodTable table = new FoodTable(file);
    try {
      table.rows(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Result(
        table.foods,
        table.report.problems(),
        List.copyOf(table.columns.keySet()),
        List.copyOf(table.unknown));
  }

  /**
   * The names of the columns that are understood.
   *
   * @return such as {@code name}, {@code protein_g}, {@code weight.cup}
   */
  public static List<String> columnNames() {
    List<String> names = new ArrayList<>(List.of(NAME, SLUG, KIND));
    for (Nutrient nutrient : Nutrient.values()) {
      names.add(nutrient.key());
    }
    names.addAll(
        List.of("energy_kj", "salt_g", WITHOUT_FIBRE + "_g", FoodFacts.WEIGHT + "cup", "density",
            "allergens", "polyol", "price"));
    return List.copyOf(names);
  }

  private void rows(String text) throws IOException {
    DelimitedReader at = new DelimitedReader(new StringReader(text), separator(text), '"', true);
    if (!at.next()) {
      throw Report.refusal(
          file, Position.NONE, "", "The table is empty.", "Its first row names the columns.");
    }
    head(at);
    int width = at.fields();
    while (at.next() && foods.size() < MOST_FOODS) {
      String fault = at.fault();
      if (fault.isEmpty() && at.fields() > width) {
        fault = "The row has " + at.fields() + " fields where " + width + " belong.";
      }
      if (!fault.isEmpty()) {
        fault(at, 0, "", fault, "The row was left out.");
      } else {
        row(at);
      }
    }
  }

  /** The sign that stands most often in the first line. */
  private static char separator(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    long most = 0;
    for (char sign : new char[] {';', '\t', ','}) {
      long count = first.chars().filter(c -> c == sign).count();
      if (count > most) {
        most = count;
        best = sign;
      }
    }
    return best;
  }

  private void head(DelimitedReader at) {
    for (int field = 0; field < at.fields(); field++) {
      String written = at.text(field).strip();
      Optional<String> column = column(written);
      if (column.isPresent()) {
        columns.putIfAbsent(column.get(), field);
      } else if (!written.isEmpty()) {
        unknown.add(written);
      }
    }
    if (!columns.containsKey(NAME)) {
      throw Report.refusal(
          file,
          at.position(0),
          "",
          "The first row has no column \"name\".",
          "Name the columns there, such as name, kind, energy_kcal, protein_g, fat_g,"
              + " carbohydrate_g, fibre_g, sodium_mg.");
    }
    if (columns.size() == 1) {
      throw Report.refusal(
          file,
          at.position(0),
          "",
          "No column but the name is understood.",
          "Name the columns as in protein_g, fat_g, carbohydrate_g, fibre_g.");
    }
  }

  /** {@code Protein (g)}, {@code protein_g} and {@code protein, g} are the same column. */
  private static Optional<String> column(String written) {
    String key = written.toLowerCase(Locale.ROOT).strip();
    if (key.startsWith(FoodFacts.WEIGHT) && key.length() > FoodFacts.WEIGHT.length()) {
      return Optional.of(FoodFacts.WEIGHT + key.substring(FoodFacts.WEIGHT.length()).strip());
    }
    key =
        key.replace("fiber", "fibre")
            .replaceAll("[µμ]g", "ug")
            .replaceAll("per 100 ?g", "")
            .replaceAll("[^a-z0-9]+", "_")
            .replaceAll("^_+|_+$", "");
    String plain = key.replaceFirst("_(?:g|mg|kcal)$", "");
    key = OTHER_WORDS.getOrDefault(key, OTHER_WORDS.getOrDefault(plain, key));
    if (FACTS.contains(key)) {
      return Optional.of(key);
    }
    if (FACTS.contains(plain)) {
      return Optional.of(plain);
    }
    return FoodText.nutrient(key.replaceFirst("_mcg$", "_ug")).map(Nutrient::key);
  }

  private void row(DelimitedReader at) {
    String name = text(at, NAME);
    if (name.isEmpty()) {
      fault(at, columns.get(NAME), NAME, "The food has no name.", "The row was left out.");
      return;
    }
    Food food =
        new Food(
            slug(at, name),
            name,
            FoodKind.DRY,
            new Source(
                Source.Kind.OWN,
                Optional.empty(),
                Optional.of("From the table " + file + ", row " + at.position(0).line() + ".")),
            Nutrients.UNKNOWN,
            List.of(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Extras.NONE);
    boolean kindStated = false;
    for (String column : inOrder()) {
      String value = text(at, column);
      if (value.isEmpty()) {
        continue;
      }
      try {
        food = with(food, column, value);
        kindStated = kindStated || column.equals(KIND);
      } catch (IllegalArgumentException e) {
        String[] parts = e.getMessage().split("\n", 2);
        fault(
            at,
            columns.get(column),
            column,
            parts[0],
            (parts.length > 1 ? parts[1] + " " : "") + "It was left out: unknown.");
      }
    }
    Food kept =
        kindStated
            ? food
            : FoodEdit.of(food, KIND, KindGuess.of(name, 0, food.per100g()).key());
    foods.add(new Found(at.position(0).line(), kept, !kindStated));
  }

  /** The columns of facts; what is worked out from others comes last. */
  private List<String> inOrder() {
    List<String> order = new ArrayList<>(columns.keySet());
    order.removeAll(Set.of(NAME, SLUG));
    for (String late : List.of("energy_kj", "salt", WITHOUT_FIBRE)) {
      if (order.remove(late)) {
        order.add(late);
      }
    }
    return order;
  }

  private static Food with(Food food, String column, String value) {
    return switch (column) {
      case "energy_kj" ->
          food.per100g().get(Nutrient.ENERGY).isKnown()
              ? food
              : FoodEdit.of(
                  food,
                  Nutrient.ENERGY.key(),
                  rounded(FoodText.number("energy", value, "kj") / KILOJOULES_PER_KILOCALORIE));
      case "salt" ->
          food.per100g().get(Nutrient.SODIUM).isKnown()
              ? food
              : FoodEdit.of(
                  food,
                  Nutrient.SODIUM.key(),
                  rounded(FoodText.number("salt", value, "g") / SALT_PER_SODIUM * 1000));
      case WITHOUT_FIBRE -> withFibreAdded(food, value);
      default -> FoodEdit.of(food, column, value);
    };
  }

  private static Food withFibreAdded(Food food, String value) {
    double without = FoodText.number("carbohydrate", value, "g");
    Quantity fibre = food.per100g().get(Nutrient.FIBRE);
    if (food.per100g().get(Nutrient.CARBOHYDRATE).isKnown()) {
      return food;
    }
    if (!fibre.isKnown()) {
      throw FoodText.bad(
          "The carbohydrate is stated without fibre, and the fibre is not stated.",
          "Add a column fibre_g.");
    }
    return FoodEdit.of(food, Nutrient.CARBOHYDRATE.key(), rounded(without + fibre.low()));
  }

  private static String rounded(double number) {
    return new BigDecimal(number).round(new MathContext(6)).toPlainString();
  }

  private String slug(DelimitedReader at, String name) {
    String wanted = text(at, SLUG);
    if (!wanted.isEmpty() && !Slug.isSlug(wanted)) {
      fault(
          at,
          columns.get(SLUG),
          SLUG,
          "\"" + wanted + "\" cannot be a short name.",
          "One was made of the name.");
    }
    String slug = Slug.isSlug(wanted) ? wanted : Slug.of(name, "food-" + at.position(0).line());
    String free = slug;
    for (int n = 2; !taken.add(free); n++) {
      String end = "-" + n;
      free = slug.substring(0, Math.min(slug.length(), Slug.LONGEST - end.length())) + end;
    }
    return free;
  }

  private String text(DelimitedReader at, String column) {
    Integer field = columns.get(column);
    return field == null || field >= at.fields() ? "" : at.text(field).strip();
  }

  private void fault(DelimitedReader at, int field, String column, String sentence, String hint) {
    report.add(file, at.position(field), column, sentence, hint);
  }
}
