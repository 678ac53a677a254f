package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.JsonText;
import io.ovenmark.desk.KeepDrafts;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
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

  private static void required(String name, Object value) {
    if (value == null) {
      throw new Refusal(
          Refusal.Reason.INVALID, name, "The order lacks \"" + name + "\".", "Reload the page.");
    }
  }

  @Override
  public void addTo(Routes routes) {
    KeepDrafts drafts = new KeepDrafts(desk);
    routes
        .question("drafts", context -> drafts.all())
        .question("draft", context -> drafts.show(Asked.text(context, "id")))
        .order(
            "draft/begin",
            context -> {
              Begin order = Asked.order(context, Begin.class);
              return drafts.begin(
                  Optional.ofNullable(order.document()),
                  Optional.ofNullable(order.base()).filter(text -> !text.isBlank()),
                  by.get());
            })
        .order(
            "draft/keep",
            context -> {
              Keep order = Asked.order(context, Keep.class);
              return drafts.keep(
                  order.id(),
                  order.version(),
                  new KeepDrafts.Typed(
                      order.document(), orEmpty(order.shortName()), orEmpty(order.note())),
                  by.get());
            })
        .order(
            "draft/discard",
            context -> {
              Discard order = Asked.order(context, Discard.class);
              return drafts.discard(order.id(), order.version());
            });
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
