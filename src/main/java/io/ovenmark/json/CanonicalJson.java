package io.ovenmark.json;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;

/**
 * Writes JSON in the one form that Ovenmark keeps on disk: members in the order given, two spaces a
 * level, one value a line, UTF-8, a final newline, numbers without exponent or trailing zeros. So a
 * hand edit shows as a small textual difference, and the same content is always the same bytes.
 */
public final class CanonicalJson {
  private CanonicalJson() {}

  /**
   * Writes a value.
   *
   * @param value what to write, not null
   * @return UTF-8 text with a final newline
   */
  public static byte[] write(JsonValue value) {
    return text(value).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes a value as text.
   *
   * @param value what to write, not null
   * @return the text with a final newline
   */
  public static String text(JsonValue value) {
    StringBuilder out = new StringBuilder();
    append(out, value, 0);
    return out.append('\n').toString();
  }

  /**
   * A number as it is written: plain decimal digits, or scientific where that would need more than
   * 40 digits.
   *
   * @param value the number
   * @return its shortest exact text
   */
  public static String number(BigDecimal value) {
    BigDecimal plain = value.stripTrailingZeros();
    if (plain.signum() == 0) {
      return "0";
    }
    boolean huge = (long) plain.precision() - plain.scale() > 40 || plain.scale() > 40;
    return huge ? plain.toString() : plain.toPlainString();
  }

  private static void append(StringBuilder out, JsonValue value, int level) {
    if (value instanceof JsonValue.JsonObject object) {
      appendObject(out, object, level);
    } else if (value instanceof JsonValue.JsonArray array) {
      appendArray(out, array, level);
    } else if (value instanceof JsonValue.JsonString string) {
      quote(out, string.value());
    } else if (value instanceof JsonValue.JsonNumber number) {
      out.append(number(number.value()));
    } else if (value instanceof JsonValue.JsonBoolean bool) {
      out.append(bool.value());
    } else {
      out.append("null");
    }
  }

  private static void appendObject(StringBuilder out, JsonValue.JsonObject object, int level) {
    if (object.members().isEmpty()) {
      out.append("{}");
      return;
    }
    out.append('{');
    Iterator<Map.Entry<String, JsonValue>> members = object.members().entrySet().iterator();
    while (members.hasNext()) {
      Map.Entry<String, JsonValue> member = members.next();
      indent(out, level + 1);
      quote(out, member.getKey());
      out.append(": ");
      append(out, member.getValue(), level + 1);
      if (members.hasNext()) {
        out.append(',');
      }
    }
    indent(out, level);
    out.append('}');
  }

  private static void appendArray(StringBuilder out, JsonValue.JsonArray array, int level) {
    if (array.items().isEmpty()) {
      out.append("[]");
      return;
    }
    out.append('[');
    for (int i = 0; i < array.items().size(); i++) {
      indent(out, level + 1);
      append(out, array.items().get(i), level + 1);
      if (i + 1 < array.items().size()) {
        out.append(',');
      }
    }
    indent(out, level);
    out.append(']');
  }

  private static void indent(StringBuilder out, int level) {
    out.append('\n').append("  ".repeat(level));
  }

  private static void quote(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        case '\b' -> out.append("\\b");
        case '\f' -> out.append("\\f");
        default -> {
          if (c < 0x20 || c == 0x7f || loneSurrogate(text, i)) {
            escape(out, c);
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  private static void escape(StringBuilder out, char c) {
    out.append("\\u");
    for (int shift = 12; shift >= 0; shift -= 4) {
      out.append(Character.forDigit(c >> shift & 0xf, 16));
    }
  }

  private static boolean loneSurrogate(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }
}
