package io.ovenmark.demo;

/**
 * Irregularity that is the same each time: noise worked out from place and seed alone, so that a
 * picture drawn twice is the same picture. Noise comes from one table of random numbers that
 * repeats after 256 units and that each seed reads from another corner.
 */
final class Texture {
  private static final int SIDE = 256;
  private static final int MASK = SIDE - 1;
  private static final float[] TABLE = new float[SIDE * SIDE];

  static {
    for (int i = 0; i < TABLE.length; i++) {
      TABLE[i] = (float) hash(1, i, 0);
    }
  }

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

  /** As {@link #hash}, faster and repeating: for what differs from pixel to pixel. */
  static double grain(int x, int y) {
    return TABLE[(x & MASK) << 8 | (y + (x >> 8) * 31 & MASK)];
  }

  /** Smooth noise from −1 to 1 with features about one unit across. */
  static double noise(long seed, double x, double y) {
    int corner = corner(seed);
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    double u = smooth(x - column);
    double v = smooth(y - row);
    int left = (column + corner & MASK) << 8;
    int right = (column + 1 + corner & MASK) << 8;
    int top = row + (corner >> 8) & MASK;
    int bottom = top + 1 & MASK;
    double upper = mix(TABLE[left | top], TABLE[right | top], u);
    double lower = mix(TABLE[left | bottom], TABLE[right | bottom], u);
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

  /**
   * Distance to the nearest of points strewn one to a unit square: small within a pore.
   *
   * @param reach what lies farther away does not count and gives this distance; the smaller, the
   *     fewer squares are looked at
   */
  static double cell(long seed, double x, double y, double reach) {
    int corner = corner(seed);
    int lastColumn = (int) Math.floor(x + reach);
    int firstRow = (int) Math.floor(y - reach);
    int lastRow = (int) Math.floor(y + reach);
    double nearest = reach * reach;
    for (int i = (int) Math.floor(x - reach); i <= lastColumn; i++) {
      int at = (i + corner & MASK) << 8;
      for (int j = firstRow; j <= lastRow; j++) {
        int index = at | (j + (corner >> 8) & MASK);
        double dx = i + TABLE[index] - x;
        double dy = j + TABLE[index ^ 0x5a5a] - y;
        nearest = Math.min(nearest, dx * dx + dy * dy);
      }
    }
    return Math.sqrt(nearest);
  }

  private static int corner(long seed) {
    int mixed = (int) (seed ^ seed >>> 32) * 0x9E3779B9;
    return mixed >>> 12;
  }

  private static double smooth(double t) {
    return t * t * (3 - 2 * t);
  }

  private static double mix(double a, double b, double share) {
    return a + (b - a) * share;
  }
}
