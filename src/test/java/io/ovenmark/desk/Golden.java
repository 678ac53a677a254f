package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Texts that must stay as they are; {@code -Dgolden=rewrite} writes them anew. Numbers are compared
 * in ten digits, so that adding up in another order is no change.
 */
final class Golden {
  private static final boolean REWRITE = "rewrite".equals(System.getProperty("golden"));

  private static final Pattern NUMBER = Pattern.compile("(?<= : )-?\\d+\\.\\d{8,}(E-?\\d+)?");

  private Golden() {}

  private static String rounded(String text) {
    return NUMBER
        .matcher(text)
        .replaceAll(
            number ->
                new BigDecimal(number.group())
                    .round(new MathContext(10))
                    .stripTrailingZeros()
                    .toPlainString());
  }

  /** Holds a text against {@code src/test/resources/contract/<name>}. */
  static void check(String name, String answer) {
    String text = rounded(answer);
    Path file = Path.of("src", "test", "resources", "contract", name);
    try {
      if (REWRITE) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
      }
      assertThat(text).as("%s; -Dgolden=rewrite takes it as it is", file).isEqualTo(
          Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
