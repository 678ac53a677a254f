package io.ovenmark.effect;

import io.ovenmark.bake.Piece;
import io.ovenmark.effect.Candidate.Kind;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.Temperature;
import io.ovenmark.pantry.FoodKind;
import io.ovenmark.pantry.Nutrient;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Worksheet;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Gathers what differed between the pieces of a history. Temperature, time, rack and dough mass are
 * those that a piece really had; where it notes none, those of its formula. Grams of lines are
 * brought to the batch size of the newest bake by the middle proportion of the lines that both
 * have, so that a doubled batch changes nothing.
 */
final class Candidates {
  /** A line of so much water is seen through the liquid ratio. */
  private static final double WATERY = 90;

  private final Pieces pieces;
  private final History history;
  private final List<Candidate> found = new ArrayList<>();

  private Candidates(History history, Pieces pieces) {
    this.history = history;
    this.pieces = pieces;
  }

  static List<Candidate> of(History history, Pieces pieces) {
    Candidates candidates = new Candidates(history, pieces);
    if (pieces.count() > 0) {
      candidates.gather();
    }
    return List.copyOf(candidates.found);
  }

  private void gather() {
    figure(Kind.LIQUID_RATIO, "liquid ratio", Figure.LIQUID_RATIO);
    lines();
    perPiece(Kind.OVEN_TEMPERATURE, "oven temperature", this::heat);
    perPiece(Kind.OVEN_TIME, "time in the oven", this::minutes);
    perPiece(Kind.DOUGH_PER_PIECE, "dough a piece", this::dough);
    figure(Kind.DOUGH_MOISTURE, "dough moisture", Figure.DOUGH_MOISTURE);
    words("method", Kind.METHOD, Candidates::steps);
    words("dividing", Kind.DIVIDING, sheet -> Set.of(dividing(sheet.formula())));
    pieceWords("rack", i -> rack(i));
    word("steam", sheet -> first(sheet.formula()).flatMap(BakeSetting::steam));
    word("vessel", sheet -> first(sheet.formula()).flatMap(BakeSetting::vessel));
    word("further stages", sheet -> Optional.of(furtherStages(sheet.formula())));
  }

  private void add(String key, Kind kind, String label, double[] values) {
    Candidate candidate = new Candidate(key, kind, label, values);
    boolean unknown = Arrays.stream(values).allMatch(Double::isNaN);
    if (!unknown && new Candidate(key, kind, label, known(values)).varies()) {
      found.add(candidate);
    }
  }

  private static double[] known(double[] values) {
    return Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
  }

  private void figure(Kind kind, String label, Figure figure) {
    byBake(
        figure.key(), kind, label, sheet -> number(sheet.figure(figure, Basis.BATCH)));
  }

  private void byBake(String key, Kind kind, String label, ToDoubleFunction<Worksheet> figure) {
    double[] ofBakes =
        history.bakes().stream().mapToDouble(bake -> figure.applyAsDouble(bake.sheet())).toArray();
    perBake(key, kind, label, ofBakes);
  }

  private void perBake(String key, Kind kind, String label, double[] ofBakes) {
    double[] values = new double[pieces.count()];
    Arrays.setAll(values, i -> ofBakes[pieces.bake(i)]);
    add(key, kind, label, values);
  }

  private static double number(Quantity quantity) {
    return quantity.value().orElse(Double.NaN);
  }

  // Lines

  private void lines() {
    Map<String, WorksheetLine> newest = new LinkedHashMap<>();
    List<History.Baked> backwards = new ArrayList<>(history.bakes());
    Collections.reverse(backwards);
    backwards.forEach(
        bake -> bake.sheet().lines().forEach(line -> newest.putIfAbsent(line.line().id(), line)));
    Worksheet last = backwards.get(0).sheet();
    double[] sizes = new double[history.bakes().size()];
    Arrays.setAll(sizes, i -> size(history.bakes().get(i).sheet(), last));
    Map<String, Long> names = new HashMap<>();
    newest.values().forEach(line -> names.merge(brief(line.name()), 1L, Long::sum));
    newest.forEach(
        (id, line) -> {
          boolean told = names.get(brief(line.name())) == 1;
          String name = told ? brief(line.name()) : id.replace('-', ' ');
          double[] grams = new double[sizes.length];
          Arrays.setAll(grams, i -> grams(history.bakes().get(i).sheet(), id) / sizes[i]);
          perBake(
              "line." + id, isWatery(line) ? Kind.WATERY_LINE : Kind.LINE, lower(name), grams);
          foods(id);
        });
  }

  private static String brief(String name) {
    return name.split(",", 2)[0].strip();
  }

  /** In the middle of a sentence; a name in capitals stays. */
  private static String lower(String name) {
    boolean shout = name.length() > 1 && Character.isUpperCase(name.charAt(1));
    return name.isEmpty() || shout
        ? name
        : Character.toLowerCase(name.charAt(0)) + name.substring(1);
  }

  private static boolean isWatery(WorksheetLine line) {
    return line.food()
        .filter(food -> food.kind() == FoodKind.LIQUID)
        .map(food -> food.per100g().get(Nutrient.WATER).low() >= WATERY)
        .orElse(false);
  }

  /** A line that is not there weighs nothing; one without a known mass is unknown. */
  private static double grams(Worksheet sheet, String id) {
    return sheet.line(id).map(line -> number(line.grams())).orElse(0.0);
  }

  /** How large a batch is compared with the newest: the middle proportion of their lines. */
  private static double size(Worksheet sheet, Worksheet newest) {
    List<Double> proportions = new ArrayList<>();
    for (WorksheetLine line : sheet.lines()) {
      double own = number(line.grams());
      double other = newest.line(line.line().id()).map(l -> number(l.grams())).orElse(0.0);
      if (own > 0 && other > 0) {
        proportions.add(own / other);
      }
    }
    if (proportions.isEmpty()) {
      return 1;
    }
    Collections.sort(proportions);
    double low = proportions.get((proportions.size() - 1) / 2);
    double high = proportions.get(proportions.size() / 2);
    return Math.abs(Math.log(low)) < Math.abs(Math.log(high)) ? low : high;
  }

  /** Another food in the place of the one that the line mostly held. */
  private void foods(String id) {
    Map<String, String> names = new HashMap<>();
    history.bakes().forEach(
        bake ->
            bake.sheet().line(id)
                .ifPresent(line -> names.putIfAbsent(line.line().food(), line.name())));
    levels(
        "food." + id,
        Kind.FOOD,
        i -> pieces.baked(i).sheet().line(id).map(line -> line.line().food()),
        (level, base) ->
            lower(brief(names.get(level)))
                + " in place of "
                + lower(
                    brief(names.get(level)).equals(brief(names.get(base)))
                        ? base.replace('-', ' ')
                        : brief(names.get(base)))
                );
  }

  // The oven and the pieces

  private interface OfPiece {
    double of(int piece);
  }

  private void perPiece(Kind kind, String label, OfPiece value) {
    double[] values = new double[pieces.count()];
    Arrays.setAll(values, value::of);
    add(label.replace(' ', '_'), kind, label, values);
  }

  private static Optional<BakeSetting> first(Formula formula) {
    return formula.bake().stream().findFirst();
  }

  private Formula formula(int piece) {
    return pieces.baked(piece).sheet().formula();
  }

  private double heat(int i) {
    return pieces.piece(i).temperature()
        .or(() -> first(formula(i)).flatMap(BakeSetting::temperature))
        .map(Temperature::celsius)
        .orElse(Double.NaN);
  }

  private double minutes(int i) {
    OptionalDouble noted = pieces.piece(i).minutes();
    return noted.orElseGet(
        () -> first(formula(i)).map(BakeSetting::minutes).orElse(OptionalDouble.empty())
            .orElse(Double.NaN));
  }

  private double dough(int i) {
    Piece piece = pieces.piece(i);
    return piece.doughGrams().orElseGet(
        () -> number(pieces.baked(i).sheet().figure(Figure.DOUGH_PER_PIECE, Basis.BATCH)));
  }

  private Optional<String> rack(int i) {
    return pieces.piece(i).rack().or(() -> first(formula(i)).flatMap(BakeSetting::rack));
  }

  private static String furtherStages(Formula formula) {
    StringBuilder text = new StringBuilder();
    formula.bake().stream()
        .skip(1)
        .forEach(
            stage ->
                text.append(text.length() == 0 ? "" : ", then ")
                    .append(stage.temperature().map(Temperature::toString).orElse("any heat"))
                    .append(
                        stage.minutes().isPresent()
                            ? " for " + FigureText.number(stage.minutes().getAsDouble()) + " min"
                            : ""));
    return text.length() == 0 ? "none" : text.toString();
  }

  private static String dividing(Formula formula) {
    var yield = formula.yield();
    return yield.pieces() + " " + yield.doughPerPieceGrams() + " " + yield.handlingLossPercent();
  }

  // Words

  private static Set<String> steps(Worksheet sheet) {
    Set<String> steps = new HashSet<>();
    sheet.formula().method().forEach(step -> steps.add(step.strip()));
    return steps;
  }

  /** A candidate for each text that some bakes have and others lack. */
  private void words(String key, Kind kind, Function<Worksheet, Set<String>> texts) {
    List<Set<String>> of = history.bakes().stream().map(bake -> texts.apply(bake.sheet())).toList();
    Set<String> all = new HashSet<>();
    of.forEach(all::addAll);
    Map<String, String> patterns = new LinkedHashMap<>();
    List<Set<String>> newestFirst = new ArrayList<>(of);
    Collections.reverse(newestFirst);
    // Newer words first, so that a reworded step is named as it reads now.
    all.stream()
        .sorted(
            Comparator.<String, Integer>comparing(
                    text -> {
                      int at = 0;
                      while (!newestFirst.get(at).contains(text)) {
                        at++;
                      }
                      return at;
                    })
                .thenComparing(Comparator.naturalOrder()))
        .forEach(
            text -> {
              double[] has = new double[of.size()];
              Arrays.setAll(has, i -> of.get(i).contains(text) ? 1 : 0);
              double[] lacks = Arrays.stream(has).map(value -> 1 - value).toArray();
              if (patterns.putIfAbsent(Arrays.toString(has), text) == null) {
                patterns.putIfAbsent(Arrays.toString(lacks), text);
                String label = kind == Kind.METHOD ? "the step “" + shortened(text) + "”" : key;
                perBake(key + "." + (patterns.size() / 2), kind, label, has);
              }
            });
  }

  private static String shortened(String text) {
    int most = 60;
    if (text.length() <= most) {
      return text;
    }
    int space = text.lastIndexOf(' ', most);
    return text.substring(0, space > most / 2 ? space : most) + " …";
  }

  private void word(String name, Function<Worksheet, Optional<String>> text) {
    pieceWords(name, i -> text.apply(pieces.baked(i).sheet()));
  }

  private interface TextOfPiece {
    Optional<String> of(int piece);
  }

  private interface Wording {
    String of(String level, String base);
  }

  private void pieceWords(String name, TextOfPiece text) {
    levels(
        name.replace(' ', '_'),
        Kind.OVEN,
        text,
        (level, base) -> name + " " + level + " rather than " + base);
  }

  /** A candidate for each text but the commonest; where there is none, it is not stated. */
  private void levels(String key, Kind kind, TextOfPiece text, Wording wording) {
    List<String> of = new ArrayList<>();
    Map<String, Integer> counts = new HashMap<>();
    for (int i = 0; i < pieces.count(); i++) {
      String level = text.of(i).map(String::strip).orElse(null);
      of.add(level);
      if (level != null) {
        counts.merge(level, 1, Integer::sum);
      }
    }
    List<String> levels = new ArrayList<>(counts.keySet());
    levels.sort(
        Comparator.<String, Integer>comparing(counts::get)
            .reversed()
            .thenComparing(Comparator.naturalOrder()));
    levels.stream()
        .skip(1)
        .forEach(
            level -> {
              double[] is = new double[of.size()];
              Arrays.setAll(
                  is,
                  i -> of.get(i) == null ? absent(kind) : of.get(i).equals(level) ? 1 : 0);
              add(key + "." + level, kind, wording.of(level, levels.get(0)), is);
            });
  }

  /** A line that is not there has no other food; an unknown rack is unknown. */
  private static double absent(Kind kind) {
    return kind == Kind.FOOD ? 0 : Double.NaN;
  }
}
