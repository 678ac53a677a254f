package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.AnswerOrder;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.EnterAnswer;
import io.ovenmark.desk.PlanTasting;
import io.ovenmark.desk.ShowTasting;
import io.ovenmark.notebook.Refusal;
import java.util.Optional;

/** Tastings: the organiser's pages, and the sheets of the tasters. */
final class TastingArea implements Area {
  private final Desk desk;
  private final Opening opening;

  private record Sent(
      String formula, String id, Integer sheet, AnswerOrder answer, String basedOn) {}

  private record More(String formula, String id, Integer sheets) {}

  TastingArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.opening = opening;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "tastings",
            context ->
                Asked.optional(context, "address").isPresent()
                    ? show(context).list(Asked.address(desk, context, "address"))
                    : show(context).all())
        .question(
            "tasting",
            context ->
                show(context).call(Asked.text(context, "formula"), Asked.text(context, "id")))
        .question(
            "tasting/key",
            context ->
                show(context).key(Asked.text(context, "formula"), Asked.text(context, "id")))
        .question(
            "tasting/sheet",
            context ->
                show(context)
                    .sheet(
                        Asked.text(context, "formula"),
                        Asked.text(context, "id"),
                        number(Asked.text(context, "sheet"))))
        .question(
            "tasting/sheets",
            context ->
                show(context).sheets(Asked.text(context, "formula"), Asked.text(context, "id")))
        .order("tasting/new", this::plan)
        .order("tasting/more", this::more)
        .order("tasting/answer", this::answer)
        .order("tasting/correct", this::correct);
  }

  private ShowTasting show(Context context) {
    return new ShowTasting(Asked.desk(desk, context));
  }

  private Object plan(Context context) {
    PlanTasting.Request request = Asked.order(context, PlanTasting.Request.class);
    return new PlanTasting(Asked.desk(desk, context)).call(request, opening.by().get());
  }

  private Object more(Context context) {
    More more = Asked.order(context, More.class);
    return new PlanTasting(Asked.desk(desk, context))
        .more(
            there(more.formula(), "formula"),
            there(more.id(), "id"),
            there(more.sheets(), "sheets"),
            opening.by().get());
  }

  private Object answer(Context context) {
    Sent sent = Asked.order(context, Sent.class);
    return new EnterAnswer(Asked.desk(desk, context))
        .taster(
            there(sent.formula(), "formula"),
            there(sent.id(), "id"),
            there(sent.sheet(), "sheet"),
            there(sent.answer(), "answer"),
            opening.by().get());
  }

  private Object correct(Context context) {
    Sent sent = Asked.order(context, Sent.class);
    return new EnterAnswer(Asked.desk(desk, context))
        .organiser(
            there(sent.formula(), "formula"),
            there(sent.id(), "id"),
            there(sent.sheet(), "sheet"),
            there(sent.answer(), "answer"),
            Optional.ofNullable(sent.basedOn()).orElse(""),
            opening.by().get());
  }

  private static int number(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new Refusal(
          Refusal.Reason.NOT_FOUND,
          "sheet",
          "Sheets have numbers.",
          "Write the number of the sheet, such as 3.");
    }
  }

  private static <T> T there(T value, String name) {
    if (value == null) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          name,
          "The order lacks \"" + name + "\".",
          "Reload the page and try again.");
    }
    return value;
  }
}
