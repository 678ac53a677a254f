package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Asserts that something is refused. */
public final class Refusals {
  private Refusals() {}

  /** The refusal that a task ends with, which must be for a reason. */
  public static Refusal refuses(Refusal.Reason reason, ThrowingCallable task) {
    Refusal refusal = catchThrowableOfType(Refusal.class, task);
    assertThat(refusal).isNotNull();
    assertThat(refusal.reason()).as(refusal.getMessage()).isEqualTo(reason);
    return refusal;
  }
}
