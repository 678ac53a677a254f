package io.ovenmark.web;

import io.ovenmark.change.Choice;
import io.ovenmark.desk.Choices;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.JsonText;
import io.ovenmark.desk.KeepDrafts;
import io.ovenmark.desk.ReweighDraft;
import io.ovenmark.desk.SaveDraft;
import io.ovenmark.desk.WorkOutDraft;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Formulas that are being edited. */
final class DraftArea implements Area {
  private final Desk desk;
  private final Supplier<By> by;

  DraftArea(Desk desk, Supplier<By> by) {
    this.desk = desk;
    this.by = by;
  }

  /** The order to begin a draft. */
  record Begin(JsonText document, String base) {}

  /** The order to keep a draft. */
  record Keep(String id, long version, JsonText document, String shortName, String note) {
    Keep {
      required("id", id);
      required("document", document);
    }
  }

  /** The order to throw a draft away. */
  record Discard(String id, long version) {
    Discard {
      required("id", id);
    }
  }

  /** The question for a draft's figures, too long for an address. */
  record Figures(JsonText document, String base, List<Integer> weighed) {
    Figures {
      required("document", document);
      weighed = weighed == null ? List.of() : weighed;
    }
  }

  /** The question for what fulfils a wish. */
  record Wished(JsonText document, String base, String target, int place, String value) {
    Wished {
      required("document", document);
      required("target", target);
      required("value", value);
    }
  }

  /** The question for how two documents differ. */
  record Two(JsonText from, JsonText to, String base) {
    Two {
      required("from", from);
      required("to", to);
    }
  }

  /** The order to save a draft. */
  record Save(
      String id, long version, String note, String shortName, Map<String, String> choices) {
    Save {
      required("id", id);
      required("note", note);
    }
  }

  private static void required(String name, Object value) {
    if (value == null) {
      throw lacks(name, "The order lacks \"" + name + "\".");
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("drafts", context -> new KeepDrafts(desk).all())
        .question("draft", context -> new KeepDrafts(desk).show(Asked.text(context, "id")))
        .question("draft/state", context -> new KeepDrafts(desk).state(Asked.text(context, "id")))
        .order("draft/begin", context -> begin(Asked.order(context, Begin.class)))
        .order("draft/keep", context -> keep(Asked.order(context, Keep.class)))
        .order("draft/discard", context -> discard(Asked.order(context, Discard.class)))
        .order("draft/figures", context ->
                figures(Asked.desk(desk, context), Asked.order(context, Figures.class)))
        .order("draft/reweigh", context ->
                reweigh(Asked.desk(desk, context), Asked.order(context, Wished.class)))
        .order("draft/differences", context ->
                differences(Asked.desk(desk, context), Asked.order(context, Two.class)))
        .order("draft/save", context ->
                save(Asked.desk(desk, context), Asked.order(context, Save.class)));
  }

  private Object begin(Begin order) {
    return new KeepDrafts(desk)
        .begin(Optional.ofNullable(order.document()), stated(order.base()), by.get());
  }

  private Object keep(Keep order) {
    KeepDrafts.Typed typed =
        new KeepDrafts.Typed(
            order.document(),
            stated(order.shortName()).orElse(""),
            stated(order.note()).orElse(""));
    return new KeepDrafts(desk).keep(order.id(), order.version(), typed, by.get());
  }

  private Object discard(Discard order) {
    return new KeepDrafts(desk).discard(order.id(), order.version());
  }

  private static Object figures(Desk shown, Figures order) {
    return new WorkOutDraft(shown)
        .call(order.document(), stated(order.base()), new HashSet<>(order.weighed()));
  }

  private static Object reweigh(Desk shown, Wished order) {
    ReweighDraft.Target target =
        ReweighDraft.Target.named(order.target())
            .orElseThrow(() -> lacks("target", "The order names no target that there is."));
    return new ReweighDraft(shown)
        .call(
            order.document(),
            stated(order.base()),
            new ReweighDraft.Wish(target, order.place(), order.value()));
  }

  private static Object differences(Desk shown, Two order) {
    return new WorkOutDraft(shown).differences(order.from(), order.to(), stated(order.base()));
  }

  private Object save(Desk shown, Save order) {
    Map<String, Choice> fields = new HashMap<>();
    Optional.ofNullable(order.choices())
        .orElse(Map.of())
        .forEach((field, side) -> fields.put(field, choice(side)));
    return new SaveDraft(shown)
        .call(
            new SaveDraft.Request(
                order.id(),
                order.version(),
                order.note(),
                stated(order.shortName()),
                new Choices(fields, Optional.empty())),
            by.get());
  }

  private static Choice choice(String side) {
    for (Choice choice : Choice.values()) {
      if (choice.name().toLowerCase(Locale.ROOT).equals(side)) {
        return choice;
      }
    }
    throw lacks("choices", "The order names a side that there is not.");
  }

  private static Optional<String> stated(String text) {
    return Optional.ofNullable(text).filter(given -> !given.isBlank());
  }

  private static Refusal lacks(String where, String sentence) {
    return new Refusal(Refusal.Reason.INVALID, where, sentence, "Reload the page.");
  }
}
