package io.ovenmark.publish.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as a lesson is a rule of the bench: common practice, no source. */
class LessonTest {
  private static Move move(String key, double from, double to, boolean turned) {
    return new Move(key, key, "", from, to, "", "", "", turned);
  }

  private static Lesson lesson(int revision, boolean first, int findings, double liking) {
    return new Lesson(
        revision,
        first,
        findings,
        liking == 0 ? Optional.empty() : Optional.of(move("mean_liking", 5, 5 + liking, false)),
        false);
  }

  @ParameterizedTest
  @CsvSource({
    "mean_liking, 5, 5.4, false",
    "mean_liking, 5, 5.5, true",
    "mean_liking, 5, 4.5, true",
    "best_height_mm, 40, 41.9, false",
    "best_height_mm, 40, 38, true",
    "mean_loss_percent, 11, 11.5, false",
    "mean_loss_percent, 11, 12, true",
    "protein_g.per_piece, 10, 10.4, false",
    "protein_g.per_piece, 10, 10.5, true"
  })
  void aFigureMovedWhenItWouldBeNoticed(String key, double from, double to, boolean noticed) {
    assertThat(move(key, from, to, false).strength() >= 1).isEqualTo(noticed);
  }

  @Test
  void aLimitThatTurnedGoesBeforeAnythingElse() {
    Move turned = move("protein_g.per_piece", 7.99, 8.01, true);
    Move large = move("mean_liking", 1, 9, false);

    assertThat(turned.strength()).isGreaterThan(large.strength());
  }

  @Test
  void aBakeTaughtSomethingWhenAFindingOrAFigureOrAVerdictSaysSo() {
    assertThat(lesson(1, true, 0, 0).taught()).isTrue();
    assertThat(lesson(2, false, 0, 0).taught()).isFalse();
    assertThat(lesson(2, false, 0, 0.2).taught()).isFalse();
    assertThat(lesson(2, false, 1, 0).taught()).isTrue();
    assertThat(lesson(2, false, 0, -1).taught()).isTrue();
    assertThat(new Lesson(2, false, 0, Optional.empty(), true).taught()).isTrue();
    assertThat(lesson(2, false, 2, 0.2).why()).isEqualTo("2 findings changed");
  }

  @Test
  void bakesThatTaughtNothingAreNotProposed() {
    assertThat(
            Lesson.proposed(
                List.of(lesson(1, true, 0, 0), lesson(4, false, 0, 0), lesson(7, false, 0, 1))))
        .containsExactly(1, 7);
    assertThat(Lesson.proposed(List.of())).isEmpty();
  }

  @Test
  void ofManyTheFirstTheLastAndThoseThatTaughtMostAreProposed() {
    List<Lesson> lessons = new ArrayList<>();
    lessons.add(lesson(1, true, 0, 0));
    for (int i = 2; i < 40; i++) {
      lessons.add(lesson(i, false, i % 3 == 0 ? 6 : 1, 0));
    }
    lessons.add(lesson(40, false, 1, 0));

    List<Integer> proposed = Lesson.proposed(lessons);

    assertThat(proposed).hasSize(Lesson.MOST_PROPOSED).isSorted().startsWith(1).endsWith(40);
    assertThat(proposed.subList(1, 11)).allMatch(revision -> revision % 3 == 0);
  }
}
