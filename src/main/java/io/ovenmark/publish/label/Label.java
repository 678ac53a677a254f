package io.ovenmark.publish.label;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The figures of a formula as they would stand on a label. An aid, not an approval.
 *
 * <pre>{@code
 * Label label = Label.of(worksheet, LabelTerms.USUAL);
 * label.rows(Region.EUROPEAN_UNION).get(2).declared(Basis.BAKED_100_G)   → 14 g
 * }</pre>
 *
 * <p>A piece holds the same as dough and as baked, since only water leaves; its mass differs.
 */
public final class Label {
  /** What stands on every label here. */
  public static final String AID =
      "An aid for development, not an approved label. Figures, allergens and claims have to be"
          + " checked, by analysis where the law wants it, by whoever answers for the label; local"
          + " law and licensed practice decide.";

  /** The bases that a label states amounts for. */
  public static final List<Basis> BASES =
      List.of(Basis.PIECE, Basis.DOUGH_100_G, Basis.BAKED_100_G);

  private static final int MOST_NAMED = 6;
  private static final char FIRST_STRONG_ISOLATE = '\u2068';
  private static final char POP_ISOLATE = '\u2069';

  private final Worksheet sheet;
  private final LabelTerms terms;
  private final Loss loss;

  private Label(Worksheet sheet, LabelTerms terms, Loss loss) {
    this.sheet = sheet;
    this.terms = terms;
    this.loss = loss;
  }

  /**
   * Works a label out.
   *
   * @param measured the worksheet, with what was weighed
   * @param terms what was chosen
   * @return the label
   */
  public static Label of(Worksheet measured, LabelTerms terms) {
    Loss loss = Loss.of(measured, terms.lossPercent());
    return new Label(measured.with(loss.yield()), terms, loss);
  }

  /**
   * The worksheet that it rests on, with the loss on baking of this label.
   *
   * @return the worksheet
   */
  public Worksheet sheet() {
    return sheet;
  }

  /**
   * What was chosen.
   *
   * @return the terms
   */
  public LabelTerms terms() {
    return terms;
  }

  /**
   * What the oven takes.
   *
   * @return the loss on baking
   */
  public Loss loss() {
    return loss;
  }

  /**
   * The rule by which energy is worked out: the one chosen; else in the European Union the factors
   * of Annex XIV, and in the United States the notebook's rule, unless that is the Union's.
   *
   * @param region whose label
   * @return the rule
   */
  public EnergyRule energy(Region region) {
    if (terms.energy().isPresent()) {
      return terms.energy().get();
    }
    EnergyRule ofNotebook = sheet.policy().energy();
    if (region == Region.EUROPEAN_UNION) {
      return EnergyRule.EU_FACTORS;
    }
    return ofNotebook == EnergyRule.EU_FACTORS ? EnergyRule.US_FACTORS : ofNotebook;
  }

  /**
   * What the rule for energy rests on in a region, and whether the law there knows it.
   *
   * @param region whose label
   * @return a sentence
   */
  public String energyInWords(Region region) {
    boolean union = region == Region.EUROPEAN_UNION;
    return switch (energy(region)) {
      case FOODS ->
          "Energy as the foods state it. "
              + (union
                  ? "Regulation (EU) No 1169/2011, Article 31(1), wants the factors of its Annex"
                      + " XIV instead. Kilojoules = kcal × 4.184."
                  : "21 CFR 101.9(c)(1)(i)(A) allows specific Atwater factors, as USDA uses them,"
                      + " not every maker’s own figure.");
      case US_FACTORS ->
          "Energy by the factors of 21 CFR 101.9(c)(1)(i): protein 4, fat 9, carbohydrate 4,"
              + " soluble fibre 2, insoluble fibre 0, each sugar alcohol its own, allulose 0.4 (FDA"
              + " guidance, 2020) kcal/g."
              + (union
                  ? " Regulation (EU) No 1169/2011, Article 31(1), wants the factors of its Annex"
                      + " XIV instead. Kilojoules = kcal × 4.184."
                  : "");
      case EU_FACTORS ->
          "Energy by the factors of Regulation (EU) No 1169/2011, Annex XIV: protein 4 (17), fat 9"
              + " (37), carbohydrate 4 (17), fibre 2 (8), polyols 2.4 (10), erythritol 0, alcohol 7"
              + " (29) kcal (kJ) a gram; kJ and kcal are two sums."
              + (union ? "" : " 21 CFR 101.9(c)(1)(i) does not name these factors.");
    };
  }

  /**
   * An amount.
   *
   * @param component of what
   * @param region whose rule for energy
   * @return for each basis, possibly known in part
   */
  public Map<Basis, Quantity> amounts(Component component, Region region) {
    EnergyRule rule = energy(region);
    return sheet.sum(food -> component.per100g(food, rule));
  }

  /**
   * The table of a region. A line for polyols is left out where there are none.
   *
   * @param region whose
   * @return its rows in order
   */
  public List<LabelRow> rows(Region region) {
    List<LabelRow> rows = new ArrayList<>();
    for (LabelLine line : LabelLine.of(region)) {
      Map<Basis, Quantity> amounts = amounts(line.component(), region);
      boolean none = amounts.get(Basis.DOUGH_100_G).equals(Quantity.ZERO);
      if (line.component() != Component.POLYOLS || !none) {
        rows.add(new LabelRow(line, amounts, missing(line.component(), region), note(line)));
      }
    }
    return rows;
  }

  /**
   * The allergens of the foods.
   *
   * @param region whose law
   * @return what the foods tell
   */
  public AllergenStatement allergens(Region region) {
    return AllergenStatement.of(sheet, region);
  }

  /**
   * The claims that the figures would meet or miss.
   *
   * @param region whose law
   * @return every claim that figures can judge, in a fixed order
   */
  public List<Claim> claims(Region region) {
    return region == Region.UNITED_STATES
        ? UnitedStatesClaims.of(this)
        : EuropeanClaims.of(this);
  }

  /**
   * What is said of food and cannot be judged by figures.
   *
   * @param region whose law
   * @return what has no definition, or rests on more than figures
   */
  public static List<Claim.Unjudged> unjudged(Region region) {
    return region == Region.UNITED_STATES
        ? UnitedStatesClaims.unjudged()
        : EuropeanClaims.unjudged();
  }

  /**
   * What else a reader of a region's table should know.
   *
   * @param region whose
   * @return sentences
   */
  public List<String> notes(Region region) {
    if (region == Region.UNITED_STATES) {
      return List.of(
          "Analysed against declared (21 CFR 101.9(g)(4) and (5), second hand): protein, fibre,"
              + " vitamins and minerals that are naturally in it at least 80 %; calories, fat,"
              + " saturated fat, cholesterol, sodium and sugars at most 120 %.",
          "Claims are judged by unrounded amounts of the food as baked; a claim has further"
              + " conditions of form and place (21 CFR 101.13).",
          UnitedStatesClaims.disclosure(this));
    }
    return List.of(
        "The order is that of Annex XV; amounts are obligatory for 100 g, those of a piece come"
            + " beside them (Regulation (EU) No 1169/2011, Articles 32 and 33, from memory).",
        "Claims are judged by unrounded amounts of 100 g as baked. Whoever claims fibre or another"
            + " nutrient declares its amount (Regulation (EC) No 1924/2006, Article 7).");
  }

  /**
   * How a piece stands to the reference amount of the United States.
   *
   * @return a sentence
   */
  public String servingInWords() {
    if (terms.reference().isEmpty()) {
      return "No reference amount is chosen, by which the United States judge servings and claims ("
          + ReferenceAmount.SOURCE.inWords() + "); a piece counts as a serving here.";
    }
    ReferenceAmount reference = terms.reference().get();
    Quantity share = sheet.bakedPerPieceGrams().times(100).dividedBy(reference.grams());
    return "A piece as baked is " + FigureText.of(share, "%") + " of the reference amount of "
        + FigureText.number(reference.grams()) + " g (" + reference.words() + "; "
        + (reference.key().equals("own") ? "21 CFR 101.12" : ReferenceAmount.SOURCE.inWords())
        + "). One unit is a serving from 67 % to below 200 % (21 CFR 101.9(b)(2)(i), from"
        + " memory); a piece counts as a serving here.";
  }

  /** What stands in the way of an amount, food by food. */
  private List<String> missing(Component component, Region region) {
    EnergyRule rule = energy(region);
    List<String> missing = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    for (WorksheetLine line : sheet.lines()) {
      if (line.grams().equals(Quantity.ZERO)) {
        continue;
      }
      if (line.food().isEmpty()) {
        missing.add("the pantry has no " + line.name());
      } else if (!line.resolved().isResolved()) {
        missing.add("the mass of " + line.name() + " is not known");
      } else if (!component.per100g(line.food().get(), rule).isKnown()
          && !silent.contains(line.name())) {
        silent.add(line.name());
      }
    }
    if (!silent.isEmpty()) {
      String why = why(component, rule);
      missing.add(
          why + (why.endsWith("sugars") ? " are" : " is") + " not known of " + named(silent));
    }
    return missing;
  }

  private static String why(Component component, EnergyRule rule) {
    boolean energy = component == Component.ENERGY_KCAL || component == Component.ENERGY_KJ;
    return energy && rule != EnergyRule.FOODS
        ? "a figure that the " + rule.key() + " need"
        : component.words();
  }

  private static String named(List<String> all) {
    List<String> names = all.stream().map(Label::isolated).toList();
    int more = names.size() - MOST_NAMED;
    return more < 2
        ? String.join("; ", names)
        : String.join("; ", names.subList(0, MOST_NAMED)) + "; and " + more + " more foods";
  }

  /** A name that is written from right to left must not turn the names beside it around. */
  private static String isolated(String name) {
    boolean turned =
        name.codePoints()
            .map(Character::getDirectionality)
            .anyMatch(
                way ->
                    way == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
    return turned ? FIRST_STRONG_ISOLATE + name + POP_ISOLATE : name;
  }

  private Optional<String> note(LabelLine line) {
    Quantity allulose = amounts(Component.ALLULOSE, Region.UNITED_STATES).get(Basis.DOUGH_100_G);
    boolean sweet = allulose.low() > 0;
    return switch (line.component()) {
      case TOTAL_CARBOHYDRATE ->
          Optional.of(
              "By difference: fibre" + (sweet ? ", sugar alcohol and allulose are" : " is")
                  + " part of it.");
      case AVAILABLE_CARBOHYDRATE ->
          Optional.of("Without fibre (Regulation (EU) No 1169/2011, Annex I).");
      case SUGARS ->
          sweet
              ? Optional.of("Allulose is left out (FDA guidance, 2020).")
              : Optional.empty();
      case SUGARS_WITH_ALLULOSE ->
          sweet
              ? Optional.of(
                  "With allulose: Annex I counts every monosaccharide. Whether allulose may be"
                      + " sold in the Union at all has to be asked (novel food, from memory).")
              : Optional.empty();
      case PROTEIN ->
          line.dailyValue()
              .map(
                  value ->
                      "No % Daily Value: it needs the quality of the protein (21 CFR"
                          + " 101.9(c)(7)(ii)).");
      case SALT -> Optional.of("Sodium × 2.5 (Regulation (EU) No 1169/2011, Annex I).");
      default -> Optional.empty();
    };
  }
}
