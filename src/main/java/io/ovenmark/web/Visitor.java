package io.ovenmark.web;

import io.javalin.http.Context;
import java.util.Optional;

/**
 * From where a request comes: from this machine, or from a device that was paired, or from one that
 * is not yet. {@link Guard} finds out; areas may ask.
 *
 * @param here whether it comes from this machine by its own address
 * @param device the paired device, when it comes from the network
 */
record Visitor(boolean here, Optional<Pairings.Device> device) {
  private static final String KEPT_AS = "ovenmark.visitor";

  /** Someone at this machine. */
  static final Visitor HERE = new Visitor(true, Optional.empty());

  /** Whether nothing but pairing is open to it. */
  boolean isStranger() {
    return !here && device.isEmpty();
  }

  void comesWith(Context context) {
    context.attribute(KEPT_AS, this);
  }

  static Visitor of(Context context) {
    Visitor visitor = context.attribute(KEPT_AS);
    if (visitor == null) {
      throw new IllegalStateException("no request gets past the guard without a visitor");
    }
    return visitor;
  }
}
