package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.notebook.Refusal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The photos, whole or scaled down. Scaled ones are kept in memory, the least recently used of them
 * dropped when they take too much.
 */
final class Photos {
  private static final String TYPE = "image/jpeg";
  private static final Pattern FORMULA = Pattern.compile("[a-z0-9-]{1,100}");
  private static final Pattern FILE = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9._-]{0,120}");
  private static final int NARROWEST = 16;
  private static final int WIDEST = 2400;
  private static final long KEPT_BYTES = 32L << 20;

  private record Key(String digest, int width) {}

  private final Desk desk;
  private final Map<Key, byte[]> scaled = new LinkedHashMap<>(64, 0.75f, true);
  private long keptBytes;

  Photos(Desk desk) {
    this.desk = desk;
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
    byte[] photo =
        (named ? desk.notebook().photo(formula, path) : Optional.<byte[]>empty())
            .orElseThrow(() -> noPhoto(path));
    if (!Jpeg.isJpeg(photo)) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          path,
          "The file is not a JPEG picture.",
          "Add the picture again with: ovenmark photo");
    }
    String width = context.queryParam("width");
    Answers.send(context, TYPE, width == null ? photo : scaled(path, photo, width(width)));
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

  private byte[] scaled(String path, byte[] photo, int width) {
    Key key = new Key(Answers.digest(photo), width);
    synchronized (scaled) {
      byte[] known = scaled.get(key);
      if (known != null) {
        return known;
      }
    }
    byte[] made =
        Jpeg.scaled(photo, width)
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.Reason.INVALID,
                        path,
                        "The picture is damaged or too large.",
                        "Add the picture again with: ovenmark photo"));
    keep(key, made);
    return made;
  }

  private void keep(Key key, byte[] made) {
    synchronized (scaled) {
      if (scaled.put(key, made) == null) {
        keptBytes += made.length;
      }
      var eldest = scaled.entrySet().iterator();
      while (keptBytes > KEPT_BYTES && eldest.hasNext()) {
        keptBytes -= eldest.next().getValue().length;
        eldest.remove();
      }
    }
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
