package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.bake;
import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.oven;
import static io.ovenmark.compare.Bench.piece;
import static io.ovenmark.compare.Bench.sheet;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.compare.Confounding.Verdict;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Yield;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be concluded from two sets of bakes. */
class ConfoundingTest {
  private static final Formula BUN =
      oven(formula("lupin-flour 150 g *", "water 210 g", "salt 4 g"), "190 °C", 24);
  private static final Formula DRIER =
      oven(formula("lupin-flour 150 g *", "water 188 g", "salt 4 g"), "190 °C", 24);
  private static final Bake FIRST = bake("2026-08-28-1", piece("a", "190 °C", 24, 31));

  private static Confounding judge(Formula from, List<Bake> before, Formula to, List<Bake> after) {
    return Comparison.between(
            Side.of("bun@5", sheet(from)).withBakes(before),
            Side.of("bun@7", sheet(to)).withBakes(after))
        .confounding();
  }

  @Test
  void withoutBakesNothingCanBeSaid() {
    Confounding none = judge(BUN, List.of(), DRIER, List.of());
    assertThat(none.verdict()).isEqualTo(Verdict.NO_OUTCOMES);
    assertThat(none.sentence())
        .isEqualTo("Neither side has a bake, so nothing can be said about outcomes.");
    assertThat(judge(BUN, List.of(FIRST), DRIER, List.of()).sentence())
        .isEqualTo("bun@7 has no bake, so nothing can be said about outcomes.");
    assertThat(judge(BUN, List.of(), DRIER, List.of(FIRST)).sentence())
        .isEqualTo("bun@5 has no bake, so nothing can be said about outcomes.");
  }

  @Test
  void aSingleChangedLineMayBeCredited() {
    Confounding single =
        judge(
            BUN, List.of(FIRST), DRIER, List.of(bake("2026-09-09-1", piece("a", "190 C", 24, 40))));
    assertThat(single.verdict()).isEqualTo(Verdict.SINGLE);
    assertThat(single.sentence())
        .isEqualTo("Only the water differs between these bakes, as far as was noted: −22 g.");
    assertThat(single.likeForLikeSentence()).isEmpty();
  }

  @Test
  void aLineAndTheOvenCannotBeToldApart() {
    Confounding two =
        judge(
            BUN, List.of(FIRST), DRIER, List.of(bake("2026-09-09-1", piece("a", "205 C", 24, 46))));
    assertThat(two.verdict()).isEqualTo(Verdict.CONFOUNDED);
    assertThat(two.sentence())
        .isEqualTo(
            "Two things changed between these bakes (water and oven temperature)."
                + " A difference in outcome cannot be credited to one of them.");
  }

  @Test
  void piecesOfTheSameOvenMayBeComparedLikeForLike() {
    Bake first = bake("2026-08-28-1", piece("a", "190 °C", 24, 31), piece("b", "205 °C", 21, 33));
    Bake second = bake("2026-09-09-1", piece("a", "401 °F", 21, 46), piece("b", "205 °C", 18, 45));
    Confounding confounding = judge(BUN, List.of(first), DRIER, List.of(second));
    assertThat(confounding.verdict()).isEqualTo(Verdict.CONFOUNDED);
    assertThat(confounding.influences())
        .extracting(Confounding.Influence::detail)
        .containsExactly(
            "−22 g", "190 °C and 205 °C → 205 °C", "21 min and 24 min → 18 min and 21 min");
    assertThat(confounding.likeForLike()).hasSize(1);
    assertThat(confounding.likeForLikeSentence())
        .contains(
            "Pieces that may be compared like for like, 205 °C for 21 min: 2026-08-28-1 b with"
                + " 2026-09-09-1 a. Between them only the water differs.");
  }

  @Test
  void whatTheFormulaPrescribesCountsWhereNoPieceNotesIt() {
    Bake unnoted = bake("2026-09-09-1", piece("a", "", 0, 40));
    assertThat(judge(BUN, List.of(FIRST), oven(BUN, "190 C", 24), List.of(unnoted)).verdict())
        .isEqualTo(Verdict.NOTHING_DIFFERS);
    assertThat(judge(BUN, List.of(FIRST), oven(BUN, "205 C", 24), List.of(unnoted)).sentence())
        .isEqualTo(
            "Only the oven temperature differs between these bakes, as far as was noted:"
                + " 190 °C → 205 °C.");
  }

  @Test
  void whatWasDoneCountsMoreThanWhatIsPrescribed() {
    Bake asBefore = bake("2026-09-09-1", piece("a", "190 C", 24, 40));
    assertThat(judge(BUN, List.of(FIRST), oven(BUN, "205 C", 21), List.of(asBefore)).sentence())
        .isEqualTo(
            "Nothing that was noted differs between these bakes;"
                + " a difference in outcome is chance or something that was not noted.");
  }

  @Test
  void aBatchInProportionIsOneInfluenceAndItsPiecesNone() {
    Formula twice =
        oven(formula("lupin-flour 300 g *", "water 420 g", "salt 8 g"), "190 C", 24)
            .withYield(Yield.ofPieces(12));
    Bake second = bake("2026-09-09-1", piece("a", "190 C", 24, 40));
    assertThat(judge(BUN, List.of(FIRST), twice, List.of(second)).sentence())
        .isEqualTo(
            "Only the size of the batch differs between these bakes, as far as was noted: × 2.");
  }

  @Test
  void yieldMethodVesselAndRoomCountToo() {
    Formula other =
        BUN.withYield(Yield.ofPieces(4))
            .withMethod(List.of("Rest."))
            .withBake(
                List.of(BUN.bake().get(0).withVessel(java.util.Optional.of("cast iron pan"))));
    Bake second = bake("2026-09-09-1", piece("a", "190 C", 24, 40));
    Confounding confounding =
        judge(BUN, List.of(room(FIRST, "22 °C")), other, List.of(room(second, "28 °C")));
    assertThat(confounding.sentence())
        .startsWith(
            "Four things changed between these bakes (dividing of the batch, method, vessel and"
                + " room).");
  }

  @Test
  void theSameBakesOnBothSidesAreRecognised() {
    assertThat(judge(BUN, List.of(FIRST), DRIER, List.of(FIRST)).verdict())
        .isEqualTo(Verdict.SAME_BAKES);
  }

  private static Bake room(Bake bake, String ambient) {
    return new Bake(
        bake.formula(),
        bake.id(),
        bake.address(),
        bake.blob(),
        bake.time(),
        bake.baker(),
        java.util.Optional.of(ambient),
        bake.note(),
        bake.pieces(),
        bake.findings(),
        bake.photos(),
        bake.extras());
  }
}
