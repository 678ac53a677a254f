package io.ovenmark.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quantity;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BakedYieldTest {

  @Test
  void isTheTotalBakedMassByTheTotalDoughMassOfAllBakes() {
    BakedYield yield = BakedYield.measured(List.of(bake("60>50", "90>76"), bake("50>44")));
    assertThat(yield.pieces()).isEqualTo(3);
    assertThat(yield.share().value().orElseThrow()).isCloseTo(0.85, within(1e-12));
  }

  @Test
  void leavesOutPiecesOfWhichOneMassIsMissing() {
    BakedYield yield = BakedYield.measured(List.of(bake("60>48", "60>", ">50", ">")));
    assertThat(yield.pieces()).isEqualTo(1);
    assertThat(yield.share()).isEqualTo(Quantity.known(0.8));
  }

  @Test
  void isUnmeasuredWithoutBakes() {
    assertThat(BakedYield.measured(List.of())).isEqualTo(BakedYield.UNMEASURED);
    assertThat(BakedYield.measured(List.of(bake()))).isEqualTo(BakedYield.UNMEASURED);
  }

  private static Bake bake(String... masses) {
    List<Piece> pieces = new ArrayList<>();
    for (String mass : masses) {
      String[] parts = mass.split(">", -1);
      pieces.add(piece("p" + pieces.size(), grams(parts[0]), grams(parts[1])));
    }
    return new Bake(
        "seeded-lupin-bun",
        "2026-09-14-1",
        "seeded-lupin-bun@1",
        "0".repeat(40),
        OffsetDateTime.parse("2026-09-14T09:00:00Z"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        pieces,
        List.of(),
        List.of(),
        Extras.NONE);
  }

  private static OptionalDouble grams(String text) {
    return text.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text));
  }

  private static Piece piece(String id, OptionalDouble dough, OptionalDouble baked) {
    Piece none = Piece.named(id);
    return new Piece(
        id,
        none.temperature(),
        none.minutes(),
        none.rack(),
        dough,
        baked,
        none.widthMillimetres(),
        none.heightMillimetres(),
        none.core(),
        none.crustShade(),
        none.findings(),
        none.liking(),
        none.attributes(),
        none.verdict(),
        none.note(),
        none.extras());
  }
}
