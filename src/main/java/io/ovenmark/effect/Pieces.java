package io.ovenmark.effect;

import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** All pieces of a history in one row. */
final class Pieces {
  private final History history;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Integer> bakes = new ArrayList<>();
  private final List<Set<String>> findings = new ArrayList<>();

  Pieces(History history) {
    this.history = history;
    for (int i = 0; i < history.bakes().size(); i++) {
      var bake = history.bakes().get(i).bake();
      for (Piece piece : bake.pieces()) {
        Set<String> noted = new HashSet<>();
        bake.findings().forEach(finding -> noted.add(plain(finding)));
        piece.findings().forEach(finding -> noted.add(plain(finding)));
        pieces.add(piece);
        bakes.add(i);
        findings.add(noted);
      }
    }
  }

  private static String plain(String finding) {
    return FindingVocabulary.of(finding)
        .map(FindingVocabulary::word)
        .orElse(finding.strip().toLowerCase(Locale.ROOT));
  }

  int count() {
    return pieces.size();
  }

  Piece piece(int i) {
    return pieces.get(i);
  }

  /** Which bake of the history a piece belongs to. */
  int bake(int i) {
    return bakes.get(i);
  }

  /** The bake of a piece with its revision. */
  History.Baked baked(int i) {
    return history.bakes().get(bakes.get(i));
  }

  /** Its findings and those of its tray, in the vocabulary's words where it has them. */
  Set<String> findings(int i) {
    return findings.get(i);
  }

  /** Whether anybody looked: something was found, tasted or judged of it. */
  boolean wasLookedAt(int i) {
    return !findings.get(i).isEmpty()
        || !pieces.get(i).liking().isEmpty()
        || pieces.get(i).verdict().isPresent();
  }
}
