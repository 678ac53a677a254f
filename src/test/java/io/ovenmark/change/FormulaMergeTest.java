package io.ovenmark.change;

import static io.ovenmark.change.FormulaDiffTest.BUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Amount;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaMergeTest {
  /**
   * Applies edits that are separated by semicolons; {@code +} adds, {@code -} removes, {@code *}
   * replaces, anything else sets.
   */
  static Formula edited(Formula formula, String edits) {
    FormulaEdit edit = new FormulaEdit(formula);
    if (edits != null) {
      for (String part : edits.split(";")) {
        String text = part.strip();
        edit =
            switch (text.charAt(0)) {
              case '+' -> edit.add(text.substring(1));
              case '-' -> edit.remove(text.substring(1));
              case '*' -> edit.replace(text.substring(1));
              default -> edit.set(text);
            };
      }
    }
    return edit.formula();
  }

  /** Base is the bun: lupin flour 120 g, water 180 g, butter 60 g, salt 4 g; Mix, Rest, Bake. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "water=188g | - | water=188g",
        "water=188g | salt=5g | water=188g; salt=5g",
        "water=188g | water=188g | water=188g",
        "water=188g | water.note=35 °C | water=188g; water.note=35 °C",
        "*butter=coconut-oil | butter=50g | *butter=coconut-oil 50 g",
        "salt.flour=yes | salt=5g | salt.flour=yes; salt=5g",
        "-salt | water=188g | -salt; water=188g",
        "-salt | -salt | -salt",
        "-salt | -butter | -salt; -butter",
        "+yeast=3g after water | - | +yeast=3g after water",
        "+yeast=3g after water | +yeast=3g after water | +yeast=3g after water",
        "+yeast=3g after water | -water | -water; +yeast=3g after lupin-flour",
        "bake.minutes=21 | bake.temperature=190C | bake.minutes=21; bake.temperature=190C",
        "bake.+.minutes=5 | bake.minutes=21 | bake.minutes=21; bake.+.minutes=5",
        "-bake.bake | water=188g | -bake.bake; water=188g",
        "yield.pieces=7 | yield.handling_loss_percent=2 | yield.pieces=7; "
            + "yield.handling_loss_percent=2",
        "yield.dough_per_piece_g=85 | name=Bun | yield.dough_per_piece_g=85; name=Bun",
        "name=Bun | description=Soft. | name=Bun; description=Soft.",
        "storage=Two days. | description=Soft. | storage=Two days.; description=Soft.",
        "goal=low-carb | reference=wheat-bun | goal=low-carb; reference=wheat-bun",
        "method.1=Stir. | method.2=Rest long. | method.1=Stir.; method.2=Rest long.",
        "method.1=Stir. | method.3=Roast. | method.1=Stir.; method.3=Roast.",
        "method.2= | method.3=Roast. | method.3=Roast.; method.2=",
        "method.+=Cool. | method.3=Roast. | method.3=Roast.; method.+=Cool.",
        "method.+=Cool. | method.+=Cool. | method.+=Cool.",
        "method.2= | method.2= | method.2=",
      })
  void whatDoesNotContradictIsSettledInBothDirections(
      String ours, String theirs, String expected) {
    Formula one = edited(BUN, ours);
    Formula other = edited(BUN, theirs);
    Formula both = edited(BUN, expected);
    assertThat(FormulaMerge.merge(BUN, one, other))
        .isEqualTo(new Merged.Settled(both, List.of()));
    assertThat(FormulaMerge.merge(BUN, other, one))
        .isEqualTo(new Merged.Settled(both, List.of()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "water=188g | water=190g | lines.water.amount | 180 g | 188 g | 190 g",
        "water=0.18kg | water=190g | lines.water.amount | 180 g | 0.18 kg | 190 g",
        "*butter=ghee | *butter=lard | lines.butter.food | butter | ghee | lard",
        "water.note=cold | water.note=warm | lines.water.note | - | cold | warm",
        "-salt | salt=5g | lines.salt | 4 g salt | - | 5 g salt",
        "-salt | salt.note=fine | lines.salt | 4 g salt | - | 4 g salt; note: fine",
        "+yeast=3g | +yeast=4g | lines.yeast | - | 3 g yeast | 4 g yeast",
        "bake.minutes=21 | bake.minutes=25 | bake.bake.minutes | 24 min | 21 min | 25 min",
        "bake.temperature=190C | bake.temperature=400F | bake.bake.temperature "
            + "| 205 °C | 190 °C | 400 °F",
        "-bake.bake | bake.minutes=21 | bake.bake | temperature: 205 °C; minutes: 24 | - "
            + "| temperature: 205 °C; minutes: 21",
        "yield.pieces=7 | yield.dough_per_piece_g=85 | yield "
            + "| 6 pieces | 7 pieces | 85 g of dough a piece",
        "yield.pieces= | yield.pieces=1 | yield | 6 pieces | - | 1 piece",
        "name=Bun | name=Roll | name | Seeded lupin bun | Bun | Roll",
        "goal=low-carb | goal=egg-free | goal | - | low-carb | egg-free",
        "method.2=Rest. | method.2=Wait. | method.2 | Rest 10 min. | Rest. | Wait.",
        "method.2= | method.2=Wait. | method.2 | Rest 10 min. | - | Wait.",
        "method.+=Cool. | method.+=Eat. | method.after.3 | - | Cool. | Eat.",
      })
  void aContradictionIsOneConflictInBothDirections(
      String ours, String theirs, String path, String base, String oursText, String theirsText) {
    Formula one = edited(BUN, ours);
    Formula other = edited(BUN, theirs);
    for (boolean swapped : new boolean[] {false, true}) {
      Merged merged =
          swapped ? FormulaMerge.merge(BUN, other, one) : FormulaMerge.merge(BUN, one, other);
      Merged.Conflicting open = (Merged.Conflicting) merged;
      Formula first = swapped ? other : one;
      Formula second = swapped ? one : other;
      assertThat(open.draft()).isEqualTo(first);
      assertThat(open.conflicts()).hasSize(1);
      Conflict conflict = open.conflicts().get(0);
      assertThat(conflict.path()).isEqualTo(path);
      assertThat(conflict.base()).isEqualTo(Optional.ofNullable(base));
      assertThat(conflict.ours()).isEqualTo(Optional.ofNullable(swapped ? theirsText : oursText));
      assertThat(conflict.theirs())
          .isEqualTo(Optional.ofNullable(swapped ? oursText : theirsText));
      assertThat(FormulaMerge.resolve(open, Map.of(path, Choice.OURS)))
          .isEqualTo(new Merged.Settled(first, List.of()));
      assertThat(FormulaMerge.resolve(open, Map.of(path, Choice.THEIRS)))
          .isEqualTo(new Merged.Settled(second, List.of()));
      assertThat(FormulaMerge.resolve(open, Map.of(path, Choice.BASE)))
          .isEqualTo(new Merged.Settled(BUN, List.of()));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "water=188g | water=190g "
            + "| 'The amount of water (\"180 g\") was changed on both sides, to \"188 g\" "
            + "and to \"190 g\".'",
        "-salt | salt=5g "
            + "| 'The line salt (\"4 g salt\") was removed on one side and changed to "
            + "\"5 g salt\" on the other.'",
        "+yeast=3g | +yeast=4g "
            + "| 'The line yeast was added on both sides, as \"3 g yeast\" and as \"4 g yeast\".'",
      })
  void aConflictIsToldInOneSentence(String ours, String theirs, String sentence) {
    Merged merged = FormulaMerge.merge(BUN, edited(BUN, ours), edited(BUN, theirs));
    assertThat(((Merged.Conflicting) merged).conflicts())
        .extracting(Conflict::sentence)
        .containsExactly(sentence);
  }

  @Test
  void unknownFieldsAreMergedByName() {
    Formula base = BUN.withExtras(RandomFormulas.extra("proof", "1"));
    Formula ours = base.withExtras(base.extras().with("ours", RandomFormulas.extra("ours", "1")));
    Formula theirs = base.withExtras(RandomFormulas.extra("proof", "2"));
    Formula both = ours.withExtras(ours.extras().with("proof", theirs.extras()));
    assertThat(FormulaMerge.merge(base, ours, theirs))
        .isEqualTo(new Merged.Settled(both, List.of()));
    Formula other = base.withExtras(RandomFormulas.extra("proof", "3"));
    assertThat(((Merged.Conflicting) FormulaMerge.merge(base, theirs, other)).conflicts())
        .extracting(Conflict::path)
        .containsExactly("extras.proof");
  }

  /** Orders of lines as ids. */
  @ParameterizedTest
  @CsvSource({
    "a b c, c a b, a b c, c a b, false",
    "a b c, a b c, c a b, c a b, false",
    "a b c, c a b, c a b, c a b, false",
    "a b c, c a b, b a c, c a b, true",
    "a b c, a x b c, a y b c, a x y b c, false",
    "a b c, a x b c, c a b, c a x b, false",
    "a b c, c a b, a b x c, c a b x, false",
    "a b c, x a b c, a b c y, x a b c y, false",
    "a b c, a c, a b x c, a x c, false",
    "a b c, a x z b c, a y w b c, a x z y w b c, false",
    "a b, b a, x a b y, x b y a, false",
    "a b, x y a b, y x a b, x y a b, false",
  })
  void ordersAreMergedByTheStatedRule(
      String base, String ours, String theirs, String expected, boolean noted) {
    Merged merged = FormulaMerge.merge(ordered(base), ordered(ours), ordered(theirs));
    assertThat(merged).isInstanceOf(Merged.Settled.class);
    assertThat(((Merged.Settled) merged).formula()).isEqualTo(ordered(expected));
    assertThat(merged.notes())
        .isEqualTo(
            noted
                ? List.of(
                    "Both sides put the lines in another order; the first side's order was kept.")
                : List.of());
  }

  private static Formula ordered(String ids) {
    return Formula.named("Bun")
        .withLines(
            Arrays.stream(ids.split(" "))
                .map(id -> Line.of(id, id, Amount.parse("1 g")))
                .toList());
  }

  /** Methods whose steps are single letters. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "a b c | a x b c | a b c y | a x b c y | -",
        "a b c | a B C | a b X | a B C | method.3",
        "a b c d | x d | a b c Y | x Y | -",
        "a b c d | x d | a B c d | x d | method.1-3",
        "a b c | a c | a c | a c | -",
        "a b c | a x y c | a b n c | a x y c | method.2",
        "a b c | a B c | a b n c | a B n c | -",
        "a b c | c b a | a b c z | c b a z | -",
        "- | a b | a b | a b | -",
        "- | a b | a c | a b | method.after.0",
      })
  void methodsAreMergedStepByStep(
      String base, String ours, String theirs, String expected, String conflict) {
    Merged merged = FormulaMerge.merge(steps(base), steps(ours), steps(theirs));
    if (merged instanceof Merged.Conflicting open) {
      assertThat(open.conflicts()).extracting(Conflict::path).containsExactly(conflict);
      assertThat(open.draft()).isEqualTo(steps(expected));
    } else {
      assertThat(conflict).isNull();
      assertThat(((Merged.Settled) merged).formula()).isEqualTo(steps(expected));
    }
  }

  private static Formula steps(String letters) {
    return Formula.named("Bun")
        .withMethod(letters == null ? List.of() : List.of(letters.split(" ")));
  }

  @Test
  void conflictsCanBeSettledOneAfterTheOther() {
    Formula ours = edited(BUN, "water=188g; method.2=Rest.; salt=5g");
    Formula theirs = edited(BUN, "water=190g; method.2=Wait.; name=Bun");
    Merged.Conflicting open = (Merged.Conflicting) FormulaMerge.merge(BUN, ours, theirs);
    assertThat(open.sentence())
        .isEqualTo(
            "2 changes still contradict the other side's: lines.water.amount and method.2.");
    Merged.Conflicting less =
        (Merged.Conflicting)
            FormulaMerge.resolve(open, Map.of("lines.water.amount", Choice.THEIRS));
    assertThat(less.sentence())
        .isEqualTo("1 change still contradicts the other side's: method.2.");
    assertThat(FormulaMerge.resolve(less, Map.of("method.2", Choice.THEIRS)))
        .isEqualTo(new Merged.Settled(edited(theirs, "salt=5g"), List.of()));
  }

  @Test
  void aChoiceForNothingOpenIsRefused() {
    Merged.Conflicting open =
        (Merged.Conflicting)
            FormulaMerge.merge(BUN, edited(BUN, "water=188g"), edited(BUN, "water=190g"));
    assertThatThrownBy(
            () -> FormulaMerge.resolve(open, Map.of("lines.<b>\n.amount", Choice.OURS)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "There is no open conflict at \"lines.<b> .amount\".\n"
                + "Choose for lines.water.amount.");
  }

  @Test
  void anUntouchedConflictStaysOpen() {
    Merged.Conflicting open =
        (Merged.Conflicting)
            FormulaMerge.merge(BUN, edited(BUN, "water=188g"), edited(BUN, "water=190g"));
    assertThat(FormulaMerge.resolve(open, Map.of())).isEqualTo(open);
  }
}
