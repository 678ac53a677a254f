package io.ovenmark.cli;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/** Where the program begins: the only place that ends the process. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    Surroundings surroundings =
        new Surroundings(
            writer(FileDescriptor.out),
            writer(FileDescriptor.err),
            new FileInputStream(FileDescriptor.in),
            Path.of("").toAbsolutePath(),
            Path.of(System.getProperty("java.io.tmpdir", "")).toAbsolutePath(),
            Clock.systemDefaultZone(),
            System.getProperty("user.name", ""),
            name -> Optional.ofNullable(System.getenv(name)).filter(value -> !value.isBlank()),
            Main::stay);
    String[] words = Words.recovered(args, Path.of("/proc/self/cmdline"));
    int code = Ovenmark.run(surroundings, words);
    surroundings.out().flush();
    surroundings.err().flush();
    System.exit(code);
  }

  /** Waits for the end of the process. */
  private static void stay() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** UTF-8, whatever the terminal's locale is; a reader that has gone away is no error. */
  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8), false);
  }
}
