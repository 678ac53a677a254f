package io.ovenmark.change;

import static io.ovenmark.change.FormulaDiffTest.BUN;
import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FormulaMergePropertiesTest {
  private static final int ROUNDS = 500;

  private static void settlesAs(Merged merged, Formula expected) {
    assertThat(merged).isEqualTo(new Merged.Settled(expected, List.of()));
    assertThat(FormulaDiff.between(expected, ((Merged.Settled) merged).formula())).isEmpty();
  }

  @Test
  void aSideThatChangedNothingAddsNothing() {
    RandomFormulas formulas = new RandomFormulas(21);
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Formula side = round % 3 == 0 ? formulas.formula() : formulas.edited(base, 10);
      settlesAs(FormulaMerge.merge(base, side, base), side);
      settlesAs(FormulaMerge.merge(base, base, side), side);
    }
  }

  @Test
  void theSameChangesOnBothSidesAreSettled() {
    RandomFormulas formulas = new RandomFormulas(22);
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Formula side = formulas.edited(base, 10);
      settlesAs(FormulaMerge.merge(base, side, side), side);
    }
  }

  @Test
  void swappedSidesHaveTheSameConflictsSwapped() {
    RandomFormulas formulas = new RandomFormulas(23);
    int conflicting = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Formula ours = formulas.edited(base, 6);
      Formula theirs = formulas.edited(base, 6);
      List<Conflict> one = conflicts(FormulaMerge.merge(base, ours, theirs));
      List<Conflict> other = conflicts(FormulaMerge.merge(base, theirs, ours));
      assertThat(other).hasSameSizeAs(one);
      for (int i = 0; i < one.size(); i++) {
        assertThat(other.get(i).path()).isEqualTo(one.get(i).path());
        assertThat(other.get(i).base()).isEqualTo(one.get(i).base());
        assertThat(other.get(i).ours()).isEqualTo(one.get(i).theirs());
        assertThat(other.get(i).theirs()).isEqualTo(one.get(i).ours());
      }
      assertThat(one).extracting(Conflict::path).doesNotHaveDuplicates();
      conflicting += one.isEmpty() ? 0 : 1;
    }
    assertThat(conflicting).isBetween(ROUNDS / 10, ROUNDS * 9 / 10);
  }

  private static List<Conflict> conflicts(Merged merged) {
    return merged instanceof Merged.Conflicting open ? open.conflicts() : List.of();
  }

  @Test
  void aConflictShowsTextsThatTellTheSidesApart() {
    RandomFormulas formulas = new RandomFormulas(24);
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Merged merged =
          FormulaMerge.merge(base, formulas.edited(base, 6), formulas.edited(base, 6));
      for (Conflict conflict : conflicts(merged)) {
        assertThat(conflict.ours()).isNotEqualTo(conflict.theirs());
        assertThat(conflict.base()).isNotEqualTo(conflict.ours());
        assertThat(conflict.base()).isNotEqualTo(conflict.theirs());
      }
    }
  }

  @Test
  void everyChoiceSettlesAndChoosingOneSideKeepsAllOfItsChanges() {
    RandomFormulas formulas = new RandomFormulas(25);
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Formula ours = formulas.edited(base, 6);
      Formula theirs = formulas.edited(base, 6);
      for (Choice choice : Choice.values()) {
        Merged merged = FormulaMerge.merge(base, ours, theirs);
        if (merged instanceof Merged.Conflicting open) {
          Map<String, Choice> choices = new HashMap<>();
          open.conflicts().forEach(conflict -> choices.put(conflict.path(), choice));
          merged = FormulaMerge.resolve(open, choices);
        }
        assertThat(merged).isInstanceOf(Merged.Settled.class);
        Formula result = ((Merged.Settled) merged).formula();
        if (choice != Choice.BASE) {
          Formula winner = choice == Choice.OURS ? ours : theirs;
          assertThat(unplaced(FormulaDiff.between(base, result)))
              .containsAll(
                  unplaced(FormulaDiff.between(base, winner)).stream()
                      .filter(change -> !(change instanceof Change.MethodChanged))
                      .filter(change -> !(change instanceof Change.AmountChanged))
                      .filter(change -> !(change instanceof Change.AmountRewritten))
                      .filter(change -> !(change instanceof Change.FoodReplaced))
                      .toList());
          keepsLines(base, winner, result);
        }
        assertThat(lines(result)).isSubsetOf(union(lines(ours), lines(theirs)));
      }
    }
  }

  /** What the winner made of each line's food and amount stands in the result. */
  private static void keepsLines(Formula base, Formula winner, Formula result) {
    for (Line line : winner.lines()) {
      Optional<Line> before = base.line(line.id());
      if (before.isEmpty() || !before.get().food().equals(line.food())) {
        assertThat(result.line(line.id()).orElseThrow().food()).isEqualTo(line.food());
      }
      if (before.isEmpty() || !before.get().amount().writtenAs(line.amount())) {
        assertThat(result.line(line.id()).orElseThrow().amount())
            .hasToString(line.amount().toString());
      }
    }
  }

  /** Without the places of what came and went and without orders: they depend on the other side. */
  private static List<Change> unplaced(List<Change> changes) {
    List<Change> result = new ArrayList<>();
    for (Change change : changes) {
      if (change instanceof Change.LineAdded added) {
        result.add(new Change.LineAdded(added.line(), 0));
      } else if (change instanceof Change.LineRemoved removed) {
        result.add(new Change.LineRemoved(removed.line(), 0));
      } else if (change instanceof Change.BakeSettingAdded added) {
        result.add(new Change.BakeSettingAdded(added.setting(), 0));
      } else if (change instanceof Change.BakeSettingRemoved removed) {
        result.add(new Change.BakeSettingRemoved(removed.setting(), 0));
      } else if (!(change instanceof Change.LinesReordered)
          && !(change instanceof Change.BakeSettingsReordered)) {
        result.add(change);
      }
    }
    return result;
  }

  private static Set<String> lines(Formula formula) {
    return formula.lines().stream().map(Line::id).collect(Collectors.toSet());
  }

  private static Set<String> union(Set<String> one, Set<String> other) {
    Set<String> all = new HashSet<>(one);
    all.addAll(other);
    return all;
  }

  /** Edits of the bun that touch a field each, no two the same. */
  private static final List<String> DISJOINT =
      List.of(
          "name=Bun",
          "description=Soft.",
          "storage=Two days.",
          "goal=low-carb",
          "reference=wheat-bun",
          "water=188g",
          "water.note=35 °C",
          "water.flour=yes",
          "butter.food=ghee",
          "butter=0.06kg",
          "-salt",
          "+yeast=3g after water",
          "+egg=2 large before lupin-flour",
          "method.1=Stir.",
          "method.2=Rest long.",
          "method.+=Cool.",
          "bake.temperature=401F",
          "bake.minutes=21",
          "bake.steam=none",
          "bake.+.minutes=5",
          "yield.pieces=7",
          "yield.handling_loss_percent=2");

  @Test
  void changesOfDifferentFieldsAreAllInTheResult() {
    Random random = new Random(26);
    for (int round = 0; round < 150; round++) {
      List<String> edits = new ArrayList<>(DISJOINT);
      Collections.shuffle(edits, random);
      int cut = random.nextInt(edits.size() + 1);
      Formula ours = all(edits.subList(0, cut));
      Formula theirs = all(edits.subList(cut, edits.size()));
      settlesAs(FormulaMerge.merge(BUN, ours, theirs), all(DISJOINT));
    }
  }

  private static Formula all(List<String> edits) {
    List<String> ordered = DISJOINT.stream().filter(edits::contains).toList();
    return FormulaMergeTest.edited(
        BUN, ordered.isEmpty() ? null : String.join(";", ordered));
  }

  @Test
  void methodsLoseNoStepThatEitherSideAdded() {
    RandomFormulas formulas = new RandomFormulas(27);
    Function<Formula, Set<String>> steps = formula -> new HashSet<>(formula.method());
    for (int round = 0; round < ROUNDS; round++) {
      Formula base = formulas.formula();
      Formula ours = formulas.edited(base, 8);
      Formula theirs = formulas.edited(base, 8);
      Merged merged = FormulaMerge.merge(base, ours, theirs);
      Formula result =
          merged instanceof Merged.Settled settled
              ? settled.formula()
              : ((Merged.Conflicting) merged).draft();
      Set<String> seen = union(steps.apply(result), shown(merged));
      Set<String> added = union(steps.apply(ours), steps.apply(theirs));
      added.removeAll(steps.apply(base));
      assertThat(seen).containsAll(added);
    }
  }

  private static Set<String> shown(Merged merged) {
    Set<String> texts = new HashSet<>();
    for (Conflict conflict : conflicts(merged)) {
      for (Optional<String> text : List.of(conflict.ours(), conflict.theirs())) {
        text.ifPresent(lines -> texts.addAll(pieces(lines)));
      }
    }
    return texts;
  }

  /** A conflict joins its steps by line breaks, which a step may hold too: all readings of it. */
  private static Set<String> pieces(String joined) {
    String[] lines = joined.split("\n", -1);
    Set<String> result = new HashSet<>();
    for (int from = 0; from < lines.length; from++) {
      for (int to = from + 1; to <= lines.length; to++) {
        result.add(String.join("\n", List.of(lines).subList(from, to)));
      }
    }
    return result;
  }
}
