package io.ovenmark.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/** The times that one thing took, repeated. */
final class Sample {
  private static final double NANOS = 1e6;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private double[] milliseconds = new double[0];
  private double[] processor = new double[0];

  /** Something to time. */
  @FunctionalInterface
  interface Work {
    void run() throws Exception;
  }

  /** Does it once and takes the time. */
  void time(Work work) throws Exception {
    long processorStart = THREADS.getCurrentThreadCpuTime();
    long start = System.nanoTime();
    work.run();
    milliseconds = with(milliseconds, System.nanoTime() - start);
    processor = with(processor, THREADS.getCurrentThreadCpuTime() - processorStart);
  }

  /** Takes a time that was measured elsewhere, in milliseconds. */
  void add(double time) {
    milliseconds = with(milliseconds, Math.round(time * NANOS));
    processor = with(processor, 0);
  }

  private static double[] with(double[] values, long nanos) {
    double[] more = Arrays.copyOf(values, values.length + 1);
    more[values.length] = nanos / NANOS;
    return more;
  }

  double median() {
    return quantile(milliseconds, 0.5);
  }

  /** What the calling thread had a processor for, in milliseconds, median. */
  double processor() {
    return quantile(processor, 0.5);
  }

  /** The value that a share of the times does not exceed, in milliseconds. */
  private static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /** Median and the middle eight tenths. */
  @Override
  public String toString() {
    return text(median())
        + " ms ("
        + text(quantile(milliseconds, 0.1))
        + " to "
        + text(quantile(milliseconds, 0.9))
        + ")";
  }

  static String text(double milliseconds) {
    int decimals = milliseconds < 1 ? 3 : milliseconds < 10 ? 2 : milliseconds < 100 ? 1 : 0;
    return String.format(Locale.ROOT, "%." + decimals + "f", milliseconds);
  }
}
