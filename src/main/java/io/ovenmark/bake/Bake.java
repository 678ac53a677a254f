package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Slug;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One tray of one revision.
 *
 * @param formula slug of the formula
 * @param id name within the formula, {@code <date>-<n>}
 * @param address the revision that was baked, as a person reads it, such as {@code lupin-bun@5}
 * @param blob Git blob id of the formula file that was weighed, 40 hexadecimal digits
 * @param time when it went into the oven
 * @param baker who baked; empty when not noted
 * @param ambient room and oven remarks; empty when not noted
 * @param note anything else; empty when there is none
 * @param pieces the pieces, ids unique
 * @param findings faults and merits of the whole tray
 * @param photos the pictures
 * @param extras unknown fields
 */
public record Bake(
    String formula,
    String id,
    String address,
    String blob,
    OffsetDateTime time,
    Optional<String> baker,
    Optional<String> ambient,
    Optional<String> note,
    List<Piece> pieces,
    List<String> findings,
    List<Photo> photos,
    Extras extras) {

  /** Checks and copies. */
  public Bake {
    Slug.check(formula);
    requireNonNull(address, "address");
    requireNonNull(time, "time");
    requireNonNull(baker, "baker");
    requireNonNull(ambient, "ambient");
    requireNonNull(note, "note");
    pieces = List.copyOf(pieces);
    findings = List.copyOf(findings);
    photos = List.copyOf(photos);
    requireNonNull(extras, "extras");
    if (!id.matches("\\d{4}-\\d{2}-\\d{2}-\\d{1,4}")) {
      throw new IllegalArgumentException(
          "\"" + id + "\" cannot name a bake.\nUse the date and a number, such as 2026-09-14-1.");
    }
    if (!blob.matches("[0-9a-f]{40}")) {
      throw new IllegalArgumentException(
          "\"" + blob + "\" is not a Git object id.\nUse the 40 hexadecimal digits of the formula.");
    }
    Set<String> seen = new HashSet<>();
    for (Piece piece : pieces) {
      if (!seen.add(piece.id())) {
        throw new IllegalArgumentException(
            "The piece \"" + piece.id() + "\" stands twice.\nGive one of the two another letter.");
      }
    }
  }

  /**
   * Where the bake is kept in the notebook.
   *
   * @return {@code bakes/<formula>/<id>.json}
   */
  public String path() {
    return "bakes/" + formula + "/" + id + ".json";
  }

  /**
   * The same bake with other pictures.
   *
   * @param next the pictures
   * @return a new bake
   */
  public Bake withPhotos(List<Photo> next) {
    return new Bake(
        formula, id, address, blob, time, baker, ambient, note, pieces, findings, next, extras);
  }

  /**
   * The same bake with other pieces.
   *
   * @param next the pieces
   * @return a new bake
   */
  public Bake withPieces(List<Piece> next) {
    return new Bake(
        formula, id, address, blob, time, baker, ambient, note, next, findings, photos, extras);
  }
}
