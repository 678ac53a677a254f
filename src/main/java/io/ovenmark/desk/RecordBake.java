package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.FindingVocabulary;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.Extras;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Records a bake of a revision, with its pieces and pictures. It is kept on the line of history that
 * was named, and points to the content that was weighed.
 *
 * <pre>{@code
 * RecordBake.Request request =
 *     RecordBake.Request.of(Address.parse("seeded-lupin-bun@5"), time)
 *         .withPieces(PieceText.read(List.of(), List.of("a 190C 24min dough=95g baked=82g")));
 * KitchenViews.BakeWritten written = new RecordBake(desk).call(request, by);
 * }</pre>
 */
public final class RecordBake {
  private final Desk desk;

  /**
   * What is to be recorded.
   *
   * @param address the revision that was baked
   * @param time when it went into the oven
   * @param baker who baked; empty when not noted
   * @param ambient room and oven remarks; empty when not noted
   * @param note anything else; empty when there is none
   * @param pieces the pieces
   * @param findings faults and merits of the whole tray
   * @param photos pictures, in order
   */
  public record Request(
      Address address,
      OffsetDateTime time,
      Optional<String> baker,
      Optional<String> ambient,
      Optional<String> note,
      List<Piece> pieces,
      List<String> findings,
      List<NewPhoto> photos) {
    /** Copies; findings of the vocabulary are written as there. */
    public Request {
      requireNonNull(address, "address");
      requireNonNull(time, "time");
      baker = stated(baker);
      ambient = stated(ambient);
      note = stated(note);
      pieces = List.copyOf(pieces);
      findings = findings.stream().map(Request::finding).filter(f -> !f.isEmpty()).toList();
      photos = List.copyOf(photos);
    }

    private static Optional<String> stated(Optional<String> text) {
      return text.map(String::strip).filter(words -> !words.isEmpty());
    }

    private static String finding(String word) {
      return FindingVocabulary.of(word).map(FindingVocabulary::word).orElse(word.strip());
    }

    /**
     * A bake of which nothing is noted yet.
     *
     * @param address the revision
     * @param time when
     * @return the request
     */
    public static Request of(Address address, OffsetDateTime time) {
      Optional<String> none = Optional.empty();
      return new Request(address, time, none, none, none, List.of(), List.of(), List.of());
    }

    /**
     * The same with pieces.
     *
     * @param next the pieces
     * @return a new request
     */
    public Request withPieces(List<Piece> next) {
      return new Request(address, time, baker, ambient, note, next, findings, photos);
    }

    /**
     * The same with pictures.
     *
     * @param next the pictures
     * @return a new request
     */
    public Request withPhotos(List<NewPhoto> next) {
      return new Request(address, time, baker, ambient, note, pieces, findings, next);
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public RecordBake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Records it under the next free number of its day.
   *
   * @param request the bake
   * @param by who commits it, and when
   * @return the bake
   * @throws Refusal when there is no such revision, there is nothing to record, or a picture cannot be
   *     used; nothing is written then
   */
  public KitchenViews.BakeWritten call(Request request, By by) {
    Revision revision = revision(request.address());
    requireSomething(request);
    BakeParts.requireMarkedPieces(
        request.photos().stream().flatMap(photo -> photo.marks().stream()), request.pieces());
    BakeParts parts = new BakeParts(desk);
    List<ReadyPhoto> pictures = request.photos().stream().map(ReadyPhoto::of).toList();
    RecordWriter writer = new RecordWriter(desk.notebook());
    Address line =
        Address.latest(revision.address().formula(), revision.address().variant());
    String note = "Bake of " + revision.address() + ": " + pieces(request.pieces().size());
    while (true) {
      String id = writer.freeBakeId(line.formula(), request.time().toLocalDate());
      BakeParts.Pictures named =
          parts.named(line.formula(), id, request.time().getOffset(), pictures);
      Bake bake = bake(request, revision, id, named);
      try {
        writer.addBake(line, bake, named.bytes(), note, by);
      } catch (Refusal refusal) {
        if (refusal.reason() == Refusal.Reason.EXISTS) {
          continue;
        }
        throw refusal;
      }
      return parts.written(bake, line, List.copyOf(named.bytes().keySet()));
    }
  }

  private Revision revision(Address address) {
    if (address.point().kind() == Address.Point.Kind.EDITED) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          address.toString(),
          "A bake belongs to a revision, and the file on disk is none yet.",
          "Commit it with: ovenmark revise " + address.line());
    }
    return desk.notebook().revision(address);
  }

  private static void requireSomething(Request request) {
    boolean empty =
        request.pieces().isEmpty()
            && request.findings().isEmpty()
            && request.photos().isEmpty()
            && request.note().isEmpty();
    if (empty) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "pieces",
          "There is nothing to record about this bake.",
          "Give at least a piece, such as --piece \"a 190C 24min\", a finding, a note or a photo.");
    }
  }

  private static Bake bake(
      Request request, Revision revision, String id, BakeParts.Pictures named) {
    try {
      return new Bake(
          revision.address().formula(),
          id,
          revision.address().toString(),
          revision.blob().hex(),
          request.time(),
          request.baker(),
          request.ambient(),
          request.note(),
          request.pieces(),
          request.findings(),
          named.photos(),
          Extras.NONE);
    } catch (IllegalArgumentException e) {
      throw Refusal.of("bake", e);
    }
  }

  private static String pieces(int count) {
    return count == 1 ? "1 piece" : count + " pieces";
  }
}
