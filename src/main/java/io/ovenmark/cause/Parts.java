package io.ovenmark.cause;

import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Confounding.Influence;
import io.ovenmark.compare.Confounding.Kind;
import io.ovenmark.compare.LineChange;
import io.ovenmark.compare.LineComparison;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What changed at a turn, part by part, so that a plan can set each either way; and what cannot be
 * set. The oven of a bake is that of its middle piece by time in the oven.
 */
final class Parts {
  private static final String NONE = "none";
  private static final String NOT_STATED = "not stated";

  private final Turn turn;
  private final ShownUnits units;
  private final Recipe earlier;
  private final Recipe later;
  private final List<Part> all = new ArrayList<>();
  private final List<String> fixed = new ArrayList<>();

  Parts(Turn turn, ShownUnits units) {
    this.turn = turn;
    this.units = units;
    this.earlier = recipe(turn.earlier(), turn.finding());
    this.later = recipe(turn.later(), turn.finding());
    boolean scaled = turn.comparison().proportion().isPresent();
    if (!scaled) {
      turn.comparison().lines().stream()
          .filter(LineComparison::weighsDifferently)
          .forEach(this::line);
    }
    method();
    if (!scaled) {
      division();
    }
    oven();
    for (Influence influence : turn.comparison().confounding().influences()) {
      if (influence.kind() == Kind.FOOD_DATA) {
        fixed.add("The " + influence.name() + " changed too, and cannot be set back at the bench.");
      } else if (influence.kind() == Kind.ROOM) {
        fixed.add(
            "The room differed too (" + influence.detail() + "): bake the whole plan on one day.");
      }
    }
  }

  /** What can be set either way, in the order of the formula, then the oven. */
  List<Part> all() {
    return List.copyOf(all);
  }

  /** What changed and cannot be set, in sentences. */
  List<String> fixed() {
    return List.copyOf(fixed);
  }

  /** The recipe after the turn. */
  Recipe later() {
    return later;
  }

  /** The recipe before the turn. */
  Recipe earlier() {
    return earlier;
  }

  private static Recipe recipe(Baked baked, String finding) {
    List<Piece> with = baked.with(finding);
    List<Piece> pieces = new ArrayList<>(with.isEmpty() ? baked.bake().pieces() : with);
    pieces.removeIf(piece -> piece.minutes().isEmpty() && piece.temperature().isEmpty());
    pieces.sort(Comparator.comparingDouble(piece -> piece.minutes().orElse(0)));
    Worksheet sheet = baked.side().sheet();
    Formula formula = sheet.formula();
    Optional<BakeSetting> stage = formula.bake().stream().findFirst();
    Optional<Piece> middle = middle(pieces, stage.flatMap(BakeSetting::rack));
    OptionalDouble minutes = middle.map(Piece::minutes).orElse(OptionalDouble.empty());
    return new Recipe(
        formula,
        middle.flatMap(Piece::temperature).or(() -> stage.flatMap(BakeSetting::temperature)),
        minutes.isPresent()
            ? minutes
            : stage.map(BakeSetting::minutes).orElse(OptionalDouble.empty()),
        middle.flatMap(Piece::rack).or(() -> stage.flatMap(BakeSetting::rack)),
        sheet.doughPerPieceGrams());
  }

  /** Of pieces alike, one on the prescribed rack. */
  private static Optional<Piece> middle(List<Piece> pieces, Optional<String> rack) {
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    Piece middle = pieces.get((pieces.size() - 1) / 2);
    return pieces.stream()
        .filter(piece -> piece.minutes().equals(middle.minutes()))
        .filter(piece -> piece.temperature().equals(middle.temperature()))
        .filter(piece -> piece.rack().equals(rack))
        .findFirst()
        .or(() -> Optional.of(middle));
  }

  private void line(LineComparison line) {
    String name = brief(line.name());
    Optional<String> other = line.otherName().map(Parts::brief);
    WorksheetLine shown = line.after().or(line::before).orElseThrow();
    String id = shown.line().id();
    int place =
        line.before()
            .map(before -> earlier.formula().lines().indexOf(before.line()))
            .orElse(0);
    all.add(
        new Part(
            sort(shown),
            other.map(was -> name + " for " + was).orElse(name),
            line.change() == LineChange.ADDED ? "no " + name : amount(line.before(), other, name),
            line.change() == LineChange.REMOVED
                ? "no " + name
                : amount(line.after(), Optional.empty(), name),
            recipe ->
                recipe.withFormula(
                    Recipe.withLine(
                        recipe.formula(), id, line.before().map(WorksheetLine::line), place))));
  }

  private String amount(Optional<WorksheetLine> line, Optional<String> other, String name) {
    return units.amount(line.orElseThrow().line().amount()) + " " + other.orElse(name);
  }

  private static Part.Sort sort(WorksheetLine line) {
    return switch (line.food().map(Food::kind).map(Enum::name).orElse("")) {
      case "LIQUID" -> Part.Sort.LIQUID;
      case "DRY" -> Part.Sort.DRY;
      default -> Part.Sort.OTHER;
    };
  }

  private static String brief(String name) {
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }

  private void method() {
    Comparison comparison = turn.comparison();
    if (!comparison.method().isEmpty()) {
      all.add(
          new Part(
              Part.Sort.METHOD,
              "method",
              "steps as in " + comparison.from().address(),
              "steps as in " + comparison.to().address(),
              recipe ->
                  recipe.withFormula(
                      Recipes.withMethod(recipe.formula(), earlier.formula().method()))));
    }
  }

  private void division() {
    boolean divided =
        turn.comparison().yieldChanges().stream().anyMatch(change -> change.matters());
    if (divided && !FigureText.looksTheSame(earlier.pieceGrams(), later.pieceGrams())) {
      all.add(
          new Part(
              Part.Sort.DIVISION,
              "dough a piece",
              units.mass(earlier.pieceGrams()) + " a piece",
              units.mass(later.pieceGrams()) + " a piece",
              recipe ->
                  recipe
                      .withFormula(
                          Recipes.withYield(recipe.formula(), earlier.formula().yield()))
                      .withPieceGrams(earlier.pieceGrams())));
    }
  }

  private void oven() {
    if (changed(Kind.OVEN_TEMPERATURE)
        && differs(earlier.temperature(), later.temperature(), Temperature::celsius)) {
      add(
          "oven temperature",
          earlier.temperature().map(units::heat),
          later.temperature().map(units::heat),
          recipe -> recipe.withTemperature(earlier.temperature()));
    }
    if (changed(Kind.OVEN_TIME)
        && earlier.minutes().isPresent()
        && later.minutes().isPresent()
        && !earlier.minutes().equals(later.minutes())) {
      add(
          "oven time",
          minutes(earlier.minutes()),
          minutes(later.minutes()),
          recipe -> recipe.withMinutes(earlier.minutes()));
    }
    if (!earlier.rack().equals(later.rack())
        && earlier.rack().isPresent()
        && later.rack().isPresent()) {
      add("rack", earlier.rack(), later.rack(), recipe -> recipe.withRack(earlier.rack()));
    }
    stages();
  }

  /** Tray, steam and further stages, which are prescribed only. */
  private void stages() {
    Set<String> kept = Set.of("temperature", "minutes", "rack", "note");
    Optional<String> first = later.formula().bake().stream().findFirst().map(BakeSetting::id);
    List<String> names =
        turn.comparison().process().stream()
            .filter(change -> change.matters())
            .filter(
                change ->
                    first.isEmpty()
                        || kept.stream()
                            .noneMatch(
                                field ->
                                    change.field().equals("bake." + first.get() + "." + field)))
            .map(change -> change.label())
            .distinct()
            .collect(Collectors.toList());
    if (names.isEmpty()
        || Recipe.stages(earlier.formula()).equals(Recipe.stages(later.formula()))) {
      return;
    }
    List<BakeSetting> before = earlier.formula().bake();
    add(
        String.join(", ", names),
        words(stageTexts(earlier.formula())),
        words(stageTexts(later.formula())),
        recipe -> recipe.withFormula(Recipes.withBake(recipe.formula(), before)));
  }

  private static Optional<String> words(List<String> texts) {
    return Optional.of(texts.isEmpty() ? NONE : String.join(", ", texts));
  }

  private static List<String> stageTexts(Formula formula) {
    List<String> texts = new ArrayList<>();
    formula.bake().stream()
        .findFirst()
        .ifPresent(
            stage -> {
              stage.steam().map(steam -> "steam " + steam).ifPresent(texts::add);
              stage.vessel().ifPresent(texts::add);
            });
    if (formula.bake().size() > 1) {
      texts.add(formula.bake().size() + " stages");
    }
    return texts;
  }

  private void add(
      String name,
      Optional<String> from,
      Optional<String> to,
      UnaryOperator<Recipe> back) {
    all.add(
        new Part(Part.Sort.OVEN, name, from.orElse(NOT_STATED), to.orElse(NOT_STATED), back));
  }

  private boolean changed(Kind kind) {
    return turn.comparison().confounding().influences().stream()
        .anyMatch(influence -> influence.kind() == kind);
  }

  private static <T> boolean differs(Optional<T> a, Optional<T> b, Function<T, Double> number) {
    return a.isPresent()
        && b.isPresent()
        && Math.abs(number.apply(a.get()) - number.apply(b.get())) > 0.5;
  }

  private static Optional<String> minutes(OptionalDouble minutes) {
    return Optional.of(FigureText.number(minutes.getAsDouble()) + " min");
  }
}
