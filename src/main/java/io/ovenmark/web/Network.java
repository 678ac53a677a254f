package io.ovenmark.web;

import static java.util.Objects.requireNonNull;

import java.net.Inet4Address;
import java.time.Clock;

/**
 * The network on which a viewer answers besides its own machine, to devices that were paired.
 *
 * @param address the one address of this machine to listen on
 * @param clock by which codes and pairings expire
 */
public record Network(Inet4Address address, Clock clock) {
  /** Checks that nothing is null and that it is one address, not all of them. */
  public Network {
    requireNonNull(address, "address");
    requireNonNull(clock, "clock");
    if (address.isAnyLocalAddress() || address.isMulticastAddress()) {
      throw new IllegalArgumentException(
          address.getHostAddress() + " is not the address of one machine.");
    }
  }

  /** As it stands in an address of a page. */
  String host() {
    return address.getHostAddress();
  }
}
