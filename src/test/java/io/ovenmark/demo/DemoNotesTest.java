package io.ovenmark.demo;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.bake.Piece;
import io.ovenmark.demo.DemoEvent.BakeRecorded;
import io.ovenmark.demo.DemoEvent.FoodEntered;
import io.ovenmark.demo.DemoEvent.FormulaBegun;
import io.ovenmark.demo.DemoEvent.FormulaRevised;
import io.ovenmark.demo.DemoEvent.ImprovementsCarried;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the notes of the demo state in numbers is what Ovenmark works out. */
class DemoNotesTest {
  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
  private static final Pattern FIGURE =
      Pattern.compile(
          "(liquid ratio|dough moisture|net carbohydrate|protein|sugars|fibre) "
              + NUMBER + "(?: to " + NUMBER + ")?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern CHANGE =
      Pattern.compile("(?:(\\p{L}+) )?" + NUMBER + " to " + NUMBER + " (g(?! a piece)|°C|min)");
  private static final Pattern ANY_CHANGE = Pattern.compile("\\d to \\d");
  private static final Pattern HEIGHT = Pattern.compile(NUMBER + " mm");

  private static final DemoScript SCRIPT = DemoScript.load();
  private static final Told TOLD = new Told(SCRIPT);

  @Test
  void everyFigureInANoteIsTheWorksheets() {
    int checked = 0;
    List<String> wrong = new ArrayList<>();
    for (Told.Step step : TOLD.steps()) {
      String note = step.event().at().note();
      Matcher matcher = FIGURE.matcher(note);
      while (matcher.find()) {
        Figure figure = figure(matcher.group(1));
        boolean change = matcher.group(3) != null;
        if (change) {
          agree(matcher.group(2), before(step), figure, note).ifPresent(wrong::add);
        }
        agree(matcher.group(change ? 3 : 2), after(step), figure, note).ifPresent(wrong::add);
        checked++;
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(checked).isGreaterThan(25);
  }

  @Test
  void everyChangeInANoteIsTheFormulas() {
    for (Told.Step step : TOLD.steps()) {
      String note = step.event().at().note();
      int found = 0;
      Matcher matcher = CHANGE.matcher(note);
      while (matcher.find()) {
        found++;
        Formula before = before(step).formula();
        Formula after = after(step).formula();
        String from = matcher.group(2);
        String to = matcher.group(3);
        boolean told =
            switch (matcher.group(4)) {
              case "°C" -> oven(before, after, DemoNotesTest::celsius, from, to);
              case "min" -> oven(before, after, BakeSetting::minutes, from, to);
              default -> line(before, after, matcher.group(1), from, to);
            };
        assertThat(told).as(matcher.group() + " in: " + note).isTrue();
      }
      Matcher figures = FIGURE.matcher(note);
      while (figures.find()) {
        found += figures.group(3) == null ? 0 : 1;
      }
      assertThat(ANY_CHANGE.matcher(note).results().count()).as(note).isEqualTo(found);
    }
  }

  @Test
  void everyHeightInTheNoteOfABakeWasMeasured() {
    for (DemoEvent event : SCRIPT.events()) {
      if (event instanceof BakeRecorded baked) {
        List<Double> heights = new ArrayList<>();
        for (Piece piece : baked.bake().pieces()) {
          piece.heightMillimetres().ifPresent(heights::add);
        }
        Matcher matcher = HEIGHT.matcher(event.at().note());
        while (matcher.find()) {
          assertThat(heights).as(event.at().note()).contains(Double.parseDouble(matcher.group(1)));
        }
      }
    }
  }

  /** The line as it stood just before, worked out with the foods of then. */
  private static Worksheet before(Told.Step step) {
    boolean food = step.event() instanceof FoodEntered;
    return step.before().get(food ? subject(step.event()) : address(step.event()).line());
  }

  private static Worksheet after(Told.Step step) {
    return step.event() instanceof FoodEntered
        ? step.after().get(subject(step.event()))
        : TOLD.sheet(address(step.event()).toString());
  }

  private static DemoAddress address(DemoEvent event) {
    if (event instanceof FormulaBegun e) {
      return e.address();
    }
    if (event instanceof FormulaRevised e) {
      return e.address();
    }
    if (event instanceof ImprovementsCarried e) {
      return e.address();
    }
    throw new AssertionError("a figure in the note of " + event);
  }

  /** The formula that the note of a food names. */
  private static String subject(DemoEvent event) {
    return TOLD.formulas().keySet().stream()
        .map(DemoAddress::line)
        .filter(line -> event.at().note().contains(line))
        .findFirst()
        .orElseThrow();
  }

  private static Figure figure(String label) {
    return Arrays.stream(Figure.values())
        .filter(figure -> figure.label().equalsIgnoreCase(label))
        .findFirst()
        .orElseThrow();
  }

  /** What is wrong with a written figure unless rounding the known one as far gives the same. */
  private static Optional<String> agree(
      String written, Worksheet sheet, Figure figure, String note) {
    Quantity value = sheet.figure(figure, Basis.PIECE);
    int point = written.indexOf('.');
    int places = point < 0 ? 0 : written.length() - point - 1;
    boolean right =
        value.isKnown()
            && String.format(Locale.ROOT, "%." + places + "f", value.low()).equals(written);
    return right
        ? Optional.empty()
        : Optional.of(figure + " is " + value + ", not " + written + ", in: " + note);
  }

  private static OptionalDouble celsius(BakeSetting setting) {
    Optional<Double> degrees = setting.temperature().map(t -> t.celsius());
    return degrees.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static boolean oven(
      Formula before,
      Formula after,
      Function<BakeSetting, OptionalDouble> value,
      String from,
      String to) {
    return value.apply(before.bake().get(0)).equals(OptionalDouble.of(Double.parseDouble(from)))
        && value.apply(after.bake().get(0)).equals(OptionalDouble.of(Double.parseDouble(to)));
  }

  private static boolean line(
      Formula before, Formula after, String word, String from, String to) {
    for (Line line : after.lines()) {
      boolean named = line.id().startsWith(word.toLowerCase(Locale.ROOT));
      if (named
          && line.amount().toString().equals(to + " g")
          && before
              .line(line.id())
              .filter(old -> old.amount().toString().equals(from + " g"))
              .isPresent()) {
        return true;
      }
    }
    return false;
  }
}
