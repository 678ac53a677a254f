package io.ovenmark.demo;

/**
 * The upper side of a piece as a landscape, in units of half its width with the middle at 0, 0.
 * What is uneven about it depends on the seed alone.
 */
final class PieceSurface {
  private static final int ANGLES = 2048;
  private static final double PAPER_EDGE = 0.9;
  private static final int PLEATS = 36;

  private static final double[] DOME = new double[1026];
  private static final double[] PLEAT = new double[ANGLES];

  static {
    for (int i = 0; i < ANGLES; i++) {
      PLEAT[i] = 0.93 + 0.12 * Math.cos(PLEATS * 2 * Math.PI * (i + 0.5) / ANGLES);
    }
    for (int i = 0; i < DOME.length; i++) {
      double out = Math.min(1, i / 1024.0);
      DOME[i] = 0.62 * Math.pow(1 - Math.pow(out, 2.6), 0.62);
    }
  }

  private final PieceShape shape;
  private final long seed;
  private final boolean torn;
  private final double[] edges = new double[ANGLES];

  /**
   * A surface.
   *
   * @param shape of the piece
   * @param seed makes it one of its own
   * @param torn whether it has cracked open
   */
  PieceSurface(PieceShape shape, long seed, boolean torn) {
    this.shape = shape;
    this.seed = seed;
    this.torn = torn;
    for (int i = 0; i < ANGLES; i++) {
      double angle = 2 * Math.PI * i / ANGLES;
      double wave = 0;
      for (int k = 2; k <= 5; k++) {
        wave += 0.012 * Math.sin(k * angle + 2 * Math.PI * Texture.hash(seed, k, 40));
      }
      edges[i] =
          shape == PieceShape.CUP
              ? 1 + 0.018 * Math.cos(PLEATS * angle)
              : 0.98 + wave + 0.006 * Texture.noise(seed, 3 * Math.cos(angle), 3 * Math.sin(angle));
    }
  }

  PieceShape shape() {
    return shape;
  }

  /** Distance from the edge, positive inside. */
  double inside(double u, double v) {
    if (shape == PieceShape.RECTANGLE) {
      double wave = 0.012 * Texture.noise(seed, 9 * u, 9 * v);
      double dx = 1 - Math.abs(u);
      double dy = PictureLayout.RECTANGLE_DEPTH - Math.abs(v);
      double beyondX = Math.min(0, dx - 0.05);
      double beyondY = Math.min(0, dy - 0.05);
      double corner = Math.sqrt(beyondX * beyondX + beyondY * beyondY);
      return Math.min(Math.min(dx, dy), 0.05 - corner) + wave;
    }
    return edges[angle(u, v)] - Math.sqrt(u * u + v * v);
  }

  /**
   * Which of the angles a place is at. The arc tangent is a polynomial good to a hundredth of an
   * angle, because it is asked for at each pixel.
   */
  private static int angle(double u, double v) {
    double across = Math.abs(u);
    double up = Math.abs(v);
    double longer = Math.max(across, up);
    double t = longer == 0 ? 0 : Math.min(across, up) / longer;
    double s = t * t;
    double turn = ((-0.0464964749 * s + 0.15931422) * s - 0.327622764) * s * t + t;
    turn = up > across ? Math.PI / 2 - turn : turn;
    turn = u < 0 ? Math.PI - turn : turn;
    turn = v < 0 ? 2 * Math.PI - turn : turn;
    return (int) (turn * (ANGLES / (2 * Math.PI))) & ANGLES - 1;
  }

  /** How much of a place is paper cup: 0 is cake, 1 is paper. */
  double paper(double u, double v) {
    if (shape != PieceShape.CUP) {
      return 0;
    }
    double out = Math.sqrt(u * u + v * v);
    double from = PAPER_EDGE + 0.014 * Texture.noise(seed, 7 * u, 7 * v);
    return Math.min(1, Math.max(0, (out - from) * 110));
  }

  /** How light the pleats of a paper cup are at a place. */
  double pleat(double u, double v) {
    return PLEAT[angle(u, v)];
  }

  /** Height of the surface at a place, of which the distance from the edge is known. */
  double height(double u, double v, double inside) {
    double bumps = 0.05 * Texture.rough(seed + 7, 3.2 * u, 3.2 * v, 3);
    double skin = 0.016 * Texture.rough(seed + 17, 21 * u, 21 * v, 2);
    if (shape == PieceShape.RECTANGLE) {
      double edge = Math.min(0.06, Math.max(0, inside));
      return 0.9 * edge + 0.5 * bumps + 1.3 * skin - prick(u, v);
    }
    double away = Math.sqrt(u * u + v * v);
    boolean cake = shape == PieceShape.CUP && away < PAPER_EDGE;
    double out = Math.min(1, cake ? away : away / Math.max(0.5, away + inside));
    int at = (int) (out * 1024);
    double dome = DOME[at] + (DOME[at + 1] - DOME[at]) * (out * 1024 - at);
    return dome + bumps + skin - crack(u, v);
  }

  /** How much browner a place is than the whole: blotches, freckles, a darker top, a paler foot. */
  double browning(double u, double v) {
    double blotch = 0.42 * Texture.rough(seed + 37, 2.6 * u, 2.6 * v, 4);
    double freckle = 0.24 * Texture.noise(seed + 47, 17 * u, 17 * v);
    if (shape == PieceShape.RECTANGLE) {
      double rim = Math.max(0, 1 - Math.max(0, inside(u, v)) / 0.12);
      return blotch + freckle + 0.45 * rim;
    }
    double out = Math.sqrt(u * u + v * v);
    return blotch + 0.6 * freckle + 0.3 - 0.75 * out * out * out - 2 * crack(u, v);
  }

  private static double prick(double u, double v) {
    double x = u - 0.34 * Math.floor(u / 0.34) - 0.17;
    double y = v - 0.30 * Math.floor(v / 0.30) - 0.15;
    double away = Math.sqrt(x * x + y * y);
    return away < 0.035 ? 0.05 * (1 - away / 0.035) : 0;
  }

  private double crack(double u, double v) {
    if (!torn && shape == PieceShape.ROUND) {
      return 0;
    }
    double line = Math.abs(Texture.rough(seed + 27, 1.7 * u + 4, 1.7 * v, 3));
    double width = torn ? 0.05 : 0.02;
    double inner = Math.max(0, 1 - Math.sqrt(u * u + v * v) / 0.8);
    return line < width ? inner * (torn ? 0.3 : 0.1) * (1 - line / width) : 0;
  }
}
