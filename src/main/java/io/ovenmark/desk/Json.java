package io.ovenmark.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.ovenmark.notebook.Refusal;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.stream.Collectors;

/**
 * Writes the records of answers as JSON: names in snake case, {@code null} for what is unknown or
 * absent, numbers unrounded.
 */
public final class Json {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .build();

  private static final ObjectMapper READER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .build();

  private Json() {}

  /** Two spaces and a line feed, on every machine. */
  private static final class LineBreaks extends DefaultPrettyPrinter {
    private static final long serialVersionUID = 1L;

    LineBreaks() {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      indentObjectsWith(indenter);
      indentArraysWith(indenter);
    }

    @Override
    public DefaultPrettyPrinter createInstance() {
      return new LineBreaks();
    }
  }

  /**
   * A time as answers state it.
   *
   * @param time the time
   * @return ISO 8601 with seconds and offset, such as {@code 2026-03-01T08:05:00+01:00}
   */
  static String time(OffsetDateTime time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
  }

  /**
   * Writes an answer on one line.
   *
   * @param answer a record of this package
   * @return JSON
   */
  public static String compact(Object answer) {
    try {
      return MAPPER.writeValueAsString(answer);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Writes an answer for reading.
   *
   * @param answer a record of this package
   * @return indented JSON with a final line break
   */
  public static String readable(Object answer) {
    try {
      return MAPPER.writer(new LineBreaks()).writeValueAsString(answer) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Reads an order, such as a page sends it.
   *
   * @param utf8 JSON whose names are those of the record, in snake case
   * @param type the record
   * @param <T> the record
   * @return what it says; a component that the JSON lacks is null
   * @throws Refusal when it is no JSON, or not that of such a record
   */
  public static <T> T read(byte[] utf8, Class<T> type) {
    try {
      T read = READER.readValue(utf8, type);
      if (read != null) {
        return read;
      }
    } catch (JsonMappingException e) {
      if (e.getCause() instanceof Refusal refusal) {
        throw refusal;
      }
      String field =
          e.getPath().stream()
              .map(step -> step.getFieldName() == null ? "" + step.getIndex() : step.getFieldName())
              .collect(Collectors.joining("."));
      throw misread(field.isEmpty() ? "order" : field);
    } catch (IOException e) {
      throw misread("order");
    }
    throw misread("order");
  }

  /**
   * A text of an object.
   *
   * @param json the object
   * @param member the member's name
   * @return its text; empty when there is none, or it is no text
   */
  static String text(String json, String member) {
    try {
      return READER.readTree(json).path(member).asText("");
    } catch (JsonProcessingException e) {
      return "";
    }
  }

  private static Refusal misread(String where) {
    return new Refusal(
        Refusal.Reason.INVALID,
        where,
        "The order is not understood.",
        "Reload the page and try again.");
  }
}
