package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.LabelChoices;
import io.ovenmark.desk.LabelViews;
import io.ovenmark.desk.ShowLabel;
import java.util.List;

/** What the figures of a formula would be on a label. */
final class LabelArea implements Area {
  private final Desk desk;

  LabelArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes.question("label", this::label);
  }

  private LabelViews.LabelSheet label(Context context) {
    LabelChoices order =
        new LabelChoices(
            context.queryParam("loss"),
            context.queryParam("energy"),
            context.queryParam("reference"),
            Asked.optional(context, "regions")
                .map(text -> List.of(text.split(",")))
                .orElse(List.of()));
    return new ShowLabel(Asked.desk(desk, context))
        .call(Asked.address(desk, context, "address"), order);
  }
}
