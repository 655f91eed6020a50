package hankbook.print;

import java.awt.Color;

/** The few colours of a sheet; yarn has its own. */
final class SheetColours {
  static final Color INK = new Color(0x20, 0x24, 0x2a);
  static final Color QUIET = new Color(0x5a, 0x62, 0x6c);
  static final Color LINE = new Color(0xc9, 0xce, 0xd4);
  static final Color ACCENT = new Color(0x2f, 0x5d, 0x8a);
  static final Color PART = new Color(0x9d, 0xb8, 0xd1);

  private SheetColours() {}
}
