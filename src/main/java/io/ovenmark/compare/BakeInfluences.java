package io.ovenmark.compare;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Confounding.Influence;
import io.ovenmark.compare.Confounding.Kind;
import io.ovenmark.compare.Confounding.LikeForLike;
import io.ovenmark.compare.Confounding.Verdict;
import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Gathers what differs between the bakes of two sides. Temperature, time and rack are those that
 * the pieces really had; where no piece of a side notes them, those that its formula prescribes.
 * Steam, vessel and further stages are as prescribed. A batch in one proportion to the other is one
 * influence, not one for each line.
 */
final class BakeInfluences {
  private static final int MOST_NAMED = 6;
  private static final String FOR = " for ";

  private final Comparison comparison;
  private final Map<String, String> names;
  private final ShownUnits units;
  private final List<Influence> influences = new ArrayList<>();

  private BakeInfluences(Comparison comparison, Map<String, String> names) {
    this.comparison = comparison;
    this.names = names;
    this.units = comparison.units();
  }

  static Confounding of(Comparison comparison, Map<String, String> names) {
    return new BakeInfluences(comparison, names).judge();
  }

  private Confounding judge() {
    List<Bake> from = comparison.from().bakes();
    List<Bake> to = comparison.to().bakes();
    if (from.isEmpty() || to.isEmpty()) {
      return verdict(Verdict.NO_OUTCOMES, notBaked(from.isEmpty(), to.isEmpty()));
    }
    if (ids(from).equals(ids(to))) {
      return verdict(Verdict.SAME_BAKES, "Both sides point at the same bakes.");
    }
    formula();
    oven();
    List<LikeForLike> alike = likeForLike(from, to);
    Verdict verdict =
        switch (influences.size()) {
          case 0 -> Verdict.NOTHING_DIFFERS;
          case 1 -> Verdict.SINGLE;
          default -> Verdict.CONFOUNDED;
        };
    return new Confounding(verdict, influences, sentence(), alike, alikeSentence(alike));
  }

  private Confounding verdict(Verdict verdict, String sentence) {
    return new Confounding(verdict, List.of(), sentence, List.of(), Optional.empty());
  }

  private String notBaked(boolean from, boolean to) {
    if (from && to) {
      return "Neither side has a bake, so nothing can be said about outcomes.";
    }
    Side side = from ? comparison.from() : comparison.to();
    return side.address() + " has no bake, so nothing can be said about outcomes.";
  }

  private static Set<String> ids(List<Bake> bakes) {
    Set<String> ids = new TreeSet<>();
    bakes.forEach(bake -> ids.add(bake.path()));
    return ids;
  }

  private void formula() {
    OptionalDouble proportion = comparison.proportion();
    if (proportion.isPresent()) {
      String times = "× " + FigureText.number(proportion.getAsDouble());
      add(Kind.LINE, "size of the batch", times);
    } else {
      comparison.lines().stream()
          .filter(LineComparison::weighsDifferently)
          .forEach(line -> add(Kind.LINE, name(line), detail(line)));
    }
    comparison.foodDataChanges().stream()
        .filter(FoodDataChange::movesFigures)
        .forEach(food -> add(Kind.FOOD_DATA, "data of " + Words.brief(food.name()), ""));
    boolean piecesAlike =
        proportion.isPresent()
            && FigureText.looksTheSame(
                comparison.from().sheet().doughPerPieceGrams(),
                comparison.to().sheet().doughPerPieceGrams());
    List<FieldChange> divided =
        comparison.yieldChanges().stream().filter(FieldChange::matters).toList();
    if (!divided.isEmpty() && !piecesAlike) {
      String detail = Words.listed(divided.stream().map(BakeInfluences::detail).toList());
      add(Kind.YIELD, "dividing of the batch", detail);
    }
    if (!comparison.method().isEmpty()) {
      add(Kind.METHOD, "method", "");
    }
    comparison.texts().stream()
        .filter(FieldChange::matters)
        .forEach(note -> add(Kind.METHOD, note.label(), detail(note)));
  }

  private void add(Kind kind, String name, String detail) {
    influences.add(new Influence(kind, name, detail));
  }

  private String name(LineComparison line) {
    String name = names.get(Words.key(line));
    return line.otherName().map(other -> name + " in place of " + Words.brief(other)).orElse(name);
  }

  private String detail(LineComparison line) {
    return switch (line.change()) {
      case ADDED -> "new, " + units.mass(line.to());
      case REMOVED -> "left out, was " + units.mass(line.from());
      case REPLACED -> units.massChange(line.from(), line.to());
      default ->
          line.delta().isKnown()
              ? units.massDifference(line.delta())
              : line.fromEntered().orElse("") + FigureText.ARROW + line.toEntered().orElse("");
    };
  }

  static String detail(FieldChange change) {
    return change.label()
        + " "
        + change.from().orElse("not stated")
        + FigureText.ARROW
        + change.to().orElse("not stated");
  }

  private void oven() {
    used(Kind.OVEN_TEMPERATURE, "temperature", BakeInfluences::heat, this::prescribedHeat);
    used(Kind.OVEN_TIME, "minutes", BakeInfluences::time, this::prescribedTime);
    used(Kind.OVEN, "rack", Piece::rack, formula -> first(formula).flatMap(BakeSetting::rack));
    Set<String> replaced = new TreeSet<>();
    for (Side side : List.of(comparison.from(), comparison.to())) {
      first(side.sheet().formula())
          .ifPresent(
              stage ->
                  List.of("temperature", "minutes", "rack")
                      .forEach(field -> replaced.add("bake." + stage.id() + "." + field)));
    }
    comparison.process().stream()
        .filter(change -> change.matters() && !replaced.contains(change.field()))
        .forEach(
            change ->
                add(
                    Kind.OVEN,
                    change.label(),
                    change.from().orElse("not stated")
                        + FigureText.ARROW
                        + change.to().orElse("not stated")));
    String before = room(comparison.from());
    String after = room(comparison.to());
    if (!before.isEmpty() && !after.isEmpty() && !before.equals(after)) {
      add(Kind.ROOM, "room", before + FigureText.ARROW + after);
    }
  }

  private void used(
      Kind kind,
      String field,
      Function<Piece, Optional<String>> noted,
      Function<Formula, Optional<String>> prescribed) {
    Set<String> before = settings(comparison.from(), noted, prescribed);
    Set<String> after = settings(comparison.to(), noted, prescribed);
    if (!before.equals(after) && !before.isEmpty() && !after.isEmpty()) {
      String name =
          switch (kind) {
            case OVEN_TEMPERATURE -> "oven temperature";
            case OVEN_TIME -> "oven time";
            default -> field;
          };
      add(
          kind,
          name,
          listed(kind, before) + FigureText.ARROW + listed(kind, after));
    }
  }

  private String listed(Kind kind, Set<String> settings) {
    boolean heats = kind == Kind.OVEN_TEMPERATURE;
    return Words.listed(
        settings.stream().map(each -> heats ? units.heat(each) : each).toList());
  }

  private static Set<String> settings(
      Side side,
      Function<Piece, Optional<String>> noted,
      Function<Formula, Optional<String>> prescribed) {
    Set<String> used = new TreeSet<>(BakeInfluences::byNumber);
    for (Bake bake : side.bakes()) {
      bake.pieces().forEach(piece -> noted.apply(piece).ifPresent(used::add));
    }
    if (used.isEmpty()) {
      prescribed.apply(side.sheet().formula()).ifPresent(used::add);
    }
    return used;
  }

  /** Shorter numbers first, so that 95 °C stands before 105 °C. */
  private static int byNumber(String a, String b) {
    return a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
  }

  private static Optional<BakeSetting> first(Formula formula) {
    return formula.bake().stream().findFirst();
  }

  /** In °C, so that the same heat in both scales is the same. */
  private static Optional<String> heat(Piece piece) {
    return piece.temperature().map(BakeInfluences::celsius);
  }

  private static String celsius(Temperature temperature) {
    return FigureText.number(Math.round(temperature.celsius() * 10) / 10.0) + " °C";
  }

  private static Optional<String> time(Piece piece) {
    return minutes(piece.minutes());
  }

  private static Optional<String> minutes(OptionalDouble minutes) {
    return minutes.isPresent()
        ? Optional.of(FigureText.number(minutes.getAsDouble()) + " min")
        : Optional.empty();
  }

  private Optional<String> prescribedHeat(Formula formula) {
    return first(formula).flatMap(BakeSetting::temperature).map(BakeInfluences::celsius);
  }

  private Optional<String> prescribedTime(Formula formula) {
    return first(formula).flatMap(stage -> minutes(stage.minutes()));
  }

  private static String room(Side side) {
    Set<String> texts = new TreeSet<>();
    side.bakes().forEach(bake -> bake.ambient().ifPresent(texts::add));
    return String.join("; ", texts);
  }

  private String sentence() {
    if (influences.isEmpty()) {
      return "Nothing that was noted differs between these bakes; "
          + "a difference in outcome is chance or something that was not noted.";
    }
    List<String> each = influences.stream().map(Influence::name).toList();
    if (influences.size() == 1) {
      String detail = influences.get(0).detail();
      return "Only the "
          + each.get(0)
          + " differs between these bakes, as far as was noted"
          + (detail.isEmpty() ? "." : ": " + detail + ".");
    }
    return Words.capital(Words.number(influences.size()))
        + " things changed between these bakes ("
        + Words.listed(each, MOST_NAMED)
        + "). A difference in outcome cannot be credited to one of them.";
  }

  private static List<LikeForLike> likeForLike(List<Bake> from, List<Bake> to) {
    Map<String, List<String>> before = bySetting(from);
    Map<String, List<String>> after = bySetting(to);
    List<LikeForLike> alike = new ArrayList<>();
    before.forEach(
        (setting, pieces) -> {
          if (after.containsKey(setting)) {
            alike.add(new LikeForLike(setting, pieces, after.get(setting)));
          }
        });
    return alike;
  }

  private static Map<String, List<String>> bySetting(List<Bake> bakes) {
    Map<String, List<String>> settings = new TreeMap<>(BakeInfluences::byNumber);
    for (Bake bake : bakes) {
      for (Piece piece : bake.pieces()) {
        if (piece.temperature().isPresent() && piece.minutes().isPresent()) {
          String setting = heat(piece).orElseThrow() + FOR + time(piece).orElseThrow();
          settings
              .computeIfAbsent(setting, each -> new ArrayList<>())
              .add(bake.id() + " " + piece.id());
        }
      }
    }
    return new LinkedHashMap<>(settings);
  }

  /** A setting in °C as the reader wants it: {@code 400 °F for 14 min}. */
  private String shown(String setting) {
    int heat = setting.indexOf(FOR);
    return units.heat(setting.substring(0, heat)) + setting.substring(heat);
  }

  private Optional<String> alikeSentence(List<LikeForLike> alike) {
    boolean ovenDiffers =
        influences.stream()
            .anyMatch(
                influence ->
                    influence.kind() == Kind.OVEN_TEMPERATURE
                        || influence.kind() == Kind.OVEN_TIME);
    if (alike.isEmpty() || !ovenDiffers) {
      return Optional.empty();
    }
    List<String> groups = new ArrayList<>();
    for (LikeForLike group : alike) {
      groups.add(
          shown(group.setting())
              + ": "
              + Words.listed(group.from())
              + " with "
              + Words.listed(group.to()));
    }
    List<String> left =
        influences.stream()
            .filter(
                influence ->
                    influence.kind() != Kind.OVEN_TEMPERATURE && influence.kind() != Kind.OVEN_TIME)
            .map(Influence::name)
            .toList();
    String rest =
        left.isEmpty()
            ? " Nothing else that was noted differs between them."
            : left.size() == 1
                ? " Between them only the " + left.get(0) + " differs."
                : " Between them " + Words.number(left.size()) + " things still differ.";
    return Optional.of(
        "Pieces that may be compared like for like, " + String.join("; ", groups) + "." + rest);
  }
}
