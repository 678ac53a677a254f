package io.ovenmark.publish.story;

import java.awt.Color;

/** The colours of the pictures: those of the pages by daylight, on a paper a shade off white. */
final class Palette {
  static final Color PAPER = new Color(0xfafbfa);
  static final Color INK = new Color(0x1c2426);
  static final Color QUIET = new Color(0x515c60);
  static final Color RULE = new Color(0xd9dedf);
  static final Color RULE_STRONG = new Color(0x7d888b);
  static final Color BENCH = new Color(0xeef1f0);
  static final Color BEFORE = new Color(0x86557a);
  static final Color AFTER = new Color(0x0a6570);
  static final Color GOAL = new Color(0xdcebe0);
  static final Color GOAL_INK = new Color(0x2f6a3d);
  static final Color WARN = new Color(0x9a430b);

  private Palette() {}
}
