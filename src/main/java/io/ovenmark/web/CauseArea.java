package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.CauseOrder;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindCauses;
import io.ovenmark.notebook.Refusal;

/** Causes of findings, and the bakes that tell changes apart. */
final class CauseArea implements Area {
  private final Desk desk;
  private final Opening opening;

  CauseArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  /** The order to begin a draft of a setting of a plan. */
  record SettingDraft(
      String address, String finding, String pieces, String tray, int plan, int setting) {
    SettingDraft {
      required("address", address);
      required("finding", finding);
    }
  }

  /** The order to begin a draft with what is done against a cause. */
  record RemedyDraft(String address, String finding, int cause) {
    RemedyDraft {
      required("address", address);
      required("finding", finding);
    }
  }

  private static void required(String name, String value) {
    if (value == null || value.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          name,
          "The order lacks \"" + name + "\".",
          "Reload the page and try again.");
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "causes",
            context ->
                new FindCauses(Asked.desk(desk, context))
                    .call(Asked.address(desk, context, "address"), order(context)))
        .order(
            "causes/setting",
            context -> {
              SettingDraft asked = Asked.order(context, SettingDraft.class);
              return new FindCauses(Asked.desk(desk, context))
                  .setting(
                      desk.address(asked.address()),
                      new CauseOrder(asked.finding(), asked.pieces(), asked.tray()),
                      asked.plan(),
                      asked.setting(),
                      opening.by().get());
            })
        .order(
            "causes/remedy",
            context -> {
              RemedyDraft asked = Asked.order(context, RemedyDraft.class);
              return new FindCauses(Asked.desk(desk, context))
                  .remedy(
                      desk.address(asked.address()),
                      CauseOrder.of(asked.finding()),
                      asked.cause(),
                      opening.by().get());
            });
  }

  private static CauseOrder order(Context context) {
    return new CauseOrder(
        Asked.optional(context, "finding").orElse(null),
        Asked.optional(context, "pieces").orElse(null),
        Asked.optional(context, "tray").orElse(null));
  }
}
