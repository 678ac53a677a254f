package io.ovenmark.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes against closed formulas of solid geometry, written out here, and summed up in slices. */
class TinTest {
  private static final int SLICES = 100_000;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // cylinder: π r² h
        "round:20cmx5cm | 1570.7963 | round tin 20 cm × 5 cm",
        // frustum of a cone: πh(R² + Rr + r²) ÷ 3
        "round:20/18cmx5cm | 1418.9527 | round tin 20/18 cm × 5 cm",
        // box
        "square: 20 x 5 cm | 2000 | square tin 20 cm × 5 cm",
        // frustum of a pyramid: h(A + √(Aa) + a) ÷ 3
        "square:20/16cm x 6cm | 1952 | square tin 20/16 cm × 6 cm",
        "loaf:25cmx11cmx7cm | 1925 | loaf tin 25 cm × 11 cm × 7 cm",
        "loaf tin 9 x 5 x 3 inch | 2212.2536 | loaf tin 22.9 cm × 12.7 cm × 7.62 cm",
        "ROUND pan 200 mm x 50 mm | 1570.7963 | round tin 20 cm × 5 cm",
      })
  void aTinHasTheVolumeOfItsSolid(String text, double millilitres, String words) {
    Tin tin = Tin.read(text);
    assertThat(tin.millilitres()).isCloseTo(millilitres, within(1e-3));
    assertThat(tin.inWords()).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "round:26/21cmx7.5cm", "square:23/20cmx5cm", "loaf:25/22x11/9x7cm", "loaf:30/24x10/10x8cm"
      })
  void slantingWallsAreSummedUpInSlices(String text) {
    Tin tin = Tin.read(text);
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      double share = (i + 0.5) / SLICES;
      double length = tin.bottom().length() * (1 - share) + tin.top().length() * share;
      double width = tin.bottom().width() * (1 - share) + tin.top().width() * share;
      double area = length * width * (tin.shape() == Tin.Shape.ROUND ? Math.PI / 4 : 1);
      sum += area * tin.depth() / SLICES;
    }
    assertThat(tin.millilitres()).isCloseTo(sum, within(1e-4));
  }

  @Test
  void aTinIsFoundInTheWordsOfAVessel() {
    assertThat(Tin.in("Loaf tin 25 x 11 x 7 cm, greased").orElseThrow())
        .isEqualTo(Tin.read("loaf:25x11x7cm"));
    assertThat(Tin.in("round 20 cm x 5 cm on the stone")).isPresent();
    assertThat(Tin.in("black steel tray, baking paper")).isEmpty();
    assertThat(Tin.in("loaf tin 25 x 11 cm")).isEmpty();
    assertThat(Tin.in("round tin")).isEmpty();
    assertThat(Tin.in("round 900 x 5 cm")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "round", "round:20cm", "round:20x5", "oval:20cmx5cm", "loaf:20cmx5cm",
        "round:20cmx5/4cm",
        "square:20cmx5cmx4cm", "round:-20cmx5cm", "round:20..5cmx5cm"
      })
  void whatIsNoTinIsRefusedWithAnExample(String text) {
    assertThatThrownBy(() -> Tin.read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\n")
        .hasMessageContaining("round:20cmx5cm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"round:0cmx5cm", "round:900cmx5cm"})
  void impossibleLengthsAreRefused(String text) {
    assertThatThrownBy(() -> Tin.read(text)).hasMessageContaining("at most 2 m each way");
  }
}
