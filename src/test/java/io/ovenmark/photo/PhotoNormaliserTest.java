package io.ovenmark.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoNormaliserTest {
  private static final int WIDE = 160;
  private static final int HIGH = 100;

  /**
   * CIPA DC-008 / JEITA CP-3451 (Exif), tag 0x0112, as TIFF 6.0 (Adobe 1992), tag 274: what row 0
   * and column 0 of the stored picture show.
   */
  @ParameterizedTest
  @CsvSource({
    "1, top, left",
    "2, top, right",
    "3, bottom, right",
    "4, bottom, left",
    "5, left, top",
    "6, right, top",
    "7, right, bottom",
    "8, left, bottom"
  })
  void everyOrientationIsTurnedUpright(int orientation, String rowZero, String columnZero) {
    BufferedImage stored = stored(Pictures.corners(WIDE, HIGH), rowZero, columnZero);
    byte[] original =
        Pictures.withExif(Pictures.jpeg(stored), new Pictures.Exif().orientation(orientation));

    NormalisedPhoto photo = PhotoNormaliser.normalise(original, "tray.jpg");

    assertThat(photo.width()).isEqualTo(WIDE);
    assertThat(photo.height()).isEqualTo(HIGH);
    assertCorners(Pictures.read(photo.jpeg()));
  }

  private static BufferedImage stored(BufferedImage upright, String rowZero, String columnZero) {
    boolean lying = rowZero.equals("left") || rowZero.equals("right");
    int rows = lying ? upright.getWidth() : upright.getHeight();
    int columns = lying ? upright.getHeight() : upright.getWidth();
    BufferedImage stored = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int[] place = new int[2];
        put(place, rowZero, row, upright);
        put(place, columnZero, column, upright);
        stored.setRGB(column, row, upright.getRGB(place[0], place[1]));
      }
    }
    return stored;
  }

  private static void put(int[] place, String side, int distance, BufferedImage upright) {
    switch (side) {
      case "top" -> place[1] = distance;
      case "bottom" -> place[1] = upright.getHeight() - 1 - distance;
      case "left" -> place[0] = distance;
      default -> place[0] = upright.getWidth() - 1 - distance;
    }
  }

  private static void assertCorners(BufferedImage image) {
    int right = image.getWidth() - 6;
    int low = image.getHeight() - 6;
    assertLike(image.getRGB(5, 5), Pictures.RED);
    assertLike(image.getRGB(right, 5), Pictures.GREEN);
    assertLike(image.getRGB(5, low), Pictures.BLUE);
    assertLike(image.getRGB(right, low), Pictures.YELLOW);
  }

  private static void assertLike(int actual, int expected) {
    Color found = new Color(actual);
    Color wanted = new Color(expected);
    int difference =
        Math.abs(found.getRed() - wanted.getRed())
            + Math.abs(found.getGreen() - wanted.getGreen())
            + Math.abs(found.getBlue() - wanted.getBlue());
    assertThat(difference).as("%06x for %06x", actual & 0xffffff, expected).isLessThan(24);
  }

  @Test
  void anImpossibleOrientationCountsAsUpright() {
    byte[] original =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(WIDE, HIGH)), new Pictures.Exif().orientation(9));

    assertCorners(Pictures.read(PhotoNormaliser.normalise(original, "tray.jpg").jpeg()));
  }

  @Test
  void nothingThatTheCameraNotedIsLeftInTheFile() throws Exception {
    byte[] original = Pictures.jpeg(Pictures.corners(WIDE, HIGH));
    original =
        Pictures.withExif(
            original,
            new Pictures.Exif().camera("Saltmarsh One").taken("2026:09:14 10:31:00").at(54, 8));
    original = Pictures.withXmp(original, "exif:GPSLatitude=\"54,30.0N\"");
    original =
        Pictures.withSegment(original, 0xfe, "by the window".getBytes(StandardCharsets.UTF_8));
    assertThat(directories(original)).contains("GPS", "XMP", "JpegComment", "Exif IFD0");

    byte[] kept = PhotoNormaliser.normalise(original, "tray.jpg").jpeg();

    assertThat(directories(kept)).isSubsetOf("JPEG", "JFIF", "Huffman", "File Type");
    assertThat(new String(kept, StandardCharsets.ISO_8859_1))
        .doesNotContain("Exif", "http://", "Saltmarsh", "window", "GPS");
  }

  private static List<String> directories(byte[] jpeg) throws Exception {
    Metadata metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(jpeg));
    return StreamSupport.stream(metadata.getDirectories().spliterator(), false)
        .map(Directory::getName)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "6000, 4000, 2400, 1600",
    "2401, 10, 2400, 10",
    "10, 4800, 5, 2400",
    "2400, 2400, 2400, 2400",
    "300, 200, 300, 200",
    "9000, 1, 2400, 1",
    "1, 1, 1, 1"
  })
  void theLongerSideIsAtMost2400PixelsAndNothingIsEnlarged(
      int width, int height, int newWidth, int newHeight) {
    NormalisedPhoto photo =
        PhotoNormaliser.normalise(Pictures.jpeg(Pictures.corners(width, height)), "tray.jpg");

    assertThat(List.of(photo.width(), photo.height())).containsExactly(newWidth, newHeight);
    BufferedImage image = Pictures.read(photo.jpeg());
    assertThat(List.of(image.getWidth(), image.getHeight())).containsExactly(newWidth, newHeight);
  }

  @Test
  void aSmallerPictureShowsTheMeanOfWhatItCovers() {
    BufferedImage stripes = new BufferedImage(4800, 16, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 16; y++) {
      for (int x = 0; x < 4800; x += 2) {
        stripes.setRGB(x, y, 0xffffff);
      }
    }

    Pixels halved = Pixels.shrunk(stripes, 2400, 8);

    assertThat(halved.colours()).containsOnly(0x808080);
  }

  @Test
  void thePictureOfTheSameSizeKeepsEveryPixel() {
    BufferedImage image = Pictures.corners(37, 23);

    Pixels same = Pixels.shrunk(image, 37, 23);

    assertThat(same.colours())
        .containsExactly(
            Arrays.stream(image.getRGB(0, 0, 37, 23, null, 0, 37)).map(c -> c & 0xffffff).toArray());
  }

  @Test
  void theCamerasTimeIsKeptWithItsZone() {
    byte[] original =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(20, 20)),
            new Pictures.Exif().taken("2026:09:14 10:31:05").zone("+02:00"));

    NormalisedPhoto photo = PhotoNormaliser.normalise(original, "tray.jpg");

    assertThat(photo.taken()).contains(LocalDateTime.of(2026, 9, 14, 10, 31, 5));
    assertThat(photo.zone()).contains(ZoneOffset.ofHours(2));
    assertThat(photo.takenAt(ZoneOffset.UTC))
        .contains(OffsetDateTime.parse("2026-09-14T10:31:05+02:00"));
  }

  @Test
  void aTimeWithoutZoneTakesTheZoneThatIsGiven() {
    byte[] original =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(20, 20)),
            new Pictures.Exif().taken("2026:09:14 10:31:05"));

    assertThat(PhotoNormaliser.normalise(original, "tray.jpg").takenAt(ZoneOffset.ofHours(-5)))
        .contains(OffsetDateTime.parse("2026-09-14T10:31:05-05:00"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0000:00:00 00:00:00", "2026:02:30 10:00:00", "    :  :     :  :  ", "soon"})
  void aTimeThatCannotBeIsNoTime(String time) {
    byte[] original =
        Pictures.withExif(
            Pictures.jpeg(Pictures.corners(20, 20)), new Pictures.Exif().taken(time));

    assertThat(PhotoNormaliser.normalise(original, "tray.jpg").taken()).isEmpty();
  }

  @Test
  void whatIsTransparentLiesOnWhite() {
    BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
    for (int y = 20; y < 40; y++) {
      for (int x = 0; x < 40; x++) {
        image.setRGB(x, y, 0x80000000);
      }
    }

    BufferedImage kept =
        Pictures.read(PhotoNormaliser.normalise(Pictures.png(image), "tray.png").jpeg());

    assertLike(kept.getRGB(10, 5), 0xffffff);
    assertLike(kept.getRGB(10, 35), 0x7f7f7f);
  }

  @ParameterizedTest
  @ValueSource(ints = {BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY})
  void greyStaysAsDarkAsItWas(int type) {
    BufferedImage image = new BufferedImage(40, 40, type);
    int level = type == BufferedImage.TYPE_BYTE_GRAY ? 100 : 100 * 257;
    for (int y = 0; y < 40; y++) {
      for (int x = 0; x < 40; x++) {
        image.getRaster().setSample(x, y, 0, level);
      }
    }

    byte[] kept = PhotoNormaliser.normalise(Pictures.png(image), "tray.png").jpeg();

    assertLike(Pictures.read(kept).getRGB(20, 20), 0x646464);
  }

  @Test
  void aGreyJpegStaysAsDarkAsItWas() {
    BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < 40; y++) {
      for (int x = 0; x < 40; x++) {
        image.getRaster().setSample(x, y, 0, 100);
      }
    }

    byte[] kept = PhotoNormaliser.normalise(Pictures.jpeg(image), "tray.jpg").jpeg();

    assertLike(Pictures.read(kept).getRGB(20, 20), 0x646464);
  }

  /** IEC 61966-2-1: linear 0.2159 is sRGB 128 of 255. */
  @Test
  void aColourProfileIsTurnedIntoSrgb() {
    BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 40; y++) {
      for (int x = 0; x < 40; x++) {
        image.setRGB(x, y, 0x373737);
      }
    }
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    byte[] original =
        Pictures.withSegment(
            Pictures.jpeg(image),
            0xe2,
            "ICC_PROFILE\0\1\1".getBytes(StandardCharsets.US_ASCII),
            profile);

    byte[] kept = PhotoNormaliser.normalise(original, "tray.jpg").jpeg();

    assertLike(Pictures.read(kept).getRGB(20, 20), 0x808080);
  }

  @Test
  void theSamePictureGivesTheSameBytes() {
    byte[] original = Pictures.jpeg(Pictures.corners(WIDE, HIGH));

    assertThat(PhotoNormaliser.normalise(original, "a.jpg"))
        .isEqualTo(PhotoNormaliser.normalise(original, "b.jpg"));
  }

  @Test
  void whatTheFileIsCalledDoesNotSayWhatItIs() {
    byte[] png = Pictures.png(Pictures.corners(WIDE, HIGH));

    assertCorners(Pictures.read(PhotoNormaliser.normalise(png, "tray.jpg").jpeg()));
  }

  static Stream<Arguments> badPictures() {
    byte[] jpeg = Pictures.jpeg(Pictures.corners(1600, 1200));
    byte[] png = Pictures.png(Pictures.corners(400, 300));
    return Stream.of(
        Arguments.of("zero bytes", new byte[0], "is empty"),
        Arguments.of("a text file", "Bake at 190".getBytes(StandardCharsets.UTF_8), "a text file"),
        Arguments.of(
            "a page",
            "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8),
            "a text file"),
        Arguments.of("a JPEG cut after 3 bytes", Arrays.copyOf(jpeg, 3), "damaged or cut off"),
        Arguments.of("a JPEG cut in its header", Arrays.copyOf(jpeg, 200), "damaged or cut off"),
        Arguments.of(
            "a JPEG cut in the middle", Arrays.copyOf(jpeg, jpeg.length / 2), "damaged or cut off"),
        Arguments.of(
            "a JPEG without its end", Arrays.copyOf(jpeg, jpeg.length - 60), "damaged or cut off"),
        Arguments.of("a PNG cut in its header", Arrays.copyOf(png, 20), "damaged or cut off"),
        Arguments.of(
            "a PNG cut in the middle", Arrays.copyOf(png, png.length / 2), "damaged or cut off"),
        Arguments.of(
            "a PNG of 200 megapixels", Pictures.pngHeader(20_000, 10_000, 8, 2), "20000 × 10000"),
        Arguments.of(
            "a PNG of 2 billion rows",
            Pictures.pngHeader(2_000_000_000, 2_000_000_000, 8, 2),
            "more than 50 million"),
        Arguments.of(
            "a PNG of 40 megapixels with 16 bits and transparency",
            Pictures.pngHeader(8000, 5000, 16, 6),
            "more than 50 million of 8 bits"),
        Arguments.of("a PNG without width", Pictures.pngHeader(0, 10, 8, 2), "damaged or cut off"),
        Arguments.of("a phone's HEIC", bytes("\0\0\0\u0018ftypheic\0\0\0\0"), "a HEIC picture"),
        Arguments.of("an AVIF", bytes("\0\0\0\u0018ftypavif\0\0\0\0"), "an AVIF picture"),
        Arguments.of("a film", bytes("\0\0\0\u0018ftypmp42\0\0\0\0"), "a film or a sound"),
        Arguments.of("a printer's JPEG", Pictures.cmyk(60, 40), "colours of printing (CMYK)"),
        Arguments.of(
            "a moving WebP",
            Pictures.withChunk(Pictures.webp("lossy"), "ANIM", new byte[6], 0x02),
            "a moving WebP"),
        Arguments.of(
            "a WebP cut in the middle",
            Arrays.copyOf(Pictures.webp("lossy"), 700),
            "damaged or cut off"),
        Arguments.of(
            "a WebP cut in its header",
            Arrays.copyOf(Pictures.webp("lossless"), 25),
            "damaged or cut off"),
        Arguments.of("a GIF", bytes("GIF89a\1\0\1\0\0\0\0"), "a GIF picture"),
        Arguments.of("a PDF", bytes("%PDF-1.7\n%\u00e2\u00e3"), "a PDF document"),
        Arguments.of("noise", bytes("\u0000\u0001\u0002\u0003\u0004"), "no picture"));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("badPictures")
  void aBadPictureIsRefusedWithOneSentenceAndARemedy(String what, byte[] bytes, String says) {
    assertThatThrownBy(() -> PhotoNormaliser.normalise(bytes, "tray.jpg"))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .startsWith("The photo \"tray.jpg\" ")
        .contains(says)
        .matches("(?s)[^\n]+\\.\n[^\n]+\\.");
  }

  @Test
  void noCutOfAPictureIsTakenForTheWhole() {
    byte[] jpeg = Pictures.jpeg(Pictures.corners(320, 240));
    List<Integer> accepted = new ArrayList<>();
    for (int length = 0; length < jpeg.length - 2; length += 97) {
      try {
        PhotoNormaliser.normalise(Arrays.copyOf(jpeg, length), "tray.jpg");
        accepted.add(length);
      } catch (IllegalArgumentException refused) {
        assertThat(refused).hasMessageContaining("\n");
      }
    }

    assertThat(accepted).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../../.git/config",
        "/etc/passwd",
        "C:\\Users\\x",
        "a\nb\u001b[31m.jpg",
        "\u202egpj.exe",
        "<script>alert(1)</script>",
        ""
      })
  void aHostileNameIsOnlyShownNeverObeyed(String name) {
    assertThatThrownBy(() -> PhotoNormaliser.normalise(new byte[0], name))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .doesNotContain("\u001b", "\u202e")
        .matches("[^\n]+\n[^\n]+");
    byte[] good = Pictures.jpeg(Pictures.corners(20, 20));
    assertThat(PhotoNormaliser.normalise(good, name).width()).isEqualTo(20);
  }

  @Test
  void aLongNameIsShortenedInTheMessage() {
    assertThatThrownBy(() -> PhotoNormaliser.normalise(new byte[0], "x".repeat(5000)))
        .message()
        .hasSizeLessThan(200);
  }
}
