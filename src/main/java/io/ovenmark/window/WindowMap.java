package io.ovenmark.window;

import java.util.List;
import java.util.Optional;

/**
 * Oven temperature × time, with the chance that a piece keeps every limit.
 *
 * @param range what it shows
 * @param celsius oven temperatures that can be set, rising
 * @param along times in minutes (or doses), rising
 * @param chances for each of those temperatures, at each of those times, the chance
 *     that a piece keeps all limits
 * @param likely where that is at least {@link #LIKELY}
 * @param possible where that is at least {@link #POSSIBLE}
 * @param failing for each way to break a limit, where that is more likely than not
 * @param best the setting at which it is greatest
 */
public record WindowMap(
    OvenRange range,
    List<Double> celsius,
    List<Double> along,
    List<List<Double>> chances,
    List<Span> likely,
    List<Span> possible,
    List<Failing> failing,
    Best best) {
  /** Four pieces of five. */
  public static final double LIKELY = 0.8;

  /** As many as not. */
  public static final double POSSIBLE = 0.5;

  /** Copies. */
  public WindowMap {
    celsius = List.copyOf(celsius);
    along = List.copyOf(along);
    chances = chances.stream().map(List::copyOf).toList();
    likely = List.copyOf(likely);
    possible = List.copyOf(possible);
    failing = List.copyOf(failing);
  }

  /**
   * A stretch of time at one oven temperature.
   *
   * @param celsius oven temperature
   * @param from from
   * @param to to; the map's end where it goes on beyond
   */
  public record Span(double celsius, double from, double to) {}

  /**
   * A way to break a limit.
   *
   * @param limit the limit
   * @param words such as {@code crust too dark} or {@code gummy crumb}
   * @param spans where it is more likely than not
   */
  public record Failing(WindowLimit limit, String words, List<Span> spans) {
    /** Copies. */
    public Failing {
      spans = List.copyOf(spans);
    }
  }

  /**
   * The setting most likely to keep every limit, of those that can be set.
   *
   * @param celsius oven temperature
   * @param along time in minutes (or dose)
   * @param chance that a piece keeps all limits
   * @param low what that chance may be as little as (one in ten that it is less)
   * @param high what it may be as much as (one in ten that it is more)
   * @param sureness how sure that is
   * @param weakest the limit least likely to be kept there
   */
  public record Best(
      double celsius,
      double along,
      double chance,
      double low,
      double high,
      Sureness sureness,
      Optional<WindowLimit> weakest) {}

  /** How sure a chance is, by the width of what it may be. */
  public enum Sureness {
    /** Narrower than a quarter. */
    WELL_SUPPORTED("well supported"),
    /** Narrower than a half. */
    FAIR("a fair guess"),
    /** Wider. */
    WEAK("little more than a guess");

    private final String words;

    Sureness(String words) {
      this.words = words;
    }

    /**
     * In words.
     *
     * @return such as {@code a fair guess}
     */
    public String words() {
      return words;
    }

    static Sureness of(double low, double high) {
      return high - low < 0.25 ? WELL_SUPPORTED : high - low < 0.5 ? FAIR : WEAK;
    }
  }
}
