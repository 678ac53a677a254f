package io.ovenmark.web;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.formula.FormulaEdit;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.pantry.BuiltInPantry;
import io.ovenmark.pantry.FoodCodec;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A notebook with one formula of very many revisions, {@code long-bun}, each of which weighs its
 * water otherwise. They are written by native Git at one go.
 */
final class LongNotebook {
  static final int REVISIONS = 640;

  private static final String WHO = " Ines <ines@saltmarsh.example> ";
  private static final long START = 1_772_000_000L;

  private final ByteArrayOutputStream stream = new ByteArrayOutputStream();

  private LongNotebook() {}

  /** Makes it in a folder. */
  static void create(Path folder) {
    NotebookSettings settings = NotebookSettings.titled("Saltmarsh bench");
    Notebook.create(folder, settings, RunningBench.by()).close();
    try {
      git(folder, new LongNotebook().commits(), "fast-import", "--quiet", "--date-format=raw");
      git(folder, new byte[0], "reset", "--quiet", "--hard", "main");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private byte[] commits() {
    for (int revision = 1; revision <= REVISIONS; revision++) {
      text("commit refs/heads/main\nauthor" + WHO + (START + 3600L * revision) + " +0100\n");
      text("committer" + WHO + (START + 3600L * revision) + " +0100\n");
      data(("Water for the " + revision + ". time").getBytes(StandardCharsets.UTF_8));
      if (revision == 1) {
        text("from refs/heads/main^0\n");
        for (String food : List.of("water", "salt")) {
          text("M 100644 inline pantry/" + food + ".json\n");
          data(FoodCodec.write(BuiltInPantry.find(food).orElseThrow()));
        }
      }
      text("M 100644 inline formulas/long-bun.json\n");
      data(FormulaCodec.write(formula(revision)));
    }
    text("done\n");
    return stream.toByteArray();
  }

  private static Formula formula(int revision) {
    return new FormulaEdit(Formula.named("Long bun"))
        .add("water=" + (100 + revision) + " g")
        .add("salt=4 g")
        .formula();
  }

  private void data(byte[] bytes) {
    text("data " + bytes.length + "\n");
    stream.writeBytes(bytes);
    text("\n");
  }

  private void text(String text) {
    stream.writeBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void git(Path folder, byte[] input, String... arguments)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of("git"));
    words.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .directory(folder.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    Map<String, String> environment = builder.environment();
    environment.keySet().removeIf(name -> name.startsWith("GIT_"));
    environment.put("HOME", folder.toString());
    environment.put("GIT_CONFIG_NOSYSTEM", "1");
    Process process = builder.start();
    try (OutputStream out = process.getOutputStream()) {
      out.write(input);
    }
    if (process.waitFor() != 0) {
      throw new IllegalStateException("git " + String.join(" ", arguments) + " failed");
    }
  }
}
