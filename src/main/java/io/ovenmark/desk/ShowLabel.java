package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.publish.label.AllergenStatement;
import io.ovenmark.publish.label.Claim;
import io.ovenmark.publish.label.DailyValue;
import io.ovenmark.publish.label.Declared;
import io.ovenmark.publish.label.Label;
import io.ovenmark.publish.label.LabelRow;
import io.ovenmark.publish.label.LabelTerms;
import io.ovenmark.publish.label.Loss;
import io.ovenmark.publish.label.ReferenceAmount;
import io.ovenmark.publish.label.Region;
import io.ovenmark.publish.label.Source;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Shows what a formula's figures would be on a label.
 *
 * <pre>{@code
 * LabelViews.LabelSheet sheet = new ShowLabel(desk).call(address, LabelChoices.USUAL);
 * }</pre>
 */
public final class ShowLabel {
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,6})?)\\s*%?");

  private final Desk desk;

  private record Shown(
      Address address, int number, boolean otherFoods, Worksheet sheet, List<Bake> bakes) {}

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ShowLabel(Desk desk) {
    this.desk = desk;
  }

  /**
   * Works the label out.
   *
   * @param address which state
   * @param order what was chosen
   * @return the label
   * @throws Refusal when there is no such state, or a choice cannot be read
   */
  public LabelViews.LabelSheet call(Address address, LabelChoices order) {
    List<Region> regions = regions(order.regions());
    LabelTerms terms = terms(order);
    Shown shown = shown(address);
    Label label = Label.of(shown.sheet(), terms);
    Map<String, Quantity> piece = new LinkedHashMap<>();
    piece.put("dough_g", label.sheet().doughPerPieceGrams());
    piece.put("baked_g", label.sheet().bakedPerPieceGrams());
    return new LabelViews.LabelSheet(
        Label.AID,
        shown.address().toString(),
        shown.address().formula(),
        shown.address().variant().orElse(null),
        shown.number(),
        shown.otherFoods(),
        label.sheet().formula().name(),
        new FigureSet(piece),
        loss(label.loss()),
        terms.reference().map(ShowLabel::reference).orElse(null),
        ReferenceAmount.TABLE.stream().map(ShowLabel::reference).toList(),
        regions.stream().map(region -> region(label, region)).toList(),
        remarks(label, regions),
        Cautions.of(label.sheet(), shown.bakes(), desk.units()));
  }

  private Shown shown(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      ShowFormula.Edited edited = ShowFormula.read(desk, address);
      List<Bake> bakes = Desk.bakesOf(edited.blob(), desk.notebook().bakes(address.formula()));
      return new Shown(
          new Address(address.formula(), edited.line().variant(), Address.Point.EDITED),
          desk.notebook().nextNumber(edited.line()),
          false,
          desk.draft(edited.formula(), edited.line(), bakes).worksheet(),
          bakes);
    }
    Revision revision = desk.notebook().revision(address);
    List<Bake> all = desk.notebook().bakes(address.formula());
    boolean otherFoods = desk.restsOnOtherFoods(address, revision);
    return new Shown(
        otherFoods ? address : revision.address(),
        revision.number(),
        otherFoods,
        desk.sheet(address, revision, all).worksheet(),
        Desk.bakesOf(revision.blob().hex(), all));
  }

  private static List<Region> regions(List<String> keys) {
    if (keys.isEmpty()) {
      return List.of(Region.values());
    }
    List<Region> regions = new ArrayList<>();
    for (Region region : Region.values()) {
      if (keys.contains(region.key())) {
        regions.add(region);
      }
    }
    for (String key : keys) {
      if (Region.withKey(key).isEmpty()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "regions",
            "The region \"" + key + "\" has no rules here.",
            "Use us or eu.");
      }
    }
    return regions;
  }

  private static LabelTerms terms(LabelChoices order) {
    OptionalDouble loss = percent(order.loss());
    Optional<EnergyRule> energy = given(order.energy()).map(ShowLabel::energy);
    Optional<ReferenceAmount> reference =
        given(order.reference())
            .map(text -> Asked.read("reference", () -> ReferenceAmount.read(text)));
    return Asked.read("loss", () -> new LabelTerms(loss, energy, reference));
  }

  private static Optional<String> given(String text) {
    return Optional.ofNullable(text).map(String::strip).filter(plain -> !plain.isEmpty());
  }

  private static OptionalDouble percent(String text) {
    if (given(text).isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher matcher = PERCENT.matcher(text.strip());
    if (!matcher.matches()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "loss",
          "The loss on baking \"" + text.strip() + "\" is not understood.",
          "Write a number of percent, decimals with a point, such as \"12.5 %\".");
    }
    return OptionalDouble.of(Double.parseDouble(matcher.group(1)));
  }

  private static EnergyRule energy(String key) {
    return EnergyRule.withKey(key)
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.INVALID,
                    "energy",
                    "There is no energy rule \"" + key + "\".",
                    "Use foods, \"US factors\" or \"EU factors\"."));
  }

  private static LabelViews.ReferenceView reference(ReferenceAmount amount) {
    return new LabelViews.ReferenceView(amount.key(), amount.words(), amount.grams());
  }

  private static LabelViews.LossView loss(Loss loss) {
    return new LabelViews.LossView(
        loss.kind().key(),
        FigureSet.number(loss.percent()),
        BakeViews.number(loss.measuredPercent()),
        loss.pieces(),
        words(loss));
  }

  private static String words(Loss loss) {
    String pieces = loss.pieces() + (loss.pieces() == 1 ? " weighed piece" : " weighed pieces");
    String weighed =
        loss.measuredPercent().isPresent()
            ? FigureText.number(loss.measuredPercent().getAsDouble()) + " %"
            : "";
    return switch (loss.kind()) {
      case MEASURED -> "Loss on baking " + weighed + ", from " + pieces + " of this revision.";
      case ENTERED ->
          "Loss on baking " + FigureText.of(loss.percent(), "%") + ", an allowance that was entered"
              + (weighed.isEmpty()
                  ? "; no piece of this revision was weighed before and after the oven."
                  : "; weighed was " + weighed + ", from " + pieces + " of this revision.");
      case UNKNOWN ->
          "Loss on baking unknown: no piece of this revision was weighed before and after the oven."
              + " What is stated as baked lies between no loss and the loss of all water, and is"
              + " not declared. Weigh a piece, or enter an allowance.";
    };
  }

  private static LabelViews.RegionView region(Label label, Region region) {
    AllergenStatement allergens = label.allergens(region);
    boolean unitedStates = region == Region.UNITED_STATES;
    return new LabelViews.RegionView(
        region.key(),
        region.label(),
        label.energy(region).key(),
        label.energyInWords(region),
        label.rows(region).stream().map(ShowLabel::row).toList(),
        unitedStates ? DailyValue.RULE + "; values: " + DailyValue.SOURCE.inWords() : null,
        allergens.contained().stream()
            .map(
                each ->
                    new LabelViews.AllergenView(
                        each.allergen().key(), each.name(), each.foods()))
            .toList(),
        source(AllergenStatement.source(region)),
        allergens.unknownIn(),
        allergens.notes(),
        label.claims(region).stream().map(ShowLabel::claim).toList(),
        Label.unjudged(region).stream()
            .map(
                each ->
                    new LabelViews.UnjudgedView(each.name(), each.why(), source(each.source())))
            .toList(),
        label.notes(region));
  }

  private static LabelViews.SourceView source(Source source) {
    return new LabelViews.SourceView(source.law(), source.standing().words());
  }

  private static LabelViews.ClaimView claim(Claim claim) {
    return new LabelViews.ClaimView(
        claim.name(),
        claim.verdict().words(),
        claim.because(),
        claim.condition(),
        source(claim.source()),
        claim.further().orElse(null));
  }

  private static LabelViews.RowView row(LabelRow row) {
    Map<String, LabelViews.AmountView> amounts = new LinkedHashMap<>();
    for (Basis basis : Label.BASES) {
      amounts.put(basis.key(), amount(row, basis));
    }
    return new LabelViews.RowView(
        row.line().key(),
        row.line().label(),
        row.line().part(),
        row.line().rounding().unit(),
        amounts,
        row.line().rounding().rule(),
        source(row.line().rounding().source()),
        row.line().dailyValue().map(DailyValue::amount).orElse(null),
        row.missing(),
        row.note().orElse(null));
  }

  private static LabelViews.AmountView amount(LabelRow row, Basis basis) {
    Quantity amount = row.amounts().get(basis);
    boolean bounded = !amount.isKnown() && !amount.isUnknown();
    Double percent =
        row.dailyPercent(basis).map(share -> FigureSet.number(share)).orElse(null);
    return new LabelViews.AmountView(
        FigureSet.number(amount),
        bounded ? finite(amount.low()) : null,
        bounded ? finite(amount.high()) : null,
        row.unrounded(basis),
        row.declared(basis).map(Declared::text).orElse(null),
        percent,
        percent == null
            ? null
            : row.line().dailyValue().orElseThrow().rounded(percent).toPlainString() + " %");
  }

  private static Double finite(double bound) {
    return Double.isFinite(bound) ? bound : null;
  }

  private List<String> remarks(Label label, List<Region> regions) {
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "A piece holds the same as dough and as baked: what leaves in the oven is water.");
    if (regions.contains(Region.UNITED_STATES)) {
      remarks.add(label.servingInWords());
    }
    if (!label.sheet().doughPerPieceGrams().isKnown()) {
      remarks.add(
          "The mass of a piece is not known: state the pieces or the dough of a piece in the"
              + " formula.");
    }
    remarks.addAll(UnweighedFoods.remarks(desk, label.sheet()));
    return remarks;
  }
}
