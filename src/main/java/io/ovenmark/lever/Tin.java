package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quoting;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A baking tin with straight walls, upright or slanting. Its volume is that of a prismatoid: a
 * sixth of the depth times the sum of the areas above and below and four times the area half-way.
 *
 * @param shape round, square or loaf
 * @param top length and width at the rim in centimetres; twice the same for round and square
 * @param bottom the same at the bottom
 * @param depth depth in centimetres
 */
public record Tin(Shape shape, Side top, Side bottom, double depth) {
  private static final double LARGEST = 200;
  private static final Map<String, Double> CENTIMETRES =
      Map.of("mm", 0.1, "cm", 1.0, "in", 2.54, "inch", 2.54, "\"", 2.54);
  private static final String LENGTH =
      "\\d{1,4}(?:\\.\\d{1,3})?(?: ?/ ?\\d{1,4}(?:\\.\\d{1,3})?)? ?(?:mm|cm|inch|in|\")?";
  private static final Pattern TEXT =
      Pattern.compile(
          "(round|square|loaf)(?: (?:tin|pan|mould))?(?: ?: ?| )"
              + "((?:" + LENGTH + " ?[x×*] ?){1,2}" + LENGTH + ")");
  private static final Pattern PART =
      Pattern.compile("([\\d.]+)(?: ?/ ?([\\d.]+))? ?(mm|cm|inch|in|\")?");
  private static final String EXAMPLE =
      "Write it as round:20cmx5cm, square:20cmx5cm or loaf:25cmx11cmx7cm; where the walls slant,"
          + " top/bottom as in round:20/18cmx5cm.";

  /** The outline of a tin. */
  public enum Shape {
    /** A circle. */
    ROUND,
    /** A square. */
    SQUARE,
    /** A rectangle. */
    LOAF
  }

  /**
   * Length and width of an outline in centimetres.
   *
   * @param length above 0
   * @param width above 0
   */
  public record Side(double length, double width) {
    /** Checks that both are possible. */
    public Side {
      check(length);
      check(width);
    }
  }

  /** Checks that all is possible. */
  public Tin {
    requireNonNull(shape, "shape");
    requireNonNull(top, "top");
    requireNonNull(bottom, "bottom");
    check(depth);
  }

  private static void check(double centimetres) {
    if (!(centimetres > 0 && centimetres <= LARGEST)) {
      throw new IllegalArgumentException(
          "A tin measures more than 0 and at most 2 m each way.\nCheck the numbers and the unit.");
    }
  }

  /**
   * Reads a tin: {@code round:20cmx5cm}, {@code square:9x2in}, {@code loaf:25/23x11/9x7cm}. A
   * length without a unit has that of the next one.
   *
   * @param text what was written
   * @return the tin
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static Tin read(String text) {
    Matcher matcher = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw notUnderstood(text);
    }
    return of(matcher).orElseThrow(() -> notUnderstood(text));
  }

  /**
   * Finds a tin in a text, such as the vessel of an oven stage.
   *
   * @param text such as {@code loaf tin 25 x 11 x 7 cm, greased}
   * @return the tin, empty when the text states none completely
   */
  public static Optional<Tin> in(String text) {
    Matcher matcher = TEXT.matcher(text.toLowerCase(Locale.ROOT));
    while (matcher.find()) {
      try {
        Optional<Tin> tin = of(matcher);
        if (tin.isPresent()) {
          return tin;
        }
      } catch (IllegalArgumentException e) {
        // no tin that can be: the words mean something else
        continue;
      }
    }
    return Optional.empty();
  }

  private static IllegalArgumentException notUnderstood(String text) {
    return new IllegalArgumentException(
        "The tin " + Quoting.quote(text) + " is not understood.\n" + EXAMPLE);
  }

  private static Optional<Tin> of(Matcher matcher) {
    Shape shape = Shape.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
    String[] parts = matcher.group(2).split(" ?[x×*] ?");
    boolean complete = parts.length == (shape == Shape.LOAF ? 3 : 2);
    double unit = 0;
    double[][] lengths = new double[parts.length][2];
    for (int i = parts.length - 1; i >= 0 && complete; i--) {
      Matcher part = PART.matcher(parts[i].strip());
      complete = part.matches();
      if (complete) {
        unit = part.group(3) == null ? unit : CENTIMETRES.get(part.group(3));
        lengths[i][0] = Double.parseDouble(part.group(1)) * unit;
        lengths[i][1] =
            part.group(2) == null ? lengths[i][0] : Double.parseDouble(part.group(2)) * unit;
      }
    }
    double[] depth = lengths[parts.length - 1];
    if (!complete || unit == 0 || depth[0] != depth[1]) {
      return Optional.empty();
    }
    int second = shape == Shape.LOAF ? 1 : 0;
    return Optional.of(
        new Tin(
            shape,
            new Side(lengths[0][0], lengths[second][0]),
            new Side(lengths[0][1], lengths[second][1]),
            depth[0]));
  }

  /**
   * The volume up to the rim.
   *
   * @return millilitres
   */
  public double millilitres() {
    double middle =
        (top.length + bottom.length) / 2 * ((top.width + bottom.width) / 2);
    double areas = top.length * top.width + bottom.length * bottom.width + 4 * middle;
    return (shape == Shape.ROUND ? Math.PI / 4 : 1) * depth / 6 * areas;
  }

  /**
   * The tin in words.
   *
   * @return such as {@code round tin 20 cm × 5 cm}
   */
  public String inWords() {
    List<String> parts =
        shape == Shape.LOAF
            ? List.of(
                side(top.length, bottom.length), side(top.width, bottom.width), side(depth, depth))
            : List.of(side(top.length, bottom.length), side(depth, depth));
    return shape.name().toLowerCase(Locale.ROOT) + " tin " + String.join(" × ", parts);
  }

  private static String side(double above, double below) {
    return above == below
        ? FigureText.number(above) + " cm"
        : FigureText.number(above) + "/" + FigureText.number(below) + " cm";
  }
}
