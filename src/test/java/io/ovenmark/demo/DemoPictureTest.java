package io.ovenmark.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.demo.DemoEvent.BakeRecorded;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DemoPictureTest {
  private static final List<Piece> UNMEASURED = List.of(Piece.named("a"), Piece.named("b"));

  private static Stream<DemoPicture> ofTheDemo() {
    return DemoScript.load().events().stream()
        .filter(BakeRecorded.class::isInstance)
        .flatMap(event -> ((BakeRecorded) event).pictures().stream());
  }

  private static DemoPicture picture(String view, PieceShape shape, List<Piece> pieces) {
    return new DemoPicture("photos/bun/x-" + view + ".jpg", "caption", shape, pieces);
  }

  @ParameterizedTest
  @ValueSource(strings = {"above", "side"})
  void theSamePictureIsTheSameBytesAndALegibleJpeg(String view) throws IOException {
    DemoPicture picture =
        ofTheDemo().filter(p -> p.file().endsWith(view + ".jpg")).findFirst().orElseThrow();
    byte[] bytes = picture.draw();

    assertThat(picture.draw()).isEqualTo(bytes);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(image.getWidth()).isEqualTo(1600);
    assertThat(image.getHeight()).isEqualTo(1200);
    assertThat(bytes.length).isLessThan(600_000);
  }

  @ParameterizedTest
  @MethodSource("ofTheDemo")
  void marksLieOnTheirPiecesApartFromOneAnother(DemoPicture picture) {
    List<Photo.Mark> marks = picture.marks();

    assertThat(marks).hasSameSizeAs(picture.pieces());
    for (Photo.Mark mark : marks) {
      assertThat(mark.x()).isBetween(0.1, 0.9);
      assertThat(mark.y()).isBetween(0.1, 0.8);
      for (Photo.Mark other : marks) {
        boolean same = mark.piece().equals(other.piece());
        double apart = Math.hypot(mark.x() - other.x(), mark.y() - other.y());
        assertThat(same || apart > 0.15).isTrue();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"above, ROUND", "above, RECTANGLE", "above, CUP", "side, ROUND", "side, CUP"})
  void piecesThatNobodyMeasuredAreDrawnAllTheSame(String view, PieceShape shape) {
    assertThat(picture(view, shape, UNMEASURED).draw()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"above", "side"})
  void aBakeWithoutPiecesIsAnEmptyTray(String view) {
    DemoPicture empty = picture(view, PieceShape.ROUND, List.of());

    assertThat(empty.marks()).isEmpty();
    assertThat(empty.draw()).isNotEmpty();
  }

  @Test
  void manyPiecesFindRoom() {
    List<Piece> pieces =
        "abcdefghijkl".chars().mapToObj(c -> Piece.named(String.valueOf((char) c))).toList();
    PictureLayout layout = PictureLayout.above(pieces, PieceShape.ROUND);

    for (PictureLayout.Spot spot : layout.spots()) {
      assertThat(spot.x() - spot.width() / 2).isGreaterThan(PictureLayout.MARGIN);
      assertThat(spot.x() + spot.width() / 2)
          .isLessThan(PictureLayout.WIDTH - PictureLayout.MARGIN);
      assertThat(spot.y() + spot.height() / 2).isLessThan(PictureLayout.TRAY_BOTTOM);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, f3e6c6", "1, e0bb6b", "2, c0812f", "3, 8a4a1c", "4, 4b2712", "-1, f3e6c6", "9, 4b2712"
  })
  void theCrustScaleIsTheViewersScale(double shade, String colour) {
    assertThat(Integer.toHexString(CrustColour.at(shade))).isEqualTo(colour);
  }

  @Test
  void betweenTwoBrownsLiesTheirBlend() {
    assertThat(CrustColour.at(1.5)).isEqualTo(CrustColour.blend(0xe0bb6b, 0xc0812f, 0.5));
    assertThat(CrustColour.lit(0x808080, 4)).isEqualTo(0xffffff);
    assertThat(CrustColour.lit(0x808080, 0)).isZero();
  }

  @Test
  void sizeFollowsTheMeasures() {
    List<Piece> pieces =
        ofTheDemo().filter(p -> p.file().contains("2026-07-15")).findFirst().orElseThrow().pieces();
    PictureLayout layout = PictureLayout.side(pieces, PieceShape.ROUND);

    for (PictureLayout.Spot spot : layout.spots()) {
      double scale = layout.pixelsPerMillimetre();
      assertThat(spot.width() / scale)
          .isCloseTo(spot.piece().widthMillimetres().orElseThrow(), within(1e-9));
      assertThat(spot.height() / scale)
          .isCloseTo(spot.piece().heightMillimetres().orElseThrow(), within(1e-9));
    }
  }
}
