package io.ovenmark.pantry;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Reads the ASCII files of SR28: fields divided by carets, texts between tildes, ISO-8859-1, no row
 * of names. The columns are those of the release's documentation (file formats of FOOD_DES,
 * NUT_DATA and WEIGHT), checked against published copies of rows.
 */
final class Sr28Reader extends TableReader {
  static final String FOODS = "FOOD_DES.txt";
  private static final String FIGURES = "NUT_DATA.txt";
  private static final String WEIGHTS = "WEIGHT.txt";

  private static final List<String> FOOD_COLUMNS =
      List.of(
          "NDB_No", "FdGrp_Cd", "Long_Desc", "Shrt_Desc", "ComName", "ManufacName", "Survey",
          "Ref_desc", "Refuse", "SciName", "N_Factor", "Pro_Factor", "Fat_Factor", "CHO_Factor");
  private static final List<String> FIGURE_COLUMNS =
      List.of(
          "NDB_No", "Nutr_No", "Nutr_Val", "Num_Data_Pts", "Std_Error", "Src_Cd", "Deriv_Cd",
          "Ref_NDB_No", "Add_Nutr_Mark", "Num_Studies", "Min", "Max", "DF", "Low_EB", "Up_EB",
          "Stat_cmt", "AddMod_Date", "CC");
  private static final List<String> WEIGHT_COLUMNS =
      List.of("NDB_No", "Seq", "Amount", "Msre_Desc", "Gm_Wgt", "Num_Data_Pts", "Std_Dev");

  /** Nutrient numbers of SR28 (file NUTR_DEF). */
  static final Map<String, Nutrient> NUMBERS =
      Map.ofEntries(
          Map.entry("208", Nutrient.ENERGY),
          Map.entry("203", Nutrient.PROTEIN),
          Map.entry("204", Nutrient.FAT),
          Map.entry("606", Nutrient.SATURATED_FAT),
          Map.entry("605", Nutrient.TRANS_FAT),
          Map.entry("205", Nutrient.CARBOHYDRATE),
          Map.entry("291", Nutrient.FIBRE),
          Map.entry("295", Nutrient.SOLUBLE_FIBRE),
          Map.entry("269", Nutrient.SUGARS),
          Map.entry("539", Nutrient.ADDED_SUGARS),
          Map.entry("299", Nutrient.POLYOLS),
          Map.entry("255", Nutrient.WATER),
          Map.entry("207", Nutrient.ASH),
          Map.entry("221", Nutrient.ALCOHOL),
          Map.entry("601", Nutrient.CHOLESTEROL),
          Map.entry("307", Nutrient.SODIUM),
          Map.entry("306", Nutrient.POTASSIUM),
          Map.entry("301", Nutrient.CALCIUM),
          Map.entry("303", Nutrient.IRON),
          Map.entry("328", Nutrient.VITAMIN_D));

  Sr28Reader(
      FoodFiles files,
      FoodImport.Selection selection,
      FoodImport.Progress progress,
      Report report) {
    super(files, selection, progress, report);
  }

  FoodImport.Result read() throws IOException {
    require(FIGURES);
    require(WEIGHTS);
    each(FOODS, '^', '~', FOOD_COLUMNS, this::food);
    each(FIGURES, '^', '~', FIGURE_COLUMNS, this::figure);
    each(WEIGHTS, '^', '~', WEIGHT_COLUMNS, this::weight);
    return finish(
        FoodImport.Layout.SR28,
        Source.Kind.SR28,
        "Imported from the files of SR28; allergens are unknown.",
        FOODS);
  }

  private void food(Row row) {
    String id = row.text("NDB_No");
    if (!id.matches("\\d{5}")) {
      row.fault("NDB_No", "\"" + id + "\" is not an NDB number.", "The row was left out.");
      return;
    }
    String code = row.text("FdGrp_Cd");
    int group = code.matches("\\d{4}") ? Integer.parseInt(code) / 100 : 0;
    consider(id, row.text("Long_Desc"), group, true);
  }

  private void figure(Row row) {
    ImportedFood food = chosen.get(row.text("NDB_No"));
    Nutrient nutrient = food == null ? null : NUMBERS.get(row.text("Nutr_No"));
    if (nutrient != null) {
      OptionalDouble value = row.number("Nutr_Val", FoodCodec.greatest(nutrient));
      value.ifPresent(v -> food.figure(nutrient, 0, v));
    }
  }

  private void weight(Row row) {
    ImportedFood food = chosen.get(row.text("NDB_No"));
    if (food != null) {
      OptionalDouble amount = row.number("Amount", 1_000_000);
      OptionalDouble grams = row.number("Gm_Wgt", 1_000_000);
      if (amount.isPresent() && grams.isPresent()) {
        HouseholdNames.read(amount.getAsDouble(), row.text("Msre_Desc"), grams.getAsDouble())
            .ifPresent(food::household);
      }
    }
  }
}
