package io.ovenmark.web;

import io.ovenmark.desk.ChooseInKitchen;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.KeepSettings;
import io.ovenmark.desk.SettingsForm;

/** The notebook's own settings, and what can be chosen in forms. */
final class NotebookArea implements Area {
  private final Desk desk;
  private final Opening opening;

  NotebookArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("kitchen", context -> new ChooseInKitchen(desk).call())
        .question("notebook", context -> new KeepSettings(desk).show())
        .order(
            "notebook/try",
            context ->
                new KeepSettings(Asked.desk(desk, context))
                    .look(Asked.order(context, SettingsForm.class)))
        .order(
            "notebook/save",
            context ->
                new KeepSettings(desk)
                    .call(Asked.order(context, SettingsForm.class), opening.by().get()));
  }
}
