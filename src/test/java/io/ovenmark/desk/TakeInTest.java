package io.ovenmark.desk;

import static io.ovenmark.desk.ShareBench.BUN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.desk.ShareFormula.Choice;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookFixture;
import io.ovenmark.notebook.Refusal;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.store.StoreException;
import io.ovenmark.pantry.Nutrient;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeInTest {
  private static final Choice WITH_NOTES =
      new Choice(Optional.empty(), true, false, false, true);

  private static final Address LINE = Address.parse(BUN);
  private static final Address VARIANT = Address.parse(BUN + "/egg-free");

  @TempDir static Path shared;
  @TempDir Path temporary;
  private static ShareBench bench;
  private static Path bundle;
  private NotebookFixture fixture;
  private Desk desk;

  @BeforeAll
  static void share() throws IOException {
    bench = new ShareBench(Files.createDirectories(shared.resolve("own")));
    bundle = shared.resolve("bun.bundle");
    new ShareFormula(bench.desk())
        .bundle(BUN, WITH_NOTES, bundle, bench.fixture().by(), Progress.UNWATCHED);
  }

  @AfterAll
  static void forget() {
    bench.close();
  }

  @BeforeEach
  void begin() {
    fixture = new NotebookFixture(temporary);
    fixture.formula("salt-water").line("water", "100 g").line("salt", "2 g").revise("Own begin");
    desk = new Desk(fixture.open());
  }

  @AfterEach
  void end() {
    desk.close();
    fixture.close();
  }

  private ShareViews.TakenIn take(Path from, TakeIn.Choice choice) {
    return new TakeIn(desk).call(from, choice, fixture.by(), Progress.UNWATCHED);
  }

  private static TakeIn.Choice choice(String as, String differing) {
    return new TakeIn.Choice(
        Optional.of(BUN),
        Optional.ofNullable(as),
        Optional.ofNullable(differing),
        true,
        Optional.empty());
  }

  /** Every revision as the timeline tells it, without commit ids. */
  private static String timeline(Desk desk, Address line) {
    return Json.compact(new ShowTimeline(desk).call(line))
        .replaceAll("[0-9a-f]{40}", "ID")
        .replace(" Sesame crispbread gets none.", "");
  }

  @Test
  void timelinesBakesPhotosAndVariantsShowAsTheyDidThere() {
    ShareViews.TakenIn taken = take(bundle, TakeIn.Choice.NONE);

    assertThat(taken.revision().address()).isEqualTo(BUN + "@5");
    assertThat(timeline(desk, LINE)).isEqualTo(timeline(bench.desk(), LINE));
    assertThat(timeline(desk, VARIANT)).isEqualTo(timeline(bench.desk(), VARIANT));
    assertThat(ShareFormulaTest.figures(desk, BUN + "/egg-free"))
        .isEqualTo(ShareFormulaTest.figures(bench.desk(), BUN + "/egg-free"));
    Notebook notebook = desk.notebook();
    assertThat(notebook.bakes(BUN)).isEqualTo(bench.desk().notebook().bakes(BUN));
    assertThat(notebook.photo(BUN, "photos/" + BUN + "/tray.jpg")).isPresent();
    assertThat(notebook.published(BUN).values())
        .singleElement()
        .satisfies(tag -> assertThat(tag.message()).isEqualTo("For the breakfast basket"));
    fixture.assertClean();
    assertThat(fixture.onDisk("formulas/" + BUN + ".json")).contains("lupin-flour");
    assertThat(fixture.git("log", "-1", "--format=%s", "main")).startsWith("Take in ");
    assertThat(fixture.git("tag")).isEqualTo("published/" + BUN + "/3");
  }

  @Test
  void whatWasHereStaysAsItWas() {
    String before = fixture.onDisk("formulas/salt-water.json");
    String settings = fixture.onDisk("notebook.json");

    take(bundle, TakeIn.Choice.NONE);

    assertThat(fixture.onDisk("formulas/salt-water.json")).isEqualTo(before);
    assertThat(fixture.onDisk("notebook.json")).isEqualTo(settings);
    assertThat(desk.notebook().revisions(Address.parse("salt-water"))).hasSize(1);
    assertThat(desk.notebook().latest().formulas())
        .containsExactly("salt-water", BUN, "wheat-bun");
  }

  @Test
  void oneOrderTakesItBackAndOneMoreDoesItAgain() {
    take(bundle, TakeIn.Choice.NONE);
    UndoLast undo = new UndoLast(desk);

    undo.call(Optional.empty(), fixture.by());

    assertThat(desk.notebook().latest().formulas()).containsExactly("salt-water");
    assertThat(fixture.tree("main").keySet()).noneMatch(path -> path.contains("lupin"));
    undo.call(Optional.empty(), fixture.by());
    assertThat(timeline(desk, LINE)).contains("Back to less husk");
    fixture.assertClean();
  }

  @Test
  void undoingTakesItsVariantsAndPublicationsBackTooAndBringsThemBackWithIt() {
    take(bundle, TakeIn.Choice.NONE);
    String variant = timeline(desk, VARIANT);
    String tip = fixture.git("rev-parse", VARIANT.branch());
    String tag = fixture.git("rev-parse", "published/" + BUN + "/3");
    UndoLast undo = new UndoLast(desk);

    assertThat(undo.preview(Optional.empty()).others())
        .startsWith(
            "The variant " + VARIANT + " is taken away.",
            "The publication of " + BUN + "@3 is taken away.");
    undo.call(Optional.empty(), fixture.by());

    assertThat(fixture.git("branch", "--format=%(refname:short)")).isEqualTo("main");
    assertThat(fixture.git("tag")).isEmpty();
    assertThat(desk.notebook().variants(BUN)).isEmpty();
    fixture.assertClean();
    Path clone = temporary.resolve("clone");
    fixture.git("clone", "-q", ".", clone.toString());
    assertThat(fixture.repository().gitIn(clone, "for-each-ref")).doesNotContain("egg-free");

    assertThat(undo.preview(Optional.empty()).others())
        .startsWith("The variant " + VARIANT + " is there again.");
    undo.call(Optional.empty(), fixture.by());

    assertThat(fixture.git("rev-parse", VARIANT.branch())).isEqualTo(tip);
    assertThat(fixture.git("rev-parse", "published/" + BUN + "/3")).isEqualTo(tag);
    String redone = "\"" + BUN + "@5\",\"" + BUN + "@7\"";
    assertThat(timeline(desk, VARIANT).replace(redone, "\"" + BUN + "@5\"")).isEqualTo(variant);
    assertThat(fixture.git("for-each-ref", "refs/ovenmark")).isEmpty();

    undo.call(Optional.empty(), fixture.by());
    assertThat(desk.notebook().variants(BUN)).isEmpty();
    fixture.assertClean();
  }

  @Test
  void aVariantThatWasChangedSinceIsNeverTakenAway() {
    take(bundle, TakeIn.Choice.NONE);
    fixture.variant(BUN, "egg-free").set("water=250 g").revise("My own change");
    String before = fixture.git("for-each-ref");
    UndoLast undo = new UndoLast(desk);

    for (ThrowingCallable order :
        List.<ThrowingCallable>of(
            () -> undo.preview(Optional.empty()),
            () -> undo.call(Optional.empty(), fixture.by()))) {
      assertThatThrownBy(order)
          .isInstanceOf(Refusal.class)
          .hasMessageContaining(
              VARIANT + " was changed since it was taken in, so taking it in cannot be undone.");
    }
    assertThat(fixture.git("for-each-ref")).isEqualTo(before);
    assertThat(desk.notebook().latest().formulas()).contains(BUN);
    fixture.git("branch", "-q", "-D", VARIANT.branch());
    undo.call(Optional.empty(), fixture.by());
    assertThat(desk.notebook().latest().formulas()).doesNotContain(BUN);
    fixture.assertClean();
  }

  @Test
  void aVariantOnDiskIsNeverTakenAway() {
    take(bundle, TakeIn.Choice.NONE);
    fixture.git("checkout", "-q", VARIANT.branch());

    assertThatThrownBy(() -> new UndoLast(desk).call(Optional.empty(), fixture.by()))
        .hasMessageContaining("is checked out");
    assertThat(desk.notebook().latest().formulas()).contains(BUN);
    assertThat(desk.notebook().variants(BUN)).containsExactly("egg-free");
  }

  @Test
  void aClonesUndoneVariantThatIsNotKeptThereIsSaidToBeLost() {
    take(bundle, TakeIn.Choice.NONE);
    UndoLast undo = new UndoLast(desk);
    undo.call(Optional.empty(), fixture.by());
    fixture.git("for-each-ref", "--format=%(refname)", "refs/ovenmark")
        .lines()
        .forEach(ref -> fixture.git("update-ref", "-d", ref));

    assertThat(undo.preview(Optional.empty()).others())
        .contains(
            "The variant " + VARIANT
                + " cannot come back: it is not kept in this copy of the notebook.");
    undo.call(Optional.empty(), fixture.by());
    assertThat(desk.notebook().latest().formulas()).contains(BUN);
    assertThat(desk.notebook().variants(BUN)).isEmpty();
  }

  @Test
  void aNameInUseIsRefusedAndAnotherOneIsFollowedEverywhere() {
    fixture.formula(BUN).line("water", "1 g").revise("An own bun");

    assertThatThrownBy(() -> take(bundle, choice(null, "own")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("already");
    assertThat(desk.notebook().revisions(LINE)).hasSize(1);
    take(bundle, choice("harbour-bun", "own"));

    Address harbour = Address.parse("harbour-bun");
    assertThat(desk.notebook().revisions(harbour))
        .extracting(Revision::blob)
        .isEqualTo(
            bench.desk().notebook().revisions(LINE).stream().map(Revision::blob).toList());
    assertThat(new ShowFormula(desk).call(harbour.at(2)).bakes())
        .singleElement()
        .satisfies(bake -> assertThat(bake.photos().get(0).file()).contains("harbour-bun/tray"));
    assertThat(desk.notebook().bakes("harbour-bun").get(0).address()).isEqualTo("harbour-bun@2");
    assertThat(desk.notebook().variants("harbour-bun")).containsExactly("egg-free");
    assertThat(fixture.git("tag")).isEqualTo("published/harbour-bun/3");
    fixture.assertClean();
  }

  @Test
  void foodsThatDifferAreNamedAndNeverOverwritten() {
    fixture.formula("lupin-cracker").line("lupin-flour", "100 g").revise("Own");
    fixture.relabel("lupin-flour", Nutrient.FIBRE, 22);
    String own = fixture.onDisk("pantry/lupin-flour.json");

    ShareViews.Offer offer =
        new TakeIn(desk).look(bundle, TakeIn.Choice.NONE, Progress.UNWATCHED);

    assertThat(offer.arrival().differing())
        .containsExactly(new ShareViews.DifferingFile("food", "lupin-flour", "lupin-flour-2"));
    assertThatThrownBy(() -> take(bundle, TakeIn.Choice.NONE))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("lupin-flour");
    take(bundle, choice(null, "own"));

    assertThat(fixture.onDisk("pantry/lupin-flour.json")).isEqualTo(own);
    List<String> here = ShareFormulaTest.figures(desk, BUN);
    List<String> there = ShareFormulaTest.figures(bench.desk(), BUN);
    assertThat(here.subList(0, 5)).isEqualTo(there.subList(0, 5));
    assertThat(here.get(5)).isNotEqualTo(there.get(5));
    fixture.assertClean();
  }

  @Test
  void theirsComeInUnderOtherNamesAsANewRevision() {
    fixture.formula("lupin-cracker").line("lupin-flour", "100 g").revise("Own");
    String own = fixture.onDisk("pantry/lupin-flour.json");

    take(bundle, choice(null, "theirs"));

    Notebook notebook = desk.notebook();
    assertThat(fixture.onDisk("pantry/lupin-flour.json")).isEqualTo(own);
    assertThat(notebook.newest(LINE).address()).hasToString(BUN + "@6");
    assertThat(notebook.formula(notebook.newest(LINE)).lines().get(0).food())
        .isEqualTo("lupin-flour-2");
    assertThat(Json.compact(new ShowFormula(desk.shownIn(desk.units())).call(LINE).ratios()))
        .isEqualTo(Json.compact(new ShowFormula(bench.desk()).call(LINE).ratios()));
    fixture.assertClean();
  }

  @Test
  void whatWasSeenMustStillBeSo() {
    fixture.formula("lupin-cracker").line("lupin-flour", "100 g").revise("Own");
    String seen =
        new TakeIn(desk)
            .look(bundle, TakeIn.Choice.NONE, Progress.UNWATCHED)
            .arrival()
            .seen();
    fixture.relabel("lupin-flour", Nutrient.FIBRE, 11);

    TakeIn.Choice late =
        new TakeIn.Choice(
            Optional.empty(), Optional.empty(), Optional.of("own"), true, Optional.of(seen));

    assertThatThrownBy(() -> take(bundle, late))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("meanwhile");
    assertThat(desk.notebook().isKnown(BUN)).isFalse();
  }

  @Test
  void aColleaguesFolderWillDoAndIsNotChanged() {
    String before = bench.fixture().git("for-each-ref");

    take(bench.fixture().directory(), choice(null, null));

    assertThat(timeline(desk, LINE)).isEqualTo(timeline(bench.desk(), LINE));
    assertThat(bench.fixture().git("for-each-ref")).isEqualTo(before);
    assertThat(desk.notebook().latest().formulas()).doesNotContain("sesame-crispbread");
    assertThat(fixture.git("cat-file", "--batch", "--batch-all-objects"))
        .doesNotContain("honey", "secret_key", "secret place");
  }

  @Test
  void aBundleMadeByNativeGitWillDo() {
    Path file = temporary.resolve("all.bundle");
    bench.fixture().git("bundle", "create", file.toString(), "--all");

    assertThat(new TakeIn(desk).look(file, TakeIn.Choice.NONE, Progress.UNWATCHED).arrival())
        .isNull();
    take(file, choice(null, null));

    assertThat(timeline(desk, LINE)).isEqualTo(timeline(bench.desk(), LINE));
  }

  @Test
  void brokenBundlesGetOneSentenceAndHarmNothing() throws IOException {
    byte[] whole = Files.readAllBytes(bundle);
    String main = bench.fixture().git("rev-parse", "main");
    int header = new String(whole, StandardCharsets.ISO_8859_1).indexOf("\n\nPACK") + 2;
    byte[] flipped = whole.clone();
    flipped[whole.length / 2] ^= 0x55;
    byte[] huge = whole.clone();
    huge[header + 8] = 0x7F;
    assertRefused(new byte[0], "not a Git bundle");
    assertRefused("Dear colleague\n".getBytes(StandardCharsets.UTF_8), "not a Git bundle");
    assertRefused("# v9 git bundle\n\n".getBytes(StandardCharsets.UTF_8), "version 9");
    assertRefused(Arrays.copyOf(whole, header), "ends too early");
    assertRefused(Arrays.copyOf(whole, whole.length - 40), "");
    assertRefused(flipped, "");
    assertRefused(huge, "claims to hold");
    assertRefused(replaced(whole, "refs/heads/main", "refs/heads/mein"), "no branch main");
    assertRefused(
        replaced(whole, "refs/heads/variant/seeded", "refs/heads/variant/../../."), "not allow");
    Path part = temporary.resolve("part.bundle");
    bench.fixture().git("bundle", "create", part.toString(), "main", "^main~2");
    assertRefused(Files.readAllBytes(part), "only the newest part");
    assertThat(main).hasSize(40);
  }

  private static byte[] replaced(byte[] bytes, String from, String to) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    assertThat(text).contains(from);
    return text.replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
  }

  private void assertRefused(byte[] bytes, String words) {
    Path file = temporary.resolve("broken.bundle");
    try {
      Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String before = fixture.git("for-each-ref");
    assertThatThrownBy(() -> take(file, TakeIn.Choice.NONE))
        .isInstanceOfAny(StoreException.class, Refusal.class)
        .satisfies(thrown -> assertThat(Refusals.of(thrown)).isPresent())
        .hasMessageStartingWith("The bundle cannot be taken in.")
        .hasMessageContaining(words);
    assertThat(fixture.git("for-each-ref")).isEqualTo(before);
    assertThat(desk.notebook().ownFolder().resolve("sharing")).isEmptyDirectory();
    fixture.assertClean();
  }

  @Test
  void whatIsTakenInCanBeSharedAgainAndIsTheSame() {
    take(bundle, TakeIn.Choice.NONE);
    Path again = temporary.resolve("again");
    new ShareFormula(desk)
        .folder(BUN, WITH_NOTES, again, fixture.by(), Progress.UNWATCHED);

    try (Desk third = new Desk(Notebook.open(again))) {
      List<String> figures = ShareFormulaTest.figures(third, BUN);
      assertThat(figures.subList(0, 5))
          .isEqualTo(ShareFormulaTest.figures(bench.desk(), BUN).subList(0, 5));
    }
  }
}
