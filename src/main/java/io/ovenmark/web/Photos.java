package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.KeptPhoto;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.photo.Thumbnail;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** The photos, whole or made smaller. */
final class Photos {
  private static final String TYPE = "image/jpeg";
  private static final Pattern FORMULA = Pattern.compile("[a-z0-9-]{1,100}");
  private static final Pattern FILE = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9._-]{0,120}");
  private static final int NARROWEST = 16;
  private static final int WIDEST = 2400;

  private final Desk desk;
  private final Thumbnails thumbnails;

  Photos(Desk desk) {
    this.desk = desk;
    this.thumbnails =
        new Thumbnails(
            desk.notebook().ownFolder().resolve("thumbnails"), Thumbnails.MOST_ON_DISK);
  }

  /** {@code /photos/seeded-lupin-bun/2026-09-14-1.jpg?width=400}. */
  void answer(Context context) {
    String formula = context.pathParam("formula");
    String file = context.pathParam("file");
    String path = "photos/" + formula + "/" + file;
    boolean named =
        FORMULA.matcher(formula).matches()
            && FILE.matcher(file).matches()
            && !file.contains("..");
    KeptPhoto photo =
        (named ? desk.notebook().keptPhoto(formula, path) : Optional.<KeptPhoto>empty())
            .orElseThrow(() -> noPhoto(path));
    String width = context.queryParam("width");
    String id = photo.id().hex();
    if (width == null) {
      Answers.send(context, TYPE, id, () -> jpeg(path, photo));
    } else {
      int wanted = width(width);
      Supplier<byte[]> smaller =
          () -> thumbnails.get(id, wanted, () -> smaller(path, photo, wanted));
      Answers.send(context, TYPE, id + "-" + wanted, smaller);
    }
  }

  private static int width(String text) {
    if (text.matches("\\d{2,4}")) {
      int width = Integer.parseInt(text);
      if (width >= NARROWEST && width <= WIDEST) {
        return width;
      }
    }
    throw new Refusal(
        Refusal.Reason.INVALID,
        "width",
        "The width of a photo must be a whole number.",
        "Ask for " + NARROWEST + " to " + WIDEST + ", or leave it out.");
  }

  private static byte[] jpeg(String path, KeptPhoto photo) {
    byte[] bytes = photo.bytes();
    boolean begins =
        bytes.length > 2 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xd8;
    if (!begins) {
      throw damaged(path);
    }
    return bytes;
  }

  private static byte[] smaller(String path, KeptPhoto photo, int width) {
    try {
      return Thumbnail.of(jpeg(path, photo), width);
    } catch (IllegalArgumentException e) {
      throw damaged(path);
    }
  }

  private static Refusal damaged(String path) {
    return new Refusal(
        Refusal.Reason.INVALID,
        path,
        "The file is no JPEG picture, is damaged or too large.",
        "Remove it from its bake and add the picture again.");
  }

  private static Refusal noPhoto(String path) {
    String shown = path.length() > 120 ? path.substring(0, 120) + "…" : path;
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        shown,
        "There is no such photo.",
        "Photos belong to bakes: open the bake and choose one there.");
  }
}
