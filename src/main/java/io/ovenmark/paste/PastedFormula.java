package io.ovenmark.paste;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import io.ovenmark.measure.Quoting;
import io.ovenmark.pantry.Food;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A formula as it was read from pasted text or a schema.org recipe: a draft with every line that is
 * certain enough, and each pasted line with what became of it. A line whose food is in doubt is not
 * in the draft; one whose amount is in doubt is there with the amount proposed.
 *
 * <pre>{@code
 * PastedFormula pasted = PastedFormula.read(text, FoodMatcher.of(pantry));
 * if (pasted.isCertain()) { save(pasted.draft()); }
 * }</pre>
 *
 * @param name the name that was pasted; empty when there was none
 * @param draft the formula so far; named "Pasted formula" when no name was pasted
 * @param lines every line that is not blank, in order
 * @param yield what is said about the yield; empty when nothing is
 * @param remarks what should be known about the whole, in sentences
 */
public record PastedFormula(
    Optional<String> name,
    Formula draft,
    List<PastedLine> lines,
    Optional<PastedYield> yield,
    List<String> remarks) {
  private static final String UNNAMED = "Pasted formula";

  /** Copies the lists. */
  public PastedFormula {
    requireNonNull(name, "name");
    requireNonNull(draft, "draft");
    lines = List.copyOf(lines);
    requireNonNull(yield, "yield");
    remarks = List.copyOf(remarks);
  }

  /**
   * Reads a block of text: title, headings, ingredients, method, yield, as far as they are there.
   * Never fails: what is not understood is kept as a line in doubt.
   *
   * @param text what was pasted, not null
   * @param matcher knows the foods
   * @return what was read
   */
  public static PastedFormula read(String text, FoodMatcher matcher) {
    return read(text, matcher, LineChoices.NONE);
  }

  /**
   * Reads a block of text with lines settled.
   *
   * @param text what was pasted, not null
   * @param matcher knows the foods
   * @param choices amounts that were chosen, and lines to leave out
   * @return what was read
   */
  public static PastedFormula read(String text, FoodMatcher matcher, LineChoices choices) {
    BlockReader block = new BlockReader(requireNonNull(text, "text"), matcher, choices);
    block.read();
    return made(
        block.title(), without(block.lines(), choices), block.steps(), block.yield(),
        Optional.empty(), OptionalDouble.empty(), List.of());
  }

  /**
   * Reads the strings of a schema.org recipe.
   *
   * @param recipe the recipe
   * @param matcher knows the foods
   * @return what was read; the lines are numbered through
   */
  public static PastedFormula of(RecipeJsonLd recipe, FoodMatcher matcher) {
    return of(recipe, matcher, LineChoices.NONE);
  }

  /**
   * Reads the strings of a schema.org recipe with lines settled.
   *
   * @param recipe the recipe
   * @param matcher knows the foods
   * @param choices amounts that were chosen, and lines to leave out
   * @return what was read; the lines are numbered through
   */
  public static PastedFormula of(RecipeJsonLd recipe, FoodMatcher matcher, LineChoices choices) {
    List<PastedLine> lines = new ArrayList<>();
    recipe.name().ifPresent(name -> add(lines, name, PastedLine.Kind.TITLE));
    Optional<PastedYield> yield = recipe.yield().map(PastedYield::of);
    recipe.yield().ifPresent(text -> add(lines, text, PastedLine.Kind.YIELD));
    Optional<String> section = Optional.empty();
    int read = Math.min(BlockReader.MOST_LINES, recipe.ingredients().size());
    for (String ingredient : recipe.ingredients().subList(0, read)) {
      Optional<String> heading = LineKinds.heading(PasteText.tidy(ingredient));
      if (heading.isPresent()) {
        section = heading;
        add(lines, ingredient, PastedLine.Kind.HEADING);
      } else {
        lines.add(
            LineSettler.settle(
                lines.size() + 1, IngredientLine.read(ingredient), section, matcher, choices));
      }
    }
    if (recipe.ingredients().size() > read) {
      List<String> rest = recipe.ingredients().subList(read, recipe.ingredients().size());
      lines.add(PastedLine.unread(lines.size() + 1, String.join("\n", rest), read));
    }
    recipe.instructions().forEach(step -> add(lines, step, PastedLine.Kind.STEP));
    List<String> remarks = new ArrayList<>(recipe.remarks());
    recipe
        .cookMinutes()
        .ifPresent(
            minutes ->
                remarks.add("The cook time is taken as the time in the oven; check it."));
    return made(
        recipe.name(), without(lines, choices), recipe.instructions(), yield,
        recipe.description(),
        recipe.cookMinutes(), remarks);
  }

  private static List<PastedLine> without(List<PastedLine> lines, LineChoices choices) {
    return lines.stream()
        .map(
            line ->
                line.kind() == PastedLine.Kind.INGREDIENT
                        && choices.isLeftOut(line.number(), line.text())
                    ? PastedLine.other(line.number(), line.text(), PastedLine.Kind.LEFT_OUT)
                    : line)
        .toList();
  }

  private static void add(List<PastedLine> lines, String text, PastedLine.Kind kind) {
    lines.add(PastedLine.other(lines.size() + 1, text, kind));
  }

  private static PastedFormula made(
      Optional<String> title,
      List<PastedLine> pasted,
      List<String> steps,
      Optional<PastedYield> yield,
      Optional<String> description,
      OptionalDouble minutes,
      List<String> told) {
    Optional<String> name = title.map(PasteText::tidy).filter(text -> !text.isBlank());
    Formula draft =
        Formula.named(name.orElse(UNNAMED))
            .withDescription(description)
            .withMethod(steps)
            .withYield(yield.flatMap(PastedYield::pieces).map(Yield::ofPieces)
                .orElse(Yield.UNSTATED));
    List<String> remarks = new ArrayList<>(told);
    if (minutes.isPresent()) {
      try {
        draft = draft.withBake(List.of(BakeSetting.named("bake").withMinutes(minutes)));
      } catch (IllegalArgumentException e) {
        remarks.add("The cook time is left out: it is too long for an oven.");
      }
    }
    List<PastedLine> lines = new ArrayList<>();
    List<Line> weighed = new ArrayList<>();
    for (PastedLine line : pasted) {
      Optional<Food> food = line.food();
      if (food.isEmpty() || line.amount().isEmpty()) {
        lines.add(line);
        continue;
      }
      String id = draft.withLines(weighed).freeLineId(food.get().slug());
      weighed.add(
          Line.of(id, food.get().slug(), line.amount().get()).withNote(line.note()));
      lines.add(line.withLineId(id));
    }
    yield.flatMap(PastedYield::remark).ifPresent(remarks::add);
    long beside = lines.stream().filter(line -> line.kind() == PastedLine.Kind.NOTE).count();
    if (beside > 0) {
      remarks.add(
          beside == 1
              ? "One line is neither ingredient nor step and is left out of the formula."
              : beside + " lines are neither ingredients nor steps and are left out of the"
                  + " formula.");
    }
    leftOut(lines).ifPresent(remarks::add);
    return new PastedFormula(name, draft.withLines(weighed), lines, yield, remarks);
  }

  private static Optional<String> leftOut(List<PastedLine> lines) {
    String all =
        lines.stream()
            .filter(line -> line.kind() == PastedLine.Kind.LEFT_OUT)
            .map(line -> Quoting.quote(line.text()))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? Optional.empty() : Optional.of("Left out as chosen: " + all + ".");
  }

  /**
   * Whether there is an ingredient and no line is in doubt.
   *
   * @return true when the draft may be used as it is
   */
  public boolean isCertain() {
    return doubtful().isEmpty()
        && lines.stream().anyMatch(line -> line.kind() == PastedLine.Kind.INGREDIENT);
  }

  /**
   * The lines that a person has to settle.
   *
   * @return in order
   */
  public List<PastedLine> doubtful() {
    return lines.stream().filter(line -> !line.doubts().isEmpty()).toList();
  }
}
