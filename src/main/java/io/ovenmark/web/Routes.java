package io.ovenmark.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.ovenmark.desk.Json;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What can be asked of the viewer. A question reads and answers GET and HEAD; an order writes and
 * answers POST. {@link Guard} has let both through before they come here.
 */
final class Routes {
  private final RoutesConfig routes;
  private final List<String> questions = new ArrayList<>();

  Routes(RoutesConfig routes) {
    this.routes = routes;
  }

  /** A page, a file or a picture. */
  Routes read(String path, Handler handler) {
    routes.get(path, handler);
    routes.head(path, handler);
    return this;
  }

  /** A question below {@code /api/}, answered with a record as JSON. */
  Routes question(String name, Function<Context, Object> answer) {
    questions.add(name);
    return read(
        "/api/" + name, context -> Answers.send(context, Answers.JSON, json(answer, context)));
  }

  /** A question whose answer nobody may keep, since it opens something or is gone at once. */
  Routes secret(String name, Function<Context, Object> answer) {
    questions.add(name);
    return read(
        "/api/" + name,
        context ->
            context
                .contentType(Answers.JSON)
                .header("Cache-Control", "no-store")
                .result(json(answer, context)));
  }

  /** An order below {@code /api/}, whose outcome is a record as JSON that nobody may keep. */
  Routes order(String name, Function<Context, Object> outcome) {
    questions.add(name);
    routes.post(
        "/api/" + name,
        context ->
            context
                .contentType(Answers.JSON)
                .header("Cache-Control", "no-store")
                .result(json(outcome, context)));
    return this;
  }

  /** Refuses everything else below {@code /api/}. */
  void nothingElse() {
    Handler nothing =
        context -> {
          throw new Refusal(
              Refusal.Reason.NOT_FOUND,
              context.path(),
              "There is no such question.",
              "Ask one of: " + String.join(", ", questions.stream().sorted().distinct().toList())
                  + ".");
        };
    read("/api/<rest>", nothing);
    routes.post("/api/<rest>", nothing);
  }

  private static byte[] json(Function<Context, Object> answer, Context context) {
    return Json.compact(answer.apply(context)).getBytes(StandardCharsets.UTF_8);
  }
}
