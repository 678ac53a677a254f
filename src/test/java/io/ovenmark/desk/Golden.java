package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that must stay as they are; {@code -Dgolden=rewrite} writes them anew. */
final class Golden {
  private static final boolean REWRITE = "rewrite".equals(System.getProperty("golden"));

  private Golden() {}

  /** Holds a text against {@code src/test/resources/contract/<name>}. */
  static void check(String name, String text) {
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
