package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.pantry.Nutrients;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Net carbohydrate has no legal definition: common practice, no source. */
class NetCarbohydrateTest {

  @ParameterizedTest(name = "{0} − {1} · {4}, {2} · {5}, {3} · {6}: {7}")
  @CsvSource({
    "50, 10, 20, 5, 1, 1, 1, 15",
    "50, 10, 20, 5, 1, 0, 1, 35",
    "50, 10, 20, 5, 0, 0, 0, 50",
    "50, 10, 20, 5, 1, 0.5, 1, 25",
    "50, 60, 0, 0, 1, 1, 1, 0",
    "50, 30, 30, 0, 1, 1, 1, 0",
    "50, ?, 0, 0, 1, 1, 1, at most 50",
    "50, 10, ?, 0, 1, 1, 1, at most 40",
    "50, 10, ?, 0, 1, 0, 1, 40",
    "50, 10, ?, 0, 1, 0.5, 1, between 15 and 40",
    "50, ?, ?, ?, 0.25, 0.25, 0, between 25 and 50",
    "?, 10, 0, 0, 1, 1, 1, unknown",
    "?, 10, 0, 0, 0, 1, 1, unknown",
  })
  void subtractsTheSharesThatThePolicyNames(
      String carbohydrate,
      String fibre,
      String polyols,
      String allulose,
      double ofFibre,
      double ofPolyols,
      double ofAllulose,
      String net) {
    Map<Nutrient, Quantity> figures = new EnumMap<>(Nutrient.class);
    figures.put(Nutrient.CARBOHYDRATE, quantity(carbohydrate));
    figures.put(Nutrient.FIBRE, quantity(fibre));
    figures.put(Nutrient.POLYOLS, quantity(polyols));
    figures.put(Nutrient.ALLULOSE, quantity(allulose));
    NetCarbohydrate policy = new NetCarbohydrate(ofFibre, ofPolyols, ofAllulose);
    assertThat(policy.per100g(Nutrients.of(figures))).hasToString(net);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, 1, carbohydrate − fibre − polyols − allulose",
    "1, 0, 0.5, carbohydrate − fibre − 50 % of allulose",
    "0, 0, 0, carbohydrate",
  })
  void saysThePolicyInWords(double fibre, double polyols, double allulose, String words) {
    assertThat(new NetCarbohydrate(fibre, polyols, allulose).inWords()).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"-0.1, 1, 1", "1, 1.1, 1", "1, 1, NaN"})
  void sharesOutsideZeroToOneAreRefused(double fibre, double polyols, double allulose) {
    assertThatThrownBy(() -> new NetCarbohydrate(fibre, polyols, allulose))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("outside 0 to 1");
  }

  @Test
  void theUsualPolicySubtractsEverything() {
    assertThat(Policy.USUAL.netCarbohydrate()).isEqualTo(new NetCarbohydrate(1, 1, 1));
    assertThat(Policy.USUAL.energy()).isEqualTo(EnergyRule.FOODS);
  }

  private static Quantity quantity(String text) {
    return text.equals("?") ? Quantity.UNKNOWN : Quantity.known(Double.parseDouble(text));
  }
}
