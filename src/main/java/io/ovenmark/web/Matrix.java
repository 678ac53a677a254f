package io.ovenmark.web;

import io.nayuki.qrcodegen.QrCode;
import java.util.ArrayList;
import java.util.List;

/**
 * An address drawn as a QR code, which the camera of a phone reads: as a path for a page, and as
 * lines of half blocks for a terminal with light letters on dark ground.
 */
final class Matrix {
  /** Modules of free ground on each side (ISO/IEC 18004, 4 for a QR code; from memory). */
  private static final int QUIET = 4;

  private final QrCode code;

  private Matrix(QrCode code) {
    this.code = code;
  }

  static Matrix of(String text) {
    return new Matrix(QrCode.encodeText(text, QrCode.Ecc.MEDIUM));
  }

  /** Modules of a side, with the free ground. */
  int size() {
    return code.size + 2 * QUIET;
  }

  /** The dark modules as the data of an SVG path, in modules. */
  String path() {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < size(); y++) {
      for (int x = 0; x < size(); x++) {
        if (isDark(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return path.toString();
  }

  /** Two rows of modules in each line; the light ones are drawn, since the ground is dark. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (int y = 0; y < size(); y += 2) {
      StringBuilder line = new StringBuilder();
      for (int x = 0; x < size(); x++) {
        boolean upper = !isDark(x, y);
        boolean lower = y + 1 < size() && !isDark(x, y + 1);
        line.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
      }
      lines.add(line.toString());
    }
    return List.copyOf(lines);
  }

  /** Whether a module is dark, counted from the corner of the free ground. */
  boolean isDark(int x, int y) {
    return code.getModule(x - QUIET, y - QUIET);
  }
}
