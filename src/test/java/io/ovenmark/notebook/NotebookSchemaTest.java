package io.ovenmark.notebook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.ovenmark.json.SchemaCheck;
import io.ovenmark.json.UnreadableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotebookSchemaTest {
  private static final String NOTEBOOK =
      """
      {
        "format": 1,
        "title": "Saltmarsh bench",
        "units": {"temperature": "°C", "mass": "g"},
        "energy": "EU factors",
        "net_carbohydrate": {"subtract": {"fibre": 1, "polyols": 1, "allulose": 1}},
        "own": true
      }
      """;

  private static NotebookSettings read(String json) {
    return NotebookSettings.read("notebook.json", json.getBytes(UTF_8));
  }

  @Test
  void fullSettingsFitBeforeAndAfterTheCodec() {
    assertThat(SchemaCheck.errors("notebook", NOTEBOOK)).isEmpty();
    byte[] written = read(NOTEBOOK).write();
    assertThat(SchemaCheck.errors("notebook", written)).isEmpty();
    assertThat(NotebookSettings.read("notebook.json", written).write()).isEqualTo(written);
    assertThat(SchemaCheck.errors("notebook", NotebookSettings.titled("Ψωμί").write())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"format\": 1}",
        "{\"format\": 1.0, \"title\": null, \"units\": null}",
        "{\"format\": 1, \"units\": {\"temperature\": \"°F\", \"mass\": null}, \"energy\": null}",
        "{\"format\": 1, \"energy\": \"US factors\", \"net_carbohydrate\": null}"
      })
  void schemaAndCodecAcceptTheSame(String json) {
    assertThat(SchemaCheck.errors("notebook", json)).isEmpty();
    assertThat(SchemaCheck.errors("notebook", read(json).write())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "[]",
        "{\"format\": \"1\"}",
        "{\"format\": 0}",
        "{\"format\": 1.5}",
        "{\"format\": 1, \"title\": 5}",
        "{\"format\": 1, \"units\": {\"temperature\": \"K\"}}",
        "{\"format\": 1, \"units\": {\"mass\": \"kg\"}}",
        "{\"format\": 1, \"units\": []}",
        "{\"format\": 1, \"energy\": \"guess\"}",
        "{\"format\": 1, \"net_carbohydrate\": {\"subtract\": {\"polyols\": -0.1}}}"
      })
  void schemaAndCodecRefuseTheSame(String json) {
    assertThat(SchemaCheck.errors("notebook", json)).isNotEmpty();
    assertThatExceptionOfType(UnreadableException.class).isThrownBy(() -> read(json));
  }
}
