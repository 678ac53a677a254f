package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.bake.Photo;
import io.ovenmark.desk.ChangePhotos;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.ListPhotos;
import io.ovenmark.desk.NewPhoto;
import io.ovenmark.desk.PhotoState;
import io.ovenmark.desk.PhotoViews;
import io.ovenmark.desk.ReadyPhoto;
import io.ovenmark.desk.WaitingPhotos;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Photos of bakes. A picture comes as the bytes of its file, what is said of it in the address:
 * {@code photo/add?formula=…&bake=…&name=…&caption=…}. With {@code with_others=true} it is made ready
 * and waits, until {@code photo/keep} adds all that were chosen together in one commit.
 */
final class PhotoArea implements Area {
  private final Desk desk;
  private final Supplier<By> by;
  private final Uploads uploads = new Uploads();

  PhotoArea(Desk desk, Opening opening) {
    this.desk = desk;
    this.by = opening.by();
  }

  /** What a page must know before it sends pictures. */
  record Waiting(long mostBytes, List<PhotoViews.WaitingPhoto> photos) {}

  /** Pictures that wait: to be added, or thrown away. */
  record Kept(String formula, String bake, List<String> pictures) {
    Kept {
      required("formula", formula);
      required("bake", bake);
      pictures = List.copyOf(required("pictures", pictures));
    }
  }

  /** What is said of a photo. */
  record Said(String caption, String alternative, List<Place> marks) {
    Said {
      marks = List.copyOf(required("marks", marks));
    }

    PhotoState state() {
      return new PhotoState(
          Optional.ofNullable(caption),
          Optional.ofNullable(alternative),
          marks.stream().map(Place::mark).toList());
    }
  }

  /** Where a piece is. */
  record Place(String piece, Double x, Double y) {
    Photo.Mark mark() {
      try {
        return new Photo.Mark(
            required("piece", piece), required("x", x), required("y", y));
      } catch (IllegalArgumentException e) {
        throw Refusal.of("marks", e);
      }
    }
  }

  /** A changed photo; seen is what somebody else made of it meanwhile, or null. */
  record Change(
      String formula, String bake, String photo, Said base, Said seen, Said wanted) {
    Change {
      required("formula", formula);
      required("bake", bake);
      required("photo", photo);
      required("base", base);
      required("wanted", wanted);
    }
  }

  /** A photo to be taken away. */
  record Removal(String formula, String bake, String photo, Said base) {
    Removal {
      required("formula", formula);
      required("bake", bake);
      required("photo", photo);
      required("base", base);
    }
  }

  /** A photo to be brought back. */
  record Return(String formula, String bake, String photo, String commit) {
    Return {
      required("formula", formula);
      required("bake", bake);
      required("photo", photo);
      required("commit", commit);
    }
  }

  private static <T> T required(String field, T value) {
    if (value == null) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          field,
          "The order lacks \"" + field + "\".",
          "Reload the page and try again.");
    }
    return value;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question(
            "photos", context -> new ListPhotos(desk).call(Asked.text(context, "formula")))
        .question(
            "photo/waiting",
            context ->
                new Waiting(
                    Guard.LARGEST_PICTURE,
                    new WaitingPhotos(desk)
                        .list(Asked.text(context, "formula"), Asked.text(context, "bake"))))
        .order("photo/add", this::add)
        .order("photo/keep", this::keep)
        .order("photo/discard", this::discard)
        .order("photo/change", this::change)
        .order("photo/remove", this::remove)
        .order("photo/bring-back", this::bringBack);
  }

  private Object add(Context context) {
    boolean received = false;
    try {
      Object added = added(context);
      received = true;
      return added;
    } finally {
      if (!received) {
        Uploads.drain(context);
      }
    }
  }

  private Object added(Context context) {
    String formula = Asked.text(context, "formula");
    String bake = Asked.text(context, "bake");
    String name = Asked.optional(context, "name").orElse("without a name");
    Optional<String> caption = Asked.optional(context, "caption");
    boolean withOthers = Asked.optional(context, "with_others").equals(Optional.of("true"));
    WaitingPhotos waiting = new WaitingPhotos(desk);
    waiting.requireRoom(formula, bake);
    ReadyPhoto ready =
        uploads.receive(
            context, bytes -> ReadyPhoto.of(new NewPhoto(bytes, name, caption, List.of())));
    return withOthers
        ? waiting.put(formula, bake, name, ready)
        : waiting.addAtOnce(formula, bake, ready, by.get());
  }

  private Object keep(Context context) {
    Kept order = Asked.order(context, Kept.class);
    return new WaitingPhotos(desk)
        .add(order.formula(), order.bake(), order.pictures(), by.get());
  }

  private Object discard(Context context) {
    Kept order = Asked.order(context, Kept.class);
    WaitingPhotos waiting = new WaitingPhotos(desk);
    waiting.throwAway(order.formula(), order.bake(), order.pictures());
    return new Waiting(
        Guard.LARGEST_PICTURE, waiting.list(order.formula(), order.bake()));
  }

  private Object change(Context context) {
    Change order = Asked.order(context, Change.class);
    return new ChangePhotos(desk)
        .change(
            order.formula(),
            order.bake(),
            order.photo(),
            order.base().state(),
            (order.seen() == null ? order.base() : order.seen()).state(),
            order.wanted().state(),
            by.get());
  }

  private Object remove(Context context) {
    Removal order = Asked.order(context, Removal.class);
    return new ChangePhotos(desk)
        .remove(
            order.formula(), order.bake(), order.photo(), order.base().state(), by.get());
  }

  private Object bringBack(Context context) {
    Return order = Asked.order(context, Return.class);
    return new ChangePhotos(desk)
        .bringBack(
            order.formula(), order.bake(), order.photo(), order.commit(), by.get());
  }
}
