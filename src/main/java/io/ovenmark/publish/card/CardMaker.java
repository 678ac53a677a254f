package io.ovenmark.publish.card;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.Allergen;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.EnergyRule;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Draws a card up from a worksheet. */
public final class CardMaker {
  private static final List<Figure> SHOWN =
      List.of(
          Figure.ENERGY,
          Figure.PROTEIN,
          Figure.FAT,
          Figure.SATURATED_FAT,
          Figure.CARBOHYDRATE,
          Figure.FIBRE,
          Figure.SUGARS,
          Figure.POLYOLS,
          Figure.ALLULOSE,
          Figure.NET_CARBOHYDRATE,
          Figure.SODIUM);

  private static final Set<Figure> ONLY_WHEN_THERE = Set.of(Figure.POLYOLS, Figure.ALLULOSE);

  /** From here on a mass is written without decimals. */
  private static final double WHOLE_GRAMS = 10;

  private static final int DIAL = 5;

  /** A share of a piece that is none: a mass divided by a mass is seldom even. */
  private static final double EVEN = 0.05;

  /** A word that stands well before "rack". */
  private static final Pattern WORD = Pattern.compile("[\\p{IsLatin}-]+");

  private CardMaker() {}

  /**
   * What a card says besides the figures.
   *
   * @param address the revision's address
   * @param date its day as {@code 2026-09-14}; empty when it is not a revision
   * @param photo the picture; empty for none
   * @param cautions what to mind, as the desk says it
   */
  public record Facts(
      String address, Optional<String> date, Optional<CardPhoto> photo, List<String> cautions) {
    /** Copies the list. */
    public Facts {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * Draws it up.
   *
   * @param sheet the revision worked out
   * @param facts what stands beside the figures
   * @param choices what somebody chose
   * @return the card
   */
  public static Card of(Worksheet sheet, Facts facts, CardChoices choices) {
    List<String> cautions = new ArrayList<>(facts.cautions());
    cautions.addAll(choices.more());
    Quantity pieces = sheet.pieces().times(choices.times());
    return new Card(
        sheet.formula().name(),
        sheet.formula().description().filter(text -> !text.isBlank()),
        yielded(sheet, pieces, choices),
        pieces.isKnown() ? Optional.of(count(pieces)) : Optional.empty(),
        facts.photo(),
        sheet.lines().stream().map(line -> ingredient(line, choices)).toList(),
        sheet.formula().method().stream().filter(step -> !step.isBlank()).toList(),
        sheet.formula().bake().stream().map(CardMaker::stage).toList(),
        figures(sheet),
        basis(sheet, choices),
        sheet.allergens().stream().map(Allergen::key).toList(),
        sheet.allergensUnknownIn(),
        cautions,
        choices.storage().or(() -> sheet.formula().storage()).filter(text -> !text.isBlank()),
        facts.address(),
        facts.date(),
        choices.times());
  }

  /** A number of pieces that somebody can shape: whole ones, unless it is less than one. */
  private static Quantity whole(Quantity pieces) {
    if (!pieces.isKnown() || pieces.low() < 1) {
      return pieces;
    }
    double nearest = Math.rint(pieces.low());
    boolean even = Math.abs(pieces.low() - nearest) < EVEN;
    return Quantity.known(even ? nearest : Math.floor(pieces.low()));
  }

  private static String count(Quantity pieces) {
    String number = FigureText.of(whole(pieces));
    return number + (number.equals("1") ? " piece" : " pieces");
  }

  private static String yielded(Worksheet sheet, Quantity pieces, CardChoices choices) {
    ShownUnits units = units(choices);
    String count = pieces.isUnknown() ? "An unknown number of pieces" : count(pieces);
    Quantity dough = sheet.doughPerPieceGrams();
    Quantity baked = sheet.bakedPerPieceGrams();
    return count
        + (dough.isUnknown() ? ", of unknown mass" : " of " + units.mass(dough) + " dough")
        + left(pieces, dough, units)
        + (baked.isKnown() ? ", " + units.mass(baked) + " baked" : "; not weighed after baking");
  }

  /** The dough that is not enough for one more piece. */
  private static String left(Quantity pieces, Quantity dough, ShownUnits units) {
    if (!pieces.isKnown() || !dough.isKnown()) {
      return "";
    }
    double share = pieces.low() - whole(pieces).low();
    return share < EVEN ? "" : " (" + units.mass(dough.times(share)) + " over)";
  }

  private static ShownUnits units(CardChoices choices) {
    return ShownUnits.of(Optional.of(choices.masses().unit()), Optional.empty());
  }

  private static Card.Ingredient ingredient(WorksheetLine line, CardChoices choices) {
    Quantity grams = line.grams().times(choices.times());
    Optional<String> note = line.line().note();
    if (!grams.isKnown()) {
      String times =
          choices.times() == 1 ? "" : FigureText.number(choices.times()) + " × ";
      return new Card.Ingredient(
          times + line.line().amount(),
          OptionalDouble.empty(),
          Optional.empty(),
          line.name(),
          note);
    }
    double known = grams.low();
    return new Card.Ingredient(
        mass(known, choices),
        OptionalDouble.of(known),
        line.food().flatMap(food -> KitchenMeasure.nearest(food, known, said(line))),
        line.name(),
        note);
  }

  private static String said(WorksheetLine line) {
    return line.line().amount() + " " + line.line().note().orElse("");
  }

  /** Grams as a kitchen scale shows them: whole from 10 g on, else to a tenth. */
  private static String mass(double grams, CardChoices choices) {
    if (choices.masses() == CardChoices.Masses.OUNCES) {
      return units(choices).mass(Quantity.known(grams));
    }
    double unit = grams >= WHOLE_GRAMS ? 1 : grams >= 0.1 ? 10 : 100;
    double rounded = Math.round(grams * unit) / unit;
    return BigDecimal.valueOf(rounded).stripTrailingZeros().toPlainString() + " g";
  }

  private static Card.Stage stage(BakeSetting setting) {
    List<String> rest = new ArrayList<>();
    setting.rack().ifPresent(rack -> rest.add(rack(rack)));
    setting.steam().ifPresent(steam -> rest.add("steam: " + steam));
    setting.vessel().ifPresent(rest::add);
    setting.note().ifPresent(rest::add);
    Optional<Double> minutes =
        setting.minutes().isPresent()
            ? Optional.of(setting.minutes().getAsDouble())
            : Optional.empty();
    return new Card.Stage(
        setting.temperature().map(CardMaker::heat),
        minutes.map(time -> FigureText.number(time) + " min"),
        rest,
        minutes.map(time -> "PT" + Math.round(time) + "M"));
  }

  private static String rack(String rack) {
    if (rack.contains("rack")) {
      return rack;
    }
    return WORD.matcher(rack).matches() ? rack + " rack" : "rack: " + rack;
  }

  private static String heat(Temperature temperature) {
    long celsius = dial(temperature.celsius(), temperature.toString().endsWith("C"));
    long fahrenheit = dial(temperature.fahrenheit(), temperature.toString().endsWith("F"));
    return temperature.toString().endsWith("F")
        ? String.format(Locale.ROOT, "%d °F (%d °C)", fahrenheit, celsius)
        : String.format(Locale.ROOT, "%d °C (%d °F)", celsius, fahrenheit);
  }

  /** What was converted goes to the nearest 5, as dials have it: common practice, no source. */
  private static long dial(double degrees, boolean asWritten) {
    return asWritten ? Math.round(degrees) : Math.round(degrees / DIAL) * DIAL;
  }

  private static List<Card.Fact> figures(Worksheet sheet) {
    List<Card.Fact> facts = new ArrayList<>();
    for (Figure figure : SHOWN) {
      Quantity quantity = sheet.figure(figure, Basis.PIECE);
      if (!ONLY_WHEN_THERE.contains(figure) || !quantity.equals(Quantity.ZERO)) {
        facts.add(
            new Card.Fact(
                figure.key(),
                figure.label(),
                FigureText.of(quantity, figure.unit()),
                quantity));
      }
    }
    return facts;
  }

  private static List<String> basis(Worksheet sheet, CardChoices choices) {
    List<String> sentences = new ArrayList<>();
    Set<String> sources = new TreeSet<>();
    sheet.lines().stream()
        .flatMap(line -> line.food().stream())
        .map(Food::source)
        .forEach(source -> sources.add(source.kind().key()));
    sentences.add(
        "Figures of a piece are summed over the ingredients"
            + (sources.isEmpty() ? "" : " (" + String.join(", ", sources) + ")")
            + ", energy "
            + (sheet.policy().energy() == EnergyRule.FOODS
                ? "as the foods state it"
                : "by " + sheet.policy().energy().key())
            + ".");
    sentences.add(
        "Net carbohydrate is " + sheet.policy().netCarbohydrate().inWords()
            + "; it has no legal definition.");
    if (!sheet.unknowns().isEmpty()) {
      Set<String> lines = new TreeSet<>();
      sheet.unknowns().forEach(
          unknown -> sheet.line(unknown.line()).ifPresent(line -> lines.add(line.name())));
      sentences.add(
          lines.stream()
              .map(Scripts::part)
              .collect(Collectors.joining("; ", "Not all is known of: ", ".")));
    }
    if (choices.times() != 1) {
      sentences.add(
          "Amounts are " + FigureText.number(choices.times())
              + " times the formula; time and heat are those of the formula's own batch.");
    }
    return sentences;
  }
}
