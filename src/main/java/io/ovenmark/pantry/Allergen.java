package io.ovenmark.pantry;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * An allergen that United States or European Union law names: the nine major food allergens
 * (FD&amp;C Act section 201(qq), as amended by FALCPA 2004 and the FASTER Act 2021) and the
 * fourteen of Regulation (EU) No 1169/2011, Annex II. Cereals containing gluten are kept apart, as
 * only wheat is a major allergen in the United States.
 */
public enum Allergen {
  /** Wheat; US and EU. */
  WHEAT("wheat", true, true),
  /** Rye; EU, a cereal containing gluten. */
  RYE("rye", false, true),
  /** Barley; EU, a cereal containing gluten. */
  BARLEY("barley", false, true),
  /** Oats; EU, a cereal containing gluten. */
  OATS("oats", false, true),
  /** Crustacean shellfish; US and EU. */
  CRUSTACEANS("crustaceans", true, true),
  /** Eggs; US and EU. */
  EGGS("eggs", true, true),
  /** Fish; US and EU. */
  FISH("fish", true, true),
  /** Peanuts; US and EU. */
  PEANUTS("peanuts", true, true),
  /** Soybeans; US and EU. */
  SOYBEANS("soybeans", true, true),
  /** Milk; US and EU. */
  MILK("milk", true, true),
  /** Tree nuts; US and EU. */
  TREE_NUTS("tree nuts", true, true),
  /** Celery; EU. */
  CELERY("celery", false, true),
  /** Mustard; EU. */
  MUSTARD("mustard", false, true),
  /** Sesame; US and EU. */
  SESAME("sesame", true, true),
  /** Sulphur dioxide and sulphites above 10 mg/kg; EU. */
  SULPHITES("sulphites", false, true),
  /** Lupin; EU. People allergic to peanut can react to it. */
  LUPIN("lupin", false, true),
  /** Molluscs; EU. */
  MOLLUSCS("molluscs", false, true);

  private static final String GLUTEN = "gluten";

  private final String key;
  private final boolean unitedStates;
  private final boolean europeanUnion;

  Allergen(String key, boolean unitedStates, boolean europeanUnion) {
    this.key = key;
    this.unitedStates = unitedStates;
    this.europeanUnion = europeanUnion;
  }

  /**
   * The name in JSON and for people.
   *
   * @return such as {@code tree nuts}
   */
  public String key() {
    return key;
  }

  /**
   * Whether it is one of the nine of the United States.
   *
   * @return true when it is
   */
  public boolean unitedStates() {
    return unitedStates;
  }

  /**
   * Whether it belongs to the fourteen of the European Union.
   *
   * @return true when it does
   */
  public boolean europeanUnion() {
    return europeanUnion;
  }

  /**
   * Finds an allergen by its name.
   *
   * @param key such as {@code eggs}
   * @return the allergen, empty when there is none
   */
  public static Optional<Allergen> withKey(String key) {
    for (Allergen allergen : values()) {
      if (allergen.key.equals(key)) {
        return Optional.of(allergen);
      }
    }
    return Optional.empty();
  }

  /**
   * What a word forbids: one allergen, or for {@code gluten} the four cereals that contain it.
   *
   * @param word an allergen's name or {@code gluten}
   * @return the allergens, empty when the word is neither
   */
  public static Set<Allergen> group(String word) {
    if (word.equals(GLUTEN)) {
      return EnumSet.of(WHEAT, RYE, BARLEY, OATS);
    }
    return withKey(word).<Set<Allergen>>map(EnumSet::of).orElse(Set.of());
  }
}
