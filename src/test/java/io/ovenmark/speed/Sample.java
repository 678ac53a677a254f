package io.ovenmark.speed;

import java.util.Arrays;
import java.util.Locale;

/** The times that one thing took, repeated. */
final class Sample {
  private static final double NANOS = 1e6;

  private double[] milliseconds = new double[0];

  /** Something to time. */
  @FunctionalInterface
  interface Work {
    void run() throws Exception;
  }

  /** Does it once and takes the time. */
  void time(Work work) throws Exception {
    long start = System.nanoTime();
    work.run();
    add(System.nanoTime() - start);
  }

  void add(long nanos) {
    milliseconds = Arrays.copyOf(milliseconds, milliseconds.length + 1);
    milliseconds[milliseconds.length - 1] = nanos / NANOS;
  }

  int count() {
    return milliseconds.length;
  }

  double median() {
    return quantile(0.5);
  }

  /** The value that a share of the times does not exceed, in milliseconds. */
  double quantile(double share) {
    double[] sorted = milliseconds.clone();
    Arrays.sort(sorted);
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /** Median and the middle eight tenths. */
  @Override
  public String toString() {
    return text(median()) + " ms (" + text(quantile(0.1)) + " to " + text(quantile(0.9)) + ")";
  }

  static String text(double milliseconds) {
    int decimals = milliseconds < 1 ? 3 : milliseconds < 10 ? 2 : milliseconds < 100 ? 1 : 0;
    return String.format(Locale.ROOT, "%." + decimals + "f", milliseconds);
  }
}
