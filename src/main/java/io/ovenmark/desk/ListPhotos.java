package io.ovenmark.desk;

import java.util.List;

/**
 * Lists the photos of a formula, bake by bake, of the main line and all variants.
 *
 * <pre>{@code
 * PhotoViews.PhotoList photos = new ListPhotos(desk).call("seeded-lupin-bun");
 * }</pre>
 */
public final class ListPhotos {
  private final Desk desk;

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public ListPhotos(Desk desk) {
    this.desk = desk;
  }

  /**
   * Lists them.
   *
   * @param formula slug of the formula
   * @return the bakes that have photos, oldest first; bakes that cannot be read are left out
   * @throws io.ovenmark.notebook.Refusal when there is no such formula
   */
  public PhotoViews.PhotoList call(String formula) {
    KitchenViews.BakeList bakes = new ListBakes(desk).call(formula);
    return new PhotoViews.PhotoList(
        formula,
        bakes.name(),
        bakes.bakes().stream()
            .filter(bake -> !bake.photos().isEmpty())
            .map(ListPhotos::photographed)
            .toList());
  }

  private static PhotoViews.PhotographedBake photographed(Views.BakeView bake) {
    List<PhotoViews.PhotographedPiece> pieces =
        bake.pieces().stream()
            .map(
                piece ->
                    new PhotoViews.PhotographedPiece(
                        piece.id(), piece.temperatureC(), piece.minutes(), piece.findings()))
            .toList();
    return new PhotoViews.PhotographedBake(
        bake.id(),
        bake.time(),
        bake.baker(),
        bake.address(),
        bake.revisions(),
        pieces,
        bake.photos());
  }
}
