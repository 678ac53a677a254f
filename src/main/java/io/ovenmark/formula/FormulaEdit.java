package io.ovenmark.formula;

import static io.ovenmark.formula.EditMessages.quoted;
import static io.ovenmark.formula.EditMessages.refuse;
import static io.ovenmark.formula.EditMessages.unknown;
import static java.util.Objects.requireNonNull;

import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Changes a formula by short texts, as they are typed on a command line or in a form.
 *
 * <pre>{@code
 * Formula next = new FormulaEdit(formula)
 *     .set("water=188 g")
 *     .set("bake.temperature=205C")
 *     .add("psyllium-husk=12 g after salt")
 *     .remove("wheat-gluten")
 *     .formula();
 * }</pre>
 *
 * <table>
 * <caption>What can be set; where a field may be absent, an empty value clears it</caption>
 * <tr><td>{@code <line>=188 g}, {@code lines.<line>=188 g}, {@code lines.<line>.amount=188 g}
 *     </td><td>the amount</td></tr>
 * <tr><td>{@code water+=5 g}, {@code water-=10%}</td><td>raises or lowers the amount, in the unit
 *     it is written in</td></tr>
 * <tr><td>{@code lines.<line>.food}, {@code .flour} (yes or no), {@code .note}; the word "lines."
 *     may be left out</td><td>the line's other fields</td></tr>
 * <tr><td>{@code bake.temperature}, {@code .minutes}, {@code .rack}, {@code .steam}, {@code
 *     .vessel}, {@code .note}</td><td>the first stage in the oven, made under the id "bake" when
 *     there is none</td></tr>
 * <tr><td>{@code bake.<stage>.minutes} …</td><td>that stage; {@code bake.+.minutes} makes a new
 *     last one</td></tr>
 * <tr><td>{@code yield.pieces}, {@code yield.dough_per_piece_g}</td><td>one clears the other, which
 *     follows from the batch mass</td></tr>
 * <tr><td>{@code yield.handling_loss_percent}</td><td>the loss</td></tr>
 * <tr><td>{@code name}, {@code description}, {@code goal}, {@code reference}, {@code
 *     storage}</td><td>the formula's own</td></tr>
 * <tr><td>{@code method.3=text}, {@code method.3=}, {@code method.+=text}</td><td>changes, removes,
 *     appends a step</td></tr>
 * </table>
 *
 * <p>Minutes and the numbers of the yield can be raised and lowered too. The words name,
 * description, goal, reference, lines, method, bake, yield and storage always mean the formula's
 * own fields at the beginning of a path; a line that is called by one of them is reached as {@code
 * lines.bake=5 g}.
 *
 * <p>Everything that cannot be done is refused with an {@link IllegalArgumentException} whose
 * message is a sentence and, after a line break, a remedy. A refused edit changes nothing.
 *
 * @param formula the formula so far
 */
public record FormulaEdit(Formula formula) {
  private static final Set<String> OWN_WORDS =
      Set.of(
          "name", "description", "goal", "reference", "lines", "method", "bake", "yield",
          "storage");
  private static final List<String> LINE_FIELDS = List.of("amount", "food", "flour", "note");
  private static final List<String> BAKE_FIELDS =
      List.of("temperature", "minutes", "rack", "steam", "vessel", "note");
  private static final List<String> YIELD_FIELDS =
      List.of("pieces", "dough_per_piece_g", "handling_loss_percent");
  private static final double LONGEST_BAKE_MINUTES = 2880;

  /** Checks that there is a formula. */
  public FormulaEdit {
    requireNonNull(formula, "formula");
  }

  /**
   * Sets, raises or lowers one field.
   *
   * @param assignment such as {@code water=188 g}
   * @return the next state
   * @throws IllegalArgumentException when it cannot be done
   */
  public FormulaEdit set(String assignment) {
    Assignment given = Assignment.parse(assignment);
    String[] parts = given.path().split("\\.", -1);
    if (!OWN_WORDS.contains(parts[0])) {
      return line(given, parts);
    }
    return new FormulaEdit(
        switch (parts[0]) {
          case "lines" -> line(given, Arrays.copyOfRange(parts, 1, parts.length)).formula;
          case "bake" -> bake(given, parts);
          case "yield" -> yields(given, parts);
          case "method" -> method(given, parts);
          default -> heading(given, parts);
        });
  }

  /**
   * Adds a line.
   *
   * @param addition {@code [id:]food=amount}, then, when it shall not come last, {@code after
   *     <line>} or {@code before <line>}; without an id it gets the food's slug, else with -2, -3
   * @return the next state
   * @throws IllegalArgumentException when it cannot be done
   */
  public FormulaEdit add(String addition) {
    Assignment given = Assignment.parse(addition);
    String what = given.path();
    int colon = what.indexOf(':');
    String food = Assignment.slug(what.substring(colon + 1).strip());
    String id =
        colon < 0 ? formula.freeLineId(food) : Assignment.slug(what.substring(0, colon).strip());
    if (formula.line(id).isPresent()) {
      throw refuse(
          "There is already a line \"" + id + "\" in this formula.",
          "Choose another id, such as \"" + formula.freeLineId(id) + "\".");
    }
    List<String> words = List.of(given.set().split("\\s+"));
    int place = formula.lines().size();
    int count = words.size();
    if (count > 2 && List.of("after", "before").contains(words.get(count - 2))) {
      place = indexOf(words.get(count - 1)) + (words.get(count - 2).equals("after") ? 1 : 0);
      words = words.subList(0, count - 2);
    }
    List<Line> lines = new ArrayList<>(formula.lines());
    lines.add(place, Line.of(id, food, Assignment.amount(String.join(" ", words))));
    return new FormulaEdit(formula.withLines(lines));
  }

  /**
   * Removes a line or a stage in the oven.
   *
   * @param target {@code <line>}, {@code lines.<line>} or {@code bake.<stage>}
   * @return the next state
   * @throws IllegalArgumentException when there is none
   */
  public FormulaEdit remove(String target) {
    String path = target.strip();
    if (path.startsWith("bake.")) {
      BakeSetting gone = stage(path.substring("bake.".length()));
      return new FormulaEdit(
          formula.withBake(formula.bake().stream().filter(stage -> stage != gone).toList()));
    }
    String id = path.startsWith("lines.") ? path.substring("lines.".length()) : path;
    List<Line> lines = new ArrayList<>(formula.lines());
    lines.remove(indexOf(id));
    return new FormulaEdit(formula.withLines(lines));
  }

  /**
   * Replaces the food of a line, which keeps its id and its place, so that a comparison can tell
   * what stands for what.
   *
   * @param replacement {@code <line>=food}, and a new amount when it changes too: {@code butter=
   *     coconut-oil 50 g}
   * @return the next state
   * @throws IllegalArgumentException when it cannot be done
   */
  public FormulaEdit replace(String replacement) {
    Assignment given = Assignment.parse(replacement);
    String id =
        given.path().startsWith("lines.")
            ? given.path().substring("lines.".length())
            : given.path();
    String[] words = given.set().split("\\s+", 2);
    String food = Assignment.slug(words[0]);
    return change(
        id,
        line ->
            words.length == 1
                ? line.withFood(food)
                : line.withFood(food).withAmount(Assignment.amount(words[1])));
  }

  private FormulaEdit line(Assignment given, String[] parts) {
    if (parts.length == 0 || parts.length > 2) {
      throw refuse(
          quoted(given.path()) + " is not a field of a formula.",
          "Write a line and its field, such as \"lines.water.amount\".");
    }
    String field = parts.length == 1 ? "amount" : parts[1];
    if (formula.line(parts[0]).isEmpty()) {
      throw noLine(parts[0]);
    }
    return switch (field) {
      case "amount" -> change(parts[0], line -> line.withAmount(given.amount(line.amount())));
      case "food" -> {
        String food = Assignment.slug(given.set());
        yield change(parts[0], line -> line.withFood(food));
      }
      case "flour" -> {
        boolean flour = given.flag();
        yield change(parts[0], line -> line.withFlour(flour));
      }
      case "note" -> {
        Optional<String> note = given.text();
        yield change(parts[0], line -> line.withNote(note));
      }
      default ->
          throw unknown(
              "A line has no field " + quoted(field) + ".", field, "Its fields are", LINE_FIELDS);
    };
  }

  private FormulaEdit change(String id, UnaryOperator<Line> change) {
    List<Line> lines = new ArrayList<>(formula.lines());
    int index = indexOf(id);
    lines.set(index, change.apply(lines.get(index)));
    return new FormulaEdit(formula.withLines(lines));
  }

  private int indexOf(String id) {
    for (int i = 0; i < formula.lines().size(); i++) {
      if (formula.lines().get(i).id().equals(id)) {
        return i;
      }
    }
    throw noLine(id);
  }

  private IllegalArgumentException noLine(String id) {
    String sentence = "There is no line " + quoted(id) + " in this formula.";
    if (formula.lines().isEmpty()) {
      return refuse(sentence, "It has no lines yet; add one, such as \"water=180 g\".");
    }
    return unknown(
        sentence, id, "Its lines are", formula.lines().stream().map(Line::id).toList());
  }

  private Formula heading(Assignment given, String[] parts) {
    if (parts.length > 1) {
      throw refuse(
          quoted(given.path()) + " is not a field of a formula.",
          "Write \"" + parts[0] + "\" alone, or \"lines." + parts[0]
              + "\" for a line of that name.");
    }
    return switch (parts[0]) {
      case "name" ->
          formula.withName(
              given.text().orElseThrow(
                  () -> refuse("A formula needs a name.", "Write one after \"name=\".")));
      case "description" -> formula.withDescription(given.text());
      case "storage" -> formula.withStorage(given.text());
      case "goal" -> formula.withGoal(given.slug());
      default -> formula.withReference(given.slug());
    };
  }

  private Formula method(Assignment given, String[] parts) {
    List<String> steps = new ArrayList<>(formula.method());
    boolean appends =
        given.sign() == 1 && (parts.length == 1 || parts.length == 2 && parts[1].isEmpty());
    if (appends) {
      if (given.value().isEmpty()) {
        throw refuse("A step needs words.", "Write them after \"method.+=\".");
      }
      steps.add(given.value());
      return formula.withMethod(steps);
    }
    String number = parts.length == 2 ? parts[1] : "";
    int step = number.matches("[0-9]{1,6}") ? Integer.parseInt(number) : 0;
    if (step < 1 || step > steps.size()) {
      String sentence =
          number.isEmpty()
              ? quoted(given.path()) + " names no step of the method."
              : "There is no step " + quoted(number) + " in the method.";
      throw refuse(
          sentence,
          (steps.isEmpty()
                  ? "It has no steps yet"
                  : "It has steps 1 to " + steps.size())
              + "; \"method.+=text\" appends one.");
    }
    Optional<String> text = given.text();
    if (text.isPresent()) {
      steps.set(step - 1, text.get());
    } else {
      steps.remove(step - 1);
    }
    return formula.withMethod(steps);
  }

  private Formula bake(Assignment given, String[] parts) {
    if (parts.length < 2 || parts.length > 3) {
      throw refuse(
          quoted(given.path()) + " names no field of the oven stages.",
          "Write \"bake.temperature\", or \"lines.bake\" for a line that is called bake.");
    }
    String field = parts[parts.length - 1];
    if (!BAKE_FIELDS.contains(field)) {
      throw unknown(
          "An oven stage has no field " + quoted(field) + ".",
          field,
          "Its fields are",
          BAKE_FIELDS);
    }
    List<BakeSetting> stages = new ArrayList<>(formula.bake());
    boolean makes = parts.length == 3 ? parts[1].equals("+") : stages.isEmpty();
    if (makes) {
      stages.add(BakeSetting.named(freeStageId()));
    }
    int index = 0;
    if (parts.length == 3) {
      index = makes ? stages.size() - 1 : stages.indexOf(stage(parts[1]));
    }
    stages.set(index, stage(stages.get(index), field, given));
    return formula.withBake(stages);
  }

  private static BakeSetting stage(BakeSetting stage, String field, Assignment given) {
    return switch (field) {
      case "temperature" -> stage.withTemperature(given.text().map(FormulaEdit::temperature));
      case "minutes" ->
          stage.withMinutes(given.number(stage.minutes(), "min", 0, LONGEST_BAKE_MINUTES, false));
      case "rack" -> stage.withRack(given.text());
      case "steam" -> stage.withSteam(given.text());
      case "vessel" -> stage.withVessel(given.text());
      default -> stage.withNote(given.text());
    };
  }

  private static Temperature temperature(String text) {
    if (text.length() > 40) {
      throw refuse(
          "The temperature " + quoted(text) + " is not understood.",
          "Write a number and the scale, such as \"205 °C\" or \"400 °F\".");
    }
    return Temperature.parse(text.replaceAll("\\s+", " "));
  }

  private BakeSetting stage(String id) {
    return formula
        .bakeSetting(id)
        .orElseThrow(
            () -> {
              String sentence = "There is no oven stage " + quoted(id) + " in this formula.";
              List<String> ids = formula.bake().stream().map(BakeSetting::id).toList();
              return ids.isEmpty()
                  ? refuse(sentence, "It has none yet; \"bake.temperature=205C\" makes one.")
                  : unknown(sentence, id, "\"bake.+\" makes a new one; its stages are", ids);
            });
  }

  private String freeStageId() {
    String id = "bake";
    for (int i = 2; formula.bakeSetting(id).isPresent(); i++) {
      id = "bake-" + i;
    }
    return id;
  }

  private Formula yields(Assignment given, String[] parts) {
    Yield yield = formula.yield();
    String field = parts.length == 2 ? parts[1] : given.path();
    OptionalDouble none = OptionalDouble.empty();
    return switch (field) {
      case "pieces" -> {
        OptionalDouble current =
            yield.pieces().map(count -> OptionalDouble.of(count)).orElse(none);
        OptionalDouble pieces = given.number(current, "pieces", 1, 100_000, true);
        yield formula.withYield(
            pieces.isEmpty()
                ? new Yield(
                    Optional.empty(), yield.doughPerPieceGrams(), yield.handlingLossPercent())
                : new Yield(
                    Optional.of((int) pieces.getAsDouble()), none, yield.handlingLossPercent()));
      }
      case "dough_per_piece_g" -> {
        OptionalDouble dough =
            given.number(yield.doughPerPieceGrams(), "g", 0.01, 1_000_000, false);
        yield formula.withYield(
            new Yield(
                dough.isEmpty() ? yield.pieces() : Optional.empty(),
                dough,
                yield.handlingLossPercent()));
      }
      case "handling_loss_percent" ->
          formula.withYield(
              new Yield(
                  yield.pieces(),
                  yield.doughPerPieceGrams(),
                  given.number(yield.handlingLossPercent(), "%", 0, 99.9, false)));
      default ->
          throw unknown(
              "The yield has no field " + quoted(field) + ".",
              field,
              "Its fields are",
              YIELD_FIELDS);
    };
  }
}
