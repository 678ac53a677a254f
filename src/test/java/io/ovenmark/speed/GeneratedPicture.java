package io.ovenmark.speed;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;

/** Pictures as large as the notebook keeps them, with enough grain to weigh what a photo weighs. */
final class GeneratedPicture {
  private static final int WIDTH = 2400;
  private static final int HEIGHT = 1800;
  private static final int GRAIN = 14;

  private GeneratedPicture() {}

  /** The same number gives the same picture. */
  static byte[] jpeg(int number) throws IOException {
    Random random = new Random(number);
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(0x3b4346));
    graphics.fillRect(0, 0, WIDTH, HEIGHT);
    graphics.setColor(new Color(0xc0812f));
    for (int i = 0; i < 4; i++) {
      graphics.fillOval(200 + i % 2 * 1100, 150 + i / 2 * 800, 700 + random.nextInt(200), 650);
    }
    graphics.dispose();
    for (int y = 0; y < HEIGHT; y += 2) {
      for (int x = 0; x < WIDTH; x += 2) {
        int grain = random.nextInt(GRAIN);
        image.setRGB(x, y, image.getRGB(x, y) + (grain << 16 | grain << 8 | grain));
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", bytes);
    return bytes.toByteArray();
  }
}
