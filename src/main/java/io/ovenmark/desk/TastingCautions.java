package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.formula.Formula;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Temperature;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.tasting.Sample;
import io.ovenmark.tasting.Tasting;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What to mind before anybody tastes. The allergens of all samples are named together, so that they
 * do not tell the samples apart; they are those of the revisions' own foods and of today's pantry,
 * whichever names more. Egg: 71 °C, USDA Food Safety and Inspection Service; raw flour, FDA
 * consumer advice; lupin and peanut, common clinical caution, from memory.
 */
final class TastingCautions {
  private static final double SAFE_EGG_CELSIUS = 71;

  private final Desk desk;
  private final TastingParts parts;
  private final Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
  private final Set<String> unknown = new LinkedHashSet<>();
  private final Set<String> lost = new LinkedHashSet<>();
  private final Set<String> others = new LinkedHashSet<>();
  private final List<String> cool = new ArrayList<>();
  private final List<String> unmeasured = new ArrayList<>();

  private TastingCautions(Desk desk, Tasting tasting) {
    this.desk = desk;
    this.parts = new TastingParts(desk);
    tasting.samples().forEach(this::add);
  }

  /** What tasters are told. */
  static List<String> forTasters(Desk desk, Tasting tasting) {
    return new TastingCautions(desk, tasting)
        .shared(
            "Tell whoever runs the tasting about allergies, intolerances, pregnancy and diets"
                + " before you taste; if in doubt, do not taste.");
  }

  /** The same with what would tell the samples apart. */
  static List<String> forOrganiser(Desk desk, Tasting tasting) {
    TastingCautions found = new TastingCautions(desk, tasting);
    List<String> cautions =
        new ArrayList<>(
            found.shared(
                "Ask each taster about allergies, intolerances, pregnancy and diets before anything"
                    + " is served; whoever is in doubt does not taste."));
    if (!found.cool.isEmpty()) {
      cautions.add(
          "Below 71 °C (160 °F) in the centre, though made with egg: "
              + String.join(", ", found.cool) + ". Do not serve it; follow local food codes.");
    }
    if (!found.unmeasured.isEmpty()) {
      cautions.add(
          "Made with egg, and no core temperature is noted for "
              + String.join(", ", found.unmeasured)
              + ": measure it, and serve only what reached 71 °C (160 °F).");
    }
    return cautions;
  }

  private void add(Sample sample) {
    Optional<Revision> revision = parts.revision(sample);
    if (revision.isEmpty()) {
      lost.add(sample.text());
      return;
    }
    try {
      Worksheet then = desk.sheet(revision.get(), List.of()).worksheet();
      add(then);
      Formula formula = desk.notebook().formula(revision.get());
      Address line = revision.get().address();
      Address today = Address.latest(line.formula(), line.variant());
      add(desk.draft(formula, today, List.of()).worksheet());
      if (then.allergens().contains(Allergen.EGGS)) {
        core(sample);
      }
    } catch (UnreadableException | StoreException damaged) {
      lost.add(sample.text());
    }
  }

  private void add(Worksheet sheet) {
    allergens.addAll(sheet.allergens());
    unknown.addAll(sheet.allergensUnknownIn());
    others.addAll(Cautions.besidesAllergens(sheet));
  }

  private void core(Sample sample) {
    List<Piece> pieces =
        parts.bake(sample).map(Bake::pieces).orElse(List.of()).stream()
            .filter(each -> sample.piece().isEmpty() || sample.piece().get().equals(each.id()))
            .toList();
    List<Temperature> cores = pieces.stream().flatMap(each -> each.core().stream()).toList();
    cores.stream()
        .filter(each -> each.celsius() < SAFE_EGG_CELSIUS)
        .findFirst()
        .ifPresent(each -> cool.add(sample.text() + " (" + desk.units().heat(each) + ")"));
    if (cores.isEmpty()) {
      unmeasured.add(sample.text());
    }
  }

  private List<String> shared(String first) {
    List<String> cautions = new ArrayList<>();
    cautions.add(first);
    cautions.add(
        allergens.isEmpty()
            ? "No allergen is known in the samples. Traces from the bench and from packages are not"
                + " counted; read every label."
            : "The samples contain "
                + String.join(", ", allergens.stream().map(Allergen::key).toList())
                + ". Traces from the bench and from packages are not counted; read every label.");
    if (!unknown.isEmpty()) {
      cautions.add(
          "Allergens are unknown in " + String.join(", ", unknown)
              + ": read the packages before serving.");
    }
    if (!lost.isEmpty()) {
      cautions.add(
          "The allergens of a sample cannot be worked out, because its formula or a food cannot be"
              + " read: do not serve it before they are known.");
    }
    cautions.addAll(others);
    cautions.add("Local food codes and licensed practice decide what may be served to whom.");
    return List.copyOf(cautions);
  }
}
