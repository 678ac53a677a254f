package io.ovenmark.pantry;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * Where a food's figures come from.
 *
 * @param kind which sort of source
 * @param id the source's own number, such as an NDB number; empty when it has none
 * @param note anything a person should know; empty when there is nothing
 */
public record Source(Kind kind, Optional<String> id, Optional<String> note) {

  /** The sorts of sources. */
  public enum Kind {
    /** USDA National Nutrient Database for Standard Reference, Release 28. */
    SR28("SR28"),
    /** USDA FoodData Central. */
    FOOD_DATA_CENTRAL("FoodData Central"),
    /** The package's own label, entered by a person. */
    LABEL("label"),
    /** Typical label values, to be replaced by the package's own. */
    TYPICAL("typical"),
    /** Worked out or measured by the notebook's own people. */
    OWN("own");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /**
     * The name in JSON and for people.
     *
     * @return such as {@code SR28}
     */
    public String key() {
      return key;
    }

    /**
     * Finds a kind by its name.
     *
     * @param key such as {@code label}
     * @return the kind, empty when there is none
     */
    public static Optional<Kind> withKey(String key) {
      for (Kind kind : values()) {
        if (kind.key.equals(key)) {
          return Optional.of(kind);
        }
      }
      return Optional.empty();
    }
  }

  /** Checks that nothing is null. */
  public Source {
    requireNonNull(kind, "kind");
    requireNonNull(id, "id");
    requireNonNull(note, "note");
  }
}
