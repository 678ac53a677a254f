package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.BesideReference;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ReplaceFood;
import io.ovenmark.desk.ReplaceOrder;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import java.util.function.Supplier;

/** Foods that stand in for others, and a formula beside the one that it was rebuilt from. */
final class ReplaceArea implements Area {
  private final Desk desk;
  private final Supplier<By> by;

  ReplaceArea(Desk desk, Supplier<By> by) {
    this.desk = desk;
    this.by = by;
  }

  /** The order to begin a draft with a food. */
  record Begin(
      String address, String line, String keep, String goal, String with, String readable) {
    Begin {
      if (address == null || address.isBlank()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "address",
            "The order lacks \"address\".",
            "Reload the page.");
      }
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "replace/choices",
            context ->
                new ReplaceFood(Asked.desk(desk, context))
                    .choices(Asked.address(desk, context, "address")))
        .question(
            "replace",
            context ->
                new ReplaceFood(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "address"), order(context)))
        .order("replace/draft", context -> draft(Asked.order(context, Begin.class)))
        .question(
            "rebuild",
            context ->
                new BesideReference(Asked.desk(desk, context))
                    .call(
                        Asked.address(desk, context, "address"),
                        Asked.optional(context, "reference").map(desk::address)));
  }

  private static ReplaceOrder order(Context context) {
    return new ReplaceOrder(
        Asked.text(context, "line"),
        context.queryParam("keep"),
        context.queryParam("goal"),
        context.queryParam("with"),
        context.queryParam("readable"));
  }

  private Object draft(Begin order) {
    return new ReplaceFood(desk)
        .draft(
            desk.address(order.address()),
            new ReplaceOrder(
                order.line(), order.keep(), order.goal(), order.with(), order.readable()),
            by.get());
  }
}
