package io.ovenmark.effect;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says effects in plain words, in the units of the reader. */
public final class EffectSentences {
  private static final List<String> NUMBERS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");
  private static final int FIGURES = 2;
  private static final int MOST_NAMED = 3;

  private final ShownUnits units;

  /**
   * Sentences for a reader.
   *
   * @param units how masses and temperatures are stated
   */
  public EffectSentences(ShownUnits units) {
    this.units = units;
  }

  /**
   * What the model is, in a few words.
   *
   * @return such as {@code a linear model with a chance part for each bake …}
   */
  public static String model() {
    return "A straight-line model with a chance part for each bake and a Bayesian prior that draws"
        + " effects towards zero (a mixed ridge regression), averaged over how strong both are."
        + " Intervals hold the effect with 90 % probability.";
  }

  /**
   * Why that model.
   *
   * @return a sentence or two
   */
  public static String why() {
    return "A formula has few bakes and many changes, and the pieces of one tray share its dough,"
        + " oven and day. So a tray does not count as so many bakes, and what the bakes cannot"
        + " tell apart is shared out rather than credited to one change by luck.";
  }

  /**
   * What it cannot tell.
   *
   * @return sentences
   */
  public static List<String> cannot() {
    return List.of(
        "What went together is not proof of a cause; a bake in which only one thing is changed is"
            + " the test.",
        "Changes that always came together have one effect, which is not split between them.",
        "Whatever was not noted, such as the room, the batch of a food or the hand, counts as"
            + " chance.",
        "A best point between too little and too much does not show, as effects are straight"
            + " lines; nor does a change that matters only beside another.",
        "Findings are taken as so many pieces in 100 by the same straight lines, so an interval may"
            + " reach beyond what is possible.");
  }

  /**
   * The change that an effect is stated for.
   *
   * @param effect the effect
   * @return such as {@code 10 °C}, {@code 0.05 of liquid ratio}; empty for something that is so or
   *     not
   */
  public String per(Effect effect) {
    return switch (effect.kind()) {
      case "liquid_ratio" -> FigureText.number(effect.perAmount()) + " of liquid ratio";
      case "dough_moisture" -> FigureText.number(effect.perAmount()) + " point of dough moisture";
      case "oven_temperature" -> inCelsius() ? "10 °C" : FigureText.number(degrees(10)) + " °F";
      case "line", "watery_line", "dough_per_piece" ->
          units.mass(Quantity.known(effect.perAmount()));
      default ->
          effect.eitherOr() ? "" : FigureText.number(effect.perAmount()) + " " + effect.perUnit();
    };
  }

  private boolean inCelsius() {
    return units.degreeUnit().equals("°C");
  }

  /** A difference of degrees Celsius in the reader's degrees. */
  private double degrees(double difference) {
    return units.inDegrees(difference) - units.inDegrees(0);
  }

  /**
   * The range in which a change was tried.
   *
   * @param effect the effect
   * @return such as {@code 190 °C to 205 °C}; empty for something that is so or not
   */
  public String tried(Effect effect) {
    return switch (effect.kind()) {
      case "oven_temperature" ->
          units.heat(Temperature.celsius(effect.least()))
              + " to "
              + units.heat(Temperature.celsius(effect.most()));
      case "line", "watery_line", "dough_per_piece" ->
          units.mass(Quantity.known(effect.least()))
              + " to "
              + units.mass(Quantity.known(effect.most()));
      default ->
          effect.eitherOr()
              ? ""
              : (FigureText.number(effect.least()) + " to " + FigureText.number(effect.most()) + " "
                      + effect.perUnit())
                  .strip();
    };
  }

  /**
   * An effect in the outcome's unit.
   *
   * @param outcome the outcome
   * @param value the effect
   * @return such as {@code −3.1 mm} or {@code +12 of 100 pieces}
   */
  public String signed(Outcome outcome, double value) {
    return number(outcome, value) + unit(outcome);
  }

  /**
   * The same without the unit.
   *
   * @param outcome the outcome
   * @param value the effect
   * @return such as {@code −3.1}
   */
  public String number(Outcome outcome, double value) {
    String text = plain(Math.abs(shown(outcome, value)));
    String sign = text.equals("0") ? "" : value < 0 ? FigureText.MINUS : "+";
    return sign + text;
  }

  private double shown(Outcome outcome, double value) {
    return outcome.kind() == Outcome.Kind.CORE ? degrees(value) : value;
  }

  private String unit(Outcome outcome) {
    return switch (outcome.kind()) {
      case HEIGHT, WIDTH -> " mm";
      case LOSS -> " points";
      case CORE -> " " + units.degreeUnit();
      case CRUST -> " shades";
      case LIKING -> " points";
      case SPREAD -> "";
      case FINDING -> " of 100 pieces";
    };
  }

  /** Two significant figures, which is more than such effects are known to. */
  private static String plain(double value) {
    return value == 0
        ? "0"
        : FigureText.number(
            new BigDecimal(value).round(new MathContext(FIGURES, RoundingMode.HALF_UP))
                .doubleValue());
  }

  /**
   * The change going up, or being so, as a sentence begins.
   *
   * @param effect the effect
   * @return such as {@code Wetter dough} or {@code More psyllium husk}
   */
  public static String change(Effect effect) {
    return switch (effect.kind()) {
      case "liquid_ratio" -> "Wetter dough";
      case "dough_moisture" -> "Moister dough";
      case "oven_temperature" -> "A hotter oven";
      case "oven_time" -> "More time in the oven";
      case "dough_per_piece" -> "Bigger pieces";
      case "line", "watery_line" -> "More " + effect.label();
      default -> capital(effect.label());
    };
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String towards(Outcome outcome, boolean more) {
    return switch (outcome.kind()) {
      case HEIGHT -> more ? "higher pieces" : "flatter pieces";
      case WIDTH -> more ? "wider pieces" : "narrower pieces";
      case SPREAD -> more ? "more spread" : "less spread";
      case LOSS -> more ? "more loss on baking" : "less loss on baking";
      case CORE -> more ? "a hotter core" : "a cooler core";
      case CRUST -> more ? "a darker crust" : "a paler crust";
      case LIKING -> more ? "better liking" : "less liking";
      case FINDING -> "“" + outcome.label() + "” " + (more ? "more often" : "less often");
    };
  }

  /**
   * An effect in a sentence.
   *
   * @param outcome the outcome
   * @param effect the effect
   * @return such as {@code Wetter dough went with flatter pieces: about 3 mm less for each 0.05 of
   *     liquid ratio, between 1 and 5; changed alone twice of five times.}
   */
  public String sentence(Outcome outcome, Effect effect) {
    String what = change(effect);
    if (!effect.with().isEmpty()) {
      what += ", always together with " + listed(effect.with()) + ",";
    }
    String said =
        switch (effect.standing()) {
          case CLEAR ->
              what + " went with " + towards(outcome, effect.together().value() > 0) + ": about "
                  + amount(outcome, effect, effect.together());
          case ALONG ->
              what + " went along with " + towards(outcome, effect.byItself().value() > 0)
                  + ", by itself about " + amount(outcome, effect, effect.byItself())
                  + ", but that cannot be told from what else changed" + companions(effect);
          case OPEN ->
              what + " shows nothing certain: from "
                  + number(outcome, effect.together().low())
                  + " to "
                  + signed(outcome, effect.together().high())
                  + forEach(effect);
        };
    return said + "; " + alone(effect) + ".";
  }

  private String forEach(Effect effect) {
    return effect.eitherOr() ? "" : " for each " + per(effect);
  }

  /** {@code 3 mm less for each 10 °C, between 1 and 5}. */
  private String amount(Outcome outcome, Effect effect, Effect.Size size) {
    double near = Math.min(Math.abs(size.low()), Math.abs(size.high()));
    double far = Math.max(Math.abs(size.low()), Math.abs(size.high()));
    boolean counted = outcome.kind() == Outcome.Kind.FINDING;
    String more = size.value() > 0 ? " more" : counted ? " fewer" : " less";
    String text = plain(Math.abs(shown(outcome, size.value())));
    return (counted ? text + more + unit(outcome) : text + unit(outcome) + more)
        + forEach(effect)
        + ", between "
        + plain(Math.abs(shown(outcome, near)))
        + " and "
        + plain(Math.abs(shown(outcome, far)));
  }

  private static String companions(Effect effect) {
    return effect.companions().isEmpty()
        ? ""
        : " (" + listed(effect.companions().stream().map(Effect.Companion::label).toList()) + ")";
  }

  /**
   * How often it was changed alone.
   *
   * @param effect the effect
   * @return such as {@code changed alone twice of five times}
   */
  public static String alone(Effect effect) {
    int of = effect.steps().size();
    int alone = effect.alone();
    if (of == 0) {
      return "never changed by much from one bake to the next";
    }
    if (of == 1) {
      return alone == 1 ? "changed once, alone" : "changed once, never alone";
    }
    if (alone == 0) {
      return "changed " + times(of) + ", never alone";
    }
    return alone == of
        ? "changed " + times(of) + ", each time alone"
        : "changed alone " + times(alone).replace(" times", "") + " of " + word(of) + " times";
  }

  private static String times(int count) {
    return switch (count) {
      case 1 -> "once";
      case 2 -> "twice";
      default -> word(count) + " times";
    };
  }

  private static String word(int count) {
    return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
  }

  private static String listed(List<String> items) {
    if (items.size() > MOST_NAMED + 1) {
      return String.join(", ", items.subList(0, MOST_NAMED))
          + " and " + (items.size() - MOST_NAMED) + " more";
    }
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /**
   * What stands out of an outcome, or that nothing does.
   *
   * @param effects the outcome
   * @return a sentence
   */
  public String headline(OutcomeEffects effects) {
    if (effects.missing().isPresent()) {
      return effects.missing().get();
    }
    List<Effect> out =
        effects.effects().stream()
            .filter(effect -> effect.standing() == Effect.Standing.CLEAR)
            .toList();
    if (out.isEmpty()) {
      Effect nearest = effects.effects().get(0);
      return "No change can be told from the others and from chance yet. Nearest to it: "
          + uncapital(sentence(effects.outcome(), nearest));
    }
    String first = sentence(effects.outcome(), out.get(0));
    if (out.size() == 1) {
      return first;
    }
    List<String> others =
        out.stream()
            .skip(1)
            .limit(MOST_NAMED)
            .map(
                effect ->
                    uncapital(change(effect)) + " ("
                        + signed(effects.outcome(), effect.together().value())
                        + forEach(effect) + ")")
            .collect(Collectors.toCollection(ArrayList::new));
    int more = out.size() - 1 - MOST_NAMED;
    if (more > 0) {
      others.add(more + " more");
    }
    return first + " Also " + listed(others) + ".";
  }

  /**
   * All outcomes in a sentence or two.
   *
   * @param mattered the outcomes
   * @return what stands out most surely, or what is missing
   */
  public String summary(Mattered mattered) {
    if (mattered.pieces() == 0) {
      return "No bake with pieces is noted yet, so nothing can be told.";
    }
    if (mattered.outcomes().stream().allMatch(each -> each.missing().isPresent())) {
      int bakes = mattered.bakes();
      return "Too little is known to tell what mattered: "
          + (bakes < Mattered.LEAST_BAKES
              ? (bakes == 1 ? "there is one bake" : "there are " + word(bakes) + " bakes")
                  + ", and at least " + word(Mattered.LEAST_BAKES) + " are needed."
              : "no outcome is noted of at least " + word(Mattered.LEAST_BAKES) + " bakes.");
    }
    List<OutcomeEffects> told =
        mattered.outcomes().stream()
            .filter(each -> !each.effects().isEmpty())
            .filter(each -> each.effects().get(0).standing() == Effect.Standing.CLEAR)
            .toList();
    if (told.isEmpty()) {
      return "No change can be told from the others and from chance yet, for any outcome.";
    }
    OutcomeEffects first = told.get(0);
    return "Something stands out for "
        + listed(told.stream().map(each -> each.outcome().brief()).toList())
        + ". "
        + sentence(first.outcome(), first.effects().get(0));
  }

  private static String uncapital(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  /**
   * How many would stand out by luck.
   *
   * @param effects the outcome
   * @return a sentence; empty when nothing was looked at
   */
  public String multiplicity(OutcomeEffects effects) {
    int looked = effects.effects().size();
    if (looked == 0) {
      return "";
    }
    int chance = (int) Math.round(looked * 0.1);
    String many = looked == 1 ? "One change was" : capital(word(looked)) + " changes were";
    return many
        + " looked at; if none of them mattered, "
        + (chance == 0
            ? "one might still seem to by luck."
            : "up to " + word(chance) + " could still seem to by luck.");
  }
}
