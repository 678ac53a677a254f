package io.ovenmark.cause;

import io.ovenmark.bake.Piece;
import io.ovenmark.compare.Comparison;
import io.ovenmark.compare.Side;
import io.ovenmark.measure.ShownUnits;
import java.util.List;

/**
 * A finding that came or went between one judged bake and the next.
 *
 * @param finding the word
 * @param came true when the later bake has it, false when the earlier had it
 * @param earlier the bake before
 * @param later the bake after
 * @param comparison what changed between them; of the bake with the finding only the pieces that
 *     have it count
 */
public record Turn(
    String finding, boolean came, Baked earlier, Baked later, Comparison comparison) {

  static Turn between(String finding, Baked earlier, Baked later, ShownUnits units) {
    return new Turn(
        finding,
        later.has(finding),
        earlier,
        later,
        Comparison.between(side(earlier, finding), side(later, finding), units));
  }

  private static Side side(Baked baked, String finding) {
    List<Piece> with = baked.with(finding);
    return with.isEmpty() ? baked.side() : baked.only(with);
  }

  /**
   * The bake with the finding.
   *
   * @return the later one when it came
   */
  public Baked with() {
    return came ? later : earlier;
  }

  /**
   * The bake without the finding.
   *
   * @return the earlier one when it came
   */
  public Baked without() {
    return came ? earlier : later;
  }

  /** Those pieces of the bake with the finding that have it. */
  List<Piece> piecesWith() {
    return with().with(finding);
  }

  /** All pieces of the bake without the finding. */
  List<Piece> piecesWithout() {
    return without().bake().pieces();
  }
}
