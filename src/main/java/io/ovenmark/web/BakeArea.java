package io.ovenmark.web;

import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ShowBake;

/** Bakes: what came out of the oven. */
final class BakeArea implements Area {
  private final Desk desk;

  BakeArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes.question(
        "bake",
        context ->
            new ShowBake(Asked.desk(desk, context))
                .call(Asked.text(context, "formula"), Asked.text(context, "id")));
  }
}
