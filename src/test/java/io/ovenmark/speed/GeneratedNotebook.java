package io.ovenmark.speed;

import io.ovenmark.bake.BakeCodec;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.pantry.Food;
import io.ovenmark.pantry.FoodCodec;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A notebook to measure with: 200 formulas, 20 000 commits, one bake to ten of them with 2 000
 * photos together, 60 foods of which a package changes now and then, twenty variants, some
 * publications; one formula has more than 500 revisions. It is written through
 * {@code git fast-import} and then packed anew, as native Git packs what was committed one by one.
 * The same program makes the same commits.
 */
final class GeneratedNotebook {
  static final int FORMULAS = 200;
  static final int COMMITS = 20_000;

  /** The formula of more than 500 revisions. */
  static final int LONG = 7;

  private static final int LONG_PER_MILLE = 26;
  private static final int PICTURES = 40;

  /** Each tenth formula has a variant of this name. */
  static final String VARIANT = "egg-free";

  private static final int VARIANT_STEPS = 20;
  private static final long SEED = 20_260_301;
  private static final OffsetDateTime START = OffsetDateTime.parse("2024-01-02T08:00:00+01:00");

  private final Random random = new Random(SEED);
  private final GeneratedFormulas generator = new GeneratedFormulas(random);
  private final GitStore store;
  private final OutputStream out;
  private final List<Formula> current = new ArrayList<>();
  private final int[] revisions = new int[FORMULAS];
  private final int[] bakes = new int[FORMULAS];
  private int commits = 1;

  private GeneratedNotebook(GitStore store, OutputStream out) {
    this.store = store;
    this.out = out;
  }

  /** The short name of a formula; those that end in 0 have a variant. */
  static String slug(int formula) {
    return String.format(Locale.ROOT, "generated-bun-%03d", formula);
  }

  /** Makes the notebook in a folder that does not exist yet. */
  static void make(Path folder, NativeGit git) throws IOException {
    By by = new By(new Author("Bench Hand", "bench@example.org"), START);
    Notebook.create(folder, NotebookSettings.titled("Generated to measure with"), by).close();
    try (GitStore store = GitStore.open(folder)) {
      git.feed(
          folder,
          out -> new GeneratedNotebook(store, out).write(),
          "fast-import",
          "--quiet",
          "--date-format=raw");
    }
    git.run(folder, "repack", "-a", "-d", "-f", "-q");
    git.run(folder, "gc", "--quiet");
    git.run(folder, "reset", "--quiet", "--hard", "main");
  }

  private void write() throws IOException {
    for (int i = 1; i <= PICTURES; i++) {
      text("blob\nmark :" + i + "\n");
      data(GeneratedPicture.jpeg(i));
    }
    begin();
    int variants = FORMULAS / 10 * VARIANT_STEPS;
    for (int formula = 0; formula < FORMULAS; formula++) {
      current.add(generator.begin("Generated bun " + formula));
      commit("main", "Begin formula " + formula);
      file(path(formula), FormulaCodec.write(current.get(formula)));
      revisions[formula] = 1;
    }
    while (commits < COMMITS - variants) {
      step();
    }
    for (int formula = 0; formula < FORMULAS; formula += 10) {
      Formula variant = current.get(formula);
      String branch = "variant/" + slug(formula) + "/" + VARIANT;
      text("reset refs/heads/" + branch + "\nfrom refs/heads/main\n\n");
      for (int i = 0; i < VARIANT_STEPS; i++) {
        variant = changed(variant);
        commit(branch, "Variant step " + i);
        file(path(formula), FormulaCodec.write(variant));
      }
    }
    text("done\n");
    out.flush();
  }

  private void begin() throws IOException {
    commit("main", "Stock the pantry");
    text("from refs/heads/main^0\n");
    for (String goal : GeneratedFormulas.GOALS) {
      try (InputStream in =
          NotebookSettings.class.getResourceAsStream("/io/ovenmark/demo/goals/" + goal + ".json")) {
        file("goals/" + goal + ".json", in.readAllBytes());
      }
    }
    for (Food food : GeneratedFormulas.foods()) {
      file("pantry/" + food.slug() + ".json", FoodCodec.write(food));
    }
  }

  private void step() throws IOException {
    int formula = random.nextInt(1000) < LONG_PER_MILLE ? LONG : random.nextInt(FORMULAS);
    int kind = random.nextInt(1000);
    if (kind < 3) {
      List<Food> foods = GeneratedFormulas.foods();
      Food food = foods.get(random.nextInt(foods.size()));
      String json = new String(FoodCodec.write(food), StandardCharsets.UTF_8);
      String changed =
          json.replaceFirst(
              "\"protein_g\": [0-9.]+", "\"protein_g\": " + (1 + random.nextInt(20)));
      if (!changed.equals(json)) {
        commit("main", "New package of " + food.name());
        file("pantry/" + food.slug() + ".json", changed.getBytes(StandardCharsets.UTF_8));
      }
    } else if (kind < 93) {
      commit("main", "Bake " + slug(formula));
      OffsetDateTime time = time();
      String id = time.toLocalDate() + "-" + ++bakes[formula];
      String blob = store.hash(FormulaCodec.write(current.get(formula))).hex();
      List<String> photos = new ArrayList<>();
      for (int i = 0; i < (bakes[formula] % 6 == 0 ? 2 : 1); i++) {
        photos.add("photos/" + slug(formula) + "/" + id + "-" + (i + 1) + ".jpg");
      }
      file(
          "bakes/" + slug(formula) + "/" + id + ".json",
          BakeCodec.write(
              generator.bake(slug(formula), id, revisions[formula], blob, time, photos)));
      for (String photo : photos) {
        text("M 100644 :" + (1 + random.nextInt(PICTURES)) + " " + photo + "\n");
      }
    } else {
      current.set(formula, changed(current.get(formula)));
      revisions[formula]++;
      commit("main", "Change " + revisions[formula] + " of " + slug(formula));
      file(path(formula), FormulaCodec.write(current.get(formula)));
      if (kind < 95) {
        publish(formula);
      }
    }
  }

  /** A revision differs from the one before it. */
  private Formula changed(Formula formula) {
    Formula next = generator.change(formula);
    while (next.equals(formula)) {
      next = generator.change(formula);
    }
    return next;
  }

  private static String path(int formula) {
    return "formulas/" + slug(formula) + ".json";
  }

  private OffsetDateTime time() {
    return START.plusMinutes(37L * commits);
  }

  private String who(String role) {
    return role + " Bench Hand <bench@example.org> " + time().toEpochSecond() + " +0100\n";
  }

  private void commit(String branch, String note) throws IOException {
    commits++;
    text("commit refs/heads/" + branch + "\n" + who("author") + who("committer"));
    data((note + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private void publish(int formula) throws IOException {
    String name = "published/" + slug(formula) + "/" + revisions[formula];
    text("tag " + name + "\nfrom refs/heads/main\n" + who("tagger"));
    data("Good enough to show\n".getBytes(StandardCharsets.UTF_8));
  }

  private void file(String path, byte[] bytes) throws IOException {
    text("M 100644 inline " + path + "\n");
    data(bytes);
  }

  private void data(byte[] bytes) throws IOException {
    text("data " + bytes.length + "\n");
    out.write(bytes);
    text("\n");
  }

  private void text(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
