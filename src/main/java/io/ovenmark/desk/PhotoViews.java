package io.ovenmark.desk;

import java.util.List;

/** The records of answers about photos; see {@link Views} for the manner of all of them. */
public final class PhotoViews {
  private PhotoViews() {}

  /**
   * The photos of a formula.
   *
   * @param formula short name
   * @param name name for people
   * @param bakes those that have photos, oldest first, of all lines of history
   */
  public record PhotoList(String formula, String name, List<PhotographedBake> bakes) {}

  /**
   * A bake with its photos.
   *
   * @param id its name
   * @param time when it went into the oven
   * @param baker who baked, or null
   * @param address the revision that was baked, as noted then
   * @param revisions addresses of the revisions that have this content
   * @param pieces the pieces
   * @param photos the pictures, at least one
   */
  public record PhotographedBake(
      String id,
      String time,
      String baker,
      String address,
      List<String> revisions,
      List<PhotographedPiece> pieces,
      List<Views.PhotoView> photos) {}

  /**
   * A piece, as far as one wants to know it beside a picture.
   *
   * @param id its letter
   * @param temperatureC the oven's temperature, or null
   * @param minutes how long, or null
   * @param findings what was found
   */
  public record PhotographedPiece(
      String id, Double temperatureC, Double minutes, List<Views.FindingView> findings) {}

  /**
   * Pictures that were committed.
   *
   * @param bake the bake as it is now
   * @param photosAdded paths of the pictures that were added
   * @param repeated those that the bake had already, which were left out
   * @param missing those that did not wait any more
   */
  public record PhotosAdded(
      Views.BakeView bake,
      List<String> photosAdded,
      List<String> repeated,
      List<String> missing) {}

  /**
   * A picture that was made ready and waits to be committed together with others.
   *
   * @param picture names it
   * @param name what the file was called
   * @param caption what is said beside it, or null
   * @param taken when it was taken by the camera's clock, or null
   * @param width pixels from left to right
   * @param height pixels from top to bottom
   */
  public record WaitingPhoto(
      String picture, String name, String caption, String taken, int width, int height) {}

  /**
   * A photo whose marks or words were to be changed.
   *
   * @param outcome {@code committed}, {@code unchanged} (it says all of that already) or {@code
   *     conflict} (nothing was committed, a person must choose)
   * @param bake the bake as it is now
   * @param photo the photo as it is now
   * @param merged whether changes that somebody else made meanwhile are in it too
   * @param conflicts what both changed in different ways
   */
  public record PhotoChanged(
      String outcome,
      Views.BakeView bake,
      Views.PhotoView photo,
      boolean merged,
      List<PhotoConflict> conflicts) {}

  /**
   * Something that two people changed in different ways.
   *
   * @param what {@code caption}, {@code alternative} or {@code marks}
   * @param piece the piece that is marked, or null
   * @param mine what it was to become in words, or null for nothing
   * @param theirs what it is in words, or null for nothing
   */
  public record PhotoConflict(String what, String piece, String mine, String theirs) {}

  /**
   * A photo that was taken away.
   *
   * @param bake the bake as it is now
   * @param photo the photo as it was
   * @param commit a commit that still has it
   */
  public record PhotoRemoved(Views.BakeView bake, Views.PhotoView photo, String commit) {}
}
