package io.ovenmark.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SchemasTest {
  static Set<String> names() {
    return new TreeSet<>(Schemas.names());
  }

  @ParameterizedTest
  @MethodSource("names")
  void everySchemaIsAValidSchema(String name) {
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()))
                .validate(Schemas.text(name), InputFormat.JSON))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everySchemaNamesItselfAndEveryFieldIsDescribed(String name) {
    JsonValue schema = JsonReader.read(name, Schemas.text(name).getBytes(UTF_8));
    Map<String, JsonValue> members = ((JsonValue.JsonObject) schema).members();
    assertThat(members.get("$id"))
        .isEqualTo(new JsonValue.JsonString("urn:ovenmark:schema:" + name + ":1"));
    assertThat(members.get("$schema"))
        .isEqualTo(new JsonValue.JsonString("https://json-schema.org/draft/2020-12/schema"));
    assertThat(members).containsKeys("title", "description");
    assertThat(undescribed(schema, "")).isEmpty();
    assertThat(CanonicalJson.text(schema)).doesNotContain("additionalProperties");
  }

  private static Set<String> undescribed(JsonValue schema, String path) {
    Set<String> found = new TreeSet<>();
    if (schema instanceof JsonValue.JsonObject object) {
      object
          .members()
          .forEach(
              (key, value) -> {
                if (key.equals("properties") && !path.contains("anyOf")) {
                  ((JsonValue.JsonObject) value)
                      .members()
                      .forEach(
                          (field, described) -> {
                            if (!((JsonValue.JsonObject) described)
                                .members()
                                .containsKey("description")) {
                              found.add(path + "/" + field);
                            }
                          });
                }
                found.addAll(undescribed(value, path + "/" + key));
              });
    } else if (schema instanceof JsonValue.JsonArray array) {
      array.items().forEach(item -> found.addAll(undescribed(item, path)));
    }
    return found;
  }

  @Test
  void refusesNamesThatAreNone() {
    for (String name : new String[] {"", "Formula", "../formula", "formula.schema.json"}) {
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> Schemas.text(name))
          .withMessage(
              "There is no schema named \""
                  + name
                  + "\".\n"
                  + "Use one of formula, bake, food, goal, notebook, tasting, story.");
    }
  }
}
