package io.ovenmark.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads one JSON text (RFC 8259, UTF-8) into {@link JsonValue}s that know their line and column.
 * Stricter than the grammar: a name may stand only once in an object, nothing may follow the value,
 * nesting is limited to {@value #DEEPEST} levels, and a number to {@value #LONGEST_NUMBER}
 * characters and powers of ten up to {@value #GREATEST_EXPONENT}. A byte order mark is passed over.
 *
 * <pre>{@code
 * JsonValue value = JsonReader.read("formulas/lupin-bun.json", bytes);
 * }</pre>
 */
public final class JsonReader {
  /** Deepest nesting that is read; formulas need five. */
  static final int DEEPEST = 64;

  /** Greatest length of a number's text. */
  static final int LONGEST_NUMBER = 64;

  /** Greatest power of ten, and its negative the least, that a number may carry. */
  static final int GREATEST_EXPONENT = 1000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST + 1)
                  .maxNumberLength(Integer.MAX_VALUE)
                  .maxStringLength(Integer.MAX_VALUE)
                  .maxNameLength(Integer.MAX_VALUE)
                  .build())
          .build();

  private final String file;
  private final String text;
  private final JsonParser parser;

  private JsonReader(String file, String text, JsonParser parser) {
    this.file = file;
    this.text = text;
    this.parser = parser;
  }

  /**
   * Reads a whole file.
   *
   * @param file the name used in messages
   * @param utf8 the bytes of the file
   * @return the value, never null
   * @throws UnreadableException with one problem when the text is not JSON
   */
  public static JsonValue read(String file, byte[] utf8) {
    String text = decode(file, utf8);
    if (text.isBlank()) {
      throw fault(file, Position.NONE, "The file is empty.", "Restore it or write an object.");
    }
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new JsonReader(file, text, parser).whole();
    } catch (JsonParseException e) {
      throw new UnreadableException(List.of(SyntaxFault.of(file, text, e)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonValue whole() throws IOException {
    parser.nextToken();
    JsonValue value = value(0);
    parser.finishToken();
    int end = (int) parser.currentLocation().getCharOffset();
    while (end < text.length() && " \t\r\n".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    if (end < text.length()) {
      throw fault(
          file,
          SyntaxFault.position(text, end),
          "Something follows the end of the JSON value.",
          "Remove what comes after the last bracket.");
    }
    return value;
  }

  private JsonValue value(int depth) throws IOException {
    Position at = position(parser.currentTokenLocation());
    JsonToken token = parser.currentToken();
    if (depth >= DEEPEST && token.isStructStart()) {
      throw fault(
          file,
          at,
          "Lists and objects are nested more than " + DEEPEST + " deep here.",
          "Check for pasted text that does not belong here.");
    }
    return switch (token) {
      case START_OBJECT -> object(at, depth);
      case START_ARRAY -> array(at, depth);
      case VALUE_STRING -> new JsonValue.JsonString(parser.getText(), at);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.JsonNumber(number(at), at);
      case VALUE_TRUE, VALUE_FALSE -> new JsonValue.JsonBoolean(token == JsonToken.VALUE_TRUE, at);
      case VALUE_NULL -> new JsonValue.JsonNull(at);
      default -> throw new IllegalStateException("no value begins with " + token);
    };
  }

  private JsonValue object(Position at, int depth) throws IOException {
    Map<String, JsonValue> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      Position named = position(parser.currentTokenLocation());
      if (members.containsKey(name)) {
        throw fault(
            file,
            named,
            "The name \"" + name + "\" stands twice in one object.",
            "Keep one of the two.");
      }
      parser.nextToken();
      members.put(name, value(depth + 1));
    }
    return new JsonValue.JsonObject(members, at);
  }

  private JsonValue array(Position at, int depth) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(depth + 1));
    }
    return new JsonValue.JsonArray(items, at);
  }

  private BigDecimal number(Position at) throws IOException {
    if (parser.getTextLength() > LONGEST_NUMBER) {
      throw fault(
          file,
          at,
          "The number has more than " + LONGEST_NUMBER + " digits.",
          "Round it, or put it in quotes if it is a text.");
    }
    try {
      BigDecimal number = new BigDecimal(parser.getText());
      if (Math.abs((long) number.scale()) <= GREATEST_EXPONENT) {
        return number;
      }
    } catch (NumberFormatException e) {
      // the exponent alone has more digits than a number can keep: refused below
    }
    throw fault(
        file,
        at,
        "The number " + parser.getText() + " is far too large or too small.",
        "Check its power of ten, the digits after the e.");
  }

  private static String decode(String file, byte[] utf8) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.wrap(utf8);
    CharBuffer chars = CharBuffer.allocate(utf8.length);
    CoderResult result = decoder.decode(bytes, chars, false);
    String text = chars.flip().toString();
    text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (result.isError()) {
      throw fault(
          file,
          SyntaxFault.position(text, text.length()),
          "The file is not UTF-8 text from here on.",
          "Save it again with the encoding UTF-8.");
    }
    if (bytes.hasRemaining()) {
      throw fault(
          file,
          SyntaxFault.position(text, text.length()),
          "The file ends in the middle of a character.",
          SyntaxFault.RESTORE);
    }
    return text;
  }

  private static Position position(JsonLocation location) {
    return new Position(location.getLineNr(), location.getColumnNr());
  }

  private static UnreadableException fault(String file, Position at, String message, String hint) {
    return new UnreadableException(List.of(new Problem(file, at, "", message, hint)));
  }
}
