package io.ovenmark.published;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Yield;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Macros;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sum over ingredients against foods whose recipe and composition are published. Source: USDA
 * National Nutrient Database for Standard Reference, Release 28 (SR28), footnote file (recipes in
 * percent, rounded to 1 %) and nutrient data file, NDB No. 11657 and 11934.
 *
 * <p>Each true share lies within 0.5 points of the rounded one. The composition of a mixture is
 * extreme where every share is at one of its ends, so the figures of those 2^n mixtures (shares
 * rescaled to 100 %) span all that the footnote allows. What is published is itself rounded: it
 * stands for all values that round to it. The two intervals must overlap. SR28 states the energy of
 * these foods as 4, 9 and 4 kcal a gram of protein, fat and carbohydrate, which is what is checked.
 */
class FootnoteRecipesTest {
  private static final String MASHED = "11367:84 01077:15 02047:1";
  private static final String MASHED_WITH_BUTTER = "11367:80 01077:14 01001:5 02047:1";

  /** Values: SR28 nutrient data file. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "11657, protein_g, 1.91",
    "11657, fat_g, 0.57",
    "11657, carbohydrate_g, 17.57",
    "11657, fibre_g, 1.5",
    "11657, sodium_mg, 302",
    "11657, water_g, 78.48",
    "11934, protein_g, 1.86",
    "11934, fat_g, 4.22",
    "11934, carbohydrate_g, 16.81",
    "11934, fibre_g, 1.5",
    "11934, sodium_mg, 317",
    "11934, water_g, 75.61",
  })
  void publishedFigureLiesWithinWhatTheRoundedRecipeAllows(
      String ndb, String figure, String published) {
    Figure wanted = Figure.withKey(figure).orElseThrow();
    overlaps(ndb, macros -> macros.get(wanted).value().orElseThrow(), published);
  }

  /** Values: SR28 nutrient data file. */
  @ParameterizedTest
  @CsvSource({"11657, 83", "11934, 113"})
  void publishedEnergyLiesWithinWhatTheRoundedRecipeAllows(String ndb, String published) {
    overlaps(
        ndb,
        macros ->
            4 * macros.get(Figure.PROTEIN).low()
                + 9 * macros.get(Figure.FAT).low()
                + 4 * macros.get(Figure.CARBOHYDRATE).low(),
        published);
  }

  private static void overlaps(String ndb, ToDoubleFunction<Macros> figure, String published) {
    List<Macros> extremes = extremes(ndb.equals("11657") ? MASHED : MASHED_WITH_BUTTER);
    double low = extremes.stream().mapToDouble(figure).min().orElseThrow();
    double high = extremes.stream().mapToDouble(figure).max().orElseThrow();
    BigDecimal value = new BigDecimal(published);
    double rounding = value.ulp().doubleValue() / 2;
    assertThat(high).isGreaterThanOrEqualTo(value.doubleValue() - rounding);
    assertThat(low).isLessThanOrEqualTo(value.doubleValue() + rounding);
  }

  private static List<Macros> extremes(String recipe) {
    String[] parts = recipe.split(" ");
    List<Macros> extremes = new ArrayList<>();
    for (int ends = 0; ends < 1 << parts.length; ends++) {
      List<String[]> lines = new ArrayList<>();
      for (int i = 0; i < parts.length; i++) {
        String[] part = parts[i].split(":");
        double share = Double.parseDouble(part[1]) + ((ends >> i & 1) == 1 ? 0.5 : -0.5);
        lines.add(new String[] {part[0], share + " g"});
      }
      extremes.add(
          PublishedData.sheet(
                  PublishedData.formula(Yield.UNSTATED, lines), BakedYield.UNMEASURED)
              .macros()
              .get(Basis.DOUGH_100_G));
    }
    return extremes;
  }
}
