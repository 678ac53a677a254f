package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JpegTest {
  @ParameterizedTest
  @CsvSource({"400, 400, 300", "1200, 1200, 900", "2400, 1200, 900", "16, 16, 12"})
  void picturesAreScaledDownInProportionAndNeverUp(int wanted, int width, int height)
      throws IOException {
    byte[] scaled = Jpeg.scaled(BenchNotebook.picture(1200, 900), wanted).orElseThrow();

    BufferedImage image = ImageIO.read(new ByteArrayInputStream(scaled));
    assertThat(Jpeg.isJpeg(scaled)).isTrue();
    assertThat(image.getWidth()).isEqualTo(width);
    assertThat(image.getHeight()).isEqualTo(height);
  }

  @Test
  void aVeryFlatPictureKeepsOnePixelOfHeight() throws IOException {
    byte[] scaled = Jpeg.scaled(BenchNotebook.picture(2000, 2), 100).orElseThrow();
    assertThat(ImageIO.read(new ByteArrayInputStream(scaled)).getHeight()).isEqualTo(1);
  }

  @Test
  void damagedPicturesGiveNothing() {
    byte[] picture = BenchNotebook.picture(600, 400);
    byte[] head = Arrays.copyOf(picture, 40);
    assertThat(Jpeg.scaled(head, 100)).isEmpty();
    assertThat(Jpeg.scaled(new byte[] {1, 2, 3, 4}, 100)).isEmpty();
    assertThat(Jpeg.isJpeg(new byte[] {1, 2, 3, 4})).isFalse();
    assertThat(Jpeg.isJpeg(new byte[0])).isFalse();
  }

  @Test
  void aPictureThatClaimsToBeHugeIsNotUnfolded() {
    byte[] picture = BenchNotebook.picture(600, 400);
    int frame = startOfFrame(picture);
    for (int i = 0; i < 4; i++) {
      picture[frame + 5 + i] = (byte) 0xFF;
    }
    assertThat(Jpeg.scaled(picture, 100)).isEmpty();
  }

  /** Where the segment begins that states height and width (ITU-T T.81, B.2.2). */
  private static int startOfFrame(byte[] jpeg) {
    for (int i = 2; i < jpeg.length - 1; i++) {
      if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0) {
        return i;
      }
    }
    throw new AssertionError("no frame");
  }
}
