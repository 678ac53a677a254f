package io.ovenmark.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PhotoFaultTest {
  private final byte[] plain = Pictures.jpeg(Pictures.corners(320, 240));

  @Test
  void aNormalisedPictureHasNone() {
    byte[] original = Pictures.withExif(plain, new Pictures.Exif().orientation(6).at(54, 8));

    assertThat(PhotoFault.of(PhotoNormaliser.normalise(original, "tray.jpg").jpeg())).isEmpty();
  }

  @Test
  void aPlaceInExifOrXmpIsFound() {
    assertThat(PhotoFault.of(Pictures.withExif(plain, new Pictures.Exif().at(54, 8))))
        .containsExactly(PhotoFault.LOCATION);
    assertThat(PhotoFault.of(Pictures.withXmp(plain, "exif:GPSLatitude=\"54,30.0N\"")))
        .containsExactly(PhotoFault.LOCATION);
  }

  @Test
  void aCameraWithoutAPlaceIsNoFault() {
    assertThat(PhotoFault.of(Pictures.withExif(plain, new Pictures.Exif().camera("One"))))
        .isEmpty();
  }

  @Test
  void whatIsCutOffIsFound() {
    assertThat(PhotoFault.of(Arrays.copyOf(plain, plain.length / 2)))
        .containsExactly(PhotoFault.DAMAGED);
  }

  @Test
  void whatIsNoJpegIsFound() {
    assertThat(PhotoFault.of("dough".getBytes(StandardCharsets.UTF_8)))
        .containsExactly(PhotoFault.NOT_JPEG);
    assertThat(PhotoFault.of(new byte[0])).containsExactly(PhotoFault.NOT_JPEG);
  }
}
