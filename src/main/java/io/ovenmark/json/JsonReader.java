package io.ovenmark.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
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
 * and nesting is limited to {@value #DEEPEST} levels.
 *
 * <pre>{@code
 * JsonValue value = JsonReader.read("formulas/lupin-bun.json", bytes);
 * }</pre>
 */
public final class JsonReader {
  /** Deepest nesting that is read; formulas need five. */
  static final int DEEPEST = 64;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxNumberLength(64).build())
          .build();

  private JsonReader() {}

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
      parser.nextToken();
      JsonValue value = value(file, parser);
      if (parser.nextToken() != null) {
        throw fault(
            file,
            position(parser.currentTokenLocation()),
            "Something follows the end of the JSON value.",
            "Remove what comes after the last bracket.");
      }
      return value;
    } catch (JsonParseException e) {
      throw fault(file, position(e.getLocation()), sentence(e), remedy(e));
    } catch (StreamConstraintsException e) {
      throw fault(
          file,
          e.getLocation() == null ? Position.NONE : position(e.getLocation()),
          "A value is nested too deeply or a number has too many digits.",
          "Check for pasted text that does not belong here.");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonValue value(String file, JsonParser parser) throws IOException {
    Position at = position(parser.currentTokenLocation());
    JsonToken token = parser.currentToken();
    if (token == null) {
      throw fault(file, at, "The file ends too early.", "Restore the missing end of the file.");
    }
    switch (token) {
      case START_OBJECT:
        Map<String, JsonValue> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          parser.nextToken();
          members.put(name, value(file, parser));
        }
        return new JsonValue.JsonObject(members, at);
      case START_ARRAY:
        List<JsonValue> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          items.add(value(file, parser));
        }
        return new JsonValue.JsonArray(items, at);
      case VALUE_STRING:
        return new JsonValue.JsonString(parser.getText(), at);
      case VALUE_NUMBER_INT:
      case VALUE_NUMBER_FLOAT:
        return new JsonValue.JsonNumber(parser.getDecimalValue(), at);
      case VALUE_TRUE:
      case VALUE_FALSE:
        return new JsonValue.JsonBoolean(token == JsonToken.VALUE_TRUE, at);
      case VALUE_NULL:
        return new JsonValue.JsonNull(at);
      default:
        throw fault(file, at, "This is not a JSON value.", "Compare it with a working file.");
    }
  }

  private static String decode(String file, byte[] utf8) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.wrap(utf8);
    CharBuffer chars = CharBuffer.allocate(utf8.length + 1);
    CoderResult result = decoder.decode(bytes, chars, true);
    chars.flip();
    if (result.isError()) {
      String before = chars.toString();
      int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
      int column = before.length() - before.lastIndexOf('\n');
      throw fault(
          file,
          new Position(line, column),
          "The file is not UTF-8 text.",
          "Save it again as UTF-8.");
    }
    try {
      result.throwException();
    } catch (java.nio.BufferUnderflowException expected) {
      // underflow is how a decoder says that all input was read
    } catch (CharacterCodingException e) {
      throw new UncheckedIOException(e);
    }
    String text = chars.toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static String sentence(JsonParseException e) {
    String message = e.getOriginalMessage();
    if (message.contains("Unexpected end-of-input") || message.contains("end-of-input")) {
      return "The file ends before its brackets are closed.";
    }
    if (message.startsWith("Duplicate field")) {
      return message.replace("Duplicate field", "The name") + " stands twice in one object.";
    }
    return "This is not valid JSON: " + firstSentence(message) + ".";
  }

  private static String remedy(JsonParseException e) {
    if (e.getOriginalMessage().startsWith("Duplicate field")) {
      return "Keep one of the two.";
    }
    return "Look for a missing comma, quote or bracket here or on the line before.";
  }

  private static String firstSentence(String message) {
    String first = message.split("[\\r\\n]|: |\\. ", 2)[0];
    return first.isEmpty() ? "unexpected text" : first;
  }

  private static Position position(JsonLocation location) {
    return new Position(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  private static UnreadableException fault(String file, Position at, String message, String hint) {
    return new UnreadableException(List.of(new Problem(file, at, "", message, hint)));
  }
}
