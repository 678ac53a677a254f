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
 * not get in) and that come from no other page. What comes from the network must name the one
 * address that was announced there, and show the key of a pairing, unless it is about pairing
 * itself. Reading carries nothing. Writing is a POST below {@code /api/} that says which page it
 * comes from, and carries JSON or a picture, of types that a page elsewhere cannot send without
 * asking first.
 */
final class Guard implements Handler {
  /** Bytes of an order in JSON at most. */
  static final long LARGEST_ORDER = 1L << 20;

  /** Bytes of a picture at most. */
  static final long LARGEST_PICTURE = 64L << 20;

  /** The page that pairs a device, for those that are not paired yet. */
  static final String PAIRING_PAGE = "/pair";

  /** Its order. */
  static final String PAIRING_ORDER = "/api/pair";

  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);
  private static final String ORDERS = "/api/";

  private final Optional<Network> network;
  private final Pairings pairings;
  private final WhoWrites whoWrites;

  /**
   * A guard.
   *
   * @param network where the viewer answers besides this machine; empty for nowhere
   * @param pairings the devices that may come from there
   * @param whoWrites told from whom a request comes
   */
  Guard(Optional<Network> network, Pairings pairings, WhoWrites whoWrites) {
    this.network = network;
    this.pairings = pairings;
    this.whoWrites = whoWrites;
  }

  /** The cookie that holds the key; cookies do not tell ports apart, so that its name does. */
  static String cookie(Context context) {
    return "ovenmark-" + context.req().getLocalPort();
  }

  @Override
  public void handle(Context context) {
    int port = context.req().getLocalPort();
    boolean outside =
        network.map(door -> door.host().equals(context.req().getLocalAddr())).orElse(false);
    Headers.to(outside).forEach(context::header);
    whoWrites.is(Visitor.HERE);
    String first = outside ? network.orElseThrow().host() : "127.0.0.1";
    Set<String> names =
        outside
            ? Set.of(first + ":" + port)
            : Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    String home = "http://" + first + ":" + port + "/";
    String host = context.header("Host");
    if (host == null || !names.contains(host.toLowerCase(Locale.ROOT))) {
      throw new Denied(
          403,
          "forbidden",
          "The request was not addressed to this viewer.",
          outside
              ? "Open " + home + " itself."
              : "Open " + home + " in a browser on the same machine.");
    }
    String origin = context.header("Origin");
    if (origin != null && names.stream().noneMatch(name -> origin.equals("http://" + name))) {
      throw elsewhere(home);
    }
    if (READING.contains(context.method())) {
      requireNothingCarried(context);
    } else {
      requireOrder(context, origin, home);
    }
    Visitor visitor = outside ? fromOutside(context) : Visitor.HERE;
    if (visitor.isStranger() && !isAboutPairing(context)) {
      sendAway(context);
    }
    visitor.comesWith(context);
    whoWrites.is(visitor);
  }

  private Visitor fromOutside(Context context) {
    return new Visitor(
        false, Optional.ofNullable(context.cookie(cookie(context))).flatMap(pairings::of));
  }

  private static boolean isAboutPairing(Context context) {
    return READING.contains(context.method())
        ? Site.PAIRING.contains(context.path())
        : context.path().equals(PAIRING_ORDER);
  }

  /** A person who opens a page is led to the pairing; all else is refused in words. */
  private static void sendAway(Context context) {
    String accepted = Optional.ofNullable(context.header("Accept")).orElse("");
    if (context.method().equals(HandlerType.GET)
        && accepted.contains("text/html")
        && !context.path().startsWith(ORDERS)) {
      context.header("Cache-Control", "no-store");
      context.redirect(PAIRING_PAGE);
      context.skipRemainingHandlers();
      return;
    }
    throw new Denied(
        401,
        "unpaired",
        "This device is not paired with the viewer, or no longer.",
        "Pair it on the page " + PAIRING_PAGE + ", with a code from the desk.");
  }

  private static void requireNothingCarried(Context context) {
    if (context.contentLength() > 0 || context.header("Transfer-Encoding") != null) {
      throw new Denied(
          413, "too_large", "A reading request carries no content.", "Leave the content out.");
    }
  }

  private static void requireOrder(Context context, String origin, String home) {
    boolean order = context.path().startsWith(ORDERS);
    if (!order || !context.method().equals(HandlerType.POST)) {
      context.header("Allow", order ? "GET, HEAD, POST" : "GET, HEAD");
      throw new Denied(
          405, "method_not_allowed", "This cannot be done here.", "Ask with GET or HEAD.");
    }
    String site = context.header("Sec-Fetch-Site");
    if (origin == null || (site != null && !site.equals("same-origin"))) {
      throw elsewhere(home);
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

  private static Denied elsewhere(String home) {
    return new Denied(
        403,
        "forbidden",
        "The request comes from another page.",
        "Open " + home + " itself.");
  }
}
