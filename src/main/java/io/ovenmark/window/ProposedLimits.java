package io.ovenmark.window;

import io.ovenmark.bake.FindingVocabulary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Limits that the pieces themselves propose: for egg the core of the USDA Food Safety and
 * Inspection Service, 71 °C (160 °F, egg dishes); the faults of baking that were found in some
 * pieces, the most frequent first; and the crust of the pieces that had none. Which faults depend
 * on heat and time is common practice, no source.
 */
public final class ProposedLimits {
  /** Egg dishes, 160 °F (USDA Food Safety and Inspection Service). */
  public static final double EGG_CELSIUS = 71;

  private static final int MOST_FAULTS = 3;
  private static final int LEAST_GOOD = 2;
  private static final double HALF = 0.5;
  private static final List<FindingVocabulary> OF_BAKING =
      List.of(
          FindingVocabulary.GUMMY_CRUMB,
          FindingVocabulary.DARK_BASE,
          FindingVocabulary.DRY,
          FindingVocabulary.WET_LINE,
          FindingVocabulary.DARK_CRUST,
          FindingVocabulary.PALE,
          FindingVocabulary.FELL,
          FindingVocabulary.TOUGH,
          FindingVocabulary.HOLLOW);

  private static final Set<FindingVocabulary> OF_CRUST =
      Set.of(FindingVocabulary.DARK_CRUST, FindingVocabulary.PALE);

  private ProposedLimits() {}

  /**
   * Proposes limits.
   *
   * @param pieces the pieces
   * @param egg whether the formula contains egg
   * @return the limits; empty when nothing proposes one
   */
  public static List<WindowLimit> of(List<BakedPiece> pieces, boolean egg) {
    List<WindowLimit> limits = new ArrayList<>();
    if (egg) {
      limits.add(
          new WindowLimit.Measured(
              Measure.CORE, OptionalDouble.of(EGG_CELSIUS), OptionalDouble.empty()));
    }
    Optional<WindowLimit> crust = crust(pieces);
    OF_BAKING.stream()
        .filter(fault -> crust.isEmpty() || !OF_CRUST.contains(fault))
        .map(FindingVocabulary::word)
        .filter(word -> count(pieces, word) > 0)
        .sorted(Comparator.comparingLong((String word) -> -count(pieces, word)))
        .limit(MOST_FAULTS)
        .forEach(word -> limits.add(new WindowLimit.Finding(word, false)));
    crust.ifPresent(limits::add);
    return limits;
  }

  /** The crust of the pieces without a fault, in halves of a shade. */
  private static Optional<WindowLimit> crust(List<BakedPiece> pieces) {
    double[] good =
        pieces.stream()
            .filter(BakedPiece::lookedAt)
            .filter(piece -> piece.crustShade().isPresent())
            .filter(ProposedLimits::isWithoutFault)
            .mapToDouble(piece -> piece.crustShade().getAsDouble())
            .sorted()
            .toArray();
    if (good.length < LEAST_GOOD) {
      return Optional.empty();
    }
    double low = Math.floor(good[0] / HALF) * HALF;
    double high = Math.ceil(good[good.length - 1] / HALF) * HALF;
    return Optional.of(
        new WindowLimit.Measured(
            Measure.CRUST,
            OptionalDouble.of(low),
            OptionalDouble.of(high > low ? high : low + HALF)));
  }

  private static long count(List<BakedPiece> pieces, String word) {
    return pieces.stream().filter(piece -> piece.findings().contains(word)).count();
  }

  private static boolean isWithoutFault(BakedPiece piece) {
    return piece.findings().stream()
        .map(FindingVocabulary::of)
        .allMatch(entry -> entry.map(FindingVocabulary::merit).orElse(true));
  }
}
