package io.ovenmark.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * Writes the records of answers as JSON: names in snake case, {@code null} for what is unknown or
 * absent, numbers unrounded.
 */
public final class Json {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .build();

  private Json() {}

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
      return MAPPER.writer(SerializationFeature.INDENT_OUTPUT).writeValueAsString(answer) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
