package io.ovenmark.demo;

/**
 * The colour of a crust on the notebook's scale from 0 (raw) to 4 (burnt), the same five browns
 * that the viewer uses, and blends between them. Colours are packed as 0xRRGGBB.
 */
final class CrustColour {
  private static final int[] SCALE = {0xf3e6c6, 0xe0bb6b, 0xc0812f, 0x8a4a1c, 0x4b2712};

  private CrustColour() {}

  /**
   * The colour of a shade.
   *
   * @param shade from 0 to 4; what lies outside counts as the nearer end
   */
  static int at(double shade) {
    double inside = Math.min(SCALE.length - 1, Math.max(0, shade));
    int lower = Math.min(SCALE.length - 2, (int) inside);
    return blend(SCALE[lower], SCALE[lower + 1], inside - lower);
  }

  /** A colour between two: all of the first at share 0, all of the second at share 1. */
  static int blend(int first, int second, double share) {
    double s = Math.min(1, Math.max(0, share));
    int red = (int) (part(first, 16) * (1 - s) + part(second, 16) * s + 0.5);
    int green = (int) (part(first, 8) * (1 - s) + part(second, 8) * s + 0.5);
    int blue = (int) (part(first, 0) * (1 - s) + part(second, 0) * s + 0.5);
    return red << 16 | green << 8 | blue;
  }

  /** A colour under more or less light: unchanged at 1. */
  static int lit(int colour, double light) {
    int red = clamp(part(colour, 16) * light);
    int green = clamp(part(colour, 8) * light);
    int blue = clamp(part(colour, 0) * light);
    return red << 16 | green << 8 | blue;
  }

  private static int part(int colour, int shift) {
    return colour >> shift & 0xff;
  }

  private static int clamp(double part) {
    return part >= 255 ? 255 : part <= 0 ? 0 : (int) (part + 0.5);
  }
}
