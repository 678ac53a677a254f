package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.bake.BakeForm;
import io.ovenmark.bake.TypedUnits;
import io.ovenmark.change.Choice;
import io.ovenmark.desk.BakeDrafts;
import io.ovenmark.desk.ChangeBake;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.RecordTypedBake;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.StartBake;
import io.ovenmark.desk.WorkOutBake;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Bakes: what came out of the oven, and what is being written down about it. */
final class BakeArea implements Area {
  private final Desk desk;
  private final Opening opening;
  private final RecordTypedBake record;

  /** What a draft is begun with. */
  record Begun(String document) {}

  /** What was typed into a draft; choices by field. */
  record Kept(
      String id,
      Long version,
      String base,
      String document,
      Map<String, String> choices,
      Long against) {}

  /** A draft to be thrown away. */
  record Discarded(String id, Long version) {}

  /** A bake to be worked out; with base it is a recorded one that is being changed. */
  record Worked(String address, BakeForm form, String formula, String bake, String base) {}

  /** A grid to be read. */
  record Grid(String text, TypedUnits units) {}

  /** A bake to be recorded, with the draft that kept it. */
  record Recorded(String address, String blob, BakeForm form, String draft, Long version) {}

  /** A bake to be changed; choices by field. */
  record Changed(
      String formula,
      String bake,
      String base,
      BakeForm form,
      Map<String, String> choices,
      String against) {}

  BakeArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
    record = new RecordTypedBake(desk);
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "bake",
            context ->
                new ShowBake(Asked.desk(desk, context))
                    .call(Asked.text(context, "formula"), Asked.text(context, "id")))
        .question(
            "bake/start",
            context ->
                new StartBake(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "address"), opening.by().get()))
        .question("bake/form", this::form)
        .question(
            "bake/unfinished", context -> new BakeDrafts(desk).of(Asked.text(context, "formula")))
        .question("bake/draft", context -> new BakeDrafts(desk).show(Asked.text(context, "id")))
        .order("bake/begin", this::begin)
        .order("bake/keep", this::keep)
        .order("bake/discard", this::discard)
        .order("bake/figures", this::figures)
        .order("bake/grid", this::grid)
        .order("bake/record", this::record)
        .order("bake/change", this::change);
  }

  private Object form(Context context) {
    TypedUnits units =
        new TypedUnits(
            Asked.optional(context, "mass").orElse("g"),
            Asked.optional(context, "temperature").orElse("C"));
    return new StartBake(desk)
        .filled(Asked.text(context, "formula"), Asked.text(context, "id"), units);
  }

  private Object begin(Context context) {
    Begun begun = Asked.order(context, Begun.class);
    return new BakeDrafts(desk).begin(there(begun.document(), "document"), opening.by().get());
  }

  private Object keep(Context context) {
    Kept kept = Asked.order(context, Kept.class);
    BakeDrafts.Typed typed =
        new BakeDrafts.Typed(
            there(kept.id(), "id"),
            there(kept.version(), "version"),
            there(kept.base(), "base"),
            there(kept.document(), "document"),
            choices(kept.choices()),
            kept.against() == null ? 0 : kept.against());
    return new BakeDrafts(desk).keep(typed, opening.by().get());
  }

  private Object discard(Context context) {
    Discarded discarded = Asked.order(context, Discarded.class);
    return new BakeDrafts(desk)
        .discard(there(discarded.id(), "id"), there(discarded.version(), "version"));
  }

  private Object figures(Context context) {
    Worked worked = Asked.order(context, Worked.class);
    BakeForm form = there(worked.form(), "form");
    WorkOutBake verb = new WorkOutBake(Asked.desk(desk, context));
    if (worked.base() == null) {
      Address address = desk.address(there(worked.address(), "address"));
      return verb.call(address, form, opening.by().get());
    }
    return verb.call(
        there(worked.formula(), "formula"),
        there(worked.bake(), "bake"),
        new ChangeBake.Typed(worked.base(), form, Map.of(), Optional.empty()),
        opening.by().get());
  }

  private Object grid(Context context) {
    Grid grid = Asked.order(context, Grid.class);
    TypedUnits units = grid.units() == null ? TypedUnits.METRIC : grid.units();
    return WorkOutBake.grid(there(grid.text(), "text"), units);
  }

  private Object record(Context context) {
    Recorded recorded = Asked.order(context, Recorded.class);
    Optional<RecordTypedBake.DraftState> draft =
        recorded.draft() == null
            ? Optional.empty()
            : Optional.of(
                new RecordTypedBake.DraftState(
                    recorded.draft(), there(recorded.version(), "version")));
    RecordTypedBake.Request request =
        new RecordTypedBake.Request(
            desk.address(there(recorded.address(), "address")),
            Optional.ofNullable(recorded.blob()),
            there(recorded.form(), "form"),
            draft);
    return record.call(request, opening.by().get());
  }

  private Object change(Context context) {
    Changed changed = Asked.order(context, Changed.class);
    ChangeBake.Typed typed =
        new ChangeBake.Typed(
            there(changed.base(), "base"),
            there(changed.form(), "form"),
            choices(changed.choices()),
            Optional.ofNullable(changed.against()));
    return new ChangeBake(Asked.desk(desk, context))
        .call(
            there(changed.formula(), "formula"),
            there(changed.bake(), "bake"),
            typed,
            opening.by().get());
  }

  private static Map<String, Choice> choices(Map<String, String> named) {
    Map<String, Choice> choices = new TreeMap<>();
    if (named != null) {
      named.forEach((field, side) -> choices.put(field, choice(field, side)));
    }
    return choices;
  }

  private static Choice choice(String field, String side) {
    try {
      return Choice.valueOf(String.valueOf(side).toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          field,
          "A choice is ours, theirs or base.",
          "Reload the page and try again.");
    }
  }

  private static <T> T there(T value, String name) {
    if (value == null) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          name,
          "The order lacks \"" + name + "\".",
          "Reload the page and try again.");
    }
    return value;
  }
}
