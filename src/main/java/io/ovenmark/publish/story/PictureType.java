package io.ovenmark.publish.story;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.AttributedCharacterIterator;
import java.text.AttributedString;
import java.util.Map;

/**
 * The type of the pictures. It comes with the program, so that a picture looks the same on every
 * machine, one without fonts included. A sign that it lacks is set in the machine's own face where
 * that has it.
 */
final class PictureType {
  /** How letters are measured and drawn: smoothed, at fractions of a pixel. */
  static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
  private static final Font REGULAR = read("DejaVuSansCondensed.ttf");
  private static final Font BOLD = read("DejaVuSansCondensed-Bold.ttf");

  private PictureType() {}

  /**
   * A face of the program.
   *
   * @param bold whether the bold one
   * @param size of a letter, in pixels
   */
  static Font face(boolean bold, double size) {
    return fine(bold ? BOLD : REGULAR, size);
  }

  /**
   * A text that is ready to be broken into lines.
   *
   * @param text not empty, without line ends
   * @param style how it is set
   */
  static AttributedCharacterIterator set(String text, TextStyle style) {
    AttributedString set = new AttributedString(text);
    Font own = face(style.bold(), style.size());
    set.addAttribute(TextAttribute.FONT, own);
    int at = 0;
    while (at < text.length()) {
      int sign = text.codePointAt(at);
      int next = at + Character.charCount(sign);
      if (!own.canDisplay(sign) && Character.getType(sign) != Character.FORMAT) {
        Font other = fine(new Font(Font.SANS_SERIF, Font.PLAIN, 1), style.size());
        if (other.canDisplay(sign)) {
          set.addAttribute(TextAttribute.FONT, other, at, next);
        }
      }
      at = next;
    }
    return set.getIterator();
  }

  private static Font fine(Font font, double size) {
    return font.deriveFont(
        Map.of(
            TextAttribute.SIZE, (float) size,
            TextAttribute.KERNING, TextAttribute.KERNING_ON,
            TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
  }

  private static Font read(String name) {
    try (InputStream in = PictureType.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new FileNotFoundException(FOLDER + name);
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(FOLDER + name, e);
    }
  }
}
