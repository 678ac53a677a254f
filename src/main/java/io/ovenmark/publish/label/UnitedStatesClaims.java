package io.ovenmark.publish.label;

import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.label.Claim.Unjudged;
import io.ovenmark.publish.label.Condition.Measured;
import io.ovenmark.worksheet.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The nutrient content claims of 21 CFR 101.54 and 101.60 to 101.62, judged by the unrounded
 * figures of the reference amount, of 50 g where that is small, and for "free" also of the serving,
 * which here is a piece. Without a reference amount most cannot be told.
 */
final class UnitedStatesClaims {
  private static final double FAT_KCAL = 9;
  private static final double GOOD_SOURCE = 10;
  private static final double HIGH = 20;
  private static final String FREE = "in the reference amount and in a serving";

  private final Label label;
  private final List<Claim> claims = new ArrayList<>();

  private UnitedStatesClaims(Label label) {
    this.label = label;
  }

  static List<Claim> of(Label label) {
    UnitedStatesClaims judge = new UnitedStatesClaims(label);
    judge.energyAndSugars();
    judge.fat();
    judge.cholesterolAndSodium();
    judge.sources();
    return List.copyOf(judge.claims);
  }

  static List<Unjudged> unjudged() {
    return List.of(
        new Unjudged(
            "Low carbohydrate, low carb, net carbs",
            "No legal definition: Part 101, Subpart D, names none.",
            Source.secondHand("21 CFR 101.54 to 101.69")),
        new Unjudged(
            "Low sugar",
            "No legal definition; only “sugar free”, “no added sugars” and “reduced sugar” have"
                + " one.",
            Source.fromMemory("21 CFR 101.60(c)")),
        new Unjudged(
            "No added sugars",
            "Depends on what was added, which figures do not show.",
            Source.fromMemory("21 CFR 101.60(c)(2)")),
        new Unjudged(
            "Light, reduced, less, fewer, more, added",
            "Compares with a reference food, which is not known here.",
            Source.secondHand("21 CFR 101.54(e), 101.56, 101.60 to 101.62")),
        new Unjudged(
            "Healthy",
            "Rests on food groups, which are not counted here, and on added sugars.",
            Source.fromMemory("21 CFR 101.65(d)")),
        new Unjudged(
            "Gluten-free",
            "Below 20 mg gluten in a kilogram, which only a laboratory can measure.",
            Source.fromMemory("21 CFR 101.91")));
  }

  /**
   * What has to be told beside any claim: 21 CFR 101.13(h), from memory.
   *
   * @return a sentence that names what lies above its level, or may
   */
  static String disclosure(Label label) {
    UnitedStatesClaims judge = new UnitedStatesClaims(label);
    List<String> above = new ArrayList<>();
    List<String> open = new ArrayList<>();
    judge.disclose(Component.FAT, "fat", "g", 13, above, open);
    judge.disclose(Component.SATURATED_FAT, "saturated fat", "g", 4, above, open);
    judge.disclose(Component.CHOLESTEROL, "cholesterol", "mg", 60, above, open);
    judge.disclose(Component.SODIUM, "sodium", "mg", 480, above, open);
    String levels =
        "Beside a claim the label points to what is above 13 g fat, 4 g saturated fat, 60 mg"
            + " cholesterol or 480 mg sodium in the reference amount or a serving (21 CFR"
            + " 101.13(h), from memory): ";
    String told = above.isEmpty() ? "" : "here " + String.join(", ", above);
    String unsure = open.isEmpty() ? "" : "it cannot be told of " + String.join(", ", open);
    String both = told.isEmpty() || unsure.isEmpty() ? "" : "; ";
    return levels + (told.isEmpty() && unsure.isEmpty() ? "here nothing" : told + both + unsure)
        + ".";
  }

  private void disclose(
      Component component, String what, String unit, double level, List<String> above,
      List<String> open) {
    Quantity serving = label.amounts(component, Region.UNITED_STATES).get(Basis.PIECE);
    Verdict verdict =
        low(component, unit, what)
            .atMost(level)
            .and(inReference(component, unit, what).atMost(level))
            .and(new Measured(serving, unit, what).atMost(level))
            .verdict();
    if (verdict == Verdict.MISSES) {
      above.add(what);
    } else if (verdict == Verdict.CANNOT_BE_TOLD) {
      open.add(what);
    }
  }

  private void energyAndSugars() {
    free("Calorie free", Component.ENERGY_KCAL, "kcal", "", 5, "21 CFR 101.60(b)(1)", null);
    add(
        "Low calorie",
        low(Component.ENERGY_KCAL, "kcal", "").atMost(40),
        "at most 40 kcal in the reference amount (in 50 g where that is small)",
        Source.read("21 CFR 101.60(b)(2)"),
        null);
    free(
        "Sugar free",
        Component.SUGARS,
        "g",
        "sugars",
        0.5,
        "21 CFR 101.60(c)(1)",
        "No ingredient that is a sugar, or it is marked as trivial; “low” or “reduced calorie”, or"
            + " the words that it is not.");
  }

  private void fat() {
    free(
        "Fat free", Component.FAT, "g", "fat", 0.5, "21 CFR 101.62(b)(1)",
        "No ingredient that is a fat, or it is marked as trivial.");
    add(
        "Low fat",
        low(Component.FAT, "g", "fat").atMost(3),
        "at most 3 g fat in the reference amount (in 50 g where that is small)",
        Source.secondHand("21 CFR 101.62(b)(2)"),
        null);
    add(
        "Saturated fat free",
        freeOf(Component.SATURATED_FAT, "g", "saturated fat", 0.5)
            .and(freeOf(Component.TRANS_FAT, "g", "trans fat", 0.5)),
        "below 0.5 g saturated fat and below 0.5 g trans fat " + FREE,
        Source.fromMemory("21 CFR 101.62(c)(1)"),
        null);
    Quantity energyShare =
        dough(Component.SATURATED_FAT)
            .times(FAT_KCAL * 100)
            .dividedBy(dough(Component.ENERGY_KCAL));
    add(
        "Low saturated fat",
        inReference(Component.SATURATED_FAT, "g", "saturated fat")
            .atMost(1)
            .and(new Measured(energyShare, "%", "of the energy").atMost(15)),
        "at most 1 g saturated fat in the reference amount and 15 % of the energy",
        Source.secondHand("21 CFR 101.62(c)(2)"),
        null);
  }

  private void cholesterolAndSodium() {
    Condition saturated =
        inReference(Component.SATURATED_FAT, "g", "saturated fat").atMost(2);
    String fat = "Above 13 g fat in the reference amount or a serving the fat has to be told.";
    add(
        "Cholesterol free",
        freeOf(Component.CHOLESTEROL, "mg", "cholesterol", 2).and(saturated),
        "below 2 mg cholesterol " + FREE + ", at most 2 g saturated fat in the reference amount",
        Source.secondHand("21 CFR 101.62(d)(1)"),
        fat);
    add(
        "Low cholesterol",
        low(Component.CHOLESTEROL, "mg", "cholesterol").atMost(20).and(saturated),
        "at most 20 mg cholesterol in the reference amount (in 50 g where that is small), at most"
            + " 2 g saturated fat",
        Source.secondHand("21 CFR 101.62(d)(2)"),
        fat);
    free(
        "Sodium free", Component.SODIUM, "mg", "sodium", 5, "21 CFR 101.61(b)(1)",
        "No ingredient that is salt or holds sodium, or it is marked as trivial.");
    add(
        "Very low sodium",
        low(Component.SODIUM, "mg", "sodium").atMost(35),
        "at most 35 mg sodium in the reference amount (in 50 g where that is small)",
        Source.secondHand("21 CFR 101.61(b)(2)"),
        null);
    add(
        "Low sodium",
        low(Component.SODIUM, "mg", "sodium").atMost(140),
        "at most 140 mg sodium in the reference amount (in 50 g where that is small)",
        Source.secondHand("21 CFR 101.61(b)(4)"),
        null);
  }

  private void sources() {
    source("fiber", Component.FIBRE, DailyValue.FIBRE,
        "Unless it is low in fat, the fat of a serving has to be told beside it (101.54(d)).");
    source(
        "protein", Component.PROTEIN, DailyValue.PROTEIN,
        "Counts protein corrected for its quality (101.9(c)(7)(ii)), which is at most the protein"
            + " stated here.");
    source("vitamin D", Component.VITAMIN_D, DailyValue.VITAMIN_D, null);
    source("calcium", Component.CALCIUM, DailyValue.CALCIUM, null);
    source("iron", Component.IRON, DailyValue.IRON, null);
    source("potassium", Component.POTASSIUM, DailyValue.POTASSIUM, null);
  }

  private void source(String name, Component component, DailyValue value, String further) {
    Quantity share = value.percent(reference(component));
    if (value == DailyValue.PROTEIN) {
      share = Quantity.between(0, share.high());
    }
    Measured percent =
        new Measured(share, "%", "of the Daily Value of " + name + " in the reference amount");
    add(
        "Good source of " + name,
        percent.atLeast(GOOD_SOURCE).and(percent.below(HIGH)).once(),
        "10 to 19 % of the Daily Value in the reference amount",
        Source.secondHand("21 CFR 101.54(c)"),
        further);
    add(
        "High in " + name,
        percent.atLeast(HIGH),
        "at least 20 % of the Daily Value in the reference amount",
        Source.secondHand("21 CFR 101.54(b)"),
        further);
  }

  private void free(
      String name, Component component, String unit, String what, double limit, String law,
      String further) {
    String words = ("below " + limit + " " + unit + " " + what).replace(".0 ", " ").strip();
    add(
        name, freeOf(component, unit, what, limit), words + " " + FREE, Source.secondHand(law),
        further);
  }

  private Condition freeOf(Component component, String unit, String what, double limit) {
    Quantity serving =
        label.amounts(component, Region.UNITED_STATES).get(Basis.PIECE);
    return inReference(component, unit, what)
        .below(limit)
        .and(new Measured(serving, unit, (what + " in a piece").strip()).below(limit));
  }

  private Measured inReference(Component component, String unit, String what) {
    return new Measured(reference(component), unit, (what + " in the reference amount").strip());
  }

  /** For the reference amount, or 50 g where that is small. */
  private Measured low(Component component, String unit, String what) {
    boolean small = label.terms().reference().filter(ReferenceAmount::isSmall).isPresent();
    return small
        ? new Measured(baked(component).dividedBy(2), unit, (what + " in 50 g").strip())
        : inReference(component, unit, what);
  }

  private Quantity reference(Component component) {
    return label
        .terms()
        .reference()
        .map(amount -> baked(component).times(amount.grams() / 100))
        .orElse(Quantity.UNKNOWN);
  }

  private Quantity baked(Component component) {
    return label.amounts(component, Region.UNITED_STATES).get(Basis.BAKED_100_G);
  }

  private Quantity dough(Component component) {
    return label.amounts(component, Region.UNITED_STATES).get(Basis.DOUGH_100_G);
  }

  private void add(
      String name, Condition condition, String words, Source source, String further) {
    claims.add(
        new Claim(
            name,
            condition.verdict(),
            condition.because(),
            words,
            source,
            Optional.ofNullable(further)));
  }
}
