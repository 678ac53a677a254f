package io.ovenmark.tasting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Friedman's test of ranks, corrected for ties: do the samples' rank sums lie further apart than
 * chance would put them? (M. Friedman, Journal of the American Statistical Association 32, 1937;
 * with ties as in Hollander and Wolfe, Nonparametric Statistical Methods.) The probability is exact
 * where all rank sums that chance can give are few enough to be gone through, else by random
 * permutations of each taster's ranks, and for large panels by chi-squared.
 *
 * @param statistic chi-squared; 0 when every taster ties all samples
 * @param degreesOfFreedom samples less one
 * @param p probability of such rank sums by chance
 * @param method how p was found
 * @param chiSquaredP the same by the chi-squared approximation
 */
public record Friedman(
    double statistic, int degreesOfFreedom, double p, Method method, double chiSquaredP) {
  private static final int MOST_STEPS = 3_000_000;
  private static final int MOST_EXACT_SAMPLES = 5;
  private static final int BITS = 12;
  private static final int MOST_DRAWN_RANKS = 600;
  private static final int DRAWS = 20_000;

  /** How a probability was found. */
  public enum Method {
    /** All possible rank sums with their probabilities. */
    EXACT,
    /** Random permutations of each taster's ranks, always the same ones. */
    PERMUTATIONS,
    /** The chi-squared distribution, good for large panels. */
    CHI_SQUARED
  }

  /**
   * Tests ranks.
   *
   * @param ranks one row for each taster, one rank for each sample, tied samples with their mean
   *     rank; at least one row, and at least two samples
   * @return the test
   */
  public static Friedman of(List<List<Double>> ranks) {
    int tasters = ranks.size();
    int samples = tasters == 0 ? 0 : ranks.get(0).size();
    Faults.require(samples >= 2, "There is nothing to rank.", "Rank at least two samples.");
    int[][] doubled = new int[tasters][];
    for (int i = 0; i < tasters; i++) {
      doubled[i] = ranks.get(i).stream().mapToInt(r -> (int) Math.round(2 * r)).toArray();
    }
    double ties = 0;
    for (int[] row : doubled) {
      ties += ties(row);
    }
    int[] sums = new int[samples];
    for (int[] row : doubled) {
      for (int j = 0; j < samples; j++) {
        sums[j] += row[j];
      }
    }
    double scale = tasters * samples * (samples + 1.0) - ties / (samples - 1.0);
    long spread = spread(sums);
    // the sums are of doubled ranks, of which the spread is four times that of the ranks
    double statistic = scale <= 1e-9 ? 0 : 12.0 * spread / 4 / samples / scale;
    double chiSquared =
        ChiSquaredDistribution.of(samples - 1).survivalProbability(statistic);
    if (scale <= 1e-9) {
      return new Friedman(0, samples - 1, 1, Method.EXACT, 1);
    }
    double exact = exact(doubled, spread);
    if (exact >= 0) {
      return new Friedman(statistic, samples - 1, exact, Method.EXACT, chiSquared);
    }
    if (tasters * samples <= MOST_DRAWN_RANKS) {
      return new Friedman(
          statistic, samples - 1, drawn(doubled, spread), Method.PERMUTATIONS, chiSquared);
    }
    return new Friedman(statistic, samples - 1, chiSquared, Method.CHI_SQUARED, chiSquared);
  }

  /** Samples times the sum of squares less the square of the sum: whole, so ties stay ties. */
  private static long spread(int[] sums) {
    long squares = 0;
    long all = 0;
    for (int sum : sums) {
      squares += (long) sum * sum;
      all += sum;
    }
    return sums.length * squares - all * all;
  }

  private static double ties(int[] row) {
    double ties = 0;
    int[] sorted = row.clone();
    Arrays.sort(sorted);
    for (int from = 0; from < sorted.length; ) {
      int to = from;
      while (to < sorted.length && sorted[to] == sorted[from]) {
        to++;
      }
      double size = to - from;
      ties += size * size * size - size;
      from = to;
    }
    return ties;
  }

  /** The exact probability; −1 when there is too much to go through. */
  private static double exact(int[][] rows, long spread) {
    int samples = rows[0].length;
    if (samples > MOST_EXACT_SAMPLES || 2L * rows.length * samples >= 1 << BITS) {
      return -1;
    }
    Map<Long, Double> states = new HashMap<>();
    states.put(0L, 1.0);
    long steps = 0;
    int[] sums = new int[samples];
    for (int[] row : rows) {
      List<int[]> permutations = permutations(row);
      steps += (long) states.size() * permutations.size();
      if (steps > MOST_STEPS) {
        return -1;
      }
      Map<Long, Double> next = new HashMap<>();
      for (Map.Entry<Long, Double> state : states.entrySet()) {
        double share = state.getValue() / permutations.size();
        for (int[] permutation : permutations) {
          unpack(state.getKey(), sums);
          for (int j = 0; j < samples; j++) {
            sums[j] += permutation[j];
          }
          next.merge(pack(sums), share, Double::sum);
        }
      }
      states = next;
    }
    double p = 0;
    for (Map.Entry<Long, Double> state : states.entrySet()) {
      unpack(state.getKey(), sums);
      if (spread(sums) >= spread) {
        p += state.getValue();
      }
    }
    return Math.min(1, p);
  }

  /** Which sample has which sum does not matter, so sums are kept sorted. */
  private static long pack(int[] sums) {
    Arrays.sort(sums);
    long packed = 0;
    for (int sum : sums) {
      packed = packed << BITS | sum;
    }
    return packed;
  }

  private static void unpack(long packed, int[] sums) {
    long rest = packed;
    for (int j = sums.length - 1; j >= 0; j--) {
      sums[j] = (int) (rest & (1 << BITS) - 1);
      rest >>= BITS;
    }
  }

  /** The different orders of a row, all equally likely by chance. */
  private static List<int[]> permutations(int[] row) {
    Set<List<Integer>> found = new HashSet<>();
    permute(row.clone(), 0, found);
    return found.stream()
        .map(each -> each.stream().mapToInt(Integer::intValue).toArray())
        .toList();
  }

  private static void permute(int[] row, int from, Set<List<Integer>> found) {
    if (from == row.length) {
      found.add(Arrays.stream(row).boxed().toList());
      return;
    }
    for (int i = from; i < row.length; i++) {
      swap(row, from, i);
      permute(row, from + 1, found);
      swap(row, from, i);
    }
  }

  private static void swap(int[] row, int i, int j) {
    int kept = row[i];
    row[i] = row[j];
    row[j] = kept;
  }

  /** The share of random permutations that lie as far apart, the observed ranks among them. */
  private static double drawn(int[][] rows, long spread) {
    Random random = new Random(DRAWS);
    int samples = rows[0].length;
    int as = 1;
    for (int draw = 0; draw < DRAWS; draw++) {
      int[] sums = new int[samples];
      for (int[] row : rows) {
        for (int j = samples - 1; j >= 0; j--) {
          swap(row, j, random.nextInt(j + 1));
          sums[j] += row[j];
        }
      }
      if (spread(sums) >= spread) {
        as++;
      }
    }
    return as / (DRAWS + 1.0);
  }
}
