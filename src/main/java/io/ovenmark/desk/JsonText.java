package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonRawValue;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;

/**
 * Any JSON, carried along as it is: what somebody is still typing.
 *
 * @param text valid JSON
 */
public record JsonText(@JsonValue @JsonRawValue String text) {
  /** Checks that it is not null; whoever makes one answers for its being JSON. */
  public JsonText {
    requireNonNull(text, "text");
  }

  /** From what was read. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  static JsonText of(JsonNode node) {
    return new JsonText(node.toString());
  }

  /**
   * From a file of the notebook.
   *
   * @param utf8 JSON
   * @return the text
   */
  static JsonText of(byte[] utf8) {
    return new JsonText(new String(utf8, StandardCharsets.UTF_8).strip());
  }

  /** As the readers of files take it. */
  byte[] utf8() {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
