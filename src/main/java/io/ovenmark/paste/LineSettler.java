package io.ovenmark.paste;

import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.MeasureUnit;
import io.ovenmark.measure.Quantity;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.HouseholdMeasure;
import io.ovenmark.pantry.Resolved;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts the parts of an ingredient line and its food together and says what is open. */
final class LineSettler {
  /** Two weights of the same measure that differ by more than this factor are worth a remark. */
  private static final double CLEARLY = 1.25;

  private static final Pattern TWO_FOODS =
      Pattern.compile("\\p{L}\\s+(?:and|&|\\+)\\s+\\p{L}", Pattern.CASE_INSENSITIVE);

  /** Candidates are looked for among so many alternatives. */
  private static final int MOST_ALTERNATIVES = 3;

  private final FoodMatcher matcher;
  private final IngredientLine line;
  private final Optional<String> chosen;
  private final FoodMatch match;
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<Amount> choices = new ArrayList<>();
  private final List<String> kept = new ArrayList<>();

  private LineSettler(FoodMatcher matcher, IngredientLine line, Optional<String> chosen) {
    this.matcher = matcher;
    this.line = line;
    this.chosen = chosen;
    this.match = match(matcher, line);
  }

  /** The foods of a line, with those of its alternatives unless one was chosen. */
  private static FoodMatch match(FoodMatcher matcher, IngredientLine line) {
    FoodMatch match = matcher.match(line);
    if (line.alternatives().isEmpty() || matcher.isChosen(line.food())) {
      return match;
    }
    Map<String, FoodCandidate> all = new LinkedHashMap<>();
    match.candidates().stream()
        .limit(match.food().isPresent() ? 1 : FoodMatch.MOST / 2)
        .forEach(each -> all.put(each.food().slug(), each));
    for (String alternative :
        line.alternatives().subList(0, Math.min(MOST_ALTERNATIVES, line.alternatives().size()))) {
      FoodMatch other = matcher.match(IngredientLine.read(alternative));
      other.candidates().stream()
          .limit(other.food().isPresent() ? 1 : FoodMatch.MOST / 2)
          .forEach(each -> all.putIfAbsent(each.food().slug(), each));
    }
    return all.isEmpty()
        ? match
        : new FoodMatch(
            FoodMatch.Certainty.DOUBTFUL,
            all.values().stream().limit(FoodMatch.MOST).toList(),
            match.leftOut());
  }

  /**
   * Settles a line.
   *
   * @param number its number in the pasted text
   * @param line its parts
   * @param section the heading above it; empty when there is none
   * @param matcher knows the foods
   * @param choices what was settled already
   * @return the line with a proposal and what is in doubt
   */
  static PastedLine settle(
      int number,
      IngredientLine line,
      Optional<String> section,
      FoodMatcher matcher,
      LineChoices choices) {
    Optional<String> chosen = choices.amount(number, line.text());
    return new LineSettler(matcher, line, chosen).settled(number, section);
  }

  private PastedLine settled(int number, Optional<String> section) {
    doubts.addAll(line.doubts());
    if (!line.food().isEmpty()) {
      food();
    }
    Optional<Amount> amount = proposed();
    if (line.amount().isEmpty() && doubts.stream().noneMatch(LineSettler::isAboutAmount)
        && !line.food().isEmpty()) {
      doubts.add(
          Doubt.amount(
              "The line says no amount.", "Write one in front, such as \"2 g salt\"."));
    }
    line.amount().filter(PastedAmount::isRange).ifPresent(this::range);
    if (chosen.isPresent()) {
      amount = chosen(chosen.get());
    }
    amount.ifPresent(found -> match.food().ifPresent(food -> weight(food, found)));
    return new PastedLine(
        number,
        line.text(),
        PastedLine.Kind.INGREDIENT,
        section,
        Optional.of(line),
        match,
        amount,
        choices,
        note(section),
        Optional.empty(),
        doubts,
        remarks);
  }

  private static boolean isAboutAmount(Doubt doubt) {
    return doubt.kind() != Doubt.Kind.FOOD;
  }

  private void range(PastedAmount range) {
    doubts.add(
        Doubt.amount(
            "The line gives a range, \"" + range + "\"; the lower end is proposed.",
            "Write the amount that you mean."));
    if (choices.isEmpty()) {
      range.least().ifPresent(choices::add);
      range.most().ifPresent(choices::add);
    }
  }

  private void food() {
    String words = '"' + line.food() + '"';
    boolean two = TWO_FOODS.matcher(line.food()).find();
    if (match.certainty() == FoodMatch.Certainty.NONE) {
      doubts.add(
          Doubt.food(
              "No food is called " + words + ".",
              two
                  ? "Give each food a line of its own."
                  : "Write another word for it, or add the food to the pantry."));
    } else if (match.certainty() == FoodMatch.Certainty.DOUBTFUL) {
      String all =
          line.alternatives().isEmpty()
              ? words
              : '"' + line.food() + " or " + String.join(" or ", line.alternatives()) + '"';
      doubts.add(
          Doubt.food(
              "It is not certain which food " + all + " means.",
              (two ? "Give each food a line of its own, or choose one: " : "Choose one: ")
                  + candidates() + "."));
    }
  }

  private String candidates() {
    return match.candidates().stream()
        .map(each -> each.food().slug())
        .collect(Collectors.joining(", "));
  }

  /** The amount that a person chose in the place of the one proposed. */
  private Optional<Amount> chosen(String text) {
    doubts.removeIf(
        each -> each.kind() == Doubt.Kind.AMOUNT || each.kind() == Doubt.Kind.AMBIGUOUS);
    line.amount().filter(PastedAmount::isRange).ifPresent(range -> kept.add(range.toString()));
    try {
      Amount amount = Amount.parse(text);
      Line.of("line", "food", amount);
      return Optional.of(amount);
    } catch (IllegalArgumentException e) {
      doubts.add(Doubt.amount(e));
      return Optional.empty();
    }
  }

  private Optional<Amount> proposed() {
    if (line.amount().isEmpty()) {
      return Optional.empty();
    }
    PastedAmount pasted = line.amount().get();
    try {
      Optional<Amount> proposed = amount(pasted);
      proposed.ifPresent(amount -> Line.of("line", "food", amount));
      return proposed;
    } catch (IllegalArgumentException e) {
      doubts.add(Doubt.amount(e));
      return Optional.empty();
    }
  }

  private Optional<Amount> amount(PastedAmount pasted) {
    Optional<Amount> mass =
        pasted.equivalents().stream().filter(each -> each.grams().isPresent()).findFirst();
    boolean weighed = pasted.least().flatMap(Amount::grams).isPresent();
    if (!weighed && mass.isPresent() && !pasted.isRange()) {
      kept.add(pasted.isCount() ? pasted + " " + line.food() : pasted.toString());
      pasted.equivalents().stream()
          .filter(each -> !each.equals(mass.get()))
          .forEach(each -> kept.add(each.toString()));
      return mass;
    }
    pasted.equivalents().forEach(each -> kept.add(each.toString()));
    if (pasted.isCount()) {
      return counted(pasted);
    }
    return pasted.least().map(amount -> inItsManner(pasted, amount));
  }

  /** "1 cup" of a food that is weighed as "cup, sifted" where the line says so. */
  private Amount inItsManner(PastedAmount pasted, Amount amount) {
    Optional<Food> food = match.food();
    if (food.isEmpty() || amount.unit().isEmpty() || food.get().resolve(amount).isResolved()) {
      return amount;
    }
    Set<String> said = said();
    List<Amount> fitting = new ArrayList<>();
    for (HouseholdMeasure measure : food.get().household()) {
      String name = measure.measure().replaceAll("\\s*\\([^)]*\\)?", "").strip();
      String[] parts = name.split(",", 2);
      boolean sameUnit = MeasureUnit.named(parts[0]).equals(amount.unit());
      if (sameUnit && parts.length == 2 && isUsable(name)) {
        choices.add(pasted.in(name));
        if (said.containsAll(FoodWords.of(parts[1]))) {
          fitting.add(pasted.in(name));
        }
      }
    }
    if (fitting.size() == 1 && food.get().resolve(fitting.get(0)).isResolved()) {
      choices.clear();
      return fitting.get(0);
    }
    return amount;
  }

  /** A bare count: by the food's own name or size, else a choice of its household measures. */
  private Optional<Amount> counted(PastedAmount pasted) {
    Optional<Food> food = match.food();
    if (food.isEmpty()) {
      doubts.add(
          Doubt.amount(
              "The number " + pasted.number() + " has no unit.",
              "Add one, such as g, or a measure of the food such as \"large\"."));
      return Optional.empty();
    }
    Set<String> said = said();
    said.addAll(FoodWords.of(line.food()));
    for (HouseholdMeasure measure : food.get().household()) {
      String name = measure.measure().split("[,(]", 2)[0].strip();
      boolean usable =
          isUsable(name)
              && MeasureUnit.named(name).isEmpty()
              && food.get().resolve(pasted.in(name)).isResolved();
      if (usable && said.containsAll(FoodWords.of(name))) {
        choices.clear();
        return Optional.of(pasted.in(name));
      }
      if (usable && !choices.contains(pasted.in(name))) {
        choices.add(pasted.in(name));
      }
    }
    String name = food.get().name();
    doubts.add(
        choices.isEmpty()
            ? Doubt.amount(
                "What one " + name + " weighs is not known.",
                "Write grams, or add the weight to the food.")
            : Doubt.amount(
                "The number " + pasted.number() + " has no unit; it may be "
                    + choices.stream().map(Amount::toString).collect(Collectors.joining(" or "))
                    + ".",
                "Write one of these, or grams."));
    return choices.size() == 1 ? Optional.of(choices.get(0)) : Optional.empty();
  }

  private static boolean isUsable(String measure) {
    try {
      Amount.parse("1 " + measure);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private Set<String> said() {
    Set<String> said = new LinkedHashSet<>(FoodWords.of(line.descriptors()));
    match.leftOut().forEach(word -> said.addAll(FoodWords.of(word)));
    return said;
  }

  private void weight(Food food, Amount amount) {
    Resolved resolved = food.resolve(amount);
    if (!resolved.isResolved()) {
      remarks.add("How much it weighs is not known: " + resolved.how() + ".");
    }
    if (chosen.isPresent()) {
      return;
    }
    Optional<Amount> measured =
        line.amount().flatMap(PastedAmount::least).filter(own -> !own.equals(amount));
    measured
        .map(food::resolve)
        .filter(own -> own.isResolved() && resolved.isResolved())
        .filter(own -> differ(own.grams(), resolved.grams()))
        .ifPresent(
            own ->
                remarks.add(
                    "By the food's own weights, " + measured.get() + " is "
                        + Math.round(own.grams().low()) + " g (" + own.how() + ")."));
  }

  private static boolean differ(Quantity one, Quantity other) {
    return one.low() > other.low() * CLEARLY || other.low() > one.low() * CLEARLY;
  }

  private Optional<String> note(Optional<String> section) {
    Set<String> parts = new LinkedHashSet<>(kept);
    if (!match.leftOut().isEmpty()) {
      parts.add(String.join(" ", match.leftOut()));
    }
    parts.addAll(line.remarks());
    line.preparation().ifPresent(parts::add);
    line.alternatives().forEach(each -> parts.add("or " + each));
    if (line.optional()) {
      parts.add("optional");
    }
    section.ifPresent(parts::add);
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
  }
}
