package io.ovenmark.effect;

import io.ovenmark.effect.Candidate.Kind;
import io.ovenmark.effect.Effect.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Goes from bake to bake, each from the one before it on its line of history, and into each tray,
 * and notes what was changed there and what was changed alone. A change is alone where two pieces
 * differ in it and in nothing else that somebody changed; what merely follows from it, as the dough
 * moisture does from the water, does not count.
 */
final class Steps {
  private final List<Candidate> candidates;
  private final Groups groups;
  private final List<List<Step>> steps = new ArrayList<>();
  private final List<Map<Integer, Integer>> companions = new ArrayList<>();
  private final List<Candidate> leads = new ArrayList<>();

  /**
   * Looks through a history.
   *
   * @param history the bakes
   * @param bake the bake of each piece, an index into the history, rising
   * @param candidates with the values of these pieces
   * @param groups their groups
   */
  Steps(History history, int[] bake, List<Candidate> candidates, Groups groups) {
    this.candidates = candidates;
    this.groups = groups;
    for (int g = 0; g < groups.count(); g++) {
      steps.add(new ArrayList<>());
      companions.add(new TreeMap<>());
      leads.add(groups.lead(g).orElse(null));
    }
    Map<Integer, int[]> trays = new TreeMap<>();
    for (int i = 0; i < bake.length; i++) {
      int at = i;
      trays.compute(
          bake[i],
          (key, span) -> span == null ? new int[] {at, at + 1} : new int[] {span[0], at + 1});
    }
    Map<String, Integer> last = new HashMap<>();
    for (Map.Entry<Integer, int[]> tray : trays.entrySet()) {
      History.Baked to = history.bakes().get(tray.getKey());
      Integer before = last.containsKey(to.line()) ? last.get(to.line()) : last.get("");
      if (before != null) {
        step(history.bakes().get(before), to, trays.get(before), tray.getValue());
      }
      step(to, to, tray.getValue(), tray.getValue());
      last.put(to.line(), tray.getKey());
    }
  }

  private void step(History.Baked from, History.Baked to, int[] before, int[] after) {
    boolean oneTray = from == to;
    boolean[] moved = new boolean[groups.count()];
    for (int c = 0; c < candidates.size(); c++) {
      Candidate candidate = candidates.get(c);
      double apart =
          oneTray
              ? range(candidate, after)
              : Math.abs(mean(candidate, before) - mean(candidate, after));
      boolean counts = candidate.kind().isEntered() || candidate == leads.get(groups.of(c));
      moved[groups.of(c)] |= counts && apart > candidate.kind().least();
    }
    boolean[] alone = new boolean[groups.count()];
    for (int i = before[0]; i < before[1]; i++) {
      for (int j = oneTray ? i + 1 : after[0]; j < after[1]; j++) {
        pair(i, j, alone);
      }
    }
    for (int g = 0; g < groups.count(); g++) {
      if (moved[g] && leads.get(g) != null) {
        steps.get(g).add(
            new Step(
                from.address(), to.address(), from.bake().id(), to.bake().id(), alone[g]));
        for (int other = 0; other < groups.count(); other++) {
          if (other != g && moved[other] && leads.get(other) != null) {
            companions.get(g).merge(other, 1, Integer::sum);
          }
        }
      }
    }
  }

  private static double mean(Candidate candidate, int[] span) {
    double sum = 0;
    for (int i = span[0]; i < span[1]; i++) {
      sum += candidate.values()[i];
    }
    return sum / (span[1] - span[0]);
  }

  private static double range(Candidate candidate, int[] span) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = span[0]; i < span[1]; i++) {
      low = Math.min(low, candidate.values()[i]);
      high = Math.max(high, candidate.values()[i]);
    }
    return high - low;
  }

  private void pair(int one, int other, boolean[] alone) {
    List<Integer> differing = new ArrayList<>();
    for (int c = 0; c < candidates.size(); c++) {
      Candidate candidate = candidates.get(c);
      if (candidate.kind().isEntered() && candidate.differs(one, other)) {
        differing.add(c);
      }
    }
    for (int g = 0; g < groups.count(); g++) {
      Candidate lead = leads.get(g);
      int number = g;
      if (lead != null
          && lead.differs(one, other)
          && differing.stream()
              .allMatch(c -> groups.of(c) == number || follows(lead, candidates.get(c)))) {
        alone[g] = true;
      }
    }
  }

  /** Whether a figure is nothing but what comes of a change. */
  private static boolean follows(Candidate figure, Candidate change) {
    return switch (figure.kind()) {
      case LIQUID_RATIO, DOUGH_MOISTURE -> change.kind() == Kind.WATERY_LINE;
      case DOUGH_PER_PIECE -> change.kind() == Kind.DIVIDING;
      default -> false;
    };
  }

  List<Step> of(int group) {
    return steps.get(group);
  }

  /** Groups that moved along, the most frequent first. */
  List<Effect.Companion> companions(int group, int most) {
    return companions.get(group).entrySet().stream()
        .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
        .limit(most)
        .map(each -> new Effect.Companion(leads.get(each.getKey()).label(), each.getValue()))
        .toList();
  }
}
