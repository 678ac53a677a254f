package io.ovenmark.desk;

import java.util.List;

/** The records of answers about bake windows; see {@link Views} for the manner of all of them. */
public final class WindowViews {
  private WindowViews() {}

  /**
   * A bake window.
   *
   * @param address the state that was asked about
   * @param formula short name
   * @param variant name of the variant, or null
   * @param revision its number; for a file edited by hand the number that it would get
   * @param name name for people
   * @param summary the answer in a sentence or two
   * @param asked what was asked
   * @param choices the choices of pieces, with how many there are
   * @param pieces the pieces, oldest bake first
   * @param limits the limits with what was fitted; without a map only the counts
   * @param missing why there is no map
   * @param map the map, or null
   * @param next the pieces worth baking, the one that tells most first
   * @param plan those pieces as one text for the form of a bake; empty when there are none
   * @param model how it was worked out, in sentences
   * @param remarks what else a person should know
   * @param cautions what to mind
   */
  public record WindowSheet(
      String address,
      String formula,
      String variant,
      int revision,
      String name,
      String summary,
      AskedView asked,
      List<ChoiceView> choices,
      List<PieceView> pieces,
      List<LimitView> limits,
      List<MissingView> missing,
      MapView map,
      List<NextView> next,
      String plan,
      List<String> model,
      List<String> remarks,
      List<String> cautions) {}

  /**
   * What was asked.
   *
   * @param pieces {@code revision}, {@code dough} or {@code all}
   * @param limits the limits in words
   * @param proposed whether the pieces proposed them
   * @param along {@code minutes} or {@code dose}
   * @param referenceC reference temperature of the dose
   * @param zC the rise that makes its rate tenfold
   */
  public record AskedView(
      String pieces,
      List<String> limits,
      boolean proposed,
      String along,
      double referenceC,
      double zC) {}

  /**
   * A choice of pieces.
   *
   * @param pieces {@code revision}, {@code dough} or {@code all}
   * @param words in words
   * @param count how many pieces
   * @param doughs of how many doughs
   */
  public record ChoiceView(String pieces, String words, int count, int doughs) {}

  /**
   * A piece.
   *
   * @param bake its bake
   * @param piece its letter
   * @param address the revision that was baked
   * @param temperatureC oven temperature, or null
   * @param minutes time, or null
   * @param coreC core temperature, or null
   * @param crustShade 0 to 4, or null
   * @param dose thermal dose in minutes at the reference temperature, or null
   * @param findings its findings and its tray's
   * @param lookedAt whether it was noted what was seen or tasted
   * @param liking mean liking, or null
   * @param keeps whether it keeps all limits, null when that is not known
   * @param breaks the limits that it breaks
   * @param open the limits of which that is not known
   * @param onMap whether it has a place on the map
   */
  public record PieceView(
      String bake,
      String piece,
      String address,
      Double temperatureC,
      Double minutes,
      Double coreC,
      Double crustShade,
      Double dose,
      List<Views.FindingView> findings,
      boolean lookedAt,
      Double liking,
      Boolean keeps,
      List<String> breaks,
      List<String> open,
      boolean onMap) {}

  /**
   * A limit.
   *
   * @param limit in words
   * @param known of how many pieces it is known whether they keep it
   * @param kept how many of those do
   * @param sentence what heat and time do to it; null without a map
   * @param perFifthMoreTime what a fifth more time does to the figure, or to the natural log odds
   *     of the finding; null without a map
   * @param perFifthMoreTimeSd its standard deviation
   * @param perTenC what 10 °C more do
   * @param perTenCSd its standard deviation
   * @param noise scatter between like pieces; null for a finding
   */
  public record LimitView(
      String limit,
      int known,
      int kept,
      String sentence,
      Double perFifthMoreTime,
      Double perFifthMoreTimeSd,
      Double perTenC,
      Double perTenCSd,
      Double noise) {}

  /**
   * What is missing for a map.
   *
   * @param what {@code pieces}, {@code temperature}, {@code time}, {@code together}, {@code dose}
   *     or {@code limit}
   * @param sentence what is missing
   * @param remedy what to do
   */
  public record MissingView(String what, String sentence, String remedy) {}

  /**
   * The map. Times are minutes, or doses when that was asked.
   *
   * @param fromC coolest oven shown
   * @param toC hottest
   * @param from least time shown
   * @param to most
   * @param temperaturesC rows of the chances
   * @param along columns of the chances
   * @param chances chance that a piece keeps all limits
   * @param likely where that is at least 0.8
   * @param possible where it is at least 0.5
   * @param failing where a limit is more likely broken than not
   * @param best the setting most likely to keep all
   */
  public record MapView(
      double fromC,
      double toC,
      double from,
      double to,
      List<Double> temperaturesC,
      List<Double> along,
      List<List<Double>> chances,
      List<SpanView> likely,
      List<SpanView> possible,
      List<FailingView> failing,
      BestView best) {}

  /**
   * A stretch of time at one oven temperature.
   *
   * @param temperatureC oven temperature
   * @param from from
   * @param to to
   */
  public record SpanView(double temperatureC, double from, double to) {}

  /**
   * A way to break a limit.
   *
   * @param limit the limit
   * @param words such as {@code gummy crumb}
   * @param spans where it is more likely than not
   */
  public record FailingView(String limit, String words, List<SpanView> spans) {}

  /**
   * The setting most likely to keep all limits.
   *
   * @param temperatureC oven temperature
   * @param along time or dose
   * @param chance that a piece keeps all limits
   * @param atLeast what that may be as little as (one in ten that it is less)
   * @param atMost what it may be as much as
   * @param sureness how sure that is, in words
   * @param weakest the limit least likely to be kept there, or null
   */
  public record BestView(
      double temperatureC,
      double along,
      double chance,
      double atLeast,
      double atMost,
      String sureness,
      String weakest) {}

  /**
   * A piece worth baking.
   *
   * @param temperature what to set the oven to, as it is shown
   * @param temperatureC the same in °C
   * @param minutes time
   * @param settles the limit whose edge it tells most about; null while there is no map
   * @param chance that a piece there keeps that limit, as it looks now, or null
   * @param share how much of what is uncertain it is expected to take away, 0 to 1, or null
   * @param sentence what it would settle
   */
  public record NextView(
      String temperature,
      double temperatureC,
      double minutes,
      String settles,
      Double chance,
      Double share,
      String sentence) {}
}
