package io.ovenmark.formula;

import io.ovenmark.json.Extras;
import io.ovenmark.json.Fields;
import io.ovenmark.json.TypedFields;
import io.ovenmark.measure.Amount;
import io.ovenmark.measure.Range;
import io.ovenmark.measure.Slug;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * The one set of rules by which a formula is read, from a file or from what somebody is typing.
 * Reports what is wrong to the fields; whoever called decides whether that refuses the file.
 */
final class FormulaReading {
  private final boolean typed;
  private final Set<String> lineIds = new HashSet<>();
  private final Set<String> bakeIds = new HashSet<>();
  private final List<Integer> places = new ArrayList<>();
  private int place;

  /** A line or stage of which the file may leave the id to be found. */
  private record Draft<T>(Optional<String> id, String wanted, Function<String, T> withId) {}

  /**
   * A reading.
   *
   * @param typed whether it is being typed: blank counts as absent, numbers may be texts
   */
  FormulaReading(boolean typed) {
    this.typed = typed;
  }

  FormulaDraft formula(Fields fields) {
    Optional<String> name = name(fields);
    Optional<String> description = text(fields, "description");
    Optional<String> goal = slug(fields, "goal");
    Optional<String> reference = slug(fields, "reference");
    List<Draft<Line>> lines = fields.objects("lines", this::line);
    List<String> method = steps(fields.texts("method"));
    List<Draft<BakeSetting>> bake = fields.objects("bake", this::bakeSetting);
    Yield yield = fields.object("yield").map(this::yield).orElse(Yield.UNSTATED);
    Optional<String> storage = text(fields, "storage");
    Extras extras = fields.extras();
    Formula formula =
        new Formula(
            name.orElse(FormulaDraft.NO_NAME),
            description,
            goal,
            reference,
            settle(lines, lineIds),
            method,
            settle(bake, bakeIds),
            yield,
            storage,
            extras);
    return new FormulaDraft(formula, places, fields.problems());
  }

  private Optional<String> name(Fields fields) {
    if (!typed) {
      return fields.requiredText("name");
    }
    Optional<String> name = new TypedFields(fields).text("name");
    if (name.isEmpty()) {
      fields.problem("name", "The formula has no name.", "Give it one.");
    }
    return name;
  }

  private Optional<String> text(Fields fields, String name) {
    return typed ? new TypedFields(fields).text(name) : fields.text(name);
  }

  private OptionalDouble number(Fields fields, String name, Range range) {
    return typed
        ? new TypedFields(fields).number(name, range.least(), range.most())
        : fields.number(name, range.least(), range.most());
  }

  /** A short name; in a draft a blank one is absent. */
  private Optional<String> slug(Fields fields, String name) {
    return parsed(fields, name, Slug::check);
  }

  private <T> Optional<T> parsed(Fields fields, String name, Function<String, T> parse) {
    return typed && new TypedFields(fields).text(name).isEmpty()
        ? Optional.empty()
        : fields.parsed(name, text -> parse.apply(typed ? text.strip() : text));
  }

  private List<String> steps(List<String> method) {
    return typed
        ? method.stream().map(String::strip).filter(step -> !step.isEmpty()).toList()
        : method;
  }

  private Optional<Draft<Line>> line(Fields fields) {
    int here = place++;
    Optional<String> id = id(fields, lineIds, "line");
    Optional<String> food = slug(fields, "food");
    Optional<Amount> amount =
        parsed(fields, "amount", text -> Line.checked(Amount.parse(text)));
    boolean flour = fields.flag("flour");
    Optional<String> note = text(fields, "note");
    Extras extras = fields.extras();
    boolean noFood = typed ? new TypedFields(fields).isBlank("food") : !fields.has("food");
    boolean noAmount = typed ? new TypedFields(fields).isBlank("amount") : !fields.has("amount");
    if (typed && noFood && noAmount && note.isEmpty() && extras.isEmpty()) {
      return Optional.empty();
    }
    if (noFood) {
      fields.problem(
          "food",
          "The line has no food.",
          typed ? "Choose one, or remove the line." : "Add the short name of a food.");
    }
    if (noAmount) {
      fields.problem("amount", "The line has no amount.", "Add one such as \"150 g\".");
    }
    if (!typed && (food.isEmpty() || amount.isEmpty())) {
      return Optional.empty();
    }
    places.add(here);
    String slug = food.orElse(FormulaDraft.NO_FOOD);
    Amount entered =
        amount.orElseGet(() -> Amount.unread(new TypedFields(fields).text("amount").orElse("")));
    return Optional.of(
        new Draft<>(id, slug, found -> new Line(found, slug, entered, flour, note, extras)));
  }

  private Optional<Draft<BakeSetting>> bakeSetting(Fields fields) {
    Optional<String> id = id(fields, bakeIds, "bake setting");
    BakeSetting setting =
        BakeSetting.named("bake")
            .withTemperature(parsed(fields, "temperature", Temperature::parse))
            .withMinutes(number(fields, "minutes", BakeSetting.MINUTES))
            .withRack(text(fields, "rack"))
            .withSteam(text(fields, "steam"))
            .withVessel(text(fields, "vessel"))
            .withNote(text(fields, "note"))
            .withExtras(fields.extras());
    if (typed && setting.equals(BakeSetting.named("bake")) && fields.problems().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Draft<>(id, "bake", setting::withId));
  }

  private Optional<String> id(Fields fields, Set<String> ids, String what) {
    Optional<String> id = slug(fields, "id");
    if (id.isPresent() && !ids.add(id.get())) {
      fields.problem(
          "id",
          "The " + what + " id \"" + id.get() + "\" stands twice.",
          "Give one of the two another id.");
      return Optional.empty();
    }
    return id;
  }

  private static <T> List<T> settle(List<Draft<T>> drafts, Set<String> taken) {
    List<T> settled = new ArrayList<>();
    for (Draft<T> draft : drafts) {
      String id = draft.id().orElseGet(() -> FreeId.of(draft.wanted(), taken::contains));
      taken.add(id);
      settled.add(draft.withId().apply(id));
    }
    return settled;
  }

  private Yield yield(Fields fields) {
    Optional<Integer> pieces =
        typed
            ? new TypedFields(fields).whole("pieces", 1, Yield.MOST_PIECES)
            : fields.whole("pieces", 1, Yield.MOST_PIECES);
    OptionalDouble dough = number(fields, "dough_per_piece_g", Yield.DOUGH_GRAMS);
    OptionalDouble loss = number(fields, "handling_loss_percent", Yield.LOSS_PERCENT);
    try {
      return new Yield(pieces, dough, loss);
    } catch (IllegalArgumentException e) {
      fields.problem("", e);
      return Yield.UNSTATED;
    }
  }
}
