package io.ovenmark.effect;

import io.ovenmark.effect.Candidate.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Candidates that cannot be told apart: two of which one differs between two pieces just when the
 * other does, or which rise and fall so nearly alike (a correlation of 0.97 or more, of either
 * sign) that no few bakes could share the credit between them. Such a group has one effect.
 */
final class Groups {
  private static final double ALIKE = 0.97;

  private final List<Candidate> candidates;
  private final int[] parent;
  private final List<List<Integer>> members = new ArrayList<>();
  private final int[] group;

  Groups(List<Candidate> candidates) {
    this.candidates = candidates;
    parent = new int[candidates.size()];
    group = new int[candidates.size()];
    Arrays.setAll(parent, i -> i);
    Map<String, Integer> partitions = new HashMap<>();
    List<double[]> scaled = candidates.stream().map(Groups::scaled).toList();
    for (int i = 0; i < parent.length; i++) {
      Integer same = partitions.putIfAbsent(partition(candidates.get(i)), i);
      if (same != null) {
        join(i, same);
      }
    }
    for (int i = 0; i < parent.length; i++) {
      for (int j = 0; j < i; j++) {
        if (root(i) != root(j) && Math.abs(product(scaled.get(i), scaled.get(j))) >= ALIKE) {
          join(i, j);
        }
      }
    }
    Map<Integer, Integer> numbers = new HashMap<>();
    for (int i = 0; i < parent.length; i++) {
      int number = numbers.computeIfAbsent(root(i), each -> numbers.size());
      if (number == members.size()) {
        members.add(new ArrayList<>());
      }
      members.get(number).add(i);
      group[i] = number;
    }
  }

  private int root(int i) {
    int at = i;
    while (parent[at] != at) {
      at = parent[at];
    }
    return at;
  }

  private void join(int one, int other) {
    parent[root(one)] = root(other);
  }

  /** Pieces with the same value have the same number; numbers in the order of the pieces. */
  private static String partition(Candidate candidate) {
    Map<Long, Integer> classes = new HashMap<>();
    StringBuilder text = new StringBuilder();
    for (double value : candidate.values()) {
      long rounded = Math.round(2 * value / candidate.kind().least());
      text.append(classes.computeIfAbsent(rounded, each -> classes.size())).append(' ');
    }
    return text.toString();
  }

  private static double[] scaled(Candidate candidate) {
    double[] values = candidate.values();
    double mean = Arrays.stream(values).average().orElse(0);
    double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    return Arrays.stream(values).map(v -> (v - mean) / Math.sqrt(squares)).toArray();
  }

  private static double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  int count() {
    return members.size();
  }

  int of(int candidate) {
    return group[candidate];
  }

  List<Integer> members(int number) {
    return members.get(number);
  }

  /**
   * The candidate that a group is spoken of by; empty when what follows from its members stands
   * elsewhere, as the liquid ratio does for water.
   */
  Optional<Candidate> lead(int number) {
    return members.get(number).stream()
        .filter(this::speaks)
        .map(candidates::get)
        .min(Comparator.comparing(Candidate::kind));
  }

  private boolean speaks(int candidate) {
    Kind kind = candidates.get(candidate).kind();
    return kind.isModelled()
        || kind == Kind.WATERY_LINE && lacks(Kind.LIQUID_RATIO)
        || kind == Kind.DIVIDING && lacks(Kind.DOUGH_PER_PIECE);
  }

  private boolean lacks(Kind kind) {
    return candidates.stream().noneMatch(candidate -> candidate.kind() == kind);
  }

  /**
   * Labels of the others of a group as they go when the lead goes up, without water where the
   * liquid ratio leads: {@code less lupin flour}, {@code without the step “Knead.”}.
   */
  List<String> others(int number, Candidate lead) {
    return members.get(number).stream()
        .map(candidates::get)
        .filter(each -> each != lead && each.kind() != Kind.DIVIDING)
        .filter(each -> lead.kind() != Kind.LIQUID_RATIO || each.kind() != Kind.WATERY_LINE)
        .map(each -> along(each, product(scaled(each), scaled(lead)) < 0))
        .toList();
  }

  private static String along(Candidate candidate, boolean downwards) {
    if (!downwards) {
      return candidate.label();
    }
    return (candidate.kind().isEitherOr() ? "without " : "less ") + candidate.label();
  }
}
