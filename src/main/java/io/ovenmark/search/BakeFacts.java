package io.ovenmark.search;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is searched of a bake.
 *
 * @param address the revision that was baked, as noted then
 * @param blob id of the formula's content that was weighed
 * @param time when it went into the oven
 * @param baker who baked; empty when not noted
 * @param findings faults and merits of the tray and its pieces, each once
 * @param passages its texts, with the findings
 */
public record BakeFacts(
    String address,
    String blob,
    OffsetDateTime time,
    Optional<String> baker,
    List<String> findings,
    List<Passage> passages) {
  /** Copies the lists. */
  public BakeFacts {
    findings = List.copyOf(findings);
    passages = List.copyOf(passages);
  }

  /**
   * Finds them.
   *
   * @param bake the bake
   * @return the facts
   */
  public static BakeFacts of(Bake bake) {
    Set<String> findings = new LinkedHashSet<>(bake.findings());
    Set<Passage> texts = new LinkedHashSet<>();
    Passage.of(Passage.Place.BAKE_NOTE, bake.note()).ifPresent(texts::add);
    Passage.of(Passage.Place.AMBIENT, bake.ambient()).ifPresent(texts::add);
    for (Piece piece : bake.pieces()) {
      findings.addAll(piece.findings());
      Passage.of(Passage.Place.VERDICT, piece.verdict()).ifPresent(texts::add);
      Passage.of(Passage.Place.BAKE_NOTE, piece.note()).ifPresent(texts::add);
    }
    for (Photo photo : bake.photos()) {
      Passage.of(Passage.Place.CAPTION, photo.caption()).ifPresent(texts::add);
    }
    List<Passage> passages = new ArrayList<>();
    findings.forEach(word -> passages.add(new Passage(Passage.Place.FINDING, word)));
    passages.addAll(texts);
    return new BakeFacts(
        bake.address(),
        bake.blob(),
        bake.time(),
        bake.baker(),
        List.copyOf(findings),
        passages);
  }
}
