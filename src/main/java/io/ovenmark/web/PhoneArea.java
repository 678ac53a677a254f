package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.notebook.Refusal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Devices of the network: at the desk, the code that lets one in, and those that are in; on the
 * device, pairing and its end.
 */
final class PhoneArea implements Area {
  private final Optional<Network> network;
  private final Pairings pairings;

  PhoneArea(Optional<Network> network, Pairings pairings) {
    this.network = network;
    this.pairings = pairings;
  }

  /**
   * How things stand.
   *
   * @param here whether this is seen at the desk
   * @param open whether the viewer answers on the network at all
   * @param page the page where a device is paired; null when it does not
   * @param invitation the code that works at present; null for none, and on a device
   * @param tooManyTries whether the last code was given up because of wrong tries
   * @param devices all that are paired; on a device only itself
   */
  record PhoneView(
      boolean here,
      boolean open,
      String page,
      InvitationView invitation,
      boolean tooManyTries,
      List<DeviceView> devices) {}

  /**
   * A code that works at present.
   *
   * @param code the code
   * @param address the page with the code in its fragment
   * @param until when it ceases to work
   * @param secondsLeft how long that is
   * @param size modules of a side of the drawn address
   * @param path its dark modules as an SVG path
   */
  record InvitationView(
      String code, String address, String until, long secondsLeft, int size, String path) {}

  /**
   * A paired device.
   *
   * @param device its id
   * @param name of its person; may be empty
   * @param since when it was paired
   * @param until when that ends
   */
  record DeviceView(String device, String name, String since, String until) {}

  /** What a device gives to be paired. */
  record Pair(String code, String name) {
    Pair {
      if (code == null || code.isBlank()) {
        throw new Refusal(
            Refusal.Reason.INVALID, "code", "There is no code.", "Type the one at the desk.");
      }
      name = name == null ? "" : name;
    }
  }

  /** Which device. */
  record About(String device) {
    About {
      if (device == null) {
        throw new Refusal(
            Refusal.Reason.INVALID, "device", "No device is named.", "Reload the page.");
      }
    }
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .secret("phone", this::view)
        .order("phone/code", this::newCode)
        .order("phone/end", this::end)
        .order("pair", this::pair)
        .order("pair/end", this::leave);
  }

  private PhoneView view(Context context) {
    Visitor visitor = Visitor.of(context);
    int port = context.req().getLocalPort();
    String page =
        network.map(door -> "http://" + door.host() + ":" + port + Guard.PAIRING_PAGE).orElse(null);
    InvitationView invitation =
        visitor.here() && page != null
            ? pairings.code().map(code -> invitation(page, code)).orElse(null)
            : null;
    List<Pairings.Device> devices =
        visitor.here() ? pairings.devices() : visitor.device().stream().toList();
    return new PhoneView(
        visitor.here(),
        network.isPresent(),
        page,
        invitation,
        pairings.isVoid(),
        devices.stream()
            .map(
                each ->
                    new DeviceView(
                        each.id(), each.name(), time(each.since()), time(each.until())))
            .toList());
  }

  private InvitationView invitation(String page, Pairings.Code code) {
    String address = page + "#" + code.text();
    Matrix matrix = Matrix.of(address);
    long left =
        code.until().getEpochSecond() - network.orElseThrow().clock().instant().getEpochSecond();
    return new InvitationView(
        code.text(), address, time(code.until()), left, matrix.size(), matrix.path());
  }

  /** By the clock of the desk, with its offset. */
  private String time(Instant instant) {
    return instant.atZone(network.orElseThrow().clock().getZone()).toOffsetDateTime().toString();
  }

  private PhoneView newCode(Context context) {
    requireDesk(context);
    if (network.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          "",
          "The viewer answers on this machine alone.",
          "End it and start it again with: ovenmark view --lan");
    }
    pairings.newCode();
    return view(context);
  }

  private PhoneView end(Context context) {
    requireDesk(context);
    pairings.end(Asked.order(context, About.class).device());
    return view(context);
  }

  private DeviceView pair(Context context) {
    Pair order = Asked.order(context, Pair.class);
    if (Visitor.of(context).here()) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          "code",
          "At this machine nothing need be paired.",
          "Open the address on the phone instead.");
    }
    Pairings.Paired paired = pairings.pair(order.code(), order.name());
    Visitor.of(context).device().ifPresent(before -> pairings.end(before.id()));
    keep(context, paired.key(), Pairings.PAIRING_LASTS.toSeconds());
    Pairings.Device device = paired.device();
    return new DeviceView(device.id(), device.name(), time(device.since()), time(device.until()));
  }

  private PhoneView leave(Context context) {
    Visitor.of(context).device().ifPresent(device -> pairings.end(device.id()));
    keep(context, "", 0);
    return new PhoneView(false, true, null, null, false, List.of());
  }

  /** No script reads it and no other site makes the browser send it. */
  private static void keep(Context context, String key, long seconds) {
    context.header(
        "Set-Cookie",
        Guard.cookie(context)
            + "="
            + key
            + "; Path=/; Max-Age="
            + seconds
            + "; HttpOnly; SameSite=Strict");
  }

  private static void requireDesk(Context context) {
    if (!Visitor.of(context).here()) {
      throw new Denied(
          403,
          "forbidden",
          "Who may come in is decided at the desk.",
          "Open the page “Phone” on the machine that runs the viewer.");
    }
  }
}
