package io.ovenmark.change;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinePairTest {
  /** Lists of ids; an exclamation mark is the flour mark. */
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "a b c, a x c, b>x",
        "b, x, b>x",
        "a b, a x, b>x",
        "b a, x a, b>x",
        "a b c, a c x, -",
        "a b c, x a c, -",
        "a b! c, a x! c, b>x",
        "a b! c, a x c, -",
        "a b d c, a x y c, b>x d>y",
        "a b d c, a x c, b>x",
        "a b c, a x y c, b>x",
        "a b d! c, a x! y c, b>y d>x",
        "a b c, c x a, -",
        "a b, a b, -",
        "a, -, -",
      })
  void linesAtTheSamePlaceWithTheSameMarkArePaired(String from, String to, String pairs) {
    String found =
        String.join(
            " ",
            LinePair.atSamePlace(formula(from), formula(to)).stream()
                .map(pair -> pair.removed().id() + ">" + pair.added().id())
                .toList());
    assertThat(found).isEqualTo(pairs == null ? "" : pairs);
  }

  @Test
  void noLineIsPairedTwiceAndEveryPairIsARemovedAndAnAddedLine() {
    RandomFormulas formulas = new RandomFormulas(3);
    for (int round = 0; round < 1000; round++) {
      Formula from = formulas.formula();
      Formula to = formulas.edited(from, 12);
      List<LinePair> pairs = LinePair.atSamePlace(from, to);
      assertThat(pairs).extracting(pair -> pair.removed().id()).doesNotHaveDuplicates();
      assertThat(pairs).extracting(pair -> pair.added().id()).doesNotHaveDuplicates();
      for (LinePair pair : pairs) {
        assertThat(to.line(pair.removed().id())).isEmpty();
        assertThat(from.line(pair.added().id())).isEmpty();
        assertThat(pair.removed().flour()).isEqualTo(pair.added().flour());
      }
    }
  }

  private static Formula formula(String ids) {
    List<String> words = ids == null ? List.of() : Arrays.asList(ids.split(" "));
    return Formula.named("Bun")
        .withLines(
            words.stream()
                .map(
                    word -> {
                      String id = word.replace("!", "");
                      return Line.of(id, id, Amount.parse("1 g")).withFlour(word.endsWith("!"));
                    })
                .toList());
  }
}
