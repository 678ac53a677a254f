package io.ovenmark.publish.label;

import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.measure.Quoting;
import java.util.List;

/**
 * How much of a food is customarily eaten at once, by which claims are judged in the United States.
 *
 * @param key short name; {@code own} for one that was typed
 * @param words what it is for
 * @param grams the amount as eaten, above 0
 */
public record ReferenceAmount(String key, String words, double grams) {
  /** Where the amounts come from. */
  public static final Source SOURCE = Source.secondHand("21 CFR 101.12(b), Table 2");

  /** Bakery products of the table. */
  public static final List<ReferenceAmount> TABLE =
      List.of(
          new ReferenceAmount("bread", "breads (not sweet quick type), rolls", 50),
          new ReferenceAmount(
              "biscuits",
              "biscuits, croissants, tortillas, soft pretzels, corn bread, scones, English muffins",
              55),
          new ReferenceAmount("muffins", "bagels, toaster pastries, muffins", 110),
          new ReferenceAmount(
              "sweet-bread", "coffee cakes, doughnuts, sweet rolls, sweet quick-type breads", 55),
          new ReferenceAmount("cookies", "cookies", 30),
          new ReferenceAmount("crackers", "crackers eaten as snacks, hard bread sticks", 30),
          new ReferenceAmount("brownies", "brownies", 40),
          new ReferenceAmount("light-cake", "light cakes, such as sponge without filling", 55),
          new ReferenceAmount("cake", "cakes of medium weight, cupcakes", 80),
          new ReferenceAmount(
              "heavy-cake", "heavy cakes, such as cheese cake or with 35 % fruit or nuts", 125));

  /** On labels an ounce is 28 g: 21 CFR 101.9(b)(5)(viii), second hand. */
  private static final double GRAMS_PER_OUNCE = 28;

  private static final double SMALL_GRAMS = 30;
  private static final double MOST_GRAMS = 1000;

  /** Checks the amount. */
  public ReferenceAmount {
    requireNonNull(key, "key");
    requireNonNull(words, "words");
    if (!(grams > 0 && grams <= MOST_GRAMS)) {
      throw new IllegalArgumentException(
          "A reference amount lies above 0 g and up to 1000 g.\nGive a mass such as \"50 g\".");
    }
  }

  /**
   * Whether it is a small one, for which claims are judged for 50 g instead.
   *
   * @return true up to 30 g
   */
  public boolean isSmall() {
    return grams <= SMALL_GRAMS;
  }

  /**
   * Reads a short name of the table or a mass. An ounce counts as 28 g, as on labels.
   *
   * @param text such as {@code bread} or {@code 50 g}
   * @return the amount
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static ReferenceAmount read(String text) {
    String plain = text.strip();
    for (ReferenceAmount each : TABLE) {
      if (each.key.equals(plain)) {
        return each;
      }
    }
    if (!plain.isEmpty() && Character.isDigit(plain.charAt(0))) {
      Amount amount = Amount.parse(plain);
      if (amount.grams().isPresent()) {
        double grams =
            amount.unit().filter(MeasureUnit.OUNCE::equals).isPresent()
                ? amount.number().doubleValue() * GRAMS_PER_OUNCE
                : amount.grams().get().doubleValue();
        return new ReferenceAmount("own", "as entered: " + amount, grams);
      }
    }
    String known = String.join(", ", TABLE.stream().map(ReferenceAmount::key).toList());
    throw new IllegalArgumentException(
        Quoting.quote(plain) + " is no reference amount.\nWrite a mass such as \"50 g\", or one of "
            + known + ".");
  }
}
