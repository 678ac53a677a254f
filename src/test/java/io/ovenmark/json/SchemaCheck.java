package io.ovenmark.json;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Checks files against the published schemas with an independent validator. */
public final class SchemaCheck {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Map<String, Schema> SCHEMAS = new ConcurrentHashMap<>();

  private SchemaCheck() {}

  /** What the schema of that name finds wrong with the text. */
  public static List<String> errors(String schema, String json) {
    return SCHEMAS
        .computeIfAbsent(schema, name -> REGISTRY.getSchema(Schemas.text(name), InputFormat.JSON))
        .validate(json, InputFormat.JSON)
        .stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  /** As {@link #errors(String, String)}. */
  public static List<String> errors(String schema, byte[] json) {
    return errors(schema, new String(json, StandardCharsets.UTF_8));
  }
}
