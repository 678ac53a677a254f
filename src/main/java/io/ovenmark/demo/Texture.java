package io.ovenmark.demo;

/**
 * Irregularity that is the same each time: noise worked out from place and seed alone, so that a
 * picture drawn twice is the same picture.
 */
final class Texture {
  private Texture() {}

  /** A number from 0 to below 1 that looks random and depends on its arguments only. */
  static double hash(long seed, long x, long y) {
    long h = seed * 0x9E3779B97F4A7C15L + x * 0xC2B2AE3D27D4EB4FL + y * 0x165667B19E3779F9L;
    h ^= h >>> 29;
    h *= 0xBF58476D1CE4E5B9L;
    h ^= h >>> 32;
    h *= 0x94D049BB133111EBL;
    h ^= h >>> 31;
    return (h >>> 11) / (double) (1L << 53);
  }

  /** Smooth noise from −1 to 1 with features about one unit across. */
  static double noise(long seed, double x, double y) {
    long column = (long) Math.floor(x);
    long row = (long) Math.floor(y);
    double u = smooth(x - column);
    double v = smooth(y - row);
    double upper = mix(hash(seed, column, row), hash(seed, column + 1, row), u);
    double lower = mix(hash(seed, column, row + 1), hash(seed, column + 1, row + 1), u);
    return 2 * mix(upper, lower, v) - 1;
  }

  /** Noise of several sizes laid over one another, about −1 to 1. */
  static double rough(long seed, double x, double y, int sizes) {
    double sum = 0;
    double weight = 0.5;
    for (int i = 0; i < sizes; i++) {
      sum += weight * noise(seed + i, x, y);
      x *= 2.1;
      y *= 2.1;
      weight /= 2;
    }
    return sum;
  }

  /** Distance to the nearest of points strewn one to a unit square: small within a pore. */
  static double cell(long seed, double x, double y) {
    long column = (long) Math.floor(x);
    long row = (long) Math.floor(y);
    double nearest = 9;
    for (long i = column - 1; i <= column + 1; i++) {
      for (long j = row - 1; j <= row + 1; j++) {
        double dx = i + hash(seed, i, j) - x;
        double dy = j + hash(seed + 1, i, j) - y;
        nearest = Math.min(nearest, dx * dx + dy * dy);
      }
    }
    return Math.sqrt(nearest);
  }

  private static double smooth(double t) {
    return t * t * (3 - 2 * t);
  }

  private static double mix(double a, double b, double share) {
    return a + (b - a) * share;
  }
}
