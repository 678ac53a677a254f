package io.ovenmark.web;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.Locale;
import java.util.Set;

/**
 * The one door: whatever comes in passes here first. It lets requests through that name this server
 * by a name of this machine (so that a page elsewhere, whose name was pointed at this machine, does
 * not get in), that come from no other page, that only read, and that carry nothing.
 */
final class Guard implements Handler {
  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

  @Override
  public void handle(Context context) {
    Headers.ALWAYS.forEach(context::header);
    int port = context.req().getLocalPort();
    Set<String> names = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    String host = context.header("Host");
    if (host == null || !names.contains(host.toLowerCase(Locale.ROOT))) {
      throw new Denied(
          403,
          "forbidden",
          "The request was not addressed to this viewer.",
          "Open http://127.0.0.1:" + port + "/ in a browser on the same machine.");
    }
    String origin = context.header("Origin");
    if (origin != null && names.stream().noneMatch(name -> origin.equals("http://" + name))) {
      throw new Denied(
          403,
          "forbidden",
          "The request comes from another page.",
          "Open http://127.0.0.1:" + port + "/ itself.");
    }
    if (!READING.contains(context.method())) {
      context.header("Allow", "GET, HEAD");
      throw new Denied(
          405, "method_not_allowed", "The viewer only reads.", "Ask with GET or HEAD.");
    }
    if (context.contentLength() > 0 || context.header("Transfer-Encoding") != null) {
      throw new Denied(
          413, "too_large", "A reading request carries no content.", "Leave the content out.");
    }
  }
}
