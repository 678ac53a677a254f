package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.bake;
import static io.ovenmark.compare.Bench.piece;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Bake;
import io.ovenmark.compare.Outcomes.Course;
import io.ovenmark.compare.Outcomes.Measure;
import io.ovenmark.compare.Outcomes.OutcomeFigure;
import io.ovenmark.measure.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutcomesTest {
  private static final Bake BEFORE =
      bake(
          "2026-08-28-1",
          piece("a", "190 C", 24, 31, List.of("Gummy crumb"), List.of(5.0, 6.0)),
          piece("b", "190 C", 27, 30, List.of("gummy crumb", "pale"), List.of(7.0)));
  private static final Bake AFTER =
      bake(
          "2026-09-09-1",
          piece("a", "205 C", 18, 0, List.of(), List.of()),
          piece("b", "205 C", 21, 46, List.of("even crumb", "pale"), List.of(8.0)),
          piece("c", "205 C", 24, 0, List.of("smells of hay"), List.of()));

  private static OutcomeFigure figure(Outcomes outcomes, Measure measure) {
    return outcomes.figures().get(measure.ordinal());
  }

  @Test
  void likingIsWeightedByTasters() {
    OutcomeFigure liking =
        figure(Outcomes.between(List.of(BEFORE), List.of(AFTER)), Measure.MEAN_LIKING);
    assertThat(liking.from()).isEqualTo(Quantity.known(6));
    assertThat(liking.fromCount()).isEqualTo(3);
    assertThat(liking.to()).isEqualTo(Quantity.known(8));
    assertThat(liking.toCount()).isEqualTo(1);
    assertThat(liking.delta()).isEqualTo(Quantity.known(2));
  }

  @Test
  void theBestHeightIsTheGreatestAndMeansLeaveOutWhatWasNotMeasured() {
    Outcomes outcomes = Outcomes.between(List.of(BEFORE), List.of(AFTER));
    assertThat(figure(outcomes, Measure.BEST_HEIGHT).from()).isEqualTo(Quantity.known(31));
    assertThat(figure(outcomes, Measure.BEST_HEIGHT).to()).isEqualTo(Quantity.known(46));
    assertThat(figure(outcomes, Measure.MEAN_SPREAD).toCount()).isEqualTo(1);
    assertThat(figure(outcomes, Measure.MEAN_SPREAD).to()).isEqualTo(Quantity.known(2));
  }

  @Test
  void whatWasNotMeasuredStaysUnknown() {
    Outcomes outcomes = Outcomes.between(List.of(BEFORE), List.of());
    assertThat(figure(outcomes, Measure.MEAN_CORE).from()).isEqualTo(Quantity.UNKNOWN);
    assertThat(figure(outcomes, Measure.BEST_HEIGHT).to()).isEqualTo(Quantity.UNKNOWN);
    assertThat(figure(outcomes, Measure.BEST_HEIGHT).delta()).isEqualTo(Quantity.ANYTHING);
    assertThat(outcomes.onBothSides()).isFalse();
  }

  @Test
  void findingsAppearGoAndStayFaultsFirst() {
    Outcomes outcomes = Outcomes.between(List.of(BEFORE), List.of(AFTER));
    assertThat(outcomes.findings())
        .extracting(finding -> finding.course() + " " + finding.finding())
        .containsExactly(
            "GONE gummy crumb", "STAYED pale", "APPEARED even crumb", "APPEARED smells of hay");
    assertThat(outcomes.findings().get(0).fromPieces()).isEqualTo(2);
    assertThat(outcomes.findings().get(0).fromOf()).isEqualTo(2);
    assertThat(outcomes.findings().get(0).toOf()).isEqualTo(3);
    assertThat(outcomes.findings().get(3).merit()).isEmpty();
  }

  @Test
  void withOneSideUnbakedNoFindingIsGone() {
    assertThat(Outcomes.between(List.of(BEFORE), List.of()).findings())
        .allMatch(finding -> finding.course() == Course.NOT_COMPARABLE);
  }

  @Test
  void eachPieceHasThePhotosThatShowIt() {
    Bake pictured = Bench.withPhoto(BEFORE, "photos/bun/tray.jpg", "the tray");
    Outcomes outcomes = Outcomes.between(List.of(pictured), List.of());
    assertThat(outcomes.from().pieces().get(1).photos()).containsExactly("photos/bun/tray.jpg");
    assertThat(outcomes.from().pieces().get(1).name()).isEqualTo("2026-08-28-1 b");
  }
}
