package io.ovenmark.web;

import static java.util.Objects.requireNonNull;

import io.ovenmark.notebook.By;
import java.util.function.Supplier;

/**
 * How a viewer is opened.
 *
 * @param port the port to listen on; 0 for any free one
 * @param by who writes through the pages, and the time now; asked at every write
 */
public record Opening(int port, Supplier<By> by) {
  /** Checks that nothing is null. */
  public Opening {
    requireNonNull(by, "by");
  }

  /**
   * On any free port.
   *
   * @param by who writes through the pages, and the time now
   * @return the opening
   */
  public static Opening onAnyPort(Supplier<By> by) {
    return new Opening(0, by);
  }
}
