package io.ovenmark.compare;

import io.ovenmark.measure.FigureText;
import io.ovenmark.measure.Quantity;
import io.ovenmark.measure.ShownUnits;
import io.ovenmark.pantry.Food;
import io.ovenmark.worksheet.WorksheetLine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Words for the lines that weigh differently, the greatest difference in grams first. A line that
 * lost mass and one that came in for it, of the same role and of one order, are told together:
 * "half the egg white gave way to whey isolate".
 */
final class SummaryLines {
  private static final int MOST = 3;
  private static final double ROUGHLY = 0.02;

  private record Clause(String text, double grams) {}

  private final List<LineComparison> lines;
  private final Map<String, String> names;
  private final ShownUnits units;

  SummaryLines(Comparison comparison, Map<String, String> names) {
    this.lines = comparison.lines().stream().filter(LineComparison::weighsDifferently).toList();
    this.names = names;
    this.units = comparison.units();
  }

  /** At most four clauses; where there are more, three and one that counts the rest. */
  List<String> clauses() {
    List<Clause> all = new ArrayList<>();
    Set<LineComparison> done = Collections.newSetFromMap(new IdentityHashMap<>());
    for (LineComparison lost : lines) {
      Optional<LineComparison> won = done.contains(lost) ? Optional.empty() : standIn(lost, done);
      if (won.isPresent()) {
        double size = Math.max(Math.abs(lost.delta().low()), Math.abs(won.get().delta().low()));
        all.add(new Clause(gaveWay(lost, won.get()), size));
        done.add(lost);
        done.add(won.get());
      }
    }
    for (LineComparison line : lines) {
      if (!done.contains(line)) {
        all.add(new Clause(text(line), size(line)));
      }
    }
    all.sort(Comparator.comparingDouble(Clause::grams).reversed());
    int told = all.size() <= MOST + 1 ? all.size() : MOST;
    List<String> clauses = new ArrayList<>(all.stream().limit(told).map(Clause::text).toList());
    int rest = all.size() - told;
    if (rest > 0) {
      clauses.add(rest + " more");
    }
    return clauses;
  }

  private static double size(LineComparison line) {
    if (!line.delta().isKnown()) {
      return 0;
    }
    return line.change() == LineChange.REPLACED
        ? Math.max(line.from().low(), line.to().low())
        : Math.abs(line.delta().low());
  }

  private String text(LineComparison line) {
    String name = names.get(Words.key(line));
    Quantity delta = line.delta();
    return switch (line.change()) {
      case ADDED -> name + " new (" + mass(line.to(), line.toEntered()) + ")";
      case REMOVED -> name + " left out (" + mass(line.from(), line.fromEntered()) + ")";
      case REPLACED -> Words.brief(line.otherName().orElse("")) + " gave way to " + name;
      default -> {
        if (delta.isKnown()) {
          String grams = units.mass(Quantity.known(Math.abs(delta.low())));
          yield name + (delta.low() < 0 ? " down " : " up ") + grams;
        }
        yield name
            + " "
            + line.fromEntered().orElse("")
            + FigureText.ARROW
            + line.toEntered().orElse("")
            + ", of unknown weight";
      }
    };
  }

  private String mass(Quantity grams, Optional<String> entered) {
    return grams.isKnown() ? units.mass(grams) : entered.orElse("") + ", of unknown weight";
  }

  private String gaveWay(LineComparison lost, LineComparison won) {
    String name = names.get(Words.key(lost));
    String part =
        lost.change() == LineChange.REMOVED
            ? name
            : share(-lost.delta().low() / lost.from().low(), -lost.delta().low()) + name;
    String more = won.change() == LineChange.ADDED ? "" : "more ";
    return part + " gave way to " + more + names.get(Words.key(won));
  }

  private String share(double share, double grams) {
    double[] shares = {0.5, 1 / 3.0, 2 / 3.0, 0.25, 0.75};
    String[] words = {
      "half the ",
      "a third of the ",
      "two thirds of the ",
      "a quarter of the ",
      "three quarters of the "
    };
    for (int i = 0; i < shares.length; i++) {
      if (Math.abs(share - shares[i]) <= ROUGHLY) {
        return words[i];
      }
    }
    return units.mass(Quantity.known(grams)) + " of the ";
  }

  /** The line that came in for a line that lost mass; one of the two must have come or gone. */
  private Optional<LineComparison> standIn(LineComparison lost, Set<LineComparison> done) {
    if (lost.change() == LineChange.REPLACED
        || !lost.delta().isKnown()
        || lost.delta().low() >= 0) {
      return Optional.empty();
    }
    boolean gone = lost.change() == LineChange.REMOVED;
    return lines.stream()
        .filter(line -> !done.contains(line) && line.change() != LineChange.REPLACED)
        .filter(line -> line.delta().isKnown() && line.delta().low() > 0)
        .filter(line -> gone || line.change() == LineChange.ADDED)
        .filter(line -> sameRole(lost, line))
        .findFirst();
  }

  private static boolean sameRole(LineComparison lost, LineComparison won) {
    WorksheetLine before = lost.before().orElseThrow();
    WorksheetLine after = won.after().orElseThrow();
    Optional<Food> one = before.food();
    Optional<Food> other = after.food();
    if (one.isEmpty() || other.isEmpty()) {
      return false;
    }
    FoodRole role = FoodRole.of(one.get());
    boolean alike =
        before.line().flour() && after.line().flour()
            || role.tellsEnough() && role == FoodRole.of(other.get());
    return alike && FoodRole.ofOneOrder(before, -lost.delta().low(), after, won.delta().low());
  }
}
