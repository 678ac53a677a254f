package io.ovenmark.notebook.store;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** Waits for something in short growing steps, but not forever. */
final class Patience {
  private static final long FIRST_STEP = TimeUnit.MICROSECONDS.toNanos(100);
  private static final long LONGEST_STEP = TimeUnit.MILLISECONDS.toNanos(5);

  private final long end;
  private long step = FIRST_STEP;

  Patience(Duration total) {
    this.end = System.nanoTime() + total.toNanos();
  }

  /** Waits one step; false, at once, if the time is over or the thread was interrupted. */
  boolean waits() {
    if (System.nanoTime() - end >= 0 || Thread.currentThread().isInterrupted()) {
      return false;
    }
    LockSupport.parkNanos(step);
    step = Math.min(step * 2, LONGEST_STEP);
    return true;
  }

  /** What is left of the time, in nanoseconds, at least 0. */
  long left() {
    return Math.max(0, end - System.nanoTime());
  }
}
