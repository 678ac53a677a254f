package io.ovenmark.cause;

import java.util.Arrays;
import java.util.Optional;

/** How a gauge must have moved, from a bake without a finding to one with it, for a cause. */
public enum Way {
  /** More brings the finding. */
  HIGHER("higher", 1),
  /** Less brings the finding. */
  LOWER("lower", -1),
  /** Any change may bring it; for words. */
  OTHER("other", 0);

  private final String key;
  private final int sign;

  Way(String key, int sign) {
    this.key = key;
    this.sign = sign;
  }

  /**
   * Finds a way by its name in the table of causes.
   *
   * @param key {@code higher}, {@code lower} or {@code other}
   * @return the way, empty when there is none
   */
  public static Optional<Way> withKey(String key) {
    return Arrays.stream(values()).filter(way -> way.key.equals(key)).findFirst();
  }

  /**
   * The name in the table of causes and in JSON.
   *
   * @return {@code higher}, {@code lower} or {@code other}
   */
  public String key() {
    return key;
  }

  /** 1 for higher, −1 for lower, 0 for any change. */
  int sign() {
    return sign;
  }
}
