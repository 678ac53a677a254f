package io.ovenmark.tasting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WilliamsDesignTest {
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void everySampleStandsAndFollowsEquallyOften(int samples) {
    List<List<Integer>> orders = WilliamsDesign.orders(samples);
    int squares = samples % 2 == 0 ? 1 : 2;
    Map<String, Integer> places = new TreeMap<>();
    Map<String, Integer> neighbours = new TreeMap<>();
    for (List<Integer> order : orders) {
      assertThat(new HashSet<>(order)).hasSize(samples).allMatch(s -> s >= 1 && s <= samples);
      for (int place = 0; place < samples; place++) {
        places.merge(order.get(place) + " at " + place, 1, Integer::sum);
        if (place > 0) {
          neighbours.merge(order.get(place - 1) + " " + order.get(place), 1, Integer::sum);
        }
      }
    }
    assertThat(orders).hasSize(squares * samples);
    assertThat(places).hasSize(samples * samples).allSatisfy((k, n) -> equal(n, squares));
    assertThat(neighbours).hasSize(samples * (samples - 1)).allSatisfy((k, n) -> equal(n, squares));
  }

  private static void equal(int count, int wanted) {
    assertThat(count).isEqualTo(wanted);
  }

  /** The square of four as Williams (1949) gives it, up to names: 1 2 4 3, 2 3 1 4, … */
  @Test
  void fourSamplesMakeTheKnownSquare() {
    assertThat(WilliamsDesign.orders(4))
        .containsExactly(
            List.of(1, 2, 4, 3), List.of(2, 3, 1, 4), List.of(3, 4, 2, 1), List.of(4, 1, 3, 2));
  }

  @Test
  void oneSampleIsServedAloneAndNoneIsRefused() {
    assertThat(WilliamsDesign.orders(1)).containsExactly(List.of(1));
    assertThatIllegalArgumentException().isThrownBy(() -> WilliamsDesign.orders(0));
  }
}
