package io.ovenmark.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Draws pictures for tests and writes what cameras write into them. */
public final class Pictures {
  static final int RED = 0xe02020;
  static final int GREEN = 0x20a030;
  static final int BLUE = 0x2040d0;
  static final int YELLOW = 0xf0e020;

  private Pictures() {}

  /** Red upper left, green upper right, blue lower left, yellow lower right, grey between. */
  public static BufferedImage corners(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        boolean left = x < width / 4;
        boolean right = x >= width - width / 4;
        boolean up = y < height / 4;
        boolean low = y >= height - height / 4;
        int colour = 0x808080;
        colour = left && up ? RED : colour;
        colour = right && up ? GREEN : colour;
        colour = left && low ? BLUE : colour;
        colour = right && low ? YELLOW : colour;
        image.setRGB(x, y, colour);
      }
    }
    return image;
  }

  public static byte[] jpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(0.95f);
      writer.setOutput(ImageIO.createImageOutputStream(out));
      writer.write(null, new IIOImage(image, null, null), param);
      writer.dispose();
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static byte[] png(BufferedImage image) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The picture of {@link #corners} 160 pixels wide, made by a browser. */
  public static byte[] webp(String kind) {
    try (InputStream in = Pictures.class.getResourceAsStream("corners-" + kind + ".webp")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A WebP with one more chunk at its end, and flags in its header (WebP container, VP8X). */
  public static byte[] withChunk(byte[] webp, String type, byte[] content, int flags) {
    int padded = content.length + content.length % 2;
    ByteBuffer out =
        ByteBuffer.allocate(webp.length + 8 + padded).order(ByteOrder.LITTLE_ENDIAN).put(webp);
    out.put(type.getBytes(StandardCharsets.US_ASCII)).putInt(content.length).put(content);
    out.putInt(4, out.capacity() - 8);
    out.put(20, (byte) (webp[20] | flags));
    return out.array();
  }

  /** A chunk of a PNG with its checksum. */
  public static byte[] chunk(String type, byte[] content) {
    ByteBuffer out = ByteBuffer.allocate(content.length + 12).putInt(content.length);
    out.put(type.getBytes(StandardCharsets.US_ASCII)).put(content);
    CRC32 checksum = new CRC32();
    checksum.update(out.array(), 4, content.length + 4);
    return out.putInt((int) checksum.getValue()).array();
  }

  /** A PNG with one more chunk behind its header. */
  public static byte[] withChunk(byte[] png, byte[] chunk) {
    int at = 33;
    return ByteBuffer.allocate(png.length + chunk.length)
        .put(png, 0, at)
        .put(chunk)
        .put(png, at, png.length - at)
        .array();
  }

  /** Zeros as a PNG compresses them. */
  public static byte[] zeros(int megabytes) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes)) {
      for (int i = 0; i < megabytes; i++) {
        out.write(new byte[1 << 20]);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** A JPEG in the four colours of printing. */
  public static byte[] cmyk(int width, int height) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      writer.setOutput(ImageIO.createImageOutputStream(out));
      WritableRaster raster =
          Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, width, height, 4, null);
      writer.write(null, new IIOImage(raster, null, null), null);
      writer.dispose();
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static BufferedImage read(byte[] bytes) {
    try {
      return ImageIO.read(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JPEG with one more application segment behind its beginning. */
  public static byte[] withSegment(byte[] jpeg, int marker, byte[]... parts) {
    int length = 2;
    for (byte[] part : parts) {
      length += part.length;
    }
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + length + 2);
    out.put(jpeg, 0, 2).put((byte) 0xff).put((byte) marker).putShort((short) length);
    for (byte[] part : parts) {
      out.put(part);
    }
    return out.put(jpeg, 2, jpeg.length - 2).array();
  }

  public static byte[] withExif(byte[] jpeg, Exif exif) {
    return withSegment(jpeg, 0xe1, "Exif\0\0".getBytes(StandardCharsets.US_ASCII), exif.tiff());
  }

  public static byte[] withXmp(byte[] jpeg, String properties) {
    String packet =
        "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF"
            + " xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description"
            + " xmlns:exif=\"http://ns.adobe.com/exif/1.0/\" " + properties
            + "/></rdf:RDF></x:xmpmeta>";
    return withSegment(
        jpeg,
        0xe1,
        "http://ns.adobe.com/xap/1.0/\0".getBytes(StandardCharsets.US_ASCII),
        packet.getBytes(StandardCharsets.UTF_8));
  }

  /** The beginning of a PNG whose header states a size; its pixels are not there. */
  public static byte[] pngHeader(int width, int height, int depth, int colour) {
    ByteBuffer header =
        ByteBuffer.allocate(17)
            .put("IHDR".getBytes(StandardCharsets.US_ASCII))
            .putInt(width)
            .putInt(height)
            .put((byte) depth)
            .put((byte) colour)
            .put(new byte[3]);
    CRC32 checksum = new CRC32();
    checksum.update(header.array());
    return ByteBuffer.allocate(33)
        .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'})
        .putInt(13)
        .put(header.array())
        .putInt((int) checksum.getValue())
        .array();
  }

  /** What a camera notes: a TIFF structure with up to three folders (TIFF 6.0, Exif 2.32). */
  public static final class Exif {
    private record Tag(int id, int type, int count, byte[] value) {}

    private final List<Tag> first = new ArrayList<>();
    private final List<Tag> details = new ArrayList<>();
    private final List<Tag> place = new ArrayList<>();

    public Exif orientation(int value) {
      first.add(new Tag(0x0112, 3, 1, new byte[] {0, (byte) value, 0, 0}));
      return this;
    }

    public Exif camera(String name) {
      first.add(text(0x0110, name));
      return this;
    }

    public Exif taken(String time) {
      details.add(text(0x9003, time));
      return this;
    }

    public Exif zone(String zone) {
      details.add(text(0x9011, zone));
      return this;
    }

    public Exif at(int degreesNorth, int degreesEast) {
      place.add(text(1, "N"));
      place.add(new Tag(2, 5, 3, degrees(degreesNorth)));
      place.add(text(3, "E"));
      place.add(new Tag(4, 5, 3, degrees(degreesEast)));
      return this;
    }

    private static Tag text(int id, String value) {
      byte[] bytes = (value + "\0").getBytes(StandardCharsets.US_ASCII);
      return new Tag(id, 2, bytes.length, bytes);
    }

    private static byte[] degrees(int whole) {
      return ByteBuffer.allocate(24)
          .putInt(whole).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1)
          .array();
    }

    public byte[] tiff() {
      ByteBuffer out = ByteBuffer.allocate(4096);
      out.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
      List<Tag> head = new ArrayList<>(first);
      int size = folderSize(head) + (details.isEmpty() ? 0 : 12) + (place.isEmpty() ? 0 : 12);
      int detailsAt = 8 + size;
      int placeAt = detailsAt + (details.isEmpty() ? 0 : folderSize(details));
      if (!details.isEmpty()) {
        head.add(pointer(0x8769, detailsAt));
      }
      if (!place.isEmpty()) {
        head.add(pointer(0x8825, placeAt));
      }
      folder(out, head);
      if (!details.isEmpty()) {
        folder(out, details);
      }
      if (!place.isEmpty()) {
        folder(out, place);
      }
      byte[] tiff = new byte[out.position()];
      out.flip().get(tiff);
      return tiff;
    }

    private static Tag pointer(int id, int at) {
      return new Tag(id, 4, 1, ByteBuffer.allocate(4).putInt(at).array());
    }

    private static int folderSize(List<Tag> tags) {
      int size = 2 + 12 * tags.size() + 4;
      for (Tag tag : tags) {
        size += tag.value().length > 4 ? tag.value().length : 0;
      }
      return size;
    }

    private static void folder(ByteBuffer out, List<Tag> tags) {
      int valueAt = out.position() + 2 + 12 * tags.size() + 4;
      ByteBuffer values = ByteBuffer.allocate(2048);
      out.putShort((short) tags.size());
      for (Tag tag : tags) {
        out.putShort((short) tag.id()).putShort((short) tag.type()).putInt(tag.count());
        if (tag.value().length > 4) {
          out.putInt(valueAt + values.position());
          values.put(tag.value());
        } else {
          out.put(tag.value()).put(new byte[4 - tag.value().length]);
        }
      }
      out.putInt(0);
      values.flip();
      out.put(values);
    }
  }
}
