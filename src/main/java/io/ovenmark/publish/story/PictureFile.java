package io.ovenmark.publish.story;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture as a PNG file that carries its description: an iTXt chunk with the keyword Description
 * (PNG specification, third edition, 11.3.3.2). It carries no time, so that the same picture is the
 * same file.
 */
final class PictureFile {
  /** Keyword of the chunk. */
  static final String DESCRIPTION = "Description";

  /** Name of the tree of metadata that is written; as the JDK's writer calls it. */
  static final String TREE = "javax_imageio_png_1.0";

  /** Packed lightly: photos hardly get smaller by more effort, and it takes three times as long. */
  private static final float PACKED = 0.8f;

  private PictureFile() {}

  static byte[] png(BufferedImage image, String description) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      parameters.setCompressionQuality(PACKED);
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(
              ImageTypeSpecifier.createFromRenderedImage(image), parameters);
      metadata.mergeTree(TREE, tree(description));
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static IIOMetadataNode tree(String description) throws IIOInvalidTreeException {
    IIOMetadataNode entry = new IIOMetadataNode("iTXtEntry");
    entry.setAttribute("keyword", DESCRIPTION);
    entry.setAttribute("compressionFlag", "FALSE");
    entry.setAttribute("compressionMethod", "0");
    entry.setAttribute("languageTag", "en");
    entry.setAttribute("translatedKeyword", DESCRIPTION);
    entry.setAttribute("text", description);
    IIOMetadataNode texts = new IIOMetadataNode("iTXt");
    texts.appendChild(entry);
    IIOMetadataNode colours = new IIOMetadataNode("sRGB");
    colours.setAttribute("renderingIntent", "Perceptual");
    IIOMetadataNode root = new IIOMetadataNode(TREE);
    root.appendChild(texts);
    root.appendChild(colours);
    return root;
  }
}
