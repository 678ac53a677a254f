package io.ovenmark.desk;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.window.Axis;
import io.ovenmark.window.BakeWindow;
import io.ovenmark.window.LimitFit;
import io.ovenmark.window.Measure;
import io.ovenmark.window.NextBake;
import io.ovenmark.window.ThermalDose;
import io.ovenmark.window.WindowLimit;
import io.ovenmark.window.WindowMap;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A bake window in sentences, in the units of the reader. */
final class WindowSentences {
  private static final double NEARLY_ALL = 0.95;
  private static final double HARDLY_ANY = 0.05;
  private static final double FAHRENHEIT_STEP = 20;
  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

  private final ShownUnits units;
  private final Axis axis;

  WindowSentences(ShownUnits units, Axis axis) {
    this.units = units;
    this.axis = axis;
  }

  String heat(double celsius) {
    return FigureText.number(units.inDegrees(celsius)) + " " + units.degreeUnit();
  }

  private String along(double value) {
    return axis == Axis.MINUTES
        ? FigureText.number(value) + " min"
        : "a dose of " + FigureText.number(value) + " min";
  }

  String summary(BakeWindow window) {
    if (window.map().isEmpty()) {
      return window.missing().size() == 1
          ? "No map yet: one thing is missing."
          : "No map yet: " + window.missing().size() + " things are missing.";
    }
    WindowMap map = window.map().get();
    WindowMap.Best best = map.best();
    int limits = window.limits().size();
    String all =
        limits == 1 ? "the limit" : limits == 2 ? "both limits" : "all " + limits + " limits";
    String sure =
        " With " + window.onMap().size() + " pieces that is " + best.sureness().words() + ": "
            + between(best.low(), best.high()) + ".";
    if (best.chance() < WindowMap.POSSIBLE) {
      return "Nowhere on the map does more than every second piece keep " + all
          + ". Best is " + heat(best.celsius()) + ", " + along(best.along()) + ", where "
          + pieces(best.chance()) + (best.chance() > NEARLY_ALL ? " does" : " keep " + them(limits))
          + weakest(best, limits) + "." + sure;
    }
    List<WindowMap.Span> spans =
        best.chance() >= WindowMap.LIKELY ? map.likely() : map.possible();
    return "At " + heat(best.celsius()) + stretch(spans, best) + ", best at " + along(best.along())
        + ", where " + pieces(best.chance()) + " keep" + (best.chance() > NEARLY_ALL ? "s " : " ")
        + all + "." + sure;
  }

  private static String them(int limits) {
    return limits == 1 ? "it" : "them";
  }

  private String weakest(WindowMap.Best best, int limits) {
    return limits > 1
        ? best.weakest()
            .map(limit -> "; what fails most there is “" + limit.text(units) + "”")
            .orElse("")
        : "";
  }

  /** The stretch of time at the best oven temperature, from the nearest row of the map. */
  private String stretch(List<WindowMap.Span> spans, WindowMap.Best best) {
    Optional<WindowMap.Span> nearest =
        spans.stream()
            .min(
                Comparator.comparingDouble(
                    span -> Math.abs(span.celsius() - best.celsius())));
    if (nearest.isEmpty()) {
      return "";
    }
    double from = Math.ceil(nearest.get().from() - 1e-9);
    double to = Math.floor(nearest.get().to() + 1e-9);
    return axis == Axis.MINUTES && from < to
        ? " for " + FigureText.number(from) + " to " + FigureText.number(to) + " min"
        : "";
  }

  /** A chance as so many pieces in ten. */
  static String pieces(double chance) {
    if (chance > NEARLY_ALL) {
      return "nearly every piece";
    }
    if (chance < HARDLY_ANY) {
      return "hardly any pieces";
    }
    long ten = Math.round(chance * 10);
    return ten == 1 ? "about 1 piece in 10" : "about " + ten + " pieces in 10";
  }

  private static String between(double low, double high) {
    long from = Math.round(low * 10);
    long to = Math.round(high * 10);
    return from == to
        ? "about " + from + " in 10"
        : "it may be " + from + " to " + to + " in 10";
  }

  String next(NextBake next, BakeWindow window) {
    if (next.settles().isEmpty()) {
      boolean heat =
          window.onMap().stream()
              .noneMatch(p -> Math.abs(p.ovenCelsius().orElse(0) - next.celsius()) < 1);
      boolean time =
          window.onMap().stream()
              .noneMatch(p -> Math.abs(p.minutes().orElse(0) - next.minutes()) < 0.5);
      return heat && time
          ? "Brings in another heat and another time."
          : heat
              ? "Brings in another heat."
              : time ? "Brings in another time." : "Brings in the two together.";
    }
    NextBake.Settled settled = next.settles().get();
    return "Tells most about “" + settled.limit().text(units) + "”: there "
        + pieces(settled.chance()) + " keep" + (settled.chance() > NEARLY_ALL ? "s" : "") + " it, "
        + between(settled.low(), settled.high()) + ". It takes away about "
        + percent(settled.share()) + " of what is uncertain about the window.";
  }

  private static String percent(double share) {
    double percent = share * 100;
    return (percent < 1 ? "less than 1" : Long.toString(Math.round(percent))) + " %";
  }

  /** What time and heat do, as far as it is clear. */
  String effects(LimitFit fit) {
    boolean fahrenheit = units.degreeUnit().equals("°F");
    String hotter = fahrenheit ? "20 °F hotter" : "10 °C hotter";
    double step = fahrenheit ? FAHRENHEIT_STEP / FAHRENHEIT_PER_CELSIUS / 10 : 1;
    String more = axis == Axis.MINUTES ? "a fifth more time" : "a fifth more dose";
    if (fit.limit() instanceof WindowLimit.Measured measured) {
      return first(more) + ": " + moved(measured.measure(), fit.perFifthMoreTime(), 1) + "; "
          + hotter + ": " + moved(measured.measure(), fit.perTenDegrees(), step) + ". Like pieces differ by "
          + scatter(measured.measure(), fit.noise().orElse(0)) + ".";
    }
    return first(more) + ": " + often(fit.perFifthMoreTime()) + "; " + hotter + ": "
        + often(fit.perTenDegrees()) + ".";
  }

  private static String first(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private String moved(Measure measure, LimitFit.Effect effect, double step) {
    if (isUnclear(effect)) {
      return "no clear effect";
    }
    double value = effect.value() * step;
    String number =
        switch (measure) {
          case CORE ->
              FigureText.signed(tidy(value * (inFahrenheit() ? FAHRENHEIT_PER_CELSIUS : 1)))
                  + " " + units.degreeUnit();
          case CRUST -> FigureText.signed(tidy(value)) + " shades";
          case COOKING_VALUE -> FigureText.signed(tidy(100 * Math.expm1(value))) + " %";
        };
    return number + (isClear(effect) ? "" : ", probably");
  }

  private String scatter(Measure measure, double noise) {
    return switch (measure) {
      case CORE ->
          "±" + FigureText.number(tidy(noise * (inFahrenheit() ? FAHRENHEIT_PER_CELSIUS : 1)))
              + " " + units.degreeUnit();
      case CRUST -> "±" + FigureText.number(tidy(noise)) + " shades";
      case COOKING_VALUE -> "±" + FigureText.number(tidy(100 * noise)) + " %";
    };
  }

  private boolean inFahrenheit() {
    return units.degreeUnit().equals("°F");
  }

  /** Two figures are as much as such a slope is worth. */
  private static double tidy(double value) {
    return new BigDecimal(value).round(new MathContext(2)).doubleValue();
  }

  private static String often(LimitFit.Effect effect) {
    if (isUnclear(effect)) {
      return "no clear effect";
    }
    return (isClear(effect) ? "clearly " : "probably ")
        + (effect.value() > 0 ? "more often" : "less often");
  }

  private static boolean isUnclear(LimitFit.Effect effect) {
    return Math.abs(effect.value()) < effect.deviation();
  }

  private static boolean isClear(LimitFit.Effect effect) {
    return Math.abs(effect.value()) >= 2 * effect.deviation();
  }

  /** How it was worked out. */
  List<String> model(ThermalDose dose) {
    String time = axis == Axis.MINUTES ? "time" : "dose";
    return List.of(
        "Each limit has three numbers: a middle, what a fifth more " + time + " does, and what a"
            + " hotter oven does. More would follow the scatter of so few pieces. On such a map,"
            + " with " + time + " on a logarithmic scale, settings that bake alike lie on lines.",
        "Core and crust are fitted by Bayesian linear regression (normal-inverse-gamma prior, a"
            + " ridge towards no effect), findings by logistic regression with normal priors"
            + " (Laplace). Where pieces are few the prior keeps the answer modest: it starts from"
            + " no effect and gives way only to the bakes.",
        "The chance of a place is that of the next piece baked there, scatter and what is not known"
            + " of the fit included. Limits are taken as independent of each other at one setting;"
            + " since pieces that keep one mostly keep the others, the chance is rather too low.",
        "The ranges in tenths hold four times in five. Beyond the pieces the map is a guess.",
        "The pieces worth baking are those expected to narrow the window's edge most, each counted"
            + " as if the ones before it had been baked.",
        "A thermal dose is the sum of 10^((core − "
            + FigureText.number(units.inDegrees(dose.referenceCelsius())) + " "
            + units.degreeUnit() + ") ÷ "
            + FigureText.number(dose.zCelsius() * (inFahrenheit() ? FAHRENHEIT_PER_CELSIUS : 1))
            + " " + units.degreeUnit() + ") over the minutes between the first and the last logged"
            + " core temperature, by trapezoids. With 100 °C and 33 °C it is the cooking value,"
            + " from memory. Without a log it is unknown.");
  }
}
