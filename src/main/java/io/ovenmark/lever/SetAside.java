package io.ovenmark.lever;

import static java.util.Objects.requireNonNull;

/**
 * A food that is not proposed, and why; nothing is left out silently.
 *
 * @param standIn the food
 * @param why the sort of reason
 * @param because the reason in words
 */
public record SetAside(StandIn standIn, Why why, String because) {
  /** The sorts of reasons. */
  public enum Why {
    /** The goal forbids an allergen that it contains, or the food itself. */
    FORBIDDEN("forbidden"),
    /** The figure that is to be kept is not known of it. */
    UNKNOWN("unknown"),
    /** It holds nothing of what is to be kept. */
    NOTHING("nothing"),
    /** It is leavening, acid, salt or seasoning, and what it would replace is not. */
    OTHER_WORK("other work"),
    /** It would take far more or far less of it than of what it replaces. */
    OUT_OF_PROPORTION("out of proportion");

    private final String key;

    Why(String key) {
      this.key = key;
    }

    /**
     * The name in JSON.
     *
     * @return such as {@code out of proportion}
     */
    public String key() {
      return key;
    }
  }

  /** Checks that nothing is null. */
  public SetAside {
    requireNonNull(standIn, "standIn");
    requireNonNull(why, "why");
    requireNonNull(because, "because");
  }
}
