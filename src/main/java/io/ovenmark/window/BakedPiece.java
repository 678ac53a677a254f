package io.ovenmark.window;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.measure.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A piece as the window sees it. What is empty is unknown.
 *
 * @param bake id of its bake
 * @param piece its letter
 * @param address the revision that was baked
 * @param ovenCelsius oven temperature, °C
 * @param minutes time in the oven, above 0
 * @param coreCelsius temperature in the centre, °C
 * @param crustShade crust from 0 to 4
 * @param dose thermal dose of the core, minutes at the reference temperature
 * @param findings its own and those of its tray
 * @param lookedAt whether somebody noted what was seen or tasted; else what is not among the
 *     findings is unknown, not absent
 * @param liking mean liking
 */
public record BakedPiece(
    String bake,
    String piece,
    String address,
    OptionalDouble ovenCelsius,
    OptionalDouble minutes,
    OptionalDouble coreCelsius,
    OptionalDouble crustShade,
    OptionalDouble dose,
    List<String> findings,
    boolean lookedAt,
    OptionalDouble liking) {
  /** Checks and copies. */
  public BakedPiece {
    requireNonNull(bake, "bake");
    requireNonNull(piece, "piece");
    requireNonNull(address, "address");
    findings = List.copyOf(findings);
  }

  /**
   * The pieces of a bake.
   *
   * @param bake the bake
   * @param dose how the thermal dose is worked out
   * @return its pieces in their order
   */
  public static List<BakedPiece> of(Bake bake, ThermalDose dose) {
    List<BakedPiece> pieces = new ArrayList<>();
    for (Piece piece : bake.pieces()) {
      Set<String> findings = new LinkedHashSet<>(piece.findings());
      findings.addAll(bake.findings());
      boolean lookedAt =
          !findings.isEmpty()
              || !piece.liking().isEmpty()
              || !piece.attributes().isEmpty()
              || piece.verdict().isPresent();
      pieces.add(
          new BakedPiece(
              bake.id(),
              piece.id(),
              bake.address(),
              celsius(piece.temperature()),
              piece.minutes().orElse(0) > 0 ? piece.minutes() : OptionalDouble.empty(),
              celsius(piece.core()),
              piece.crustShade(),
              dose.of(piece.coreLog()),
              List.copyOf(findings),
              lookedAt,
              piece.meanLiking()));
    }
    return pieces;
  }

  private static OptionalDouble celsius(Optional<Temperature> temperature) {
    return temperature.isPresent()
        ? OptionalDouble.of(temperature.get().celsius())
        : OptionalDouble.empty();
  }
}
