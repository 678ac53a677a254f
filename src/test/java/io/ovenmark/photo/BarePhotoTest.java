package io.ovenmark.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Segments as in ITU-T T.81, annex B, and JFIF 1.02. */
class BarePhotoTest {
  private static final byte[] PICTURE = picture();

  private static byte[] picture() {
    BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 64; x++) {
      image.setRGB(x, x % 48, 0x123456 * x);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpg", out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  private static byte[] with(int marker, String words) {
    byte[] text = words.getBytes(StandardCharsets.ISO_8859_1);
    byte[] all = new byte[PICTURE.length + text.length + 4];
    System.arraycopy(PICTURE, 0, all, 0, 2);
    all[2] = (byte) 0xFF;
    all[3] = (byte) marker;
    all[5] = (byte) (text.length + 2);
    System.arraycopy(text, 0, all, 6, text.length);
    System.arraycopy(PICTURE, 2, all, 6 + text.length, PICTURE.length - 2);
    return all;
  }

  @Test
  void aBarePictureStaysAsItIs() {
    assertThat(BarePhoto.of(PICTURE).orElseThrow()).isSameAs(PICTURE);
  }

  @ParameterizedTest
  @ValueSource(ints = {0xE0, 0xE1, 0xE2, 0xE3, 0xED, 0xEE, 0xEF, 0xFE})
  void whatATellingSegmentSaysIsTakenOut(int marker) {
    byte[] telling = with(marker, "Exif\0\0 north sea 54");

    byte[] bare = BarePhoto.of(telling).orElseThrow();

    assertThat(BarePhoto.isBare(telling)).isFalse();
    assertThat(BarePhoto.isBare(bare)).isTrue();
    assertThat(new String(bare, StandardCharsets.ISO_8859_1)).doesNotContain("north sea");
  }

  @Test
  void aProfileOfColoursIsNoTelling() {
    assertThat(BarePhoto.isBare(with(0xE2, "ICC_PROFILE\0 1 1"))).isTrue();
  }

  @Test
  void whatStandsBehindTheEndIsTakenOut() {
    byte[] longer = Arrays.copyOf(PICTURE, PICTURE.length + 9);

    assertThat(BarePhoto.isBare(longer)).isFalse();
    assertThat(BarePhoto.isBare(BarePhoto.of(longer).orElseThrow())).isTrue();
  }

  @Test
  void noPictureIsNone() {
    assertThat(BarePhoto.of(new byte[0])).isEmpty();
    assertThat(BarePhoto.of("picture".getBytes(StandardCharsets.UTF_8))).isEmpty();
  }

  @Test
  void aPictureCutOffAnywhereNeverCountsAsBare() {
    assertThat(
            Stream.iterate(0, length -> length < PICTURE.length, length -> length + 7)
                .map(length -> Arrays.copyOf(PICTURE, length)))
        .noneMatch(BarePhoto::isBare);
  }
}
