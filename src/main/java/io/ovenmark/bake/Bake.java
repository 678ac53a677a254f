package io.ovenmark.bake;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.Extras;
import io.ovenmark.measure.Quoting;
import io.ovenmark.measure.Slug;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One tray of one revision.
 *
 * @param formula slug of the formula
 * @param id name within the formula, {@code <date>-<n>}, such as {@code 2026-09-14-1}
 * @param address the revision that was baked, as a person reads it, such as {@code lupin-bun@5},
 *     not blank
 * @param blob Git blob id of the formula file that was weighed, 40 hexadecimal digits
 * @param time when it went into the oven; zone in whole minutes
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

  private static final Pattern ID = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}-[0-9]{1,4}");
  private static final Pattern BLOB = Pattern.compile("[0-9a-f]{40}");

  /** Checks and copies. */
  public Bake {
    Slug.check(formula);
    if (address.isBlank()) {
      throw new IllegalArgumentException(
          "The bake names no revision.\nWrite the address of what was baked, such as lupin-bun@5.");
    }
    checkedBlob(blob);
    Moment.check(time);
    requireNonNull(baker, "baker");
    requireNonNull(ambient, "ambient");
    requireNonNull(note, "note");
    pieces = List.copyOf(pieces);
    findings = List.copyOf(findings);
    photos = List.copyOf(photos);
    requireNonNull(extras, "extras");
    checkId(id);
    Set<String> seen = new HashSet<>();
    for (Piece piece : pieces) {
      if (!seen.add(piece.id())) {
        throw new IllegalArgumentException(
            "The piece \"" + piece.id() + "\" stands twice.\nGive one of the two another letter.");
      }
    }
  }

  /**
   * Checks the blob id.
   *
   * @param blob the id
   * @return the same id
   * @throws IllegalArgumentException with a sentence and a remedy when it is not 40 hexadecimal
   *     digits
   */
  static String checkedBlob(String blob) {
    if (!BLOB.matcher(blob).matches()) {
      throw new IllegalArgumentException(
          Quoting.quote(blob)
              + " is not a Git object id.\n"
              + "Write the 40 hexadecimal digits of the formula's blob, in small letters.");
    }
    return blob;
  }

  private static void checkId(String id) {
    boolean fits = ID.matcher(id).matches();
    if (fits) {
      try {
        LocalDate.parse(id.substring(0, 10));
      } catch (DateTimeException e) {
        fits = false;
      }
    }
    if (!fits) {
      throw new IllegalArgumentException(
          Quoting.quote(id)
              + " cannot name a bake.\nUse the date and a number, such as 2026-09-14-1.");
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
   * The same bake without what the baker wrote in free words: notes and verdicts.
   *
   * @return a new bake
   */
  public Bake withoutNotes() {
    return new Bake(
        formula,
        id,
        address,
        blob,
        time,
        baker,
        ambient,
        Optional.empty(),
        pieces.stream().map(Piece::withoutNotes).toList(),
        findings,
        photos,
        extras);
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
