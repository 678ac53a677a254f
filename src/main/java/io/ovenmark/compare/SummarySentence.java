package io.ovenmark.compare;

import io.ovenmark.change.Change;
import io.ovenmark.change.ChangeSentences;
import io.ovenmark.compare.GoalComparison.Course;
import io.ovenmark.compare.GoalComparison.RuleChange;
import io.ovenmark.measure.FigureText;
import io.ovenmark.worksheet.Basis;
import io.ovenmark.worksheet.Figure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Says a comparison in plain words. First what moves figures (lines, foods, yield, rules) with the
 * figures that it moved, then the oven, the method, the goal.
 */
final class SummarySentence {
  private static final String NOTHING = "Nothing that is weighed, done or baked differs";
  private static final int MOST_FIGURES = 4;
  private static final int MOST_FIELDS = 4;

  /** Told whenever they move, in this order. */
  private static final List<Figure> ALWAYS_TOLD =
      List.of(Figure.LIQUID_RATIO, Figure.NET_CARBOHYDRATE);

  private static final Map<Course, String> STANDING = new EnumMap<>(Course.class);

  static {
    STANDING.put(Course.NEWLY_BROKEN, ", now outside the goal");
    STANDING.put(Course.NEWLY_UNKNOWN, ", no longer certain to be inside the goal");
    STANDING.put(Course.STILL_BROKEN, ", still outside the goal");
    STANDING.put(Course.NEWLY_MET, ", now inside the goal");
  }

  private final Comparison comparison;
  private final Map<String, String> names;

  private SummarySentence(Comparison comparison, Map<String, String> names) {
    this.comparison = comparison;
    this.names = names;
  }

  static String of(Comparison comparison, Map<String, String> names) {
    return new SummarySentence(comparison, names).text();
  }

  private String text() {
    List<String> sentences = new ArrayList<>();
    opening().ifPresent(sentences::add);
    oven().ifPresent(sentences::add);
    method().ifPresent(sentences::add);
    notes().ifPresent(sentences::add);
    if (sentences.isEmpty()) {
      sentences.add(NOTHING + onlyWriting());
    }
    goal(sentences);
    return String.join(" ", sentences);
  }

  private Optional<String> opening() {
    List<String> clauses = new ArrayList<>();
    if (comparison.proportion().isPresent()) {
      String times = FigureText.number(comparison.proportion().getAsDouble());
      clauses.add("all lines × " + times);
    } else {
      clauses.addAll(new SummaryLines(comparison, names).clauses());
    }
    comparison.lines().stream()
        .filter(LineComparison::flourMarkChanged)
        .map(this::flourMark)
        .forEach(clauses::add);
    List<String> foods =
        comparison.foodDataChanges().stream()
            .filter(FoodDataChange::movesFigures)
            .map(food -> Words.brief(food.name()))
            .toList();
    boolean onlyFoods = clauses.isEmpty();
    if (!foods.isEmpty() && !onlyFoods) {
      clauses.add("new data of " + Words.listed(foods, MOST_FIELDS));
    }
    comparison.yieldChanges().stream()
        .filter(FieldChange::matters)
        .map(SummarySentence::field)
        .forEach(clauses::add);
    for (FieldChange rule : comparison.rules()) {
      clauses.add(
          rule.label()
              + " "
              + rule.to().orElseThrow()
              + " instead of "
              + rule.from().orElseThrow());
    }
    String head = Words.listed(clauses);
    if (!foods.isEmpty() && onlyFoods) {
      String changed = "the food changed, not the formula (";
      head =
          (clauses.isEmpty() ? changed : "new data (")
              + Words.listed(foods, MOST_FIELDS)
              + ")"
              + (clauses.isEmpty() ? "" : " and " + head);
    }
    if (head.isEmpty()) {
      return Optional.empty();
    }
    List<String> figures = figures();
    String tail = figures.isEmpty() ? "" : ": " + String.join(", ", figures);
    return Optional.of(Words.capital(head) + tail + ".");
  }

  private String flourMark(LineComparison line) {
    boolean now = line.after().orElseThrow().line().flour();
    return names.get(Words.key(line)) + (now ? " now counts" : " no longer counts") + " as flour";
  }

  /** Label, then before and after; a unit that both end in stands once. */
  private static String field(FieldChange change) {
    if (change.from().isEmpty()) {
      return change.label() + " now " + change.to().orElse("");
    }
    if (change.to().isEmpty()) {
      return change.label() + " no longer " + change.from().get();
    }
    String from = change.from().get();
    String to = change.to().get();
    int unit = to.lastIndexOf(' ');
    boolean number = unit > 0 && Character.isDigit(to.charAt(0));
    if (number && from.endsWith(to.substring(unit))) {
      from = from.substring(0, from.length() - (to.length() - unit));
    }
    return change.label() + " " + from + FigureText.ARROW + to;
  }

  private List<String> figures() {
    List<FigureComparison> told = new ArrayList<>();
    for (FigureComparison figure : ALWAYS_TOLD.stream().map(this::figureOf).toList()) {
      if (figure.showsChange()) {
        told.add(figure);
      }
    }
    for (FigureComparison figure : comparison.figures()) {
      Optional<Course> standing = standing(figure);
      boolean turned =
          standing.isPresent() && (standing.get() != Course.STILL_BROKEN || figure.showsChange());
      if (turned && !told.contains(figure)) {
        told.add(figure);
      }
    }
    return told.stream().limit(MOST_FIGURES).map(this::figure).toList();
  }

  private FigureComparison figureOf(Figure figure) {
    return comparison.figure(figure, Basis.PIECE);
  }

  private String figure(FigureComparison figure) {
    String label = figure.figure().label();
    String basis = figure.name().substring(label.length());
    String values = figure.change(comparison.units());
    boolean known = figure.from().isKnown() && figure.to().isKnown();
    return (known ? label + " " + values + basis : figure.name() + " " + values)
        + standing(figure).map(STANDING::get).orElse("");
  }

  /** The gravest of what became of the limits on a figure. */
  private Optional<Course> standing(FigureComparison figure) {
    Optional<Course> gravest = Optional.empty();
    for (RuleChange rule : comparison.goal().rules()) {
      boolean told = STANDING.containsKey(rule.course()) && limits(rule, figure);
      if (told && gravest.map(course -> gravity(rule.course()) < gravity(course)).orElse(true)) {
        gravest = Optional.of(rule.course());
      }
    }
    return gravest;
  }

  private static boolean limits(RuleChange rule, FigureComparison figure) {
    return rule.limit()
        .filter(limit -> limit.figure() == figure.figure())
        .filter(
            limit -> !limit.figure().isMacro() || figure.basis().equals(Optional.of(limit.basis())))
        .isPresent();
  }

  private static int gravity(Course course) {
    return switch (course) {
      case NEWLY_BROKEN -> 0;
      case NEWLY_UNKNOWN -> 1;
      case STILL_BROKEN -> 2;
      default -> 3;
    };
  }

  private Optional<String> oven() {
    List<String> fields =
        comparison.process().stream()
            .filter(FieldChange::matters)
            .map(SummarySentence::field)
            .toList();
    return fields.isEmpty()
        ? Optional.empty()
        : Optional.of(Words.capital(Words.listed(fields, MOST_FIELDS)) + ".");
  }

  private Optional<String> method() {
    if (comparison.method().isEmpty()) {
      return Optional.empty();
    }
    Change change =
        new Change.MethodChanged(
            comparison.from().sheet().formula().method(),
            comparison.to().sheet().formula().method());
    return Optional.of(ChangeSentences.plain().of(change));
  }

  private Optional<String> notes() {
    List<String> notes =
        comparison.texts().stream()
            .filter(FieldChange::matters)
            .map(note -> "the " + note.label())
            .toList();
    return differ(notes).map(text -> Words.capital(text) + ".");
  }

  private String onlyWriting() {
    List<String> others = new ArrayList<>();
    if (comparison.lines().stream().anyMatch(LineComparison::moved)) {
      others.add("the order of the lines");
    }
    List<String> rewritten =
        comparison.lines().stream()
            .filter(line -> line.change() == LineChange.REWRITTEN)
            .map(line -> names.get(Words.key(line)))
            .toList();
    if (!rewritten.isEmpty()) {
      others.add("the way of writing " + Words.listed(rewritten, MOST_FIELDS));
    }
    Stream.concat(comparison.process().stream(), comparison.yieldChanges().stream())
        .filter(field -> !field.matters())
        .forEach(field -> others.add("the way of writing the " + field.label()));
    comparison.texts().forEach(text -> others.add("the " + text.label()));
    return differ(others).map(text -> "; only " + text + ".").orElse(".");
  }

  private static Optional<String> differ(List<String> items) {
    if (items.isEmpty()) {
      return Optional.empty();
    }
    String verb = items.size() == 1 ? " differs" : " differ";
    return Optional.of(Words.listed(items, MOST_FIELDS) + verb);
  }

  private void goal(List<String> sentences) {
    GoalComparison goal = comparison.goal();
    if (goal.differ()) {
      String from = goal.from().map(name -> "“" + name + "”").orElse("no goal");
      String to = goal.to().map(name -> "“" + name + "”").orElse("no goal");
      sentences.add(
          from.equals(to)
              ? "The rules of the goal " + to + " differ."
              : "Held to different goals: " + from + FigureText.ARROW + to + ".");
    }
    rules(Course.NEWLY_BROKEN, "Now broken: ", sentences);
    rules(Course.NEWLY_UNKNOWN, "No longer certain: ", sentences);
    rules(Course.NEWLY_MET, "Now kept: ", sentences);
  }

  /** Allergens and foods; limits were told with their figures. */
  private void rules(Course course, String head, List<String> sentences) {
    List<String> rules =
        comparison.goal().with(course).stream()
            .filter(rule -> rule.limit().isEmpty())
            .map(SummarySentence::rule)
            .toList();
    if (!rules.isEmpty()) {
      sentences.add(head + Words.listed(rules, MOST_FIELDS) + ".");
    }
  }

  private static String rule(RuleChange rule) {
    boolean told = rule.because().isEmpty() || rule.course() == Course.NEWLY_MET;
    return rule.rule()
        + (told
            ? ""
            : " (" + Words.listed(rule.because().stream().map(Words::brief).toList()) + ")");
  }
}
