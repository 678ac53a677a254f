package io.ovenmark.web;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.By;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How a viewer is opened.
 *
 * @param port the port to listen on; 0 for any free one
 * @param by who writes through the pages, and the time now; asked at every write, by the handler of
 *     an order itself, since a paired device writes in the name that its person gave
 * @param network where to answer besides this machine; empty for nowhere
 */
public record Opening(int port, Supplier<By> by, Optional<Network> network) {
  /** Checks that nothing is null. */
  public Opening {
    requireNonNull(by, "by");
    requireNonNull(network, "network");
  }

  /**
   * On this machine alone.
   *
   * @param port the port to listen on; 0 for any free one
   * @param by who writes through the pages, and the time now
   */
  public Opening(int port, Supplier<By> by) {
    this(port, by, Optional.empty());
  }

  /**
   * On any free port of this machine alone.
   *
   * @param by who writes through the pages, and the time now
   * @return the opening
   */
  public static Opening onAnyPort(Supplier<By> by) {
    return new Opening(0, by);
  }
}
