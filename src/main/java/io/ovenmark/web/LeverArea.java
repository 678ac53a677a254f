package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindLevers;
import io.ovenmark.desk.LeverOrder;
import io.ovenmark.desk.OfferWishes;
import io.ovenmark.desk.ScaleFormula;
import io.ovenmark.desk.ScaleOrder;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Optional;

/** What to change to reach a figure, and a formula scaled; an answer of either becomes a draft. */
final class LeverArea implements Area {
  private final Desk desk;
  private final Opening opening;

  LeverArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  /**
   * An answer to open as a draft.
   *
   * @param address the revision that was asked about
   * @param asked what was asked
   * @param number the answer's number
   * @param note the note that was proposed with it, as the page showed it
   */
  record LeverDraft(String address, LeverOrder asked, int number, String note) {
    LeverDraft {
      required("address", address);
      required("asked", asked);
      required("note", note);
    }
  }

  /**
   * A scaled formula to open as a draft.
   *
   * @param address the revision that was scaled
   * @param asked to what
   */
  record ScaleDraft(String address, ScaleOrder asked) {
    ScaleDraft {
      required("address", address);
      required("asked", asked);
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
    routes
        .question("lever/start", context -> start(Asked.desk(desk, context), context))
        .question("lever", context -> lever(Asked.desk(desk, context), context))
        .question("scale", context -> scale(Asked.desk(desk, context), context))
        .order("lever/draft", context -> draft(Asked.order(context, LeverDraft.class)))
        .order("scale/draft", context -> draft(Asked.order(context, ScaleDraft.class)));
  }

  private static Object start(Desk shown, Context context) {
    return new OfferWishes(shown).call(Asked.address(shown, context, "address"));
  }

  private static Object lever(Desk shown, Context context) {
    LeverOrder order =
        new LeverOrder(
            all(context, "want"),
            all(context, "keep"),
            all(context, "at_least"),
            all(context, "at_most"),
            all(context, "within"),
            text(context, "batch"),
            text(context, "pieces"),
            text(context, "readable"));
    return new FindLevers(shown).call(Asked.address(shown, context, "address"), order);
  }

  private static Object scale(Desk shown, Context context) {
    ScaleOrder order =
        new ScaleOrder(
            text(context, "pieces"),
            text(context, "dough_per_piece"),
            text(context, "baked_per_piece"),
            text(context, "tin"),
            text(context, "from_tin"),
            text(context, "density"),
            text(context, "fill"),
            all(context, "have"),
            text(context, "handling_loss"),
            text(context, "baking_loss"),
            text(context, "readable"));
    return new ScaleFormula(shown).call(Asked.address(shown, context, "address"), order);
  }

  private Object draft(LeverDraft order) {
    return new FindLevers(desk)
        .draft(
            desk.address(order.address()),
            order.asked(),
            order.number(),
            Optional.of(order.note()),
            opening.by().get());
  }

  private Object draft(ScaleDraft order) {
    return new ScaleFormula(desk)
        .draft(desk.address(order.address()), order.asked(), opening.by().get());
  }

  private static List<String> all(Context context, String parameter) {
    return context.queryParams(parameter).stream().filter(text -> !text.isBlank()).toList();
  }

  private static String text(Context context, String parameter) {
    return Asked.optional(context, parameter).orElse(null);
  }
}
