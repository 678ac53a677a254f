package io.ovenmark.web;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The one door: whatever comes in passes here first. It lets requests through that name this server
 * by a name of this machine (so that a page elsewhere, whose name was pointed at this machine, does
 * not get in) and that come from no other page. Reading carries nothing. Writing is a POST below
 * {@code /api/} that says which page it comes from, and carries JSON or a picture, of types that a
 * page elsewhere cannot send without asking first.
 */
final class Guard implements Handler {
  /** Bytes of an order in JSON at most. */
  static final long LARGEST_ORDER = 1L << 20;

  /** Bytes of a picture at most. */
  static final long LARGEST_PICTURE = 64L << 20;

  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);
  private static final String ORDERS = "/api/";

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
      throw elsewhere(port);
    }
    if (READING.contains(context.method())) {
      requireNothingCarried(context);
    } else {
      requireOrder(context, origin, port);
    }
  }

  private static void requireNothingCarried(Context context) {
    if (context.contentLength() > 0 || context.header("Transfer-Encoding") != null) {
      throw new Denied(
          413, "too_large", "A reading request carries no content.", "Leave the content out.");
    }
  }

  private static void requireOrder(Context context, String origin, int port) {
    boolean order = context.path().startsWith(ORDERS);
    if (!order || !context.method().equals(HandlerType.POST)) {
      context.header("Allow", order ? "GET, HEAD, POST" : "GET, HEAD");
      throw new Denied(
          405, "method_not_allowed", "This cannot be done here.", "Ask with GET or HEAD.");
    }
    String site = context.header("Sec-Fetch-Site");
    if (origin == null || (site != null && !site.equals("same-origin"))) {
      throw elsewhere(port);
    }
    long length = context.contentLength();
    if (length < 0) {
      throw new Denied(411, "no_length", "The order does not say how long it is.", "Try again.");
    }
    String type = Optional.ofNullable(context.contentType()).orElse("").toLowerCase(Locale.ROOT);
    boolean json = type.equals("application/json") || type.startsWith("application/json;");
    boolean picture = type.startsWith("image/") || type.equals("application/octet-stream");
    if (!json && !picture) {
      throw new Denied(
          415, "wrong_type", "An order is JSON or a picture.", "Reload the page and try again.");
    }
    long largest = json ? LARGEST_ORDER : LARGEST_PICTURE;
    if (length > largest) {
      throw new Denied(
          413,
          "too_large",
          "That is larger than the " + (largest >> 20) + " MB that are taken here.",
          json ? "Shorten what you have typed." : "Choose a smaller picture.");
    }
  }

  private static Denied elsewhere(int port) {
    return new Denied(
        403,
        "forbidden",
        "The request comes from another page.",
        "Open http://127.0.0.1:" + port + "/ itself.");
  }
}
