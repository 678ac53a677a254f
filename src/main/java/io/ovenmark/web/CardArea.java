package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.CardOrder;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.MakeCard;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Cards: as data and texts, and as the page that is published. */
final class CardArea implements Area {
  /**
   * A card carries its style and its picture within it and runs nothing. It may stand in a frame of
   * the site, as a preview.
   */
  static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
          + " form-action 'none'; frame-ancestors 'self'";

  private static final String HTML = "text/html; charset=utf-8";

  private final Desk desk;

  CardArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "card",
            context ->
                new MakeCard(desk)
                    .call(Asked.address(desk, context, "address"), order(context)))
        .read("/made/card", this::page);
  }

  private void page(Context context) {
    String page =
        new MakeCard(desk).page(Asked.address(desk, context, "address"), order(context));
    Answers.send(context, HTML, page.getBytes(StandardCharsets.UTF_8));
    context.header("Content-Security-Policy", POLICY);
  }

  private static CardOrder order(Context context) {
    return new CardOrder(
        context.queryParam("paper"),
        context.queryParam("masses"),
        context.queryParam("times"),
        context.queryParam("photo"),
        context.queryParam("storage"),
        given(context, "more"),
        given(context, "word"));
  }

  private static List<String> given(Context context, String name) {
    return context.queryParams(name).stream().filter(text -> !text.isBlank()).toList();
  }
}
