package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindWindow;
import io.ovenmark.desk.WindowOrder;
import io.ovenmark.desk.WindowViews;
import java.util.List;

/** Where a formula keeps its limits on the map of oven temperature × time. */
final class WindowArea implements Area {
  private final Desk desk;

  WindowArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes.question("window", this::window);
  }

  private WindowViews.WindowSheet window(Context context) {
    WindowOrder order =
        new WindowOrder(
            context.queryParam("pieces"),
            Asked.optional(context, "limits").map(text -> List.of(text.split(";"))).orElse(null),
            context.queryParam("along"),
            context.queryParam("oven"),
            context.queryParam("time"),
            context.queryParam("reference"),
            context.queryParam("z"));
    return new FindWindow(Asked.desk(desk, context))
        .call(Asked.address(desk, context, "address"), order);
  }
}
