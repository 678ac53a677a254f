package io.ovenmark.publish.label;

import java.math.BigDecimal;

/**
 * The rules by which amounts are rounded for a label. Half way goes up.
 *
 * <pre>{@code
 * Rounding.US_FAT.declare(4.75).text()       → 5 g
 * Rounding.US_SODIUM.declare(137.5).text()   → 140 mg
 * }</pre>
 *
 * <p>Sources: 21 CFR 101.9(c), read in FDA, <i>A Food Labeling Guide</i>, Appendix H; European
 * Commission, <i>Guidance document on tolerances</i>, December 2012, Table 4, second hand. Where
 * both allow a small amount to be called 0, the words that say "less than" are used, which are
 * allowed too. Where two of their rows touch (5 mg of cholesterol; 0.5 g and 0.1 g in the
 * Union) the amount is stated as it is, so that an amount once rounded stays as it is. One step of
 * the guidance is not so: salt of 0.013 g becomes 0.01 g, which is itself among the amounts that
 * count as less.
 */
public enum Rounding {
  /** Energy, United States. */
  US_ENERGY(
      "kcal",
      "below 5 kcal: 0; up to 50 kcal: nearest 5; above: nearest 10",
      Source.read("21 CFR 101.9(c)(1)")),
  /** Fat, saturated and trans fat, United States. */
  US_FAT(
      "g", "below 0.5 g: 0; below 5 g: nearest 0.5 g; from 5 g: nearest 1 g",
      Source.read("21 CFR 101.9(c)(2)")),
  /** Cholesterol, United States. */
  US_CHOLESTEROL(
      "mg", "below 2 mg: 0; below 5 mg: “less than 5 mg”; from 5 mg: nearest 5 mg",
      Source.read("21 CFR 101.9(c)(3)")),
  /** Sodium, United States. */
  US_SODIUM(
      "mg", "below 5 mg: 0; up to 140 mg: nearest 5 mg; above: nearest 10 mg",
      Source.read("21 CFR 101.9(c)(4)")),
  /** Carbohydrate, fibre, sugars and sugar alcohols, United States. */
  US_CARBOHYDRATE(
      "g", "below 0.5 g: 0; below 1 g: “less than 1 g”; from 1 g: nearest 1 g",
      Source.read("21 CFR 101.9(c)(6)")),
  /** Protein, United States. */
  US_PROTEIN(
      "g", "below 0.5 g: 0; below 1 g: “less than 1 g”; from 1 g: nearest 1 g",
      Source.read("21 CFR 101.9(c)(7)")),
  /** Vitamin D, United States. */
  US_VITAMIN_D(
      "µg", "nearest 0.1 µg", Source.fromMemory("FDA guidance to 21 CFR 101.9(c)(8)(iii)")),
  /** Calcium and potassium, United States. */
  US_MINERAL(
      "mg", "nearest 10 mg", Source.fromMemory("FDA guidance to 21 CFR 101.9(c)(8)(iii)")),
  /** Iron, United States. */
  US_IRON("mg", "nearest 0.1 mg", Source.fromMemory("FDA guidance to 21 CFR 101.9(c)(8)(iii)")),
  /** Energy in kilojoules, European Union. */
  EU_KILOJOULES("kJ", "nearest 1 kJ", Law.GUIDANCE),
  /** Energy in kilocalories, European Union. */
  EU_KILOCALORIES("kcal", "nearest 1 kcal", Law.GUIDANCE),
  /** Fat, carbohydrate, sugars, polyols, fibre and protein, European Union. */
  EU_GRAMS(
      "g", "below 0.5 g: “< 0.5 g” (or 0 g); below 10 g: nearest 0.1 g; from 10 g: nearest 1 g",
      Law.GUIDANCE),
  /** Saturates, European Union. */
  EU_SATURATES(
      "g", "below 0.1 g: “< 0.1 g” (or 0 g); below 10 g: nearest 0.1 g; from 10 g: nearest 1 g",
      Law.GUIDANCE),
  /** Salt, European Union. */
  EU_SALT(
      "g",
      "up to 0.0125 g: “< 0.01 g” (or 0 g); below 1 g: nearest 0.01 g; from 1 g: nearest 0.1 g",
      Law.GUIDANCE);

  private static final class Law {
    static final Source GUIDANCE =
        Source.secondHand("EU guidance on tolerances, December 2012, Table 4");
  }

  private final String unit;
  private final String rule;
  private final Source source;

  Rounding(String unit, String rule, Source source) {
    this.unit = unit;
    this.rule = rule;
    this.source = source;
  }

  /**
   * The unit of the amounts.
   *
   * @return kcal, kJ, g, mg or µg
   */
  public String unit() {
    return unit;
  }

  /**
   * The rule in words.
   *
   * @return such as {@code nearest 10 mg}
   */
  public String rule() {
    return rule;
  }

  /**
   * Where the rule comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Rounds an amount.
   *
   * @param amount in this rule's unit, not negative
   * @return what a label would state
   * @throws IllegalArgumentException when the amount is negative or not finite
   */
  public Declared declare(double amount) {
    if (!(amount >= 0) || Double.isInfinite(amount)) {
      throw new IllegalArgumentException("An amount on a label is 0 or more, was " + amount);
    }
    BigDecimal exact = Exact.of(amount);
    return switch (this) {
      case US_ENERGY -> stated(exact, "5", Exact.atMost(exact, "50") ? "5" : "10");
      case US_FAT -> stated(exact, "0.5", Exact.below(exact, "5") ? "0.5" : "1");
      case US_CHOLESTEROL ->
          Exact.below(exact, "5") && !Exact.below(exact, "2")
              ? Declared.lessThan("5", "less than 5 mg")
              : stated(exact, "2", "5");
      case US_SODIUM -> stated(exact, "5", Exact.atMost(exact, "140") ? "5" : "10");
      case US_CARBOHYDRATE, US_PROTEIN ->
          Exact.below(exact, "1") && !Exact.below(exact, "0.5")
              ? Declared.lessThan("1", "less than 1 g")
              : stated(exact, "0.5", "1");
      case US_MINERAL -> stated(exact, "0", "10");
      case US_VITAMIN_D, US_IRON -> stated(exact, "0", "0.1");
      case EU_KILOJOULES, EU_KILOCALORIES -> stated(exact, "0", "1");
      case EU_GRAMS -> european(exact, "0.5", true, "10", "0.1", "1");
      case EU_SATURATES -> european(exact, "0.1", true, "10", "0.1", "1");
      case EU_SALT -> european(exact, "0.0125", false, "1", "0.01", "0.1");
    };
  }

  private Declared stated(BigDecimal exact, String zeroBelow, String step) {
    BigDecimal number =
        Exact.below(exact, zeroBelow) ? BigDecimal.ZERO : Exact.nearest(exact, step);
    BigDecimal plain = number.stripTrailingZeros();
    return Declared.number(plain, plain.toPlainString(), unit);
  }

  /** Fine steps below an edge, coarse ones from it; as many decimals as the step has. */
  private Declared european(
      BigDecimal exact, String least, boolean leastIsStated, String edge, String fine,
      String coarse) {
    if (exact.signum() == 0) {
      return Declared.number(BigDecimal.ZERO, "0", unit);
    }
    if (leastIsStated ? Exact.below(exact, least) : Exact.atMost(exact, least)) {
      String shown = this == EU_SALT ? "0.01" : least;
      return Declared.lessThan(shown, "< " + shown + " " + unit);
    }
    BigDecimal finely = Exact.nearest(exact, fine);
    BigDecimal number = Exact.below(finely, edge) ? finely : Exact.nearest(exact, coarse);
    return Declared.number(number.stripTrailingZeros(), number.toPlainString(), unit);
  }
}
