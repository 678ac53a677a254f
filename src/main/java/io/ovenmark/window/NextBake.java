package io.ovenmark.window;

import java.util.Optional;

/**
 * A piece worth baking.
 *
 * @param celsius oven temperature
 * @param minutes time
 * @param settles what it tells most about; empty while the pieces do not make a map yet
 */
public record NextBake(double celsius, double minutes, Optional<Settled> settles) {
  /**
   * What a piece tells.
   *
   * @param limit the limit whose edge it tells most about
   * @param chance that a piece there keeps that limit, as it looks now
   * @param low what that chance may be as little as
   * @param high what it may be as much as
   * @param share how much of what is uncertain on the map it is expected to take away, 0 to 1
   */
  public record Settled(
      WindowLimit limit, double chance, double low, double high, double share) {}
}
