package io.ovenmark.cli;

import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.Revision;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A program of its own that revises a formula many times, for {@link TwoProcessesTest}. */
final class Reviser {
  private static final String BUN = "seeded-lupin-bun";

  private final Path folder;
  private final Bench bench;

  private Reviser(Path folder) {
    this.folder = folder;
    this.bench = new Bench(folder);
  }

  /**
   * Runs.
   *
   * @param args folder, {@code different} or {@code same}, a name, how many revisions
   */
  public static void main(String[] args) throws IOException {
    Reviser reviser = new Reviser(Path.of(args[0]));
    int count = Integer.parseInt(args[3]);
    for (int i = 1; i <= count; i++) {
      if (args[1].equals("different")) {
        reviser.line(args[2], i);
      } else {
        reviser.wholeFile(args[2], i);
      }
    }
  }

  /** Changes a line that nobody else changes. */
  private void line(String line, int i) {
    bench.must("revise", BUN, "--set", line + "=" + (100 + i) + "g", "--note", line + " " + i);
  }

  /** Changes a line that the other one changes too, until nobody came in between. */
  private void wholeFile(String name, int i) throws IOException {
    Path file = folder.resolveSibling(name + ".json");
    while (true) {
      int base;
      String text;
      try (Notebook notebook = Notebook.open(folder)) {
        Revision newest = notebook.newest(Address.parse(BUN));
        base = newest.number();
        String amount = notebook.formula(newest).line("water").orElseThrow().amount().toString();
        String json =
            new String(FormulaCodec.write(notebook.formula(newest)), StandardCharsets.UTF_8);
        int own = (name.equals("a") ? 1000 : 2000) + i;
        text = json.replace("\"" + amount + "\"", "\"" + own + " g\"");
      }
      Files.writeString(file, text);
      Bench.Result result =
          bench.run(
              "revise",
              BUN,
              "--file",
              file.toString(),
              "--base",
              String.valueOf(base),
              "--note",
              name + " " + i + " on " + base);
      if (!Files.readString(file).equals(text)) {
        throw new IllegalStateException("what was to be committed is not intact");
      }
      if (result.code() == 0) {
        return;
      }
      if (result.code() != 3) {
        throw new IllegalStateException(result.toString());
      }
    }
  }
}
