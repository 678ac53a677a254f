package io.ovenmark.publish.label;

import io.ovenmark.measure.Quantity;
import io.ovenmark.publish.label.Claim.Unjudged;
import io.ovenmark.publish.label.Condition.Measured;
import io.ovenmark.worksheet.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The nutrition claims of Regulation (EC) No 1924/2006, Annex, for solid food, judged by the
 * unrounded figures of 100 g as baked. Shares of the energy do not depend on the loss on baking.
 */
final class EuropeanClaims {
  private static final String ANNEX = "Regulation (EC) No 1924/2006, Annex";
  private static final double PROTEIN_KCAL = 4;
  private static final double FAT_KCAL = 9;
  private static final double SIGNIFICANT_SHARE = 0.15;

  private final Label label;
  private final List<Claim> claims = new ArrayList<>();

  private EuropeanClaims(Label label) {
    this.label = label;
  }

  static List<Claim> of(Label label) {
    EuropeanClaims judge = new EuropeanClaims(label);
    judge.energyAndFat();
    judge.sugarsAndSalt();
    judge.fibreAndProtein();
    judge.source(Component.VITAMIN_D, "vitamin D", "µg", 5);
    judge.source(Component.CALCIUM, "calcium", "mg", 800);
    judge.source(Component.IRON, "iron", "mg", 14);
    judge.source(Component.POTASSIUM, "potassium", "mg", 2000);
    return List.copyOf(judge.claims);
  }

  static List<Unjudged> unjudged() {
    Source definitions = Source.read(ANNEX);
    return List.of(
        new Unjudged(
            "Low carbohydrate, low carb, net carbohydrate",
            "No legal definition: the Annex lists none, and a nutrition claim that it does not list"
                + " is not allowed (Article 8(1)).",
            definitions),
        new Unjudged(
            "No added sugars, no added salt",
            "Depends on what was added, which figures do not show.",
            definitions),
        new Unjudged(
            "Reduced, light, energy-reduced, increased",
            "Compares with other foods of the same kind (Article 9), which are not known here.",
            definitions),
        new Unjudged(
            "Gluten-free, very low gluten",
            "At most 20 or 100 mg gluten in a kilogram of the food, which only a laboratory can"
                + " measure.",
            Source.fromMemory("Regulation (EU) No 828/2014")),
        new Unjudged(
            "Omega-3, unsaturated fat",
            "Ovenmark keeps no figures of these fatty acids.",
            definitions));
  }

  private void energyAndFat() {
    add(
        "Low energy",
        of(Component.ENERGY_KCAL, "kcal", "").atMost(40),
        "at most 40 kcal (170 kJ) in 100 g",
        Source.read(ANNEX));
    add(
        "Low fat",
        of(Component.FAT, "g", "fat").atMost(3),
        "at most 3 g fat in 100 g",
        Source.read(ANNEX));
    add(
        "Fat-free",
        of(Component.FAT, "g", "fat").atMost(0.5),
        "at most 0.5 g fat in 100 g",
        Source.read(ANNEX));
    Quantity saturated = dough(Component.SATURATED_FAT);
    Quantity withTrans = saturated.plus(dough(Component.TRANS_FAT));
    Quantity energy = dough(Component.ENERGY_KCAL);
    Measured sum =
        new Measured(
            baked(Component.SATURATED_FAT).plus(baked(Component.TRANS_FAT)),
            "g",
            "saturated and trans fat in 100 g");
    add(
        "Low saturated fat",
        sum.atMost(1.5)
            .and(
                new Measured(percent(withTrans.times(FAT_KCAL), energy), "%", "of the energy")
                    .atMost(10)),
        "saturated and trans fat at most 1.5 g in 100 g and 10 % of the energy",
        Source.read(ANNEX));
    add(
        "Saturated-fat-free",
        sum.atMost(0.1),
        "saturated and trans fat at most 0.1 g in 100 g",
        Source.read(ANNEX));
  }

  private void sugarsAndSalt() {
    Measured sugars = of(Component.SUGARS_WITH_ALLULOSE, "g", "sugars");
    add("Low sugars", sugars.atMost(5), "at most 5 g sugars in 100 g", Source.read(ANNEX));
    add(
        "Sugars-free",
        sugars.atMost(0.5),
        "at most 0.5 g sugars in 100 g",
        Source.secondHand(ANNEX));
    Measured sodium = of(Component.SODIUM, "mg", "sodium");
    Source salt = Source.fromMemory(ANNEX);
    add(
        "Low sodium, low salt",
        sodium.atMost(120),
        "at most 0.12 g sodium (0.3 g salt) in 100 g",
        salt);
    add(
        "Very low sodium, very low salt",
        sodium.atMost(40),
        "at most 0.04 g sodium (0.1 g salt) in 100 g",
        salt);
    add(
        "Sodium-free, salt-free",
        sodium.atMost(5),
        "at most 0.005 g sodium (0.0125 g salt) in 100 g",
        salt);
  }

  private void fibreAndProtein() {
    Quantity energy = dough(Component.ENERGY_KCAL);
    Measured fibre = of(Component.FIBRE, "g", "fibre");
    Measured perEnergy =
        new Measured(
            dough(Component.FIBRE).times(100).dividedBy(energy), "g", "fibre in 100 kcal");
    add(
        "Source of fibre",
        fibre.atLeast(3).or(perEnergy.atLeast(1.5)),
        "at least 3 g fibre in 100 g or 1.5 g in 100 kcal",
        Source.fromMemory(ANNEX));
    add(
        "High fibre",
        fibre.atLeast(6).or(perEnergy.atLeast(3)),
        "at least 6 g fibre in 100 g or 3 g in 100 kcal",
        Source.read(ANNEX));
    Measured protein =
        new Measured(
            percent(dough(Component.PROTEIN).times(PROTEIN_KCAL), energy),
            "%",
            "of the energy is from protein");
    add(
        "Source of protein",
        protein.atLeast(12),
        "at least 12 % of the energy from protein",
        Source.fromMemory(ANNEX));
    add(
        "High protein",
        protein.atLeast(20),
        "at least 20 % of the energy from protein",
        Source.secondHand(ANNEX));
  }

  private void source(Component component, String name, String unit, double reference) {
    Source source = Source.fromMemory(ANNEX + ", with Regulation (EU) No 1169/2011, Annex XIII");
    double significant = reference * SIGNIFICANT_SHARE;
    Measured amount = of(component, unit, name);
    add(
        "Source of " + name,
        amount.atLeast(significant),
        "at least 15 % of " + Math.round(reference) + " " + unit + " in 100 g",
        source);
    add(
        "High in " + name,
        amount.atLeast(2 * significant),
        "at least 30 % of " + Math.round(reference) + " " + unit + " in 100 g",
        source);
  }

  private void add(String name, Condition condition, String words, Source source) {
    claims.add(
        new Claim(
            name, condition.verdict(), condition.because(), words, source, Optional.empty()));
  }

  private Measured of(Component component, String unit, String what) {
    return new Measured(baked(component), unit, (what + " in 100 g").strip());
  }

  private Quantity baked(Component component) {
    return label.amounts(component, Region.EUROPEAN_UNION).get(Basis.BAKED_100_G);
  }

  private Quantity dough(Component component) {
    return label.amounts(component, Region.EUROPEAN_UNION).get(Basis.DOUGH_100_G);
  }

  private static Quantity percent(Quantity part, Quantity whole) {
    return part.times(100).dividedBy(whole);
  }
}
