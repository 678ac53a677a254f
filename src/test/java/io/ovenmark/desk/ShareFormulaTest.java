package io.ovenmark.desk;

import static io.ovenmark.desk.ShareBench.BUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.desk.ShareFormula.Choice;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.GitStore;
import io.ovenmark.notebook.store.RepositoryFixture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShareFormulaTest {
  /** With what everybody wrote; the usual choice leaves others' notes out. */
  private static final Choice WITH_NOTES =
      new Choice(Optional.empty(), true, false, false, true);

  private static final Address LINE = Address.parse(BUN);

  @TempDir Path temporary;
  private ShareBench bench;
  private RepositoryFixture git;

  @BeforeEach
  void begin() throws IOException {
    bench = new ShareBench(Files.createDirectories(temporary.resolve("own")));
    git = bench.fixture().repository();
  }

  @AfterEach
  void end() {
    bench.close();
  }

  private Path bundle(Choice choice) {
    Path file = temporary.resolve("bun.bundle");
    new ShareFormula(bench.desk())
        .bundle(BUN, choice, file, bench.fixture().by(), Progress.UNWATCHED);
    return file;
  }

  private Path cloned(Choice choice) {
    Path file = bundle(choice);
    Path clone = temporary.resolve("clone");
    assertThat(git.gitIn(temporary, "clone", file.toString(), clone.toString()))
        .doesNotContain("warning");
    return clone;
  }

  private Path folder(Choice choice) {
    Path folder = temporary.resolve("shared");
    new ShareFormula(bench.desk())
        .folder(BUN, choice, folder, bench.fixture().by(), Progress.UNWATCHED);
    return folder;
  }

  /** The revisions of a line in words, without the ids of commits. */
  private static List<String> told(Notebook notebook, String line) {
    return notebook.revisions(Address.parse(line)).stream()
        .map(
            each ->
                String.join(
                    " | ",
                    each.address().toString(),
                    each.blob().hex(),
                    each.note(),
                    each.details(),
                    each.author().name(),
                    each.time().toString()))
        .toList();
  }

  /** The figures of every revision, and of the latest with the foods of today. */
  static List<String> figures(Desk desk, String line) {
    List<String> figures = new ArrayList<>();
    Address address = Address.parse(line);
    for (Revision each : desk.notebook().revisions(address)) {
      figures.add(figuresOf(new ShowFormula(desk).call(each.address())));
    }
    figures.add(figuresOf(new ShowFormula(desk).call(address)));
    return figures;
  }

  private static String figuresOf(Views.FormulaSheet sheet) {
    return Json.compact(List.of(sheet.lines(), sheet.macros(), sheet.ratios(), sheet.unknowns()))
        + Json.compact(sheet.bakes().stream().map(Views.BakeView::pieces).toList());
  }

  @Test
  void nativeGitClonesChecksAndLogsTheBundle() {
    Path clone = cloned(WITH_NOTES);

    assertThat(git.gitIn(clone, "fsck", "--strict", "--full"))
        .doesNotContain("error", "warning", "missing");
    assertThat(git.gitIn(clone, "branch", "--show-current")).isEqualTo("main");
    assertThat(git.gitIn(clone, "branch", "-r")).contains("origin/variant/" + BUN + "/egg-free");
    assertThat(git.gitIn(clone, "tag")).isEqualTo("published/" + BUN + "/3");
    assertThat(git.gitIn(clone, "log", "--format=%s", "--", "formulas/" + BUN + ".json"))
        .contains("Begin", "Wetter", "More husk", "Back to less husk");
    assertThat(git.gitIn(clone, "status", "--porcelain")).isEmpty();
    assertThat(git.git("bundle", "verify", temporary.resolve("bun.bundle").toString()))
        .contains("complete history");
  }

  @Test
  void aFolderIsANotebookThatNativeGitFindsInOrder() throws IOException {
    Path folder = folder(WITH_NOTES);

    assertThat(git.gitIn(folder, "fsck", "--strict", "--full"))
        .doesNotContain("error", "warning", "missing");
    assertThat(git.gitIn(folder, "status", "--porcelain")).isEmpty();
    assertThat(git.gitIn(folder, "branch")).contains("variant/" + BUN + "/egg-free");
    try (Stream<Path> logs = Files.walk(folder.resolve(".git/logs"))) {
      assertThat(logs.filter(Files::isRegularFile)).isEmpty();
    }
    try (Notebook shared = Notebook.open(folder)) {
      assertThat(shared.latest().formulas()).containsExactly(BUN, "wheat-bun");
    }
  }

  @Test
  void historyIsKeptNoteByNoteAuthorByAuthorTimeByTime() {
    Path folder = folder(WITH_NOTES);

    try (Notebook shared = Notebook.open(folder)) {
      Notebook own = bench.desk().notebook();
      List<String> expected =
          told(own, BUN).stream()
              .map(
                  each ->
                      each.replace("One more egg. Sesame crispbread gets none.", "One more egg."))
              .toList();
      assertThat(told(shared, BUN)).isEqualTo(expected);
      assertThat(told(shared, BUN + "/egg-free"))
          .hasSameSizeAs(told(own, BUN + "/egg-free"))
          .last()
          .isEqualTo(told(own, BUN + "/egg-free").get(told(own, BUN + "/egg-free").size() - 1));
      assertThat(shared.bakes(BUN)).isEqualTo(own.bakes(BUN));
      assertThat(shared.forkNumber(Address.parse(BUN + "/egg-free")))
          .isEqualTo(own.forkNumber(Address.parse(BUN + "/egg-free")));
    }
  }

  @Test
  void figuresAreTheSameBeforeAndAfter() {
    Path folder = folder(WITH_NOTES);

    try (Desk shared = new Desk(Notebook.open(folder))) {
      assertThat(figures(shared, BUN)).isEqualTo(figures(bench.desk(), BUN));
      assertThat(figures(shared, BUN + "/egg-free"))
          .isEqualTo(figures(bench.desk(), BUN + "/egg-free"));
    }
  }

  @Test
  void bakesFindTheFormulaThatWasWeighed() {
    Path folder = folder(WITH_NOTES);

    try (Desk shared = new Desk(Notebook.open(folder))) {
      assertThat(new ShowFormula(shared).call(LINE.at(2)).bakes()).hasSize(1);
      assertThat(new ShowFormula(shared).call(LINE.at(3)).bakes()).hasSize(1);
    }
  }

  @Test
  void trailersNameTheCommitsAsTheyAreThere() {
    Path folder = folder(WITH_NOTES);

    try (Notebook shared = Notebook.open(folder)) {
      Revision restored = shared.newest(LINE);
      String[] words = restored.trailers().get("Restores").split(" ");
      assertThat(words[0]).isEqualTo(BUN + "@3");
      assertThat(shared.revision(LINE.at(3)).commit().hex()).isEqualTo(words[1]);
    }
    assertThat(git.gitIn(folder, "log", "--merges", "--format=%s", "variant/" + BUN + "/egg-free"))
        .isEqualTo("Carry the husk over");
  }

  @Test
  void nothingElseIsInAnyObject() {
    Path clone = cloned(WITH_NOTES);

    String all = git.gitIn(clone, "cat-file", "--batch", "--batch-all-objects");
    String small = all.toLowerCase(Locale.ROOT);
    for (String secret : ShareBench.SECRETS) {
      assertThat(small).doesNotContain(secret.toLowerCase(Locale.ROOT));
    }
    assertThat(all).doesNotContain("54.1 N", "secret place").contains(BUN, "Bench Hand", "JFIF");
  }

  @Test
  void noFileOfTheFolderTellsMore() throws IOException {
    Path folder = folder(WITH_NOTES);

    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertThat(text).as(file.toString()).doesNotContain("example.org", "Secret remark");
      }
    }
  }

  @Test
  void addressesAndReferenceAreAChoice() {
    Path clone = cloned(new Choice(Optional.empty(), false, true, false, true));

    assertThat(git.gitIn(clone, "log", "--format=%ae", "main"))
        .contains("bench@example.org", "other.hand@example.org");
    assertThat(clone.resolve("formulas/wheat-bun.json")).doesNotExist();
    assertThat(clone.resolve("pantry/wheat-flour-bread.json")).doesNotExist();
    assertThat(clone.resolve("formulas/" + BUN + ".json")).exists();
  }

  @Test
  void saysBeforeWhatGoesAlong() {
    ShareViews.Share share =
        new ShareFormula(bench.desk()).preview(BUN, WITH_NOTES, bench.fixture().by());

    assertThat(share.lines())
        .containsExactly(
            new ShareViews.SharedLine(BUN, null, 5),
            new ShareViews.SharedLine(BUN + "/egg-free", "egg-free", 6));
    assertThat(share.bakes()).isEqualTo(2);
    assertThat(share.photos()).isEqualTo(2);
    assertThat(share.references())
        .containsExactly(new ShareViews.SharedReference("wheat-bun", true));
    assertThat(share.people())
        .containsExactly(
            new ShareViews.Person("Bench Hand", null), new ShareViews.Person("Other Hand", null));
    assertThat(share.notesCut())
        .containsExactly(
            "One more egg. Sesame crispbread gets none.",
            "Sesame crispbread and bun baked together");
    assertThat(share.photosStripped())
        .containsExactly("photos/" + BUN + "/tray-2.jpg", "photos/" + BUN + "/tray.jpg");
    assertThat(share.commitsLeftOut()).isPositive();
    assertThat(share.speaksOfOthers()).isEmpty();
  }

  @Test
  void namesFilesThatSpeakOfOthersAndFieldsThatItDoesNotKnow() {
    bench.bun().method("Mix.", "Bake beside the sesame crispbread.").revise("Beside");

    ShareViews.Share share =
        new ShareFormula(bench.desk()).preview(BUN, WITH_NOTES, bench.fixture().by());

    assertThat(share.speaksOfOthers()).containsExactly("formulas/" + BUN + ".json");
  }

  @Test
  void refusesWhatIsThereAlready() throws IOException {
    Path file = bundle(WITH_NOTES);
    byte[] before = Files.readAllBytes(file);

    assertThatThrownBy(() -> bundle(WITH_NOTES))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("already");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    Files.createDirectories(temporary.resolve("shared/x"));
    assertThatThrownBy(() -> folder(WITH_NOTES)).hasMessageContaining("already");
    assertThat(bench.desk().notebook().ownFolder().resolve("sharing")).isEmptyDirectory();
  }

  @Test
  void theNotebookItselfIsNotTouched() {
    String before = git.git("for-each-ref");
    int objects = git.git("cat-file", "--batch-check", "--batch-all-objects").length();

    bundle(WITH_NOTES);

    assertThat(git.git("for-each-ref")).isEqualTo(before);
    assertThat(git.git("cat-file", "--batch-check", "--batch-all-objects")).hasSize(objects);
    bench.fixture().assertClean();
  }

  private void put(String path, String content) {
    try (GitStore store = git.open()) {
      git.put(store, "main", path, content);
    }
  }

  private void price(String extra) {
    String path = "pantry/lupin-flour.json";
    String food = bench.fixture().onDisk(path).replaceFirst("(?s),\\s*\"price\".*", "}").strip();
    put(
        path,
        food.substring(0, food.length() - 1).stripTrailing()
            + ",\n  \"price\": {\"amount\": 7.77, \"currency\": \"EUR\", \"grams\": 1000},\n"
            + extra
            + "}\n");
  }

  @Test
  void pricesStayInEveryCommitUnlessTheSharerSaysSo() {
    price("  \"supplier\": \"Secret mill\"\n");
    bench.bun().set("water=190 g").revise("Wetter once more");
    price("  \"supplier\": \"Secret mill\", \"household\": [{\"measure\": \"secret scoop\","
        + " \"grams\": 11, \"deal\": \"Secret deal\"}]\n");
    bench.bun().set("water=191 g").revise("And once more");
    List<String> own = figures(bench.desk(), BUN);

    Path clone = cloned(WITH_NOTES);

    String patches = git.gitIn(clone, "log", "-p", "--all", "--full-history", "-m");
    assertThat(patches).contains("lupin-flour.json", "secret scoop", "Wetter once more");
    for (String all :
        List.of(patches, git.gitIn(clone, "cat-file", "--batch", "--batch-all-objects"))) {
      assertThat(all)
          .doesNotContain("price", "7.77", "EUR", "supplier", "Secret mill", "Secret deal");
    }
    git.gitIn(clone, "branch", "-q", "variant/" + BUN + "/egg-free",
        "origin/variant/" + BUN + "/egg-free");
    try (Desk shared = new Desk(Notebook.open(clone))) {
      assertThat(figures(shared, BUN)).isEqualTo(own);
    }
    ShareViews.Share share =
        new ShareFormula(bench.desk()).preview(BUN, WITH_NOTES, bench.fixture().by());
    assertThat(share.foodsWithPrices()).containsExactly("lupin-flour");
    assertThat(share.withPrices()).isFalse();
    assertThat(share.unknownFields()).isEmpty();
  }

  @Test
  void pricesGoAlongWhenTheSharerSaysSo() {
    price("  \"supplier\": \"Known mill\"\n");
    Choice choice = new Choice(Optional.empty(), true, false, true, true);

    Path clone = cloned(choice);

    assertThat(git.gitIn(clone, "log", "-p", "--all")).contains("7.77", "EUR", "Known mill");
    assertThat(
            new ShareFormula(bench.desk())
                .preview(BUN, choice, bench.fixture().by())
                .unknownFields())
        .containsExactly(
            new ShareViews.FieldsOfFile("pantry/lupin-flour.json", List.of("supplier")));
  }

  @Test
  void aFoodThatDiffersInItsPriceAloneIsNoOtherFood() {
    Path file = bundle(WITH_NOTES);
    price("  \"supplier\": \"My mill\"\n");
    TakeIn.Choice choice =
        new TakeIn.Choice(
            Optional.empty(),
            Optional.of("harbour-bun"),
            Optional.empty(),
            true,
            Optional.empty());

    ShareViews.TakenIn taken =
        new TakeIn(bench.desk()).call(file, choice, bench.fixture().by(), Progress.UNWATCHED);

    assertThat(taken.arrival().differing()).isEmpty();
    assertThat(bench.fixture().onDisk("pantry/lupin-flour.json")).contains("My mill", "7.77");
  }

  @Test
  void aFormulaThatOnlyAVariantHasIsSharedAsThatVariant() {
    List<String> own = figures(bench.desk(), BUN + "/egg-free");
    List<String> notes = told(bench.desk().notebook(), BUN + "/egg-free");
    git.git("rm", "-q", "formulas/" + BUN + ".json");
    git.git("commit", "-q", "-m", "The main line gives the bun up");

    Path clone = cloned(WITH_NOTES);

    assertThat(git.gitIn(clone, "fsck", "--strict", "--full"))
        .doesNotContain("error", "warning", "missing");
    assertThat(git.gitIn(clone, "branch", "-r")).doesNotContain("variant");
    assertThat(git.gitIn(clone, "log", "--format=%s"))
        .contains("Begin", "More husk", "No egg", "Carry the husk over", "Still wetter")
        .doesNotContain("gives the bun up", "Back to less husk");
    try (Desk shared = new Desk(Notebook.open(clone))) {
      assertThat(figures(shared, BUN)).isEqualTo(own);
      assertThat(told(shared.notebook(), BUN))
          .hasSameSizeAs(notes)
          .last()
          .isEqualTo(notes.get(notes.size() - 1).replace(BUN + "/egg-free@", BUN + "@"));
      assertThat(shared.notebook().published(BUN)).hasSize(1);
    }
    ShareViews.Share share =
        new ShareFormula(bench.desk()).preview(BUN, WITH_NOTES, bench.fixture().by());
    assertThat(share.variant()).isEqualTo("egg-free");
    assertThat(share.onMainLine()).isFalse();
    assertThat(share.lines()).containsExactly(new ShareViews.SharedLine(BUN, null, 6));
    assertThat(share.fileName()).isEqualTo(BUN + "-egg-free.bundle");
  }

  @Test
  void aVariantCanBeSharedAloneAndTakenIn() throws IOException {
    Choice choice = new Choice(Optional.of("egg-free"), true, false, false, true);
    Path file = bundle(choice);
    List<String> own = figures(bench.desk(), BUN + "/egg-free");

    try (NotebookFixture other =
            new NotebookFixture(Files.createDirectories(temporary.resolve("other")));
        Desk desk = new Desk(other.open())) {
      new TakeIn(desk).call(file, TakeIn.Choice.NONE, other.by(), Progress.UNWATCHED);

      List<String> there = figures(desk, BUN);
      assertThat(there.subList(0, 6)).isEqualTo(own.subList(0, 6));
      assertThat(desk.notebook().variants(BUN)).isEmpty();
      other.assertClean();
    }
  }

  @Test
  void aVariantThatIsNotThereIsRefused() {
    assertThatThrownBy(
            () -> bundle(new Choice(Optional.of("nut-free"), true, false, false, true)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("nut-free");
  }

  @Test
  void unlessTheSharerSaysSoNotesOfOthersAndOtherFormulasStay() {
    Choice choice = Choice.USUAL;
    Path clone = cloned(choice);

    assertThat(git.gitIn(clone, "log", "--all", "--name-only", "--format="))
        .contains("formulas/" + BUN + ".json")
        .doesNotContain("formulas/wheat-bun.json", "pantry/wheat-flour-bread.json");

    assertThat(git.gitIn(clone, "log", "--all", "--format=%B"))
        .contains("Wetter", "The first dough tore.", "the note stays with who wrote it")
        .doesNotContain("Back to less husk");
    assertThat(git.gitIn(clone, "log", "--all", "--format=%an")).contains("Other Hand");
    Path second = temporary.resolve("second.bundle");
    new ShareFormula(bench.desk())
        .bundle(
            BUN,
            choice,
            second,
            new By(ShareBench.MATE, bench.fixture().by().time()),
            Progress.UNWATCHED);
    Path other = temporary.resolve("other");
    git.gitIn(temporary, "clone", "-q", second.toString(), other.toString());
    assertThat(git.gitIn(other, "log", "-p", "--all"))
        .contains("Back to less husk")
        .doesNotContain("The first dough tore.", "For the breakfast basket", "No egg");
  }

  /** Whatever lies about in the notebook and its Git folder. */
  @Test
  void nothingThatWaitsLiesAboutOrHangsOnLeaks() throws IOException {
    put("tastings/sesame-crispbread/2026-03-01-1.json", "{\"remark\": \"LEAK of a guest\"}\n");
    put("tastings/" + BUN + "/2026-03-01-1.json", "{\"remark\": \"LEAK of a guest\"}\n");
    put("photos/sesame-crispbread/crisp.jpg", "LEAK of a picture");
    put("bakes/sesame-crispbread/2026-03-01-1.json", "{\"note\": \"LEAK of a bake\"}\n");
    put("README.md", "LEAK of a stray file\n");
    Path own = bench.fixture().directory().resolve(".git/ovenmark");
    for (String folder : List.of("waiting-photos", "waiting-bundles", "drafts")) {
      Files.createDirectories(own.resolve(folder));
      Files.writeString(own.resolve(folder).resolve("x.jpg"), "LEAK of what waits");
    }
    bench.fixture().repository().edit("photos/" + BUN + "/new.jpg", "LEAK of a hand edit");
    bench.fixture().repository().edit("bakes/" + BUN + "/2026-04-01-1.json", "LEAK of a hand edit");
    git.git("notes", "add", "-m", "LEAK of a Git note", "main");
    git.git("tag", "-a", "-m", "LEAK of a tag", "mine", "main");
    git.git("branch", "LEAK-of-a-branch", "main");

    Path clone = cloned(WITH_NOTES);

    assertThat(git.gitIn(clone, "cat-file", "--batch", "--batch-all-objects"))
        .doesNotContain("LEAK", "54.1 N", "other.hand@", "bench@");
    assertThat(git.gitIn(clone, "for-each-ref")).doesNotContain("LEAK", "mine", "notes");
    assertThat(Files.readString(temporary.resolve("bun.bundle"), StandardCharsets.ISO_8859_1))
        .doesNotContain("LEAK", "example.org");
  }
}
