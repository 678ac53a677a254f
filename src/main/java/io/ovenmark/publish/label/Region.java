package io.ovenmark.publish.label;

import java.util.Optional;

/** Whose rules a label follows. */
public enum Region {
  /** The United States: Title 21 of the Code of Federal Regulations, Part 101. */
  UNITED_STATES("us", "United States"),
  /** The European Union: Regulations (EU) No 1169/2011 and (EC) No 1924/2006. */
  EUROPEAN_UNION("eu", "European Union");

  private final String key;
  private final String label;

  Region(String key, String label) {
    this.key = key;
    this.label = label;
  }

  /**
   * The name in JSON.
   *
   * @return {@code us} or {@code eu}
   */
  public String key() {
    return key;
  }

  /**
   * The name for people.
   *
   * @return such as {@code United States}
   */
  public String label() {
    return label;
  }

  /**
   * Finds a region by its name.
   *
   * @param key such as {@code us}
   * @return the region, empty when there is none
   */
  public static Optional<Region> withKey(String key) {
    for (Region region : values()) {
      if (region.key.equals(key)) {
        return Optional.of(region);
      }
    }
    return Optional.empty();
  }
}
