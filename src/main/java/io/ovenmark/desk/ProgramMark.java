package io.ovenmark.desk;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * Tells one build of the program from another, so that figures that one has worked out and kept are
 * not shown by another that works them out otherwise.
 */
final class ProgramMark {
  private ProgramMark() {}

  /** A number for this build: of its file, or of its classes; empty when they cannot be found. */
  static OptionalLong find() {
    CodeSource source = ProgramMark.class.getProtectionDomain().getCodeSource();
    if (source == null || source.getLocation() == null) {
      return OptionalLong.empty();
    }
    try {
      return OptionalLong.of(of(Path.of(source.getLocation().toURI())));
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return OptionalLong.empty();
    }
  }

  /** A number that changes when a file is replaced, or any file below a folder. */
  static long of(Path program) throws IOException {
    long mark = 1;
    try (Stream<Path> files = Files.walk(program)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        mark = 31 * mark + Files.getLastModifiedTime(file).toMillis();
        mark = 31 * mark + Files.size(file);
      }
    }
    return mark;
  }
}
