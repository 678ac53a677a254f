package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowMattered;

/** What mattered over the bakes of a formula. */
final class EffectArea implements Area {
  private final Desk desk;

  EffectArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes.question(
        "mattered",
        context ->
            new ShowMattered(Asked.desk(desk, context))
                .call(
                    Asked.address(desk, context, "address"),
                    Asked.optional(context, "variants").filter("yes"::equals).isPresent(),
                    Asked.optional(context, "outcome")));
  }
}
