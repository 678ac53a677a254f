package io.ovenmark.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** Says on the error stream how far something is, at most once a second. */
final class ProgressLines {
  private static final Duration PAUSE = Duration.ofSeconds(1);

  private final Output err;
  private final Clock clock;
  private Instant told;

  ProgressLines(Surroundings surroundings) {
    this.err = new Output(surroundings.err());
    this.clock = surroundings.clock();
    this.told = clock.instant();
  }

  /**
   * Some of it is done.
   *
   * @param what is being done, such as {@code Checking photos}
   * @param done how much so far
   * @param total how much in all; 0 when not known
   */
  void at(String what, long done, long total) {
    Instant now = clock.instant();
    if (Duration.between(told, now).compareTo(PAUSE) >= 0) {
      told = now;
      err.line(what + ": " + done + (total > 0 ? " of " + total : "") + " …");
    }
  }
}
