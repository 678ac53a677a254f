package io.ovenmark.pantry;

import io.ovenmark.json.Problem;
import io.ovenmark.pantry.LabelFood.Figure;
import io.ovenmark.pantry.LabelFood.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Finds what cannot be right on a package label. Printed grams are taken as rounded to half a gram
 * either way and energy to 10 kcal, which is the coarsest that 21 CFR 101.9(c) allows above small
 * amounts (from memory).
 */
final class LabelChecks {
  private static final double ROUNDING = 0.5;
  private static final double ENERGY_ROUNDING = 10;
  private static final double GREATEST_SERVING = 5_000;

  /** Lowest and highest energy of a gram that the published factors reach, with a wide margin. */
  private static final double LOW = 0.85;

  private static final double HIGH = 1.2;

  private final LabelFood label;
  private final List<Problem> problems = new ArrayList<>();

  private LabelChecks(LabelFood label) {
    this.label = label;
  }

  static List<Problem> of(LabelFood label) {
    LabelChecks checks = new LabelChecks(label);
    checks.basics();
    if (checks.problems.isEmpty()) {
      checks.sums();
      checks.energy();
      checks.salt();
    }
    return List.copyOf(checks.problems);
  }

  private void basics() {
    if (label.name().isBlank()) {
      add("name", "The food has no name.", "Give it one.");
    }
    double serving = label.servingGrams();
    if (!(serving > 0) || serving > GREATEST_SERVING) {
      add(
          "serving_g",
          "A serving of " + show(serving) + " g cannot be.",
          "Give the grams of a serving, above 0 and at most 5000, or the figures per 100 g.");
    }
    for (Map.Entry<Figure, Double> entry : label.figures().entrySet()) {
      double value = entry.getValue();
      if (!(value >= 0) || Double.isInfinite(value)) {
        add(
            entry.getKey().key(),
            "The figure " + show(value) + " is not a number of 0 or more.",
            "Write what the label says, or leave it out when it is not there.");
      }
    }
  }

  private void sums() {
    double serving = label.servingGrams();
    for (Map.Entry<Figure, Double> entry : label.figures().entrySet()) {
      String key = entry.getKey().key();
      double unit = key.endsWith("_mg") ? 1000 : key.endsWith("_ug") ? 1_000_000 : 1;
      if (!key.startsWith("energy") && entry.getValue() / unit > serving + ROUNDING) {
        add(
            key,
            "There is more of it (" + show(entry.getValue() / unit) + " g) than the "
                + show(serving) + " g of food.",
            "Check the figure and whether it is per serving or per 100 g.");
      }
    }
    double whole =
        value(Figure.PROTEIN)
            + value(Figure.FAT)
            + label.carbohydrateByDifference().orElse(value(Figure.CARBOHYDRATE))
            + value(Figure.ALCOHOL)
            + value(Figure.SALT);
    if (whole > serving + 3 * ROUNDING) {
      add(
          "",
          "Protein, fat and carbohydrate add up to " + show(whole) + " g in " + show(serving)
              + " g of food.",
          label.panel() == Panel.EUROPEAN_UNION
              ? "Check them; on a US label the carbohydrate already includes the fibre."
              : "Check them and whether they are per serving or per 100 g.");
    }
    part(Figure.SATURATED_FAT, Figure.FAT);
    part(Figure.TRANS_FAT, Figure.FAT);
    saturatedAndTrans();
    part(Figure.SUGARS, Figure.CARBOHYDRATE);
    part(Figure.ADDED_SUGARS, Figure.SUGARS);
    part(Figure.POLYOLS, Figure.CARBOHYDRATE);
    part(Figure.SOLUBLE_FIBRE, Figure.FIBRE);
    if (label.panel() == Panel.UNITED_STATES) {
      part(Figure.FIBRE, Figure.CARBOHYDRATE);
      part(Figure.ALLULOSE, Figure.CARBOHYDRATE);
    }
  }

  private void part(Figure part, Figure whole) {
    if (label.figures().containsKey(part)
        && label.figures().containsKey(whole)
        && value(part) > value(whole) + 2 * ROUNDING) {
      String remedy =
          part == Figure.FIBRE
              ? "Check them; a label whose carbohydrate leaves fibre out follows the EU's rules."
              : "Check the two figures.";
      add(
          part.key(),
          "It is more than the " + whole.key() + " that it is a part of.",
          remedy);
    }
  }

  private void saturatedAndTrans() {
    Map<Figure, Double> figures = label.figures();
    double both = value(Figure.SATURATED_FAT) + value(Figure.TRANS_FAT);
    boolean all =
        figures.containsKey(Figure.SATURATED_FAT)
            && figures.containsKey(Figure.TRANS_FAT)
            && figures.containsKey(Figure.FAT);
    if (all
        && value(Figure.TRANS_FAT) <= value(Figure.FAT) + 2 * ROUNDING
        && value(Figure.SATURATED_FAT) <= value(Figure.FAT) + 2 * ROUNDING
        && both > value(Figure.FAT) + 3 * ROUNDING) {
      add(
          Figure.TRANS_FAT.key(),
          "Saturated and trans fat are " + show(both) + " g of "
              + show(value(Figure.FAT)) + " g fat.",
          "Check the three figures.");
    }
  }

  private void energy() {
    Map<Figure, Double> figures = label.figures();
    boolean kilocalories = figures.containsKey(Figure.ENERGY_KCAL);
    boolean kilojoules = figures.containsKey(Figure.ENERGY_KJ);
    if (kilocalories && kilojoules && value(Figure.ENERGY_KCAL) > 20) {
      double ratio = value(Figure.ENERGY_KJ) / value(Figure.ENERGY_KCAL);
      if (ratio < 3.7 || ratio > 4.7) {
        add(
            Figure.ENERGY_KJ.key(),
            show(value(Figure.ENERGY_KJ)) + " kJ and " + show(value(Figure.ENERGY_KCAL))
                + " kcal cannot both be right.",
            "1 kcal is about 4.2 kJ; check both.");
      }
    }
    boolean macros =
        figures.containsKey(Figure.PROTEIN)
            && figures.containsKey(Figure.FAT)
            && figures.containsKey(Figure.CARBOHYDRATE);
    if (!macros || !(kilocalories || kilojoules)) {
      return;
    }
    double energy =
        kilocalories ? value(Figure.ENERGY_KCAL) : value(Figure.ENERGY_KJ) / 4.184;
    double least =
        LOW * (4 * less(Figure.PROTEIN) + 9 * less(Figure.FAT) + 4 * less(Figure.SUGARS))
            - ENERGY_ROUNDING;
    double fibre = label.panel() == Panel.EUROPEAN_UNION ? 2 * mostFibre() : 0;
    double most =
        HIGH * (4 * more(Figure.PROTEIN) + 9 * more(Figure.FAT) + 4 * more(Figure.CARBOHYDRATE))
            + HIGH * (fibre + 7 * value(Figure.ALCOHOL))
            + ENERGY_ROUNDING;
    if (energy < least || energy > most) {
      add(
          kilocalories ? Figure.ENERGY_KCAL.key() : Figure.ENERGY_KJ.key(),
          "The energy " + show(Math.round(energy)) + " kcal does not go with the protein, fat and"
              + " carbohydrate, which give " + show(Math.max(0, Math.ceil(least))) + " to "
              + show(Math.floor(most)) + " kcal.",
          "Check the figures, and that kilojoules were not entered as kilocalories.");
    }
  }

  private void salt() {
    Map<Figure, Double> figures = label.figures();
    if (figures.containsKey(Figure.SALT) && figures.containsKey(Figure.SODIUM)) {
      double fromSodium = value(Figure.SODIUM) * 2.5 / 1000;
      if (Math.abs(fromSodium - value(Figure.SALT)) > 0.1 + 0.1 * value(Figure.SALT)) {
        add(
            Figure.SALT.key(),
            "The salt does not go with the sodium, which makes " + show(fromSodium) + " g of salt.",
            "Salt is sodium times 2.5; give one of the two.");
      }
    }
  }

  /** Fibre that is not stated may be all that protein, fat and carbohydrate leave. */
  private double mostFibre() {
    double rest =
        label.servingGrams()
            - value(Figure.PROTEIN)
            - value(Figure.FAT)
            - value(Figure.CARBOHYDRATE);
    return label.figures().containsKey(Figure.FIBRE) ? more(Figure.FIBRE) : Math.max(0, rest);
  }

  private double less(Figure figure) {
    return Math.max(0, value(figure) - ROUNDING);
  }

  private double more(Figure figure) {
    return value(figure) + (label.figures().containsKey(figure) ? ROUNDING : 0);
  }

  private double value(Figure figure) {
    return label.figures().getOrDefault(figure, 0.0);
  }

  private void add(String field, String message, String hint) {
    problems.add(LabelFood.problem(field, message, hint));
  }

  private static String show(double value) {
    return Double.isFinite(value)
        ? HouseholdNames.number(Math.round(value * 1000) / 1000.0)
        : Double.toString(value);
  }
}
