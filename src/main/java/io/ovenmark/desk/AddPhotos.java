package io.ovenmark.desk;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.MarkText;
import io.ovenmark.bake.Photo;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * Adds pictures to a bake.
 *
 * <pre>{@code
 * new AddPhotos(desk).call("seeded-lupin-bun", "2026-09-14-1", photos, by);
 * }</pre>
 */
public final class AddPhotos {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public AddPhotos(Desk desk) {
    this.desk = desk;
  }

  /**
   * Reads marks against the pieces of a bake.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param texts marks as {@link MarkText} reads them
   * @return the marks
   * @throws Refusal when there is no such bake or piece, or a mark is not understood
   */
  public List<Photo.Mark> marks(String formula, String id, List<String> texts) {
    Bake bake = new BakeParts(desk).bake(formula, id);
    return texts.stream()
        .map(text -> Asked.read("mark", () -> MarkText.read(text, bake.pieces())))
        .toList();
  }

  /**
   * Adds them behind those that the bake has.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param photos the pictures, at least one
   * @param by who commits it, and when
   * @return the bake as it is now
   * @throws Refusal when there is no such bake or a picture cannot be used; nothing is written then
   */
  public KitchenViews.BakeWritten call(
      String formula, String id, List<NewPhoto> photos, By by) {
    new BakeParts(desk).bake(formula, id);
    return add(formula, id, photos.stream().map(ReadyPhoto::of).toList(), by);
  }

  /**
   * Adds pictures that were made ready, behind those that the bake has, in one commit.
   *
   * @param formula slug of the formula
   * @param id the bake's name
   * @param photos the pictures, at least one
   * @param by who commits it, and when
   * @return the bake as it is now
   * @throws Refusal when there is no such bake or piece; nothing is written then
   */
  public KitchenViews.BakeWritten add(
      String formula, String id, List<ReadyPhoto> photos, By by) {
    BakeParts parts = new BakeParts(desk);
    if (photos.isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID, "photo", "There is no picture to be added.", "Name a file.");
    }
    RecordWriter writer = new RecordWriter(desk.notebook());
    String note =
        (photos.size() == 1 ? "Photo" : photos.size() + " photos") + " of the bake " + id;
    while (true) {
      Bake before = parts.bake(formula, id);
      BakeParts.requireMarkedPieces(
          photos.stream().flatMap(photo -> photo.marks().stream()), before.pieces());
      BakeParts.Pictures named =
          parts.named(formula, id, before.time().getOffset(), photos);
      List<Photo> all = new ArrayList<>(before.photos());
      all.addAll(named.photos());
      Bake after = before.withPhotos(all);
      Address line = parts.lineOf(before);
      try {
        writer.changeBake(line, before, after, named.bytes(), note, by);
      } catch (Refusal refusal) {
        if (isOvertaken(refusal)) {
          continue;
        }
        throw refusal;
      }
      return parts.written(after, line, List.copyOf(named.bytes().keySet()));
    }
  }

  /** Whether somebody else wrote to the bake meanwhile: pictures of both have room. */
  private static boolean isOvertaken(Refusal refusal) {
    return refusal.reason() == Refusal.Reason.EXISTS
        || refusal.reason() == Refusal.Reason.CONFLICT;
  }
}
