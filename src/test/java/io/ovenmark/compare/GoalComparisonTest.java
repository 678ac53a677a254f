package io.ovenmark.compare;

import static io.ovenmark.compare.Bench.formula;
import static io.ovenmark.compare.Bench.goal;
import static io.ovenmark.compare.Bench.held;
import static io.ovenmark.compare.GoalComparison.Course.NEWLY_BROKEN;
import static io.ovenmark.compare.GoalComparison.Course.NEWLY_MET;
import static io.ovenmark.compare.GoalComparison.Course.NEWLY_UNKNOWN;
import static io.ovenmark.compare.GoalComparison.Course.ONLY_AFTER;
import static io.ovenmark.compare.GoalComparison.Course.ONLY_BEFORE;
import static io.ovenmark.compare.GoalComparison.Course.STILL_BROKEN;
import static io.ovenmark.compare.GoalComparison.Course.STILL_MET;
import static io.ovenmark.compare.GoalComparison.Course.STILL_UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.ovenmark.compare.GoalComparison.Course;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class GoalComparisonTest {
  /** With at most 4 g net carbohydrate a piece; sugar is all carbohydrate; 6 pieces. */
  static Stream<Arguments> courses() {
    return Stream.of(
        arguments("sugar 60 g", "sugar 6 g", NEWLY_MET),
        arguments("sugar 6 g", "sugar 60 g", NEWLY_BROKEN),
        arguments("sugar 6 g", "sugar 1 cup", NEWLY_UNKNOWN),
        arguments("sugar 1 cup", "sugar 6 g", NEWLY_MET),
        arguments("sugar 6 g", "sugar 7 g", STILL_MET),
        arguments("sugar 60 g", "sugar 70 g", STILL_BROKEN),
        arguments("sugar 1 cup", "sugar 2 cups", STILL_UNKNOWN));
  }

  @ParameterizedTest
  @MethodSource("courses")
  void aLimitTakesItsCourse(String from, String to, Course course) {
    Comparison comparison =
        Comparison.between(
            held("bun@1", formula(from), goal(4)), held("bun@2", formula(to), goal(4)));
    assertThat(comparison.goal().differ()).isFalse();
    assertThat(comparison.goal().rules()).hasSize(1);
    assertThat(comparison.goal().rules().get(0).course()).isEqualTo(course);
  }

  @Test
  void rulesOfOneSideOnlyAreToldAsSuch() {
    Comparison comparison =
        Comparison.between(
            held("bun@1", formula("egg-white 9 g"), goal(4, "eggs", "milk")),
            held("bun@2", formula("egg-white 9 g"), goal(5, "eggs")));
    assertThat(comparison.goal().differ()).isTrue();
    assertThat(comparison.goal().rules())
        .extracting(rule -> rule.course() + " " + rule.rule())
        .containsExactly(
            ONLY_AFTER + " at most 5 g net carbohydrate a piece",
            STILL_BROKEN + " no eggs",
            ONLY_BEFORE + " at most 4 g net carbohydrate a piece",
            ONLY_BEFORE + " no milk");
    assertThat(comparison.goal().with(STILL_BROKEN).get(0).because()).containsExactly("egg white");
  }

  @Test
  void withoutGoalsThereAreNoRules() {
    Comparison comparison = Bench.compare(formula("water 9 g"), formula("water 8 g"));
    assertThat(comparison.goal().rules()).isEmpty();
    assertThat(comparison.goal().differ()).isFalse();
    assertThat(comparison.goal().from()).isEmpty();
  }
}
