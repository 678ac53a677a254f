package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetPlanTest {
  private static String order(Sheet sheet) {
    StringBuilder order = new StringBuilder();
    sheet.servings().forEach(serving -> order.append(serving.sample()));
    return order.toString();
  }

  @Test
  void theSameSeedGivesTheSameSheetsAndAnotherSeedOthers() {
    List<Sheet> first = SheetPlan.draw(TastingKind.RANKING, 4, 20, 77);

    assertThat(SheetPlan.draw(TastingKind.RANKING, 4, 20, 77)).isEqualTo(first);
    assertThat(SheetPlan.draw(TastingKind.RANKING, 4, 20, 78)).isNotEqualTo(first);
  }

  /** A sheet must print again as it was, so what a seed means may never change. */
  @Test
  void aSeedMeansWhatItAlwaysMeant() {
    List<Sheet> sheets = SheetPlan.draw(TastingKind.TRIANGLE, 2, 2, 5);

    assertThat(sheets.get(0).codes()).containsExactly("405", "366", "177");
    assertThat(order(sheets.get(0))).isEqualTo("121");
    assertThat(sheets.get(1).codes()).containsExactly("453", "525", "166");
    assertThat(order(sheets.get(1))).isEqualTo("221");
  }

  @Test
  void moreSheetsLeaveTheEarlierOnesAsTheyAre() {
    assertThat(SheetPlan.draw(TastingKind.LIKING, 3, 50, 9).subList(0, 17))
        .isEqualTo(SheetPlan.draw(TastingKind.LIKING, 3, 17, 9));
  }

  @ParameterizedTest
  @CsvSource({"12, 2", "6, 1", "60, 10"})
  void trianglesUseAllSixOrdersEquallyOften(int sheets, int each) {
    Map<String, Integer> orders = new TreeMap<>();
    SheetPlan.draw(TastingKind.TRIANGLE, 2, sheets, 3)
        .forEach(sheet -> orders.merge(order(sheet), 1, Integer::sum));

    assertThat(orders).containsOnlyKeys("112", "121", "211", "221", "212", "122");
    assertThat(orders.values()).containsOnly(each);
  }

  @ParameterizedTest
  @CsvSource({
    "PREFERENCE, 2, 2", "RANKING, 3, 6", "LIKING, 4, 4", "RANKING, 5, 10", "LIKING, 1, 1"
  })
  void everyBlockHasEveryOrderOfTheDesignOnce(TastingKind kind, int samples, int block) {
    assertThat(SheetPlan.balancedAt(kind, samples)).isEqualTo(block);
    List<Sheet> sheets = SheetPlan.draw(kind, samples, 3 * block, 21);
    for (int from = 0; from < sheets.size(); from += block) {
      Set<String> orders = new HashSet<>();
      sheets.subList(from, from + block).forEach(sheet -> orders.add(order(sheet)));
      assertThat(orders).hasSize(block);
    }
  }

  @Test
  void codesAreThreeDigitsWithoutALeadingZeroAndUniqueUpTo900Plates() {
    Set<String> codes = new HashSet<>();
    List<Sheet> sheets = SheetPlan.draw(TastingKind.TRIANGLE, 2, 300, 1);
    for (Sheet sheet : sheets) {
      assertThat(sheet.codes()).allMatch(code -> code.matches("[1-9][0-9]{2}"));
      codes.addAll(sheet.codes());
    }
    assertThat(codes).hasSize(900);
  }

  /** Sheet checks that codes are unique on it. */
  @Test
  void aThousandTastersAreServedWithCodesUniqueOnEachSheet() {
    assertThat(SheetPlan.draw(TastingKind.RANKING, 12, 1000, 4)).hasSize(1000);
  }
}
