package io.ovenmark.pantry;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads the CSV files of FoodData Central (RFC 4180, UTF-8, first row names the columns). Needed
 * are food.csv and food_nutrient.csv; nutrient.csv is used to check units, food_portion.csv with
 * measure_unit.csv for household weights, branded_food.csv for servings. Column names and ids are
 * those of the published files, read in public copies. That the figures of branded foods whose
 * serving is in millilitres are per 100 ml is from memory; such foods are left out.
 */
final class FoodDataCentralReader extends TableReader {
  static final String FOODS = "food.csv";
  private static final String FIGURES = "food_nutrient.csv";
  private static final String NUTRIENTS = "nutrient.csv";
  private static final String PORTIONS = "food_portion.csv";
  private static final String UNITS = "measure_unit.csv";
  private static final String BRANDED = "branded_food.csv";
  private static final String UNDETERMINED = "9999";

  private static final Set<String> WHOLE_FOODS =
      Set.of("foundation_food", "sr_legacy_food", "survey_fndds_food", "branded_food");

  private record Wanted(Nutrient nutrient, int rank) {}

  /** Ids of FoodData Central; where a nutrient has several, the lower rank is preferred. */
  private static final Map<String, Wanted> IDS =
      Map.ofEntries(
          Map.entry("1008", new Wanted(Nutrient.ENERGY, 0)),
          Map.entry("2048", new Wanted(Nutrient.ENERGY, 1)),
          Map.entry("2047", new Wanted(Nutrient.ENERGY, 2)),
          Map.entry("1003", new Wanted(Nutrient.PROTEIN, 0)),
          Map.entry("1004", new Wanted(Nutrient.FAT, 0)),
          Map.entry("1085", new Wanted(Nutrient.FAT, 1)),
          Map.entry("1258", new Wanted(Nutrient.SATURATED_FAT, 0)),
          Map.entry("1257", new Wanted(Nutrient.TRANS_FAT, 0)),
          Map.entry("1005", new Wanted(Nutrient.CARBOHYDRATE, 0)),
          Map.entry("1079", new Wanted(Nutrient.FIBRE, 0)),
          Map.entry("2033", new Wanted(Nutrient.FIBRE, 1)),
          Map.entry("1082", new Wanted(Nutrient.SOLUBLE_FIBRE, 0)),
          Map.entry("2000", new Wanted(Nutrient.SUGARS, 0)),
          Map.entry("1063", new Wanted(Nutrient.SUGARS, 1)),
          Map.entry("1235", new Wanted(Nutrient.ADDED_SUGARS, 0)),
          Map.entry("1086", new Wanted(Nutrient.POLYOLS, 0)),
          Map.entry("1051", new Wanted(Nutrient.WATER, 0)),
          Map.entry("1007", new Wanted(Nutrient.ASH, 0)),
          Map.entry("1018", new Wanted(Nutrient.ALCOHOL, 0)),
          Map.entry("1253", new Wanted(Nutrient.CHOLESTEROL, 0)),
          Map.entry("1093", new Wanted(Nutrient.SODIUM, 0)),
          Map.entry("1092", new Wanted(Nutrient.POTASSIUM, 0)),
          Map.entry("1087", new Wanted(Nutrient.CALCIUM, 0)),
          Map.entry("1089", new Wanted(Nutrient.IRON, 0)),
          Map.entry("1114", new Wanted(Nutrient.VITAMIN_D, 0)));

  private final Set<String> branded = new HashSet<>();

  FoodDataCentralReader(
      FoodFiles files,
      FoodImport.Selection selection,
      FoodImport.Progress progress,
      Report report) {
    super(files, selection, progress, report);
  }

  FoodImport.Result read() throws IOException {
    require(FIGURES);
    if (files.has(NUTRIENTS)) {
      each(NUTRIENTS, List.of("id", "unit_name"), this::checkUnit);
    }
    each(FOODS, List.of("fdc_id", "data_type", "description"), this::food);
    if (!branded.isEmpty() && files.has(BRANDED)) {
      each(BRANDED, List.of("fdc_id", "serving_size", "serving_size_unit"), this::serving);
    }
    each(FIGURES, List.of("fdc_id", "nutrient_id", "amount"), this::figure);
    if (files.has(PORTIONS)) {
      Map<String, String> units = new HashMap<>();
      if (files.has(UNITS)) {
        each(UNITS, List.of("id", "name"), row -> units.put(row.text("id"), row.text("name")));
      }
      each(PORTIONS, List.of("fdc_id", "amount", "gram_weight"), row -> portion(row, units));
    }
    return finish(
        FoodImport.Layout.FOOD_DATA_CENTRAL,
        Source.Kind.FOOD_DATA_CENTRAL,
        "Imported from the files of FoodData Central; allergens are unknown.",
        FOODS);
  }

  private void checkUnit(Row row) {
    Wanted wanted = IDS.get(row.text("id"));
    String unit = row.text("unit_name").toLowerCase(Locale.ROOT);
    if (wanted != null && !unit.equals(wanted.nutrient().unit())) {
      throw Report.refusal(
          NUTRIENTS,
          row.at.position(0),
          "unit_name",
          "The unit of nutrient " + row.text("id") + " is \"" + unit + "\" where "
              + wanted.nutrient().unit() + " belongs.",
          "These files are of another layout; use those of fdc.nal.usda.gov.");
    }
  }

  private void food(Row row) {
    String id = row.text("fdc_id");
    String type = row.text("data_type");
    String category = row.text("food_category_id");
    int group = category.matches("\\d{1,2}") ? Integer.parseInt(category) : 0;
    consider(id, row.text("description"), group, WHOLE_FOODS.contains(type));
    if (type.equals("branded_food") && chosen.containsKey(id)) {
      branded.add(id);
    }
  }

  private void serving(Row row) {
    String id = row.text("fdc_id");
    ImportedFood food = branded.contains(id) ? chosen.get(id) : null;
    if (food == null) {
      return;
    }
    String unit = row.text("serving_size_unit").toLowerCase(Locale.ROOT);
    if (unit.startsWith("ml")) {
      row.fault(
          "serving_size_unit",
          "The figures of \"" + food.description + "\" are per 100 ml, not per 100 g.",
          "It was left out; enter it from its label with the grams of a serving.");
      chosen.remove(id);
      return;
    }
    OptionalDouble grams = row.number("serving_size", 1_000_000);
    if (grams.isPresent() && unit.startsWith("g")) {
      String name = row.text("household_serving_fulltext");
      Optional<HouseholdMeasure> measure = HouseholdNames.read(1, name, grams.getAsDouble());
      measure.ifPresent(food::household);
      HouseholdNames.read(1, "serving", grams.getAsDouble()).ifPresent(food::household);
    }
  }

  private void figure(Row row) {
    ImportedFood food = chosen.get(row.text("fdc_id"));
    Wanted wanted = food == null ? null : wanted(row.text("nutrient_id"));
    if (wanted != null) {
      OptionalDouble amount = row.number("amount", FoodCodec.greatest(wanted.nutrient()));
      amount.ifPresent(value -> food.figure(wanted.nutrient(), wanted.rank(), value));
    }
  }

  /** Some releases name nutrients by the number of SR28 (below 1000) in place of their own id. */
  private static Wanted wanted(String id) {
    Wanted wanted = IDS.get(id);
    Nutrient byNumber = wanted == null ? Sr28Reader.NUMBERS.get(id) : null;
    return byNumber == null ? wanted : new Wanted(byNumber, 0);
  }

  private void portion(Row row, Map<String, String> units) {
    ImportedFood food = chosen.get(row.text("fdc_id"));
    if (food == null) {
      return;
    }
    OptionalDouble grams = row.number("gram_weight", 1_000_000);
    OptionalDouble amount = row.number("amount", 1_000_000);
    if (grams.isEmpty()) {
      return;
    }
    String unitId = row.text("measure_unit_id");
    String unit = unitId.equals(UNDETERMINED) ? "" : units.getOrDefault(unitId, "");
    String more = row.text("portion_description");
    String modifier = row.text("modifier");
    boolean code = modifier.matches("\\d+");
    StringBuilder name = new StringBuilder(unit);
    for (String part : List.of(more, code ? "" : modifier)) {
      if (!part.isEmpty()) {
        name.append(name.isEmpty() ? "" : ", ").append(part);
      }
    }
    if (!name.toString().toLowerCase(Locale.ROOT).startsWith("quantity not specified")) {
      HouseholdNames.read(amount.orElse(1), name.toString(), grams.getAsDouble())
          .ifPresent(food::household);
    }
  }
}
