package io.ovenmark.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.json.Position;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The form of CSV is that of RFC 4180. */
class DelimitedReaderTest {
  private static DelimitedReader csv(String text) {
    return new DelimitedReader(new StringReader(text), ',', '"', true);
  }

  private static List<List<String>> all(DelimitedReader reader) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    while (reader.next()) {
      List<String> row = new ArrayList<>();
      for (int i = 0; i < reader.fields(); i++) {
        row.add(reader.text(i));
      }
      rows.add(row);
    }
    return rows;
  }

  @Test
  void quotesSeparatorsAndLineEndsAreUnderstood() throws IOException {
    assertThat(all(csv("a,b\r\n\"x, \"\"y\"\"\",\"1\r\n2\"\n\n,\n\"\"\nlast")))
        .containsExactly(
            List.of("a", "b"),
            List.of("x, \"y\"", "1\r\n2"),
            List.of("", ""),
            List.of("last"));
  }

  @Test
  void placesAreCountedThroughQuotedLines() throws IOException {
    DelimitedReader reader = csv("\"a\nb\",2\n\"c\",4\n");
    reader.next();
    assertThat(reader.position(0)).isEqualTo(new Position(1, 1));
    reader.next();
    assertThat(reader.position(0)).isEqualTo(new Position(3, 1));
    assertThat(reader.position(1)).isEqualTo(new Position(3, 5));
  }

  @Test
  void anOpenQuoteIsAFault() throws IOException {
    DelimitedReader reader = csv("\"a,b\n");
    assertThat(reader.next()).isTrue();
    assertThat(reader.fault()).contains("not closed");
    assertThat(reader.next()).isFalse();
  }

  @Test
  void whatIsWrittenIsReadForManyRandomRows() throws IOException {
    Random random = new Random(11);
    List<List<String>> rows = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int r = 0; r < 3000; r++) {
      List<String> row = new ArrayList<>();
      for (int f = 0; f < 5; f++) {
        StringBuilder field = new StringBuilder();
        for (int c = random.nextInt(40); c > 0; c--) {
          field.append("ab ,\"\n\r~^é".charAt(random.nextInt(10)));
        }
        row.add(field.toString());
        text.append(f == 0 ? "" : ",").append('"');
        text.append(field.toString().replace("\"", "\"\"")).append('"');
      }
      text.append(random.nextBoolean() ? "\n" : "\r\n");
      rows.add(row);
    }
    assertThat(all(csv(text.toString()))).isEqualTo(rows);
  }
}
