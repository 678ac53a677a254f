package io.ovenmark.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThumbnailTest {
  @ParameterizedTest
  @CsvSource({"1200, 800, 320, 320, 213", "300, 200, 320, 300, 200", "1000, 1, 100, 100, 1"})
  void isOfTheWantedWidthAndNeverLarger(
      int width, int height, int wanted, int newWidth, int newHeight) {
    byte[] small = Thumbnail.of(Pictures.jpeg(Pictures.corners(width, height)), wanted);

    BufferedImage image = Pictures.read(small);
    assertThat(List.of(image.getWidth(), image.getHeight())).containsExactly(newWidth, newHeight);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 2401, Integer.MAX_VALUE})
  void aWidthOutOfRangeIsRefused(int width) {
    byte[] jpeg = Pictures.jpeg(Pictures.corners(20, 20));

    assertThatThrownBy(() -> Thumbnail.of(jpeg, width))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Use 1 to 2400.");
  }

  @Test
  void whatIsNoPictureIsRefused() {
    assertThatThrownBy(() -> Thumbnail.of("dough".getBytes(StandardCharsets.UTF_8), 320))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("ovenmark check");
    assertThatThrownBy(() -> Thumbnail.of(Pictures.pngHeader(20_000, 10_000, 8, 2), 320))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
