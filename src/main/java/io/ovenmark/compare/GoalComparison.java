package io.ovenmark.compare;

import io.ovenmark.goal.Goal;
import io.ovenmark.goal.GoalCheck;
import io.ovenmark.goal.GoalCheck.Outcome;
import io.ovenmark.goal.GoalCheck.Result;
import io.ovenmark.goal.Limit;
import io.ovenmark.measure.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The goals of both sides, rule by rule. Rules are the same when they say the same in words, so
 * that a limit that moved is one rule gone and one rule new.
 *
 * @param from name of the goal before; empty when there was none
 * @param to name of the goal after; empty when there is none
 * @param differ whether the two sides are held to different rules or goals
 * @param rules every rule, those of the later goal first, then those that only the earlier has
 */
public record GoalComparison(
    Optional<String> from, Optional<String> to, boolean differ, List<RuleChange> rules) {

  /** How a rule stands now and stood before. */
  public enum Course {
    /** Kept now, broken or unknown before. */
    NEWLY_MET,
    /** Broken now, kept or unknown before. */
    NEWLY_BROKEN,
    /** Unknown now, kept or broken before. */
    NEWLY_UNKNOWN,
    /** Kept on both sides. */
    STILL_MET,
    /** Broken on both sides. */
    STILL_BROKEN,
    /** Unknown on both sides. */
    STILL_UNKNOWN,
    /** A rule of the earlier goal only. */
    ONLY_BEFORE,
    /** A rule of the later goal only. */
    ONLY_AFTER
  }

  /**
   * One rule.
   *
   * @param rule in words
   * @param limit the limit; empty for an allergen or food
   * @param from whether it was kept; empty when the rule is new
   * @param to whether it is kept; empty when the rule is gone
   * @param fromValue the limited figure before; unknown for an allergen or food
   * @param toValue the limited figure after; unknown for an allergen or food
   * @param because lines that break or leave open an allergen or food, after; before when gone
   * @param course what became of it
   */
  public record RuleChange(
      String rule,
      Optional<Limit> limit,
      Optional<Outcome> from,
      Optional<Outcome> to,
      Quantity fromValue,
      Quantity toValue,
      List<String> because,
      Course course) {
    /** Copies the list. */
    public RuleChange {
      because = List.copyOf(because);
    }
  }

  /** Copies the list. */
  public GoalComparison {
    rules = List.copyOf(rules);
  }

  /**
   * The rules with one course.
   *
   * @param course which
   * @return in order
   */
  public List<RuleChange> with(Course course) {
    return rules.stream().filter(rule -> rule.course() == course).toList();
  }

  static GoalComparison between(Optional<GoalCheck> from, Optional<GoalCheck> to) {
    Map<String, Result> before = byRule(from);
    Map<String, Result> after = byRule(to);
    List<RuleChange> rules = new ArrayList<>();
    after.forEach(
        (rule, result) -> rules.add(change(Optional.ofNullable(before.get(rule)), result)));
    before.forEach(
        (rule, result) -> {
          if (!after.containsKey(rule)) {
            rules.add(gone(result));
          }
        });
    Optional<Goal> goalBefore = from.map(GoalCheck::goal);
    Optional<Goal> goalAfter = to.map(GoalCheck::goal);
    boolean differ =
        !goalBefore.map(Goal::slug).equals(goalAfter.map(Goal::slug))
            || !before.keySet().equals(after.keySet());
    return new GoalComparison(goalBefore.map(Goal::name), goalAfter.map(Goal::name), differ, rules);
  }

  private static Map<String, Result> byRule(Optional<GoalCheck> check) {
    Map<String, Result> results = new LinkedHashMap<>();
    check.ifPresent(
        known -> known.results().forEach(result -> results.putIfAbsent(result.rule(), result)));
    return results;
  }

  private static RuleChange change(Optional<Result> before, Result after) {
    return new RuleChange(
        after.rule(),
        after.limit(),
        before.map(Result::outcome),
        Optional.of(after.outcome()),
        before.map(Result::value).orElse(Quantity.UNKNOWN),
        after.value(),
        after.because(),
        before.isEmpty() ? Course.ONLY_AFTER : course(before.get().outcome(), after.outcome()));
  }

  private static RuleChange gone(Result before) {
    return new RuleChange(
        before.rule(),
        before.limit(),
        Optional.of(before.outcome()),
        Optional.empty(),
        before.value(),
        Quantity.UNKNOWN,
        before.because(),
        Course.ONLY_BEFORE);
  }

  private static Course course(Outcome before, Outcome after) {
    boolean still = before == after;
    return switch (after) {
      case MET -> still ? Course.STILL_MET : Course.NEWLY_MET;
      case BROKEN -> still ? Course.STILL_BROKEN : Course.NEWLY_BROKEN;
      case UNKNOWN -> still ? Course.STILL_UNKNOWN : Course.NEWLY_UNKNOWN;
    };
  }
}
