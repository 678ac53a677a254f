package io.ovenmark.desk;

import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.window.Axis;
import io.ovenmark.window.OvenRange;
import io.ovenmark.window.ThermalDose;
import io.ovenmark.window.WindowLimit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A question about a bake window, read. */
record WindowQuestion(
    Optional<Choice> choice,
    List<WindowLimit> limits,
    Axis axis,
    Optional<double[]> oven,
    Optional<double[]> time,
    ThermalDose dose) {
  private static final int MOST_LIMITS = 12;
  private static final Pattern OVEN =
      Pattern.compile(
          "([0-9.]{1,6}) ?([°º]? ?[CFcf])? ?(?:to|-|–|\\.\\.) ?([0-9.]{1,6}) ?([°º]? ?[CFcf])");
  private static final Pattern TIME =
      Pattern.compile(
          "([0-9.]{1,6}) ?(?:min)? ?(?:to|-|–|\\.\\.) ?([0-9.]{1,6}) ?(?:min|minutes)?");

  /** Which pieces. */
  enum Choice {
    REVISION("this revision only"),
    DOUGH("all with the same dough"),
    ALL("all of this line of history");

    private final String words;

    Choice(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static WindowQuestion read(WindowOrder order) {
    List<WindowLimit> limits =
        Asked.read("limits", () -> order.limits().stream().map(WindowLimit::read).toList());
    if (limits.size() > MOST_LIMITS) {
      throw invalid(
          "limits",
          "There are " + limits.size() + " limits.",
          "State at most " + MOST_LIMITS + ".");
    }
    return new WindowQuestion(
        text(order.pieces())
            .map(text -> choice("pieces", text, Choice.DOUGH, Choice.values())),
        limits.stream().distinct().toList(),
        choice("along", order.along(), Axis.MINUTES, Axis.values()),
        text(order.oven()).map(WindowQuestion::oven),
        text(order.time()).map(WindowQuestion::time),
        dose(order));
  }

  /** The range of the map, when it was stated in full or in part. */
  Optional<OvenRange> range(OvenRange proposed, boolean fahrenheit) {
    if (oven.isEmpty() && time.isEmpty()) {
      return Optional.empty();
    }
    double[] heat =
        oven.orElse(new double[] {proposed.fromCelsius(), proposed.toCelsius()});
    double[] minutes = time.orElse(new double[] {proposed.from(), proposed.to()});
    return Optional.of(
        Asked.read(
            "oven",
            () -> OvenRange.of(heat[0], heat[1], minutes[0], minutes[1], fahrenheit)));
  }

  private static Optional<String> text(String text) {
    return Optional.ofNullable(text)
        .map(each -> each.replaceAll("[\\s\u00a0\u202f]+", " ").strip())
        .filter(each -> !each.isEmpty());
  }

  private static <T extends Enum<T>> T choice(String where, String asked, T usual, T[] values) {
    Optional<String> name = text(asked);
    if (name.isEmpty()) {
      return usual;
    }
    for (T value : values) {
      if (value.name().equalsIgnoreCase(name.get())) {
        return value;
      }
    }
    List<String> names =
        Arrays.stream(values)
            .map(value -> value.name().toLowerCase(Locale.ROOT))
            .toList();
    throw invalid(
        where,
        Quoting.quote(name.get()) + " is not one of the choices.",
        "Write " + String.join(" or ", names) + ".");
  }

  private static double[] oven(String text) {
    Matcher matcher = OVEN.matcher(text);
    if (!matcher.matches()) {
      throw invalid(
          "oven",
          "The oven's range " + Quoting.quote(text) + " is not understood.",
          "Write it as in 180 to 220 °C.");
    }
    String scale = matcher.group(4);
    String first = matcher.group(2) == null ? scale : matcher.group(2);
    return Asked.read(
        "oven",
        () -> rising(
            "oven",
            Temperature.parse(matcher.group(1) + first).celsius(),
            Temperature.parse(matcher.group(3) + scale).celsius()));
  }

  private static double[] time(String text) {
    Matcher matcher = TIME.matcher(text);
    if (!matcher.matches()) {
      throw invalid(
          "time",
          "The range of time " + Quoting.quote(text) + " is not understood.",
          "Write it as in 14 to 30 min.");
    }
    double from = number("time", matcher.group(1));
    double to = number("time", matcher.group(2));
    if (from < 1 || to > 2880) {
      throw invalid("time", "The range of time is out of range.", "Use 1 to 2880 min.");
    }
    return rising("time", from, to);
  }

  private static double[] rising(String where, double from, double to) {
    if (!(from < to)) {
      throw invalid(where, "The range is empty.", "Write the smaller value first.");
    }
    return new double[] {from, to};
  }

  private static ThermalDose dose(WindowOrder order) {
    double reference =
        text(order.reference())
            .map(text -> Asked.read("reference", () -> Temperature.parse(text)).celsius())
            .orElse(ThermalDose.COOKING.referenceCelsius());
    double z =
        text(order.z())
            .map(text -> number("z", text.replaceAll("(?i) ?°?C$", "")))
            .orElse(ThermalDose.COOKING.zCelsius());
    return Asked.read("z", () -> new ThermalDose(reference, z));
  }

  private static double number(String where, String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw invalid(
          where, Quoting.quote(text) + " is not a number.", "Write digits, such as 33.");
    }
  }

  private static Refusal invalid(String where, String sentence, String hint) {
    return new Refusal(Refusal.Reason.INVALID, where, sentence, hint);
  }
}
