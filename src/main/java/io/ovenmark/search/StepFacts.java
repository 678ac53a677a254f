package io.ovenmark.search;

import io.ovenmark.change.Change;
import io.ovenmark.change.FormulaDiff;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What one step of a formula's history brought: which foods it changed, and which texts are new
 * in it.
 *
 * @param foods short names of the foods that were added, left out, exchanged, weighed otherwise or
 *     noted otherwise
 * @param method whether the method changed
 * @param oven whether the stages in the oven changed
 * @param passages the new texts
 */
public record StepFacts(
    List<String> foods, boolean method, boolean oven, List<Passage> passages) {
  /** Of a step that cannot be read. */
  public static final StepFacts NONE = new StepFacts(List.of(), false, false, List.of());

  /** Copies the lists. */
  public StepFacts {
    foods = List.copyOf(foods);
    passages = List.copyOf(passages);
  }

  /**
   * Finds what a formula begins with: everything in it is new; nothing of it was changed.
   *
   * @param formula its first state
   * @return the facts
   */
  public static StepFacts first(Formula formula) {
    List<String> foods = formula.lines().stream().map(Line::food).distinct().toList();
    return new StepFacts(foods, false, false, texts(Optional.empty(), formula));
  }

  /**
   * Finds what a step brought.
   *
   * @param from the formula before
   * @param to the formula after
   * @return the facts
   */
  public static StepFacts between(Formula from, Formula to) {
    Set<String> foods = new LinkedHashSet<>();
    boolean method = false;
    boolean oven = false;
    for (Change change : FormulaDiff.between(from, to)) {
      method |= change instanceof Change.MethodChanged;
      oven |= isOven(change);
      foods.addAll(foodsOf(change, to));
    }
    return new StepFacts(List.copyOf(foods), method, oven, texts(Optional.of(from), to));
  }

  private static boolean isOven(Change change) {
    return change instanceof Change.BakeSettingAdded
        || change instanceof Change.BakeSettingRemoved
        || change instanceof Change.BakeSettingChanged
        || change instanceof Change.BakeSettingsReordered;
  }

  /**
   * The foods that a change is about, as far as what is weighed or noted of them changed.
   *
   * @param change one change
   * @param to the formula after it
   * @return short names; none for a change that is about no food
   */
  public static List<String> foodsOf(Change change, Formula to) {
    if (change instanceof Change.LineAdded added) {
      return List.of(added.line().food());
    }
    if (change instanceof Change.LineRemoved removed) {
      return List.of(removed.line().food());
    }
    if (change instanceof Change.FoodReplaced replaced) {
      return List.of(replaced.from().food(), replaced.to().food());
    }
    if (change instanceof Change.AmountChanged amount) {
      return to.line(amount.lineId()).map(Line::food).stream().toList();
    }
    if (change instanceof Change.LineNoteChanged note) {
      return to.line(note.lineId()).map(Line::food).stream().toList();
    }
    return List.of();
  }

  /** The texts of a formula that the one before did not have. */
  private static List<Passage> texts(Optional<Formula> from, Formula to) {
    List<Passage> all = texts(to);
    Set<Passage> known = new HashSet<>();
    from.ifPresent(before -> known.addAll(texts(before)));
    return all.stream().filter(passage -> !known.contains(passage)).distinct().toList();
  }

  private static List<Passage> texts(Formula formula) {
    List<Passage> texts = new ArrayList<>();
    texts.add(new Passage(Passage.Place.NAME, formula.name()));
    Passage.of(Passage.Place.DESCRIPTION, formula.description()).ifPresent(texts::add);
    for (Line line : formula.lines()) {
      Passage.of(Passage.Place.LINE_NOTE, line.note()).ifPresent(texts::add);
    }
    for (String step : formula.method()) {
      Passage.of(Passage.Place.STEP, Optional.of(step)).ifPresent(texts::add);
    }
    for (BakeSetting stage : formula.bake()) {
      Passage.of(Passage.Place.OVEN_NOTE, stage.note()).ifPresent(texts::add);
    }
    Passage.of(Passage.Place.STORAGE, formula.storage()).ifPresent(texts::add);
    return texts;
  }
}
