package io.ovenmark.speed;

import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.CompareRevisions;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FindInHistory;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.ListFormulas;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.Search;
import io.ovenmark.desk.ShowTimeline;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Contents;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.Author;
import io.ovenmark.worksheet.BakedYield;
import io.ovenmark.worksheet.Worksheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Measures and prints a table. What is compared is done in turn with what it is compared with, in
 * one run, so that a busy machine slows both.
 *
 * <p>Its arguments are a folder for the generated notebook, which is kept for the next run, and
 * {@code all} or which parts to measure: {@code timeline,open,compare,revise,list,search,sheet,
 * levers,window,publish,demo,jar,pages,typing}.
 */
public final class SpeedRun {
  private static final Address PLAIN = Address.parse(GeneratedNotebook.slug(101));
  private static final Address WITH_VARIANT = Address.parse(GeneratedNotebook.slug(100));
  private static final List<String> PARTS =
      List.of(
          "timeline", "open", "compare", "revise", "list", "search", "sheet", "levers", "window",
          "publish", "demo", "jar", "pages", "typing");

  private static final String PLAIN_FILE = "formulas/" + PLAIN.formula() + ".json";

  private final SpeedTable table = new SpeedTable();
  private final Path base;
  private final Path notebook;
  private final NativeGit git;
  private long sink;

  private SpeedRun(Path base) throws IOException {
    this.base = base;
    this.notebook = base.resolve("notebook");
    this.git = new NativeGit(base.resolve("home"));
  }

  /**
   * Runs the measurements.
   *
   * @param arguments a folder, then the parts
   * @throws Exception whatever fails
   */
  public static void main(String[] arguments) throws Exception {
    SpeedRun run = new SpeedRun(Path.of(arguments[0]).toAbsolutePath());
    List<String> parts =
        arguments.length < 2 || arguments[1].equals("all")
            ? PARTS
            : List.of(arguments[1].split(","));
    run.prepare();
    String before = SpeedTable.load();
    for (String part : PARTS) {
      if (parts.contains(part)) {
        System.err.println("measuring: " + part);
        run.measure(part);
      }
    }
    String facts =
        SpeedTable.machine(run.git, run.base)
            + "; load "
            + before
            + " before, "
            + SpeedTable.load()
            + " after (check "
            + run.sink % 10
            + ")";
    run.table.print(System.out, facts);
  }

  private void prepare() throws Exception {
    Path done = base.resolve("notebook-2.done");
    if (!Files.exists(done)) {
      System.err.println("generating the notebook");
      delete(notebook);
      GeneratedNotebook.make(notebook, git);
      Files.writeString(done, git.ask(notebook, "rev-parse", "HEAD") + "\n");
    }
    int commits = Integer.parseInt(git.ask(notebook, "rev-list", "--all", "--count"));
    if (commits != GeneratedNotebook.COMMITS) {
      throw new IllegalStateException("the notebook has " + commits + " commits: delete " + base);
    }
  }

  private void measure(String part) throws Exception {
    switch (part) {
      case "timeline" -> timeline();
      case "open" -> open();
      case "compare" -> compare();
      case "revise" -> revise();
      case "list" -> list();
      case "search" -> search();
      case "sheet" -> sheet();
      case "levers" -> sink += LeversRun.measure(table);
      case "window" -> sink += WindowRun.measure(table);
      case "publish" -> sink += PublishRun.measure(table, base);
      case "demo" -> demo();
      case "jar" -> jar();
      case "pages" -> pages();
      case "typing" -> typing();
      default -> throw new IllegalArgumentException("no part " + part);
    }
  }

  private Desk desk() {
    return new Desk(Notebook.open(notebook));
  }

  private void timeline() throws Exception {
    try (Desk desk = desk()) {
      for (Address address : List.of(PLAIN, WITH_VARIANT)) {
        ShowTimeline verb = new ShowTimeline(desk);
        for (int i = 0; i < 40; i++) {
          sink += Json.compact(verb.call(address)).length();
        }
        Sample ours = new Sample();
        Sample log = new Sample();
        String path = "formulas/" + address.formula() + ".json";
        for (int i = 0; i < 9; i++) {
          log.time(() -> git.run(notebook, "log", "-p", "--", path));
          for (int j = 0; j < 5; j++) {
            ours.time(() -> sink += Json.compact(verb.call(address)).length());
          }
        }
        int count = desk.notebook().revisions(address).size();
        String what =
            "timeline of one formula with all figures, warm, "
                + count
                + " revisions"
                + (address == WITH_VARIANT ? " and a variant" : "");
        table.compared(what, ours, "`git log -p -- file`", log, 0.1);
      }
    }
  }

  private void open() throws Exception {
    Sample with = new Sample();
    Sample without = new Sample();
    Sample timeline = new Sample();
    openOnce();
    openOnce();
    for (int i = 0; i < 5; i++) {
      delete(notebook.resolve(".git/ovenmark"));
      without.time(this::openOnce);
      for (int j = 0; j < 3; j++) {
        with.time(this::openOnce);
      }
      timeline.time(
          () -> {
            try (Desk desk = desk()) {
              sink += Json.compact(new ShowTimeline(desk).call(PLAIN)).length();
            }
          });
    }
    table.compared(
        "open and list the revisions of a formula, index up to date",
        with, "the same without index", without, 0.25);
    table.compared(
        "open and draw up the first timeline, index up to date",
        timeline, "open without index", without, 0.25);
  }

  private void openOnce() {
    try (Notebook opened = Notebook.open(notebook)) {
      sink += opened.revisions(PLAIN).size();
    }
  }

  private void compare() throws Exception {
    try (Desk desk = desk()) {
      CompareRevisions verb = new CompareRevisions(desk);
      int newest = desk.notebook().newest(PLAIN).number();
      compare(verb, "neighbouring revisions", PLAIN.at(newest - 1), PLAIN.at(newest));
      compare(verb, "revisions far apart", PLAIN.at(3), PLAIN.at(newest));
      compare(verb, "two formulas", PLAIN, Address.parse(GeneratedNotebook.slug(53)));
    }
  }

  private void compare(CompareRevisions verb, String what, Address from, Address to)
      throws Exception {
    for (int i = 0; i < 1500; i++) {
      sink += verb.call(from, to).lines().size();
    }
    Sample ours = new Sample();
    Sample json = new Sample();
    for (int i = 0; i < 400; i++) {
      ours.time(() -> sink += verb.call(from, to).lines().size());
      json.time(() -> sink += Json.compact(verb.call(from, to)).length());
    }
    table.alone("compare " + what + ", warm", ours, "under 2 ms");
    table.alone("the same with its JSON", json, "");
  }

  private void revise() throws Exception {
    Path ours = cloned("ours");
    Path theirs = cloned("theirs");
    GeneratedFormulas generator = new GeneratedFormulas(new Random(7));
    Sample revise = new Sample();
    Sample commit = new Sample();
    String path = "formulas/" + PLAIN.formula() + ".json";
    try (Notebook opened = Notebook.open(ours)) {
      FormulaWriter writer = new FormulaWriter(opened);
      OffsetDateTime time = OffsetDateTime.parse("2027-01-01T08:00:00+01:00");
      for (int i = 0; i < 60; i++) {
        Revision newest = opened.newest(PLAIN);
        Formula before = opened.formula(newest);
        Formula next = generator.change(before);
        while (next.equals(before)) {
          next = generator.change(before);
        }
        Formula edited = next;
        By by = new By(new Author("Bench Hand", "bench@example.org"), time.plusMinutes(i));
        boolean counts = i >= 20;
        (counts ? revise : new Sample())
            .time(
                () -> {
                  ReviseOutcome outcome = writer.revise(newest, edited, "A measured change", by);
                  if (!(outcome instanceof ReviseOutcome.Saved saved) || saved.merged()) {
                    throw new IllegalStateException("not saved: " + outcome);
                  }
                });
        Files.write(theirs.resolve(path), FormulaCodec.write(edited));
        (counts ? commit : new Sample())
            .time(
                () -> {
                  git.run(theirs, "add", path);
                  git.run(theirs, "commit", "--quiet", "-m", "A measured change");
                });
      }
    }
    table.compared("revise", revise, "`git add` and `git commit`", commit, 1);
  }

  private Path cloned(String name) throws IOException {
    Path folder = base.resolve(name);
    delete(folder);
    git.run(base, "clone", "--quiet", notebook.toString(), folder.toString());
    git.run(folder, "fetch", "--quiet", "origin", "refs/heads/variant/*:refs/heads/variant/*");
    return folder;
  }

  private void list() throws Exception {
    Sample cold = new Sample();
    for (int i = 0; i < 9; i++) {
      try (Desk desk = desk()) {
        Sample sample = i < 2 ? new Sample() : cold;
        sample.time(() -> sink += Json.compact(new ListFormulas(desk).call()).length());
      }
    }
    table.alone("list 200 formulas, the first time after opening", cold, "");
    try (Desk desk = desk()) {
      Sample warm = new Sample();
      for (int i = 0; i < 60; i++) {
        Sample sample = i < 20 ? new Sample() : warm;
        sample.time(() -> sink += Json.compact(new ListFormulas(desk).call()).length());
      }
      table.alone("list 200 formulas, warm", warm, "");
    }
  }

  private void search() throws Exception {
    Path index = notebook.resolve(".git/ovenmark/search");
    Sample built = new Sample();
    for (int i = 0; i < 3; i++) {
      Files.deleteIfExists(index);
      try (Desk desk = desk()) {
        built.time(() -> new FindInHistory(desk).read(Progress.UNWATCHED));
      }
    }
    table.alone("read the history of 20 000 commits for searching, once", built, "");
    Sample opened = new Sample();
    Sample grep = new Sample();
    Sample ours = new Sample();
    Sample pickaxe = new Sample();
    Sample food = new Sample();
    for (int i = 0; i < 5; i++) {
      try (Desk desk = desk()) {
        opened.time(() -> sink += find(desk, Search.forWords("change 77")));
      }
    }
    table.alone("search in a notebook just opened, its file up to date", opened, "");
    try (Desk desk = desk()) {
      Search butter =
          Search.read(desk, new Search.Texts("", "", "butter", "", "", "", "", List.of()));
      for (int i = 0; i < 30; i++) {
        sink += find(desk, Search.forWords("change 77")) + find(desk, butter);
      }
      for (int i = 0; i < 5; i++) {
        grep.time(() -> git.run(notebook, "log", "--all", "-i", "--grep=change 77"));
        pickaxe.time(() -> git.run(notebook, "log", "--all", "-Sbutter", "--", PLAIN_FILE));
        for (int j = 0; j < 10; j++) {
          ours.time(() -> sink += find(desk, Search.forWords("change 77")));
          food.time(() -> sink += find(desk, butter));
        }
      }
    }
    table.compared(
        "search all notes, steps and findings for two words, warm",
        ours, "`git log --all --grep`, notes only", grep, 0.2);
    table.compared(
        "find every revision of 200 formulas that changed a food, warm",
        food, "`git log --all -S` for one formula", pickaxe, 0.2);
  }

  private static int find(Desk desk, Search search) {
    return Json.compact(new FindInHistory(desk).call(search, 5)).length();
  }

  private void sheet() throws Exception {
    try (Notebook opened = Notebook.open(notebook)) {
      Formula formula = opened.formula(opened.newest(PLAIN));
      Contents contents = opened.latest();
      Sample worksheet = new Sample();
      for (int i = 0; i < 6000; i++) {
        Sample sample = i < 4000 ? new Sample() : worksheet;
        sample.time(
            () ->
                sink +=
                    Worksheet.of(
                            formula,
                            contents::food,
                            contents.policy(formula),
                            BakedYield.UNMEASURED)
                        .lines()
                        .size());
      }
      table.alone("work out a formula of 25 lines", worksheet, "");
    }
  }

  private void demo() throws Exception {
    Path folder = base.resolve("demo");
    Sample made = new Sample();
    for (int i = 0; i < 4; i++) {
      delete(folder);
      made.time(() -> DemoNotebook.create(folder, (done, total) -> sink += done));
    }
    table.elsewhere("make the demo notebook, four times in one program", made);
    delete(folder);
  }

  private void jar() throws Exception {
    Path jar = Path.of("target/ovenmark.jar").toAbsolutePath();
    if (!Files.exists(jar)) {
      System.err.println("no target/ovenmark.jar: its start is not measured");
      return;
    }
    String java = ProcessHandle.current().info().command().orElse("java");
    Sample list = new Sample();
    Sample version = new Sample();
    for (int i = 0; i < 7; i++) {
      version.time(() -> start(java, "-version"));
      list.time(
          () -> start(java, "-jar", jar.toString(), "list", "--notebook", notebook.toString()));
    }
    table.elsewhere("`java -jar ovenmark.jar list`, 200 formulas, as a new program", list);
    table.elsewhere("`java -version` as a new program", version);
  }

  private void pages() throws Exception {
    Path demo = base.resolve("demo-pages");
    delete(demo);
    DemoNotebook.create(demo, (done, total) -> sink += done);
    try (PagesRun run = new PagesRun(table)) {
      run.measure("demo", demo, pagesOf("seeded-lupin-bun", bakeOf(demo, "seeded-lupin-bun")));
      String longest = GeneratedNotebook.slug(GeneratedNotebook.LONG);
      run.measure("200 formulas", notebook, pagesOf(longest, bakeOf(notebook, longest)));
      run.scroll("200 formulas", notebook, longest);
    }
    delete(demo);
  }

  private void typing() throws Exception {
    Path demo = base.resolve("demo-typing");
    delete(demo);
    DemoNotebook.create(demo, (done, total) -> sink += done);
    try (TypingRun run = new TypingRun(table)) {
      run.measure("an edit in the demo", demo, "seeded-lupin-bun");
      run.measure("an edit of 25 lines, 200 formulas", notebook, PLAIN.formula());
    }
    delete(demo);
  }

  private static String bakeOf(Path notebook, String formula) {
    try (Notebook opened = Notebook.open(notebook)) {
      return opened.bakes(formula).get(0).id();
    }
  }

  private static Map<String, String> pagesOf(String formula, String bake) {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("list", "/");
    pages.put("search", "/search?q=rest");
    pages.put("formula", "/formulas/" + formula);
    pages.put("worksheet", "/worksheet/" + formula);
    pages.put("bake", "/bakes/" + formula + "/" + bake);
    pages.put("record a bake", "/record/" + formula);
    pages.put("begin", "/begin");
    pages.put("pantry", "/pantry");
    pages.put("food", "/pantry/egg-whole");
    pages.put("goals", "/goals");
    pages.put("notebook", "/notebook");
    pages.put("preferences", "/preferences");
    return pages;
  }

  private static void start(String... words) throws Exception {
    int code =
        new ProcessBuilder(words)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor();
    if (code != 0) {
      throw new IllegalStateException(String.join(" ", words) + " ended with " + code);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
