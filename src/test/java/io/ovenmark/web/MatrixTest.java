package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MatrixTest {
  private final Matrix matrix = Matrix.of("http://192.168.1.20:27411/pair#K7QM-4XTP");

  @Test
  void itHasFreeGroundAroundAndAFinderInThreeCorners() {
    int size = matrix.size();
    for (int at = 0; at < size; at++) {
      for (int edge = 0; edge < 4; edge++) {
        assertThat(matrix.isDark(edge, at)).isFalse();
        assertThat(matrix.isDark(at, edge)).isFalse();
        assertThat(matrix.isDark(size - 1 - edge, at)).isFalse();
        assertThat(matrix.isDark(at, size - 1 - edge)).isFalse();
      }
    }
    for (int[] corner : new int[][] {{4, 4}, {size - 11, 4}, {4, size - 11}}) {
      for (int at = 0; at < 7; at++) {
        assertThat(matrix.isDark(corner[0] + at, corner[1])).isTrue();
        assertThat(matrix.isDark(corner[0], corner[1] + at)).isTrue();
      }
      assertThat(matrix.isDark(corner[0] + 1, corner[1] + 1)).isFalse();
      assertThat(matrix.isDark(corner[0] + 3, corner[1] + 3)).isTrue();
    }
  }

  @Test
  void theLinesShowTheSameModulesAsThePath() {
    List<String> lines = matrix.lines();
    int size = matrix.size();
    assertThat(lines).hasSize((size + 1) / 2).allMatch(line -> line.length() == size);
    int dark = 0;
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        char drawn = lines.get(y / 2).charAt(x);
        boolean light = drawn == '█' || drawn == (y % 2 == 0 ? '▀' : '▄');
        assertThat(light).isEqualTo(!matrix.isDark(x, y));
        dark += light ? 0 : 1;
        assertThat(matrix.path().contains("M" + x + " " + y + "h1")).isEqualTo(!light);
      }
    }
    assertThat(dark).isPositive();
  }
}
