package io.ovenmark.paste;

import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the amount that stands at the beginning of a text. */
final class AmountReader {
  private static final String ABOUT =
      "about|approximately|approx\\.?|around|roughly|circa|ca\\.?|c\\.|~|≈|just over|just under"
          + "|at least|up to";
  private static final Pattern QUALIFIER =
      Pattern.compile("\\s*(" + ABOUT + ")\\s*(?=[\\d.,\\p{L}" + Numbers.SIGNS + "])",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern TIMES = Pattern.compile("\\s*[x×](?=\\s*\\d)\\s*");
  private static final Pattern TO =
      Pattern.compile("\\s*(?:" + Numbers.DASH + "|to\\b|or\\b)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SAME =
      Pattern.compile("\\s*(?:/|=|\\||or\\b)\\s*(?:(?:" + ABOUT + ")\\s*)?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern OPEN =
      Pattern.compile("\\s*[(\\[]\\s*(?:(?:" + ABOUT + "|or|=)\\s*)*", Pattern.CASE_INSENSITIVE);
  private static final Pattern CLOSE = Pattern.compile("\\s*[)\\]]");
  private static final Pattern PLUS =
      Pattern.compile("\\s*(?:\\+|plus\\b|and\\b|&)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern MINUS =
      Pattern.compile("\\s*(?:minus\\b|less\\b)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern OF =
      Pattern.compile("\\s*of\\b(?:\\s+the\\b)?", Pattern.CASE_INSENSITIVE);
  private static final Pattern ONE_OF =
      Pattern.compile("(?=(?:small |large |big |good |generous )?\\p{L}+ of\\b)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SPACES = Pattern.compile("\\s*");
  private static final Pattern GROUPED = Pattern.compile("[1-9]\\d{0,2}\\.\\d{3}");
  private static final int DECIMALS = 12;

  /** Two ways of writing the same amount may differ by rounding, no more. */
  private static final double SAME_AMOUNT = 1.06;

  private final Scan in;
  private final List<String> remarks = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<Amount> equivalents = new ArrayList<>();
  private Optional<String> upTo = Optional.empty();
  private String number = "";
  private String measure = "";

  private AmountReader(String text) {
    this.in = new Scan(text);
  }

  /**
   * What was found.
   *
   * @param amount the amount; empty when the number cannot be used, as a doubt says then
   * @param end where the text goes on
   * @param remarks words about the amount, such as "about"
   * @param doubts what is open about it
   */
  record Found(
      Optional<PastedAmount> amount, int end, List<String> remarks, List<Doubt> doubts) {}

  /**
   * Reads an amount.
   *
   * @param text begins with it, after blanks at most
   * @return what was found; empty when no number stands there
   */
  static Optional<Found> read(String text) {
    return new AmountReader(text).read();
  }

  private Optional<Found> read() {
    while (in.eat(QUALIFIER)) {
      remarks.add(in.group(1).orElseThrow().toLowerCase(Locale.ROOT));
    }
    in.eat(SPACES);
    Optional<String> first = Numbers.any(in, doubts);
    if (first.isEmpty()) {
      return measureAlone();
    }
    number = first.get();
    if (!times()) {
      measure = measure();
      range();
      if (measure.isEmpty()) {
        packageSize();
      }
    }
    while (doubts.isEmpty() && (sum() || equivalent())) {
      in.eat(SPACES);
    }
    in.eat(OF);
    return Optional.of(new Found(amount(), in.at(), List.copyOf(remarks), List.copyOf(doubts)));
  }

  /** "Pinch of salt": one of the measure. */
  private Optional<Found> measureAlone() {
    number = "1";
    measure = in.eat(ONE_OF) ? measure() : "";
    return measure.isEmpty() || !in.eat(OF)
        ? Optional.empty()
        : Optional.of(new Found(amount(), in.at(), List.copyOf(remarks), List.copyOf(doubts)));
  }

  private String measure() {
    return Measures.read(in, remarks, doubts).orElse("");
  }

  private Optional<PastedAmount> amount() {
    try {
      PastedAmount amount = new PastedAmount(number, upTo, measure, List.of());
      boolean small = measure.equals("g") || measure.equals("ml");
      if (small && doubts.isEmpty() && GROUPED.matcher(number).matches()) {
        doubts.add(
            Doubt.ambiguous(
                "The number \"" + number + "\" may be "
                    + number.replace(".", "") + " or " + number.replaceFirst("\\.?0*$", "") + ".",
                "Write it without a point."));
      }
      agree(amount);
      if (doubts.isEmpty() && !equivalents.isEmpty() && Measures.isContainer(measure)) {
        contents(measure);
      }
      boolean open = doubts.stream().anyMatch(doubt -> doubt.kind() == Doubt.Kind.AMBIGUOUS);
      return open ? Optional.empty() : Optional.of(amount.withEquivalents(equivalents));
    } catch (IllegalArgumentException e) {
      doubts.add(Doubt.amount(e));
      return Optional.empty();
    }
  }

  /** "2 x 50 g": the product. */
  private boolean times() {
    int start = in.at();
    if (!in.eat(TIMES)) {
      return false;
    }
    Optional<String> each = Numbers.digits(in, doubts);
    Optional<String> unit = Measures.unit(in);
    Optional<BigDecimal> product =
        each.flatMap(Numbers::value)
            .flatMap(value -> Numbers.value(number).map(value::multiply));
    if (unit.isEmpty() || product.isEmpty()) {
      in.back(start);
      return false;
    }
    remarks.add(number + " × " + each.get() + " " + unit.get());
    number = plain(product.get());
    measure = unit.get();
    Measures.container(in).ifPresent(this::contents);
    return true;
  }

  private void range() {
    int start = in.at();
    List<Doubt> doubtsBefore = List.copyOf(doubts);
    List<String> remarksBefore = List.copyOf(remarks);
    boolean or = in.eat(TO) && in.group(0).orElseThrow().strip().equalsIgnoreCase("or");
    Optional<String> second =
        in.at() > start ? Numbers.digits(in, doubts) : Optional.empty();
    String unit = second.isPresent() ? measure() : "";
    boolean other = !unit.equals(measure);
    if (second.isEmpty() || !measure.isEmpty() && (unit.isEmpty() || or && other)) {
      in.back(start);
      doubts.retainAll(doubtsBefore);
      remarks.retainAll(remarksBefore);
      return;
    }
    upTo =
        measure.isEmpty() || !other
            ? second
            : second.flatMap(number -> converted(number, unit, measure));
    measure = measure.isEmpty() ? unit : measure;
    if (upTo.isEmpty()) {
      doubts.add(
          Doubt.amount(
              "The ends of the range are in units that cannot be compared.",
              "Write one amount."));
    } else if (isDescending(number, upTo.get())) {
      String lower = upTo.get();
      upTo = Optional.of(number);
      number = lower;
    }
  }

  private static boolean isDescending(String from, String to) {
    Optional<BigDecimal> least = Numbers.value(from);
    Optional<BigDecimal> most = Numbers.value(to);
    return least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0;
  }

  /** "1 (15 oz) can" and "1 15-ounce can": the measure is the package, beside it what it holds. */
  private void packageSize() {
    int start = in.at();
    boolean open = in.eat(OPEN);
    in.eat(SPACES);
    List<Doubt> inside = new ArrayList<>();
    Optional<String> each = Numbers.digits(in, inside);
    Optional<String> unit = each.flatMap(found -> Measures.unit(in));
    boolean closed = !open || in.eat(CLOSE);
    Optional<String> found =
        unit.isPresent() && closed ? Measures.container(in) : Optional.empty();
    if (found.isEmpty()) {
      in.back(start);
      if (each.isPresent() && !open) {
        in.eat(SPACES);
        Numbers.digits(in, inside);
        measure();
        doubts.add(
            Doubt.ambiguous(
                "Two numbers stand side by side: \"" + number + "\" may be a count or part of "
                    + number + each.get() + ".",
                "Write one number and its unit."));
      }
      return;
    }
    measure = found.get();
    Optional<BigDecimal> product =
        each.flatMap(Numbers::value)
            .flatMap(value -> Numbers.value(number).map(value::multiply));
    product.ifPresent(total -> equivalents.add(Amount.parse(plain(total) + " " + unit.get())));
    contents(found.get());
  }

  private void contents(String container) {
    doubts.add(
        Doubt.amount(
            "The amount counts packages (" + container + "); how much of what they hold goes in is"
                + " not said.",
            "Write the mass that goes in, drained where it is drained."));
  }

  /** "1 cup + 2 tbsp": the sum, in the first unit. */
  private boolean sum() {
    int start = in.at();
    boolean plus = in.eat(PLUS);
    if (measure.isEmpty() || upTo.isPresent() || !(plus || in.eat(MINUS))) {
      in.back(start);
      return false;
    }
    List<Doubt> inside = new ArrayList<>();
    Optional<String> more = Numbers.any(in, inside);
    Optional<String> unit = more.flatMap(found -> Measures.unit(in));
    if (unit.isEmpty()) {
      in.back(start);
      return false;
    }
    doubts.addAll(inside);
    String shown = number + " " + measure + (plus ? " + " : " − ") + more.get() + " " + unit.get();
    Optional<BigDecimal> other =
        converted(more.get(), unit.get(), measure).flatMap(Numbers::value);
    Optional<BigDecimal> total =
        Numbers.value(number)
            .flatMap(value -> other.map(next -> plus ? value.add(next) : value.subtract(next)));
    if (total.isEmpty() || total.get().signum() < 0) {
      doubts.add(
          Doubt.amount("The sum \"" + shown + "\" cannot be added up.", "Write one amount."));
    } else {
      remarks.add(shown);
      number = plain(total.get());
    }
    return true;
  }

  /** "100 g / 3.5 oz" and "1 cup (125 g)": the same in another unit. */
  private boolean equivalent() {
    int start = in.at();
    boolean bracket = in.eat(OPEN);
    if (bracket || in.eat(SAME)) {
      List<Doubt> inside = new ArrayList<>();
      Optional<String> other = Numbers.digits(in, inside);
      Optional<String> unit = other.flatMap(found -> Measures.unit(in));
      if (unit.isPresent() && (!bracket || in.eat(CLOSE))) {
        try {
          equivalents.add(Amount.parse(other.get() + " " + unit.get()));
          doubts.addAll(inside);
          return true;
        } catch (IllegalArgumentException e) {
          doubts.add(Doubt.amount(e));
          return false;
        }
      }
    }
    in.back(start);
    return false;
  }

  private void agree(PastedAmount amount) {
    if (amount.isRange()) {
      return;
    }
    List<Amount> all = new ArrayList<>(equivalents);
    amount.least().ifPresent(all::add);
    for (Amount one : all) {
      for (Amount other : all) {
        Optional<MeasureUnit> unit = one.unit();
        boolean comparable =
            unit.isPresent() && unit.map(MeasureUnit::kind).equals(other.unit().map(
                MeasureUnit::kind));
        if (comparable && base(one) > base(other) * SAME_AMOUNT) {
          doubts.add(
              Doubt.amount(
                  "\"" + one + "\" and \"" + other + "\" are not the same.",
                  "Keep the one that is right."));
          return;
        }
      }
    }
  }

  private static double base(Amount amount) {
    return amount.number().doubleValue() * amount.unit().orElseThrow().base();
  }

  /** A number of one unit in another of the same kind. */
  private static Optional<String> converted(String number, String from, String to) {
    Optional<MeasureUnit> source = MeasureUnit.named(from);
    Optional<MeasureUnit> target = MeasureUnit.named(to);
    if (source.isEmpty()
        || target.isEmpty()
        || source.get().kind() != target.get().kind()) {
      return Optional.empty();
    }
    BigDecimal factor =
        BigDecimal.valueOf(source.get().base())
            .divide(BigDecimal.valueOf(target.get().base()), MathContext.DECIMAL64);
    return Numbers.value(number).map(value -> plain(value.multiply(factor)));
  }

  private static String plain(BigDecimal number) {
    BigDecimal rounded =
        number.scale() > DECIMALS ? number.setScale(DECIMALS, RoundingMode.HALF_EVEN) : number;
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
