package io.ovenmark.cause;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Side;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One bake with the revision that was baked.
 *
 * @param side the revision, with this bake and no other
 */
public record Baked(Side side) {
  /** Checks that there is one bake. */
  public Baked {
    if (side.bakes().size() != 1) {
      throw new IllegalArgumentException("a baked side has one bake, not " + side.bakes().size());
    }
  }

  /**
   * The bake.
   *
   * @return the bake
   */
  public Bake bake() {
    return side.bakes().get(0);
  }

  /**
   * Whether anything was found on it. A bake on which nothing is noted tells nothing about what is
   * missing there.
   *
   * @return false when neither the tray nor a piece has a finding
   */
  public boolean isJudged() {
    return !bake().findings().isEmpty()
        || bake().pieces().stream().anyMatch(piece -> !piece.findings().isEmpty());
  }

  /**
   * All that was found, tray first.
   *
   * @return the words in small letters, each once
   */
  public Set<String> findings() {
    return Stream.concat(
            bake().findings().stream(),
            bake().pieces().stream().flatMap(piece -> piece.findings().stream()))
        .map(Baked::word)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * Whether it has a finding, on the tray or on any piece.
   *
   * @param finding the word
   * @return true when it has
   */
  public boolean has(String finding) {
    return findings().contains(word(finding));
  }

  /**
   * The pieces with a finding: all when it was noted for the tray.
   *
   * @param finding the word
   * @return the pieces
   */
  public List<Piece> with(String finding) {
    return bake().pieces().stream().filter(piece -> onTray(finding) || on(piece, finding)).toList();
  }

  /**
   * The pieces without a finding.
   *
   * @param finding the word
   * @return the pieces; none when it was noted for the tray
   */
  public List<Piece> without(String finding) {
    return bake().pieces().stream()
        .filter(piece -> !onTray(finding) && !on(piece, finding))
        .toList();
  }

  /**
   * The side with some of the pieces only.
   *
   * @param pieces the pieces
   * @return the side
   */
  Side only(List<Piece> pieces) {
    return side.withBakes(List.of(bake().withPieces(pieces)));
  }

  private boolean onTray(String finding) {
    return bake().findings().stream().map(Baked::word).anyMatch(word(finding)::equals);
  }

  private static boolean on(Piece piece, String finding) {
    return piece.findings().stream().map(Baked::word).anyMatch(word(finding)::equals);
  }

  /** A finding as it is compared: without blanks around and in small letters. */
  static String word(String finding) {
    return finding.strip().toLowerCase(Locale.ROOT);
  }
}
