package io.ovenmark.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** WebP as browsers and phones write it, and PNG files that unfold to more than they seem. */
class FurtherFormatsTest {
  private static final int EXIF = 0x08;

  @ParameterizedTest
  @ValueSource(strings = {"lossy", "lossless", "alpha"})
  void aWebpIsKeptAsJpegInTheSameColours(String kind) {
    NormalisedPhoto photo = PhotoNormaliser.normalise(Pictures.webp(kind), "tray.webp");

    BufferedImage image = Pictures.read(photo.jpeg());
    assertThat(List.of(image.getWidth(), image.getHeight())).containsExactly(160, 100);
    assertLike(image, 5, 5, Pictures.RED);
    assertLike(image, 154, 5, Pictures.GREEN);
    assertLike(image, 5, 94, Pictures.BLUE);
    assertLike(image, 154, 94, Pictures.YELLOW);
    assertLike(image, 80, 50, kind.equals("alpha") ? 0xffffff : 0x808080);
  }

  private static void assertLike(BufferedImage image, int x, int y, int expected) {
    Color found = new Color(image.getRGB(x, y));
    Color wanted = new Color(expected);
    assertThat(
            Math.abs(found.getRed() - wanted.getRed())
                + Math.abs(found.getGreen() - wanted.getGreen())
                + Math.abs(found.getBlue() - wanted.getBlue()))
        .as("%d, %d: %s for %s", x, y, found, wanted)
        .isLessThan(36);
  }

  /** CIPA DC-008 / JEITA CP-3451 (Exif), tag 0x0112; kept in the chunk EXIF of the container. */
  @ParameterizedTest
  @CsvSource({"1, 160, 100", "3, 160, 100", "6, 100, 160", "8, 100, 160"})
  void whatTheCameraNotedInAWebpCountsToo(int orientation, int width, int height) {
    byte[] exif = new Pictures.Exif().orientation(orientation).taken("2026:09:14 10:31:05").tiff();
    byte[] webp = Pictures.withChunk(Pictures.webp("lossy"), "EXIF", exif, EXIF);

    NormalisedPhoto photo = PhotoNormaliser.normalise(webp, "tray.webp");

    assertThat(List.of(photo.width(), photo.height())).containsExactly(width, height);
    assertThat(photo.taken()).contains(LocalDateTime.of(2026, 9, 14, 10, 31, 5));
  }

  @Test
  void whatTheCameraNotedInAPngCountsToo() {
    byte[] exif = new Pictures.Exif().orientation(6).taken("2026:09:14 10:31:05").tiff();
    byte[] png =
        Pictures.withChunk(Pictures.png(Pictures.corners(160, 100)), Pictures.chunk("eXIf", exif));

    NormalisedPhoto photo = PhotoNormaliser.normalise(png, "tray.png");

    assertThat(List.of(photo.width(), photo.height())).containsExactly(100, 160);
    assertThat(photo.taken()).contains(LocalDateTime.of(2026, 9, 14, 10, 31, 5));
  }

  @Test
  void aWebpThatClaimsToBeHugeIsNotUnfolded() {
    byte[] webp = Pictures.webp("lossy");
    for (int at = 24; at < 30; at++) {
      webp[at] = (byte) 0x3f;
    }

    assertThatThrownBy(() -> PhotoNormaliser.normalise(webp, "tray.webp"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("more than 50 million");
  }

  @ParameterizedTest
  @ValueSource(strings = {"zTXt", "iTXt", "iCCP"})
  void compressedRemarksOfAPngAreNeverUnfolded(String type) {
    byte[] head = (type.equals("iTXt") ? "a\0\1\0\0\0" : "a\0\0").getBytes(StandardCharsets.UTF_8);
    byte[] bomb = Pictures.zeros(4);
    byte[] content = ByteBuffer.allocate(head.length + bomb.length).put(head).put(bomb).array();
    byte[] plain = Pictures.png(Pictures.corners(40, 30));
    byte[] png = Pictures.withChunk(plain, Pictures.chunk(type, content));

    assertThat(PngChunks.forPixels(png)).isEqualTo(PngChunks.forPixels(plain));
    assertThat(PngChunks.forCameraNotes(png)).hasSize(8 + 25 + 12);
    assertThat(PhotoNormaliser.normalise(png, "tray.png"))
        .isEqualTo(PhotoNormaliser.normalise(plain, "tray.png"));
  }

  @Test
  void morePixelsThanAPngDeclaresAreLeftUnread() {
    byte[] header = Pictures.pngHeader(20, 10, 8, 2);
    byte[] pixels = Pictures.chunk("IDAT", Pictures.zeros(64));
    byte[] end = Pictures.chunk("IEND", new byte[0]);
    byte[] png =
        ByteBuffer.allocate(header.length + pixels.length + end.length)
            .put(header)
            .put(pixels)
            .put(end)
            .array();

    NormalisedPhoto photo = PhotoNormaliser.normalise(png, "tray.png");

    assertThat(List.of(photo.width(), photo.height())).containsExactly(20, 10);
  }

  @Test
  void aChunkThatClaimsToBeLongerThanTheFileHarmsNothing() {
    byte[] png = Pictures.png(Pictures.corners(40, 30));
    png[33] = (byte) 0xff;

    assertThatThrownBy(() -> PhotoNormaliser.normalise(png, "tray.png"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("damaged or cut off");
  }

  @Test
  void aPlaceInAWebpIsGoneFromWhatIsKept() {
    byte[] exif = new Pictures.Exif().taken("2026:09:14 10:31:05").at(54, 8).tiff();
    byte[] webp = Pictures.withChunk(Pictures.webp("lossy"), "EXIF", exif, EXIF);
    assertThat(CameraNotes.of(webp).location()).isTrue();

    byte[] kept = PhotoNormaliser.normalise(webp, "tray.webp").jpeg();

    assertThat(CameraNotes.of(kept).location()).isFalse();
    assertThat(PhotoFault.of(kept)).isEmpty();
  }
}
