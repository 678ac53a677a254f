package io.ovenmark.publish.story;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * The photos of a story, each read once. Not for several threads. A photo that cannot be read is as
 * good as none.
 */
final class PicturePhotos {
  private final Map<byte[], SoftReference<BufferedImage>> read = new IdentityHashMap<>();

  /**
   * A photo in a panel: cut around its middle to the panel's proportions, never stretched.
   *
   * @param photo the photo
   * @param width of the panel, in pixels
   * @param height of the panel
   * @return empty when it cannot be read
   */
  Optional<BufferedImage> in(StoryPhoto photo, int width, int height) {
    return whole(photo).map(whole -> fine(middle(whole, width, height), width, height));
  }

  private Optional<BufferedImage> whole(StoryPhoto photo) {
    SoftReference<BufferedImage> kept = read.get(photo.jpeg());
    BufferedImage whole = kept == null ? null : kept.get();
    if (whole == null) {
      whole = decoded(photo.jpeg());
      if (whole != null) {
        read.put(photo.jpeg(), new SoftReference<>(whole));
      }
    }
    return Optional.ofNullable(whole);
  }

  private static BufferedImage decoded(byte[] jpeg) {
    try {
      return ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(jpeg)));
    } catch (IOException | RuntimeException e) {
      // readers answer broken files with exceptions of many kinds
      return null;
    }
  }

  private static BufferedImage middle(BufferedImage whole, int width, int height) {
    double scale = Math.min((double) whole.getWidth() / width, (double) whole.getHeight() / height);
    int across = Math.max(1, Math.min(whole.getWidth(), (int) Math.round(width * scale)));
    int down = Math.max(1, Math.min(whole.getHeight(), (int) Math.round(height * scale)));
    return whole.getSubimage(
        (whole.getWidth() - across) / 2, (whole.getHeight() - down) / 2, across, down);
  }

  /** Halved as often as it goes before the last step, so that every pixel counts. */
  private static BufferedImage fine(BufferedImage cut, int width, int height) {
    BufferedImage now = cut;
    while (now.getWidth() >= 2 * width && now.getHeight() >= 2 * height) {
      now =
          scaled(
              now,
              now.getWidth() / 2,
              now.getHeight() / 2,
              RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }
    return scaled(now, width, height, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
  }

  private static BufferedImage scaled(BufferedImage from, int width, int height, Object how) {
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = to.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, how);
    graphics.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
    graphics.drawImage(from, 0, 0, width, height, null);
    graphics.dispose();
    return to;
  }
}
