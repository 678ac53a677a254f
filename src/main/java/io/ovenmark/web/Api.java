package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.ShowBake;
import io.ovenmark.desk.ShowFormula;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;

/** Answers the questions that the pages ask: reads the parameters, calls the desk, writes JSON. */
final class Api {
  private final Desk desk;

  Api(Desk desk) {
    this.desk = desk;
  }

  /** {@code /api/formulas}. */
  void formulas(Context context) {
    send(context, new ListFormulas(desk).call());
  }

  /** {@code /api/timeline?line=seeded-lupin-bun/egg-free}. */
  void timeline(Context context) {
    send(context, new ShowTimeline(desk).call(address(context, "line")));
  }

  /** {@code /api/sheet?address=seeded-lupin-bun@5}. */
  void sheet(Context context) {
    send(context, new ShowFormula(desk).call(address(context, "address")));
  }

  /** {@code /api/compare?from=seeded-lupin-bun@5&to=seeded-lupin-bun@7}. */
  void compare(Context context) {
    Address from = address(context, "from");
    Address to = address(context, "to");
    send(context, new CompareRevisions(desk).call(from, to));
  }

  /** {@code /api/bake?formula=seeded-lupin-bun&id=2026-09-14-1}. */
  void bake(Context context) {
    send(context, new ShowBake(desk).call(text(context, "formula"), text(context, "id")));
  }

  /** Anything else below {@code /api}. */
  void nothing(Context context) {
    throw new Refusal(
        Refusal.Reason.NOT_FOUND,
        context.path(),
        "There is no such question.",
        "Ask /api/formulas, timeline, sheet, compare or bake.");
  }

  private static void send(Context context, Object answer) {
    Answers.send(
        context, Answers.JSON, Json.compact(answer).getBytes(StandardCharsets.UTF_8));
  }

  private Address address(Context context, String parameter) {
    return desk.address(text(context, parameter));
  }

  private static String text(Context context, String parameter) {
    String text = context.queryParam(parameter);
    if (text == null || text.isBlank()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          parameter,
          "The question lacks \"" + parameter + "\".",
          "Add ?" + parameter + "=… to the address.");
    }
    return text;
  }
}
